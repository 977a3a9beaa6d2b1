// Prints every reading of a fixed set of seeded outings, numbers to the last bit and as a person reads them. The
// native and the WebAssembly build print the same lines or the comparison says where not.
#include <cmath>
#include <cstdio>
#include <random>

#include "core/outing/outlook.h"

namespace {

constexpr unsigned kSeed = 20261125;
constexpr int kOutings = 2000;

/// Uniform in [0, 1) from the engine's own bits: the standard's distributions differ between libraries.
double unit_of(std::mt19937_64& bits) { return double(bits() >> 11) / 9007199254740992.0; }

gs::Values random_values(std::mt19937_64& bits) {
  gs::Values set(gs::lever_count());
  for (std::size_t i = 0; i < std::size_t(gs::L::count); ++i) {
    const gs::Lever& row = gs::lever(gs::L(i));
    const double skip = unit_of(bits), place = unit_of(bits);
    if (skip < 0.15) continue;
    if (row.kind == gs::Kind::choice) {
      const auto options = row.options();
      set[i] = std::string(options[std::size_t(place * double(options.size()))].key);
    } else if (row.kind == gs::Kind::text) {
      const std::string locator{char('A' + int(place * 18)), char('A' + int(skip * 18)),
                                char('0' + int(place * 10)), '5'};
      if (row.wrong && row.wrong(locator).empty()) set[i] = locator;
    } else {
      // steps of a thousandth of the range: both libraries agree on these to the last bit
      set[i] = row.least + (row.most - row.least) * std::floor(place * 1000) / 1000;
    }
  }
  return set;
}

}  // namespace

int main() {
  std::mt19937_64 bits(kSeed);
  for (int n = 0; n < kOutings; ++n) {
    gs::Outing outing;
    outing.set = random_values(bits);
    outing.date = n % 3 == 0 ? "2026-06-13" : n % 3 == 1 ? "2026-12-21" : "";
    const gs::Plan plan = gs::resolve(outing);
    const gs::Outlook outlook = gs::evaluate(plan);
    for (std::size_t i = 0; i < gs::kReadingCount; ++i) {
      const gs::Reading& row = gs::reading(gs::R(i));
      const gs::Figure& figure = outlook[gs::R(i)];
      std::printf("%d %s %.17g %.17g %.17g|%s|%s|%s\n", n, std::string(row.key).c_str(), figure.value, figure.low,
                  figure.high, gs::say_quantity(figure.value, row.unit, row.digits).c_str(),
                  std::string(gs::state_word(figure.state)).c_str(), gs::reason(plan, gs::R(i), figure).c_str());
    }
  }
}
