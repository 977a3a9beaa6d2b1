// Laws that every line must obey, tried on generated lines. The seed is printed; the sequence of std::mt19937_64 is
// the same everywhere, and the draws below use no library distribution, so all targets see the same lines to
// rounding.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <random>

#include "core/feedline/line.h"
#include "core/feedline/swr.h"
#include "core/units.h"
#include "tests/reference/feedline_closeness.h"

using namespace gs;
using namespace gs::feedline;
using gs::test::Closeness;

namespace {

constexpr std::uint64_t kSeed = 0x6c696e65;
constexpr int kTrials = 2000;

class Draw {
 public:
  explicit Draw(std::uint64_t seed) : random_(seed) {
    std::printf("  seed %llu\n", static_cast<unsigned long long>(seed));
  }
  double between(double least, double most) { return least + (most - least) * (double(random_() >> 11) * 0x1p-53); }
  double log_between(double least, double most) { return std::exp(between(std::log(least), std::log(most))); }

  struct Nominal {
    double z0_ohm, vf, conductor, dielectric, mhz, m;
    Line line() const { return line_from_nominal(z0_ohm, vf, conductor, dielectric, mhz, m); }
  };
  /// A line as people use it: 0.1..30 dB/100 m, 1.8..54 MHz, 0.1..100 m.
  Nominal nominal() {
    const double share = between(0, 1), db = log_between(0.1, 30);
    return {between(25, 600), between(0.6, 1),      db * share,
            db * (1 - share), log_between(1.8, 54), log_between(0.1, 100)};
  }
  Complex load() { return {log_between(0.1, 1e4), (between(0, 1) < 0.5 ? -1 : 1) * log_between(0.01, 1e4)}; }

 private:
  std::mt19937_64 random_;
};

Line cut(const Line& line, double length_m) { return {line.gamma_per_m, line.z0_ohm, length_m}; }

/// The load that shows `s` against z0 at phase phi.
Complex load_on_circle(double s, double z0_ohm, double phi) {
  const double rho = reflection_from_swr(s);
  const Complex wave = std::polar(rho, phi);
  return {z0_ohm * (1 - rho * rho) / std::norm(1.0 - wave), 2 * z0_ohm * wave.imag() / std::norm(1.0 - wave)};
}

/// Total loss as it stands in books: from the input impedance and cosh, sinh.
double book_loss_db(const Line& line, Complex load_ohm) {
  const Complex t = line.gamma_per_m * line.length_m;
  const double current = std::norm(std::cosh(t) + load_ohm / line.z0_ohm * std::sinh(t));
  return 10 * std::log10(input_impedance_ohm(line, load_ohm).real() / load_ohm.real() * current);
}

}  // namespace

TEST_CASE("line property: no length, no loss, no change") {
  Draw draw(kSeed);
  Closeness ohms("zero length, impedance, relative", "");
  for (int i = 0; i < kTrials; ++i) {
    const Line none = cut(draw.nominal().line(), 0);
    const Complex load = draw.load();
    CHECK(total_loss_db(none, load) == 0);
    CHECK(ohms.within(std::abs(input_impedance_ohm(none, load) / load - 1.0), 0, 2e-15));
  }
}

TEST_CASE("line property: the waves' loss is the book's loss, and never negative") {
  Draw draw(kSeed + 1);
  Closeness off("total loss in two ways", "dB");
  for (int i = 0; i < kTrials; ++i) {
    const Line line = draw.nominal().line();
    const Complex load = draw.load();
    const double loss = total_loss_db(line, load);
    CHECK(loss >= 0);
    // The book's form takes Rin from a difference: its rounding grows with |Zin|/Rin and |ZL|/RL.
    const Complex zin = input_impedance_ohm(line, load);
    const double rounding = 1e-15 * (std::abs(zin) / zin.real() + std::abs(load) / load.real());
    CHECK(off.within(loss, book_loss_db(line, load), 1e-12 + rounding));
  }
}

