// Small questions about the battery in the park: what a meter says, what a spare adds, what a sheet foretells.
#include <algorithm>
#include <limits>
#include <vector>

#include "core/battery/discharge.h"
#include "core/battery/rate_sheet.h"
#include "core/outing/power_rows.h"
#include "core/radio/current.h"
#include "core/radio/mode.h"

namespace gs {
namespace {

using namespace power;

constexpr Lever hours_row(std::string_view key, std::string_view name, bool optional, std::string_view source) {
  return {.key = key,
          .name = name,
          .link = Link::battery,
          .unit = Unit::hour,
          .digits = 2,
          .least = 0.01,
          .most = 1000,
          .step = 0.5,
          .scale = Scale::log,
          .optional = optional,
          .source = source};
}
constexpr Lever amperes_row(std::string_view key, std::string_view name, bool optional, std::string_view source) {
  return {.key = key,
          .name = name,
          .link = Link::battery,
          .unit = Unit::ampere,
          .digits = 2,
          .least = 0.01,
          .most = 500,
          .step = 0.1,
          .scale = Scale::log,
          .optional = optional,
          .source = source};
}
constexpr Lever watts_row(std::string_view key, std::string_view name, std::string_view source) {
  return {.key = key,
          .name = name,
          .link = Link::radio,
          .unit = Unit::watt,
          .digits = 1,
          .least = 0.1,
          .most = 2000,
          .step = 1,
          .scale = Scale::log,
          .optional = true,
          .source = source};
}
constexpr Reading answer(std::string_view key, std::string_view name, Unit unit, int digits, Better better,
                         std::string_view source) {
  return {.key = key,
          .name = name,
          .link = Link::battery,
          .unit = unit,
          .digits = digits,
          .better = better,
          .source = source};
}

// ---- What does the meter say? ----

const CheckInput kParkInputs[] = {
    {kCapacity},
    {kChemistry},
    {kReserve},
    {kHealth},
    {kTemperature},
    {{.key = "meter_ah",
      .name = "Taken, by the meter",
      .link = Link::battery,
      .unit = Unit::ampere_hour,
      .digits = 2,
      .least = 0,
      .most = 1000,
      .step = 0.1,
      .source = "read off a charge meter that was at nothing when the battery was full"}},
    {{.key = "so_far_min",
      .name = "In use so far",
      .link = Link::battery,
      .unit = Unit::minute,
      .least = 1,
      .most = 10000,
      .step = 5,
      .source = "listening included"}},
    {{.key = "rest_v",
      .name = "Volts, nothing drawn",
      .link = Link::battery,
      .unit = Unit::volt,
      .digits = 2,
      .least = 1,
      .most = 60,
      .step = 0.05,
      .optional = true,
      .source = "some minutes after use; a second opinion on what is left"}},
    {hours_row("wanted_h", "To last", true, "hours more that are wanted; not given: no power is named")},
    {watts_row("full_power_w", "Radio's full power", "the set's own data; to name a power")},
    {watts_row("transmit_power_w", "Transmit power", "as it was so far")},
    {{.key = "mode",
      .name = "Mode",
      .link = Link::radio,
      .kind = Kind::choice,
      .options = mode_options,
      .optional = true,
      .source = "the mode catalogue"}},
    {kTransmitShare},
};
const CheckResult kParkResults[] = {
    {answer("left_h", "Lasts from now", Unit::hour, 1, Better::more, "by the plan's own law at the draw so far")},
    {answer("draw_a", "Draw so far", Unit::ampere, 2, Better::less, "ampere-hours over hours in use")},
    {answer("left_ah", "May still be taken", Unit::ampere_hour, 1, Better::more,
            "label with temperature and health, less reserve, less what was taken; a hard draw gets less of it")},
    {answer("used_ah", "Used so far", Unit::ampere_hour, 2, Better::neither,
            "the meter's own figure, once believed"),
     0, 0, L::battery_used_ah},
    {answer("left_by_volts_pct", "Left by the volts", Unit::percent, 0, Better::more,
            "the chemistry's resting voltage; lithium's is so flat that it says little in the middle")},
    {answer("lasting_w", "Power that lasts that long", Unit::watt, 1, Better::neither,
            "current by the root of power, scaled to the draw so far; docs/methods/power")},
};

// Further from the resting curve than this and it is another kind of reading. A charger leaves up to about 1.7 V
// above a full pack's rest for a while; a pack a volt below flat is spoilt: common practice.
constexpr double kStillChargingV = 1.7, kSpoiltV = 1;

/// The law of the root, scaled to the draw that was met: power at which the average is `wanted_a`.
struct TurnedDown {
  double power_w;
  std::string trouble;
};
TurnedDown turn_down(std::span<const double> in, double draw_a, double wanted_a) {
  radio::SetCurrents set = radio::usual_currents(in[9]);
  const radio::Mode& mode = radio::modes()[std::size_t(in[11])];
  const double share = in[12] / 100;
  const double foreseen_a = radio::average_a(set.receive_a, radio::transmit_a(set, in[10], mode), share);
  const double sending_a = (wanted_a * foreseen_a / draw_a - set.receive_a * (1 - share)) / share;
  const double root = (sending_a - set.keyed_idle_a) / (mode.current_share * (set.full_power_a - set.keyed_idle_a));
  constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
  if (!(root > 0)) return {kNaN, "no power is low enough: send less, or stop sooner"};
  return {std::min(in[9], in[9] * root * root), {}};
}

/// The steady current at which what is left lasts `hours`; 0 where nothing is left.
double steady_for_a(const battery::Pack& pack, double hours) {
  double low_a = 0, high_a = pack.capacity_ah / hours;
  for (int i = 0; i < 60; ++i) {
    const double middle_a = (low_a + high_a) / 2;
    (battery::hours_alone(pack, battery::steady(middle_a)) >= hours ? low_a : high_a) = middle_a;
  }
  return low_a;
}

std::string park(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = missing(kParkInputs, in); !trouble.empty()) return trouble;
  const battery::Chemistry& kind = chemistry_of(in[1]);
  const battery::Pack pack{.chemistry = &kind,
                           .capacity_ah = in[0],
                           .health_pct = in[3],
                           .temperature_c = in[4],
                           .reserve_pct = reserve_or_usual_pct(in[2], kind),
                           .used_ah = in[5]};
  const double holds_ah = battery::capacity_ah(pack);
  // A new pack may hold a tenth more than its label.
  if (in[5] > 1.1 * std::max(holds_ah, in[0] * in[3] / 100))
    return "the meter shows more than this battery holds: it was not at nothing when the battery was full, or the "
           "label is wrong. Not used";
  const double draw_a = in[5] / (in[6] / 60);
  if (std::isfinite(in[9]) && draw_a > 1.5 * radio::usual_currents(in[9]).full_power_a)
    return "the draw would be far above the set's full-power current: look at ampere-hours and minutes again. Not "
           "used";
  if (std::isfinite(in[7])) {
    const battery::Law law = battery::law_of(pack);
    const double full_v = battery::rested_v(law, battery::full(law.wells)),
                 flat_v = kind.kinetic ? kind.empty_v : kind.resting_v.front().y;
    if (in[7] > full_v + kStillChargingV || in[7] < flat_v - kSpoiltV)
      return "no resting voltage of this chemistry: wrong chemistry, still charging, or something drew. Not used";
    out[4] = battery::left_at_rest_pct(law, in[7]);
  }
  out[1] = draw_a;
  out[3] = in[5];
  out[2] = std::max(0.0, holds_ah * (1 - pack.reserve_pct / 100) - in[5]);
  if (draw_a <= 0) return "nothing was drawn so far, so no end can be named";
  out[0] = battery::hours_alone(pack, battery::steady(draw_a));
  const double left_pct = 100 * (1 - in[5] / holds_ah);
  std::string said;
  if (!std::isfinite(out[4])) {
    said = needs(kParkInputs[7].row) + " for a second opinion";
  } else if (std::abs(out[4] - left_pct) > 30) {
    said = "volts and ampere-hours are far apart (" + say_quantity(out[4], Unit::percent, 0) + " and " +
           say_quantity(std::max(0.0, left_pct), Unit::percent, 0) +
           " left): believe the lower one, or let the battery rest and read again";
  }
  const auto also = [&said](const std::string& more) { return said.empty() ? more : said + "; " + more; };
  for (const std::size_t i : {std::size_t(8), std::size_t(9), std::size_t(10), std::size_t(11), std::size_t(12)})
    if (!std::isfinite(in[i])) return also(needs(kParkInputs[i].row) + " to name a power");
  if (in[12] <= 0) return also("nothing is sent: turning down saves nothing");
  const TurnedDown down = turn_down(in, draw_a, steady_for_a(pack, in[8]));
  out[5] = down.power_w;
  return down.trouble.empty() ? said : also(down.trouble);
}

// ---- What does a spare add? ----

const CheckInput kSpareInputs[] = {
    {kCapacity},
    {{.key = "spare_ah",
      .name = "Spare battery",
      .link = Link::battery,
      .unit = Unit::ampere_hour,
      .digits = 1,
      .least = 0,
      .most = 1000,
      .step = 0.5,
      .source = "full, of the same kind"},
     L::spare_capacity_ah},
    {{.key = "average_a",
      .name = "Average current",
      .link = Link::battery,
      .unit = Unit::ampere,
      .digits = 2,
      .least = 0.001,
      .most = 200,
      .step = 0.1,
      .scale = Scale::log,
      .source = "the plan's, or read off a meter"},
     L::count,
     R::power_average_current_a},
    {kChemistry},
    {kReserve},
    {kHealth},
    {kTemperature},
    {hours_row("wanted_h", "Time on the air wanted", true, "to see whether the spare alone makes it")},
};
const CheckResult kSpareResults[] = {
    {answer("adds_h", "The spare adds", Unit::hour, 1, Better::more, "its own charge over the current")},
    {answer("first_h", "The battery alone", Unit::hour, 1, Better::more, "charge over current")},
    {answer("both_h", "One after the other", Unit::hour, 1, Better::more, "sum")},
    {answer("spare_of_wanted_pct", "The spare alone, of the time wanted", Unit::percent, 0, Better::more,
            "limit: the whole; ease a quarter more: common practice"),
     100, 125},
};
std::string spare(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = missing(kSpareInputs, in); !trouble.empty()) return trouble;
  const battery::Chemistry& kind = chemistry_of(in[3]);
  battery::Pack pack{.chemistry = &kind,
                     .capacity_ah = in[0],
                     .health_pct = in[5],
                     .temperature_c = in[6],
                     .reserve_pct = reserve_or_usual_pct(in[4], kind)};
  const battery::Load load = plain_load(in[2], in[2], 1);
  out[1] = battery::hours_alone(pack, load);
  pack.capacity_ah = in[1];
  out[0] = in[1] > 0 ? battery::hours_alone(pack, load) : 0;
  out[2] = out[0] + out[1];
  if (std::isfinite(in[7])) out[3] = 100 * out[0] / in[7];
  return "one after the other: batteries joined side by side drive current into each other, unlike ones "
         "dangerously";
}

