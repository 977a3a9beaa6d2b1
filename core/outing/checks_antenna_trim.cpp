// Several readings against each other, and what trimming and matching do to a whip.
#include <cmath>
#include <vector>

#include "core/antenna/feed.h"
#include "core/antenna/match.h"
#include "core/antenna/trim.h"
#include "core/outing/checks_antenna.h"

namespace gs::antenna_rows {
namespace {

double both_ends(const Plan&) { return 0; }
constexpr Option kEnds[] = {{"both", "both ends"}, {"one", "one end"}};
std::span<const Option> ends_options() { return kEnds; }
double usual_diameter(const Plan&) { return antenna::Setup{}.whip_diameter_m; }
double usual_q(const Plan&) { return antenna::Setup{}.coil_q; }
double half_way(const Plan&) { return 50; }
double good_ground(const Plan&) { return antenna::kVehicleGroundOhm; }

// ---- How much more, from several readings? ----

constexpr Lever length_row(std::string_view key, std::string_view name, std::string_view source) {
  return asked(key, name, Unit::metre, 3, 0.2, 200, 0.05, source);
}
constexpr Lever dip_row(std::string_view key, std::string_view name, std::string_view source) {
  return asked(key, name, Unit::megahertz, 3, 0.5, 60, 0.01, source);
}
const CheckInput kManyInputs[] = {
    {dip_row("wanted_mhz", "Wanted", "as in the plan")},
    {{.key = "ends",
      .name = "Trimmed at",
      .link = Link::antenna,
      .kind = Kind::choice,
      .options = ends_options,
      .usual = both_ends,
      .source = "usual value: both ends, as of a dipole or V"}},
    {length_row("first_m", "Whole length, first", "measured along the wire")},
    {dip_row("first_mhz", "Dip, first", "where the SWR is least")},
    {length_row("second_m", "Whole length, second", "may be left out")},
    {dip_row("second_mhz", "Dip, second", "may be left out")},
    {length_row("third_m", "Whole length, third", "may be left out")},
    {dip_row("third_mhz", "Dip, third", "may be left out")},
    {length_row("fourth_m", "Whole length, fourth", "may be left out")},
    {dip_row("fourth_mhz", "Dip, fourth", "may be left out")},
};
const CheckResult kManyResults[] = {
    {told("new_length_m", "New length", Unit::metre, 3, "straight in 1/f through the readings")},
    {told("each_end_m", "Change at each end", Unit::metre, 3, "from the last reading; below 0: fold back or cut")},
    {told("off_mhz", "Readings off one line", Unit::megahertz, 3, "the worst of them", Better::less)},
    {told("doubt_reading", "Reading to doubt", Unit::none, 0, "0: they agree")},
};
std::string trim_many(std::span<const double> in, std::span<double> out) {
  for (std::size_t i = 0; i < 4; ++i)
    if (!std::isfinite(in[i])) return needs(kManyInputs[i].row);
  std::vector<antenna::TrimReading> readings;
  for (std::size_t i = 2; i < in.size(); i += 2) {
    if (std::isfinite(in[i]) != std::isfinite(in[i + 1]))
      return needs(kManyInputs[std::isfinite(in[i]) ? i + 1 : i].row);
    if (std::isfinite(in[i])) readings.push_back({in[i], in[i + 1]});
  }
  const antenna::TrimFit fit = antenna::fit_trim(readings, in[0]);
  if (!(fit.length_m > 0)) return "these readings fit no wire: begin again with one";
  out[0] = fit.length_m;
  const double ends = in[1] > 0 ? 1 : 2;
  out[1] = (fit.length_m - readings.back().length_m) / ends;
  out[2] = fit.worst_khz / 1000;
  out[3] = fit.doubt + 1;
  if (fit.doubt >= 0) {
    constexpr std::string_view kWhich[] = {"first", "second", "third", "fourth"};
    return "they contradict each other: doubt the " + std::string(kWhich[std::size_t(fit.doubt)]) +
           " reading, measure it again before you cut";
  }
  constexpr double kLastStep = 0.01;
  if (out[1] >= 0) return {};
  if (-out[1] * ends <= kLastStep * readings.back().length_m)
    return "the last step: fold back, read again, and cut only then, if at all";
  return "go two thirds of the way, read again, then the rest: what is cut off is off";
}

// ---- How sharp is a whip? ----

const CheckInput kSharpInputs[] = {
    {asked("height_m", "Height of the whip", Unit::metre, 2, 0.2, 30, 0.1, "foot to tip")},
    {kFrequency},
    {asked("coil_at_pct", "Coil up the whip", Unit::percent, 0, 0, 90, 5, "usual value: half way", half_way)},
    {asked("coil_q", "Q of the coil", Unit::none, 0, 10, 1000, 10, "usual value: a fair air coil", usual_q)},
    {asked("ground_ohm", "Ground loss", Unit::ohm, 1, 0, 200, 1, "usual value: a vehicle on 7 MHz", good_ground)},
    {asked("diameter_m", "Thickness of the rod", Unit::metre, 4, 0.0005, 0.2, 0.001,
           "usual value: 5 mm, common practice", usual_diameter)},
};
const CheckResult kSharpResults[] = {
    {told("khz_per_cm", "kHz for a centimetre of tip", Unit::none, 1,
          "the coil's equation; longer is lower. Proportion says two or three times too much")},
    {told("width_mhz", "Width within SWR 2", Unit::megahertz, 3, "matched at the dip: 0.707 f / Q", Better::more)},
    {told("q", "Q of the whole antenna", Unit::none, 0, "slope of its reactance over twice its resistance")},
    {told("full_size_db", "Against a full quarter wave", Unit::decibel, 1, "efficiency, and 0.4 dB for being short",
          Better::more)},
    {told("s_units", "The same in S-units", Unit::s_unit, 1, "6 dB each; IARU Region 1, 1981 (memory)",
          Better::more)},
};
std::string sharp(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kSharpInputs, in); !trouble.empty()) return trouble;
  const antenna::Whip whip{in[0], in[5], in[1], in[2] / 100, in[3], in[4]};
  const antenna::WhipFeed feed = antenna::whip_feed(whip);
  const double slope = antenna::whip_slope_ohm_per_mhz(whip);
  if (!std::isfinite(feed.efficiency) || !(feed.coil_uh > 0) || !(slope > 0))
    return "no short whip: higher than a quarter wave, or too thick for its length";
  out[0] = antenna::whip_khz_per_cm(whip);
  out[2] = in[1] * slope / (2 * feed.feed_ohm);
  out[1] = antenna::width_mhz(in[1], out[2]);
  out[3] = antenna::against_full_size_db(feed.efficiency);
  out[4] = out[3] / antenna::kDbPerSUnit;
  return {};
}

