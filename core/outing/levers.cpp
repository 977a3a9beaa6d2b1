#include "core/outing/levers.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "core/outing/lever_rows.h"
#include "core/outing/plan.h"

namespace gs {
namespace {

// Beyond every row. Not L::count: that is where the first limit stands.
constexpr L kNotJudged = L(0xFFFF);

/// Plain rows, then a limit and an ease row for each judged reading. Names live as long as the table.
struct Table {
  std::vector<Lever> rows{std::size_t(L::count)};
  std::array<L, kReadingCount> limit_of;
  struct Usual {
    double figure;
    L over;  // none: beyond every row
  };
  std::vector<Usual> usual_limits;  // by id - L::count
  std::vector<std::unique_ptr<std::string>> words;

  std::string_view keep(std::string text) {
    words.push_back(std::make_unique<std::string>(std::move(text)));
    return *words.back();
  }

  L plain(std::string_view key) const {
    const auto at = std::find_if(rows.begin(), rows.begin() + std::ptrdiff_t(L::count),
                                 [key](const Lever& row) { return row.key == key; });
    return L(at - rows.begin());
  }

  Table() {
    for (const std::span<const LeverRow> part :
         {radio_levers(), power_levers(), antenna_levers(), feedline_levers(), outing_levers(), safety_levers()})
      for (const LeverRow& row : part) rows[std::size_t(row.id)] = row.row;
    limit_of.fill(kNotJudged);
    for (const Limit& limit : limits()) {
      const R id = find_reading(limit.reading_key);
      if (id == R::count) continue;  // a test holds the two tables together
      const Reading& row = reading(id);
      limit_of[std::size_t(id)] = L(rows.size());
      const L over = limit.over.empty() ? kNotJudged : plain(limit.over);
      usual_limits.push_back({limit.limit, over});
      usual_limits.push_back({limit.ease, over});
      Lever lever{};
      lever.key = keep(std::string(row.key) + ".limit");
      lever.name = keep("Limit of " + std::string(row.name));
      lever.link = row.link;
      lever.unit = row.unit;
      lever.digits = row.digits;
      // ten times the tight zone on either side, shares within 0 to 100 %; over another lever, wherever that may
      // stand
      const double zone = std::abs(limit.ease - limit.limit);
      const double least = std::min(limit.limit, limit.ease), most = std::max(limit.limit, limit.ease);
      const bool share = row.unit == Unit::percent;
      const bool over_lever = over != kNotJudged;
      lever.least = share || least >= 0 ? std::max(0.0, least - 10 * zone) : least - 10 * zone;
      lever.most = share ? 100 : over_lever ? rows[std::size_t(over)].most + 10 * zone : most + 10 * zone;
      if (over_lever) lever.least = rows[std::size_t(over)].least;
      lever.step = row.digits > 0 ? 0.1 : 1;
      lever.evidence = limit.evidence;
      lever.source = limit.source;
      rows.push_back(lever);
      lever.key = keep(std::string(row.key) + ".ease");
      lever.name = keep(std::string(row.name) + " at ease");
      rows.push_back(lever);
    }
  }
};

const Table& table() {
  static const Table built;
  return built;
}

}  // namespace

std::size_t lever_count() { return table().rows.size(); }
double step_at(const Lever& row, double value) {
  if (row.scale == Scale::linear || !(std::abs(value) > 0)) return row.step;
  return std::min(row.step, std::pow(10, std::floor(std::log10(std::abs(value))) - 1));
}

const Lever& lever(L id) { return table().rows[std::size_t(id)]; }

L find_lever(std::string_view key) {
  const std::vector<Lever>& rows = table().rows;
  const auto at = std::find_if(rows.begin(), rows.end(), [key](const Lever& row) { return row.key == key; });
  return L(at - rows.begin());
}

L limit_lever(R id) { return table().limit_of[std::size_t(id)]; }
L ease_lever(R id) { return L(std::size_t(limit_lever(id)) + 1); }
double usual_limit(const Plan& plan, L id) {
  const Table::Usual& usual = table().usual_limits[std::size_t(id) - std::size_t(L::count)];
  return usual.over == kNotJudged ? usual.figure : usual.figure + plan[usual.over];
}
bool is_judged(R id) { return limit_lever(id) != kNotJudged; }

}  // namespace gs
