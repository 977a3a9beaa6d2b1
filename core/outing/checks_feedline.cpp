// Small questions about the feed line.
#include "core/outing/checks_feedline.h"

#include <cmath>
#include <iterator>
#include <vector>

#include "core/units.h"

namespace gs {
namespace {

constexpr Option kFarEndOptions[] = {{"open", "open"}, {"shorted", "shorted"}};
std::span<const Option> far_end_options() { return kFarEndOptions; }
double first_option(const Plan&) { return 0; }
double hundred_watts(const Plan&) { return 100; }

using feedline_rows::kCable, feedline_rows::kFrequency, feedline_rows::kLength;

// ---- Is this roll going bad? ----

const CheckInput kRollInputs[] = {
    {{.key = "far_end",
      .name = "Far end",
      .link = Link::feedline,
      .kind = Kind::choice,
      .options = far_end_options,
      .usual = first_option,
      .source = "either reads the same loss"}},
    {{.key = "swr",
      .name = "Measured SWR",
      .link = Link::feedline,
      .digits = 2,
      .least = 1.01,
      .most = 1000,
      .step = 0.1,
      .scale = Scale::log,
      .source = "read at the radio's end, nothing on the far end"}},
    {kFrequency, L::antenna_frequency_mhz},
    {kCable, L::feedline_cable},
    {kLength, L::feedline_length_m},
};
const CheckResult kRollResults[] = {
    {{.key = "loss_db",
      .name = "Loss of this roll",
      .link = Link::feedline,
      .unit = Unit::decibel,
      .digits = 2,
      .better = Better::less,
      .source = "half the return loss of an open or shorted line; docs/methods/feedline"}},
    {{.key = "catalogue_db",
      .name = "Catalogue",
      .link = Link::feedline,
      .unit = Unit::decibel,
      .digits = 2,
      .better = Better::less,
      .source = "the cable catalogue"}},
    // A sound roll stays within a quarter of its catalogue figure; near twice that it is on its way out: common
    // practice.
    {{.key = "of_catalogue_pct",
      .name = "Of catalogue",
      .link = Link::feedline,
      .unit = Unit::percent,
      .digits = 0,
      .better = Better::less,
      .source = "limit and ease: common practice, from memory"},
     180,
     125,
     L::feedline_roll_loss_pct},
};
std::string roll_loss(std::span<const double> in, std::span<double> out) {
  if (!std::isfinite(in[1])) return needs(kRollInputs[1].row);
  out[0] = feedline::loss_from_open_end_db(in[1]);
  for (const std::size_t i : {std::size_t(2), std::size_t(3), std::size_t(4)})
    if (!std::isfinite(in[i])) return needs(kRollInputs[i].row) + " to compare with the catalogue";
  const feedline::Cable& cable = feedline::cables()[std::size_t(in[3])];
  out[1] = feedline::attenuation_db_per_100m(cable, in[2]) * in[4] / 100;
  if (out[1] <= 0) return "a roll of no length has no loss to compare with";
  out[2] = 100 * out[0] / out[1];
  return feedline_rows::outside_range(cable, in[2]);
}

// ---- What do these decibels mean? ----

// One S-unit is 6 dB: IARU Region 1 Technical Recommendation R.1 (1981).
constexpr double kDbPerSUnit = 6.0;

const CheckInput kDecibelInputs[] = {
    {{.key = "loss_db",
      .name = "Loss",
      .link = Link::feedline,
      .unit = Unit::decibel,
      .digits = 1,
      .least = 0,
      .most = 100,
      .step = 0.1,
      .source = "as in the plan"},
     L::count,
     R::feedline_total_loss_db},
    {{.key = "power_w",
      .name = "Power",
      .link = Link::feedline,
      .unit = Unit::watt,
      .digits = 1,
      .least = 0.001,
      .most = 2000,
      .step = 1,
      .scale = Scale::log,
      .usual = hundred_watts,
      .source = "as in the plan"},
     L::radio_transmit_power_w},
};
const CheckResult kDecibelResults[] = {
    {{.key = "arrives_w",
      .name = "Arrives",
      .link = Link::feedline,
      .unit = Unit::watt,
      .digits = 1,
      .better = Better::more,
      .source = "power ratio 10^(-dB/10); ISO 80000-3"}},
    {{.key = "arrives_pct",
      .name = "Share that arrives",
      .link = Link::feedline,
      .unit = Unit::percent,
      .digits = 1,
      .better = Better::more,
      .source = "power ratio 10^(-dB/10); ISO 80000-3"}},
    {{.key = "lost_w",
      .name = "Lost",
      .link = Link::feedline,
      .unit = Unit::watt,
      .digits = 1,
      .better = Better::less,
      .source = "what does not arrive"}},
    {{.key = "s_units",
      .name = "On the other station's meter",
      .link = Link::feedline,
      .unit = Unit::s_unit,
      .digits = 1,
      .better = Better::less,
      .source = "6 dB an S-unit: IARU Region 1 Technical Recommendation R.1"}},
};
std::string decibels(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kDecibelInputs, in); !trouble.empty()) return trouble;
  const double share = std::pow(10, -in[0] / 10);
  out[0] = in[1] * share;
  out[1] = 100 * share;
  out[2] = in[1] - out[0];
  out[3] = in[0] / kDbPerSUnit;
  return {};
}

