// The same lines in the circuit simulator ngspice, run here and now where it is installed: a general-purpose
// program that knows nothing of ours. Copied figures of version 39 stand in feedline_tables.h and are tested
// everywhere.
#include <doctest/doctest.h>

#include <cstdio>
#include <cstdlib>
#include <random>
#include <sstream>
#include <string>

#include "core/feedline/line.h"
#include "core/feedline/swr.h"
#include "core/units.h"
#include "tests/reference/feedline_closeness.h"
#include "tests/reference/feedline_tables.h"

#ifndef __EMSCRIPTEN__  // no other program can be started from within the page's runtime

#include <unistd.h>

#include <filesystem>
#include <fstream>

using namespace gs;
using namespace gs::feedline;
using gs::test::Closeness;

namespace {

constexpr int kSections = 2000;

struct Constants {
  double r, l, g, c, length_m, f_hz;
  Complex load_ohm;
};

std::string figure(double x) {
  char text[40];
  std::snprintf(text, sizeof text, "%.17g", x);
  return text;
}

/// Pi sections: series R and L, shunt C and G, half of the shunt at both ends.
void write_ladder(std::ostream& out, const Constants& k) {
  const double step = k.length_m / kSections;
  const auto node = [](int i) {
    return i == 0 ? std::string("in") : i == kSections ? "out" : "n" + std::to_string(i);
  };
  for (int i = 0; i <= kSections; ++i) {
    const double part = i == 0 || i == kSections ? step / 2 : step;
    out << 'C' << i << ' ' << node(i) << " 0 " << figure(k.c * part) << '\n';
    if (k.g > 0) out << 'G' << i << ' ' << node(i) << " 0 " << node(i) << " 0 " << figure(k.g * part) << '\n';
    if (i == kSections) break;
    out << 'R' << i << ' ' << node(i) << " m" << i << ' ' << figure(k.r * step) << '\n';
    out << 'L' << i << " m" << i << ' ' << node(i + 1) << ' ' << figure(k.l * step) << '\n';
  }
}

void write_own_line(std::ostream& out, const Constants& k) {
  out << "O1 in 0 out 0 line\n.model line LTRA(R=" << figure(k.r) << " L=" << figure(k.l)
      << " G=0 C=" << figure(k.c) << " LEN=" << figure(k.length_m) << ")\n";
}

void write_load(std::ostream& out, const Constants& k) {
  const double w = 2 * kPi * k.f_hz, x = k.load_ohm.imag();
  out << "VL out la 0\nRL la lb " << figure(k.load_ohm.real()) << '\n';
  if (x > 0)
    out << "LL lb 0 " << figure(x / w) << '\n';
  else if (x < 0)
    out << "CL lb 0 " << figure(-1 / (w * x)) << '\n';
  else
    out << "VS lb 0 0\n";
}

struct Simulated {
  double loss_db;
  Complex input_ohm;
};

/// The four complex figures that the simulator prints as "name = re,im".
bool read_complex(const std::string& text, const std::string& name, Complex& value) {
  const std::size_t at = text.find(name + " = ");
  if (at == std::string::npos) return false;
  double re = 0, im = 0;
  if (std::sscanf(text.c_str() + at + name.size() + 3, "%lf,%lf", &re, &im) != 2) return false;
  value = {re, im};
  return true;
}

bool simulate(const Constants& k, bool ladder, Simulated& result) {
  const std::filesystem::path folder = std::filesystem::temp_directory_path();
  const std::filesystem::path deck = folder / ("groundsheet-line-" + std::to_string(getpid()) + ".cir");
  {
    std::ofstream out(deck);
    out << "line\nV1 in 0 AC 1\n";
    ladder ? write_ladder(out, k) : write_own_line(out, k);
    write_load(out, k);
    out << ".options numdgt=12\n.control\nset numdgt=12\nac lin 1 " << figure(k.f_hz) << ' ' << figure(k.f_hz)
        << "\nprint v(in) i(v1) v(out) i(vl)\nquit\n.endc\n.end\n";
  }
  std::string text;
  if (FILE* pipe = popen(("ngspice -b '" + deck.string() + "' 2>&1").c_str(), "r")) {
    char part[4096];
    while (const std::size_t got = std::fread(part, 1, sizeof part, pipe)) text.append(part, got);
    pclose(pipe);
  }
  std::filesystem::remove(deck);
  Complex v_in, i_in, v_out, i_out;
  if (!read_complex(text, "v(in)", v_in) || !read_complex(text, "i(v1)", i_in) ||
      !read_complex(text, "v(out)", v_out) || !read_complex(text, "i(vl)", i_out)) {
    MESSAGE("what the simulator said: " << text);
    return false;
  }
  i_in = -i_in;  // the source's current is counted into its plus
  result.loss_db = 10 * std::log10((v_in * std::conj(i_in)).real() / (v_out * std::conj(i_out)).real());
  result.input_ohm = v_in / i_in;
  return true;
}

bool installed() { return std::system("command -v ngspice >/dev/null 2>&1") == 0; }

Line line_of(const Constants& k) { return line_from_constants(k.r, k.l, k.g, k.c, k.f_hz, k.length_m); }

}  // namespace

TEST_CASE("feed line: simulated here, eight ladders and thirty lossy lines") {
  if (!installed()) {
    std::printf("  skipped: ngspice is not installed (copied figures are tested all the same)\n");
    return;
  }
  Closeness ladder("ladder run here, total loss", "dB"), own("simulator's own line run here, total loss", "dB"),
      input("simulator's own line, input impedance, relative", "");
  for (const test::SimulatedLine& row : test::kLadder) {
    CAPTURE(row.name);
    const Constants k{row.r_ohm_per_m, row.l_h_per_m,           row.g_s_per_m, row.c_f_per_m,
                      row.length_m,    row.frequency_mhz * 1e6, row.load_ohm};
    Simulated seen{};
    REQUIRE(simulate(k, true, seen));
    CHECK(ladder.within(total_loss_db(line_of(k), k.load_ohm), seen.loss_db, 1e-4));
    CHECK(ladder.within(row.total_db, seen.loss_db, 1e-4));  // the copied figure too
  }
  std::mt19937_64 random(39);
  const auto between = [&](double low, double high) {
    return low * std::pow(high / low, double(random() >> 11) / 9007199254740992.0);
  };
  for (int i = 0; i < 30; ++i) {
    const double z0 = between(40, 500), speed = between(0.6, 1) * kSpeedOfLightMPerS;
    const Constants k{between(0.02, 2),
                      z0 / speed,
                      0,
                      1 / (z0 * speed),
                      between(1, 60),
                      between(1.8e6, 54e6),
                      {between(1, 3000), (i % 3 - 1) * between(1, 1500)}};
    Simulated seen{};
    REQUIRE(simulate(k, false, seen));
    const Complex zin = input_impedance_ohm(line_of(k), k.load_ohm);
    CHECK(own.within(total_loss_db(line_of(k), k.load_ohm), seen.loss_db, 1e-6));
    CHECK(input.within(std::abs(zin - seen.input_ohm) / std::abs(zin), 0, 1e-6));
  }
}

#endif
