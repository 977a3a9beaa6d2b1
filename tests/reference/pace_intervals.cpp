// Exact intervals of a count, and shares of gamma and beta, against printed tables and a general-purpose library.
#include <cmath>
#include <cstdio>

#include "core/pace/gamma.h"
#include "core/pace/pace.h"
#include "tests/reference/feedline_closeness.h"

using namespace gs::pace;
using gs::test::Closeness;

namespace {

/// Lower and upper end at 95 % and 90 %. Worked out apart by gamma quantiles of general-purpose statistics
/// software, four decimals; n = 0 and n = 10 stand as 3.689, 4.80 and 18.39 on a general statistics page (seen).
struct GarwoodRow {
  int count;
  double low95, high95, low90, high90;
};
constexpr GarwoodRow kGarwood[] = {{0, 0, 3.6889, 0, 2.9957},
                                   {1, 0.0253, 5.5716, 0.0513, 4.7439},
                                   {2, 0.2422, 7.2247, 0.3554, 6.2958},
                                   {3, 0.6187, 8.7673, 0.8177, 7.7537},
                                   {4, 1.0899, 10.2416, 1.3663, 9.1535},
                                   {5, 1.6235, 11.6683, 1.9701, 10.5130},
                                   {7, 2.8144, 14.4227, 3.2853, 13.1481},
                                   {10, 4.7954, 18.3904, 5.4254, 16.9622},
                                   {15, 8.3954, 24.7402, 9.2463, 23.0971},
                                   {20, 12.2165, 30.8884, 13.2547, 29.0620},
                                   {30, 20.2409, 42.8269, 21.5940, 40.6905},
                                   {50, 37.1110, 65.9188, 38.9647, 63.2871},
                                   {67, 51.9241, 85.0876, 54.1283, 82.1081},
                                   {100, 81.3640, 121.6268, 84.1393, 118.0793}};

/// Observed count, ratio to expectation, printed 95 % limits of the ratio: a peer-reviewed mortality study's table
/// (seen). Ratio and limits are printed to two decimals, so the ratio's own rounding comes in.
struct MortalityRow {
  int count;
  double ratio, low, high;
};
constexpr MortalityRow kMortality[] = {
    {1, .42, .01, 2.35}, {7, .29, .12, .60}, {25, .49, .32, .73}, {50, .38, .28, .50}, {70, .46, .36, .58}};

}  // namespace

TEST_CASE("pace: exact intervals as tabulated") {
  Closeness off("exact interval", "contacts");
  for (const GarwoodRow& row : kGarwood) {
    const MeanRange wide = exact_interval(row.count, .95), narrow = exact_interval(row.count, .90);
    CHECK(off.within(wide.low, row.low95, .0000501));
    CHECK(off.within(wide.high, row.high95, .0000501));
    CHECK(off.within(narrow.low, row.low90, .0000501));
    CHECK(off.within(narrow.high, row.high90, .0000501));
  }
  // 67 in 44 min: 70.8 to 116.0 an hour
  const MeanRange range = exact_interval(67, .95);
  CHECK(std::abs(range.low * 60 / 44 - 70.8) < .051);
  CHECK(std::abs(range.high * 60 / 44 - 116.0) < .051);
  CHECK(std::isnan(exact_interval(-1, .95).low));
  CHECK(std::isnan(exact_interval(5, 1).low));
}

TEST_CASE("pace: exact intervals of a published mortality table") {
  Closeness off("ratio's limits", "");
  for (const MortalityRow& row : kMortality) {
    CAPTURE(row.count);
    const MeanRange range = exact_interval(row.count, .95);
    const double rounding = .005 + .005 * range.high / row.count;
    CHECK(off.within(row.ratio * range.low / row.count, row.low, rounding));
    CHECK(off.within(row.ratio * range.high / row.count, row.high, rounding));
  }
}

// Standard deviation .764 and central 95 % of 2.167 to 5.148 for gamma(21, 6); 66.69 to 106.99 and 11.61 to 20.61
// for gamma(69.25, .80833) and gamma(47.25, 2.99167): worked out apart.
TEST_CASE("pace: the range of an updated pace") {
  Closeness off("central 95 % of a pace", "an hour");
  const auto range = [](double shape, double hours) {
    return pace_range({shape / hours, 100 / std::sqrt(shape)}, .95);
  };
  CHECK(off.within(range(21, 6).low_per_hour, 2.167, .00051));
  CHECK(off.within(range(21, 6).high_per_hour, 5.148, .00051));
  CHECK(off.within(range(69.25, .80833).low_per_hour, 66.69, .0051));
  CHECK(off.within(range(69.25, .80833).high_per_hour, 106.99, .0051));
  CHECK(off.within(range(47.25, 2.99167).low_per_hour, 11.61, .0051));
  CHECK(off.within(range(47.25, 2.99167).high_per_hour, 20.61, .0051));
  CHECK(pace_range({12, 0}, .8).low_per_hour == 12);
  CHECK(std::isnan(pace_range({0, 50}, .8).low_per_hour));
}

// Arbitrary-precision values (mpmath 1.3, 25 digits).
TEST_CASE("pace: gamma and beta shares against an arbitrary-precision library") {
  Closeness off("share, relative", "");
  const auto near = [&off](double value, double wanted) { return off.within(value / wanted, 1, 2e-12); };
  CHECK(near(gamma_share(10, 9.669), 0.50003672091789629));
  CHECK(near(gamma_share(0.5, 1e-6), 0.0011283787909692364));
  CHECK(near(gamma_rest(3, 40), 3.5728659287002263e-15));
  CHECK(near(gamma_share(200, 150), 5.7096885742082443e-5));
  CHECK(near(beta_share(2.5, 4, .3), 0.35219758590676724));
  CHECK(near(beta_share(14, 5, .2), 2.1970419712e-7));
  CHECK(near(beta_share(0.7, 30, .9), 1.0));
  CHECK(near(gamma_quantile(0.3, 1e-5), 1.5022224816458299e-17));
  CHECK(near(gamma_quantile(69.25, .975), 86.485711153906327));
  CHECK(std::isnan(gamma_share(0, 1)));
  CHECK(std::isnan(beta_share(1, 1, 1.5)));
  CHECK(std::isnan(gamma_quantile(1, 2)));
  CHECK(gamma_quantile(4, 0) == 0);
}