// ---- What does its data sheet foretell? ----

const CheckInput kSheetInputs[] = {
    {amperes_row("first_a", "First current", false, "the sheet's gentlest, for instance that of 20 hours")},
    {hours_row("first_h", "First time", false, "to one and the same end voltage")},
    {amperes_row("second_a", "Second current", false, "one in between, for instance that of 5 hours")},
    {hours_row("second_h", "Second time", false, "to the same end voltage")},
    {amperes_row("third_a", "Third current", true, "a hard one, for instance that of 1 hour")},
    {hours_row("third_h", "Third time", true, "to the same end voltage")},
    {amperes_row("wanted_a", "Current wanted", false, "any steady load")},
};
const CheckResult kSheetResults[] = {
    {answer("lasts_h", "It lasts", Unit::hour, 1, Better::more,
            "kinetic law through three points, else Peukert's through two; docs/methods/power")},
    {answer("given_ah", "It gives", Unit::ampere_hour, 1, Better::more, "current times time")},
    {answer("division_h", "By plain division", Unit::hour, 1, Better::neither,
            "first current times first time over the current wanted")},
    {answer("exponent", "Peukert's exponent", Unit::none, 3, Better::neither,
            "straight line through the logarithms; 1.1 to 1.3 for lead-acid, near 1 for lithium")},
};
std::string sheet(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = missing(kSheetInputs, in); !trouble.empty()) return trouble;
  std::vector<battery::Rate> points{{in[0], in[1]}, {in[2], in[3]}};
  const bool third = std::isfinite(in[4]) && std::isfinite(in[5]);
  if (third) points.push_back({in[4], in[5]});
  if (const auto found = battery::contradiction(points))
    return "this sheet contradicts itself: " + say_quantity(points[found->gentler].current_a, Unit::ampere, 2) +
           " gives less than " + say_quantity(points[found->harder].current_a, Unit::ampere, 2) +
           ", which no battery does";
  const auto [low, high] = std::minmax({in[0], in[2], third ? in[4] : in[0]});
  const auto law = battery::fit_peukert(points);
  if (law) out[3] = law->exponent;
  const std::string no_exponent = law ? "" : "no exponent: over all three the gentler load gives no more";
  if (const auto wells = battery::fit_wells(points)) {
    out[0] = battery::hours_to_empty(*wells, in[6]);
  } else if (law) {
    out[0] = battery::hours_at(*law, in[6]);
  } else {
    return "these points fit no battery: a gentler load gives no less";
  }
  out[1] = in[6] * out[0];
  out[2] = in[0] * in[1] / in[6];
  if (in[6] < low || in[6] > high) return "outside the sheet's own currents: a guess, not a figure";
  if (!third) return "two points: within about 15 %; a third one makes it within about 10 %";
  return no_exponent;
}

const Check kChecks[] = {
    {"battery.in_park", "What does the meter say?", Link::battery, kParkInputs, kParkResults,
     "A charge meter in the supply lead, set to nothing on the full battery. Volts with the set off, some minutes "
     "after use.",
     "charge counting; docs/methods/power", park},
    {"battery.spare", "What does a spare add?", Link::battery, kSpareInputs, kSpareResults,
     "Label of the second battery. Take it up when the first one ends; do not join them.",
     "lead-acid by its kinetic law, others by charge counting; docs/methods/power", spare},
    {"battery.sheet", "What does its data sheet foretell?", Link::battery, kSheetInputs, kSheetResults,
     "Two or three pairs of current and time to the same end voltage, as the sheet has them.",
     "kinetic battery model of Manwell and McGowan, 1993; Peukert, 1897; docs/methods/power", sheet},
};

}  // namespace

std::span<const Check> park_checks() { return kChecks; }

}  // namespace gs
