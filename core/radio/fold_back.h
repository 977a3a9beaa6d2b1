// What a set's protection leaves of the power that was asked for.
#pragma once

namespace gs::radio {

enum class Tuner : unsigned char { none, in_set, outside };

/// Highest SWR that a matching unit at the radio usually brings to 1:1.
inline constexpr double kInSetReachSwr = 3.0;     // common practice: built-in units are specified to 3:1
inline constexpr double kOutsideReachSwr = 10.0;  // common practice: separate wide-range units, 10:1 and more

/// Share of the asked power that leaves the set, 0..1. Up to `full_power_swr` (>= 1) all of it; above, the
/// protection holds the reflected power at its value there: (rho_limit / rho)^2. A matching unit that reaches `swr`
/// restores all. swr >= 1 (infinity allowed). full_power_swr below 1 counts as 1: any mismatch then turns the set
/// right down. Marks are met with 1e-9 to spare, so that rounding decides nothing. Common practice: from memory,
/// sets differ; the lever "Full power up to SWR" adapts it.
double power_share(double swr, double full_power_swr, Tuner tuner);

}  // namespace gs::radio
