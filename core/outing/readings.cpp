#include "core/outing/readings.h"

#include <algorithm>
#include <iterator>

namespace gs {
namespace {

constexpr std::string_view kLineTheory = "exact theory of the uniform lossy line; docs/methods/feedline";

constexpr Reading kReadings[] = {
    {.key = "radio.turned_down_w",
     .name = "Set turns down",
     .link = Link::radio,
     .unit = Unit::watt,
     .digits = 1,
     .better = Better::less,
     .source = "the set holds its reflected power; common practice, docs/methods/feedline"},
    {.key = "feedline.matched_loss_db",
     .name = "Matched loss",
     .link = Link::feedline,
     .unit = Unit::decibel,
     .digits = 2,
     .better = Better::less,
     .source = "the cable catalogue's loss law"},
    {.key = "feedline.total_loss_db",
     .name = "Line loss",
     .link = Link::feedline,
     .unit = Unit::decibel,
     .digits = 1,
     .better = Better::less,
     .source = kLineTheory},
    {.key = "feedline.arrives_pct",
     .name = "Arrives",
     .link = Link::feedline,
     .unit = Unit::percent,
     .digits = 0,
     .better = Better::more,
     .source = kLineTheory},
    {.key = "feedline.power_to_antenna_w",
     .name = "Power to antenna",
     .link = Link::feedline,
     .unit = Unit::watt,
     .digits = 1,
     .better = Better::more,
     .source = kLineTheory},
    {.key = "feedline.cable_matched_w",
     .name = "Cable, matched part",
     .link = Link::feedline,
     .unit = Unit::watt,
     .digits = 1,
     .better = Better::less,
     .source = kLineTheory},
    {.key = "feedline.cable_swr_w",
     .name = "Cable, because of SWR",
     .link = Link::feedline,
     .unit = Unit::watt,
     .digits = 1,
     .better = Better::less,
     .source = kLineTheory},
    {.key = "feedline.swr_at_radio",
     .name = "SWR at radio",
     .link = Link::feedline,
     .digits = 1,
     .better = Better::less,
     .source = kLineTheory},
    {.key = "feedline.weight_g",
     .name = "Feed line weight",
     .link = Link::feedline,
     .unit = Unit::gram,
     .digits = 0,
     .better = Better::less,
     .source = "the cable catalogue's mass a metre, plugs left out"},
    {.key = "antenna.swr",
     .name = "SWR at antenna",
     .link = Link::antenna,
     .digits = 1,
     .better = Better::less,
     .source = "measured, or from the feed-point impedance against the cable's nominal impedance"},
};
static_assert(std::size(kReadings) == kReadingCount, "one row for every enumerator, in the same order");

constexpr std::string_view kLinkNames[] = {"Battery",  "Radio",  "Feed line", "Antenna", "Sky",
                                           "Contacts", "Safety", "Clock",     "Kit"};
constexpr std::string_view kLinkKeys[] = {"battery",  "radio",  "feedline", "antenna", "sky",
                                          "contacts", "safety", "clock",    "kit"};
static_assert(std::size(kLinkNames) == std::size_t(Link::count) &&
              std::size(kLinkKeys) == std::size_t(Link::count));

}  // namespace

const Reading& reading(R id) { return kReadings[std::size_t(id)]; }

R find_reading(std::string_view key) {
  const auto at = std::find_if(std::begin(kReadings), std::end(kReadings),
                               [key](const Reading& row) { return row.key == key; });
  return R(at - std::begin(kReadings));
}

std::string_view link_name(Link link) { return kLinkNames[std::size_t(link)]; }
std::string_view link_key(Link link) { return kLinkKeys[std::size_t(link)]; }

}  // namespace gs
