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

/// The question with the way out; returns its box. `top`: of the panel, or of what scrolls.
Box head(Ui& ui, const std::string& asked, Box whole, float top) {
  look::Pen& pen = ui.pen;
  const float side = ui.slim() ? 8 : 16;
  const float room = whole.w - 2 * side - 88;
  const float size = pen.width(asked, Face::bold, type::kValue) < room ? type::kValue : type::kBody;
  const std::vector<std::string_view> lines = pen.lines(asked, room, Face::bold, size);
  const float step = type::line_height(size);
  const Box box{whole.x + side, top + 8, whole.w - 2 * side, std::max(48.0F, float(lines.size()) * step + 8)};
  pen.icon(Icon::why, box.x, box.y + 12, 24, ui.theme.ink);
  float base = look::Pen::centred(box.mid_y(), size) - float(lines.size() - 1) * step / 2;
  for (const std::string_view line : lines) {
    pen.text(box.x + 34, base, line, Face::bold, size, ui.theme.ink);
    base += step;
  }
  ui.node(Role::heading, "why:title", asked, box).level = 2;
  if (ui.icon_button({box.right() - 48, box.y, 48, 48}, "why:close", "Close", Icon::close, ui.theme.ink)) {
    ui.session.view.panel = Panel::none;
    ui.wake_at(ui.now_s);
  }
  return box;
}

constexpr float kNarrow = 460;

/// One thing that it rests on: what it is, its value, where that is from.
void line_row(Ui& ui, const WhyLine& line, const std::string& id) {
  look::Pen& pen = ui.pen;
  const bool narrow = ui.w < kNarrow;
  const Face face = line.result ? Face::bold : Face::regular;
  const std::string value = line.value.number + (line.value.unit.empty() ? "" : " " + line.value.unit);
  const float value_right = ui.right() - (narrow ? 28 : 128);
  const float value_w = pen.figure_width(value, type::kBody);
  std::vector<std::string_view> lines = pen.lines(line.text, value_right - ui.x - value_w - 16, face, type::kBody);
  const bool under = look::Pen::breaks_word(lines);  // the value below what it is of
  if (under) lines = pen.lines(line.text, ui.right() - ui.x, face, type::kBody);
  const float step = type::line_height(type::kBody);
  std::vector<std::string_view> values;
  if (under && value_w > value_right - ui.x) values = pen.lines(value, value_right - ui.x, Face::bold, type::kBody);
  const float value_lines = values.empty() ? 1 : float(values.size());
  const Box box = ui.take(12 + (float(lines.size()) + (under ? value_lines : 0)) * step);
  const float value_base = box.y + 24 + (under ? step * float(lines.size()) : 0);
  if (line.result) pen.line({box.x, box.y + 2}, {value_right, box.y + 2}, ui.theme.ink, look::stroke::kLine);
  float base = box.y + 24;
  for (const std::string_view part : lines) {
    pen.text(box.x, base, part, face, type::kBody, ui.theme.ink);
    base += step;
  }
  if (values.empty()) pen.figure(value_right, value_base, value, type::kBody, ui.theme.ink, look::Align::right);
  for (std::size_t k = 0; k < values.size(); ++k)
    pen.text(value_right, value_base + step * float(k), values[k], Face::bold, type::kBody, ui.theme.ink,
             look::Align::right);
  const std::string_view word = mark_word(line.mark);
  if (!word.empty()) {
    const ImU32 colour = mark_colour(ui.theme, line.mark);
    pen.origin(origin_of(line.mark), {value_right + 20, value_base - 6}, colour);
    if (!narrow) pen.text(value_right + 34, value_base, word, Face::regular, type::kLabel, colour);
  }
  ui.open_group(Role::row, id, "", box);
  ui.node(Role::cell, id + "a", line.text, box);
  ui.node(Role::cell, id + "b", value, box);
  ui.node(Role::cell, id + "c", std::string(word.empty() ? "follows" : word), box);
  ui.close_group();
}

