// Short whips, coils, radials and copper against figures from outside.
#include <doctest/doctest.h>

#include <cmath>

#include "core/antenna/feed.h"
#include "core/antenna/radials.h"
#include "core/antenna/whip.h"
#include "core/units.h"
#include "tests/reference/antenna_tables.h"
#include "tests/reference/feedline_closeness.h"

using namespace gs;
using namespace gs::antenna;
using gs::test::Closeness;

TEST_CASE("antenna: an 8 ft whip as handbooks tabulate it") {
  const double height_m = 8 * kMetresPerFoot, diameter_m = 0.004;
  Closeness coil("whip coil, relative", ""), radiation("whip radiation resistance, relative", "");
  Closeness loss("whip coil resistance, relative", "");
  for (const test::WhipRow& row : test::kWhips) {
    CAPTURE(row.frequency_mhz);
    CAPTURE(row.coil_at);
    const double rr = whip_radiation_ohm(height_m, row.frequency_mhz, row.coil_at);
    const double uh = loading_coil_uh(height_m, diameter_m, row.frequency_mhz, row.coil_at);
    MESSAGE(row.frequency_mhz << " MHz, coil at " << row.coil_at << ": " << rr << " ohm (" << row.radiation_ohm
                              << "), " << uh << " uH (" << row.coil_uh << ")");
    if (!row.within_an_eighth_of_a_wave) continue;
    CHECK(radiation.within(rr / row.radiation_ohm, 1, 0.10));
    CHECK(coil.within(uh / row.coil_uh, 1, 0.10));
    // the book's own coil through 2 pi f L / Q; its digits agree with each other to 4.3 %
    CHECK(loss.within(2 * kPi * row.frequency_mhz * row.coil_uh / 50 / row.coil_q50_ohm, 1, 0.05));
  }
}

// The worked example of the loading equation (QST, September 1974, pp. 28-34; seen): 7.123 MHz, 37.5 ft overall,
// coils 5 ft out, wire 0.0403 in: 515.887 ohm, 11.527 uH.
TEST_CASE("antenna: the loading equation's own example") {
  Closeness off("loading equation", "uH");
  const double half_m = 37.5 / 2 * kMetresPerFoot;
  const double uh = loading_coil_uh(half_m, 0.0403 * kMetresPerInch, 7.123, 5 / 18.75);
  CHECK(off.within(uh, 11.527, 0.0006));
  CHECK(std::abs(2 * kPi * 7.123 * uh / 515.887 - 1) < 0.001);
}

TEST_CASE("antenna: short radiation resistance against King and against the textbook") {
  Closeness off("short monopole against King, relative", "");
  for (const test::ShortRow& row : test::kShorts) {
    const double height_m = row.kh / (2 * kPi) * wavelength_m(7.1);
    // King's rod is thick (height 74 radii): his 18.3 stands 8.5 % under the textbook's 20, the sine adds up to 2.5
    // %
    CHECK(off.within(whip_radiation_ohm(height_m, 7.1) / (row.dipole_ohm / 2), 1, 0.12));
    // 395 (h/lambda)^2, the limit of short antennas
    CHECK(std::abs(short_monopole_ohm(height_m, 7.1) / (394.784 * std::pow(row.kh / (2 * kPi), 2)) - 1) < 1e-5);
  }
}

// 8 ft centre-loaded whip, 7.2 MHz, Q 300: 37 ohm at the feed by an owner's analyser (second hand) leave 29 ohm of
// ground; about 8 % then goes out, half of the 15 % with 10 ohm.
TEST_CASE("antenna: an owner's whip") {
  const WhipFeed owner = whip_feed({2.4384, 0.005, 7.2, 0.5, 300, 29});
  MESSAGE("feed " << owner.feed_ohm << " ohm (37 read), efficiency " << 100 * owner.efficiency << " % (8.2)");
  CHECK(std::abs(owner.feed_ohm - 37) < 3.7);
  CHECK(std::abs(100 * owner.efficiency - 8.2) < 2);
}

// Wheeler's formula worked by hand: 22 turns, radius 0.71 in, pitch 0.11 in: 0.5041 x 484 / (6.39 + 24.2) = 7.976
// uH; 42 turns over 8 in: 10.29 uH.
TEST_CASE("antenna: coils of a question on a 40 m rod") {
  Closeness off("Wheeler", "uH");
  CHECK(off.within(coil_uh(22, 1.42 * kMetresPerInch, 22 * 0.11 * kMetresPerInch), 7.976, 0.0006));
  CHECK(off.within(coil_uh(42, 1.42 * kMetresPerInch, 8 * kMetresPerInch), 10.293, 0.0006));
}

