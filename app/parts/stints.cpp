#include "app/parts/stints.h"

#include <algorithm>
#include <cmath>

#include "app/parts/scale.h"
#include "app/parts/stepper.h"
#include "app/parts/time_line.h"
#include "core/outing/lever_range.h"

namespace gs::parts {

using look::Box;
using look::Face;
using look::Icon;
using mirror::Role;
namespace type = look::type;
namespace space = look::space;

namespace {

constexpr double kStepMin = 5, kBreakMin = 30;

std::string clock_text(double minutes) { return say_result(minutes, Unit::clock_minute, 0); }

const Value* value_in(const Stint& stint, L id) {
  for (const auto& [lever_id, value] : stint.set)
    if (lever_id == id) return &value;
  return nullptr;
}

Stint with_value(Stint stint, L id, const Value& value) {
  std::erase_if(stint.set, [id](const auto& row) { return row.first == id; });
  if (!std::holds_alternative<std::monostate>(value)) stint.set.emplace_back(id, value);
  return stint;
}

/// One thing that the stint may change: as planned, or its own. The stint as it is wanted.
std::optional<Stint> lever_of(Ui& ui, const Stint& stint, const std::string& key, L id) {
  const Lever& row = lever(id);
  const Plan& plan = ui.session.plan();
  if (row.applies && !row.applies(plan)) return std::nullopt;
  const Value* own = value_in(stint, id);
  const std::string at = key + ":" + std::string(row.key);
  std::optional<Stint> changed;
  if (row.kind == Kind::choice) {
    const std::string* chosen = own ? std::get_if<std::string>(own) : nullptr;
    const std::string plan_text = value_text(plan, id, ui.session.style());
    std::string text = plan_text + ", as planned";
    for (const Option& option : row.options())
      if (chosen && option.key == *chosen) text = option.name;
    const bool open = ui.session.view.unfolded == at;
    if (ui.row(at, row.name, text, text, open ? 1 : 0, chosen != nullptr)) {
      ui.session.view.unfolded = open ? key : at;
      ui.wake_at(ui.now_s);
    }
    if (!open) return std::nullopt;
    std::vector<Ui::Chip> items{{at + "=", "as planned", {}, chosen == nullptr}};
    for (const Option& option : row.options())
      if (!option.retired)
        items.push_back({at + "=" + std::string(option.key),
                         std::string(option.name),
                         {},
                         chosen != nullptr && option.key == *chosen});
    const int tapped = ui.chips(at + ":chips", row.name, items);
    ui.gap();
    if (tapped < 0) return std::nullopt;
    ui.session.view.unfolded = key;
    const std::string& item = items[std::size_t(tapped)].id;
    return with_value(stint, id, tapped == 0 ? Value{} : Value{item.substr(at.size() + 1)});
  }
  const double* number = own ? std::get_if<double>(own) : nullptr;
  if (number == nullptr) {
    if (!plan.has(id)) return std::nullopt;
    const std::string text = value_text(plan, id, ui.session.style()) + ", as planned";
    if (!ui.row(at, row.name, text, text + ", change it", 0, false)) return std::nullopt;
    return with_value(stint, id, plan[id]);
  }
  const double step = step_at(row, *number);
  const double most = most_of(plan, id);
  if (const auto wanted = stepper_row(ui, {at, std::string(row.name), say_lever(row, *number, ui.session.style()),
                                           *number, row.least, most, step}))
    changed = with_value(stint, id, snapped(row, most, *wanted, false));
  if (ui.button_in(ui.take(space::kTarget), at + ":planned", "As planned", Weight::plain, Icon::count, type::kBody,
                   true, std::string(row.name) + " as planned"))
    changed = with_value(stint, id, Value{});
  ui.gap();
  return changed;
}

void keep(Ui& ui, std::vector<Stint> all, std::string what) {
  ui.session.set_stints(std::move(all), std::move(what), ui.hand.gesture());
  ui.wake_at(ui.now_s);
}

void one_stint(Ui& ui, std::size_t at) {
  const Session& session = ui.session;
  const std::vector<Stint>& all = session.outing().stints;
  const Stint& stint = all[at];
  const std::string key = "stint:" + std::to_string(at), words = stint_words(stint, session.style());
  const std::string label = "From " + clock_text(stint.from_min);
  const bool open = session.view.unfolded.rfind(key, 0) == 0;
  if (ui.row(key, label, words, words, open ? 1 : 0)) {
    ui.session.view.unfolded = open ? std::string{} : key;
    ui.wake_at(ui.now_s);
  }
  if (!open) return ui.rule();
  std::vector<Stint> next = all;
  const double least = at > 0 ? all[at - 1].from_min : 0;
  const double most = at + 1 < all.size() ? all[at + 1].from_min : kMostStintMin;
  if (const auto from = stepper_row(
          ui, {key + ":from", "From", clock_text(stint.from_min), stint.from_min, least, most, kStepMin})) {
    next[at].from_min = *from;
    keep(ui, next, "stint from " + clock_text(*from));
  }
  const int chosen =
      ui.chips(key + ":kind", "On the air or a break",
               {{key + ":on", "on the air", {}, stint.on_air}, {key + ":off", "a break", {}, !stint.on_air}});
  if (chosen >= 0 && (chosen == 0) != stint.on_air) {
    next[at].on_air = chosen == 0;
    next[at].set.clear();
    keep(
        ui, next,
        chosen == 0 ? "on the air from " + clock_text(stint.from_min) : "break from " + clock_text(stint.from_min));
  }
  ui.gap();
  if (stint.on_air)
    for (const L id : stint_levers())
      if (const auto changed = lever_of(ui, stint, key, id)) {
        next[at] = *changed;
        keep(ui, next,
             "stint from " + clock_text(stint.from_min) + ", " + lower_first(std::string(lever(id).name)));
      }
  if (ui.button_in(ui.take(space::kTarget), key + ":out", "Take it out", Weight::plain, Icon::count, type::kBody,
                   true, "Take out " + label + ", " + words)) {
    next.erase(next.begin() + std::ptrdiff_t(at));
    ui.session.view.unfolded.clear();
    keep(ui, next, label + ", " + words + ", taken out");
  }
  ui.gap();
  ui.rule();
}

/// Where one more stint is put: in the middle of what comes after the last one.
double next_from(const Session& session) {
  const Outlook& out = session.outlook();
  const pace::Stay stay = stay_of(session.plan());
  const double starts = shown_min(session.plan(), stay.arrive_min + stay.set_up_min);
  const double last =
      session.outing().stints.empty() ? starts : std::max(starts, session.outing().stints.back().from_min);
  return std::floor((last + out[R::clock_pack_by_min].value) / 2 / kStepMin) * kStepMin;
}

}  // namespace

void stints(Ui& ui) {
  const Session& session = ui.session;
  ui.section("Changes while on the air", "stints");
  if (session.outlook()[R::clock_pack_by_min].state == State::unknown) {
    ui.paragraph("Needs arrive and leave by first.", "stints:none", ui.theme.ink2);
    return;
  }
  if (session.outing().stints.empty())
    ui.paragraph("One band, mode and power all the time, without a break.", "stints:none", ui.theme.ink2);
  for (std::size_t i = 0; i < session.outing().stints.size(); ++i) one_stint(ui, i);
  ui.gap();
  if (session.outing().stints.size() + 2 > kMostStints) return;
  const bool stacked = ui.w < 300;
  const float each = stacked ? ui.w : (ui.w - space::kGap) / 2;
  const Box box = ui.take(space::kTargetMain);
  const Box beside{stacked ? box.x : box.x + each + space::kGap, stacked ? box.bottom() + space::kGap : box.y, each,
                   box.h};
  if (stacked) ui.gap(space::kTargetMain + space::kGap);
  const double from = next_from(session);
  if (ui.button_in({box.x, box.y, each, box.h}, "stints:add", "Add a change", Weight::plain, Icon::plus,
                   type::kBody)) {
    ui.session.view.unfolded = "stint:" + std::to_string(session.outing().stints.size());
    keep(ui, with_stint(session.outing().stints, {.from_min = from}), "a change from " + clock_text(from));
  }
  if (ui.button_in(beside, "stints:break", "Add a break", Weight::plain, Icon::plus, type::kBody)) {
    // after it goes on as before it
    Stint after{.from_min = from + kBreakMin};
    if (!session.outing().stints.empty() && session.outing().stints.back().on_air)
      after.set = session.outing().stints.back().set;
    keep(ui, with_stint(with_stint(session.outing().stints, {.from_min = from, .on_air = false}), after),
         "a break from " + clock_text(from));
  }
}

}  // namespace gs::parts
