// Loaded whips, their coils, and radials.
#include <cmath>

#include "core/antenna/feed.h"
#include "core/antenna/match.h"
#include "core/antenna/radials.h"
#include "core/outing/checks_antenna.h"
#include "core/units.h"

namespace gs::antenna_rows {
namespace {

double usual_diameter(const Plan&) { return antenna::Setup{}.whip_diameter_m; }
double usual_q(const Plan&) { return antenna::Setup{}.coil_q; }
double usual_ground(const Plan&) { return antenna::kVehicleGroundOhm; }
double at_the_foot(const Plan&) { return 0; }

constexpr Lever kHeight = asked("height_m", "Height of the whip", Unit::metre, 2, 0.2, 30, 0.1, "foot to tip");
constexpr Lever kDiameter = asked("diameter_m", "Thickness of the rod", Unit::metre, 4, 0.0005, 0.2, 0.001,
                                  "usual value: 5 mm, common practice", usual_diameter);
constexpr Lever kCoilAt = asked("coil_at_pct", "Coil up the whip", Unit::percent, 0, 0, 95, 5,
                                "0 % is the foot, 50 % half way; usual value: the foot", at_the_foot);
constexpr std::string_view kTooHigh = "higher than a quarter wave: that is no short whip and needs no coil";
constexpr std::string_view kTooThick = "the rod above the coil is too short for its thickness";

// ---- How well does this whip radiate? ----

const CheckInput kWhipInputs[] = {
    {kHeight},
    {kFrequency},
    {kCoilAt},
    {kDiameter},
    {asked("coil_q", "Q of the coil", Unit::none, 0, 10, 1000, 10,
           "usual value: a fair air coil; 50 small and close-wound, 300 large: common practice", usual_q)},
    {asked("ground_ohm", "Ground loss", Unit::ohm, 1, 0, 200, 1,
           "usual value: behind a handbook's table for 7 MHz; a measured car had 29, second hand", usual_ground)},
};
const CheckResult kWhipResults[] = {
    {told("efficiency_pct", "Goes out", Unit::percent, 2, "radiation over radiation, coil and ground",
          Better::more)},
    {told("loss_db", "Under a perfect whip", Unit::decibel, 1, "the same in decibels", Better::less)},
    {told("radiation_ohm", "Radiation resistance", Unit::ohm, 2,
          "160 pi^2 (area of the current)^2; docs/methods/antenna")},
    {told("coil_ohm", "Coil, seen from the foot", Unit::ohm, 1, "2 pi f L / Q", Better::less)},
    {told("feed_ohm", "Feed-point resistance", Unit::ohm, 1, "all in series, in resonance")},
    {told("swr", "SWR without a match", Unit::none, 1,
          "against 50 ohm; low with a lossy ground, and no sign of good")},
};
std::string whip(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kWhipInputs, in); !trouble.empty()) return trouble;
  const antenna::WhipFeed feed = antenna::whip_feed({in[0], in[3], in[1], in[2] / 100, in[4], in[5]});
  if (!std::isfinite(feed.radiation_ohm))
    return std::string(std::isfinite(antenna::whip_radiation_ohm(in[0], in[1], in[2] / 100)) ? kTooThick
                                                                                             : kTooHigh);
  out[0] = 100 * feed.efficiency;
  out[1] = -10 * std::log10(feed.efficiency) + 0.0;
  out[2] = feed.radiation_ohm;
  out[3] = feed.coil_ohm;
  out[4] = feed.feed_ohm;
  out[5] = antenna::swr_of_resistance(feed.feed_ohm);
  return {};
}

// ---- What does a whip send straight up? ----

const CheckInput kUpInputs[] = {
    {asked("zenith_mhz", "Frequency, 4 to 8 MHz", Unit::megahertz, 3, 4, 8, 0.05, "the range that was measured")},
};
constexpr std::string_view kUpSource = "5 m whip on a jeep, +-6 dB: IEEE Trans. VT-19 (1970), abstract";
const CheckResult kUpResults[] = {
    {told("zenith_dbi", "Straight up, dBi", Unit::none, 0, kUpSource, Better::more)},
    {told("leant_dbi", "Leant away 30\u00B0 or more, dBi", Unit::none, 0, "10 dB more, +-4 dB: the same abstract",
          Better::more)},
};
std::string straight_up(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kUpInputs, in); !trouble.empty()) return trouble;
  out[0] = antenna::whip_zenith_dbi(in[0]);
  out[1] = out[0] + antenna::kWhipLeantDb;
  return "a low dipole sends up some 40 dB more: a whip does not serve stations near by";
}

// ---- What coil does this whip need? ----

const CheckInput kLoadInputs[] = {{kHeight}, {kFrequency}, {kCoilAt}, {kDiameter}};
const CheckResult kLoadResults[] = {
    {told("coil_uh", "Coil, microhenries", Unit::none, 2, "handbook equation, QST, September 1974; trim by 10 %")},
    {told("reactance_ohm", "Its reactance", Unit::ohm, 0, "2 pi f L")},
};
std::string load(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kLoadInputs, in); !trouble.empty()) return trouble;
  out[0] = antenna::loading_coil_uh(in[0], in[3], in[1], in[2] / 100);
  if (!std::isfinite(out[0]))
    return std::string(std::isfinite(antenna::whip_radiation_ohm(in[0], in[1], in[2] / 100)) ? kTooThick
                                                                                             : kTooHigh);
  out[1] = 2 * kPi * in[1] * out[0];
  return {};
}

// ---- What does this coil have? ----

