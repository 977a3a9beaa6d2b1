// What the person has open: the outing with its results, the settings, and where on the sheets they are. Edits go
// through here so that undo, results and saving never miss one.
#pragma once

#include <optional>
#include <set>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

#include "app/once.h"
#include "app/shelf.h"
#include "core/outing/checks.h"
#include "core/outing/history.h"
#include "core/outing/outlook.h"
#include "core/outing/own_things.h"
#include "core/outing/past.h"
#include "core/outing/remedy.h"
#include "core/outing/settings.h"
#include "core/outing/solve.h"
#include "core/outing/trial.h"
#include "core/pace/tally.h"

namespace gs {

enum class Sheet : unsigned char { overview, link, more, text, on_air, after, card, outings, things, history };

/// A panel that covers part of the sheet; the chain stays.
enum class Panel : unsigned char { none, why, keypad, check, choices, pin, forgotten, turned };

/// Of Panel::turned: the reading that is to reach a value, and the levers that may be changed for it.
struct Turn {
  R reading = R::count;
  double wanted = 0, step = 1, most = 1;
  std::vector<L> levers, may;
  /// What else may be asked for in its place, itself included; empty: nothing.
  struct Goal {
    R reading;
    double wanted, step, most;
  };
  std::vector<Goal> goals = {};
  bool by_kind = false;  // which antenna fits, instead: what_fits.cpp
};

struct View {
  Sheet sheet = Sheet::overview;
  Link link = Link::feedline;  // of Sheet::link
  Panel panel = Panel::none;
  R why = R::count;                  // of Panel::why
  L lever = L::count;                // of Panel::keypad and Panel::choices; count: what a turned panel is to reach
  std::string typed;                 // of Panel::keypad
  std::size_t unit = 0;              // chosen unit chip of the keypad
  std::optional<std::size_t> input;  // of Panel::check: the input that is typed
  std::optional<std::size_t> along;  // of Panel::check: the input that was last moved
  std::string sought;                // of Panel::choices: what the list is searched for
  std::string unfolded;              // id of the one row that is open
  std::string kit_list = {};         // id of the list that the kit is ticked for; "": by the hour
  std::string_view text;             // of Sheet::text: a page of ours, where there are no browser tabs
  const Check* check = nullptr;
  std::vector<Value> check_given;
  std::string copied;  // what was last handed to the clipboard: its button says so
  Turn turn;
  double flash_until_s = 0;            // of the contact button, monotonic
  std::set<std::string> adopted = {};  // keys of levers, on the sheet after the outing
  std::size_t past_shown = 12;         // rows of the history
};

class Session {
 public:
  Session();

  const Outing& outing() const { return outing_; }
  const Plan& plan() const { return plan_; }
  const Outlook& outlook() const { return outlook_; }
  const Plan* pinned_plan() const { return pinned_ ? &pinned_->plan : nullptr; }
  const Outlook* pinned_outlook() const { return pinned_ ? &pinned_->outlook : nullptr; }
  const Style& style() const { return settings.style; }
  // What is sought by trying many plans: once a change, as it is asked in every frame.
  const std::optional<Remedy>& remedy(R binds) const;  // cheapest_remedy() of the plan as it is
  /// What remedy() found last, however the plan changed since: for a drag, whose every step would seek anew.
  const std::optional<Remedy>& last_remedy() const { return remedy_.last(); }
  const std::vector<Answer>& turned(const std::vector<L>& levers, const Goal& goal) const;  // turn_round()
  const std::vector<Trial>& rolls() const;                                                  // other_rolls()
  const std::vector<Trial>& what_ifs() const;

  // --- the person's own things (session_things.cpp)
  const std::vector<OwnThing>& things() const { return things_; }
  const std::string& things_trouble() const { return things_trouble_; }  // why they cannot be changed here, or ""
  const std::optional<OwnThing>& dropped_thing() const { return dropped_thing_; }
  void load_things(std::string_view text);  // at start
  void follow_things(std::string_view text, bool refused);
  std::size_t add_things(const std::vector<OwnThing>& things);        // of a file; how many were not here yet
  void keep_thing(OwnGroup group);                                    // this outing's; named by what it is
  void use_thing(std::size_t at);                                     // one step of undo
  std::string rename_thing(std::size_t at, const std::string& name);  // "" or why not
  void drop_thing(std::size_t at);
  void bring_back_thing();  // the last one
  bool take_things_unsaved() { return std::exchange(things_unsaved_, false); }

  // --- earlier outings (session_history.cpp)
  const std::vector<PastOuting>& past() const { return past_; }      // by date
  const std::string& past_kept() const { return past_kept_; }        // LoadedHistory::kept
  const std::string& past_trouble() const { return past_trouble_; }  // why it cannot be changed here, or ""
  const std::optional<PastOuting>& dropped_past() const { return dropped_past_; }
  void load_past(std::string_view text);  // at start
  void follow_past(std::string_view text, bool refused);
  bool in_history() const;  // whether the open outing stands in it
  void put_into_history();  // the open outing, once it is over; ending it does so by itself
  void drop_past(std::size_t at);
  void bring_back_past();                                        // the last one
  std::size_t add_past(const std::vector<PastOuting>& outings);  // those that are not in it; how many these were
  bool take_past_unsaved() { return std::exchange(past_unsaved_, false); }

