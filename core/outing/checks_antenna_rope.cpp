// Ropes over branches and wires that hang.
#include <cmath>

#include "core/antenna/rigging.h"
#include "core/outing/checks_antenna.h"

namespace gs::antenna_rows {
namespace {

double usual_spare(const Plan&) { return antenna::kRopeSpareM; }

// ---- How much rope for this branch? ----

const CheckInput kRopeInputs[] = {
    {asked("branch_m", "Height of the branch", Unit::metre, 1, 0.5, 60, 0.5, "judged, or by a cord over it")},
    {asked("spare_m", "To hold and tie", Unit::metre, 1, 0, 30, 0.5, "usual value: 3 to 5 m, common practice",
           usual_spare)},
};
const CheckResult kRopeResults[] = {
    {told("rope_m", "Rope", Unit::metre, 1, "up, down again, and something to hold: common practice")},
};
std::string rope(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kRopeInputs, in); !trouble.empty()) return trouble;
  out[0] = antenna::rope_over_branch_m(in[0], in[1]);
  return {};
}

// ---- How high is this branch? ----

const CheckInput kBranchInputs[] = {
    {asked("cord_m", "Cord over the branch", Unit::metre, 1, 0.5, 200, 0.5,
           "its whole length, both ends hanging level")},
    {asked("ends_m", "Ends above the ground", Unit::metre, 1, 0, 20, 0.1, "easily forgotten")},
};
const CheckResult kBranchResults[] = {
    {told("branch_m", "Height of the branch", Unit::metre, 1, "ends plus half the cord")},
};
std::string branch(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kBranchInputs, in); !trouble.empty()) return trouble;
  out[0] = antenna::branch_height_m(in[0], in[1]);
  return {};
}

// ---- How deep does an arm hang? ----

const CheckInput kArmInputs[] = {
    {asked("angle_deg", "Below level at the top, degrees", Unit::none, 0, 1, 85, 1,
           "where the wire leaves the mast")},
    {asked("constant_m", "Catenary constant", Unit::metre, 2, 0.1, 100000, 1,
           "level pull over weight per metre; may be left out where the arm is given")},
    {asked("arm_m", "Length of the arm", Unit::metre, 2, 0.1, 500, 0.1,
           "may be left out where the constant is given")},
};
const CheckResult kArmResults[] = {
    {told("drop_m", "End below the top", Unit::metre, 2, "catenary: a (1 / cos - 1)")},
    {told("pull_ratio", "Pull at the top over the end", Unit::none, 3, "1 / cos of the angle")},
    {told("length_m", "Wire of the arm", Unit::metre, 2, "a tan of the angle")},
    {told("constant_out_m", "Catenary constant", Unit::metre, 2, "arm over tan of the angle")},
};
std::string arm(std::span<const double> in, std::span<double> out) {
  if (!std::isfinite(in[0])) return needs(kArmInputs[0].row);
  if (!std::isfinite(in[1]) && !std::isfinite(in[2])) return needs(kArmInputs[2].row);
  const double constant_m = std::isfinite(in[1]) ? in[1] : antenna::constant_of_arm_m(in[2], in[0]);
  const antenna::Arm hung = antenna::catenary_arm(constant_m, in[0]);
  out[0] = hung.drop_m;
  out[1] = hung.pull_ratio;
  out[2] = hung.length_m;
  out[3] = constant_m;
  constexpr double kSameLength = 0.01;
  if (std::isfinite(in[1]) && std::isfinite(in[2]) && std::abs(in[2] / hung.length_m - 1) > kSameLength)
    return "this constant and angle belong to an arm of " + say_quantity(hung.length_m, Unit::metre, 2) +
           ": one of the three is to be doubted";
  return {};
}

// ---- How much does a wire sag? ----

const CheckInput kSagInputs[] = {
    {asked("span_m", "Between the supports", Unit::metre, 1, 1, 500, 0.5, "two points of the same height")},
    {asked("pull_kg", "Pull, as a weight", Unit::kilogram, 1, 0.1, 200, 0.5,
           "a tenth of the breaking load: common practice")},
    {asked("wire_g", "Weight of a metre of wire", Unit::gram, 1, 0.5, 500, 0.5, "bare copper of 2 mm has 29 g")},
};
const CheckResult kSagResults[] = {
    {told("sag_m", "Sag in the middle", Unit::metre, 2, "catenary; docs/methods/antenna", Better::less)},
    {told("extra_wire_m", "Wire beyond the span", Unit::metre, 3, "catenary; docs/methods/antenna")},
};
std::string sag(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kSagInputs, in); !trouble.empty()) return trouble;
  const antenna::Sag hung = antenna::catenary_sag(antenna::catenary_constant_m(in[1], in[2]), in[0]);
  // A catenary deeper than its span is a rope that hangs, not a wire under pull.
  if (!(hung.sag_m <= in[0])) return "so little pull lets it hang deeper than it is wide";
  out[0] = hung.sag_m;
  out[1] = hung.extra_wire_m;
  return {};
}

const Check kChecks[] = {
    {"antenna.rope_over_branch", "How much rope for this branch?", Link::antenna, kRopeInputs, kRopeResults,
     "No throwing where a power line is nearer than the rope is long and 3 m more; nobody under the line; eyes and "
     "head "
     "covered.",
     "up and down again and 3 to 5 m: common practice", rope},
    {"antenna.branch_height", "How high is this branch?", Link::antenna, kBranchInputs, kBranchResults,
     "Pull a cord of known length until both ends hang level, and measure how high they hang.",
     "half the cord and the ends", branch},
    {"antenna.arm_sag", "How deep does an arm hang?", Link::antenna, kArmInputs, kArmResults,
     "Sight the angle of the wire at the mast; the far end is pulled level.", "catenary, textbooks of mechanics",
     arm},
    {"antenna.sag", "How much does a wire sag?", Link::antenna, kSagInputs, kSagResults,
     "A luggage scale in the halyard reads the pull. The whole span counts, not half of it.",
     "catenary; QST, March 2014, p. 50", sag},
};

}  // namespace

std::span<const Check> rope_checks() { return kChecks; }

}  // namespace gs::antenna_rows
