// Why a figure is what it is, with every value's provenance, and the limits it is judged by: the person's to
// change.
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
  const Box head{whole.x + 16, whole.y + 8, whole.w - 32, 48};
  const float title_size =
      pen.width(asked_text, Face::bold, type::kValue) < head.w - 96 ? type::kValue : type::kBody;
  pen.icon(Icon::why, head.x, head.mid_y() - 12, 24, theme.ink);
  const std::vector<std::string_view> title_lines = pen.lines(asked_text, head.w - 88, Face::bold, title_size);
  float title_base = head.y + (title_lines.size() > 1 ? 20 : 0) + (title_lines.size() > 1 ? 0 : 33);
  for (const std::string_view line : title_lines) {
    pen.text(head.x + 34, title_base, line, Face::bold, title_size, theme.ink);
    title_base += type::line_height(title_size);
  }
  node(Role::heading, "why:title", asked_text, head).level = 2;
  if (icon_button({head.right() - 44, head.y, 48, 48}, "why:close", "Close", Icon::close, theme.ink)) {
    view.panel = Panel::none;
    wake_at(now_s);
  }

  begin_scroll("why:scroll", {whole.x + 8, head.bottom() + 8, whole.w - 16, whole.h - 72});
  column(whole.x + 16, whole.w - 40, y);
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
    const std::vector<std::string_view> lines =
        pen.lines(line.text, value_right - x - value_w - 16, face, type::kBody);
    const Box box = take(12 + float(lines.size()) * type::line_height(type::kBody));
    if (line.result) pen.line({box.x, box.y + 2}, {value_right, box.y + 2}, theme.ink, look::stroke::kLine);
    float base = box.y + 24;
    for (const std::string_view part : lines) {
      pen.text(box.x, base, part, face, type::kBody, theme.ink);
      base += type::line_height(type::kBody);
    }
    pen.figure(value_right, box.y + 24, value, type::kBody, theme.ink, look::Align::right);
    const std::string_view word = mark_word(line.mark);
    if (!word.empty()) {
      pen.origin(origin_of(line.mark), {value_right + 20, box.y + 18}, mark_colour(theme, line.mark));
      if (!narrow)
        pen.text(value_right + 34, box.y + 24, word, Face::regular, type::kLabel, mark_colour(theme, line.mark));
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
  const Box result = take(52);
  pen.fill(result, theme.band, look::radius::kPanel);
  {
    const look::Ground ground(pen, theme.band);
    const float base = look::Pen::centred(result.mid_y(), type::kValue);
    pen.text(result.x + 12, base, row_of.name, Face::regular, type::kBody, theme.ink);
    float at = result.right() - 12;
    const std::string_view word = figure.state == State::none ? std::string_view{} : state_word(figure.state);
    if (!word.empty()) {
      at -= pen.width(word, Face::bold, type::kBody);
      pen.text(at, base, word, Face::bold, type::kBody, colour_of(theme, figure.state));
      pen.sign(sign_of(figure.state), {at - 22, result.mid_y()}, look::sign::kStrip);
      at -= 44;
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