/// The figure itself with its state, on a band.
void result_band(Ui& ui, R id, const Figure& figure, const std::string& text) {
  look::Pen& pen = ui.pen;
  const Reading& row = reading(id);
  const std::string_view word = figure.state == State::none ? std::string_view{} : state_word(figure.state);
  const float word_w = word.empty() ? 0 : pen.width(word, Face::bold, type::kBody) + 44;
  const float answer_w = (text.empty() ? 0 : pen.figure_width(text, type::kValue)) + word_w + 24;
  std::vector<std::string_view> names = pen.lines(row.name, ui.w - answer_w - 12, Face::regular, type::kBody);
  const bool under = names.size() > 2 || look::Pen::breaks_word(names);
  if (under) names = pen.lines(row.name, ui.w - 24, Face::regular, type::kBody);
  const bool word_below = under && answer_w > ui.w;  // a line each: name, figure, state
  const float name_step = type::line_height(type::kBody), names_h = name_step * float(names.size());
  const Box box = ui.take(under ? names_h + (word_below ? 82 : 52) : std::max(52.0F, names_h + 16));
  pen.fill(box, ui.theme.band, look::radius::kPanel);
  {
    const look::Ground ground(pen, ui.theme.band);
    const float mid = under ? box.y + names_h + 26 : box.mid_y();
    const float base = look::Pen::centred(mid, type::kValue);
    float name_base = under ? box.y + 8 + type::kBody : base - name_step * float(names.size() - 1) / 2;
    for (const std::string_view line : names) {
      pen.text(box.x + 12, name_base, line, Face::regular, type::kBody, ui.theme.ink);
      name_base += name_step;
    }
    float at = box.right() - 12;
    if (!word.empty()) {
      const float word_base = word_below ? base + 30 : base;
      at -= word_w - 44;
      pen.text(at, word_base, word, Face::bold, type::kBody, colour_of(ui.theme, figure.state));
      pen.sign(sign_of(figure.state), {at - 22, word_base - 8}, look::sign::kStrip);
      at = word_below ? box.right() - 12 : at - 44;
    }
    if (!text.empty()) pen.figure(at, base, text, type::kValue, ui.theme.ink, look::Align::right);
  }
  ui.node(Role::status, "why:result",
          std::string(row.name) + ", " + figure_spoken(id, figure, ui.session.plan(), ui.session.style()), box)
      .live = true;
}

/// A label with a sentence beside it, or under it on a narrow surface; nothing where there is no sentence.
void note(Ui& ui, std::string_view label, const std::string& words, std::string_view id) {
  if (words.empty()) return;
  ui.gap();
  const bool narrow = ui.w < kNarrow;
  const float indent = narrow ? 0 : 88;
  ui.pen.text(ui.x, ui.y + type::kLabel, label, Face::bold, type::kLabel, ui.theme.ink);
  if (narrow) ui.gap(type::line_height(type::kLabel));
  const int lines = ui.pen.paragraph(ui.x + indent, ui.y + type::kLabel, ui.w - indent, words, Face::regular,
                                     type::kLabel, ui.theme.ink2);
  const Box box = ui.take(float(lines) * type::line_height(type::kLabel));
  ui.node(Role::text, std::string(id), std::string(label) + ": " + words, box);
}

}  // namespace

void Ui::why_panel() {
  const R id = session.view.why;
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
  const Box top = head(*this, asked_text, whole, low() ? y : whole.y);
  if (!low()) begin_scroll("why:scroll", {whole.x + 8, top.bottom() + 8, whole.w - 16, whole.h - top.h - 24});
  column(top.x, top.w - 8, low() ? top.bottom() + 8 : y);
  paragraph(because.formula, "why:formula", theme.ink2);
  gap();
  open_group(Role::table, "why:lines", "What it rests on", {x, y, w, float(because.lines.size()) * 36});
  for (std::size_t i = 0; i < because.lines.size(); ++i)
    line_row(*this, because.lines[i], "why:line" + std::to_string(i));
  close_group();
  gap();
  result_band(*this, id, figure, text);
  note(*this, "But",
       figure.doubt == Doubt::none ? std::string{} : reason(session.plan(), id, figure, session.style()),
       "why:doubt");
  note(*this, "Source", because.source, "why:source");
  note(*this, "Assumes", because.assumes, "why:assumes");
  note(*this, "If wrong", because.if_wrong, "why:wrong");
  if (is_judged(id)) {
    gap();
    lever_row(limit_lever(id));
    rule();
    lever_row(ease_lever(id));
    note(*this, "Limits", std::string(lever(limit_lever(id)).source), "why:limits");
  }
  answer_foot("why", row_of.link, reading_as_text(id, session.plan(), session.outlook(), session.style()));
  gap(16);
  end_scroll();
  close_group();
}

}  // namespace gs::parts
