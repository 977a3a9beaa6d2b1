// Planned beside what happened, on an outing whose figures are counted by hand. Invented outing; the pace's check
// value is common practice: 67 contacts in 44 minutes are 91 an hour.
#include "core/outing/beside.h"

#include <doctest/doctest.h>

#include <cmath>

#include "core/outing/archive.h"
#include "tests/core/outing/outings.h"

using namespace gs;

namespace {

constexpr double kArrive_s = 1781380800;  // 2026-06-13 20:00 UTC, 16:00 by UTC-4

Outing counted_outing() {
  Outing outing;
  outing.date = "2026-06-13";
  for (const auto& [id, value] : {std::pair{L::clock_utc_offset_min, -240.0},
                                  {L::clock_arrive_min, 960.0},
                                  {L::clock_leave_by_min, 1080.0},
                                  {L::clock_set_up_min, 25.0},
                                  {L::clock_pack_down_min, 10.0},
                                  {L::pace_per_hour, 60.0}})
    outing = with(std::move(outing), id, value);
  const double start = kArrive_s + 33 * 60;
  REQUIRE(start_on_air(outing.happened, start));
  for (int i = 1; i <= 67; ++i) REQUIRE(add_contact(outing.happened, start + i * 39));
  REQUIRE(end_on_air(outing.happened, start + 44 * 60));
  return outing;
}

const Beside& row(const std::vector<Beside>& rows, std::string_view key) {
  for (const Beside& one : rows)
    if (one.key == key) return one;
  FAIL("no row " << std::string(key));
  return rows.front();
}

}  // namespace

TEST_CASE("beside: set-up, pace, time and contacts as they were") {
  Outing outing = counted_outing();
  CHECK(measure(outing.happened, "radio.receive_current_a", 0.61, kArrive_s).empty());
  CHECK(measure(outing.happened, "radio.receive_current_a", 0.62, kArrive_s + 60).empty());
  CHECK(measure(outing.happened, "power.supply_at_key_down_v", 11.9, kArrive_s).empty());
  const Plan plan = resolve(outing);
  const auto rows = planned_beside_happened(plan, {kArrive_s + 86400, -240});
  CHECK(row(rows, "clock.set_up_min").planned == 25);
  CHECK(row(rows, "clock.set_up_min").happened == 33);
  CHECK(row(rows, "clock.set_up_min").can_adopt);
  MESSAGE("67 in 44 minutes: " << row(rows, "pace.per_hour").happened << " an hour");
  CHECK(std::round(row(rows, "pace.per_hour").happened) == 91);
  CHECK(std::abs(row(rows, "clock.on_air_min").happened - 44) < 1e-6);
  CHECK(row(rows, "clock.on_air_min").planned == 85);  // 16:25 to 17:50
  CHECK(!row(rows, "clock.on_air_min").can_adopt);
  CHECK(row(rows, "pace.expected_contacts").happened == 67);
  CHECK(row(rows, "pace.expected_contacts").planned == doctest::Approx(85));  // 60 an hour
  CHECK(row(rows, "radio.receive_current_a").happened == 0.62);               // the last one counts
  CHECK(row(rows, "power.supply_at_key_down_v").happened == 11.9);
}

TEST_CASE("beside: nothing before the air, and no set-up that is no set-up") {
  Outing outing = counted_outing();
  const auto rows = [](const Outing& one) { return planned_beside_happened(resolve(one), {kArrive_s, -240}); };
  Outing planned = outing;
  planned.happened = {};
  CHECK(rows(planned).empty());
  outing = with(std::move(outing), L::clock_arrive_min, 1200.0);  // said to have arrived after the start
  CHECK(std::isnan(row(rows(outing), "clock.set_up_min").happened));
  CHECK(!row(rows(outing), "clock.set_up_min").can_adopt);
}

TEST_CASE("beside: what is adopted becomes usual for outings that set nothing, within its range") {
  Outing outing;
  CHECK(resolve(outing)[L::pace_per_hour] == usual_of(resolve(outing), L::pace_per_hour));
  outing.habits.usual = {{"pace.per_hour", 5.9}, {"clock.set_up_min", 33}, {"pace.target", 1e9}, {"no.such", 1}};
  const Plan plan = resolve(outing);
  CHECK(plan[L::pace_per_hour] == 5.9);
  CHECK(plan.from[std::size_t(L::pace_per_hour)] == From::usual);
  CHECK(plan[L::clock_set_up_min] == 33);
  CHECK(plan[L::pace_target] == 10);
  CHECK(resolve(with(outing, L::pace_per_hour, 7.0))[L::pace_per_hour] == 7);
  Settings settings;
  settings.usual = {{"pace.per_hour", 5.9}, {"clock.set_up_min", 33}};
  CHECK(read_settings(write_settings(settings)).settings == settings);
  CHECK(read_settings(
            R"({"groundsheet":1,"kind":"settings","usual":{"pace.per_hour":-3,"x":1,"clock.set_up_min":"5"}})")
            .settings.usual.empty());
  CHECK(!read_settings(R"({"groundsheet":1,"kind":"settings","usual":[1]})").notes.empty());
}

TEST_CASE("beside: the same outing again, slower and later set up, has less chance") {
  const Outing outing = with(counted_outing(), L::pace_target, 60.0);
  const double planned = chance_again_pct(outing, {});
  const double again = chance_again_pct(outing, {{"clock.set_up_min", 33}, {"pace.per_hour", 30}});
  MESSAGE("chance as planned " << planned << " %, with what was adopted " << again << " %");
  CHECK(planned > again);
}

TEST_CASE("beside: the tally as a table, times of UTC and of the outing") {
  Outing outing = counted_outing();
  outing.happened.tally.resize(1);
  REQUIRE(add_forgotten(outing.happened, kArrive_s + 7200, 3));
  const std::string text = tally_csv(resolve(outing), {});
  CHECK(text == "utc,local,count,forgotten\n2026-06-13T20:33:39Z,16:33,1,no\n2026-06-13T22:00:00Z,18:00,3,yes\n");
  const std::string rows = beside_csv(planned_beside_happened(resolve(outing), {kArrive_s, -240}));
  CHECK(rows.find("clock.set_up_min,Set-up,min,25,33\n") != std::string::npos);
}
