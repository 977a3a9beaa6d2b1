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
double nothing(const Plan&) { return 0; }
double twenty(const Plan&) { return 20; }
double first_cable(const Plan& plan) { return plan[L::feedline_cable]; }
bool has_second_length(const Plan& plan) { return plan[L::feedline_second_length_m] > 0; }
bool has_own_loss(const Plan& plan) { return plan.has_all(L::feedline_own_loss_db, L::feedline_own_at_mhz); }

constexpr std::string_view kOwnSource =
    "half the return loss of the roll with its far end open or shorted; the check \"What is my own cable's loss?\"";

constexpr LeverRow own_loss(L id, std::string_view key, std::string_view name, bool (*applies)(const Plan&)) {
  return {id,
          {.key = key,
           .name = name,
           .link = Link::feedline,
           .unit = Unit::decibel,
           .digits = 2,
           .least = 0.05,
           .most = 200,
           .step = 0.05,
           .scale = Scale::log,
           .optional = true,
           .applies = applies,
           .source = kOwnSource}};
}
constexpr LeverRow own_at(L id, std::string_view key, std::string_view name, bool (*applies)(const Plan&)) {
  return {id,
          {.key = key,
           .name = name,
           .link = Link::feedline,
           .unit = Unit::megahertz,
           .digits = 3,
           .least = 1,
           .most = 150,
           .step = 0.05,
           .scale = Scale::log,
           .optional = true,
           .applies = applies,
           .source = kOwnSource}};
}

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
    {L::feedline_temperature_c,
     {.key = "feedline.temperature_c",
      .name = "Feed line temperature",
      .link = Link::feedline,
      .unit = Unit::celsius,
      .digits = 0,
      .least = -40,
      .most = 80,
      .step = 5,
      .usual = twenty,
      .source = "usual value: what catalogues are for; black cable in the sun reaches 50 C"}},
    {L::feedline_second_length_m,
     {.key = "feedline.second_length_m",
      .name = "Second cable, length",
      .link = Link::feedline,
      .unit = Unit::metre,
      .digits = 1,
      .least = 0,
      .most = 100,
      .step = 0.5,
      .usual = nothing,
      .source = "usual value: one cable; the second one stands at the antenna's end"}},
    {L::feedline_second_cable,
     {.key = "feedline.second_cable",
      .name = "Second cable",
      .link = Link::feedline,
      .kind = Kind::choice,
      .options = cable_options,
      .usual = first_cable,
      .applies = has_second_length,
      .source = "the cable catalogue; usual value: as the first"}},
    {L::feedline_plug_pairs,
     {.key = "feedline.plug_pairs",
      .name = "Plug pairs counted",
      .link = Link::feedline,
      .digits = 0,
      .least = 0,
      .most = 20,
      .step = 1,
      .usual = nothing,
      .source = "0.02 dB a pair; 0 to 0.05 dB at HF, common practice"}},
    {L::feedline_choke_db,
     {.key = "feedline.choke_db",
      .name = "Choke at the antenna, loss",
      .link = Link::feedline,
      .unit = Unit::decibel,
      .digits = 2,
      .least = 0,
      .most = 3,
      .step = 0.05,
      .usual = nothing,
      .source = "usual value: none counted; no published figure was found, a sound one takes less than 0.2 dB "
                "(common practice)"}},
    own_loss(L::feedline_own_loss_db, "feedline.own_loss_db", "My cable, loss of 100 m", nullptr),
    own_at(L::feedline_own_at_mhz, "feedline.own_at_mhz", "My cable, measured at", nullptr),
    own_loss(L::feedline_own_second_db, "feedline.own_second_db", "My cable, second loss of 100 m", has_own_loss),
    own_at(L::feedline_own_second_at_mhz, "feedline.own_second_at_mhz", "My cable, second measured at",
           has_own_loss),
};

}  // namespace

std::span<const LeverRow> feedline_levers() { return kRows; }

}  // namespace gs
