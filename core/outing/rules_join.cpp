#include "core/outing/rules_join.h"

#include <algorithm>
#include <cmath>

#include "core/outing/rules_rows.h"
#include "core/radio/mode.h"

namespace gs {
namespace {

struct ModePair {
  std::string_view radio, rules;
};
// Data: the widest, through a set on upper sideband. A carrier is no wider than Morse.
constexpr ModePair kModes[] = {{"cw", "cw"}, {"ssb", "ssb"}, {"ssb_processed", "ssb"}, {"data", "data_usb"},
                               {"fm", "fm"}, {"am", "am"},   {"carrier", "cw"}};

const rules::ModeWidth* mode_of(const Plan& plan) {
  const std::string_view key = radio::modes()[std::size_t(plan[L::radio_mode])].key;
  for (const ModePair& pair : kModes)
    if (pair.radio == key) return rules::find_mode(pair.rules);
  return nullptr;
}

std::string dial_text(double mhz, const Style& style) {
  return say_quantity(mhz, Unit::megahertz, digits_needed(mhz, 5), style);
}

}  // namespace

RulesJoin join_rules(const Plan& plan) {
  RulesJoin join;
  join.doubtful = first_missing(plan, {L::antenna_frequency_mhz, L::rules_class, L::radio_mode});
  if (join.doubtful.doubt != Doubt::none) return join;
  join.mode = mode_of(plan);
  if (!join.mode) {
    join.doubtful = {Doubt::not_in_catalogue, L::radio_mode};
    return join;
  }
  const double f_mhz = plan[L::antenna_frequency_mhz];
  const rules::Region region = region_at(plan[L::rules_region]);
  join.by_table = plan[L::rules_class] < double(kLicencesOfTheTable);
  if (join.by_table)
    join.answer = rules::may_transmit(region, licence_at(plan[L::rules_class]), f_mhz, *join.mode);
  else if (plan.has_all(L::rules_own_low_mhz, L::rules_own_high_mhz))
    join.answer = rules::within_edges(plan[L::rules_own_low_mhz], plan[L::rules_own_high_mhz], f_mhz, *join.mode);
  else
    join.answer = rules::within_region(region, f_mhz, *join.mode);
  if (!std::isfinite(join.answer.room_khz)) join.doubtful = {Doubt::not_allowed_anywhere, L::radio_mode};
  return join;
}

rules::PowerLimit limit_near(const rules::Answer& answer, rules::Region region, rules::Class licence,
                             double frequency_mhz) {
  const double there = std::clamp(frequency_mhz, answer.nearest.dial_low_mhz, answer.nearest.dial_high_mhz);
  return rules::power_limit(there, region, licence);
}

std::string why_not(rules::Why why, std::string_view class_name) {
  switch (why) {
    case rules::Why::allowed:
      return {};
    case rules::Why::no_band:
      return "no amateur band of this Region";
    case rules::Why::not_class:
      return "not a part of the band for " + std::string(class_name);
    case rules::Why::not_mode:
      return "this class may be here, but not with this mode";
    case rules::Why::over_edge:
      return "the dial is inside, but a part of the signal is over the edge";
  }
  return {};
}

std::string say_rules(const Plan& plan, const Style& style) {
  const RulesJoin join = join_rules(plan);
  if (join.doubtful.doubt == Doubt::missing)
    return "May I transmit here? Needs " + lower_first(std::string(lever(join.doubtful.culprit).name)) + ".";
  if (join.doubtful.doubt != Doubt::none) return "Not allowed: this class has no place for this mode.";
  const rules::Answer& answer = join.answer;
  const std::string class_name(lever(L::rules_class).options()[std::size_t(plan[L::rules_class])].name);
  const std::string here = dial_text(plan[L::antenna_frequency_mhz], style) + " " +
                           std::string(radio::modes()[std::size_t(plan[L::radio_mode])].name);
  if (!answer.allowed) {
    const bool below = plan[L::antenna_frequency_mhz] < answer.nearest.dial_low_mhz;
    return "Not allowed, " + here + ": " + why_not(answer.why, class_name) + ". Nearest dial " +
           dial_text(below ? answer.nearest.dial_low_mhz : answer.nearest.dial_high_mhz, style) + ", " +
           say_quantity(-answer.room_khz, Unit::kilohertz, 1, style) + " away.";
  }
  std::string text = "Allowed, " + here + ": dial from " + dial_text(answer.nearest.dial_low_mhz, style) + " to " +
                     dial_text(answer.nearest.dial_high_mhz, style);
  if (answer.nearest.dial_low_mhz == answer.nearest.dial_high_mhz)
    text = "Allowed, " + here + ": a fixed channel, on this dial alone";
  if (!join.by_table) return text + ". Your own licence says what it allows there.";
  const rules::PowerLimit limit = limit_near(answer, region_at(plan[L::rules_region]),
                                             licence_at(plan[L::rules_class]), plan[L::antenna_frequency_mhz]);
  return text + ", up to " + say_quantity(limit.limit_w, Unit::watt, digits_needed(limit.limit_w, 2), style) +
         (limit.erp ? " radiated over a half-wave dipole." : ".");
}

}  // namespace gs