  const Now& now() const { return now_; }
  Phase phase() const { return phase_of(plan_, now_); }

  void tick(const Now& now);  // before each frame
  /// The machine's zone on a date; nothing is known of it without.
  pace::ZoneDay (*zone_on)(std::string_view date) = nullptr;

  // --- the open outing among those on the shelf (session_shelf.cpp)
  const std::string& key() const { return key_; }
  /// Another outing, on the shelf beside the others; one step of undo, which goes back to the one before.
  void open(Outing outing, std::string what);
  std::string open_kept(const std::string& key);  // "" or why not
  void duplicate(const std::string& key);
  std::string rename_kept(const std::string& key, const std::string& name);  // "" or why not
  void throw_away(const std::string& key);
  /// Another window has kept this text. `refused`: what was kept here last did not go in, the other one came first.
  void follow(const std::string& key, std::string text, bool refused);
  /// What is changed goes onto the shelf; nothing where nothing was. An outing of a newer version stays as it is.
  void put_away();
  bool held() const {
    const KeptOuting* kept = shelf.find(key_);
    return kept && kept->newer;
  }
  bool unsaved() const { return unsaved_; }
  void keep_over();  // the person said that a newer version's record may be written over
  /// At start: the outing under this key, else the last one that can be read, else an empty one.
  void start_with(const std::string& key);

  void restore(Outing outing, bool unsaved = false);  // at start: no step of undo
  /// Sets a lever; refused values change nothing and return the reason. `gesture` is equal for all steps of one
  /// drag.
  std::string set(L id, Value value, int gesture = 0);
  /// Several levers in one step of undo. Precondition: none of them is refused.
  void set_all(const std::vector<std::pair<L, Value>>& sets, std::string what);
  void set_kit(std::vector<kit::Item> kit, std::string what);  // one step of undo; nothing where it is the same
  void set_stints(std::vector<Stint> stints, std::string what, int gesture = 0);  // one step of undo
  void rename(std::string name);
  void note_down(std::string words);  // the outing's notes; one step of undo, nothing where they are the same
  /// An item of the person's own making, to be offered again; takes the place of the one called `old_name`.
  void remember_item(const std::string& old_name, const kit::Item& item);
  void forget_item(const std::string& name);
  void make_usual(const std::vector<OwnUsual>& values);  // of the settings
  void drop_usual(const std::string& key);               // of the settings: the table's own counts again
  void set_date(std::string date);                       // ISO 8601
  void set_licence(std::string key);                     // of the settings; the outing is worked out anew
  void pin();
  void unpin();
  void go_to_pin();
  bool can_undo() const { return history_.can_undo(); }
  bool can_redo() const { return history_.can_redo(); }
  const std::string& undo_names() const { return history_.undo_names(); }
  void undo();
  void redo();

  // --- on the air: no steps of undo, noted at once
  bool go_on_air(double utc_s);
  bool leave_air(double utc_s);
  /// `steady_s`: the same press by a clock that only runs forward; a bounce of the finger does not count.
  bool count_contact(double utc_s, double steady_s);
  bool count_forgotten(double utc_s, int count);
  bool take_back_contact();
  /// Notes what was measured; why it cannot be, in words, or "".
  std::string note_measured(std::string key, Value value, std::optional<double> utc_s);
  /// Lines for the journal since the last time.
  std::vector<std::string> take_noted() { return std::exchange(noted_, {}); }

  Settings settings;
  View view;
  std::vector<std::string> notes;  // sentences for the person, newest last
  Shelf shelf;

 private:
  struct Worked {
    Plan plan;
    Outlook outlook;
  };
  mutable Once<std::pair<R, Style>, std::optional<Remedy>> remedy_;
  mutable Once<std::tuple<std::vector<L>, Goal, Style>, std::vector<Answer>> turned_;
  mutable Once<Style, std::vector<Trial>> rolls_, what_ifs_;

  void changed();
  void work_out_again();  // the same outing under other habits: nothing to save
  bool happened_if(bool done, std::string line);

  bool may_change_things();

  void past_changed();
  void refresh_history();
  std::vector<PastOuting>::const_iterator past_row() const;  // of the open outing
  pace::ZoneDay zone_;                                       // on zone_date_
  std::string zone_date_;
  std::vector<PastOuting> past_;
  std::vector<OwnPace> paces_;  // that they come to
  std::string past_kept_, past_trouble_;
  std::optional<PastOuting> dropped_past_;
  bool past_unsaved_ = false;

  std::vector<OwnThing> things_;
  std::string things_trouble_;
  std::optional<OwnThing> dropped_thing_;
  bool things_unsaved_ = false;
  std::string key_ = "outing";  // the record of the open outing
  Outing outing_;
  Plan plan_;
  Outlook outlook_;
  std::optional<Worked> pinned_;
  History history_;
  std::optional<L> last_lever_;  // of the last change, names the pin
  int last_gesture_ = 0;
  bool unsaved_ = false;
  Now now_;
  pace::TapGuard guard_;
  std::vector<std::string> noted_;
};

/// "15 m", "RG-213", "not set": a lever's value in this plan.
std::string value_text(const Plan& plan, L id, const Style& style);
std::string value_spoken(const Plan& plan, L id, const Style& style);

}  // namespace gs
