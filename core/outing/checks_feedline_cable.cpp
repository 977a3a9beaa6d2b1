// What a cable is: its figures, feet against metres, the power it stands, the lightest roll under a loss.
#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

#include "core/feedline/run.h"
#include "core/outing/checks_feedline.h"
#include "core/units.h"

namespace gs::feedline_rows {
namespace {

const feedline::Cable& cable_at(double index) { return feedline::cables()[std::size_t(index)]; }

double one(const Plan&) { return 1; }
double hundred(const Plan&) { return 100; }

// ---- Per 100 ft or per 100 m? ----

constexpr Option kPerOptions[] = {{"ft", "100 ft"}, {"m", "100 m"}};
std::span<const Option> per_options() { return kPerOptions; }

const CheckInput kPerInputs[] = {
    {number("table_db", "Loss in the table", Unit::decibel, 2, 0.01, 500, 0.1, "a table or a data sheet")},
    {{.key = "per",
      .name = "For",
      .link = Link::feedline,
      .kind = Kind::choice,
      .options = per_options,
      .source = "the head of the table's column"}},
    {kLength, L::feedline_length_m},
};
const CheckResult kPerResults[] = {
    {told("loss_db", "Loss of the length", Unit::decibel, 2, Better::less, "dB go with length")},
    {told("per_100m_db", "Of 100 m", Unit::decibel, 2, Better::less, "1 ft = 0.3048 m, exact")},
    {told("per_100ft_db", "Of 100 ft", Unit::decibel, 2, Better::less, "1 ft = 0.3048 m, exact")},
    {told("arrives_pct", "Arrives, matched", Unit::percent, 1, Better::more, "power ratio 10^(-dB/10)")},
};
std::string per(std::span<const double> in, std::span<double> out) {
  for (const std::size_t i : {std::size_t(0), std::size_t(1)})
    if (!std::isfinite(in[i])) return needs(kPerInputs[i].row);
  out[1] = in[1] == 0 ? in[0] / kMetresPerFoot : in[0];
  out[2] = out[1] * kMetresPerFoot;
  if (!std::isfinite(in[2])) return needs(kPerInputs[2].row);
  out[0] = out[1] * in[2] / 100;
  out[3] = 100 * std::pow(10, -out[0] / 10);
  return {};
}

// ---- What is known of this cable? ----

const CheckInput kDataInputs[] = {{kCable, L::feedline_cable}, {kFrequency, L::antenna_frequency_mhz}};
const CheckResult kDataResults[] = {
    {told("per_100m_db", "Loss of 100 m", Unit::decibel, 2, Better::less, "the cable catalogue's law")},
    {told("per_100ft_db", "Loss of 100 ft", Unit::decibel, 2, Better::less, "the cable catalogue's law")},
    {told("fit_pct", "Law misses its points by at most", Unit::percent, 1, Better::less,
          "tested from 1.8 to 54 MHz")},
    {told("z0_ohm", "Characteristic impedance", Unit::ohm, 1, Better::neither, "the cable catalogue")},
    {told("velocity_factor", "Velocity factor", Unit::none, 3, Better::neither, "the cable catalogue")},
    {told("capacitance_pf", "Capacitance of 1 m, pF", Unit::none, 1, Better::less,
          "1 / (impedance x velocity factor x c)")},
    {told("weight_g", "Weight of 1 m", Unit::gram, 0, Better::less, "the cable catalogue")},
    {told("diameter_mm", "Diameter, mm", Unit::none, 2, Better::less, "the cable catalogue")},
    {told("rated_w", "Takes, average, matched", Unit::watt, 0, Better::more,
          "the maker's rating; 40 °C around it")},
};
std::string data(std::span<const double> in, std::span<double> out) {
  if (!std::isfinite(in[0])) return needs(kDataInputs[0].row);
  const feedline::Cable& cable = cable_at(in[0]);
  const auto known = [](double x) { return x > 0 ? x : std::numeric_limits<double>::quiet_NaN(); };
  out[2] = cable.worst_fit_pct;
  out[3] = cable.z0_ohm;
  out[4] = cable.velocity_factor;
  out[5] = feedline::capacitance_pf_per_m(cable);
  out[6] = known(cable.mass_g_per_m);
  out[7] = known(cable.diameter_mm);
  std::string words =
      "loss: " + std::string(evidence_word(cable.loss_evidence)) + ", " + std::string(cable.loss_source) +
      "; body: " + std::string(evidence_word(cable.body_evidence)) + ", " + std::string(cable.body_source);
  if (cable.working_vrms > 0)
    words += "; working voltage " + say_quantity(cable.working_vrms, Unit::volt, 0) + " rms";
  if (!cable.fit_note.empty()) words += ". " + std::string(cable.fit_note);
  if (!std::isfinite(in[1])) return needs(kDataInputs[1].row) + "; " + words;
  out[0] = feedline::attenuation_db_per_100m(cable, in[1]);
  out[1] = out[0] * kMetresPerFoot;
  out[8] = feedline::rated_power_w(cable, in[1], 1);
  const std::string stretched = outside_range(cable, in[1]);
  return stretched.empty() ? words : stretched + "; " + words;
}

// ---- Does the cable stand the power? ----

const CheckInput kPowerInputs[] = {
    {number("power_w", "Power", Unit::watt, 1, 0.1, 5000, 5, "at the radio, key down"), L::radio_transmit_power_w},
    {number("sending_pct", "Of it on average", Unit::percent, 0, 1, 100, 5, "usual value: key down all the time",
            hundred)},
    {kCable, L::feedline_cable},
    {kFrequency, L::antenna_frequency_mhz},
    {number("swr", "SWR at the antenna", Unit::none, 1, 1, 1000, 0.1, "usual value: matched", one), L::count,
     R::antenna_swr},
};
const CheckResult kPowerResults[] = {
    {told("used_pct", "Of what it takes", Unit::percent, 0, Better::less,
          "average power over the rating at this SWR"),
     100, 70},
    {told("rated_w", "Takes, average", Unit::watt, 0, Better::more,
          "maker's rating over attenuation and SWR; docs/methods/feedline")},
    {told("highest_v", "Highest voltage, rms", Unit::volt, 0, Better::less, "root of power x impedance x SWR")},
    {told("peak_v", "Highest voltage, peak", Unit::volt, 0, Better::less, "1.41 times rms")},
};
std::string power(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kPowerInputs, in); !trouble.empty()) return trouble;
  const feedline::Cable& cable = cable_at(in[2]);
  const double on_line = in[4] * std::max(cable.z0_ohm / kMeterOhm, kMeterOhm / cable.z0_ohm);
  out[2] = feedline::highest_voltage_v(in[0], cable.z0_ohm, on_line);
  out[3] = out[2] * std::sqrt(2.0);
  out[1] = feedline::rated_power_w(cable, in[3], on_line);
  if (std::isfinite(out[1])) out[0] = in[0] * in[1] / out[1];
  std::string words;
  if (!std::isfinite(out[1])) words = "no power rating of this cable was found: not known";
  if (cable.working_vrms > 0)
    words += (words.empty() ? "" : "; ") + std::string("made for ") +
             say_quantity(cable.working_vrms, Unit::volt, 0) + " rms, which leaves " +
             say_quantity(100 * (1 - out[2] / cable.working_vrms), Unit::percent, 0);
  else
    words += (words.empty() ? "" : "; ") + std::string("no working voltage was found");
  if (!cable.rating_source.empty())
    words += (words.empty() ? "" : "; ") + std::string(evidence_word(cable.rating_evidence)) + ", " +
             std::string(cable.rating_source);
  words += ". Plugs and a coil in the sun take less: feel them, unkeyed";
  return words;
}

