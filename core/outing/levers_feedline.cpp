// The feed line's inputs.
#include <vector>

#include "core/feedline/cable.h"
#include "core/outing/lever_rows.h"
#include "core/outing/plan.h"

namespace gs {
namespace {

double kit_line(const Plan& plan) { return plan.kit.feedline_m; }

constexpr Option kMeasuredAtOptions[] = {{"radio", "the radio"}, {"antenna", "the antenna"}};
std::span<const Option> measured_at_options() { return kMeasuredAtOptions; }

std::span<const Option> cable_options() {
  static const std::vector<Option> options = [] {
    std::vector<Option> rows;
    for (const feedline::Cable& cable : feedline::cables()) rows.push_back({cable.key, cable.name, cable.retired});
    return rows;
  }();
  return options;
}

bool has_measured_swr(const Plan& plan) { return plan.has(L::feedline_measured_swr); }
double first_option(const Plan&) { return 0; }
double hundred(const Plan&) { return 100; }

const LeverRow kRows[] = {
    {L::feedline_cable,
     {.key = "feedline.cable",
      .name = "Cable",
      .link = Link::feedline,
      .kind = Kind::choice,
      .options = cable_options,
      .source = "the cable catalogue"}},
    {L::feedline_length_m,
     {.key = "feedline.length_m",
      .name = "Feed line length",
      .link = Link::feedline,
      .unit = Unit::metre,
      .digits = 1,
      .least = 0,
      .most = 100,
      .step = 0.5,
      .usual = kit_line,
      .source = "range: what one person carries, with room; usual value: the feed line of the kit list that says"}},
    {L::feedline_roll_loss_pct,
     {.key = "feedline.roll_loss_pct",
      .name = "This roll's loss, of catalogue",
      .link = Link::feedline,
      .unit = Unit::percent,
      .digits = 0,
      .least = 50,
      .most = 1000,
      .step = 5,
      .scale = Scale::log,
      .usual = hundred,
      .source = "usual value: a sound roll has the catalogue's loss"}},
    {L::feedline_measured_swr,
     {.key = "feedline.measured_swr",
      .name = "Measured SWR",
      .link = Link::feedline,
      .digits = 1,
      .least = 1,
      .most = 100,
      .step = 0.1,
      .scale = Scale::log,
      .optional = true,
      .source = "read off a meter with the matching unit bypassed"}},
    {L::feedline_measured_at,
     {.key = "feedline.measured_at",
      .name = "Measured at",
      .link = Link::feedline,
      .kind = Kind::choice,
      .options = measured_at_options,
      .usual = first_option,
      .applies = has_measured_swr,
      .source = "usual value: the meter stands at the radio"}},
};

}  // namespace

std::span<const LeverRow> feedline_levers() { return kRows; }

}  // namespace gs
