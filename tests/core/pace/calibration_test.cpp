// Whether the interval and the drying-up sign keep what they promise, on simulated outings.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <string>
#include <vector>

#include "core/pace/drying.h"
#include "core/pace/pace.h"
#include "core/pace/tally.h"

using namespace gs::pace;

namespace {

constexpr unsigned kSeed = 20261125;
constexpr int kOutings = 20'000;
constexpr double kStayMin = 120;

/// How the pace runs: its factor at a minute, and how many contacts come at once.
enum class Weather { steady, bursts, fading };

struct Simulated {
  std::vector<double> at_min;
};

/// Contacts by thinning of a Poisson process at the highest pace.
Simulated outing(std::mt19937_64& bits, double per_hour, Weather weather, double stay_min = kStayMin) {
  Simulated found;
  std::exponential_distribution<double> wait(1);
  std::uniform_real_distribution<double> unit(0, 1);
  constexpr double kHalvesInMin = 45, kBurst = 3;
  const double highest = weather == Weather::bursts ? per_hour / kBurst : per_hour;
  for (double at = wait(bits) * 60 / highest; at < stay_min; at += wait(bits) * 60 / highest) {
    if (weather == Weather::fading && unit(bits) > std::exp2(-at / kHalvesInMin)) continue;
    // somebody spots one: on average three contacts within two minutes
    const int count = weather == Weather::bursts ? 1 + int(unit(bits) * 2 * kBurst - 0.5) : 1;
    for (int i = 0; i < count; ++i) found.at_min.push_back(at + (i ? 2 * unit(bits) : 0));
  }
  std::sort(found.at_min.begin(), found.at_min.end());
  std::erase_if(found.at_min, [&](double at) { return at >= stay_min; });
  return found;
}

double draw_pace(std::mt19937_64& bits, Pace usual) {
  const double shape = std::pow(100 / usual.spread_pct, 2);
  return std::gamma_distribution<double>(shape, usual.per_hour / shape)(bits);
}

/// The model's own probability of an interval for what is still to come.
double own_probability(Pace pace, double minutes, CountRange range) {
  return chance_of_target(pace, minutes, range.least) - chance_of_target(pace, minutes, range.most + 1);
}

struct Coverage {
  double inside_pct, own_pct;
};
Coverage coverage(Pace usual, Weather weather, unsigned seed) {
  std::mt19937_64 bits(seed);
  std::uniform_real_distribution<double> unit(0, 1);
  double inside = 0, own = 0;
  for (int n = 0; n < kOutings; ++n) {
    const Simulated found = outing(bits, draw_pace(bits, usual), weather);
    const double now_min = kStayMin * unit(bits);
    const auto so_far = std::upper_bound(found.at_min.begin(), found.at_min.end(), now_min) - found.at_min.begin();
    const Pace pace = updated(usual, double(so_far), now_min);
    const auto range = contacts_range(pace, kStayMin - now_min, 0.8);
    const auto to_come = std::ptrdiff_t(found.at_min.size()) - so_far;
    inside += to_come >= range->least && to_come <= range->most ? 1 : 0;
    own += own_probability(pace, kStayMin - now_min, *range);
  }
  return {100 * inside / kOutings, 100 * own / kOutings};
}

/// Share of outings that show the sign at any time, in percent. A wait is least likely just before it ends, so
/// those moments stand for all. `wrong_by`: the true pace over the usual one, nothing where it is drawn from its
/// spread.
double alarms_pct(Pace usual, Weather weather, double wrong_by, unsigned seed, double stay_min = kStayMin) {
  std::mt19937_64 bits(seed);
  int raised = 0;
  for (int n = 0; n < kOutings; ++n) {
    const double per_hour = wrong_by > 0 ? usual.per_hour * wrong_by : draw_pace(bits, usual);
    const Simulated found = outing(bits, per_hour, weather, stay_min);
    const std::span<const double> all(found.at_min);
    bool shown = false;
    for (std::size_t k = 2; k <= all.size() && !shown; ++k) {
      const double until = k < all.size() ? all[k] : stay_min;
      shown = drying(all.first(k), until, usual, stay_min).shown;
    }
    raised += shown ? 1 : 0;
  }
  return 100.0 * raised / kOutings;
}

}  // namespace

TEST_CASE("calibration: eight in ten are eight in ten, on 20,000 outings") {
  for (const Pace usual : {Pace{12, 50}, Pace{6, 80}, Pace{40, 30}}) {
    const Coverage steady = coverage(usual, Weather::steady, kSeed);
    const Coverage bursts = coverage(usual, Weather::bursts, kSeed + 1);
    const Coverage fading = coverage(usual, Weather::fading, kSeed + 2);
    MESSAGE(usual.per_hour << " an hour, spread " << usual.spread_pct << " %: inside " << steady.inside_pct
                           << " %, the model says " << steady.own_pct << " %; in bursts " << bursts.inside_pct
                           << " %; fading " << fading.inside_pct << " %");
    CHECK(std::abs(steady.inside_pct - steady.own_pct) < 1.5);
    CHECK(steady.inside_pct >= 79);
    // outside its model it is worse, and the guide says so; a broken simulation would not be
    CHECK(bursts.inside_pct < steady.inside_pct);
    CHECK(fading.inside_pct < steady.inside_pct);
  }
}

