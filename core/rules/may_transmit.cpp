#include "core/rules/may_transmit.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace gs::rules {
namespace {

constexpr double kNone = std::numeric_limits<double>::quiet_NaN();
constexpr double kRoundingMhz = 1e-8;                      // 0.01 Hz: sums of decimals are not exact
constexpr double kStepKhz = 1.0 / 65536;                   // 0.015 Hz: what the room on the dial is told to
constexpr double kSidebandsMeetMhz = 10;                   // lower sideband below: IARU Region 1 HF band plan notes
constexpr double kUpperFromMhz = 5.3, kUpperToMhz = 5.45;  // but upper on 60 m: 47 CFR 97.303(h)(3)

struct Interval {
  double low_mhz, high_mhz;
};

/// Sorted, with those that touch made one.
std::vector<Interval> merged(std::vector<Interval> parts) {
  std::sort(parts.begin(), parts.end(), [](const Interval& a, const Interval& b) { return a.low_mhz < b.low_mhz; });
  std::vector<Interval> whole;
  for (const Interval& part : parts) {
    if (!whole.empty() && part.low_mhz <= whole.back().high_mhz + kRoundingMhz)
      whole.back().high_mhz = std::max(whole.back().high_mhz, part.high_mhz);
    else
      whole.push_back(part);
  }
  return whole;
}

std::vector<Interval> class_intervals(Region region, Class licence) {
  std::vector<Interval> parts;
  for (const BandSegment& row : band_segments())
    if ((row.regions & int(region)) && (row.classes & int(licence))) parts.push_back({row.low_mhz, row.high_mhz});
  return merged(std::move(parts));
}

Place place_at(Place place, double frequency_mhz) {
  if (place != Place::by_band) return place;
  const bool sixty = frequency_mhz >= kUpperFromMhz && frequency_mhz <= kUpperToMhz;
  return frequency_mhz < kSidebandsMeetMhz && !sixty ? Place::lower : Place::upper;
}

Interval signal(Place place, double dial_mhz, double width_mhz) {
  switch (place_at(place, dial_mhz)) {
    case Place::upper:
      return {dial_mhz, dial_mhz + width_mhz};
    case Place::lower:
      return {dial_mhz - width_mhz, dial_mhz};
    default:
      return {dial_mhz - width_mhz / 2, dial_mhz + width_mhz / 2};
  }
}

bool is_newcomer(Class licence) { return licence == Class::technician || licence == Class::novice; }

bool open_to(const EmissionSegment& row, Region region, Class licence, Kind kind, Place place, double width_khz,
             bool fm) {
  if (row.kind != kind || !(row.regions & int(region)) || (fm && !row.fm)) return false;
  if (row.widest_khz > 0 && width_khz > row.widest_khz + 1e-9) return false;
  const Place here = place_at(place, row.low_mhz);
  if (row.upper_only && kind == Kind::phone && here != Place::upper) return false;
  if (!is_newcomer(licence) || row.newcomers == Newcomers::as_others) return true;
  return row.newcomers == Newcomers::ssb_only && here != Place::centred;
}

/// The dial's range in an open interval; nothing when the signal is wider.
void add(std::vector<Stretch>& all, Place place, double width_mhz, Interval open) {
  if (open.high_mhz - open.low_mhz < width_mhz - kRoundingMhz) return;
  const Interval at_zero = signal(place_at(place, open.low_mhz), 0, width_mhz);
  all.push_back({open.low_mhz, open.high_mhz, open.low_mhz - at_zero.low_mhz, open.high_mhz - at_zero.high_mhz});
}

void add_channels(std::vector<Stretch>& all, Kind kind, Place place, double width_khz) {
  for (const FixedChannel& row : fixed_channels()) {
    if (width_khz > row.widest_khz + 1e-9) continue;
    const Place here = place_at(place, row.centre_mhz);
    if (kind != Kind::cw && here != Place::upper) continue;
    const double dial = kind == Kind::cw ? row.centre_mhz : row.upper_dial_mhz;
    all.push_back({row.upper_dial_mhz, 2 * row.centre_mhz - row.upper_dial_mhz, dial, dial});
  }
}

}  // namespace

