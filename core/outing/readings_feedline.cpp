// What the feed line comes to.
#include "core/outing/levers.h"
#include "core/outing/reading_rows.h"

namespace gs {
namespace {

constexpr std::string_view kLineTheory = "exact theory of the uniform lossy line; docs/methods/feedline";
constexpr L kImpedanceRests[] = {L::antenna_feed_r_ohm, L::antenna_feed_x_ohm, L::feedline_length_m,
                                 L::feedline_cable, L::antenna_frequency_mhz};
constexpr L kVoltageRests[] = {L::radio_transmit_power_w, L::feedline_measured_swr, L::antenna_feed_r_ohm};

constexpr Reading seen_through(std::string_view key, std::string_view name) {
  return {.key = key,
          .name = name,
          .link = Link::feedline,
          .unit = Unit::ohm,
          .source = kLineTheory,
          .assumes = "a feed-point impedance, typed or of the antenna's kind: an SWR alone has no phase",
          .formula = "the feed-point impedance, seen through the line",
          .rests_on = kImpedanceRests};
}

constexpr ReadingRow kRows[] = {
    {R::feedline_matched_loss_db,
     {.key = "feedline.matched_loss_db",
      .name = "Matched loss",
      .link = Link::feedline,
      .unit = Unit::decibel,
      .digits = 2,
      .better = Better::less,
      .source = "the cable catalogue's loss law"}},
    {R::feedline_total_loss_db,
     {.key = "feedline.total_loss_db",
      .name = "Line loss",
      .link = Link::feedline,
      .unit = Unit::decibel,
      .digits = 1,
      .better = Better::less,
      .source = kLineTheory}},
    {R::feedline_arrives_pct,
     {.key = "feedline.arrives_pct",
      .name = "Arrives",
      .link = Link::feedline,
      .unit = Unit::percent,
      .digits = 0,
      .better = Better::more,
      .source = kLineTheory}},
    {R::feedline_power_to_antenna_w,
     {.key = "feedline.power_to_antenna_w",
      .name = "Power to antenna",
      .link = Link::feedline,
      .unit = Unit::watt,
      .digits = 1,
      .better = Better::more,
      .source = kLineTheory}},
    {R::feedline_cable_matched_w,
     {.key = "feedline.cable_matched_w",
      .name = "Cable, matched part",
      .link = Link::feedline,
      .unit = Unit::watt,
      .digits = 1,
      .better = Better::less,
      .source = kLineTheory}},
    {R::feedline_cable_swr_w,
     {.key = "feedline.cable_swr_w",
      .name = "Cable, because of SWR",
      .link = Link::feedline,
      .unit = Unit::watt,
      .digits = 1,
      .better = Better::less,
      .source = kLineTheory}},
    {R::feedline_swr_at_radio,
     {.key = "feedline.swr_at_radio",
      .name = "SWR at radio",
      .link = Link::feedline,
      .digits = 1,
      .better = Better::less,
      .source = kLineTheory}},
    {R::feedline_weight_g,
     {.key = "feedline.weight_g",
      .name = "Feed line weight",
      .link = Link::feedline,
      .unit = Unit::gram,
      .digits = 0,
      .better = Better::less,
      .source = "the cable catalogue's mass a metre, plugs left out"}},
    {R::feedline_radio_r_ohm, seen_through("feedline.radio_r_ohm", "Resistance at radio")},
    {R::feedline_radio_x_ohm, seen_through("feedline.radio_x_ohm", "Reactance at radio")},
    {R::feedline_highest_v,
     {.key = "feedline.highest_v",
      .name = "Highest voltage on line, rms",
      .link = Link::feedline,
      .unit = Unit::volt,
      .better = Better::less,
      .source = kLineTheory,
      .assumes = "a line long enough to hold the highest place; peak is 1.41 times that",
      .formula = "root of (power × impedance × SWR), at the end where that is more",
      .rests_on = kVoltageRests}},
};

}  // namespace

std::span<const ReadingRow> feedline_readings() { return kRows; }

}  // namespace gs
