#include "core/radio/fuse.h"

namespace gs::radio {
namespace {

constexpr double kSizesA[] = {1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40, 50, 60, 70, 80, 100};

// 15 A / 0.75 is 20 A, whatever the last bit says.
constexpr double kRounding = 1e-9;

}  // namespace

std::span<const double> fuse_sizes_a() { return kSizesA; }

Fuse fuse_for(double current_a, double wire_carries_a) {
  const double least_a = current_a / kFuseLoad;
  for (const double size_a : kSizesA) {
    if (size_a * (1 + kRounding) < least_a) continue;
    return {least_a, size_a, size_a > wire_carries_a ? FuseFit::too_thin : FuseFit::fits};
  }
  return {least_a, 0, FuseFit::none_so_large};
}

}  // namespace gs::radio
