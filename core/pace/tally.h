// Presses of "+1 contact": which of them are a contact each.
#pragma once

#include <limits>

namespace gs::pace {

/// Two presses nearer than this are one finger that bounced. Common practice for push buttons; 400 ms by our own
/// rule.
inline constexpr double kBounceS = 0.4;

/// Lets presses through. It goes by a clock that only runs forward, never by the time of day: that may be set back.
class TapGuard {
 public:
  /// Whether a press at `steady_s` counts. After the last one that counted must lie kBounceS or more.
  bool takes(double steady_s) {
    if (!(steady_s - last_s_ >= kBounceS) && steady_s >= last_s_) return false;
    if (!(steady_s == steady_s)) return false;
    last_s_ = steady_s;
    return true;
  }

 private:
  double last_s_ = -std::numeric_limits<double>::infinity();
};

}  // namespace gs::pace
