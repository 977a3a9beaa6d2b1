#include "core/outing/findings_antenna.h"

#include <algorithm>
#include <cmath>

#include "core/antenna/radials.h"
#include "core/outing/antenna_setup.h"
#include "core/outing/overhead_join.h"

namespace gs {
namespace {

constexpr double kGoodSwr = 1.5;        // what people take for a sign of a good antenna
constexpr double kPoorEfficiency = 50;  // percent: 3 dB, half an S-unit
constexpr double kLastCutM = 0.05;      // from here on fold back first: a hand's breadth, common practice
constexpr double kFeltKhz = 5;  // a dip nearer than this is where it was wanted: half a reading's digit on HF
constexpr double kOnTheGroundM = 0.1;  // radials underfoot

std::string metres(double m, const Style& style) { return say_quantity(m, Unit::metre, 1, style); }

/// What is missing, rounded up: with so much more it does fit.
std::string metres_up(double m, const Style& style) {
  constexpr double kStepM = 0.1, kEdge = 1e-6;
  return metres(kStepM * std::ceil(m / kStepM - kEdge), style);
}

void space(const Plan& plan, const antenna::Kind& kind, const Style& style, std::vector<Finding>& found) {
  if (!plan.has_all(L::antenna_frequency_mhz, L::antenna_apex_m, L::antenna_span_m)) return;
  const antenna::Lack lack = antenna::lack(
      antenna::rig_of(kind, plan[L::antenna_frequency_mhz], antenna_setup(plan)), antenna_space(plan));
  const std::string span = metres_up(lack.span_m, style), apex = metres_up(lack.apex_m, style);
  const std::string no = "It does not fit here: ";
  if (lack.span_m > 0 && lack.apex_m > 0) {
    found.push_back({State::fails, no + span + " more free span " + (lack.either ? "or " : "and ") + apex +
                                       " more height would do."});
  } else if (lack.span_m > 0) {
    found.push_back({State::fails, no + "the free span is " + span + " too short."});
  } else if (lack.apex_m > 0) {
    found.push_back({State::fails, no + "the support is " + apex + " too low."});
  }
}

void obstacle(const Plan& plan, const Outlook& outlook, const Style& style, std::vector<Finding>& found) {
  const Figure& over = outlook[R::antenna_clears_m];
  if (over.doubt == Doubt::no_wire_there) {
    found.push_back({State::none, "No wire passes over the obstacle."});
  } else if (over.value < 0) {
    found.push_back({State::fails, "The wire runs into the obstacle, " + metres(-over.value, style) +
                                       " under its top: higher, another direction, or lift the end."});
  } else if (std::isfinite(over.value)) {
    // it counts as what fits does, by the person's own limit and ease
    found.push_back({judge(plan, R::antenna_fits_m, over.value).state,
                     "The wire passes " + metres(over.value, style) +
                         " over the obstacle when taut; sag and wind take some of it."});
  }
}

/// A low SWR beside a low efficiency: where the power goes, in figures.
void good_match(const Plan& plan, const antenna::Kind& kind, const Outlook& outlook, const Style& style,
                std::vector<Finding>& found) {
  const Figure &swr = outlook[R::antenna_swr], &efficiency = outlook[R::antenna_efficiency_pct];
  if (!(swr.value <= kGoodSwr) || !(efficiency.value < kPoorEfficiency)) return;
  const std::string share = say_quantity(efficiency.value, Unit::percent, efficiency.value < 10 ? 1 : 0, style);
  const std::string why = kind.is_whip() ? "coil and ground resistance lift the match and heat"
                          : kind.over_radials() && plan.has(L::antenna_radials)
                              ? "ground loss lifts the match and heats: more radials read worse and radiate more"
                              : "loss flatters the match";
  found.push_back({State::tight, "SWR " + print_quantity(swr.value, Unit::none, 1, style).number + ", yet " +
                                     share + " goes out: " + why + "."});
}

/// What the next radials would bring, while they still bring something that is heard.
void more_radials(const Plan& plan, const antenna::Kind& kind, const Style& style, std::vector<Finding>& found) {
  if (!kind.over_radials() || !plan.has_all(L::antenna_radials, L::antenna_frequency_mhz)) return;
  const antenna::Setup setup = antenna_setup(plan);
  antenna::Setup twice = setup;
  twice.radial_count = std::max(2.0, 2 * setup.radial_count);
  const double f_mhz = plan[L::antenna_frequency_mhz];
  const double gain_db = 10 * std::log10(antenna::feed_point(kind, f_mhz, twice).efficiency /
                                         antenna::feed_point(kind, f_mhz, setup).efficiency);
  constexpr double kWorthDb = 0.5;  // under that nobody lays wire
  if (gain_db >= kWorthDb)
    found.push_back({State::none, "Twice the radials would bring " +
                                      say_quantity(gain_db, Unit::decibel, 1, style) +
                                      "; more of them counts before longer ones."});
}

void trimming(const Plan& plan, const Outlook& outlook, const Style& style, std::vector<Finding>& found) {
  const double by_m = outlook[R::antenna_trim_m].value;
  if (!plan.has_all(L::antenna_dip_mhz, L::antenna_frequency_mhz) || !std::isfinite(by_m)) return;
  const double off_khz = 1000 * std::abs(plan[L::antenna_dip_mhz] - plan[L::antenna_frequency_mhz]);
  if (off_khz <= kFeltKhz) {
    found.push_back({State::holds, "The dip is where it was wanted: cut nothing more."});
  } else if (by_m > 0) {
    found.push_back({State::tight, "Too short by " + say_quantity(by_m, Unit::metre, 2, style) +
                                       " at each free end: splice, or let a folded tail out."});
  } else if (-by_m < kLastCutM) {
    found.push_back({State::tight, "The last " + say_quantity(-by_m, Unit::metre, 3, style) +
                                       ": fold back, hang it, read again. What is cut off does not grow back."});
  }
}

void underfoot(const antenna::Kind& kind, const Outlook& outlook, std::vector<Finding>& found) {
  if (kind.over_radials() && outlook[R::antenna_low_m].value < kOnTheGroundM)
    found.push_back({State::none, "Radials lie underfoot: flag them, lead them away from paths."});
}

void end_fed(const antenna::Kind& kind, std::vector<Finding>& found) {
  if (kind.end_fed() || kind.non_resonant())
    found.push_back({State::none, "Box, far end and counterpoise carry high voltage while sending: out of reach."});
}

}  // namespace

Finding power_line_finding(const Plan& plan, const Style& style) {
  const OverheadJoin join = join_overhead(plan);
  const std::string theirs = " The utility's and local rules come first.";
  const std::string stay = std::isfinite(join.stay_off_m)
                               ? metres(join.stay_off_m, style)
                               : metres(join.clearance_m, style) + " and all that may fall";
  if (!plan.has(L::safety_line_m)) {
    const bool looked = plan[L::safety_looked_at_lines] > 0;
    return {
        looked ? State::none : State::tight,
        looked ? "Power lines: looked, no distance given. If there is one, stay off it by " + stay + "." + theirs
               : "Power lines: nobody has answered yet. Look up and all round; stay off by " + stay + "." + theirs};
  }
  const std::string away = "The power line is " + metres(plan[L::safety_line_m], style) + " off; ";
  if (!std::isfinite(join.room_m))
    return {State::tight, away + "what to stay off by needs the antenna first." + theirs};
  const bool thrown = join.off.throw_clear_m >= join.off.stay_off_m;
  const std::string why = thrown ? metres(join.loose_m, style) + " of wire or line may be thrown or whip over"
                                 : metres(join.height_m, style) + " may fall";
  if (join.room_m < 0)
    return {State::fails, away + why + ", so " + stay + " is the least. Do not put it up here." + theirs};
  return {join.room_m < join.clearance_m ? State::tight : State::holds,
          away + why + ", which asks for " + stay + ". Take it as bare and live all the same." + theirs};
}

std::vector<Finding> antenna_findings(const Plan& plan, const Outlook& outlook, const Style& style) {
  std::vector<Finding> found{power_line_finding(plan, style)};
  if (const antenna::Kind* kind = antenna_kind(plan)) {
    space(plan, *kind, style, found);
    obstacle(plan, outlook, style, found);
    trimming(plan, outlook, style, found);
    good_match(plan, *kind, outlook, style, found);
    more_radials(plan, *kind, style, found);
    end_fed(*kind, found);
    underfoot(*kind, outlook, found);
  }
  order_findings(found);
  return found;
}

}  // namespace gs
