// What an SWR at one end says about the other, what it costs, and how long a line may be for a share.
#include <cmath>

#include "core/feedline/run.h"
#include "core/outing/checks_feedline.h"
#include "core/units.h"

namespace gs::feedline_rows {
namespace {

constexpr double kDbPerPowerRatio = 10;
double fifty_percent(const Plan&) { return 50; }
double one(const Plan&) { return 1; }

constexpr Lever kMatched =
    number("matched_db", "Matched loss", Unit::decibel, 2, 0, 60, 0.1,
           "the cable's loss into its own impedance: of the plan, or loss of 100 m x length");

// ---- What SWR stands at the antenna? ----

const CheckInput kAtAntennaInputs[] = {
    {number("swr", "SWR at the radio", Unit::none, 2, 1, 100, 0.1, "read with low power, matching unit bypassed")},
    {kMatched, L::count, R::feedline_matched_loss_db},
};
const CheckResult kAtAntennaResults[] = {
    {told("swr_at_antenna", "SWR at the antenna", Unit::none, 2, Better::less,
          "rho at the antenna = rho at the radio x 10^(loss/10)"),
     3, 2},
    {told("total_db", "Loss with it", Unit::decibel, 2, Better::less,
          "a mean over the phases, which an SWR leaves open; docs/methods/feedline")},
    {told("extra_db", "Because of SWR", Unit::decibel, 2, Better::less, "what is above the matched loss")},
    {told("arrives_pct", "Arrives", Unit::percent, 1, Better::more, "power ratio 10^(-dB/10)")},
    {told("open_end_swr", "No antenna at all would read", Unit::none, 2, Better::more,
          "an open end through the same loss")},
};
std::string at_antenna(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kAtAntennaInputs, in); !trouble.empty()) return trouble;
  out[4] = feedline::swr_of_open_end(in[1]);
  out[0] = feedline::swr_at_load(in[0], in[1]);
  if (!std::isfinite(out[0]))
    return "no antenna shows that through this loss: doubt the meter, or the loss is less";
  out[1] = feedline::closed_form_loss_db(in[1], out[0]);
  out[2] = out[1] - in[1];
  out[3] = 100 * std::pow(10, -out[1] / kDbPerPowerRatio);
  return {};
}

// ---- What does the SWR cost on this line? ----

const CheckInput kCostInputs[] = {
    {number("swr", "SWR at the antenna", Unit::none, 2, 1, 1000, 0.1, "of the antenna, at its own end"), L::count,
     R::antenna_swr},
    {kMatched, L::count, R::feedline_matched_loss_db},
};
const CheckResult kCostResults[] = {
    {told("total_db", "Loss with it", Unit::decibel, 2, Better::less,
          "a mean over the phases, which an SWR leaves open; docs/methods/feedline")},
    {told("extra_db", "Because of SWR", Unit::decibel, 2, Better::less, "what is above the matched loss")},
    {told("arrives_pct", "Arrives", Unit::percent, 1, Better::more, "power ratio 10^(-dB/10)")},
    {told("swr_at_radio", "SWR at the radio", Unit::none, 2, Better::less,
          "rho at the radio = rho at the antenna x 10^(-loss/10)")},
    {told("mismatch_db", "Mismatch loss, which is no heat", Unit::decibel, 2, Better::less,
          "-10 log(1 - rho^2): not to be added, a matching unit gives it back")},
};
std::string cost(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kCostInputs, in); !trouble.empty()) return trouble;
  out[0] = feedline::closed_form_loss_db(in[1], in[0]);
  out[1] = out[0] - in[1];
  out[2] = 100 * std::pow(10, -out[0] / kDbPerPowerRatio);
  out[3] = feedline::swr_at_radio(in[0], in[1]);
  out[4] = feedline::mismatch_loss_db(feedline::reflection_from_swr(in[0]));
  return {};
}

// ---- How long may the feed line be? ----