// ---- Which roll is the lightest? ----

const CheckInput kLightestInputs[] = {
    {number("loss_db", "Loss at most", Unit::decibel, 1, 0.05, 30, 0.1, "1 dB is a sixth of an S-unit"), L::count,
     R::feedline_total_loss_db},
    {kLength, L::feedline_length_m},
    {kFrequency, L::antenna_frequency_mhz},
    {number("swr", "SWR at the antenna", Unit::none, 1, 1, 100, 0.1, "usual value: matched", one), L::count,
     R::antenna_swr},
};
const CheckResult kLightestResults[] = {
    {told("weight_g", "Lightest roll", Unit::gram, 0, Better::less, "the cable catalogue's mass a metre")},
    {told("roll_db", "Loss of it", Unit::decibel, 2, Better::less, "mean over the phases; docs/methods/feedline")},
    {told("saved_g", "Lighter than the next", Unit::gram, 0, Better::more,
          "difference of the two lightest that keep the loss")},
    {told("rolls", "Rolls that keep it", Unit::none, 0, Better::more, "of the catalogue's")},
};
std::string lightest(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kLightestInputs, in); !trouble.empty()) return trouble;
  struct Fits {
    const feedline::Cable* cable;
    double weight_g, loss_db;
  };
  std::vector<Fits> fits;
  int without_weight = 0;
  for (const feedline::Cable& cable : feedline::cables()) {
    // outside its tested range a law is no ground for buying a roll
    if (cable.retired || !outside_range(cable, in[2]).empty()) continue;
    const double db = feedline::attenuation_db_per_100m(cable, in[2]), dielectric = cable.k2_db_per_100m * in[2];
    feedline::Run run;
    run.add(feedline::line_from_nominal(cable.z0_ohm, cable.velocity_factor, db - dielectric, dielectric, in[2],
                                        in[1]));
    const double loss_db = feedline::loss_range_db(run, kMeterOhm, in[3]).typical_db;
    if (loss_db > in[0]) continue;
    if (cable.mass_g_per_m > 0)
      fits.push_back({&cable, cable.mass_g_per_m * in[1], loss_db});
    else
      ++without_weight;
  }
  std::stable_sort(fits.begin(), fits.end(), [](const Fits& a, const Fits& b) {
    return a.weight_g != b.weight_g ? a.weight_g < b.weight_g : a.loss_db < b.loss_db;
  });
  out[3] = double(fits.size()) + without_weight;
  if (fits.empty()) return "no roll whose weight is known keeps that: shorter, or let more be lost";
  out[0] = fits[0].weight_g;
  out[1] = fits[0].loss_db;
  if (fits.size() > 1) out[2] = fits[1].weight_g - fits[0].weight_g;
  std::string words;
  for (std::size_t i = 0; i < std::min<std::size_t>(4, fits.size()); ++i)
    words += (i == 0   ? ""
              : i == 1 ? "; then "
                       : ", ") +
             std::string(fits[i].cable->name) + " " + say_quantity(fits[i].weight_g, Unit::gram, 0) + " with " +
             say_quantity(fits[i].loss_db, Unit::decibel, 2);
  if (without_weight > 0)
    words += "; " + std::to_string(without_weight) + " more keep it, their weight is not known";
  return words;
}

