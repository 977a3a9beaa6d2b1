// "Work it out": one small question beside the plan, with inputs and results of its own.
#include <cmath>
#include <limits>

#include "app/parts/change.h"
#include "app/parts/check_plot.h"
#include "app/parts/dial.h"
#include "app/parts/keypad.h"
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

/// The same control as a lever has; the plan stays untouched.
void input_dial(Ui& ui, const CheckInput& input, std::size_t at, double x, bool from_plan) {
  const Lever& row = input.row;
  const bool known = std::isfinite(x);
  View& view = ui.session.view;
  const std::string text = input_text(input, x, ui.session.style());
  const Dialled done = dial(ui, {.key = "check:" + std::string(row.key),
                                 .row = row,
                                 .most = row.most,
                                 .value = known ? x : dial_start(row, row.most),
                                 .known = known,
                                 .text = text,
                                 .spoken = text + (from_plan && known ? ", plan" : ""),
                                 .note = from_plan && known ? "as in the plan" : ""});
  if (done.wanted) {
    view.check_given[at] = *done.wanted;
    view.along = at;
    ui.wake_at(ui.now_s);
  }
  if (done.typing) {
    view.input = at;
    view.typed = *done.typing;
    view.unit = 0;
    ui.hand.scroll_to("check:scroll", 0);
    ui.wake_at(ui.now_s);
  }
}

/// One input typed; beside what is typed stands what would come of it.
void typed_input(Ui& ui, const Check& check, const CheckValues& values) {
  View& view = ui.session.view;
  const std::size_t at = *view.input;
  const CheckInput& input = check.inputs[at];
  const Style& style = ui.session.style();
  const auto would = [&](double value) {
    CheckValues tried = values;
    tried.x[at] = value;
    const CheckOutcome outcome = work_out(check, tried);
    const CheckResult& first = check.results[0];
    const Figure& figure = outcome.results[0];
    if (figure.state == State::unknown) return std::pair{outcome.reason, State::unknown};
    return std::pair{
        std::string(first.row.name) + " " + say_quantity(figure.value, first.row.unit, first.row.digits, style),
        figure.state};
  };
  const KeypadAnswer answer = keypad(
      ui, {.row = input.row,
           .most = input.row.most,
           .usual = input.row.usual ? input.row.usual(ui.session.plan()) : std::numeric_limits<double>::quiet_NaN(),
           .was = input_text(input, values.x[at], style),
           .would = would});
  if (answer.set) view.check_given[at] = *answer.set;
  if (answer.usual) view.check_given[at] = Value{};
  if (answer.set || answer.usual) view.along = at;
  if (answer.closed) view.input.reset();
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
    const int lines =
        ui.pen.paragraph(ui.x, ui.y + 20, ui.w, input.row.name, Face::bold, type::kBody, ui.theme.ink);
    ui.gap(float(lines) * type::line_height(type::kBody) + 5);
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
  const bool known = figure.state != State::unknown;
  const std::string text =
      known ? say_quantity(figure.value, row.unit, row.digits, ui.session.style()) : std::string{};
  // the figure stands beside its name, or under it where both are too long for one line
  const Face face = first ? Face::bold : Face::regular;
  const bool signed_state = known && figure.state != State::none;
  const float figure_w = (known ? ui.pen.figure_width(text, size) + 12 : 50) +
                         (signed_state ? ui.pen.width(state_word(figure.state), Face::bold, type::kLabel) + 40 : 0);
  std::vector<std::string_view> names = ui.pen.lines(row.name, ui.w - figure_w - 8, face, type::kBody);
  const bool under = names.size() > 2 || look::Pen::breaks_word(names);
  if (under) names = ui.pen.lines(row.name, ui.w, face, type::kBody);
  const float step = type::line_height(type::kBody), rest = step * float(names.size() - (under ? 0 : 1));
  const Box box = ui.take((first ? 64 : 46) + rest);
  float name_base = box.y + (first && !under ? 42 : 28);
  for (const std::string_view line : names) {
    ui.pen.text(box.x, name_base, line, face, type::kBody, ui.theme.ink);
    name_base += step;
  }
  const float base = box.y + (first ? 42 : 28) + (under ? rest : 0);
  float at_x = box.right();
  if (known) {
    ui.pen.figure(at_x, base, text, size, ui.theme.ink, look::Align::right);
    at_x -= ui.pen.figure_width(text, size) + 12;
  } else {
    ui.pen.line({at_x - 38, base - 6}, {at_x, base - 6}, ui.theme.ink2, look::stroke::kStrong);
    at_x -= 50;
  }
  if (signed_state) {
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
  if (low()) begin_scroll("check:scroll", {whole.x + 2, whole.y + 2, whole.w - 4, whole.h - 4});
  const float room = whole.w - 2 * margin() - 60;
  const float size = pen.width(check.question, Face::bold, type::kValue) < room ? type::kValue : type::kBody;
  const std::vector<std::string_view> asked_lines = pen.lines(check.question, room, Face::bold, size);
  const float line_h = type::line_height(size);
  const float head_h = std::max(48.0F, float(asked_lines.size()) * line_h + 8);
  const Box head{whole.x + margin() / 2 + 8, low() ? y + 8 : whole.y + 8, whole.w - margin() - 16, head_h};
  float asked_base = look::Pen::centred(head.mid_y(), size) - float(asked_lines.size() - 1) * line_h / 2;
  for (const std::string_view line : asked_lines) {
    pen.text(head.x, asked_base, line, Face::bold, size, theme.ink);
    asked_base += line_h;
  }
  node(Role::heading, "check:title", std::string(check.question), head).level = 2;
  if (icon_button({head.right() - 44, head.y, 48, 48}, "check:close", "Close", Icon::close, theme.ink)) {
    view.panel = Panel::none;
    wake_at(now_s);
  }
  if (!low()) begin_scroll("check:scroll", {whole.x + 8, head.bottom() + 4, whole.w - 16, whole.h - head_h - 20});
  column(head.x, head.w - 8, low() ? head.bottom() + 4 : y);
  const float full_w = w, left = x, top = y;
  const bool two = w > 700;
  if (two) w = (full_w - 32) / 2;
  paragraph(check.measure, "check:measure", theme.ink2);
  gap(12);
  if (view.input) typed_input(*this, check, values);
  for (std::size_t i = 0; i < check.inputs.size() && !view.input; ++i) {
    const CheckInput& input = check.inputs[i];
    const bool given = !std::holds_alternative<std::monostate>(view.check_given[i]);
    if (input.row.kind == Kind::choice) {
      input_chips(*this, input, i, values.x[i]);
    } else {
      input_dial(*this, input, i, values.x[i],
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
  check_plot(*this, check, values);
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
