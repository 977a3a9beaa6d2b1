// How sharply a straight wire of any length beams in free space.
#pragma once

namespace gs::antenna {

enum class FedAt : unsigned char { middle, end };

/// Greatest gain over isotropic, dBi, of a thin straight wire without losses whose current is a standing sine wave
/// from its open end or ends: exact for a wire without thickness. `waves` is its length in wavelengths, above 0 up
/// to 200; NaN elsewhere. Rises with length, not steadily: fed in the middle it falls back past 1.27 wavelengths.
/// Source: the far field of a sinusoidal current, integrated along the wire, as in any antenna textbook.
double straight_wire_gain_dbi(double waves, FedAt fed_at);

}  // namespace gs::antenna
