// Why a figure is what it is, with every value's provenance, and the limits it is judged by: the person's to
// change.
#include <algorithm>

#include "app/parts/change.h"
#include "app/parts/ui.h"
#include "core/outing/as_text.h"
#include "core/outing/why.h"

namespace gs::parts {

using look::Box;
using look::Face;
using look::Icon;
using mirror::Role;
namespace type = look::type;
namespace space = look::space;

namespace {

look::Origin origin_of(Mark mark) {
  switch (mark) {
    case Mark::practice:
      return look::Origin::practice;
    case Mark::second_hand:  // nobody here saw the source
    case Mark::memory:
      return look::Origin::memory;
    case Mark::yours:
      return look::Origin::yours;
    default:
      return look::Origin::published;
  }
}

ImU32 mark_colour(const look::Theme& theme, Mark mark) {
  switch (mark) {
    case Mark::practice:
      return theme.tight;
    case Mark::memory:
      return theme.pin;
    case Mark::yours:
      return theme.ink2;
    default:
      return theme.holds;
  }
}

}  // namespace

void Ui::why_panel() {
  View& view = session.view;
  const R id = view.why;
  const Reading& row_of = reading(id);
  const Figure& figure = session.outlook()[id];
  const Why because = why(id, session.plan(), session.style());
  const std::string text = figure_text(id, figure, session.style());
  const std::string asked_text =
      "Why " + std::string(row_of.name) + (text.empty() ? " is not known" : " " + text) + "?";

  const Box whole{x, y, w, surface.bottom() - y - 12};
  open_group(Role::dialog, "why", asked_text, whole);
  pen.outline(whole, theme.ink, look::stroke::kRule, look::radius::kPanel);
  if (low()) begin_scroll("why:scroll", {whole.x + 2, whole.y + 2, whole.w - 4, whole.h - 4});
  const float side = slim() ? 8 : 16;
  const float room = whole.w - 2 * side - 88;
  const bool large = pen.width(asked_text, Face::bold, type::kValue) < room;
  const float title_size = large ? type::kValue : type::kBody;
  const std::vector<std::string_view> title_lines = pen.lines(asked_text, room, Face::bold, title_size);
  const float title_step = type::line_height(title_size);
  const float head_h = std::max(48.0F, float(title_lines.size()) * title_step + 8);
  const Box head{whole.x + side, (low() ? y : whole.y) + 8, whole.w - 2 * side, head_h};
  pen.icon(Icon::why, head.x, head.y + 12, 24, theme.ink);
  float title_base = look::Pen::centred(head.mid_y(), title_size) - float(title_lines.size() - 1) * title_step / 2;
  for (const std::string_view line : title_lines) {
    pen.text(head.x + 34, title_base, line, Face::bold, title_size, theme.ink);
    title_base += title_step;
  }
  node(Role::heading, "why:title", asked_text, head).level = 2;
  if (icon_button({head.right() - 48, head.y, 48, 48}, "why:close", "Close", Icon::close, theme.ink)) {
    view.panel = Panel::none;
    wake_at(now_s);
  }

  if (!low()) begin_scroll("why:scroll", {whole.x + 8, head.bottom() + 8, whole.w - 16, whole.h - head_h - 24});
  column(head.x, head.w - 8, low() ? head.bottom() + 8 : y);
  paragraph(because.formula, "why:formula", theme.ink2);
  gap();
  open_group(Role::table, "why:lines", "What it rests on", {x, y, w, float(because.lines.size()) * 36});
  const bool narrow = w < 460;
  const float mark_w = narrow ? 28 : 128;
  int index = 0;
  for (const WhyLine& line : because.lines) {
    const Face face = line.result ? Face::bold : Face::regular;
    const std::string value = line.value.number + (line.value.unit.empty() ? "" : " " + line.value.unit);
    const float value_right = right() - mark_w;
    const float value_w = pen.figure_width(value, type::kBody);
    std::vector<std::string_view> lines = pen.lines(line.text, value_right - x - value_w - 16, face, type::kBody);
    const bool under = look::Pen::breaks_word(lines);  // the value below what it is of
    if (under) lines = pen.lines(line.text, right() - x, face, type::kBody);
    const float step = type::line_height(type::kBody);
    std::vector<std::string_view> values;
    if (under && value_w > value_right - x) values = pen.lines(value, value_right - x, Face::bold, type::kBody);
    const float value_lines = values.empty() ? 1 : float(values.size());
    const Box box = take(12 + (float(lines.size()) + (under ? value_lines : 0)) * step);
    const float value_base = box.y + 24 + (under ? step * float(lines.size()) : 0);
    if (line.result) pen.line({box.x, box.y + 2}, {value_right, box.y + 2}, theme.ink, look::stroke::kLine);
    float base = box.y + 24;
    for (const std::string_view part : lines) {
      pen.text(box.x, base, part, face, type::kBody, theme.ink);
      base += type::line_height(type::kBody);
    }
    if (values.empty()) pen.figure(value_right, value_base, value, type::kBody, theme.ink, look::Align::right);
    for (std::size_t k = 0; k < values.size(); ++k)
      pen.text(value_right, value_base + step * float(k), values[k], Face::bold, type::kBody, theme.ink,
               look::Align::right);
    const std::string_view word = mark_word(line.mark);
    if (!word.empty()) {
      pen.origin(origin_of(line.mark), {value_right + 20, value_base - 6}, mark_colour(theme, line.mark));
      if (!narrow)
        pen.text(value_right + 34, value_base, word, Face::regular, type::kLabel, mark_colour(theme, line.mark));
    }
    const std::string row_id = "why:line" + std::to_string(index++);
    open_group(Role::row, row_id, "", box);
    node(Role::cell, row_id + "a", line.text, box);
    node(Role::cell, row_id + "b", value, box);
    node(Role::cell, row_id + "c", std::string(word.empty() ? "follows" : word), box);
    close_group();
  }
  close_group();
  gap();
  const std::string_view word = figure.state == State::none ? std::string_view{} : state_word(figure.state);
  const float word_w = word.empty() ? 0 : pen.width(word, Face::bold, type::kBody) + 44;
  const float answer_w = (text.empty() ? 0 : pen.figure_width(text, type::kValue)) + word_w + 24;
  std::vector<std::string_view> names = pen.lines(row_of.name, w - answer_w - 12, Face::regular, type::kBody);
  const bool under = names.size() > 2 || look::Pen::breaks_word(names);
  if (under) names = pen.lines(row_of.name, w - 24, Face::regular, type::kBody);
  const bool word_below = under && answer_w > w;  // a line each: name, figure, state
  const float name_step = type::line_height(type::kBody), names_h = name_step * float(names.size());
  const Box result = take(under ? names_h + (word_below ? 82 : 52) : std::max(52.0F, names_h + 16));
  pen.fill(result, theme.band, look::radius::kPanel);
  {
    const look::Ground ground(pen, theme.band);
    const float mid = under ? result.y + names_h + 26 : result.mid_y();
    const float base = look::Pen::centred(mid, type::kValue);
    float name_base = under ? result.y + 8 + type::kBody : base - name_step * float(names.size() - 1) / 2;
    for (const std::string_view line : names) {
      pen.text(result.x + 12, name_base, line, Face::regular, type::kBody, theme.ink);
      name_base += name_step;
    }
    float at = result.right() - 12;
    if (!word.empty()) {
      const float word_base = word_below ? base + 30 : base;
      at -= word_w - 44;
      pen.text(at, word_base, word, Face::bold, type::kBody, colour_of(theme, figure.state));
      pen.sign(sign_of(figure.state), {at - 22, word_base - 8}, look::sign::kStrip);
      at = word_below ? result.right() - 12 : at - 44;
    }
    if (!text.empty()) pen.figure(at, base, text, type::kValue, theme.ink, look::Align::right);
  }
  node(Role::status, "why:result",
       std::string(row_of.name) + ", " + figure_spoken(id, figure, session.plan(), session.style()), result)
      .live = true;
  const auto note = [&](std::string_view label, const std::string& words, std::string_view note_id) {
    if (words.empty()) return;
    gap();
    const float indent = narrow ? 0 : 88;
    if (narrow) {
      pen.text(x, y + type::kLabel, label, Face::bold, type::kLabel, theme.ink);
      gap(type::line_height(type::kLabel));
    } else {
      pen.text(x, y + type::kLabel, label, Face::bold, type::kLabel, theme.ink);
    }
    const int lines =
        pen.paragraph(x + indent, y + type::kLabel, w - indent, words, Face::regular, type::kLabel, theme.ink2);
    const Box box = take(float(lines) * type::line_height(type::kLabel));
    node(Role::text, std::string(note_id), std::string(label) + ": " + words, box);
  };
  const std::string said = reason(session.plan(), id, figure, session.style());
  note("But", figure.doubt == Doubt::none ? std::string{} : said, "why:doubt");
  note("Source", because.source, "why:source");
  note("Assumes", because.assumes, "why:assumes");
  note("If wrong", because.if_wrong, "why:wrong");
  if (is_judged(id)) {
    gap();
    lever_row(limit_lever(id));
    rule();
    lever_row(ease_lever(id));
    note("Limits", std::string(lever(limit_lever(id)).source), "why:limits");
  }
  answer_foot("why", row_of.link, reading_as_text(id, session.plan(), session.outlook(), session.style()));
  gap(16);
  end_scroll();
  close_group();
}

}  // namespace gs::parts