TEST_CASE("antenna: ground loss of radials against the 1937 measurements") {
  Closeness off("radials against 1937", "dB"), ohm("radials against 1937, series loss", "ohm");
  for (const test::RadialPoint& row : test::kRadialPoints) {
    CAPTURE(row.count);
    CAPTURE(row.length_waves);
    const double db = 10 * std::log10(36 / (36 + radial_loss(row.count, row.length_waves).usual_ohm));
    MESSAGE(row.count << " x " << row.length_waves << ": " << db << " dB, measured " << row.relative_db);
    // The rows and factors of the table rest on these points, so this is no independent check: it holds the table
    // to the print's own digits.
    CHECK(off.within(db, row.relative_db, 0.2));
    CHECK(ohm.within(radial_loss(row.count, row.length_waves).usual_ohm, row.loss_ohm, 2));
  }
}

// The raw readings of the field test behind radials-field.csv (mailing list, 2008, second hand), mV at the
// receiver: they give the table's figures against 60 on the ground, but for its 16 raised ones, which the list
// printed 0.4 dB kinder. 1 dB is what a field and its soil are worth.
TEST_CASE("antenna: few radials, on the ground and raised, against 60") {
  constexpr double kSixtyMv = 33;
  Closeness ground("radials on the ground against 60", "dB"), raised("raised radials against 60", "dB");
  Closeness printed("the same, as printed", "dB");
  for (const test::RadialField2008& row : test::kRadialFields2008) {
    const RadialField got = radial_field(row.count);
    CHECK(printed.within(got.ground_db, row.ground_db, 0.05));
    CHECK(printed.within(got.raised_db, row.raised_db, 0.05));
    if (!(row.ground_mv > 0)) continue;
    CHECK(ground.within(got.ground_db, 20 * std::log10(row.ground_mv / kSixtyMv), 1));
    CHECK(raised.within(got.raised_db, 20 * std::log10(row.raised_mv / kSixtyMv), 1));
  }
  CHECK(radial_field(120).raised_db == radial_field(60).raised_db);
  double before = -99;
  for (double n = 4; n <= 60; ++n) {
    CHECK(radial_field(n).ground_db >= before);
    before = radial_field(n).ground_db;
  }
  for (const double outside : {0.0, 3.0, std::nan("")}) CHECK(std::isnan(radial_field(outside).raised_db));
  // The print wrote -0.63 beside 28.7 mV; what it says of the others is what its readings say.
  for (const RadialFieldRow& row : radial_fields()) CHECK(row.raised_db <= 0);
}

// IEEE Trans. Vehicular Technology VT-19 (1970) 230-236, abstract (seen): on 4 MHz about -37.5 dBi straight up, +-6
// dB. Its -52.5 dB against a dipole 15 ft up belongs to that dipole over its own ground: not ours to work out.
TEST_CASE("antenna: a whip on a vehicle sends next to nothing straight up") {
  MESSAGE("whip straight up on 4 MHz: " << whip_zenith_dbi(4) << " dBi, measured -37.5");
  CHECK(std::abs(whip_zenith_dbi(4) + 37.5) < 6);
  CHECK(whip_zenith_dbi(7.1) > whip_zenith_dbi(4));
  for (const double outside : {3.9, 8.1, 0.0, std::nan("")}) CHECK(std::isnan(whip_zenith_dbi(outside)));
}

TEST_CASE("antenna: a handbook's radial table lies within the range that is shown") {
  for (const test::RadialFeed& row : test::kRadialFeeds) {
    const GroundLoss loss = radial_loss(row.count, row.length_waves);
    const double book_ohm = row.feed_ohm - 35;
    MESSAGE(row.count << " x " << row.length_waves << ": " << loss.usual_ohm << " ohm (" << loss.lowest_ohm
                      << " to " << loss.highest_ohm << "), book " << book_ohm);
    CHECK(loss.lowest_ohm <= book_ohm);
    CHECK(book_ohm <= loss.highest_ohm);
  }
}

TEST_CASE("antenna: copper loss of a half-wave wire") {
  Closeness off("copper, loss against the model's, relative", "");
  for (const test::CopperRow& row : test::kCopper) {
    const double loss = copper_loss_ohm(146.0 / row.frequency_mhz, row.diameter_m, row.frequency_mhz);
    const double share = loss / (72 + loss), wanted = 1 - row.efficiency;
    MESSAGE(row.diameter_m << " m, " << row.frequency_mhz << " MHz: " << 100 * share << " %, model "
                           << 100 * wanted);
    // a sine against the model's own current: 8 %, and half of the table's last digit
    CHECK(off.within(share / wanted, 1, 0.08 + 0.0005 / wanted));
  }
}