TEST_CASE("calibration: drying up is raised falsely by at most one steady outing in twenty") {
  const Pace usual{12, 50};
  for (const double wrong_by : {0.0, 0.4, 1.0, 2.5}) {
    const double pct = alarms_pct(usual, Weather::steady, wrong_by, kSeed + 3);
    MESSAGE("steady, true pace " << (wrong_by > 0 ? wrong_by : 1) << " of the usual"
                                 << std::string(wrong_by > 0 ? "" : " within its spread") << ": shown on " << pct
                                 << " %");
    CHECK(pct <= 100 * kMostFalseAlarms);
  }
  for (const double stay_min : {60.0, 240.0, 480.0}) {
    double most = 0;
    for (const Pace pace : {Pace{12, 50}, Pace{6, 80}, Pace{40, 30}})
      for (const double wrong_by : {0.4, 1.0})
        most = std::max(most, alarms_pct(pace, Weather::steady, wrong_by, kSeed + 3, stay_min));
    MESSAGE("steady, " << stay_min << " min on the air, other paces: shown on " << most << " % at most");
    CHECK(most <= 100 * kMostFalseAlarms);
  }
  for (const Pace pace : {Pace{12, 50}, Pace{30, 50}}) {
    const double fading = alarms_pct(pace, Weather::fading, 1, kSeed + 4),
                 bursts = alarms_pct(pace, Weather::bursts, 1, kSeed + 5);
    MESSAGE(pace.per_hour << " an hour, halving every 45 min: shown on " << fading << " %; in bursts " << bursts
                          << " %");
    CHECK(fading > alarms_pct(pace, Weather::steady, 1, kSeed + 3));
  }
}

// How long a stop that comes after an hour goes unnoticed, on outings of each pace.
TEST_CASE("drying up: how long a stop goes unnoticed, on simulated outings") {
  constexpr double kStopMin = 60, kWholeMin = 240;
  for (const Pace usual : {Pace{6, 50}, Pace{12, 50}, Pace{15, 50}, Pace{30, 50}}) {
    std::mt19937_64 bits(kSeed + 6);
    std::vector<double> seen_after;
    for (int n = 0; n < 2000; ++n) {
      const Simulated found = outing(bits, usual.per_hour, Weather::steady, kStopMin);
      double now = kStopMin;
      while (now < kWholeMin && !drying(found.at_min, now, usual, kWholeMin).shown) ++now;
      seen_after.push_back(now - kStopMin);
    }
    std::sort(seen_after.begin(), seen_after.end());
    const double half = seen_after[seen_after.size() / 2], most = seen_after[seen_after.size() * 9 / 10];
    MESSAGE(usual.per_hour << " an hour: a stop is shown after " << half << " min in half of 2,000 outings, after "
                           << most << " min in nine of ten");
    CHECK(half * usual.per_hour / 60 < 12);  // waits
    CHECK(half > 0);
  }
}

TEST_CASE("drying up: a stop is seen, and what cannot be judged is not") {
  const Pace usual{12, 50};
  std::vector<double> at;
  for (int i = 1; i <= 20; ++i) at.push_back(4.0 * i);  // fifteen an hour
  double seen_min = 0;
  for (double wait = 0; wait < 120 && seen_min == 0; ++wait)
    if (drying(at, 80 + wait, usual, 120).shown) seen_min = wait;
  // the fastest that any rule within its one outing in twenty can be, were the pace known for certain: a wait of w
  // gaps has the chance e^-w, and there are thirty of them in two hours at four minutes
  const double least_min = 4 * std::log(30 / kMostFalseAlarms);
  MESSAGE("no rule that keeps its promise could be faster than " << least_min << " min");
  CHECK(seen_min < 1.3 * least_min);
  CHECK(seen_min > least_min);
  MESSAGE("after 20 contacts four minutes apart a stop is shown after " << seen_min << " min");
  CHECK(seen_min > 10);
  CHECK(seen_min < 45);
  const Drying shown = drying(at, 80 + seen_min, usual, 120);
  CHECK(shown.sign == Drying::Sign::wait);
  CHECK(shown.minutes == seen_min);
  CHECK_FALSE(drying(at, 81, usual, 120).shown);
  CHECK_FALSE(drying(at, 79, usual, 120).shown);  // before the last contact
  CHECK_FALSE(drying({}, 500, usual, 120).shown);
  CHECK_FALSE(drying(std::vector<double>{5}, 500, usual, 120).shown);
  CHECK_FALSE(drying(std::vector<double>{5, 4}, 500, usual, 120).shown);
  CHECK_FALSE(drying(at, 500, {0, 50}, 120).shown);
  CHECK_FALSE(drying(at, std::nan(""), usual, 120).shown);
  CHECK_FALSE(drying(at, 500, usual, std::nan("")).shown);
}

TEST_CASE("tally: presses by a scripted clock") {
  int counted = 0;
  TapGuard steady;
  for (int i = 0; i < 1000; ++i) counted += steady.takes(100 + 0.450 * i);
  CHECK(counted == 1000);
  counted = 0;
  TapGuard pairs;
  for (int i = 0; i < 1000; ++i) {
    counted += pairs.takes(100 + 0.5 * i);
    counted += pairs.takes(100 + 0.5 * i + 0.1);
  }
  CHECK(counted == 1000);
  TapGuard guard;
  CHECK(guard.takes(10));
  CHECK_FALSE(guard.takes(10.399));
  CHECK(guard.takes(10.401));
  CHECK_FALSE(guard.takes(std::nan("")));
  CHECK(guard.takes(3));  // another run of the clock
}
