// What part of the averaging time one transmits at the busiest.
#include "core/outing/checks_safety.h"
#include "core/safety/average_power.h"
#include "core/safety/exposure_limits.h"

namespace gs {
namespace {

using safety::Audience;
using safety::Rule;

constexpr Option kRuleOptions[] = {
    {"us", "US, 47 CFR 1.1310"}, {"icnirp", "ICNIRP 2020"}, {"germany", "Germany, 26. BImSchV"}};
std::span<const Option> rule_options() { return kRuleOptions; }
double first_option(const Plan&) { return 0; }

// clang-format off
const CheckInput kShareInputs[] = {
    {{.key = "on_min", .name = "Transmitting for", .link = Link::safety, .unit = Unit::minute, .digits = 2,
      .least = 0.01, .most = 120, .step = 0.5, .scale = Scale::log, .source = "the longest stretch in one go"}},
    {{.key = "off_min", .name = "Then listening for", .link = Link::safety, .unit = Unit::minute, .digits = 2,
      .least = 0, .most = 120, .step = 0.5, .source = "until the next transmission, at the busiest"}},
    {{.key = "limits", .name = "Limits", .link = Link::safety, .kind = Kind::choice, .options = rule_options,
      .usual = first_option, .source = "whose rules bind you"}},
};
// clang-format on
constexpr std::string_view kShareSource =
    "FCC OET Bulletin 65 Supplement B, pp. 13-14: the worst of any averaging time";
// clang-format off
const CheckResult kShareResults[] = {
    {{.key = "public_pct", .name = "Of the public's averaging time", .link = Link::safety, .unit = Unit::percent,
      .digits = 0, .better = Better::less, .source = kShareSource}},
    {{.key = "operator_pct", .name = "Of the operator's averaging time", .link = Link::safety,
      .unit = Unit::percent, .digits = 0, .better = Better::less, .source = kShareSource}},
};
// clang-format on
std::string busiest_share(std::span<const double> in, std::span<double> out) {
  if (std::string trouble = first_needed(kShareInputs, in); !trouble.empty()) return trouble;
  const Rule rule = Rule(in[2]);
  out[0] = 100 * safety::busiest_share(in[0], in[1], safety::averaging_min(Audience::passer_by, rule));
  out[1] = 100 * safety::busiest_share(in[0], in[1], safety::averaging_min(Audience::radio_operator, rule));
  return {};
}

// clang-format off
const Check kChecks[] = {
    {"safety.busiest_share", "What is my busiest share?", Link::safety, kShareInputs, kShareResults,
      "Think of the busiest stretch of the outing, not of its average: how long you transmit in one go, and how long "
      "you listen between.", "FCC OET Bulletin 65 Supplement B, pp. 13-14", busiest_share},
};
// clang-format on

}  // namespace

std::span<const Check> share_checks() { return kChecks; }

}  // namespace gs
