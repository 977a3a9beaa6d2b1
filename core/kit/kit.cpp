#include "core/kit/kit.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <string_view>

namespace gs::kit {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr int kMostPieces = 1000;

bool is_chance(double x) { return x >= 0 && x <= 1; }

/// What is known of one function while the list is walked through.
struct Function {
  double all_fail = 1;
  std::size_t pieces = 0, last_item = 0;
  bool vital = false;
};

}  // namespace

std::string item_trouble(const Item& item) {
  if (!(item.weight_g >= 0) || !std::isfinite(item.weight_g)) return item.name + ": the weight must be 0 or more.";
  if (item.backups < 0 || item.backups >= kMostPieces) return item.name + ": backups must be 0 to 999.";
  if (!is_chance(item.works)) return item.name + ": the chance to work must be 0 to 100 %.";
  return {};
}

Holds holds(std::span<const Item> items) {
  std::map<std::string_view, Function> functions;
  Holds result;
  for (std::size_t i = 0; i < items.size(); ++i) {
    const Item& item = items[i];
    if (!item_trouble(item).empty()) continue;
    const int pieces = item.backups + 1;
    result.weight_g += item.weight_g * pieces;
    Function& function = functions[item.function];
    function.all_fail *= std::pow(1 - item.works, pieces);
    function.pieces += std::size_t(pieces);
    function.last_item = i;
    function.vital = function.vital || item.vital;
  }
  for (const auto& row : functions) {
    const Function& function = row.second;
    if (!function.vital) continue;
    result.chance *= 1 - function.all_fail;
    if (function.pieces == 1) result.single_points.push_back(function.last_item);
  }
  std::sort(result.single_points.begin(), result.single_points.end());
  return result;
}

BestBackup best_backup(std::span<const Item> items) {
  BestBackup best{items.size(), holds(items).chance};
  std::vector<Item> more(items.begin(), items.end());
  for (std::size_t i = 0; i < more.size(); ++i) {
    ++more[i].backups;
    const double chance = holds(more).chance;
    --more[i].backups;
    if (chance > best.chance) best = {i, chance};
  }
  return best;
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
