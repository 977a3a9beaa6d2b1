// "Work it out": one small question beside the plan, with inputs and results of its own.
#include <cmath>

#include "app/parts/change.h"
#include "app/parts/scale.h"
#include "app/parts/ui.h"
#include "core/outing/as_text.h"

namespace gs::parts {

using look::Box;
using look::Face;
using look::Icon;
using mirror::Role;
namespace type = look::type;
namespace space = look::space;

namespace {

std::string input_text(const CheckInput& input, double x, const Style& style) {
  if (!std::isfinite(x)) return "not set";
  if (input.row.kind == Kind::choice) return std::string(input.row.options()[std::size_t(x)].name);
  return say_lever(input.row, x, style);
}

/// Steppers around a value; the plan stays untouched.
void input_steppers(Ui& ui, const CheckInput& input, std::size_t at, double x, bool from_plan) {
  const Lever& row = input.row;
  const std::string id = "check:" + std::string(row.key), name(row.name);
  const bool known = std::isfinite(x);
  const double value = known ? x : snapped(row, row.most, value_at(row.scale, row.least, row.most, 0.2), false);
  const std::string text = input_text(input, x, ui.session.style()) + (from_plan && known ? ", plan" : "");
  const float value_room = std::max(90.0F, ui.pen.figure_width(text, type::kLead) + 12);
  const bool own_line = ui.pen.width(row.name, Face::bold, type::kBody) > ui.w - value_room - 2 * 52 - 24;
  if (own_line) {
    ui.pen.text(ui.x, ui.y + 22, row.name, Face::bold, type::kBody, ui.theme.ink);
    ui.gap(26);
  }
  const Box box = ui.take(60);
  const Box more{box.right() - 52, box.y + 4, 52, 52};
  const Box less{own_line ? box.x : more.x - value_room - 52 - 16, box.y + 4, 52, 52};
  if (!own_line)
    ui.pen.text(box.x, look::Pen::centred(box.mid_y(), type::kBody), row.name, Face::bold, type::kBody,
                ui.theme.ink);
  ui.pen.figure((less.right() + more.x) / 2, look::Pen::centred(box.mid_y(), type::kLead), text, type::kLead,
                known ? ui.theme.ink : ui.theme.ink2, look::Align::centre);
  mirror::Node record;
  record.role = Role::slider;
  record.id = id;
  record.name = name;
  record.value = text;
  record.now = value;
  record.least = row.least;
  record.most = row.most;
  record.step = row.step;
  ui.target(std::move(record), {less.right() + 4, box.y + 4, more.x - less.right() - 8, 52}, 10);
  int steps = 0;
  if (ui.icon_button(less, id + ":less", "Less " + name, Icon::minus, ui.theme.ink)) --steps;
  ui.pen.ring({less.mid_x(), less.mid_y()}, 25, ui.theme.ink, look::stroke::kRule);
  if (ui.icon_button(more, id + ":more", "More " + name, Icon::plus, ui.theme.ink)) ++steps;
  ui.pen.ring({more.mid_x(), more.mid_y()}, 25, ui.theme.ink, look::stroke::kRule);
  if (const auto step = ui.asked.steps.find(id); step != ui.asked.steps.end()) steps += step->second;
  double wanted = value;
  bool set = false;
  if (steps != 0) {
    wanted = known ? snapped(row, row.most, value + steps * step_at(row, steps < 0 ? value * 0.999 : value), false)
                   : value;
    set = true;
  }
  if (const auto asked = ui.asked.set.find(id); asked != ui.asked.set.end()) {
    wanted = std::clamp(asked->second, row.least, row.most);
    set = true;
  }
  if (set) {
    ui.session.view.check_given[at] = wanted;
    ui.wake_at(ui.now_s);
  }
}

void input_chips(Ui& ui, const CheckInput& input, std::size_t at, double x) {
  const std::string id = "check:" + std::string(input.row.key);
  const std::span<const Option> options = input.row.options();
  constexpr std::size_t kMostChips = 4;
  if (options.size() > kMostChips) {  // a long list stays folded until it is asked for
    const bool open = ui.session.view.unfolded == id;
    const std::string value = input_text(input, x, ui.session.style());
    if (ui.row(id + ":row", input.row.name, value, value, open ? 1 : 0)) {
      ui.session.view.unfolded = open ? std::string{} : id;
      ui.wake_at(ui.now_s);
    }
    if (!open) return;
  } else {
    ui.pen.text(ui.x, ui.y + 20, input.row.name, Face::bold, type::kBody, ui.theme.ink);
    ui.gap(28);
  }
  std::vector<Ui::Chip> items;
  std::vector<std::string> keys;
  for (std::size_t i = 0; i < options.size(); ++i) {
    if (options[i].retired) continue;
    items.push_back({id + "=" + std::string(options[i].key),
                     std::string(options[i].name),
                     {},
                     std::isfinite(x) && std::size_t(x) == i});
    keys.push_back(std::string(options[i].key));
  }
  const int tapped = ui.chips(id, input.row.name, items);
  if (tapped >= 0) {
    ui.session.view.check_given[at] = keys[std::size_t(tapped)];
    ui.wake_at(ui.now_s);
  }
  ui.gap();
}

void result_row(Ui& ui, const CheckResult& result, const Figure& figure, bool first) {
  const Reading& row = result.row;
  const float size = first ? type::kFigure : type::kLead;
  const Box box = ui.take(first ? 64 : 46);
  const float base = box.y + (first ? 42 : 28);
  const bool known = figure.state != State::unknown;
  const std::string text =
      known ? say_quantity(figure.value, row.unit, row.digits, ui.session.style()) : std::string{};
  ui.pen.text(box.x, base, row.name, first ? Face::bold : Face::regular, type::kBody, ui.theme.ink);
  float at_x = box.right();
  if (known) {
    ui.pen.figure(at_x, base, text, size, ui.theme.ink, look::Align::right);
    at_x -= ui.pen.figure_width(text, size) + 12;
  } else {
    ui.pen.line({at_x - 38, base - 6}, {at_x, base - 6}, ui.theme.ink2, look::stroke::kStrong);
    at_x -= 50;
  }
  if (known && figure.state != State::none) {
    const std::string_view word = state_word(figure.state);
    at_x -= ui.pen.width(word, Face::bold, type::kLabel);
    ui.pen.text(at_x, base, word, Face::bold, type::kLabel, colour_of(ui.theme, figure.state));
    ui.pen.sign(sign_of(figure.state), {at_x - 18, base - 6}, look::sign::kList);
  }
  mirror::Node& record =
      ui.node(Role::status, "check:result:" + std::string(row.key),
              std::string(row.name) + ", " +
                  (known ? speak_quantity(figure.value, row.unit, row.digits, ui.session.style()) : "not known") +
                  (figure.state != State::none && known ? ", " + std::string(state_word(figure.state)) : ""),
              box);
  record.live = true;
}

/// One button that puts all that the check found into the plan, each figure to the digits of its lever.
void put_results(Ui& ui, const Check& check, const CheckOutcome& outcome) {
  std::vector<std::pair<L, Value>> sets;
  std::string first_key, figures;
  for (std::size_t i = 0; i < check.results.size(); ++i) {
    const CheckResult& result = check.results[i];
    if (result.put_into == L::count || outcome.results[i].state == State::unknown) continue;
    const double scale = std::pow(10, lever(result.put_into).digits);
    sets.emplace_back(result.put_into, std::round(outcome.results[i].value * scale) / scale);
    if (first_key.empty()) first_key = result.row.key;
    figures += (figures.empty() ? "" : ", ") +
               say_quantity(outcome.results[i].value, result.row.unit, result.row.digits, ui.session.style());
  }
  if (sets.empty()) return;
  if (!ui.button("check:put:" + first_key, "Put " + figures + " into the plan", Weight::main)) return;
  std::string refused;
  for (const auto& [id, value] : sets)
    if (refused.empty()) refused = refusal(id, value);
  if (refused.empty())
    ui.session.set_all(sets, std::string(check.question));
  else
    ui.session.notes.push_back(refused);
  ui.session.view.panel = Panel::none;
  ui.wake_at(ui.now_s);
}

}  // namespace

void Ui::check_panel() {
  View& view = session.view;
  const Check& check = *view.check;
  const CheckValues values = resolve_check(check, view.check_given, session.plan());
  const CheckOutcome outcome = work_out(check, values);
  const Box whole{x, y, w, surface.bottom() - y - 12};
  open_group(Role::dialog, "check", std::string(check.question), whole);
  pen.outline(whole, theme.ink, look::stroke::kRule, look::radius::kPanel);
  const Box head{whole.x + 16, whole.y + 8, whole.w - 32, 48};
  const float size = pen.width(check.question, Face::bold, type::kValue) < head.w - 60 ? type::kValue : type::kBody;
  pen.text(head.x, look::Pen::centred(head.mid_y(), size), check.question, Face::bold, size, theme.ink);
  node(Role::heading, "check:title", std::string(check.question), head).level = 2;
  if (icon_button({head.right() - 44, head.y, 48, 48}, "check:close", "Close", Icon::close, theme.ink)) {
    view.panel = Panel::none;
    wake_at(now_s);
  }
  begin_scroll("check:scroll", {whole.x + 8, head.bottom() + 4, whole.w - 16, whole.h - 68});
  column(whole.x + 16, whole.w - 40, y);
  const float full_w = w, left = x, top = y;
  const bool two = w > 700;
  if (two) w = (full_w - 32) / 2;
  paragraph(check.measure, "check:measure", theme.ink2);
  gap(12);
  for (std::size_t i = 0; i < check.inputs.size(); ++i) {
    const CheckInput& input = check.inputs[i];
    const bool given = !std::holds_alternative<std::monostate>(view.check_given[i]);
    if (input.row.kind == Kind::choice) {
      input_chips(*this, input, i, values.x[i]);
    } else {
      input_steppers(*this, input, i, values.x[i],
                     !given && (input.plan != L::count || input.plan_reading != R::count));
    }
  }
  const float inputs_bottom = y;
  if (two) {
    column(left + w + 32, w, top);
  } else {
    gap();
    rule();
  }
  for (std::size_t i = 0; i < check.results.size(); ++i)
    result_row(*this, check.results[i], outcome.results[i], i == 0);
  if (!outcome.reason.empty()) {
    gap();
    paragraph(outcome.reason, "check:reason", theme.ink2);
  }
  gap();
  paragraph("Source: " + std::string(check.source), "check:source", theme.ink2);
  answer_foot("check", check.link, check_as_text(check, values, outcome, session.style()));
  gap();
  put_results(*this, check, outcome);
  gap(12);
  if (y < inputs_bottom) y = inputs_bottom;
  end_scroll();
  close_group();
}

}  // namespace gs::parts
