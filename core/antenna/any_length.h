// Wires that suit no band: which lengths to keep away from.
#pragma once

#include <span>

namespace gs::antenna {

/// How far a wire stands from a half wave or a multiple of it on the worst of the frequencies, in quarter waves: 0
/// on one (thousands of ohms, no transformer of low ratio serves), 1 midway. End effect counted once a wire. Also
/// which frequency is the worst. Lengths in m > 0, frequencies in MHz > 0; else NaN and -1.
struct AnyLength {
  double quarter_waves;
  int worst;
};
AnyLength clear_of_half_waves(double length_m, std::span<const double> frequencies_mhz);
/// The length within low..high (m) that is clearest on all of them, to a centimetre; NaN where there is none.
double clearest_length_m(double low_m, double high_m, std::span<const double> frequencies_mhz);

/// Nearer than this to a half wave a length is one to avoid: a tenth of a wave either side, common practice.
inline constexpr double kAvoidQuarterWaves = 0.4;

}  // namespace gs::antenna
