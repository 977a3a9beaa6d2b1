// How near people may be while one transmits.
#include <cmath>

#include "core/outing/checks_safety.h"
#include "core/outing/rules_rows.h"
#include "core/safety/keep_out.h"

namespace gs {
namespace {

using safety::Audience;
using safety::Build;
using safety::Rule;

std::span<const Option> duty_options() {
  static const std::vector<Option> options = [] {
    std::vector<Option> rows;
    for (const safety::ExposureDuty& row : safety::exposure_duties()) rows.push_back({row.key, row.name});
    return rows;
  }();
  return options;
}
constexpr Option kBuildOptions[] = {{"wire", "wire or full-size vertical"},
                                    {"short_whip", "short loaded whip"},
                                    {"small_loop", "small loop, about 1 m across"}};
constexpr Option kAudienceOptions[] = {{"public", "the public"}, {"operator", "the operator"}};
std::span<const Option> build_options() { return kBuildOptions; }
std::span<const Option> audience_options() { return kAudienceOptions; }
double first_option(const Plan&) { return 0; }
double last_duty(const Plan&) { return double(safety::exposure_duties().size() - 1); }
double always(const Plan&) { return 100; }
double dipole_dbi(const Plan&) { return 2.15; }

// clang-format off
constexpr Lever kFrequency{.key = "frequency_mhz", .name = "Frequency", .link = Link::safety,
    .unit = Unit::megahertz, .digits = 3, .least = 1.8, .most = 148, .step = 0.05, .scale = Scale::log,
    .source = "range: amateur bands from 160 m to 2 m"};
constexpr Lever kPower{.key = "power_w", .name = "Power to the antenna", .link = Link::safety, .unit = Unit::watt,
    .digits = 1, .least = 0.001, .most = 2000, .step = 1, .scale = Scale::log,
    .source = "peak envelope power, the feed line's loss taken off"};
constexpr Lever kMode{.key = "mode", .name = "Mode", .link = Link::safety, .kind = Kind::choice,
    .options = duty_options, .usual = last_duty, .evidence = Evidence::seen,
    .source = "FCC OET Bulletin 65 Supplement B, Table 2; usual value: the worst of them"};
constexpr Lever kShare{.key = "busiest_share_pct", .name = "Busiest share", .link = Link::safety,
    .unit = Unit::percent, .digits = 0, .least = 0.1, .most = 100, .step = 5, .usual = always,
    .source = "transmit time in the busiest stretch of the averaging time; usual value: all of it"};
constexpr Lever kGain{.key = "gain_dbi", .name = "Gain over isotropic", .link = Link::safety, .unit = Unit::decibel,
    .digits = 2, .least = -40, .most = 30, .step = 0.1, .usual = dipole_dbi, .evidence = Evidence::seen,
    .source = "usual value: half-wave dipole, 1.64 times isotropic, 47 CFR 1.1307(b)(2)"};
constexpr Lever kBuild{.key = "antenna", .name = "Antenna", .link = Link::safety, .kind = Kind::choice,
    .options = build_options, .usual = first_option,
    .source = "beside short whips and small loops the formula is too short: docs/methods/safety"};
constexpr Lever kGround{.key = "ground", .name = "Reflection from the ground", .link = Link::safety,
    .kind = Kind::choice, .options = ground_options, .usual = first_option, .evidence = Evidence::seen,
    .source = "FCC OET Bulletin 65 Supplement B, equations 3, 6 and 7; its tables use the usual ground"};
constexpr Lever kRule{.key = "limits", .name = "Limits", .link = Link::safety, .kind = Kind::choice,
    .options = exposure_rule_options, .usual = first_option, .source = "whose rules bind you"};
// clang-format on

safety::Emission emission(double mhz, double power_w, double mode, double share_pct, double gain_dbi) {
  const double duty = safety::exposure_duties()[std::size_t(mode)].duty;
  return {mhz, power_w, gain_dbi, duty, share_pct / 100};
}

std::string metres(double m) { return say_quantity(m, Unit::metre, 1); }

/// What to say when people would stand where E and H are not tied together.
std::string within_reactive_zone(double frequency_mhz, double owed_m, Build build) {
  std::string text = "nearer than " + metres(safety::reactive_zone_m(frequency_mhz)) +
                     " (wavelength / 2 pi) this is tight at best: an evaluation is owed within " +
                     metres(safety::round_up_m(owed_m));
  if (build != Build::as_a_wire) text += ", and beside so small an antenna the figure is an estimate";
  return text;
}

// ---- How far must people stay away? ----

enum : std::size_t { kInMhz, kInW, kInMode, kInShare, kInOwnShare, kInDbi, kInBuild, kInGround, kInRule };
// clang-format off
const CheckInput kDistanceInputs[] = {
    {kFrequency}, {kPower}, {kMode}, {kShare},
    {{.key = "operator_share_pct", .name = "Busiest share of the operator's time", .link = Link::safety,
      .unit = Unit::percent, .digits = 0, .least = 0.1, .most = 100, .step = 5, .optional = true,
      .source = "not set: the most that the busiest share can be of the operator's shorter averaging time"}},
    {kGain}, {kBuild}, {kGround}, {kRule},
};
// clang-format on
constexpr std::string_view kFormulaSource =
    "FCC OET Bulletin 65 Supplement B, equations 3 to 7, solved for distance";
constexpr std::string_view kShownSource =
    "largest of formula, near field and arm's reach, rounded up; docs/methods/safety";
constexpr Reading distance_row(std::string_view key, std::string_view name, int digits, std::string_view source) {
  // clang-format off
  return {.key = key, .name = name, .link = Link::safety, .unit = Unit::metre, .digits = digits, .better = Better::less,
          .source = source};
}
const CheckResult kDistanceResults[] = {
    {distance_row("public_m", "Keep-out, public", 1, kShownSource)},
    {distance_row("operator_m", "Keep-out, operator", 1, kShownSource)},
    {distance_row("owed_within_m", "Evaluation owed within", 1, "47 CFR 1.1307(b)(3)(i)(C) Table 1, rounded up")},
    {distance_row("public_formula_m", "Formula alone, public", 2, kFormulaSource)},
    {distance_row("operator_formula_m", "Formula alone, operator", 2, kFormulaSource)},
    {{.key = "average_power_w", .name = "Average power", .link = Link::safety, .unit = Unit::watt, .digits = 2,
      .better = Better::less, .source = "FCC OET Bulletin 65 Supplement B, pp. 13-14"}},
};
// clang-format on
std::string exposure_distance(std::span<const double> in, std::span<double> out) {
  for (std::size_t i = 0; i < in.size(); ++i)
    if (i != kInOwnShare && !std::isfinite(in[i])) return needs(kDistanceInputs[i].row);
  const Rule rule = Rule(in[kInRule]);
  const Build build = Build(in[kInBuild]);
  const double ground = ground_factor_at(in[kInGround]);
  const safety::Emission passing = emission(in[kInMhz], in[kInW], in[kInMode], in[kInShare], in[kInDbi]);
  safety::Emission own = passing;
  own.busiest_share =
      std::isfinite(in[kInOwnShare])
          ? in[kInOwnShare] / 100
          : safety::share_of_shorter_window(passing.busiest_share, safety::averaging_min(Audience::passer_by, rule),
                                            safety::averaging_min(Audience::radio_operator, rule));
  const safety::KeepOut others = keep_out(passing, Audience::passer_by, rule, ground, build, true);
  const safety::KeepOut self = keep_out(own, Audience::radio_operator, rule, ground, build, true);
  const double owed_m = evaluation_owed_within_m(passing);
  out[0] = others.shown_m;
  out[1] = self.shown_m;
  out[2] = safety::round_up_m(owed_m);
  out[3] = others.formula_m;
  out[4] = self.formula_m;
  out[5] = average_power_w(passing);
  std::string care;
  if (others.within_reactive_zone || self.within_reactive_zone)
    care = within_reactive_zone(in[kInMhz], owed_m, build);
  if (rule == Rule::icnirp) care += std::string(care.empty() ? "" : "; ") + "the ICNIRP levels are from memory";
  return care;
}

// ---- How much power may I use at this distance? ----

enum : std::size_t { kAtM, kAtAudience, kAtMhz, kAtMode, kAtShare, kAtDbi, kAtBuild, kAtGround, kAtRule, kAtW };
// clang-format off
const CheckInput kPowerInputs[] = {
    {{.key = "distance_m", .name = "Distance to people", .link = Link::safety, .unit = Unit::metre, .digits = 1,
      .least = 0.2, .most = 1000, .step = 0.1, .scale = Scale::log,
      .source = "from the nearest part of the antenna"}},
    {{.key = "audience", .name = "Who", .link = Link::safety, .kind = Kind::choice, .options = audience_options,
      .usual = first_option, .source = "usual value: everybody who was not told"}},
    {kFrequency}, {kMode}, {kShare}, {kGain}, {kBuild}, {kGround}, {kRule},
    {{.key = "power_w", .name = "Power to the antenna", .link = Link::safety, .unit = Unit::watt, .digits = 1,
      .least = 0.001, .most = 2000, .step = 1, .scale = Scale::log, .optional = true, .source = "to compare with"}},
};
const CheckResult kPowerResults[] = {
    {{.key = "most_power_w", .name = "Most power", .link = Link::safety, .unit = Unit::watt, .digits = 1,
      .better = Better::more, .source = kFormulaSource}},
    // Half of what is allowed, 3 dB in hand, is at ease: common practice. Not judged where the formula may not stand alone.
    {{.key = "of_most_pct", .name = "Your power, of the most", .link = Link::safety, .unit = Unit::percent,
      .digits = 0, .better = Better::less, .source = kFormulaSource}, 100, 50},
};
// clang-format on
std::string power_at_distance(std::span<const double> in, std::span<double> out) {
  for (std::size_t i = 0; i < kAtW; ++i)
    if (!std::isfinite(in[i])) return needs(kPowerInputs[i].row);
  const Build build = Build(in[kAtBuild]);
  safety::Emission sent = emission(in[kAtMhz], 1, in[kAtMode], in[kAtShare], in[kAtDbi]);
  sent.peak_power_w = out[0] = most_peak_power_w(sent, in[kAtM], Audience(in[kAtAudience]), Rule(in[kAtRule]),
                                                 ground_factor_at(in[kAtGround]), build);
  if (!std::isfinite(in[kAtW])) return needs(kPowerInputs[kAtW].row) + " to compare with";
  const double of_most_pct = 100 * in[kAtW] / out[0];
  if (of_most_pct > 100)
    out[1] = of_most_pct;  // too much fails everywhere; enough is not shown where people stand close
  if (in[kAtM] < safety::kArmsReachM) return "nobody comes nearer than arm's reach, 1.5 m, to what carries RF";
  sent.peak_power_w = in[kAtW];
  if (in[kAtM] < safety::reactive_zone_m(in[kAtMhz]))
    return within_reactive_zone(in[kAtMhz], evaluation_owed_within_m(sent), build);
  out[1] = of_most_pct;
  return {};
}

// clang-format off
const Check kChecks[] = {
    {"safety.exposure_distance", "How far must people stay away?", Link::safety, kDistanceInputs, kDistanceResults,
      "Distances count from the nearest part of the antenna. Take the greatest gain where you do not know the one "
      "towards the people. Friends and walkers are the public; only you and those at home whom you taught are operators.",
      "FCC OET Bulletin 65 Supplement B; 47 CFR 1.1307, 1.1310; docs/methods/safety", exposure_distance},
    {"safety.power_at_distance", "How much power may I use at this distance?", Link::safety, kPowerInputs,
      kPowerResults, "Pace out the least distance between the antenna and where people can be.",
      "FCC OET Bulletin 65 Supplement B; 47 CFR 1.1310; docs/methods/safety", power_at_distance},
};
// clang-format on

}  // namespace

std::span<const Check> exposure_checks() { return kChecks; }

}  // namespace gs