std::vector<Stretch> stretches(Region region, Class licence, Kind kind, Place place, double width_khz, bool fm) {
  std::vector<Stretch> all;
  if (!(width_khz > 0)) return all;
  const std::vector<Interval> mine = class_intervals(region, licence);
  std::vector<Interval> modes;
  for (const EmissionSegment& row : emission_segments())
    if (open_to(row, region, licence, kind, place, width_khz, fm)) modes.push_back({row.low_mhz, row.high_mhz});
  bool has_60m = false;
  for (const Interval& own : mine) {
    if (kind == Kind::cw) add(all, place, width_khz / 1000, own);
    has_60m |= band_of(own.low_mhz, region) == "60m";
  }
  if (kind != Kind::cw)
    for (const Interval& open : merged(modes))
      for (const Interval& own : mine) {
        const Interval both{std::max(own.low_mhz, open.low_mhz), std::min(own.high_mhz, open.high_mhz)};
        if (both.low_mhz < both.high_mhz) add(all, place, width_khz / 1000, both);
      }
  if (has_60m) add_channels(all, kind, place, width_khz);
  std::sort(all.begin(), all.end(), [](const Stretch& a, const Stretch& b) { return a.low_mhz < b.low_mhz; });
  return all;
}

namespace {

/// Where among these stretches the dial stands, before why it may not is said.
Answer placed(const std::vector<Stretch>& all, double frequency_mhz, Interval sent) {
  Answer answer{false, Why::no_band, sent.low_mhz, sent.high_mhz, kNone, {kNone, kNone, kNone, kNone}};
  for (const Stretch& stretch : all) {
    double room_khz = 1000 * std::min(frequency_mhz - stretch.dial_low_mhz, stretch.dial_high_mhz - frequency_mhz);
    room_khz = std::round(room_khz / kStepKhz) * kStepKhz + 0.0;
    if (answer.room_khz >= room_khz) continue;
    answer.room_khz = room_khz;
    answer.nearest = stretch;
  }
  answer.allowed = answer.room_khz >= 0;
  if (answer.allowed) answer.why = Why::allowed;
  return answer;
}

bool is_asked(double frequency_mhz, double width_khz) {
  return frequency_mhz > 0 && std::isfinite(frequency_mhz) && width_khz >= 0 && std::isfinite(width_khz);
}

const Answer kNoAnswer{false, Why::no_band, kNone, kNone, kNone, {kNone, kNone, kNone, kNone}};

/// Any mode within these intervals.
Answer within(const std::vector<Interval>& open, double frequency_mhz, const ModeWidth& mode, double width_khz) {
  if (!is_asked(frequency_mhz, width_khz)) return kNoAnswer;
  const double width_mhz = (width_khz > 0 ? width_khz : mode.width_khz) / 1000;
  std::vector<Stretch> all;
  for (const Interval& one : open) add(all, mode.place, width_mhz, one);
  Answer answer = placed(all, frequency_mhz, signal(mode.place, frequency_mhz, width_mhz));
  for (const Interval& one : open)
    if (!answer.allowed && frequency_mhz >= one.low_mhz && frequency_mhz <= one.high_mhz)
      answer.why = Why::over_edge;
  return answer;
}

}  // namespace

Answer may_transmit(Region region, Class licence, double frequency_mhz, const ModeWidth& mode, double width_khz) {
  if (!is_asked(frequency_mhz, width_khz)) return kNoAnswer;
  const double width = width_khz > 0 ? width_khz : mode.width_khz;
  Answer answer = placed(stretches(region, licence, mode.kind, mode.place, width, mode.key == "fm"), frequency_mhz,
                         signal(mode.place, frequency_mhz, width / 1000));
  if (!answer.allowed && !band_of(frequency_mhz, region).empty()) {
    answer.why = Why::not_class;
    for (const Interval& own : class_intervals(region, licence))
      if (frequency_mhz >= own.low_mhz && frequency_mhz <= own.high_mhz) answer.why = Why::not_mode;
    if (frequency_mhz >= answer.nearest.low_mhz && frequency_mhz <= answer.nearest.high_mhz)
      answer.why = Why::over_edge;
  }
  return answer;
}

Answer within_region(Region region, double frequency_mhz, const ModeWidth& mode, double width_khz) {
  return within(class_intervals(region, Class::extra), frequency_mhz, mode, width_khz);
}

Answer within_edges(double low_mhz, double high_mhz, double frequency_mhz, const ModeWidth& mode,
                    double width_khz) {
  if (!(low_mhz > 0 && low_mhz < high_mhz) || !std::isfinite(high_mhz)) return kNoAnswer;
  return within({{low_mhz, high_mhz}}, frequency_mhz, mode, width_khz);
}

}  // namespace gs::rules
