// What happened on the outing: when contacts came, when one was on the air, and what was measured. A tally of times
// and nothing else: who was at the other end belongs to no Groundsheet file.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/outing/value.h"

namespace gs {

// Instants are seconds of UTC since 1970-01-01 (pace/utc.h), held to the millisecond so that files give them back.

/// One press of "+1 contact", or some contacts that were forgotten and entered together at this time.
struct Tap {
  double at_utc_s = 0;
  int count = 1;  // 1 to kMostForgotten
  bool forgotten = false;
  std::string kept = {};  // as in Stint
  bool operator==(const Tap&) const = default;
};

/// A lever or a reading as it was found in the park, by key. Keys that this version does not know stay, unused.
struct Measured {
  std::string key;
  Value value;  // never monostate; a choice by its option's key
  std::optional<double> at_utc_s;
  std::string kept = {};
  bool operator==(const Measured&) const = default;
};

/// From when to when one was on the air, as the person said.
struct OnAir {
  double from_utc_s = 0;
  std::optional<double> until_utc_s;  // still on the air without; never before from_utc_s
  bool operator==(const OnAir&) const = default;
};

struct Happened {
  std::vector<OnAir> on_air;       // each begins where the one before ended, or later; only the last may be open
  std::vector<Tap> tally;          // in the order of tapping, which a clock set back does not change
  std::vector<Measured> measured;  // the last one of a key counts
  bool operator==(const Happened&) const = default;
};
inline constexpr std::size_t kMostTaps = 10'000, kMostMeasured = 500, kMostOnAir = 100;
inline constexpr int kMostForgotten = 999;

/// All contacts of the tally.
int contacts_in(const Happened& happened);

/// One contact more, `count` forgotten ones, the last entry taken back. False, and nothing is changed, where the
/// time is no instant of ours, the count is out of range or the tally is full or empty.
bool add_contact(Happened& happened, double utc_s);
bool add_forgotten(Happened& happened, double utc_s, int count);
bool take_back(Happened& happened);

/// Starts and ends being on the air; starting again after an end leaves a pause between. False where there is
/// nothing to start or end. What a clock set back puts before the start, the end or the last contact before it is
/// put there: no time on the air is ever less than nothing.
bool is_on_air(const Happened& happened);
bool start_on_air(Happened& happened, double utc_s);
bool end_on_air(Happened& happened, double utc_s);

/// Notes what was measured; why it cannot be, in words, or "". Levers keep their ranges.
std::string measure(Happened& happened, std::string key, Value value, std::optional<double> utc_s);
/// The last measured value of a key, or null.
const Measured* last_measured(const Happened& happened, std::string_view key);

}  // namespace gs