// ---- Is the better match the better antenna? ----

const CheckInput kMatchInputs[] = {
    {asked("radiation_ohm", "Radiation and coil", Unit::ohm, 1, 0.1, 500, 1,
           "what stays when the ground gets better: 36 of a quarter wave")},
    {asked("radiation_share_pct", "Of it radiation", Unit::percent, 0, 1, 100, 5, "100 for a full-size vertical")},
    {asked("one_ohm", "Ground loss, one way", Unit::ohm, 1, 0, 500, 1, "few radials, a poor vehicle")},
    {asked("other_ohm", "Ground loss, the other way", Unit::ohm, 1, 0, 500, 1, "more radials, a better bond")},
};
const CheckResult kMatchResults[] = {
    {told("one_swr", "SWR, one way", Unit::none, 1, "against 50 ohm, in resonance")},
    {told("one_pct", "Goes out, one way", Unit::percent, 1, "radiation over everything", Better::more)},
    {told("other_swr", "SWR, the other way", Unit::none, 1, "against 50 ohm, in resonance")},
    {told("other_pct", "Goes out, the other way", Unit::percent, 1, "radiation over everything", Better::more)},
    {told("gain_db", "The other is stronger by", Unit::decibel, 1, "10 log of the quotient", Better::more)},
};
std::string better_match(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kMatchInputs, in); !trouble.empty()) return trouble;
  const double radiates = in[0] * in[1] / 100;
  for (std::size_t i = 0; i < 2; ++i) {
    const double all = in[0] + in[2 + i];
    out[2 * i] = antenna::swr_of_resistance(all);
    out[2 * i + 1] = 100 * radiates / all;
  }
  out[4] = 10 * std::log10(out[3] / out[1]) + 0.0;
  const bool misleads = (out[0] < out[2]) == (out[1] < out[3]) && out[0] != out[2] && out[1] != out[3];
  return misleads ? "the better match is the worse antenna: loss was doing the matching" : "";
}

const Check kChecks[] = {
    {"antenna.trim_many", "How much more, from several readings?", Link::antenna, kManyInputs, kManyResults,
     "After each step: the whole length, both legs together, and where the SWR is least. Fold back rather than "
     "cut.",
     "(length + a fixed part) x frequency stays; docs/methods/antenna", trim_many},
    {"antenna.whip_sharpness", "How sharp is this whip?", Link::antenna, kSharpInputs, kSharpResults,
     "Height foot to tip and where its coil sits. Move the tip by millimetres, stand back, read again.",
     "QST, September 1974, Eq. 1, and a series circuit; docs/methods/antenna", sharp},
    {"antenna.better_match", "Is the better match the better antenna?", Link::antenna, kMatchInputs, kMatchResults,
     "Read the resistance in resonance with both grounds; take away what radiates.",
     "radiation over all resistance; docs/methods/antenna", better_match},
};

}  // namespace

std::span<const Check> trim_checks() { return kChecks; }

}  // namespace gs::antenna_rows
