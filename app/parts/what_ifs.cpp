// What if: one step of a lever, what it does to the chance of the target, and which link it would break.
#include <algorithm>
#include <cmath>

#include "app/parts/change.h"
#include "app/parts/ui.h"
#include "core/outing/trial.h"

namespace gs::parts {

using look::Box;
using look::Face;
using look::Icon;
using mirror::Role;
namespace type = look::type;

namespace {

struct IfRow {
  std::string id, title, second, spoken;
  bool breaks;         // a link would fail
  const Figure* then;  // chance of the target with the change
};

/// Title over its consequence, from now to then, the resulting chance. True when it was tapped.
bool if_row(Ui& ui, const IfRow& row) {
  look::Pen& pen = ui.pen;
  const Figure& now = ui.session.outlook()[R::pace_chance_of_target_pct];
  const std::string chance = figure_text(R::pace_chance_of_target_pct, *row.then, ui.session.style());
  const bool bell = ui.w > 340 && std::isfinite(row.then->value) && std::isfinite(now.value);
  const float chance_w = pen.figure_width(chance, type::kValue);
  const float title_room = bell ? ui.w - 202 : ui.w - chance_w - 42;
  std::vector<std::string_view> titles = pen.lines(row.title, title_room, Face::bold, type::kBody);
  const bool under = look::Pen::breaks_word(titles) || title_room < 100;  // the chance below
  if (under) titles = pen.lines(row.title, ui.w - 24, Face::bold, type::kBody);
  const float indent = row.breaks ? 26 : 0;
  std::vector<std::string_view> seconds = pen.lines(row.second, title_room - indent, Face::regular, type::kLabel);
  if (under) seconds = pen.lines(row.second, ui.w - indent, Face::regular, type::kLabel);
  if (row.second.empty()) seconds.clear();
  const float step = type::line_height(type::kBody), small = type::line_height(type::kLabel);
  const float words_h = step * float(titles.size()) + small * float(seconds.size());
  const Box box = ui.take(std::max(66.0F, words_h + 18 + (under ? 34 : 0)));
  const ImU32 fill = ui.hand.down(row.id) ? ui.theme.fold : ui.theme.paper;
  if (ui.hand.down(row.id)) pen.fill(box, fill);
  const look::Ground ground(pen, fill);
  float base = box.y + 26;
  for (const std::string_view line : titles) {
    pen.text(box.x, base, line, Face::bold, type::kBody, ui.theme.ink);
    base += step;
  }
  if (row.breaks) pen.sign(look::Sign::fails, {box.x + 9, base - 5}, 8);
  for (const std::string_view line : seconds) {
    pen.text(box.x + indent, base + 1, line, row.breaks ? Face::bold : Face::regular, type::kLabel,
             row.breaks ? ui.theme.fails : ui.theme.ink2);
    base += small;
  }
  if (bell) {
    const float x1 = box.right() - 120, x0 = x1 - 70;
    const auto at = [&](double pct) { return x0 + 70 * float(pct / 100); };
    pen.dumbbell(x0, x1, box.y + 24, at(now.value), at(row.then->value),
                 row.then->value >= now.value ? ui.theme.holds : ui.theme.fails);
  }
  const float chance_base = under ? box.bottom() - 12 : box.y + 32;
  pen.figure(box.right() - 30, chance_base, chance, type::kValue, row.breaks ? ui.theme.fails : ui.theme.ink,
             look::Align::right);
  pen.icon(Icon::chev, box.right() - 20, chance_base - 18, 20, ui.theme.ink);
  mirror::Node item;
  item.role = Role::button;
  item.id = row.id;
  item.name = row.spoken;
  return ui.target(std::move(item), box, 0);
}

std::string chance_spoken(const Ui& ui, const Figure& then) {
  return "chance of target " +
         figure_spoken(R::pace_chance_of_target_pct, then, ui.session.plan(), ui.session.style());
}

void cheapest_row(Ui& ui, const Remedy& remedy) {
  const Figure& then = remedy.outlook[R::pace_chance_of_target_pct];
  const std::string effect = remedy_effect(remedy);
  const std::string title = "Cheapest: " + lower_first(remedy.words);
  const IfRow row{
      "limits:try", title,
      effect,       title + (effect.empty() ? "" : ", " + effect) + "; " + chance_spoken(ui, then) + ". Try it",
      false,        &then};
  if (if_row(ui, row)) {
    ui.session.set_all({{remedy.lever, remedy.value}}, remedy.words);
    ui.wake_at(ui.now_s);
  }
  ui.rule();
}

void trial_row(Ui& ui, const Trial& trial) {
  const R broken = broken_by(ui.session.outlook(), trial.outlook);
  const Figure& then = trial.outlook[R::pace_chance_of_target_pct];
  std::string second;
  if (broken != R::count) {
    second = lower_first(std::string(reading(broken).name)) + " fails";
  } else if (then.state != State::unknown) {
    const Figure& spare = trial.outlook[R::power_spare_min];
    if (spare.state != State::unknown)
      second = "battery to spare " + say_quantity(spare.value, Unit::minute, 0, ui.session.style());
  }
  const IfRow row{"what-if:" + trial.key,
                  trial.title,
                  second,
                  trial.title + ": " + chance_spoken(ui, then) + (second.empty() ? "" : ", " + second) + ". Try it",
                  broken != R::count,
                  &then};
  if (if_row(ui, row)) {
    ui.session.set_all(trial.sets, trial.title);
    ui.wake_at(ui.now_s);
  }
  ui.rule();
}

}  // namespace

void Ui::what_ifs(int most, const std::optional<Remedy>& cheapest) {
  const bool by_chance = session.outlook()[R::pace_chance_of_target_pct].state != State::unknown;
  static const std::vector<Trial> kNone;
  const std::vector<Trial>& trials = by_chance ? session.what_ifs() : kNone;
  if (trials.empty() && !cheapest) return;
  section("What if", "what-if");
  if (w > 270)
    pen.text(right() - 30, y - 9, "chance of target", Face::regular, type::kTick, theme.ink2, look::Align::right);
  open_group(Role::list, "what-if:list", "What if", {x, y, w, 0});
  if (cheapest) cheapest_row(*this, *cheapest);
  const std::size_t shown = std::min(trials.size(), std::size_t(most) - (cheapest ? 1 : 0));
  for (std::size_t i = 0; i < shown; ++i) trial_row(*this, trials[i]);
  close_group();
}

}  // namespace gs::parts
