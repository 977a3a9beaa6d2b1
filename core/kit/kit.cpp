#include "core/kit/kit.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <string_view>

namespace gs::kit {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr int kMostPieces = 1000;

bool is_chance(double x) { return x >= 0 && x <= 1; }

/// That all of these pieces fail, a share of the surest one's failures being everybody's.
double all_fail(std::span<const double> fails, double shared) {
  if (fails.size() < 2) return fails.empty() ? 1 : fails[0];
  const double common = shared * *std::min_element(fails.begin(), fails.end());
  if (common >= 1) return 1;
  double apart = 1;
  for (const double fail : fails) apart *= (fail - common) / (1 - common);
  return common + (1 - common) * apart;
}

/// The same over the items of one function: pieces with one cause together, all others apart.
double all_fail(std::span<const Item> items, std::string_view function) {
  double none = 1;
  std::vector<std::string_view> told;
  for (const Item& item : items) {
    if (item.function != function || !item_trouble(item).empty()) continue;
    if (item.cause.empty()) {
      none *= std::pow(1 - item.works, item.backups + 1);
      continue;
    }
    if (std::find(told.begin(), told.end(), item.cause) != told.end()) continue;
    told.push_back(item.cause);
    std::vector<double> fails;
    for (const Item& other : items)
      if (other.function == function && other.cause == item.cause && item_trouble(other).empty())
        fails.insert(fails.end(), std::size_t(other.backups) + 1, 1 - other.works);
    none *= all_fail(fails, kSharedFailures);
  }
  return none;
}

BestBackup best_by(std::span<const Item> items, bool per_gram) {
  const double now = holds(items).chance;
  BestBackup best{items.size(), now};
  double best_gain = per_gram ? 0 : now;
  std::vector<Item> more(items.begin(), items.end());
  for (std::size_t i = 0; i < more.size(); ++i) {
    ++more[i].backups;
    const double chance = holds(more).chance;
    --more[i].backups;
    const double gain = per_gram ? (chance - now) / std::max(1.0, more[i].weight_g) : chance;
    if (chance <= now || gain <= best_gain) continue;
    best = {i, chance};
    best_gain = gain;
  }
  return best;
}

}  // namespace

std::string item_trouble(const Item& item) {
  if (!(item.weight_g >= 0) || !std::isfinite(item.weight_g)) return item.name + ": the weight must be 0 or more.";
  if (item.backups < 0 || item.backups >= kMostPieces) return item.name + ": backups must be 0 to 999.";
  if (!is_chance(item.works)) return item.name + ": the chance to work must be 0 to 100 %.";
  if (!(item.volume_l >= 0) || !std::isfinite(item.volume_l)) return item.name + ": the volume must be 0 or more.";
  if (!(item.set_up_min >= 0) || !std::isfinite(item.set_up_min))
    return item.name + ": the minutes must be 0 or more.";
  return {};
}

std::vector<FunctionHolds> by_function(std::span<const Item> items) {
  std::vector<FunctionHolds> functions;
  for (std::size_t i = 0; i < items.size(); ++i) {
    const Item& item = items[i];
    if (!item_trouble(item).empty()) continue;
    auto at = std::find_if(functions.begin(), functions.end(),
                           [&item](const FunctionHolds& one) { return one.name == item.function; });
    if (at == functions.end()) at = functions.insert(at, {item.function, 0, 0, 0, false, i});
    const int pieces = item.backups + 1;
    at->weight_g += item.weight_g * pieces;
    at->pieces += pieces;
    at->vital = at->vital || item.vital;
    at->last_item = i;
  }
  for (FunctionHolds& one : functions) one.chance = 1 - all_fail(items, one.name);
  return functions;
}

Holds holds(std::span<const Item> items) {
  Holds result;
  for (const FunctionHolds& function : by_function(items)) {
    result.weight_g += function.weight_g;
    if (!function.vital) continue;
    result.chance *= function.chance;
    if (function.pieces == 1) result.single_points.push_back(function.last_item);
  }
  std::sort(result.single_points.begin(), result.single_points.end());
  return result;
}

BestBackup best_backup(std::span<const Item> items) { return best_by(items, false); }
BestBackup best_backup_per_gram(std::span<const Item> items) { return best_by(items, true); }

std::vector<std::size_t> may_stay_home(std::span<const Item> items, double least_chance,
                                       std::span<const std::string_view> keep) {
  const std::vector<FunctionHolds> functions = by_function(items);
  std::vector<std::size_t> all;
  for (std::size_t i = 0; i < items.size(); ++i) {
    const Item& item = items[i];
    if (!item_trouble(item).empty()) continue;
    const auto own = std::find_if(functions.begin(), functions.end(),
                                  [&item](const FunctionHolds& one) { return one.name == item.function; });
    const bool last = own->pieces == item.backups + 1;
    if (last && (own->vital || std::find(keep.begin(), keep.end(), item.function) != keep.end())) continue;
    std::vector<Item> without(items.begin(), items.end());
    without.erase(without.begin() + std::ptrdiff_t(i));
    // a stand-in of a vital function stays vital without the item that said so
    if (own->vital)
      for (Item& other : without) other.vital = other.vital || other.function == item.function;
    const double chance = holds(without).chance;
    if (chance >= least_chance || chance >= holds(items).chance) all.push_back(i);
  }
  std::stable_sort(all.begin(), all.end(), [&items](std::size_t a, std::size_t b) {
    return items[a].weight_g * (items[a].backups + 1) > items[b].weight_g * (items[b].backups + 1);
  });
  return all;
}

double series(std::span<const double> chances) {
  double all = 1;
  for (const double x : chances) all *= is_chance(x) ? x : kNaN;
  return all;
}

double parallel(std::span<const double> chances) {
  double none = 1;
  for (const double x : chances) none *= is_chance(x) ? 1 - x : kNaN;
  return 1 - none;
}

double parallel_sharing(std::span<const double> chances, double shared) {
  if (!is_chance(shared)) return kNaN;
  std::vector<double> fails;
  for (const double x : chances) fails.push_back(is_chance(x) ? 1 - x : kNaN);
  return 1 - all_fail(fails, shared);
}

double stand_by(double chance, double change_over, double spare) {
  return is_chance(chance) && is_chance(change_over) && is_chance(spare)
             ? chance + (1 - chance) * change_over * spare
             : kNaN;
}

double at_least(int needed, int pieces, double chance) {
  if (pieces < 1 || pieces > kMostPieces || !is_chance(chance)) return kNaN;
  if (needed <= 0) return 1;
  if (needed > pieces) return 0;
  // How many of the pieces so far work, one piece after another: no binomial coefficient can overflow.
  std::vector<double> working(std::size_t(pieces) + 1, 0.0);
  working[0] = 1;
  for (int piece = 0; piece < pieces; ++piece)
    for (std::size_t k = std::size_t(piece) + 1; k-- > 0;) {
      working[k + 1] += working[k] * chance;
      working[k] *= 1 - chance;
    }
  double sum = 0;
  for (std::size_t k = std::size_t(needed); k < working.size(); ++k) sum += working[k];
  return std::min(1.0, sum);
}

}  // namespace gs::kit
