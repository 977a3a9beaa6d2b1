#include "app/session.h"

#include <algorithm>
#include <cmath>

#include "app/tally_journal.h"
#include "core/outing/archive.h"

namespace gs {

Session::Session() : plan_(resolve(outing_)), outlook_(evaluate(plan_, now_)) {}

void Session::changed() {
  if (zone_on && zone_date_ != outing_.date) zone_ = zone_on(zone_date_ = outing_.date);
  outing_.habits = {settings.licence, settings.usual,
                    outing_.happened.on_air.empty() ? paces_ : own_paces(past_before(past_, outing_)), zone_};
  plan_ = resolve(outing_);
  remedy_.forget();
  turned_.forget();
  rolls_.forget();
  what_ifs_.forget();
  pinned_.reset();
  if (outing_.pinned) {
    Plan plan = resolve_pinned(outing_);
    const Outlook outlook = evaluate(plan);  // the pin is what was planned: nothing is "now" in it
    pinned_ = Worked{std::move(plan), outlook};
  }
  tick(now_);
  unsaved_ = true;
  refresh_history();
}

void Session::work_out_again() {
  const bool unsaved = unsaved_;
  changed();
  unsaved_ = unsaved;
}

const std::optional<Remedy>& Session::remedy(R binds) const {
  return remedy_.of({binds, style()}, [&] { return cheapest_remedy(outing_, binds, style()); });
}

const std::vector<Answer>& Session::turned(const std::vector<L>& levers, const Goal& goal) const {
  return turned_.of({levers, goal, style()}, [&] { return turn_round(outing_, levers, goal, style()); });
}

const std::vector<Trial>& Session::rolls() const {
  return rolls_.of(style(), [&] { return other_rolls(outing_, style()); });
}

const std::vector<Trial>& Session::what_ifs() const {
  return what_ifs_.of(style(), [&] { return gs::what_ifs(outing_, style()); });
}

void Session::tick(const Now& now) {
  now_ = now;
  outlook_ = evaluate(plan_, now_);
}

void Session::restore(Outing outing, bool unsaved) {
  outing_ = std::move(outing);
  changed();
  unsaved_ = unsaved;
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

void Session::set_stints(std::vector<Stint> stints, std::string what, int gesture) {
  if (stints == outing_.stints) return;
  history_.record(outing_, std::move(what), gesture != 0 && gesture == last_gesture_);
  outing_.stints = std::move(stints);
  last_gesture_ = gesture;
  changed();
}

void Session::rename(std::string name) {
  history_.record(outing_, "the name", false);
  outing_.name = std::move(name);
  changed();
}

void Session::note_down(std::string words) {
  if (words == outing_.notes) return;
  history_.record(outing_, "the notes", false);
  outing_.notes = std::move(words);
  changed();
}

void Session::set_date(std::string date) {
  history_.record(outing_, "the date, " + date, false);
  // an outing that goes by this machine's clock goes by it on its new day as well
  const bool follows = zone_ahead_that_day_min(plan_) == 0 && plan_.has(L::clock_utc_offset_min);
  outing_.date = std::move(date);
  changed();
  if (const double ahead_min = zone_ahead_that_day_min(plan_); follows && ahead_min != 0) {
    outing_ = with(std::move(outing_), L::clock_utc_offset_min, plan_[L::clock_utc_offset_min] + ahead_min);
    changed();
  }
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

void Session::make_usual(const std::vector<OwnUsual>& values) {
  for (const OwnUsual& own : values) {
    std::erase_if(settings.usual, [&](const OwnUsual& old) { return old.key == own.key; });
    settings.usual.push_back(own);
  }
  work_out_again();
}

void Session::drop_usual(const std::string& key) {
  std::erase_if(settings.usual, [&](const OwnUsual& old) { return old.key == key; });
  work_out_again();
}

void Session::remember_item(const std::string& old_name, const kit::Item& item) {
  std::vector<kit::Item>& own = settings.own_items;
  const auto named = [&own](const std::string& name) {
    return std::find_if(own.begin(), own.end(), [&name](const kit::Item& one) { return one.name == name; });
  };
  kit::Item bare = item;  // what was ticked belongs to one outing
  bare.charged = bare.packed = bare.stowed = false;
  if (const auto other = named(item.name); item.name != old_name && other != own.end()) own.erase(other);
  if (const auto at = named(old_name); at != own.end())
    *at = std::move(bare);
  else if (own.size() < kMostKitItems)
    own.push_back(std::move(bare));
}

void Session::forget_item(const std::string& name) {
  std::erase_if(settings.own_items, [&name](const kit::Item& one) { return one.name == name; });
}

void Session::set_licence(std::string key) {
  settings.licence = std::move(key);
  work_out_again();
}

void Session::undo() {
  if (!history_.can_undo()) return;
  if (history_.undo_opens_another()) put_away();
  outing_ = history_.undo(outing_, key_);
  last_gesture_ = 0;
  changed();
}

void Session::redo() {
  if (!history_.can_redo()) return;
  if (history_.redo_opens_another()) put_away();
  outing_ = history_.redo(outing_, key_);
  last_gesture_ = 0;
  changed();
}

bool Session::happened_if(bool done, std::string line) {
  if (!done) return false;
  noted_.push_back(std::move(line));
  changed();
  return true;
}

bool Session::go_on_air(double utc_s) {
  std::string line = start_line(outing_, utc_s);
  return happened_if(start_on_air(outing_.happened, utc_s), std::move(line));
}

bool Session::leave_air(double utc_s) {
  std::string line = end_line(outing_, utc_s);
  if (!happened_if(end_on_air(outing_.happened, utc_s), std::move(line))) return false;
  put_into_history();
  return true;
}

bool Session::count_contact(double utc_s, double steady_s) {
  if (!guard_.takes(steady_s)) return false;
  std::string line = contact_line(outing_, utc_s);
  return happened_if(add_contact(outing_.happened, utc_s), std::move(line));
}

bool Session::count_forgotten(double utc_s, int count) {
  std::string line = forgotten_line(outing_, utc_s, count);
  return happened_if(add_forgotten(outing_.happened, utc_s, count), std::move(line));
}

bool Session::take_back_contact() {
  std::string line = take_back_line(outing_);
  return happened_if(take_back(outing_.happened), std::move(line));
}

std::string Session::note_measured(std::string key, Value value, std::optional<double> utc_s) {
  Happened next = outing_.happened;
  std::erase_if(next.measured, [&](const Measured& row) { return row.key == key; });  // it was put right
  std::string why = measure(next, std::move(key), std::move(value), utc_s);
  if (!why.empty()) return why;
  outing_.happened = std::move(next);
  changed();
  return {};
}

std::string value_text(const Plan& plan, L id, const Style& style) {
  if (!plan.has(id)) return lever(id).optional ? "not given" : "not set";  // "none" would say that somebody looked
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
