// Times of the core, absolute, and the gate as a ratio to a fixed loop of the same run: these machines are noisy.
#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <vector>

#include "core/outing/kit_start.h"
#include "core/outing/trial.h"
#include "core/outing/why.h"

namespace {

/// Median of several runs, seconds a call.
template <class Work>
double seconds_of(int calls, Work work) {
  std::vector<double> runs;
  for (int run = 0; run < 7; ++run) {
    const auto start = std::chrono::steady_clock::now();
    for (int i = 0; i < calls; ++i) work(i);
    const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - start;
    runs.push_back(taken.count() / calls);
  }
  std::nth_element(runs.begin(), runs.begin() + 3, runs.end());
  return runs[3];
}

volatile double sink = 0;  // keeps results alive

}  // namespace

int main() {
  gs::Outing outing;
  const auto set = [&](gs::L id, gs::Value value) { outing.set[std::size_t(id)] = std::move(value); };
  set(gs::L::radio_full_power_w, 100.0);
  set(gs::L::antenna_frequency_mhz, 14.25);
  set(gs::L::feedline_cable, std::string("rg58c"));
  set(gs::L::feedline_length_m, 15.0);
  set(gs::L::feedline_measured_swr, 2.0);
  set(gs::L::battery_chemistry, std::string("lifepo4"));
  set(gs::L::battery_capacity_ah, 20.0);
  set(gs::L::antenna_kind, std::string("inverted_v"));
  set(gs::L::antenna_apex_m, 8.0);
  set(gs::L::antenna_span_m, 20.0);
  set(gs::L::clock_arrive_min, 990.0);
  set(gs::L::clock_leave_by_min, 1160.0);
  // the dearest parts: sun and way of a place, and a kit
  set(gs::L::clock_utc_offset_min, -240.0);
  set(gs::L::site_locator, std::string("FN21"));
  set(gs::L::sky_toward_locator, std::string("EM73"));
  outing.date = "2026-06-13";
  outing.kit = gs::usual_kit(gs::resolve(outing));

  // The yardstick: ten thousand exponentials.
  const double yardstick_s = seconds_of(20, [](int n) {
    double sum = 0;
    for (int i = 0; i < 10000; ++i) sum += std::exp(-1e-4 * (i + n));
    sink = sum;
  });
  const double evaluate_s = seconds_of(200, [&](int n) {
    set(gs::L::feedline_length_m, 10.0 + 0.01 * n);
    sink = gs::evaluate(gs::resolve(outing))[gs::R::feedline_arrives_pct].value;
  });
  // a lead-acid battery and a spare: wells and root finding, three times over for the range
  gs::Outing on_lead = outing;
  on_lead.set[std::size_t(gs::L::battery_chemistry)] = std::string("sealed_lead");
  on_lead.set[std::size_t(gs::L::battery_reserve_pct)] = 10.0;
  on_lead.set[std::size_t(gs::L::spare_capacity_ah)] = 12.0;
  const double lead_s = seconds_of(200, [&](int n) {
    on_lead.set[std::size_t(gs::L::lead_length_m)] = 1.0 + 0.001 * n;
    sink = gs::evaluate(gs::resolve(on_lead))[gs::R::power_runtime_h].value;
  });
  // an obstacle under the wire: the side view's lines are laid out at every evaluation
  gs::Outing over_roof = outing;
  over_roof.set[std::size_t(gs::L::antenna_obstacle_m)] = 3.0;
  over_roof.set[std::size_t(gs::L::antenna_obstacle_high_m)] = 2.0;
  const double roof_s = seconds_of(200, [&](int n) {
    over_roof.set[std::size_t(gs::L::antenna_apex_m)] = 8.0 + 0.01 * n;
    sink = gs::evaluate(gs::resolve(over_roof))[gs::R::antenna_clears_m].value;
  });
  const gs::Plan plan = gs::resolve(outing);
  const double why_s =
      seconds_of(50, [&](int) { sink = double(gs::why(gs::R::feedline_arrives_pct, plan).lines.size()); });
  const double rolls_s = seconds_of(50, [&](int) { sink = double(gs::other_rolls(outing, {}).size()); });

  // One drag step asks for the plan, the pinned one, the other rolls and the words: well inside a 60 Hz frame.
  const double step_s = 2 * evaluate_s + rolls_s + why_s;
  std::printf("yardstick %.1f us, resolve+evaluate %.1f us (%.0f a second), why %.1f us, other rolls %.1f us\n",
              yardstick_s * 1e6, evaluate_s * 1e6, 1 / evaluate_s, why_s * 1e6, rolls_s * 1e6);
  std::printf("lead-acid and a spare %.1f us (%.0f a second), ratio %.2f (limit 2)\n", lead_s * 1e6, 1 / lead_s,
              lead_s / yardstick_s);
  std::printf("an obstacle under the wire %.1f us (%.0f a second), ratio %.2f (limit 2)\n", roof_s * 1e6,
              1 / roof_s, roof_s / yardstick_s);
  std::printf("a drag step %.2f ms; ratios to the yardstick: evaluate %.2f (limit 2), drag step %.1f (limit 60)\n",
              step_s * 1e3, evaluate_s / yardstick_s, step_s / yardstick_s);
  return evaluate_s / yardstick_s < 2 && lead_s / yardstick_s < 2 && roof_s / yardstick_s < 2 &&
                 step_s / yardstick_s < 60
             ? 0
             : 1;
}
