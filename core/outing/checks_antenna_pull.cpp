// Pull and obstacles, what fits, and what a transformer costs.
#include <algorithm>
#include <cmath>
#include <vector>

#include "core/antenna/feed.h"
#include "core/antenna/hang.h"
#include "core/antenna/wires.h"
#include "core/outing/checks_antenna.h"

namespace gs::antenna_rows {
namespace {

constexpr double kNewtonPerKg = 9.80665;  // standard gravity, ISO 80000-3

std::span<const Option> wire_row_options() {
  static const std::vector<Option> options = [] {
    std::vector<Option> rows;
    for (const antenna::WireRow& row : antenna::wires()) rows.push_back({row.key, row.name, row.retired});
    return rows;
  }();
  return options;
}
std::span<const Option> transformer_options() {
  static const std::vector<Option> options = [] {
    std::vector<Option> rows;
    for (const antenna::TransformerRow& row : antenna::transformers())
      rows.push_back({row.key, row.name, row.retired});
    return rows;
  }();
  return options;
}
double out_of_reach(const Plan&) { return antenna::kOutOfReachM; }

// ---- How hard may I pull this wire? ----

const CheckInput kPullInputs[] = {
    {{.key = "wire",
      .name = "Wire",
      .link = Link::antenna,
      .kind = Kind::choice,
      .options = wire_row_options,
      .source = "the catalogue of antenna wires"}},
    {asked("span_m", "Between the supports", Unit::metre, 1, 1, 300, 0.5, "two points of the same height")},
    {asked("pull_kg", "Pull, as a weight", Unit::kilogram, 1, 0.1, 500, 0.5,
           "a luggage scale in the halyard; left out: a tenth of the breaking load")},
};
const CheckResult kPullResults[] = {
    {told("share_pct", "Of its breaking load", Unit::percent, 0,
          "maker's figure; a tenth to work with: handbook, second hand", Better::less),
     30, 10},
    {told("working_kg", "Pull to work with", Unit::kilogram, 1, "a tenth of the breaking load", Better::more)},
    {told("breaking_kg", "Breaks at", Unit::kilogram, 0, "maker's figure", Better::more)},
    {told("sag_m", "Sag in the middle", Unit::metre, 2, "catenary", Better::less)},
    {told("extra_wire_m", "Wire beyond the span", Unit::metre, 3, "catenary")},
};
std::string pull(std::span<const double> in, std::span<double> out) {
  for (const std::size_t i : {std::size_t(0), std::size_t(1)})
    if (!std::isfinite(in[i])) return needs(kPullInputs[i].row);
  const antenna::WireRow& wire = antenna::wires()[std::size_t(in[0])];
  out[2] = wire.breaking_n / kNewtonPerKg;
  out[1] = antenna::kWorkingShare * out[2];
  const double pull_kg = std::isfinite(in[2]) ? in[2] : out[1];
  const antenna::Sag hung = antenna::catenary_sag(antenna::catenary_constant_m(pull_kg, wire.mass_g_per_m), in[1]);
  if (!(hung.sag_m <= in[1])) return "so little pull lets it hang deeper than it is wide";
  out[0] = 100 * pull_kg / out[2];
  out[3] = hung.sag_m;
  out[4] = hung.extra_wire_m;
  if (out[0] >= 100) return "it breaks, and its end flies: nobody in line with it";
  return out[0] > 100 * antenna::kWorkingShare ? "wind and a swaying tree pull harder still: ease it" : "";
}

// ---- Does the wire clear this? ----

const CheckInput kClearInputs[] = {
    {asked("top_m", "Upper end", Unit::metre, 1, 0, 60, 0.5, "height of the higher end")},
    {asked("low_m", "Lower end", Unit::metre, 1, 0, 60, 0.5, "height of the other end")},
    {asked("out_m", "Ground distance", Unit::metre, 1, 0.5, 300, 0.5, "between below the two ends")},
    {asked("at_m", "Obstacle stands", Unit::metre, 1, 0, 300, 0.5, "from below the upper end")},
    {asked("obstacle_m", "Obstacle's height", Unit::metre, 1, 0, 60, 0.5,
           "roof, fence, a person's raised hand: 2.5 m")},
    {asked("sag_m", "Sag", Unit::metre, 2, 0, 20, 0.1, "may be left out: a taut wire")},
};
const CheckResult kClearResults[] = {
    {told("clear_m", "Clear of it by", Unit::metre, 2, "straight line less the sag there", Better::more), 0, 0.5},
    {told("wire_m", "Wire's height there", Unit::metre, 2, "straight line less the sag there")},
    {told("length_m", "Straight length", Unit::metre, 2, "Pythagoras")},
};
std::string clears(std::span<const double> in, std::span<double> out) {
  for (std::size_t i = 0; i < 5; ++i)
    if (!std::isfinite(in[i])) return needs(kClearInputs[i].row);
  const double straight_m = antenna::height_at_m({0, in[0]}, {in[2], in[1]}, in[3]);
  if (!std::isfinite(straight_m)) return "the obstacle stands beyond the wire's ends";
  const double share = in[3] / in[2];  // the sag of a parabola, full in the middle
  out[1] = straight_m - (std::isfinite(in[5]) ? in[5] * 4 * share * (1 - share) : 0);
  out[0] = out[1] - in[4];
  out[2] = std::hypot(in[2], in[0] - in[1]);
  if (out[1] < 0) return "it lies on the ground there";
  return out[0] < 0 ? "it runs into it" : "";
}

// ---- Which antenna fits here? ----

const CheckInput kWhichInputs[] = {
    {kFrequency},
    {asked("apex_m", "Apex height", Unit::metre, 1, 0, 60, 0.5, "highest point that wire or halyard can reach")},
    {asked("span_m", "Span free", Unit::metre, 1, 0, 200, 0.5, "clear width in the wire's own direction")},
    {asked("end_m", "Height of the ends", Unit::metre, 1, 0, 20, 0.1, "usual value: out of reach", out_of_reach)},
};
std::span<const CheckResult> which_results() {
  static const std::vector<std::string> keys = [] {
    std::vector<std::string> names;
    for (const antenna::Kind& kind : antenna::kinds()) names.push_back(std::string(kind.key) + "_m");
    return names;
  }();
  static const std::vector<CheckResult> results = [] {
    std::vector<CheckResult> rows{
        {told("fitting", "Kinds that fit", Unit::none, 0, "room of 0 or more", Better::more)}};
    for (std::size_t i = 0; i < keys.size(); ++i) {
      const Reading row = told(keys[i], antenna::kinds()[i].name, Unit::metre, 1,
                               "room to spare; below 0 so much too little", Better::more);
      rows.push_back({row, 0, 1});
    }
    return rows;
  }();
  return results;
}
std::string which(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kWhichInputs, in); !trouble.empty()) return trouble;
  out[0] = 0;
  double best = -1;
  std::string_view name;
  for (std::size_t i = 0; i < antenna::kinds().size(); ++i) {
    const antenna::Kind& kind = antenna::kinds()[i];
    out[1 + i] = antenna::fit(antenna::rig_of(kind, in[0]), {in[1], in[2], in[3]}).room_m;
    if (out[1 + i] < 0) continue;
    out[0] += 1;
    const double efficiency = antenna::feed_point(kind, in[0]).efficiency;
    if (efficiency <= best) continue;
    best = efficiency;
    name = kind.name;
  }
  if (name.empty()) return "none fits: a higher band, a longer span or a higher branch";
  return "of those that fit, least is lost in: " + std::string(name);
}

