// Small questions about what is carried.
#include <algorithm>
#include <cmath>

#include "core/kit/kit.h"
#include "core/outing/checks_sky.h"

namespace gs::sky_rows {
namespace {

constexpr Link kLink = Link::kit;

// ---- What does it weigh? ----

constexpr CheckInput weight_input(std::string_view key, std::string_view name,
                                  double (*usual)(const Plan&) = usually<0>, bool optional = false) {
  return input(key, name, kLink, Unit::gram, 0, 0, 50000, 50, "a kitchen or luggage scale", usual, optional);
}
const CheckInput kWeightInputs[] = {weight_input("first_g", "First part", nullptr),
                                    weight_input("second_g", "Second part"),
                                    weight_input("third_g", "Third part"),
                                    weight_input("fourth_g", "Fourth part"),
                                    weight_input("fifth_g", "Fifth part"),
                                    weight_input("left_out_g", "Left at home"),
                                    weight_input("whole_g", "Whole pack, for the share", nullptr, true)};
const CheckResult kWeightResults[] = {
    result("carried_kg", "Carried", kLink, Unit::kilogram, 2, Better::less,
           "sum of the parts, less what stays at home"),
    result("share_pct", "Of the whole pack", kLink, Unit::percent, 0, Better::less, "carried over whole pack")};
std::string weight(std::span<const double> in, std::span<double> out) {
  for (std::size_t i = 0; i + 1 < std::size(kWeightInputs); ++i)
    if (!std::isfinite(in[i])) return needs(kWeightInputs[i].row);
  const double carried_g = in[0] + in[1] + in[2] + in[3] + in[4] - in[5];
  if (carried_g < 0) return "more is left at home than there was";
  out[0] = carried_g / 1000;
  if (!std::isfinite(in[6])) return needs(kWeightInputs[6].row);
  if (!(in[6] > 0)) return "a pack without weight has no shares";
  out[1] = 100 * carried_g / in[6];
  return {};
}

// ---- Will everything work? ----

constexpr CheckInput part_input(std::string_view key, std::string_view name, bool optional) {
  return input(key, name, kLink, Unit::percent, 1, 0, 100, 1,
               "chance that this part works all through; one's own guess", nullptr, optional);
}
const CheckInput kChainInputs[] = {part_input("first_pct", "First part works", false),
                                   part_input("second_pct", "Second part works", true),
                                   part_input("third_pct", "Third part works", true),
                                   part_input("fourth_pct", "Fourth part works", true),
                                   part_input("fifth_pct", "Fifth part works", true),
                                   part_input("sixth_pct", "Sixth part works", true),
                                   part_input("seventh_pct", "Seventh part works", true),
                                   input("spare_pct", "Spare for the weakest works", kLink, Unit::percent, 1, 0,
                                         100, 1, "left out: as good as the part itself", nullptr, true)};
constexpr std::size_t kParts = 7;
const CheckResult kChainResults[] = {
    result("all_pct", "All of them work", kLink, Unit::percent, 1, Better::more,
           "series: product; docs/methods/kit", 80, 95),
    result("spare_all_pct", "With a spare for the weakest", kLink, Unit::percent, 1, Better::more,
           "that part and its spare in parallel; docs/methods/kit", 80, 95),
    result("any_pct", "At least one works", kLink, Unit::percent, 1, Better::more, "parallel; docs/methods/kit")};
std::string chain(std::span<const double> in, std::span<double> out) {
  std::vector<double> parts;
  for (std::size_t i = 0; i < kParts; ++i)
    if (std::isfinite(in[i])) parts.push_back(in[i] / 100);
  if (parts.empty()) return needs(kChainInputs[0].row);
  out[0] = 100 * kit::series(parts);
  out[2] = 100 * kit::parallel(parts);
  double& weakest = *std::min_element(parts.begin(), parts.end());
  const double pair[] = {weakest, std::isfinite(in[kParts]) ? in[kParts] / 100 : weakest};
  weakest = kit::parallel(pair);
  out[1] = 100 * kit::series(parts);
  return {};
}

// ---- May this battery fly? ----

// Passenger rules for spare lithium batteries: up to 100 Wh free, to 160 Wh two of them with the airline's consent,
// none above and never in the hold. ICAO Technical Instructions part 8 and IATA's passenger table; from memory.
constexpr double kFreeWh = 100, kConsentWh = 160;
const CheckInput kFlightInputs[] = {
    input("capacity_ah", "Battery capacity", kLink, Unit::ampere_hour, 1, 0.1, 200, 0.5, "printed on the battery"),
    input("voltage_v", "Nominal voltage", kLink, Unit::volt, 1, 1, 60, 0.1,
          "printed on the battery; 12.8 V for four lithium iron cells")};
const CheckResult kFlightResults[] = {
    result("energy_wh", "Energy, Wh", kLink, Unit::none, 0, Better::less,
           "capacity times nominal voltage; limits: ICAO Technical Instructions part 8, from memory", kConsentWh,
           kFreeWh),
    result("free_ah", "Without asking, up to", kLink, Unit::ampere_hour, 1, Better::more,
           "100 Wh over the voltage"),
    result("consent_ah", "With the airline's consent, up to", kLink, Unit::ampere_hour, 1, Better::more,
           "160 Wh over the voltage; two spares at most")};
std::string flight(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kFlightInputs, in); !trouble.empty()) return trouble;
  out[0] = in[0] * in[1];
  out[1] = kFreeWh / in[1];
  out[2] = kConsentWh / in[1];
  return out[0] <= kFreeWh ? "" : out[0] <= kConsentWh ? "only with the airline's consent" : "not allowed on board";
}

// ---- How cold is it up there? ----

constexpr double kLapseCelsiusPerMetre = 0.0065;  // ICAO Standard Atmosphere, Doc 7488: 6.5 K/km up to 11 km
const CheckInput kSummitInputs[] = {
    input("temperature_c", "Temperature at the start", kLink, Unit::celsius, 1, -60, 60, 1,
          "a thermometer in the shade"),
    input("climb_m", "Climb", kLink, Unit::metre, 0, -5000, 9000, 50, "from a map; downhill is negative")};
const CheckResult kSummitResults[] = {result("summit_c", "Temperature up there", kLink, Unit::celsius, 1,
                                             Better::neither,
                                             "6.5 degrees C a km: ICAO Standard Atmosphere, Doc 7488")};
std::string summit(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kSummitInputs, in); !trouble.empty()) return trouble;
  out[0] = in[0] - kLapseCelsiusPerMetre * in[1];
  return {};
}

const Check kChecks[] = {
    {"kit.weight", "What does it weigh?", kLink, kWeightInputs, kWeightResults,
     "Weigh every bag; guesses run far too low.", "sum", weight},
    {"kit.chain", "Will everything work?", kLink, kChainInputs, kChainResults,
     "Give each part that must work its chance; parts that share a cause are worse than this.", "docs/methods/kit",
     chain},
    {"kit.flight", "May this battery fly in hand luggage?", kLink, kFlightInputs, kFlightResults,
     "Capacity and nominal voltage stand on the label. In hand luggage only, contacts covered; rules change and "
     "airlines differ: ask yours.",
     "ICAO Technical Instructions part 8, from memory", flight},
    {"kit.summit", "How cold is it up there?", kLink, kSummitInputs, kSummitResults,
     "Temperature where you start and the metres you climb; wind and inversions change it.",
     "ICAO Standard Atmosphere, Doc 7488", summit},
};

}  // namespace

std::span<const Check> kit_part() { return kChecks; }

}  // namespace gs::sky_rows