const CheckInput kLongestInputs[] = {
    {number("arrives_pct", "Must arrive", Unit::percent, 0, 1, 99, 1, "half is 3 dB, half an S-unit",
            fifty_percent)},
    {kCable, L::feedline_cable},
    {kFrequency, L::antenna_frequency_mhz},
    {number("swr", "SWR at the antenna", Unit::none, 1, 1, 100, 0.1, "usual value: matched", one), L::count,
     R::antenna_swr},
};
const CheckResult kLongestResults[] = {
    {told("length_m", "Feed line at most", Unit::metre, 1, Better::more,
          "where the mean loss over the phases takes the rest"),
     0, 0, L::feedline_length_m},
    {told("least_m", "At the worst phase", Unit::metre, 1, Better::more,
          "where the largest loss over the phases takes the rest")},
    {told("matched_m", "With a matched antenna", Unit::metre, 1, Better::more, "share in dB over loss of a metre")},
};
/// The length at which the loss reaches `goal_db`; the loss grows with length.
template <class Loss>
double reach(double longest_m, double goal_db, const Loss& loss_db) {
  double low = 0, high = longest_m;
  for (int i = 0; i < 60; ++i) {
    const double middle = (low + high) / 2;
    (loss_db(middle) <= goal_db ? low : high) = middle;
  }
  return low;
}
std::string longest(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kLongestInputs, in); !trouble.empty()) return trouble;
  const double goal_db = -kDbPerPowerRatio * std::log10(in[0] / 100);
  const feedline::Cable& cable = feedline::cables()[std::size_t(in[1])];
  const double db_per_m = feedline::attenuation_db_per_100m(cable, in[2]) / 100;
  out[2] = goal_db / db_per_m;
  const auto range = [&](double length_m) {
    const double dielectric = cable.k2_db_per_100m * in[2];
    feedline::Run run;
    run.add(feedline::line_from_nominal(cable.z0_ohm, cable.velocity_factor, 100 * db_per_m - dielectric,
                                        dielectric, in[2], length_m));
    return feedline::loss_range_db(run, kMeterOhm, in[3]);
  };
  out[0] = reach(out[2], goal_db, [&](double m) { return range(m).typical_db; });
  out[1] = reach(out[2], goal_db, [&](double m) { return range(m).most_db; });
  return outside_range(cable, in[2]);
}

// ---- How long is this roll? ----

double first_dip(const Plan&) { return 1; }
const CheckInput kDipInputs[] = {
    {number("frequency_mhz", "Dip at", Unit::megahertz, 3, 0.1, 500, 0.05,
            "far end open; an analyser shows its lowest impedance")},
    {number("quarter_waves", "It is dip number", Unit::none, 0, 1, 99, 1, "the lowest in frequency is number 1",
            first_dip)},
    {kCable, L::feedline_cable},
    {number("length_m", "Length by the tape", Unit::metre, 2, 0.1, 500, 0.1,
            "to find the velocity factor of a cable")},
};
const CheckResult kDipResults[] = {
    {told("roll_m", "Length", Unit::metre, 2, Better::neither,
          "odd quarter waves: (2n - 1) c x velocity factor / 4 f"),
     0, 0, L::feedline_length_m},
    {told("velocity_factor", "Velocity factor by the tape", Unit::none, 3, Better::neither,
          "4 f x length / ((2n - 1) c)")},
};
std::string dip(std::span<const double> in, std::span<double> out) {
  for (const std::size_t i : {std::size_t(0), std::size_t(1)})
    if (!std::isfinite(in[i])) return needs(kDipInputs[i].row);
  const double air_m = (2 * in[1] - 1) * kSpeedOfLightMPerS / (4e6 * in[0]);
  if (std::isfinite(in[3])) out[1] = in[3] / air_m;
  if (!std::isfinite(in[2])) return std::isfinite(in[3]) ? std::string{} : needs(kDipInputs[2].row);
  out[0] = air_m * feedline::cables()[std::size_t(in[2])].velocity_factor;
  if (std::isfinite(out[1]) && out[1] > 1) return "faster than light: wrong dip, or the tape was misread";
  return std::isfinite(in[3]) ? std::string{} : needs(kDipInputs[3].row) + " for the velocity factor";
}

const Check kChecks[] = {
    {"feedline.swr_at_antenna", "What SWR stands at the antenna?", Link::feedline, kAtAntennaInputs,
     kAtAntennaResults,
     "Read the SWR at the radio with low power and the matching unit bypassed. Loss flatters the meter: it hides "
     "what "
     "comes back.",
     "line theory with real impedance; docs/methods/feedline", at_antenna},
    {"feedline.swr_cost", "What does the SWR cost on this line?", Link::feedline, kCostInputs, kCostResults,
     "SWR as it stands at the antenna, and the line's matched loss.",
     "ARRL Antenna Book, transmission lines (from memory); docs/methods/feedline", cost},
    {"feedline.longest", "How long may the feed line be?", Link::feedline, kLongestInputs, kLongestResults,
     "Say what share must arrive; the rest may warm the cable.",
     "exact line theory over all phases; docs/methods/feedline", longest},
    {"feedline.length_by_dip", "How long is this roll?", Link::feedline, kDipInputs, kDipResults,
     "Leave the far end open and look for the lowest frequency at which an analyser at the other end shows next to "
     "no "
     "impedance.",
     "quarter-wave resonance; docs/methods/feedline", dip},
};

}  // namespace

std::span<const Check> swr_part() { return kChecks; }

}  // namespace gs::feedline_rows
