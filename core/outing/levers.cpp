#include "core/outing/levers.h"

#include <algorithm>
#include <array>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "core/feedline/cable.h"
#include "core/outing/plan.h"

namespace gs {
namespace {

constexpr Option kTunerOptions[] = {
    {"none", "none"}, {"in_set", "in the set"}, {"outside", "outside, at the radio"}};
constexpr Option kMeasuredAtOptions[] = {{"radio", "the radio"}, {"antenna", "the antenna"}};

std::span<const Option> tuner_options() { return kTunerOptions; }
std::span<const Option> measured_at_options() { return kMeasuredAtOptions; }

std::span<const Option> cable_options() {
  static const std::vector<Option> options = [] {
    std::vector<Option> rows;
    for (const feedline::Cable& cable : feedline::cables()) rows.push_back({cable.key, cable.name, cable.retired});
    return rows;
  }();
  return options;
}

double full_power_of(const Plan& plan) { return plan[L::radio_full_power_w]; }
bool has_measured_swr(const Plan& plan) { return plan.has(L::feedline_measured_swr); }
bool has_feed_r(const Plan& plan) { return plan.has(L::antenna_feed_r_ohm); }
double zero(const Plan&) { return 0; }
double first_option(const Plan&) { return 0; }
double two(const Plan&) { return 2; }
double hundred(const Plan&) { return 100; }

constexpr Lever kLevers[] = {
    {.key = "radio.full_power_w",
     .name = "Radio's full power",
     .link = Link::radio,
     .unit = Unit::watt,
     .digits = 1,
     .least = 0.1,
     .most = 200,
     .step = 1,
     .scale = Scale::log,
     .source = "the set's own data; range: portable HF sets"},
    {.key = "radio.transmit_power_w",
     .name = "Transmit power",
     .link = Link::radio,
     .unit = Unit::watt,
     .digits = 1,
     .least = 0.1,
     .most = 200,
     .step = 1,
     .usual = full_power_of,
     .cap = full_power_of,
     .source = "usual value: the set turned up to its full power"},
    {.key = "radio.tuner",
     .name = "Matching unit",
     .link = Link::radio,
     .kind = Kind::choice,
     .options = tuner_options,
     .usual = first_option,
     .source = "usual value: none is counted on until one is named"},
    {.key = "radio.fold_back_swr",
     .name = "Full power up to SWR",
     .link = Link::radio,
     .digits = 1,
     .least = 1.1,
     .most = 5,
     .step = 0.1,
     .usual = two,
     .source = "solid-state sets hold their power to about 2:1; common practice, from memory"},
    {.key = "antenna.frequency_mhz",
     .name = "Frequency",
     .link = Link::antenna,
     .unit = Unit::megahertz,
     .digits = 3,
     .least = 1.8,
     .most = 54,
     .step = 0.05,
     .scale = Scale::log,
     .source = "range: amateur bands from 160 m to 6 m, ITU Radio Regulations art. 5"},
    {.key = "antenna.feed_r_ohm",
     .name = "Feed-point resistance",
     .link = Link::antenna,
     .unit = Unit::ohm,
     .digits = 1,
     .least = 0.1,
     .most = 10000,
     .step = 1,
     .scale = Scale::log,
     .optional = true,
     .source = "read off an analyser at the antenna, or typed"},
    {.key = "antenna.feed_x_ohm",
     .name = "Feed-point reactance",
     .link = Link::antenna,
     .unit = Unit::ohm,
     .digits = 1,
     .least = -10000,
     .most = 10000,
     .step = 1,
     .usual = zero,
     .applies = has_feed_r,
     .source = "usual value: resonance"},
    {.key = "feedline.cable",
     .name = "Cable",
     .link = Link::feedline,
     .kind = Kind::choice,
     .options = cable_options,
     .source = "the cable catalogue"},
    {.key = "feedline.length_m",
     .name = "Feed line length",
     .link = Link::feedline,
     .unit = Unit::metre,
     .digits = 1,
     .least = 0,
     .most = 100,
     .step = 0.5,
     .source = "range: what one person carries, with room"},
    {.key = "feedline.roll_loss_pct",
     .name = "This roll's loss, of catalogue",
     .link = Link::feedline,
     .unit = Unit::percent,
     .digits = 0,
     .least = 50,
     .most = 1000,
     .step = 5,
     .scale = Scale::log,
     .usual = hundred,
     .source = "usual value: a sound roll has the catalogue's loss"},
    {.key = "feedline.measured_swr",
     .name = "Measured SWR",
     .link = Link::feedline,
     .digits = 1,
     .least = 1,
     .most = 100,
     .step = 0.1,
     .scale = Scale::log,
     .optional = true,
     .source = "read off a meter with the matching unit bypassed"},
    {.key = "feedline.measured_at",
     .name = "Measured at",
     .link = Link::feedline,
     .kind = Kind::choice,
     .options = measured_at_options,
     .usual = first_option,
     .applies = has_measured_swr,
     .source = "usual value: the meter stands at the radio"},
};
static_assert(std::size(kLevers) == std::size_t(L::count), "one row for every enumerator, in the same order");

// Beyond every row. Not L::count: that is where the first limit stands.
constexpr L kNotJudged = L(0xFF);

/// Plain rows, then a limit and an ease row for each judged reading. Names live as long as the table.
struct Table {
  std::vector<Lever> rows{std::begin(kLevers), std::end(kLevers)};
  std::array<L, kReadingCount> limit_of;
  std::vector<std::unique_ptr<std::string>> words;

  std::string_view keep(std::string text) {
    words.push_back(std::make_unique<std::string>(std::move(text)));
    return *words.back();
  }

  Table() {
    limit_of.fill(kNotJudged);
    for (const Limit& limit : limits()) {
      const R id = find_reading(limit.reading_key);
      if (id == R::count) continue;  // a test holds the two tables together
      const Reading& row = reading(id);
      limit_of[std::size_t(id)] = L(rows.size());
      Lever lever{};
      lever.key = keep(std::string(row.key) + ".limit");
      lever.name = keep("Limit of " + std::string(row.name));
      lever.link = row.link;
      lever.unit = row.unit;
      lever.digits = row.digits;
      lever.least = row.unit == Unit::percent ? 0 : std::min(limit.limit, limit.ease) / 10;
      lever.most = row.unit == Unit::percent ? 100 : std::max(limit.limit, limit.ease) * 10;
      lever.step = row.digits > 0 ? 0.1 : 1;
      lever.evidence = limit.evidence;
      lever.source = limit.source;
      rows.push_back(lever);
      lever.key = keep(std::string(row.key) + ".ease");
      lever.name = keep(std::string(row.name) + " at ease");
      rows.push_back(lever);
    }
  }
};

const Table& table() {
  static const Table built;
  return built;
}

}  // namespace

std::size_t lever_count() { return table().rows.size(); }
const Lever& lever(L id) { return table().rows[std::size_t(id)]; }

L find_lever(std::string_view key) {
  const std::vector<Lever>& rows = table().rows;
  const auto at = std::find_if(rows.begin(), rows.end(), [key](const Lever& row) { return row.key == key; });
  return L(at - rows.begin());
}

L limit_lever(R id) { return table().limit_of[std::size_t(id)]; }
L ease_lever(R id) { return L(std::size_t(limit_lever(id)) + 1); }
bool is_judged(R id) { return limit_lever(id) != kNotJudged; }

}  // namespace gs
