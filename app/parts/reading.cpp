// Results: a row in a list, the one headline of a sheet.
#include <algorithm>

#include "app/parts/change.h"
#include "app/parts/ui.h"

namespace gs::parts {

using look::Box;
using look::Face;
using mirror::Role;
namespace type = look::type;
namespace space = look::space;

std::string figure_text(R id, const Figure& figure, const Style& style) {
  return figure.state == State::unknown ? std::string{} : say_reading(id, figure.value, style);
}

std::string figure_spoken(R id, const Figure& figure, const Plan& plan, const Style& style) {
  if (figure.state == State::unknown) return "not known: " + reason(plan, id, figure, style);
  std::string text = speak_reading(id, figure.value, style);
  if (figure.state != State::none) text += ", " + std::string(state_word(figure.state));
  if (figure.doubt == Doubt::outside_tested) text += ", " + reason(plan, id, figure, style);
  return text;
}

namespace {

struct ChangeLook {
  look::Delta delta;
  ImU32 colour;
};

ChangeLook look_of(const look::Theme& theme, Change::Kind kind) {
  if (kind == Change::Kind::better) return {look::Delta::better, theme.holds};
  if (kind == Change::Kind::worse) return {look::Delta::worse, theme.fails};
  return {look::Delta::same, theme.ink2};
}

}  // namespace

void draw_change(look::Pen& pen, const look::Theme& theme, float x, float baseline, R id, const Change& change,
                 const Style& style, look::Align align) {
  const std::string text = say_change(id, change, style);
  if (text.empty()) return;
  constexpr float kSign = 12, kSpace = 6;
  const float width = kSign + kSpace + pen.width(text, Face::bold, type::kLabel);
  if (align == look::Align::right) x -= width;
  if (align == look::Align::centre) x -= width / 2;
  const auto [delta, colour] = look_of(theme, change.kind);
  pen.delta(delta, x, baseline, colour);
  pen.text(x + kSign + kSpace, baseline, text, delta == look::Delta::same ? Face::regular : Face::bold,
           type::kLabel, colour);
}

int draw_change_in(look::Pen& pen, const look::Theme& theme, float x, float baseline, float room, R id,
                   const Change& change, const Style& style) {
  const std::string text = say_change(id, change, style);
  if (text.empty()) return 0;
  constexpr float kSign = 18;
  if (kSign + pen.width(text, Face::bold, type::kLabel) <= room) {
    draw_change(pen, theme, x, baseline, id, change, style);
    return 1;
  }
  const auto [delta, colour] = look_of(theme, change.kind);
  pen.delta(delta, x, baseline, colour);
  const std::vector<std::string_view> lines = pen.lines(text, room - kSign, Face::bold, type::kTick);
  for (std::size_t i = 0; i < lines.size(); ++i)
    pen.text(x + kSign, baseline + 17 * float(i), lines[i], Face::bold, type::kTick, colour);
  return int(lines.size());
}

std::string remedy_effect(const Remedy& remedy) {
  return remedy.gains + (remedy.gains.empty() || remedy.costs.empty() ? "" : "; ") + remedy.costs;
}

Change change_of(const Session& session, R id) {
  const Outlook* pinned = session.pinned_outlook();
  return pinned ? compare(id, session.outlook()[id], (*pinned)[id]) : Change{};
}

std::string change_spoken(const Session& session, R id) {
  const Change change = change_of(session, id);
  const std::string text = say_change(id, change, session.style());
  switch (change.kind) {
    case Change::Kind::none:
      return {};
    case Change::Kind::same:
      return ", same as pinned";
    case Change::Kind::better:
      return ", " + text + ", better than pinned";
    case Change::Kind::worse:
      return ", " + text + ", worse than pinned";
    case Change::Kind::other:
      return ", " + text + " against pinned";
  }
  return {};
}

void Ui::reading_row(R id) {
  const Figure& figure = session.outlook()[id];
  const Reading& row_of = reading(id);
  const std::string range = say_range(id, figure, session.style());
  const bool spread = !range.empty();
  // Beyond what was tested no single figure is to be trusted: the range stands in its place.
  const bool range_first = spread && figure.doubt == Doubt::outside_tested;
  const std::string text = range_first ? range : figure_text(id, figure, session.style());
  const std::string why_not = reason(session.plan(), id, figure, session.style());
  const bool known = figure.state != State::unknown;
  const Change change = change_of(session, id);
  const bool shows_change = change.kind == Change::Kind::better || change.kind == Change::Kind::worse ||
                            change.kind == Change::Kind::other;
  // The second line says what the first cannot: why it is not known, what it may be, how far it moved.
  const std::string second = !known || figure.doubt != Doubt::none ? why_not
                             : spread                              ? "may be " + range
                                                                   : std::string{};
  // The name on up to two lines beside the figure, else on its own with the figure below it.
  const bool signed_state = figure.state != State::none && known;
  const float figure_w = known ? pen.figure_width(text, type::kLead) : 38;
  const float value_w = figure_w + 8 + (signed_state ? 2 * look::sign::kList + 8 : 0);
  std::vector<std::string_view> names = pen.lines(row_of.name, w - value_w - 8, Face::regular, type::kBody);
  const bool under = names.size() > 2 || look::Pen::breaks_word(names);
  if (under) names = pen.lines(row_of.name, w, Face::regular, type::kBody);
  const float step = type::line_height(type::kBody), small = type::line_height(type::kLabel);
  const float more_h = step * float(names.size() - (under ? 0 : 1));
  const std::string change_text = shows_change ? say_change(id, change, session.style()) : std::string{};
  const float change_w = shows_change ? 26 + pen.width(change_text, Face::bold, type::kLabel) : 0;
  // the change stands at the right of the second line, or below it
  const bool change_below = shows_change && !second.empty() && change_w > w * 0.4F;
  std::vector<std::string_view> second_lines =
      pen.lines(second, w - (change_below ? 0 : change_w), Face::regular, type::kLabel);
  if (second.empty()) second_lines.clear();
  const float second_h =
      small * std::max(float(second_lines.size()) + (change_below ? 1 : 0), shows_change ? 1.0F : 0.0F);
  const Box box = take(std::max(look::space::kTarget, 34 + more_h + second_h));
  float name_base = box.y + 24, label_w = 0;
  for (const std::string_view line : names) {
    label_w = pen.text(box.x, name_base, line, Face::regular, type::kBody, theme.ink);
    name_base += step;
  }
  const float base = box.y + 24 + more_h;
  float right_x = box.right();
  if (known) {
    pen.figure(right_x, base, text, type::kLead, theme.ink, look::Align::right);
  } else {
    pen.line({right_x - 38, base - 6}, {right_x, base - 6}, theme.ink2, look::stroke::kStrong);
  }
  right_x -= figure_w + 8;
  if (signed_state) {
    pen.sign(sign_of(figure.state), {right_x - look::sign::kList, base - 6}, look::sign::kList);
    right_x -= 2 * look::sign::kList + 8;
  }
  if (!under && box.x + label_w + 16 < right_x - 8) pen.leader(box.x + label_w + 8, right_x - 4, base, theme.ink2);
  float line_base = base + type::line_height(type::kLabel);
  for (const std::string_view line : second_lines) {
    pen.text(box.x, line_base, line, Face::regular, type::kLabel, theme.ink2);
    line_base += type::line_height(type::kLabel);
  }
  if (shows_change)
    draw_change(pen, theme, box.right(), change_below ? line_base : base + small, id, change, session.style(),
                look::Align::right);
  mirror::Node record;
  record.role = Role::button;
  record.id = row_of.key;
  record.name = std::string(row_of.name) + ", " + figure_spoken(id, figure, session.plan(), session.style()) +
                (spread ? ", may be " + range : "") + change_spoken(session, id) + ". Why";
  if (target(std::move(record), box, 0)) {
    session.view.panel = Panel::why;
    session.view.why = id;
    wake_at(now_s);
  }
}

void Ui::headline(R id, std::string_view beside, std::string_view beside_spoken) {
  const Figure& figure = session.outlook()[id];
  const Reading& row_of = reading(id);
  const bool known = figure.state != State::unknown;
  const std::string range = say_range(id, figure, session.style());
  const bool range_first = !range.empty() && figure.doubt == Doubt::outside_tested;
  const std::string text = range_first ? range : figure_text(id, figure, session.style());
  const Box box = take(58);
  const float base = box.y + 42;
  float size = range_first ? type::kFigure : type::kHeadline;
  for (const float smaller : {type::kFigure, type::kValue, type::kLead, type::kTick})
    if (smaller < size && pen.figure_width(text, size) > w) size = smaller;
  const float figure_w = known ? pen.figure(box.x, base, text, size, theme.ink) : 64;
  if (!known) pen.line({box.x, base - 14}, {box.x + 64, base - 14}, theme.ink2, 5);
  const Standing link = standing(session.outlook(), row_of.link);
  const std::string_view word = state_word(link.state);
  // Beside the figure; under it where a long figure leaves no room for words.
  constexpr float kLeastRoom = 120;
  const bool under = box.right() - (box.x + figure_w + 18) < kLeastRoom;
  if (under) gap(44);
  const float line_x = under ? box.x : box.x + figure_w + 18;
  const float first = under ? base + 30 : base - 16;
  pen.sign(sign_of(link.state), {line_x + 12, first - 6}, 11);
  const float word_w = pen.text(line_x + 32, first, word, Face::bold, type::kBody, colour_of(theme, link.state));
  const float name_x = line_x + 32 + word_w + 10;
  const float room = box.right() - name_x;
  if (pen.width(row_of.name, Face::regular, type::kBody) <= room)
    pen.text(name_x, first, row_of.name, Face::regular, type::kBody, theme.ink2);
  std::string second = known ? std::string(beside) : reason(session.plan(), id, figure, session.style());
  if (range_first) {
    second = "outside what was tested: the range counts";
  } else if (!range.empty()) {
    second = "may be " + range + (second.empty() ? "" : ". " + second);
  }
  const std::vector<std::string_view> lines = pen.lines(second, box.right() - line_x, Face::regular, type::kLabel);
  float second_base = first + 24;
  for (const std::string_view line : lines) {
    pen.text(line_x, second_base, line, Face::regular, type::kLabel, theme.ink2);
    second_base += type::line_height(type::kLabel);
  }
  if (lines.size() > 1) gap(float(lines.size() - 1) * type::line_height(type::kLabel));
  mirror::Node& record = node(
      Role::status, std::string(row_of.key),
      std::string(row_of.name) + ", " + figure_spoken(id, figure, session.plan(), session.style()) +
          (range.empty() ? "" : ", may be " + range) +
          (known && !beside_spoken.empty() ? ". " + std::string(beside_spoken) : "") + change_spoken(session, id),
      box);
  record.live = true;
}

}  // namespace gs::parts
