// Constants and conversions of the trade's units. Nothing else lives here.
#pragma once

#include <numbers>

namespace gs {

inline constexpr double kSpeedOfLightMPerS = 299'792'458.0;       // SI Brochure, 9th ed., 2.2: exact by definition
inline constexpr double kMetresPerFoot = 0.3048;                  // international foot (1959), exact
inline constexpr double kMetresPerInch = 0.0254;                  // exact
inline constexpr double kGramsPerPound = 453.59237;               // international avoirdupois pound (1959), exact
inline constexpr double kDbPerNeper = 20.0 / std::numbers::ln10;  // ISO 80000-3: 1 Np = (20 / ln 10) dB
inline constexpr double kPi = std::numbers::pi;

}  // namespace gs