// ---- How long is it in wavelengths? ----

const CheckInput kElectricalInputs[] = {
    {kFrequency, L::antenna_frequency_mhz},
    {kLength, L::feedline_length_m},
    {kCable, L::feedline_cable},
};
const CheckResult kElectricalResults[] = {
    {{.key = "wavelengths",
      .name = "Electrical length",
      .link = Link::feedline,
      .unit = Unit::wavelength,
      .digits = 3,
      .source = "length over wavelength on the line; docs/methods/feedline"}},
    {{.key = "quarter_wave_m",
      .name = "Quarter wave of this cable",
      .link = Link::feedline,
      .unit = Unit::metre,
      .digits = 2,
      .source = "c x velocity factor / 4 f"}},
    {{.key = "half_wave_m",
      .name = "Half wave of this cable",
      .link = Link::feedline,
      .unit = Unit::metre,
      .digits = 2,
      .source = "c x velocity factor / 2 f"}},
};
std::string electrical(std::span<const double> in, std::span<double> out) {
  for (const std::size_t i : {std::size_t(0), std::size_t(2)})
    if (!std::isfinite(in[i])) return needs(kElectricalInputs[i].row);
  const feedline::Cable& cable = feedline::cables()[std::size_t(in[2])];
  const double wavelength_m = kSpeedOfLightMPerS * cable.velocity_factor / (in[0] * 1e6);
  out[1] = wavelength_m / 4;
  out[2] = wavelength_m / 2;
  if (!std::isfinite(in[1])) return needs(kElectricalInputs[1].row);
  out[0] = in[1] / wavelength_m;
  return {};
}

const Check kChecks[] = {
    {"feedline.roll_loss", "Is this roll going bad?", Link::feedline, kRollInputs, kRollResults,
     "Take everything off the far end and leave it open, or short it. Read the SWR at the radio's end, with low "
     "power and "
     "the matching unit bypassed.",
     "open or shorted line: return loss is twice the matched loss; docs/methods/feedline", roll_loss},
    {"feedline.decibels", "What do these decibels mean?", Link::feedline, kDecibelInputs, kDecibelResults,
     "Any loss in decibels, from the plan or from a table.",
     "ISO 80000-3; IARU Region 1 Technical Recommendation R.1", decibels},
    {"feedline.electrical_length", "How long is it in wavelengths?", Link::feedline, kElectricalInputs,
     kElectricalResults, "Length of the line and the frequency; the velocity factor comes from the catalogue.",
     "velocity factor; docs/methods/feedline", electrical},
};

}  // namespace

std::span<const Check> feedline_checks() {
  static const std::vector<Check> all = [] {
    std::vector<Check> rows(std::begin(kChecks), std::end(kChecks));
    for (const std::span<const Check> part :
         {feedline_rows::swr_part(), feedline_rows::own_part(), feedline_rows::cable_part()})
      rows.insert(rows.end(), part.begin(), part.end());
    return rows;
  }();
  return all;
}

}  // namespace gs
