// A row that a person ticks: what was looked at, done, packed. Box, name over words; the whole row is the target.
#include <algorithm>

#include "app/parts/ui.h"

namespace gs::parts {

using look::Box;
using look::Face;
using mirror::Role;
namespace type = look::type;
namespace space = look::space;

void Ui::tick_mark(Box mark, bool ticked, bool round) {
  const look::Point middle{mark.mid_x(), mark.mid_y()};
  if (ticked) {
    if (round)
      pen.disc(middle, mark.w / 2, theme.holds);
    else
      pen.fill(mark, theme.holds, 5);
    const look::Ground dark(pen, theme.holds);
    pen.icon(look::Icon::check, middle.x - 12, middle.y - 12, 24, theme.paper);
  } else if (round) {
    pen.dashed_ring(middle, mark.w / 2 - 1, theme.ink2, look::stroke::kRule);
  } else {
    pen.outline(mark, theme.ink2, look::stroke::kRule, 5);
  }
}

bool Ui::tick_row(const TickRow& row) {
  constexpr float kBeside = kTickMark + 14;
  const float room = w - kBeside - 8;
  const std::vector<std::string_view> names = pen.lines(row.name, room, Face::bold, type::kBody);
  const std::vector<std::string_view> words =
      row.words.empty() ? std::vector<std::string_view>{} : pen.lines(row.words, room, Face::regular, type::kLabel);
  const std::vector<std::string_view> notes =
      row.note.empty() ? std::vector<std::string_view>{} : pen.lines(row.note, room, Face::italic, type::kLabel);
  const float step = type::line_height(type::kBody), small = type::line_height(type::kLabel);
  const float text_h = float(names.size()) * step + float(words.size() + notes.size()) * small;
  const Box box = take(std::max(61.0F, text_h + 18));
  const ImU32 fill = hand.down(row.id) ? theme.fold : theme.paper;
  if (hand.down(row.id)) pen.fill(box, fill);
  {
    const look::Ground ground(pen, fill);
    tick_mark({box.x + 1, box.y + 12, kTickMark, kTickMark}, row.ticked, row.round);
    const float x0 = box.x + kBeside;
    float base = box.y + 9 + type::kBody;
    for (const std::string_view line : names) {
      pen.text(x0, base, line, Face::bold, type::kBody, theme.ink);
      base += step;
    }
    base -= step - small;
    for (const std::string_view line : words) {
      pen.text(x0, base, line, Face::regular, type::kLabel, theme.ink);
      base += small;
    }
    for (const std::string_view line : notes) {
      pen.text(x0, base, line, Face::italic, type::kLabel, theme.ink2);
      base += small;
    }
  }
  mirror::Node record;
  record.role = Role::checkbox;
  record.id = row.id;
  record.name = row.name;
  if (!row.words.empty()) record.name += ". " + row.words;
  if (!row.note.empty()) record.name += " " + row.note;
  record.checked = row.ticked ? 1 : 0;
  const bool tapped = target(std::move(record), box, 0);
  rule();
  return tapped;
}

}  // namespace gs::parts