TEST_CASE("line property: two pieces make the whole") {
  Draw draw(kSeed + 2);
  Closeness ohms("cascade, impedance as reflection", ""), db("cascade, loss", "dB");
  for (int i = 0; i < kTrials; ++i) {
    const Line line = draw.nominal().line();
    const Complex load = draw.load();
    const double at = draw.between(0, 1) * line.length_m;
    const Line far_piece = cut(line, at), near_piece = cut(line, line.length_m - at);
    const Complex between = input_impedance_ohm(far_piece, load);
    const Complex whole = input_impedance_ohm(line, load);
    // Compared as reflection, which stays of order 1 through every resonance.
    const auto wave = [&](Complex z) { return (z - line.z0_ohm) / (z + line.z0_ohm); };
    CHECK(ohms.within(std::abs(wave(input_impedance_ohm(near_piece, between)) - wave(whole)), 0, 1e-13));
    const double resistance_rounding = 1e-15 * std::abs(between) / between.real();
    CHECK(db.within(total_loss_db(far_piece, load) + total_loss_db(near_piece, between), total_loss_db(line, load),
                    1e-12 + 10 * resistance_rounding));
  }
}

TEST_CASE("line property: matched in its own Z0 a line loses its matched loss") {
  Draw draw(kSeed + 3);
  Closeness off("load = Z0, loss", "dB");
  for (int i = 0; i < kTrials; ++i) {
    const Line line = draw.nominal().line();
    CHECK(off.within(total_loss_db(line, line.z0_ohm), matched_loss_db(line), 1e-12 * (1 + matched_loss_db(line))));
    CHECK(std::abs(input_impedance_ohm(line, line.z0_ohm) / line.z0_ohm - 1.0) < 1e-14);
  }
}

TEST_CASE("line property: the loss range holds every phase and is reached") {
  Draw draw(kSeed + 4);
  Closeness reached("loss range against search over the phase", "dB");
  for (int i = 0; i < 200; ++i) {
    const Draw::Nominal n = draw.nominal();
    const Line line = n.line();
    const double s = i % 10 == 0 ? 1.0 : draw.log_between(1.01, i % 3 ? 30 : 1000);
    const LossRange range = loss_range_db(line, n.z0_ohm, s);
    CHECK(range.least_db >= 0);
    CHECK(range.least_db <= range.typical_db);
    CHECK(range.typical_db <= range.most_db);
    const auto loss = [&](double phi) { return total_loss_db(line, load_on_circle(s, n.z0_ohm, phi)); };
    for (int k = 0; k < 20; ++k) {
      const double some = loss(draw.between(-kPi, kPi));
      CHECK(some >= range.least_db - 1e-9);
      CHECK(some <= range.most_db + 1e-9);
    }
    // Independent search: 360 samples, then a golden section around the best of them.
    for (const double sign : {1.0, -1.0}) {
      double best_phi = 0, best = -1e300;
      for (int k = 0; k < 360; ++k) {
        const double phi = k * kPi / 180, value = sign * loss(phi);
        if (value > best) best = value, best_phi = phi;
      }
      double low = best_phi - kPi / 180, high = best_phi + kPi / 180;
      const double golden = (std::sqrt(5.0) - 1) / 2;
      for (int k = 0; k < 40; ++k) {
        const double a = high - golden * (high - low), b = low + golden * (high - low);
        if (sign * loss(a) > sign * loss(b))
          high = b;
        else
          low = a;
      }
      CHECK(reached.within(sign > 0 ? range.most_db : range.least_db, loss((low + high) / 2), 1e-9));
    }
  }
}

