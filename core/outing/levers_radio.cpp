// The radio's inputs.
#include <algorithm>

#include "core/battery/chemistry.h"
#include "core/outing/checks_power.h"
#include "core/outing/lever_rows.h"
#include "core/outing/plan.h"
#include "core/outing/radio_readings.h"
#include "core/radio/current.h"
#include "core/radio/mode.h"

namespace gs {
namespace {

constexpr Option kTunerOptions[] = {
    {"none", "none"}, {"in_set", "in the set"}, {"outside", "outside, at the radio"}};
std::span<const Option> tuner_options() { return kTunerOptions; }

double full_power_of(const Plan& plan) { return plan[L::radio_full_power_w]; }
double kit_power(const Plan& plan) { return plan.kit.full_power_w; }
double first_option(const Plan&) { return 0; }
double two(const Plan&) { return 2; }

double usual_mode(const Plan&) {
  const auto modes = radio::modes();
  for (std::size_t i = 0; i < modes.size(); ++i)
    if (modes[i].key == "ssb") return double(i);
  return 0;
}
double usual_share(const Plan&) { return 30; }
double usual_receive_a(const Plan& plan) { return radio::usual_currents(plan[L::radio_full_power_w]).receive_a; }
// The lever's ends: an old set on a long extrapolation may pass them.
constexpr double kLeastFullA = 0.001, kMostA = 60;
double usual_full_a(const Plan& plan) {
  if (const radio::FromReadings own = currents_from_readings(plan); own.sound)
    return std::clamp(own.full_power_a, kLeastFullA, kMostA);
  return radio::usual_currents(plan[L::radio_full_power_w]).full_power_a;
}
double usual_idle_a(const Plan& plan) {
  const double full_a = plan[L::radio_full_power_current_a];
  if (const radio::FromReadings own = currents_from_readings(plan); own.sound)
    return std::clamp(own.keyed_idle_a, 0.0, full_a);
  const radio::SetCurrents usual = radio::usual_currents(plan[L::radio_full_power_w]);
  return full_a * usual.keyed_idle_a / usual.full_power_a;
}
double no_load(const Plan&) { return 0; }
double usual_over_s(const Plan&) { return 20; }
/// Only a battery with two wells knows how long one over is.
bool counts_overs(const Plan& plan) {
  return !plan.has(L::battery_chemistry) ||
         battery::chemistries()[std::size_t(plan[L::battery_chemistry])].kinetic != nullptr;
}
double usual_minimum_v(const Plan&) { return 11.7; }
double full_current_of(const Plan& plan) { return plan[L::radio_full_power_current_a]; }

constexpr Lever read_w(std::string_view key, std::string_view name) {
  return {.key = key,
          .name = name,
          .link = Link::radio,
          .unit = Unit::watt,
          .digits = 1,
          .least = 0.1,
          .most = 200,
          .step = 1,
          .optional = true,
          .cap = full_power_of,
          .source = "read off the set's own meter, or a better one, key-down into a dummy load"};
}
constexpr Lever read_a(std::string_view key, std::string_view name) {
  return {.key = key,
          .name = name,
          .link = Link::radio,
          .unit = Unit::ampere,
          .digits = 2,
          .least = 0.01,
          .most = kMostA,
          .step = 0.1,
          .optional = true,
          .source = "read off a meter in the supply lead, key-down at that power; other loads switched off"};
}

const LeverRow kRows[] = {
    {L::radio_read_one_w, read_w("radio.read_one_w", "Power at the first reading")},
    {L::radio_read_one_a, read_a("radio.read_one_a", "Current at the first reading")},
    {L::radio_read_two_w, read_w("radio.read_two_w", "Power at the second reading")},
    {L::radio_read_two_a, read_a("radio.read_two_a", "Current at the second reading")},
    {L::radio_read_three_w, read_w("radio.read_three_w", "Power at a third reading")},
    {L::radio_read_three_a, read_a("radio.read_three_a", "Current at a third reading")},
    {L::radio_mode,
     {.key = "radio.mode",
      .name = "Mode",
      .link = Link::radio,
      .kind = Kind::choice,
      .options = mode_options,
      .usual = usual_mode,
      .source = "usual value: speech on single sideband"}},
    {L::radio_transmit_share_pct,
     {.key = "radio.transmit_share_pct",
      .name = "Transmit share",
      .link = Link::radio,
      .unit = Unit::percent,
      .least = 0,
      .most = 100,
      .step = 1,
      .usual = usual_share,
      .source = "usual value: about a third of the time on the air is sending when one calls; common practice"}},
    {L::radio_receive_current_a,
     {.key = "radio.receive_current_a",
      .name = "Receive current",
      .link = Link::radio,
      .unit = Unit::ampere,
      .digits = 2,
      .least = 0,
      .most = 10,
      .step = 0.05,
      .usual = usual_receive_a,
      .source = "usual value: sets of this power, catalogue of radio classes"}},
    {L::radio_accessories_a,
     {.key = "radio.accessories_a",
      .name = "Other loads",
      .link = Link::radio,
      .unit = Unit::ampere,
      .digits = 2,
      .least = 0,
      .most = 20,
      .step = 0.05,
      .usual = no_load,
      .source = "usual value: none; a tuning unit, a computer, a fan or a charger on the same battery, always on"}},
    {L::radio_over_s,
     {.key = "radio.over_s",
      .name = "Length of one over",
      .link = Link::radio,
      .unit = Unit::second,
      .digits = 0,
      .least = 1,
      .most = 600,
      .step = 1,
      .scale = Scale::log,
      .usual = usual_over_s,
      .applies = counts_overs,
      .source =
          "usual value: 20 s; lead-acid sags through a long over and recovers in the pause; common practice"}},
    {L::radio_full_power_current_a,
     {.key = "radio.full_power_current_a",
      .name = "Full-power current",
      .link = Link::radio,
      .unit = Unit::ampere,
      .digits = 2,
      .least = kLeastFullA,
      .most = kMostA,
      .step = 0.1,
      .scale = Scale::log,
      .usual = usual_full_a,
      .source = "usual value: by the readings, else sets of this power, catalogue of radio classes"}},
    {L::radio_keyed_idle_current_a,
     {.key = "radio.keyed_idle_current_a",
      .name = "Keyed idle current",
      .link = Link::radio,
      .unit = Unit::ampere,
      .digits = 2,
      .least = 0,
      .most = kMostA,
      .step = 0.05,
      .usual = usual_idle_a,
      .cap = full_current_of,
      .source =
          "usual value: by the readings, else its share of the full-power current, catalogue of radio classes"}},
    {L::radio_minimum_supply_v,
     {.key = "radio.minimum_supply_v",
      .name = "Minimum supply",
      .link = Link::radio,
      .unit = Unit::volt,
      .digits = 1,
      .least = 6,
      .most = 14,
      .step = 0.1,
      .usual = usual_minimum_v,
      .source = "usual value: 13.8 V less 15 %, as sets are specified; common practice"}},
    {L::radio_full_power_w,
     {.key = "radio.full_power_w",
      .name = "Radio's full power",
      .link = Link::radio,
      .unit = Unit::watt,
      .digits = 1,
      .least = 0.1,
      .most = 200,
      .step = 1,
      .scale = Scale::log,
      .usual = kit_power,
      .source = "the set's own data; range: portable HF sets; usual value: the set of the kit list that says"}},
    {L::radio_transmit_power_w,
     {.key = "radio.transmit_power_w",
      .name = "Transmit power",
      .link = Link::radio,
      .unit = Unit::watt,
      .digits = 1,
      .least = 0.1,
      .most = 200,
      .step = 1,
      .usual = full_power_of,
      .cap = full_power_of,
      .source = "usual value: the set turned up to its full power"}},
    {L::radio_tuner,
     {.key = "radio.tuner",
      .name = "Matching unit",
      .link = Link::radio,
      .kind = Kind::choice,
      .options = tuner_options,
      .usual = first_option,
      .source = "usual value: none is counted on until one is named"}},
    {L::radio_fold_back_swr,
     {.key = "radio.fold_back_swr",
      .name = "Full power up to SWR",
      .link = Link::radio,
      .digits = 1,
      .least = 1.1,
      .most = 5,
      .step = 0.1,
      .usual = two,
      .source = "solid-state sets hold their power to about 2:1; common practice, from memory"}},
};

}  // namespace

std::span<const LeverRow> radio_levers() { return kRows; }

}  // namespace gs
