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
  std::string function;  // what it is for: "power", "antenna"; free words, compared as they are
  double weight_g = 0;   // of one piece, >= 0
  int backups = 0;       // pieces beyond the first, >= 0
  double works = 1;      // chance that one piece works all through the outing, 0..1
  bool vital = true;     // a function with a vital item stops the outing when nothing is left to do it
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

/// Vital functions in series, what does the same job in parallel: chance = product over functions of
/// 1 - product over pieces of (1 - works). Pieces are taken as independent: two that share a cause (one charger,
/// one wet bag) are not, and the true chance is lower. Items with trouble are left out. No vital function:
/// chance 1. Source: reliability of series and parallel systems, NIST/SEMATECH e-Handbook of Statistical Methods
/// ch. 8.1.8 (section number from memory), checked against published examples.
Holds holds(std::span<const Item> items);

/// The item whose backup (one more piece of it) raises the chance most, and the chance then. Index items.size()
/// where no backup helps.
struct BestBackup {
  std::size_t item;
  double chance;
};
BestBackup best_backup(std::span<const Item> items);

/// All must work; any one is enough; at least `needed` of `pieces` alike. Chances 0..1; NaN for one outside. None
/// at all: series 1, parallel 0. Pieces 1 to 1000. Source: the same chapter; binomial sum.
double series(std::span<const double> chances);
double parallel(std::span<const double> chances);
double at_least(int needed, int pieces, double chance);

}  // namespace gs::kit
