#include "app/session.h"

#include <cmath>

#include "core/outing/archive.h"

namespace gs {

Session::Session() : plan_(resolve(outing_)), outlook_(evaluate(plan_)) {}

void Session::changed() {
  outing_.habits.licence = settings.licence;
  plan_ = resolve(outing_);
  outlook_ = evaluate(plan_);
  pinned_.reset();
  if (outing_.pinned) {
    Plan plan = resolve_pinned(outing_);
    Outlook outlook = evaluate(plan);
    pinned_ = Worked{std::move(plan), outlook};
  }
  unsaved_ = true;
}

void Session::open(Outing outing, std::string what) {
  history_.record(outing_, std::move(what), false, true);
  outing_ = std::move(outing);
  last_lever_.reset();
  changed();
}

void Session::restore(Outing outing) {
  outing_ = std::move(outing);
  changed();
  unsaved_ = false;
}

std::string Session::set(L id, Value value, int gesture) {
  if (std::string why = refusal(id, value); !why.empty()) return why;
  if (outing_.set[std::size_t(id)] == value) return {};
  Outing next = with(outing_, id, std::move(value));
  const std::string what = std::string(lever(id).name) + ", " + value_text(resolve(next), id, settings.style);
  history_.record(outing_, what, gesture != 0 && gesture == last_gesture_ && last_lever_ == id);
  last_gesture_ = gesture;
  last_lever_ = id;
  // the first class that is chosen is the person's own, until the settings say otherwise
  if (const std::string* key = std::get_if<std::string>(&next.set[std::size_t(id)]);
      key && id == L::rules_class && settings.licence.empty())
    settings.licence = *key;
  outing_ = std::move(next);
  changed();
  return {};
}

void Session::set_all(const std::vector<std::pair<L, Value>>& sets, std::string what) {
  if (sets.empty()) return;
  history_.record(outing_, std::move(what), false);
  for (const auto& [id, value] : sets) outing_ = with(std::move(outing_), id, value);
  last_lever_ = sets.front().first;
  last_gesture_ = 0;
  changed();
}

void Session::set_kit(std::vector<kit::Item> kit, std::string what) {
  if (kit == outing_.kit) return;
  history_.record(outing_, std::move(what), false);
  outing_.kit = std::move(kit);
  last_gesture_ = 0;
  changed();
}

void Session::rename(std::string name) {
  history_.record(outing_, "the name", false);
  outing_.name = std::move(name);
  changed();
}

void Session::pin() {
  history_.record(outing_, "the pin", false);
  outing_.kept = kept_without_pin(outing_.kept);
  outing_.pinned = outing_.set;
  outing_.pinned_name = last_lever_ ? value_text(plan_, *last_lever_, settings.style) : std::string{};
  changed();
}

void Session::unpin() {
  history_.record(outing_, "the pin", false);
  outing_.kept = kept_without_pin(outing_.kept);
  outing_.pinned.reset();
  outing_.pinned_name.clear();
  changed();
}

void Session::go_to_pin() {
  if (!outing_.pinned) return;
  history_.record(outing_, "going back to the pin", false);
  outing_.set = *outing_.pinned;
  changed();
}

void Session::set_licence(std::string key) {
  settings.licence = std::move(key);
  const bool unsaved = unsaved_;
  changed();
  unsaved_ = unsaved;
}

void Session::undo() {
  if (!history_.can_undo()) return;
  outing_ = history_.undo(outing_);
  last_gesture_ = 0;
  changed();
}

void Session::redo() {
  if (!history_.can_redo()) return;
  outing_ = history_.redo(outing_);
  last_gesture_ = 0;
  changed();
}

std::string value_text(const Plan& plan, L id, const Style& style) {
  if (!plan.has(id)) return lever(id).optional ? "none" : "not set";
  const Lever& row = lever(id);
  if (row.kind == Kind::choice) return std::string(row.options()[std::size_t(plan[id])].name);
  if (row.kind == Kind::text) return row.write(plan[id]);
  return say_lever(row, plan[id], style);
}

std::string value_spoken(const Plan& plan, L id, const Style& style) {
  if (!plan.has(id) || lever(id).kind != Kind::number) return value_text(plan, id, style);
  return speak_quantity(plan[id], lever(id).unit, digits_needed(plan[id], lever(id).digits), style);
}

}  // namespace gs
