// The rows of the reading table, one file readings_<link>.cpp a link or two; joined by id in readings.cpp. What
// several rows share (the levers that they rest on, a source, what they assume) stands at the top of their file.
#pragma once

#include <span>

#include "core/outing/readings.h"

namespace gs {

struct ReadingRow {
  R id;
  Reading row;
};
std::span<const ReadingRow> power_readings();  // battery, radio, lead
std::span<const ReadingRow> feedline_readings();
std::span<const ReadingRow> antenna_readings();
std::span<const ReadingRow> sky_readings();
std::span<const ReadingRow> pace_readings();    // clock, pace
std::span<const ReadingRow> safety_readings();  // safety, rules
std::span<const ReadingRow> kit_readings();

}  // namespace gs
