#include "core/outing/rules_rows.h"

#include "core/safety/far_field.h"

namespace gs {
namespace {

constexpr Option kRegionOptions[] = {{"1", "Region 1"}, {"2", "Region 2"}, {"3", "Region 3"}};
constexpr rules::Region kRegions[] = {rules::Region::one, rules::Region::two, rules::Region::three};
constexpr Option kLicenceOptions[] = {{"extra", "Extra (visitors: this at most)"},
                                      {"advanced", "Advanced"},
                                      {"general", "General"},
                                      {"technician", "Technician"},
                                      {"novice", "Novice"},
                                      {"other", "another country's"}};
constexpr rules::Class kClasses[] = {rules::Class::extra, rules::Class::advanced, rules::Class::general,
                                     rules::Class::technician, rules::Class::novice};
constexpr Option kRuleOptions[] = {
    {"us", "US, 47 CFR 1.1310"}, {"icnirp", "ICNIRP 2020"}, {"germany", "Germany, 26. BImSchV"}};
constexpr Option kGroundOptions[] = {{"usual", "usual ground"}, {"none", "none"}, {"full", "full reflection"}};
constexpr double kGroundFactors[] = {safety::kUsualGround, safety::kNoGround, safety::kFullReflection};

}  // namespace

std::span<const Option> region_options() { return kRegionOptions; }
std::span<const Option> licence_options() { return kLicenceOptions; }
rules::Region region_at(double index) { return kRegions[std::size_t(index)]; }
rules::Class licence_at(double index) { return kClasses[std::size_t(index)]; }
std::span<const Option> exposure_rule_options() { return kRuleOptions; }
std::span<const Option> ground_options() { return kGroundOptions; }
double ground_factor_at(double index) { return kGroundFactors[std::size_t(index)]; }

}  // namespace gs