const CheckInput kCoilInputs[] = {
    {asked("turns", "Turns", Unit::none, 0, 1, 500, 1, "counted")},
    {asked("diameter_m", "Diameter of the turns", Unit::metre, 4, 0.002, 1, 0.001,
           "middle of wire to middle of wire")},
    {asked("length_m", "Length of the winding", Unit::metre, 4, 0.001, 2, 0.001,
           "may be left out where the pitch is given")},
    {asked("pitch_m", "Pitch", Unit::metre, 4, 0.0002, 0.1, 0.0005, "turn to turn; may be left out")},
};
const CheckResult kCoilResults[] = {
    {told("coil_uh", "Coil, microhenries", Unit::none, 2, "r^2 n^2 / (9 r + 10 l) in inches; Wheeler, 1928")},
};
std::string coil(std::span<const double> in, std::span<double> out) {
  for (const std::size_t i : {std::size_t(0), std::size_t(1)})
    if (!std::isfinite(in[i])) return needs(kCoilInputs[i].row);
  if (!std::isfinite(in[2]) && !std::isfinite(in[3])) return needs(kCoilInputs[2].row);
  const double length_m = std::isfinite(in[2]) ? in[2] : in[0] * in[3];
  out[0] = antenna::coil_uh(in[0], in[1], length_m);
  if (length_m < 0.4 * in[1]) return "a short coil: the formula is 1 % for coils longer than 0.4 of their diameter";
  return {};
}

// ---- How many radials, and how long? ----

const CheckInput kRadialInputs[] = {
    {kFrequency},
    {asked("radials", "Radials", Unit::none, 0, 0, 240, 1, "on the ground, all round")},
    {asked("length_m", "Length of each", Unit::metre, 2, 0.2, 100, 0.5,
           "left out: an electrical quarter wave on the ground")},
};
const CheckResult kRadialResults[] = {
    {told("raised_m", "Raised radial", Unit::metre, 2, "234/f feet: common practice")},
    {told("on_ground_m", "Quarter wave on the ground", Unit::metre, 2,
          "0.6 of a quarter wave in space, second hand; number matters more than length")},
    {told("loss_ohm", "Ground loss", Unit::ohm, 0, "Proc. IRE, June 1937, second hand; docs/methods/antenna",
          Better::less)},
    {told("efficiency_pct", "Goes out", Unit::percent, 0, "36.5 ohm over 36.5 ohm and the loss", Better::more)},
    {told("feed_ohm", "Feed-point resistance", Unit::ohm, 0, "of a quarter-wave vertical in resonance")},
    {told("wire_m", "Wire of all radials", Unit::metre, 0, "number times length")},
    {told("ground_db", "On the ground, against 60", Unit::decibel, 1,
          "one field test, quarter-wave radials, 4 to 60 of them, second hand", Better::more)},
    {told("raised_db", "Raised a little, against 60", Unit::decibel, 1,
          "the same test, 0.03 wavelengths up; a later series has four as good as 60, kept symmetrical",
          Better::more)},
};
std::string radials(std::span<const double> in, std::span<double> out) {
  if (!std::isfinite(in[0])) return needs(kRadialInputs[0].row);
  out[0] = antenna::raised_radial_m(in[0]);
  out[1] = antenna::ground_radial_m(in[0]);
  if (!std::isfinite(in[1])) return needs(kRadialInputs[1].row) + " for the ground loss";
  const double waves = std::isfinite(in[2]) ? in[2] / antenna::wavelength_m(in[0]) : antenna::kOnGroundShare / 4;
  const antenna::GroundLoss loss = antenna::radial_loss(in[1], waves);
  const double quarter_wave_ohm = antenna::find_kind("quarter_wave_vertical")->feed_ohm;
  out[2] = loss.usual_ohm;
  out[4] = quarter_wave_ohm + loss.usual_ohm;
  out[3] = 100 * quarter_wave_ohm / out[4];
  out[5] = in[1] * waves * antenna::wavelength_m(in[0]);
  const antenna::RadialField field = antenna::radial_field(in[1]);
  out[6] = field.ground_db;
  out[7] = field.raised_db;
  return "sources differ: " + say_quantity(loss.lowest_ohm, Unit::ohm, 0) + " to " +
         say_quantity(loss.highest_ohm, Unit::ohm, 0) + " of loss";
}

const Check kChecks[] = {
    {"antenna.whip", "How well does this whip radiate?", Link::antenna, kWhipInputs, kWhipResults,
     "Height from foot to tip. With an analyser at the foot: what it reads at resonance, less radiation and coil, "
     "is the "
     "ground loss.",
     "short monopole over ground; docs/methods/antenna", whip},
    {"antenna.whip_up", "What does a whip send straight up?", Link::antenna, kUpInputs, kUpResults,
     "For stations within some 300 km on low bands the way goes straight up and down again.",
     "IEEE Trans. Vehicular Technology VT-19 (1970) 230-236, abstract", straight_up},
    {"antenna.loading_coil", "What coil does this whip need?", Link::antenna, kLoadInputs, kLoadResults,
     "Height, thickness and where the coil sits. Wind a turn or two more and trim.",
     "QST, September 1974, pp. 28-34, Eq. 1", load},
    {"antenna.coil", "What does this coil have?", Link::antenna, kCoilInputs, kCoilResults,
     "Count the turns and measure across them, middle of wire to middle of wire.",
     "Wheeler, Proc. IRE, October 1928 (memory)", coil},
    {"antenna.radials", "How long are radials, and how many?", Link::antenna, kRadialInputs, kRadialResults,
     "Raised ones are cut like the vertical; those on the ground are detuned by it, lay many. Flag them: people "
     "trip.",
     "Proc. IRE 25(6), June 1937, as tabulated on a public page; docs/methods/antenna", radials},
};

}  // namespace

std::span<const Check> whip_checks() { return kChecks; }

}  // namespace gs::antenna_rows
