// Which fuse: large enough to last, small enough to save the wire.
#pragma once

#include <span>

namespace gs::radio {

/// Share of its rating that a fuse carries for good at 25 C: a fuse maker's application text. Less in a hot holder.
inline constexpr double kFuseLoad = 0.75;

/// Ratings of blade fuses in amperes, smallest first: ISO 8820-3 and the larger size of ISO 8820-3 type E/F; from
/// memory.
std::span<const double> fuse_sizes_a();

/// fits: the size does both. too_thin: what lasts is more than the wire carries; the wire's own limit still binds.
enum class FuseFit : unsigned char { fits, too_thin, none_so_large };

struct Fuse {
  double least_a;  // current / 0.75
  double size_a;   // the next size up; 0 when there is none
  FuseFit fit;
};

/// Fuse for a steady `current_a` >= 0 in front of wire that carries `wire_carries_a` (infinite: not known yet).
Fuse fuse_for(double current_a, double wire_carries_a);

}  // namespace gs::radio
