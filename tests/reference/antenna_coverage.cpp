// What of the check values gathered for the antenna link is tested, and what is not and why. A table that loses or
// gains a row shows here.
#include <doctest/doctest.h>

#include <cstdio>
#include <iterator>

#include "tests/reference/antenna_rigging_tables.h"
#include "tests/reference/antenna_tables.h"
#include "tests/reference/antenna_theory_tables.h"

using namespace gs;

namespace {

struct Family {
  const char* what;
  int gathered;
  std::size_t tested;
  const char* how;
};
// Counted in rows of print: a Fresnel row holds a level and an upright coefficient, a worked example in a test's
// own lines counts by hand.
const Family kFamilies[] = {
    {"induced EMF, length and radius", 51, std::size(test::kEmf), "0.05 ohm"},
    {"a textbook's thin dipole and its two resonances", 3, 3, "0.01 and 0.005 ohm"},
    {"thin dipoles of a solver's listing on 200 and 250 MHz", 2, 2, "4 %, by three terms"},
    {"King's three terms", 42, std::size(test::kThreeTerm), "0.015 ohm"},
    {"mutual impedance", 19, std::size(test::kMutual), "0.05 ohm"},
    {"dipole over perfect ground", 13, std::size(test::kOverPerfectGround), "0.1 ohm"},
    {"dipole over average ground", 22, std::size(test::kGroundChange), "1 ohm"},
    {"lowest lobe over perfect ground", 10, std::size(test::kLobes), "0.1 degrees"},
    {"Fresnel's coefficients", 56, 2 * std::size(test::kFresnel), "0.001 and 0.1 degrees"},
    {"elevation of the least reflection", 30, std::size(test::kBrewster), "0.05 degrees"},
    {"gain straight up of low dipoles", 12, std::size(test::kZenith), "1 dB, 3 ohm"},
    {"two military prints of low dipoles", 2, 2, "1 to 6 dB kinder, as said: no measurement settles it"},
    {"gain and field of a quarter wave", 2, 2, "0.03 dB, 1 mV/m"},
    {"trade lengths", 6, std::size(test::kTradeLengths), "0.5 mm"},
    {"insulated wire's velocity factor", 1, 1, "0.001"},
    {"inverted V of 120 degrees", 1, 1, "5 %"},
    {"legs of a V, lines to a stake", 5, std::size(test::kLegs) + std::size(test::kLines), "0.6 mm, 0.06 degrees"},
    {"sag", 5, std::size(test::kSags), "0.6 mm; a worked example 0.0006 ft"},
    {"wires of makers' data sheets", 6, std::size(test::kWirePrints), "0.01 lbf"},
    {"transformers as measured", 4, std::size(test::kTransformerPrints) - 2, "0.1 dB to 2 points"},
    {"loading equation's example", 1, 1, "0.0006 uH, 0.1 % of its reactance"},
    {"whips on vehicles, measured", 3, 3, "10 %, 2 points, 6 dB"},
    {"radials of 1937, series loss", 9, std::size(test::kRadialPoints), "0.2 dB, 2 ohm"},
    {"radials of 1937, field at a mile", 4, std::size(test::kRadialMiles), "within the range shown, 2 mV/m"},
    {"radials of a handbook, feed resistance", 6, std::size(test::kRadialFeeds), "within the range shown"},
    {"radials of a field test, 2008", 5, std::size(test::kRadialFields2008),
     "0.05 dB as printed, 1 dB of its readings"},
};

struct Untested {
  const char* what;
  int rows;
  const char* why;
};
constexpr const char* kListing = "LLNL, UCID-18834 Part III, User's Guide, 1981, worked examples (seen)";
const Untested kUntested[] = {
    {"example 1, half a wave of 1 mm radius, 82.70 + j46.31 ohm; loaded by 10 ohm, 3 nH, 53 pF", 2,
     "three terms give 79.6 + j40.3 ohm, 4 % and 6 ohm under; 3 % and 5 ohm wanted, and a load within the wire"},
    {"example 2, 0.5 m of 0.01 mm radius on 300 MHz, 80.55 + j45.71 ohm", 1,
     "three terms give 76.5 + j43.0, 5 and 6 % under; 4 wanted"},
    {"example 2 of aluminium, 112.4 + j65.4 ohm, 73.45 %", 1,
     "a wire of two skin depths: needs the exact impedance of a round wire inside a solver"},
    {"example 3, a vertical of 0.03 wavelengths radius: two impedances", 2, "no thin wire"},
    {"example 3, nine gains over perfect and eight over real ground", 17,
     "asked to 0.2 dB, a sine current gives them to 0.5"},
    {"monopole on six buried radials, 54.0 + j29.4 ohm", 1, "buried wires: reference only"},
};

}  // namespace

TEST_CASE("antenna: every gathered check value is tested, or named with its reason") {
  int gathered = 0, tested = 0, left = 0;
  for (const Family& family : kFamilies) {
    CAPTURE(family.what);
    CHECK(std::size_t(family.gathered) == family.tested);
    std::printf("  tested %2d of %2d: %s (%s)\n", int(family.tested), family.gathered, family.what, family.how);
    gathered += family.gathered;
    tested += int(family.tested);
  }
  for (const Untested& row : kUntested) {
    std::printf("  not tested, %d: %s: %s: %s\n", row.rows, kListing, row.what, row.why);
    left += row.rows;
  }
  std::printf("  antenna check values that need no solver: %d of %d tested; %d of a solver's listing left to it\n",
              tested, gathered, left);
  CHECK(tested == gathered);
}
