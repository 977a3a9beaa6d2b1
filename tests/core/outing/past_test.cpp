// Earlier outings: what is kept of one, the usual pace that they give, and their file.
#include "core/outing/past.h"

#include <doctest/doctest.h>

#include <cmath>
#include <random>
#include <string>

#include "core/outing/archive.h"
#include "core/pace/prior.h"
#include "tests/core/outing/outings.h"

using namespace gs;

namespace {

PastOuting past(const char* date, double contacts, double minutes, const char* antenna = "") {
  return {"Pond", date, contacts, minutes, 10, 0, antenna, {}};
}

}  // namespace

// Worked out apart: 30 +- 20 an hour is gamma(2.25, .075 h); 12 in 60, 25 in 75 and 8 in 40 min make it
// gamma(47.25, 2.99167 h), mean 15.79.
TEST_CASE("past: the usual pace from three outings") {
  const pace::Pace guess{30, 200.0 / 3};
  const std::vector<PastOuting> three{past("2026-05-01", 12, 60), past("2026-05-08", 25, 75),
                                      past("2026-05-15", 8, 40)};
  const pace::Pace usual = usual_pace_from(three, guess, "");
  MESSAGE("three outings: " << usual.per_hour << " an hour, spread " << usual.spread_pct << " %");
  CHECK(std::abs(usual.per_hour - 15.79) < .0051);
  CHECK(usual.spread_pct < guess.spread_pct);
  CHECK(usual.spread_pct > 100 / std::sqrt(47.25));  // never as sure as one steady pace would make it
  CHECK(usual_pace_from({}, guess, "").per_hour == 30);
  CHECK(usual_pace_from({past("", 5, 0.5)}, guess, "").per_hour == 30);  // too short to say anything
}

TEST_CASE("past: the same antenna counts alone where there is enough of it") {
  std::vector<PastOuting> list;
  for (int i = 0; i < 3; ++i) list.push_back(past("2026-05-01", 20, 60, "dipole"));
  for (int i = 0; i < 2; ++i) list.push_back(past("2026-05-02", 4, 60, "whip_vehicle"));
  const pace::Pace guess{12, 50};
  CHECK(usual_pace_from(list, guess, "dipole").per_hour > usual_pace_from(list, guess, "").per_hour);
  CHECK(usual_pace_from(list, guess, "whip_vehicle").per_hour == usual_pace_from(list, guess, "").per_hour);
}

// Drawn outings whose pace differs by 40 % from one to the next: the spread that 400 of them give comes back.
TEST_CASE("past: the spread between outings is found") {
  constexpr unsigned kSeed = 20261127;
  std::mt19937_64 bits(kSeed);
  std::gamma_distribution<double> factor(6.25, 1 / 6.25);
  std::vector<pace::Counted> drawn;
  for (int i = 0; i < 400; ++i)
    drawn.push_back({double(std::poisson_distribution<int>(24 * factor(bits))(bits)), 120});
  const pace::Pace usual = pace::prior_from({12, 100}, drawn);
  MESSAGE("seed " << kSeed << ": " << usual.per_hour << " an hour, spread " << usual.spread_pct
                  << " %, drawn with 12 and 40 %");
  CHECK(std::abs(usual.per_hour - 12) < .8);   // three deviations of the mean of 400: 3 x 12 x .4 / 20
  CHECK(std::abs(usual.spread_pct - 40) < 6);  // and of a variance: 40 % x 3 / sqrt(800), and the guess's share
  CHECK(std::isnan(pace::prior_from({-1, 50}, drawn).per_hour));
  CHECK(pace::prior_from({12, 0}, drawn).per_hour == 12);
}

TEST_CASE("past: what is kept of an outing that is over") {
  Outing outing = test::also(test::whole_outing(), {{L::clock_utc_offset_min, 0.0}});
  outing.name = "Pond";
  outing.date = "2026-06-13";
  CHECK_FALSE(past_of(outing, {}));
  constexpr double kTen = 1781344800;  // 10:00 UTC that day, when one arrives
  start_on_air(outing.happened, kTen + 33 * 60);
  add_forgotten(outing.happened, kTen + 60 * 60, 11);
  CHECK_FALSE(past_of(outing, {kTen + 60 * 60, 0}));
  end_on_air(outing.happened, kTen + 145 * 60);
  const auto kept = past_of(outing, {});
  REQUIRE(kept);
  CHECK(kept->contacts == 11);
  CHECK(kept->on_air_min == 112);
  CHECK(kept->set_up_min == 33);
  CHECK(kept->antenna == "dipole");
  std::vector<PastOuting> list = with_past({past("2026-07-01", 1, 10)}, *kept);
  REQUIRE(list.size() == 2);
  CHECK(list[0] == *kept);
  CHECK(with_past(list, *kept).size() == 2);
}

TEST_CASE("past: the file is read, written and read back the same; rows that cannot be used are kept") {
  const LoadedHistory loaded = read_history(
      R"({"groundsheet": 1, "kind": "history", "mood": 1, "outings": [
 {"name": "B", "date": "2026-06-14", "contacts": 3, "on_air_min": 60.5, "colour": "red"},
 {"name": "A, \"so\"", "date": "2026-06-13", "contacts": 11, "on_air_min": 112, "target": 10, "set_up_min": 33, "antenna": "dipole"},
 {"name": "C", "date": "2026-02-30", "on_air_min": 5}, {"on_air_min": -1}, {"name": "D"}, 7]})");
  REQUIRE_MESSAGE(loaded.refusal.empty(), loaded.refusal);
  REQUIRE(loaded.outings.size() == 2);
  CHECK(loaded.outings[0].name == "A, \"so\"");
  CHECK(loaded.notes.size() == 5);
  const std::string text = write_history(loaded.outings, loaded.kept);
  const LoadedHistory again = read_history(text);
  CHECK(again.outings == loaded.outings);
  CHECK(again.kept == loaded.kept);
  CHECK(write_history(again.outings, again.kept) == text);
  CHECK(text.find("2026-02-30") != std::string::npos);
  CHECK(text.find("red") != std::string::npos);
  CHECK(history_csv(loaded.outings) ==
        "date,name,contacts,on_air_min,per_hour,target,set_up_min,antenna,left_planned_pct,left_pct\r\n"
        "2026-06-13,\"A, \"\"so\"\"\",11,112,5.9,10,33,dipole,,\r\n2026-06-14,B,3,60.5,3,0,,,,\r\n");
  CHECK_FALSE(read_history("{}").refusal.empty());
  CHECK_FALSE(read_history(R"({"groundsheet": 1, "kind": "outing"})").refusal.empty());
}
