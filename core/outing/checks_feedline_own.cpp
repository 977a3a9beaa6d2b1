// My own cable: its loss from what a meter shows with nothing on the far end.
#include <algorithm>
#include <cmath>

#include "core/feedline/roll.h"
#include "core/feedline/swr.h"
#include "core/outing/checks_feedline.h"

namespace gs::feedline_rows {
namespace {

constexpr std::string_view kHowMeasured =
    "read at the radio's end, nothing on the far end; higher at the antinodes: take the highest nearby";

const CheckInput kOwnInputs[] = {
    {kLength, L::feedline_length_m},
    {number("first_swr", "SWR, far end open or shorted", Unit::none, 2, 1.01, 1000, 0.1, kHowMeasured)},
    {number("first_mhz", "Measured at", Unit::megahertz, 3, 1, 150, 0.05, "the meter's frequency")},
    {number("second_swr", "SWR at a second frequency", Unit::none, 2, 1.01, 1000, 0.1, kHowMeasured)},
    {number("second_mhz", "Second frequency", Unit::megahertz, 3, 1, 150, 0.05, "an octave or more away")},
    {kFrequency, L::antenna_frequency_mhz},
    {kCable, L::feedline_cable},
};
const CheckResult kOwnResults[] = {
    {told("first_db", "Loss of 100 m", Unit::decibel, 2, Better::less, "half the return loss over the length"), 0,
     0, L::feedline_own_loss_db},
    {told("first_at_mhz", "Measured at", Unit::megahertz, 3, Better::neither, "as given"), 0, 0,
     L::feedline_own_at_mhz},
    {told("second_db", "Loss of 100 m, second", Unit::decibel, 2, Better::less,
          "half the return loss over the length"),
     0, 0, L::feedline_own_second_db},
    {told("second_at_mhz", "Second measured at", Unit::megahertz, 3, Better::neither, "as given"), 0, 0,
     L::feedline_own_second_at_mhz},
    {told("here_db", "Loss of 100 m at the plan's frequency", Unit::decibel, 2, Better::less,
          "one measurement stretches the cable's law, two make one; docs/methods/feedline")},
    {told("of_catalogue_pct", "Of catalogue there", Unit::percent, 0, Better::less,
          "limit and ease: common practice, from memory"),
     180, 125},
};
std::string own(std::span<const double> in, std::span<double> out) {
  for (const std::size_t i : {std::size_t(0), std::size_t(1), std::size_t(2)})
    if (!std::isfinite(in[i])) return needs(kOwnInputs[i].row);
  if (!(in[0] > 0)) return "a roll of no length has no loss";
  const auto per_100m = [&](double swr) { return feedline::loss_from_open_end_db(swr) * 100 / in[0]; };
  const feedline::MeasuredLoss first{in[2], per_100m(in[1])};
  out[0] = first.db_per_100m;
  out[1] = in[2];
  const bool two = std::isfinite(in[3]) && std::isfinite(in[4]);
  feedline::MeasuredLoss second;
  if (two) {
    second = {in[4], per_100m(in[3])};
    out[2] = second.db_per_100m;
    out[3] = in[4];
  }
  for (const std::size_t i : {std::size_t(5), std::size_t(6)})
    if (!std::isfinite(in[i])) return needs(kOwnInputs[i].row) + " for the rest";
  const feedline::Cable& cable = feedline::cables()[std::size_t(in[6])];
  out[4] =
      (two ? measured_loss(cable, first, second, in[5]) : measured_loss(cable, first, in[5])).total_db_per_100m();
  out[5] = 100 * out[4] / feedline::attenuation_db_per_100m(cable, in[5]);
  if (two && (in[5] < std::min(in[2], in[4]) || in[5] > std::max(in[2], in[4])))
    return "the plan's frequency lies outside the two that were measured";
  return two ? ""
             : "one measurement: the shape of the law is the catalogue's; a second one an octave away makes its "
               "own";
}

const Check kChecks[] = {
    {"feedline.my_cable", "What is my own cable's loss?", Link::feedline, kOwnInputs, kOwnResults,
     "Nothing on the far end, or a short. Read the SWR at the radio's end with low power, once or at two "
     "frequencies. A "
     "long roll reads best: above SWR 20 a meter says little.",
     "open or shorted line: return loss is twice the matched loss; docs/methods/feedline", own},
};

}  // namespace

std::span<const Check> own_part() { return kChecks; }

}  // namespace gs::feedline_rows