// ---- What does this transformer cost? ----

const CheckInput kCostInputs[] = {
    {{.key = "transformer",
      .name = "Transformer",
      .link = Link::antenna,
      .kind = Kind::choice,
      .options = transformer_options,
      .source = "the catalogue of transformers, as their owners measured them"}},
    {asked("power_w", "Power", Unit::watt, 1, 0.1, 2000, 5, "into it, average over the longest over")},
    {kFrequency},
};
const CheckResult kCostResults[] = {
    {told("loss_db", "Lost", Unit::decibel, 2, "measured by an owner or builder; 0.4 good, 1 usual, 2 poor",
          Better::less)},
    {told("heat_w", "Heats the core", Unit::watt, 1, "power less what comes through", Better::less)},
    {told("through_w", "Comes through", Unit::watt, 1, "power times 10^(-dB/10)", Better::more)},
    {told("fits_ohm", "Serves a resistance of", Unit::ohm, 0, "50 ohm times its ratio")},
    {told("counterpoise_m", "Counterpoise", Unit::metre, 2, "a twentieth of a wave: common practice")},
};
std::string cost(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kCostInputs, in); !trouble.empty()) return trouble;
  const antenna::TransformerRow& row = antenna::transformers()[std::size_t(in[0])];
  out[0] = row.loss_db;
  out[2] = in[1] * std::pow(10, -row.loss_db / 10);
  out[1] = in[1] - out[2];
  out[3] = 50 * row.ratio;
  out[4] = antenna::kCounterpoiseWaves * antenna::wavelength_m(in[2]);
  return "box, wire end and counterpoise carry high voltage: nobody touches them while sending";
}

const Check kChecks[] = {
    {"antenna.pull", "How hard may I pull this wire?", Link::antenna, kPullInputs, kPullResults,
     "A luggage scale in the halyard. Stand beside the line of the wire, never in it.",
     "makers' data sheets, ASTM B1, B3, B227; a tenth of it: handbook line", pull},
    {"antenna.clears", "Does the wire clear this?", Link::antenna, kClearInputs, kClearResults,
     "Heights of both ends and of what lies between. A power line is no obstacle to be cleared: keep 3 m from it, "
     "whatever may fall.",
     "geometry; docs/methods/antenna", clears},
    {"antenna.which_fits", "Which antenna fits here?", Link::antenna, kWhichInputs, which_results(),
     "Pace the clear width and judge the branch. Look up first: nothing goes up where any part, falling, could "
     "come "
     "within 3 m of a power line.",
     "geometry of every kind in the catalogue; docs/methods/antenna", which},
    {"antenna.transformer_cost", "What does this transformer cost?", Link::antenna, kCostInputs, kCostResults,
     "The nearest to yours in the list; feel the core after a long over, power off.",
     "owners' and builders' benches, second hand; docs/methods/antenna", cost},
};

}  // namespace

std::span<const Check> pull_checks() { return kChecks; }

}  // namespace gs::antenna_rows
