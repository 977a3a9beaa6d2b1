// What is carried: does it hold, what does it hang on, what does it weigh.
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <vector>

namespace gs::kit {

/// One line of the list. Items of one function stand in for each other; `backups` are further pieces of the same
/// item.
struct Item {
  std::string name;
  std::string function;   // what it is for: "power", "antenna"; free words, compared as they are
  double weight_g = 0;    // of one piece, >= 0
  int backups = 0;        // pieces beyond the first, >= 0
  double works = 1;       // chance that one piece works all through the outing, 0..1
  bool vital = true;      // a function with a vital item stops the outing when nothing is left to do it
  double volume_l = 0;    // of one piece, >= 0
  double set_up_min = 0;  // its share of setting up, once, however many backups, >= 0
  bool charge = false;    // wants charging the evening before
  bool charged = false, packed = false, stowed = false;  // what was ticked: at home, at home, in the park
  std::string cause = {};  // what lets it fail together with others of its function: "one charger"; "" for nothing
  std::string lever = {};  // key of a lever of the plan that it answers: "battery.capacity_ah"; "" for none
  double amount = 0;       // what it answers, in that lever's unit
  std::string kept = {};   // what a file said of it beyond this, JSON members, written back as they were
  bool operator==(const Item&) const = default;
};
/// Why an item cannot be counted, in words, or "".
std::string item_trouble(const Item& item);

struct Holds {
  double chance = 1;    // 0..1 that every vital function is done by something
  double weight_g = 0;  // of everything carried, backups included
  std::vector<std::size_t>
      single_points;  // items without which a vital function has nobody: index into the list, in order
};

/// Of the failures of pieces that share a cause, this share comes to all of them at once: the beta factor of common
/// cause, 0.1 where nothing better is known (common practice).
inline constexpr double kSharedFailures = 0.1;

/// One function: what all that does it is worth together.
struct FunctionHolds {
  std::string_view name;    // of the list, which must outlive this
  double chance, weight_g;  // that something does it; backups weighed too
  int pieces;
  bool vital;
  std::size_t last_item;  // index of its last item in the list
};
/// In the order in which the list first names them. Items with trouble are left out.
std::vector<FunctionHolds> by_function(std::span<const Item> items);

/// Vital functions in series, what does the same job in parallel: chance = product over functions of
/// 1 - product over pieces of (1 - works). Pieces are taken as independent unless they name the same cause (one
/// charger, one wet bag): then kSharedFailures of the surest one's failures come to all of them at once. Items with
/// trouble are left out. No vital function: chance 1. Source: reliability of series and parallel systems,
/// NIST/SEMATECH e-Handbook of Statistical Methods ch. 8.1.8 (section number from memory), checked against
/// published examples.
Holds holds(std::span<const Item> items);

/// The item whose backup (one more piece of it) raises the chance most, and the chance then. Index items.size()
/// where no backup helps.
struct BestBackup {
  std::size_t item;
  double chance;
};
BestBackup best_backup(std::span<const Item> items);
/// The same for what a gram of it brings; a piece lighter than 1 g counts as 1 g.
BestBackup best_backup_per_gram(std::span<const Item> items);

/// Items that may stay at home, heaviest first: without any one of them (all its pieces) every vital function still
/// has something to do it and the chance stays at least_chance or more, or what it is without them where it was
/// less to begin with. What is not vital always may, but for functions in `keep`.
std::vector<std::size_t> may_stay_home(std::span<const Item> items, double least_chance,
                                       std::span<const std::string_view> keep = {});

/// All must work; any one is enough; at least `needed` of `pieces` alike. Chances 0..1; NaN for one outside. None
/// at all: series 1, parallel 0. Pieces 1 to 1000. Source: the same chapter; binomial sum.
double series(std::span<const double> chances);
double parallel(std::span<const double> chances);
/// Any one is enough, and a share 0..1 of the surest one's failures comes to all of them at once. Each one's own
/// chance stays what it is. A single one: its chance.
double parallel_sharing(std::span<const double> chances, double shared);
/// One works, or it does not and the change to the spare works and the spare does.
double stand_by(double chance, double change_over, double spare);
double at_least(int needed, int pieces, double chance);

}  // namespace gs::kit