const Check kChecks[] = {
    {"feedline.per_length", "Per 100 ft or per 100 m?", Link::feedline, kPerInputs, kPerResults,
     "Tables of the trade come in both; taking one for the other is wrong by a factor of 3.28.",
     "international foot, exact; docs/methods/feedline", per},
    {"feedline.cable_data", "What is known of this cable?", Link::feedline, kDataInputs, kDataResults,
     "Every figure of the catalogue with how well it is known.", "the cable catalogue; docs/methods/feedline",
     data},
    {"feedline.power_handling", "Does the cable stand the power?", Link::feedline, kPowerInputs, kPowerResults,
     "Average power is what warms: key-down power times the share of the time it flows. SSB is a fifth to a third, "
     "CW two "
     "fifths, data modes all of it.",
     "makers' ratings, 40 °C around the cable; docs/methods/feedline", power},
    {"feedline.lightest", "Which roll is the lightest that will do?", Link::feedline, kLightestInputs,
     kLightestResults, "Say what may be lost; cables whose law was not tested at the frequency are left out.",
     "the cable catalogue; docs/methods/feedline", lightest},
};

}  // namespace

std::string outside_range(const feedline::Cable& cable, double frequency_mhz) {
  if (frequency_mhz >= cable.lowest_mhz && frequency_mhz <= cable.highest_mhz) return {};
  const auto say = [](double mhz) { return say_quantity(mhz, Unit::megahertz, digits_needed(mhz, 2)); };
  if (cable.lowest_mhz == cable.highest_mhz)
    return "the law of this cable was tested at " + say(cable.lowest_mhz) + " only";
  return "the catalogue's law for this cable was tested from " + say(cable.lowest_mhz) + " to " +
         say(cable.highest_mhz);
}

std::span<const Check> cable_part() { return kChecks; }

}  // namespace gs::feedline_rows
