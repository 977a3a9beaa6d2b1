// The antenna's inputs.
#include "core/outing/checks_antenna.h"
#include "core/outing/lever_rows.h"
#include "core/outing/plan.h"

namespace gs {
namespace {

bool has_feed_r(const Plan& plan) { return plan.has(L::antenna_feed_r_ohm); }
double zero(const Plan&) { return 0; }

const LeverRow kRows[] = {
    {L::antenna_kind,
     {.key = "antenna.kind",
      .name = "Antenna",
      .link = Link::antenna,
      .kind = Kind::choice,
      .options = antenna_rows::kind_options,
      .source = "the catalogue of antenna kinds"}},
    {L::antenna_apex_m,
     {.key = "antenna.apex_m",
      .name = "Apex height",
      .link = Link::antenna,
      .unit = Unit::metre,
      .digits = 1,
      .least = 0.5,
      .most = 40,
      .step = 0.5,
      .source = "what the tree, mast or roof gives"}},
    {L::antenna_span_m,
     {.key = "antenna.span_m",
      .name = "Span free",
      .link = Link::antenna,
      .unit = Unit::metre,
      .digits = 1,
      .least = 0.5,
      .most = 200,
      .step = 0.5,
      .source = "free ground in line with the wire, paced out"}},
    {L::antenna_frequency_mhz,
     {.key = "antenna.frequency_mhz",
      .name = "Frequency",
      .link = Link::antenna,
      .unit = Unit::megahertz,
      .digits = 3,
      .least = 1.8,
      .most = 54,
      .step = 0.05,
      .scale = Scale::log,
      .source = "range: amateur bands from 160 m to 6 m, ITU Radio Regulations art. 5"}},
    {L::antenna_feed_r_ohm,
     {.key = "antenna.feed_r_ohm",
      .name = "Feed-point resistance",
      .link = Link::antenna,
      .unit = Unit::ohm,
      .digits = 1,
      .least = 0.1,
      .most = 10000,
      .step = 1,
      .scale = Scale::log,
      .optional = true,
      .source = "read off an analyser at the antenna, or typed"}},
    {L::antenna_feed_x_ohm,
     {.key = "antenna.feed_x_ohm",
      .name = "Feed-point reactance",
      .link = Link::antenna,
      .unit = Unit::ohm,
      .digits = 1,
      .least = -10000,
      .most = 10000,
      .step = 1,
      .usual = zero,
      .applies = has_feed_r,
      .source = "usual value: resonance"}},
};

}  // namespace

std::span<const LeverRow> antenna_levers() { return kRows; }

}  // namespace gs
