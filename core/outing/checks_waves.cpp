// Small questions about skip, critical frequency, the lowest lobe, and decibels on the meter.
#include <cmath>

#include "core/outing/checks_sky.h"
#include "core/sky/hop.h"

namespace gs::sky_rows {
namespace {

constexpr Link kLink = Link::sky;
constexpr double kDbPerSUnit = 6;  // IARU Region 1 Technical Recommendation R.1 (1981)

constexpr CheckInput kFrequency =
    input("frequency_mhz", "Frequency", kLink, Unit::megahertz, 3, 1, 60, 0.05, "the asker's own");

// ---- Is there a skip zone? ----

const CheckInput kSkipInputs[] = {kFrequency,
                                  input("critical_mhz", "Critical frequency", kLink, Unit::megahertz, 2, 0.5, 30,
                                        0.1, "an ionogram near the middle of the path"),
                                  input("muf_3000_mhz", "MUF at 3000 km", kLink, Unit::megahertz, 2, 1, 80, 0.1,
                                        "the same ionogram; gives the layer's height", nullptr, true),
                                  input("layer_km", "Layer height", kLink, Unit::kilometre, 0, 60, 600, 10,
                                        "taken where no MUF is given; F layer, common practice", usually<300>)};
const CheckResult kSkipResults[] = {
    result("skip_km", "Nothing comes back within", kLink, Unit::kilometre, 0, Better::less,
           "secant law on a round earth, good to 20 %; docs/methods/sky"),
    result("mirror_km", "Mirror height", kLink, Unit::kilometre, 0, Better::neither,
           "1490/M - 176: ITU-R P.533-14, second hand"),
    result("of_muf_pct", "Of the MUF at 3000 km", kLink, Unit::percent, 0, Better::less,
           "optimum working frequency 85 % of the MUF: common practice", 100, 85)};
std::string skip(std::span<const double> in, std::span<double> out) {
  for (const std::size_t i : {std::size_t(0), std::size_t(1), std::size_t(3)})
    if (!std::isfinite(in[i])) return needs(kSkipInputs[i].row);
  out[1] = in[3];
  std::string trouble = needs(kSkipInputs[2].row);
  if (std::isfinite(in[2])) {
    out[2] = 100 * in[0] / in[2];
    trouble.clear();
    if (const double mirror = sky::mirror_km_from_m3000(in[2] / in[1]); std::isfinite(mirror))
      out[1] = mirror;
    else
      trouble = "MUF and critical frequency do not belong together: their ratio is 2.5 to 4 in real layers";
  }
  const double km = sky::skip_km(in[0], in[1], out[1]);
  if (std::isinf(km)) return "at no angle does this layer send that frequency back";
  out[0] = km;
  return trouble;
}

// ---- How high must the critical frequency be for a local contact? ----

const CheckInput kLocalInputs[] = {
    kFrequency, input("working_pct", "Work at, of the critical frequency", kLink, Unit::percent, 0, 50, 100, 1,
                      "optimum working frequency 85 %: common practice", usually<85>)};
const CheckResult kLocalResults[] = {result("dependable_mhz", "Critical frequency for a dependable contact", kLink,
                                            Unit::megahertz, 2, Better::neither, "frequency over that share"),
                                     result("least_mhz", "Bare limit", kLink, Unit::megahertz, 2, Better::neither,
                                            "straight up nothing above the critical frequency comes back")};
std::string local(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kLocalInputs, in); !trouble.empty()) return trouble;
  out[0] = in[0] / (in[1] / 100);
  out[1] = in[0];
  return {};
}

// ---- At which angle does a horizontal antenna radiate most? ----

const CheckInput kLobeInputs[] = {kFrequency, input("height_m", "Height above ground", kLink, Unit::metre, 1, 0.1,
                                                    200, 0.5, "of the radiating middle part")};
const CheckResult kLobeResults[] = {
    result("lobe_deg", "Lowest lobe, degrees", kLink, Unit::none, 0, Better::neither,
           "asin(wavelength / 4 height), flat ground; docs/methods/sky"),
    result("wavelength_m", "Wavelength", kLink, Unit::metre, 2, Better::neither, "speed of light over frequency"),
    result("height_wavelengths", "Height", kLink, Unit::wavelength, 2, Better::more, "height over wavelength")};
std::string lobe(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kLobeInputs, in); !trouble.empty()) return trouble;
  out[0] = sky::lowest_lobe_deg(in[0], in[1]);
  out[1] = sky::wavelength_m(in[0]);
  out[2] = in[1] / out[1];
  return out[2] < 0.25 ? "below a quarter wave most goes straight up" : "";
}

// ---- Two powers, two meter readings ----

const CheckInput kPowersInputs[] = {
    input("power_w", "Power", kLink, Unit::watt, 2, 0.001, 5000, 1, "the asker's own"),
    input("other_power_w", "Other power", kLink, Unit::watt, 2, 0.001, 5000, 1, "the asker's own")};
const CheckResult kPowersResults[] = {result("gain_db", "Other over this", kLink, Unit::decibel, 1, Better::neither,
                                             "10 log of the ratio; ISO 80000-3"),
                                      result("s_units", "On the far meter", kLink, Unit::s_unit, 1, Better::neither,
                                             "6 dB an S-unit: IARU Region 1 Technical Recommendation R.1")};
std::string powers(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kPowersInputs, in); !trouble.empty()) return trouble;
  out[0] = 10 * std::log10(in[1] / in[0]);
  out[1] = out[0] / kDbPerSUnit;
  return {};
}

const CheckInput kNoiseInputs[] = {
    input("signal_s", "Signal", kLink, Unit::s_unit, 1, 0, 9, 1, "read off the meter, S0 to S9"),
    input("noise_s", "Noise", kLink, Unit::s_unit, 1, 0, 9, 1, "read off the meter with nobody calling")};
const CheckResult kNoiseResults[] = {
    result("over_noise_db", "Signal over noise", kLink, Unit::decibel, 0, Better::more,
           "6 dB an S-unit: IARU Region 1 Technical Recommendation R.1; real meters give 3 to 5")};
std::string over_noise(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kNoiseInputs, in); !trouble.empty()) return trouble;
  out[0] = (in[0] - in[1]) * kDbPerSUnit;
  return {};
}

const Check kChecks[] = {
    {"sky.skip", "Is there a skip zone, and how wide?", kLink, kSkipInputs, kSkipResults,
     "Critical frequency and 3000 km MUF from an ionogram of a sounder near the middle of the path.",
     "docs/methods/sky", skip},
    {"sky.local", "How high must the critical frequency be for a local contact?", kLink, kLocalInputs,
     kLocalResults, "Compare with an ionogram of a sounder near by.", "common practice; docs/methods/sky", local},
    {"sky.lobe", "At which angle does a horizontal antenna this high radiate most?", kLink, kLobeInputs,
     kLobeResults,
     "Height of the middle of the wire above the ground around it; a slope in front shifts the angle.",
     "docs/methods/sky", lobe},
    {"sky.powers", "How many S-units lie between two powers?", kLink, kPowersInputs, kPowersResults,
     "Any two powers at the same antenna.", "ISO 80000-3; IARU Region 1 Technical Recommendation R.1", powers},
    {"sky.over_noise", "How far is the signal above the noise?", kLink, kNoiseInputs, kNoiseResults,
     "Read the meter while the station sends and while nobody does.", "IARU Region 1 Technical Recommendation R.1",
     over_noise},
};

}  // namespace

std::span<const Check> wave_part() { return kChecks; }

}  // namespace gs::sky_rows
