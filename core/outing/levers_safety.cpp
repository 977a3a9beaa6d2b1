// Safety and rules: whose rules bind, how near people come, what was looked at and done.
#include <vector>

#include "core/antenna/kind.h"
#include "core/outing/lever_rows.h"
#include "core/outing/plan.h"
#include "core/outing/rules_rows.h"
#include "core/rules/region.h"
#include "core/safety/exposure_limits.h"
#include "core/safety/overhead.h"
#include "core/sky/locator.h"

namespace gs {
namespace {

constexpr Option kLooked[] = {{"no", "not yet"}, {"yes", "looked"}};
std::span<const Option> looked() { return kLooked; }
constexpr Option kDone[] = {{"no", "to do"}, {"yes", "done"}};
std::span<const Option> done() { return kDone; }

double first_option(const Plan&) { return 0; }
double hundred(const Plan&) { return 100; }

double usual_region(const Plan& plan) {
  rules::Region region = rules::Region::two;
  if (plan.has(L::site_locator)) {
    const sky::Place here = sky::read_locator(sky::locator_from_number(plan[L::site_locator])).centre;
    region = rules::region_of(here.latitude_deg, here.longitude_deg);
  }
  for (std::size_t i = 0; i < region_options().size(); ++i)
    if (region_at(double(i)) == region) return double(i);
  return 0;
}

bool another_country(const Plan& plan) {
  return plan.has(L::rules_class) && plan[L::rules_class] >= double(kLicencesOfTheTable);
}
double usual_class(const Plan& plan) { return plan.habits.licence; }

/// The United States' limits for its licences and in Region 2; elsewhere the international levels.
double usual_limits(const Plan& plan) {
  const bool us =
      plan.has(L::rules_class) ? !another_country(plan) : region_at(plan[L::rules_region]) == rules::Region::two;
  return double(us ? safety::Rule::us : safety::Rule::icnirp);
}

bool by_wire(const Plan& plan) {
  return !plan.has(L::antenna_kind) ||
         antenna::kinds()[std::size_t(plan[L::antenna_kind])].shape != antenna::Shape::whip;
}
/// Until the antenna is chosen, every caution stands.
bool by_whip(const Plan& plan) { return !plan.has(L::antenna_kind) || !by_wire(plan); }

std::span<const Option> line_voltage_options() {
  static const std::vector<Option> options = [] {
    std::vector<Option> rows;
    for (const safety::LineClearance& row : safety::line_clearances()) rows.push_back({row.key, row.name});
    return rows;
  }();
  return options;
}
bool has_line(const Plan& plan) { return plan.has(L::safety_line_m); }

constexpr std::string_view kLookedSource = "nothing counts as looked at until somebody says so";
constexpr std::string_view kDoneSource = "nothing counts as done until somebody says so";

// clang-format off
constexpr Lever mark(std::string_view key, std::string_view name, std::span<const Option> (*options)(),
                     std::string_view source, bool (*applies)(const Plan&) = nullptr) {
  return {.key = key, .name = name, .link = Link::safety, .kind = Kind::choice, .options = options,
          .usual = first_option, .applies = applies, .source = source};
}
// clang-format on

const LeverRow kRows[] = {
    {L::rules_region,
     {.key = "rules.region",
      .name = "ITU Region",
      .link = Link::safety,
      .kind = Kind::choice,
      .options = region_options,
      .usual = usual_region,
      .evidence = Evidence::memory,
      .source =
          "usual value: where the locator lies, by the lines of the ITU Radio Regulations, Article 5; Region 2 "
          "without a locator"}},
    {L::rules_class,
     {.key = "rules.class",
      .name = "Licence class",
      .link = Link::safety,
      .kind = Kind::choice,
      .options = licence_options,
      .usual = usual_class,
      .source = "usual value: the class from the settings; classes of 47 CFR 97.301"}},
    {L::rules_own_low_mhz,
     {.key = "rules.own_low_mhz",
      .name = "Own lower edge",
      .link = Link::safety,
      .unit = Unit::megahertz,
      .digits = 4,
      .least = 0.1,
      .most = 150,
      .step = 0.005,
      .optional = true,
      .applies = another_country,
      .source = "the lower edge that your own licence has; not set: the Region's bands"}},
    {L::rules_own_high_mhz,
     {.key = "rules.own_high_mhz",
      .name = "Own upper edge",
      .link = Link::safety,
      .unit = Unit::megahertz,
      .digits = 4,
      .least = 0.1,
      .most = 150,
      .step = 0.005,
      .optional = true,
      .applies = another_country,
      .source = "the upper edge that your own licence has; not set: the Region's bands"}},
    {L::rules_own_power_w,
     {.key = "rules.own_power_w",
      .name = "Own power limit",
      .link = Link::safety,
      .unit = Unit::watt,
      .digits = 1,
      .least = 0.1,
      .most = 3000,
      .step = 1,
      .scale = Scale::log,
      .applies = another_country,
      .source = "peak envelope power that your own licence allows"}},
    {L::safety_limits,
     {.key = "safety.limits",
      .name = "Exposure limits",
      .link = Link::safety,
      .kind = Kind::choice,
      .options = exposure_rule_options,
      .usual = usual_limits,
      .source = "usual value: the United States' for its licences and in Region 2, else the international levels; "
                "what binds you is your country's law"}},
    {L::safety_ground,
     {.key = "safety.ground",
      .name = "Reflection from the ground",
      .link = Link::safety,
      .kind = Kind::choice,
      .options = ground_options,
      .usual = first_option,
      .evidence = Evidence::seen,
      .source = "FCC OET Bulletin 65 Supplement B, equations 3, 6 and 7; its tables use the usual ground"}},
    {L::safety_people_m,
     {.key = "safety.people_m",
      .name = "Nearest people",
      .link = Link::safety,
      .unit = Unit::metre,
      .digits = 1,
      .least = 0.2,
      .most = 200,
      .step = 0.1,
      .scale = Scale::log,
      .optional = true,
      .source = "paced out from the nearest part of the antenna to where anybody can be, you too; a child counts "
                "as anybody"}},
    {L::safety_busiest_share_pct,
     {.key = "safety.busiest_share_pct",
      .name = "Busiest share",
      .link = Link::safety,
      .unit = Unit::percent,
      .least = 1,
      .most = 100,
      .step = 1,
      .usual = hundred,
      .source =
          "usual value: sending all through the averaging time, the careful assumption; FCC OET Bulletin 65"}},
    {L::safety_line_m,
     {.key = "safety.line_m",
      .name = "Nearest power line",
      .link = Link::safety,
      .unit = Unit::metre,
      .digits = 1,
      .least = 0,
      .most = 500,
      .step = 0.5,
      .optional = true,
      .source =
          "paced out from whatever of the antenna stands nearest, mast, wire or stake, to the point on the ground "
          "under the nearest wire; every wire counts"}},
    {L::safety_line_voltage,
     {.key = "safety.line_voltage",
      .name = "Its voltage",
      .link = Link::safety,
      .kind = Kind::choice,
      .options = line_voltage_options,
      .usual = first_option,
      .applies = has_line,
      .evidence = Evidence::seen,
      .source = "usual value: an ordinary line; if in doubt the higher one; 29 CFR 1926.1408 Table A"}},
    {L::safety_looked_at_lines, mark("safety.looked_at_lines", "Power lines", looked, kLookedSource)},
    {L::safety_looked_at_fuse, mark("safety.looked_at_fuse", "Fuse", looked, kLookedSource)},
    {L::safety_looked_at_coax, mark("safety.looked_at_coax", "Coax and wires underfoot", looked, kLookedSource)},
    {L::safety_done_rf_touch, mark("safety.done_rf_touch", "Out of everybody's reach", done, kDoneSource)},
    {L::safety_done_wire_ends, mark("safety.done_wire_ends", "Ends and tips marked", done, kDoneSource)},
    {L::safety_done_tripping, mark("safety.done_tripping", "Guys and lines flagged", done, kDoneSource)},
    {L::safety_done_mast_fall,
     mark("safety.done_mast_fall", "Clear circle for the mast", done, kDoneSource, by_wire)},
    {L::safety_done_throw_line,
     mark("safety.done_throw_line", "Throwing with nobody near", done, kDoneSource, by_wire)},
    {L::safety_done_park_rules, mark("safety.done_park_rules", "Park's rules asked for", done, kDoneSource)},
    {L::safety_done_lithium, mark("safety.done_lithium", "Battery sound and warm", done, kDoneSource)},
    {L::safety_done_vehicle, mark("safety.done_vehicle", "Nobody in or on the car", done, kDoneSource, by_whip)},
    {L::safety_done_hearing, mark("safety.done_hearing", "Volume down, one ear free", done, kDoneSource)},
    {L::safety_done_driving, mark("safety.done_driving", "Parked while operating", done, kDoneSource, by_whip)},
};

}  // namespace

std::span<const LeverRow> safety_levers() { return kRows; }

}  // namespace gs