TEST_CASE("line property: the closed form is the middle of the range") {
  Draw draw(kSeed + 5);
  Closeness exact("real Z0: closed form against exact loss", "dB");
  constexpr double kSecondOrder = 3;
  double outside = 0;
  for (int i = 0; i < kTrials; ++i) {
    Draw::Nominal n = draw.nominal();
    const double s = draw.log_between(1.01, 1000), phi = draw.between(-kPi, kPi);
    const Line line = n.line();
    const double closed = closed_form_loss_db(matched_loss_db(line), s);
    const LossRange range = loss_range_db(line, n.z0_ohm, s);
    // It leaves out terms of second order in the loss angle x = X0/R0; they weigh most at high SWR.
    const double x = line.z0_ohm.imag() / line.z0_ohm.real();
    const double second_order_db = kSecondOrder * x * x * (s + 1 / s);
    CHECK(closed >= range.least_db - second_order_db - 1e-12);
    CHECK(closed <= range.most_db + second_order_db + 1e-12);
    if (x * x * s > 1e-6)
      outside = std::max(
          {outside, (range.least_db - closed) / second_order_db, (closed - range.most_db) / second_order_db});

    n.conductor = n.dielectric = (n.conductor + n.dielectric) / 2;
    const Line real = n.line();
    CHECK(exact.within(total_loss_db(real, load_on_circle(s, n.z0_ohm, phi)), closed, 1e-10 * (1 + closed)));
  }
  std::printf("  closed form outside the range by at most %.3g of the second-order allowance\n", outside);
}

TEST_CASE("line property: SWR at the two ends") {
  Draw draw(kSeed + 6);
  Closeness back("SWR there and back, relative", ""), exact("SWR at the radio against exact line, relative", "");
  for (int i = 0; i < kTrials; ++i) {
    Draw::Nominal n = draw.nominal();
    n.conductor = n.dielectric;
    const Line line = n.line();
    const double s = draw.log_between(1, 1000), loss = matched_loss_db(line);
    const double seen = swr_at_radio(s, loss);
    CHECK(seen >= 1);
    CHECK(seen <= s * (1 + 1e-14));
    CHECK(seen <= swr_of_open_end(loss) * (1 + 1e-14));
    // Behind many decibels a high SWR hides in the last bits of what is seen.
    const double hidden = 1e-15 * s * std::pow(10, loss / 10);
    if (hidden < 1e-3) CHECK(back.within(swr_at_load(seen, loss) / s, 1, 1e-13 + 10 * hidden));
    const Complex zin = input_impedance_ohm(line, load_on_circle(s, n.z0_ohm, draw.between(-kPi, kPi)));
    CHECK(exact.within(swr(zin, n.z0_ohm) / seen, 1, 1e-10));
  }
}

TEST_CASE("line property: never NaN, however extreme") {
  Draw draw(kSeed + 7);
  for (int i = 0; i < kTrials; ++i) {
    const double loss_db = i % 5 ? draw.log_between(1e-9, 1e5) : 0;
    const Line line = line_from_nominal(draw.log_between(1, 2000), draw.log_between(0.01, 1), loss_db,
                                        i % 3 ? draw.log_between(1e-9, 1e5) : 0, draw.log_between(1e-3, 1e5),
                                        i % 7 ? draw.log_between(1e-6, 1e6) : 0);
    const double r = i % 4 ? draw.log_between(1e-30, 1e30) : 0, x = i % 6 ? draw.log_between(1e-30, 1e30) : 0;
    for (const Complex load : {Complex{r, x}, Complex{r, -x}, Complex{r, 0}}) {
      const Complex zin = input_impedance_ohm(line, load);
      CHECK(std::isfinite(zin.real()));
      CHECK(std::isfinite(zin.imag()));
      CHECK_FALSE(std::isnan(total_loss_db(line, load)));
      CHECK(total_loss_db(line, load) >= 0);
      CHECK(swr(load, 50) >= 1);
    }
    const double s = draw.log_between(1, 1e15);
    const LossRange range = loss_range_db(line, 50, s);
    CHECK(range.least_db >= 0);
    CHECK(range.least_db <= range.most_db);
    CHECK(closed_form_loss_db(matched_loss_db(line), s) >= 0);
    CHECK(swr_at_radio(s, matched_loss_db(line)) >= 1);
  }
}
