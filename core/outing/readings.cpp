#include "core/outing/readings.h"

#include <algorithm>
#include <array>
#include <iterator>

#include "core/outing/reading_rows.h"

namespace gs {
namespace {

using Table = std::array<Reading, kReadingCount>;

const Table& table() {
  static const Table built = [] {
    Table rows;
    for (const std::span<const ReadingRow> part :
         {power_readings(), feedline_readings(), antenna_readings(), sky_readings(), pace_readings(),
          safety_readings(), kit_readings()})
      for (const ReadingRow& row : part) rows[std::size_t(row.id)] = row.row;
    return rows;
  }();
  return built;
}

constexpr std::string_view kLinkNames[] = {"Battery",  "Radio",  "Feed line", "Antenna", "Sky",
                                           "Contacts", "Safety", "Clock",     "Kit"};
constexpr std::string_view kLinkKeys[] = {"battery",  "radio",  "feedline", "antenna", "sky",
                                          "contacts", "safety", "clock",    "kit"};
static_assert(std::size(kLinkNames) == std::size_t(Link::count) &&
              std::size(kLinkKeys) == std::size_t(Link::count));

}  // namespace

const Reading& reading(R id) { return table()[std::size_t(id)]; }

R find_reading(std::string_view key) {
  const auto at =
      std::find_if(table().begin(), table().end(), [key](const Reading& row) { return row.key == key; });
  return R(at - table().begin());
}

std::string_view link_name(Link link) { return kLinkNames[std::size_t(link)]; }
std::string_view link_key(Link link) { return kLinkKeys[std::size_t(link)]; }

}  // namespace gs
