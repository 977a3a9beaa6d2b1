// Does it fit, how far do legs reach.
#include <cmath>

#include "core/antenna/feed.h"
#include "core/outing/checks_antenna.h"

namespace gs::antenna_rows {
namespace {

double out_of_reach(const Plan&) { return antenna::kOutOfReachM; }
double ground(const Plan&) { return 0; }

constexpr Lever kApex =
    asked("apex_m", "Apex height", Unit::metre, 1, 0, 60, 0.5, "highest point that wire or halyard can reach");

// ---- Does it fit here? ----

const CheckInput kFitInputs[] = {
    {kKind},
    {kFrequency},
    {kApex},
    {asked("span_m", "Span free", Unit::metre, 1, 0, 200, 0.5, "clear width in the wire's own direction")},
    {asked("end_m", "Height of the ends", Unit::metre, 1, 0, 20, 0.1,
           "usual value: out of a standing person's reach, common practice", out_of_reach)},
    {wire_row("usual value: bare")},
};
const CheckResult kFitResults[] = {
    // A metre to spare is what a pace and a sagging rope take: common practice.
    {told("room_m", "Room to spare", Unit::metre, 1,
          "the tighter of the two below; limit and ease: common practice", Better::more),
     0, 1},
    {told("span_room_m", "Along the span", Unit::metre, 1, "geometry with taut wires; docs/methods/antenna",
          Better::more)},
    {told("height_room_m", "In height", Unit::metre, 1, "geometry with taut wires; docs/methods/antenna",
          Better::more)},
};
std::string fits(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kFitInputs, in); !trouble.empty()) return trouble;
  const antenna::Kind& kind = antenna::kinds()[std::size_t(in[0])];
  antenna::Setup setup;
  setup.wire = in[5] > 0 ? antenna::Wire::insulated : antenna::Wire::bare;
  const antenna::Fit fit = antenna::fit(antenna::rig_of(kind, in[1], setup), {in[2], in[3], in[4]});
  out[0] = fit.room_m;
  out[1] = fit.span_room_m;
  out[2] = fit.height_room_m;
  if (fit.room_m >= 0) return {};
  if (fit.span_room_m < 0 && fit.height_room_m < 0) return "free span and support together are too little for it";
  return fit.height_binds() ? "the support is too low for it" : "the free span is too short for it";
}

// ---- How far do the legs of a V reach? ----

const CheckInput kReachInputs[] = {
    {asked("leg_m", "One leg", Unit::metre, 2, 0.1, 100, 0.1, "half of the whole wire")},
    {kApex},
    {asked("end_m", "Height of the ends", Unit::metre, 1, 0, 20, 0.1,
           "usual value: out of a standing person's reach, common practice", out_of_reach)},
};
const CheckResult kReachResults[] = {
    {told("each_m", "Reach to each side", Unit::metre, 2, "Pythagoras; rope to the pegs comes on top")},
    {told("both_m", "Reach in all", Unit::metre, 2, "both sides")},
    {told("between_deg", "Between the legs, degrees", Unit::none, 0,
          "180 is flat. Under 90 the legs cancel each other: common practice", Better::more),
     80, 90},
};
std::string v_reach(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kReachInputs, in); !trouble.empty()) return trouble;
  const antenna::LegReach reach = antenna::leg_reach(in[0], in[1], in[2]);
  if (!std::isfinite(reach.each_m))
    return "the leg is shorter than the drop: it hangs straight down and does not reach";
  out[0] = reach.each_m;
  out[1] = reach.both_m;
  out[2] = reach.between_deg;
  return {};
}

// ---- How long is a line down to a stake? ----

const CheckInput kStakeInputs[] = {
    {asked("height_m", "Height of the support", Unit::metre, 1, 0.1, 60, 0.5, "where wire and rope leave it")},
    {asked("out_m", "Out along the ground", Unit::metre, 1, 0, 200, 0.5, "from below the support to the stake")},
    {asked("end_m", "Height of the stake", Unit::metre, 1, 0, 20, 0.1, "usual value: the ground", ground)},
};
const CheckResult kStakeResults[] = {
    {told("length_m", "Wire and rope", Unit::metre, 2, "Pythagoras")},
    {told("from_vertical_deg", "From the vertical, degrees", Unit::none, 0,
          "half of the angle between two such legs")},
    {told("between_deg", "Between two such legs, degrees", Unit::none, 0, "the angle of the V")},
};
std::string stake(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kStakeInputs, in); !trouble.empty()) return trouble;
  const antenna::SlopeLine line = antenna::slope_line(in[0], in[1], in[2]);
  if (!std::isfinite(line.length_m)) return "both ends are at one point";
  out[0] = line.length_m;
  out[1] = line.from_vertical_deg;
  out[2] = line.between_deg;
  return {};
}

// ---- Does a leaning wire matter? ----

const CheckInput kLeanInputs[] = {
    {asked("lean_deg", "Lean from upright, degrees", Unit::none, 0, 0, 89, 1, "0 is upright")},
};
const CheckResult kLeanResults[] = {
    {told("loss_db", "Lost from the upright part", Unit::decibel, 2, "-20 log10 of the cosine", Better::less)},
};
std::string lean(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kLeanInputs, in); !trouble.empty()) return trouble;
  out[0] = antenna::lean_loss_db(in[0]);
  return {};
}

const Check kChecks[] = {
    {"antenna.fits", "Does it fit here?", Link::antenna, kFitInputs, kFitResults,
     "Pace the clear width and judge the height of branch or mast. Look up first: nothing may go up where any "
     "part, "
     "falling, could come within 3 m of a power line.",
     "geometry, common practice for reach and ties; docs/methods/antenna", fits},
    {"antenna.v_reach", "How far do the legs of a V reach?", Link::antenna, kReachInputs, kReachResults,
     "One leg of wire, the height of its middle, and how high the ends hang.", "Pythagoras", v_reach},
    {"antenna.stake_line", "How long is a line down to a stake?", Link::antenna, kStakeInputs, kStakeResults,
     "Height of the support and paces out to the stake. The angle between two legs is twice the angle of one.",
     "Pythagoras", stake},
    {"antenna.lean", "Does a leaning wire matter?", Link::antenna, kLeanInputs, kLeanResults,
     "Judge the lean from upright. Only polarisation is counted; feed resistance changes a little too.",
     "projection of the current on the vertical", lean},
};

}  // namespace

std::span<const Check> space_checks() { return kChecks; }

}  // namespace gs::antenna_rows
