#include "core/outing/option_notes.h"

#include <algorithm>
#include <cmath>

#include "core/antenna/kind.h"
#include "core/antenna/length.h"
#include "core/feedline/cable.h"
#include "core/outing/outlook.h"
#include "core/radio/lead.h"

namespace gs {
namespace {

constexpr double kReel_m = 10;  // losses and weights are told for so much of it

bool is_cable(L id) { return id == L::feedline_cable || id == L::feedline_second_cable; }

struct Noted {
  std::string words;
  double rank;  // least first; NaN: after those that have one
};

std::string a_reel(const Style& style) { return " a " + say_quantity(kReel_m, Unit::metre, 0, style); }

Noted cable_note(const feedline::Cable& cable, const Plan& plan, const Style& style) {
  const double mhz = plan[L::antenna_frequency_mhz];
  const double loss_db = mhz > 0 ? feedline::attenuation_db_per_100m(cable, mhz) * kReel_m / 100 : std::nan("");
  std::string words;
  if (std::isfinite(loss_db)) words = say_quantity(loss_db, Unit::decibel, 2, style);
  if (cable.mass_g_per_m > 0)
    words += (words.empty() ? "" : ", ") + say_quantity(cable.mass_g_per_m * kReel_m, Unit::gram, 0, style);
  if (!words.empty()) words += a_reel(style);
  if (!(cable.mass_g_per_m > 0)) words += std::string(words.empty() ? "" : ", ") + "weight not known";
  const bool outside = std::isfinite(loss_db) && (mhz < cable.lowest_mhz || mhz > cable.highest_mhz);
  if (outside) words += ", outside what was tested";
  return {words, loss_db};
}

Noted lead_note(const radio::Wire& wire, const Plan& plan, const Style& style) {
  const double celsius = plan.has(L::lead_temperature_c) ? plan[L::lead_temperature_c] : 20;
  const double ohm_per_m = radio::wire_ohm_per_m(wire.gauge, celsius);
  // out and back, as a lead has two wires
  std::string words = "fuse to " + say_quantity(wire.carries_a, Unit::ampere, 0, style) + ", " +
                      say_quantity(2000 * ohm_per_m, Unit::none, 1, style) + " m\u03A9 a metre of lead";
  return {words, ohm_per_m};
}

Noted kind_note(const antenna::Kind& kind, const Plan& plan, const Style& style) {
  const double mhz = plan[L::antenna_frequency_mhz];
  if (!(mhz > 0) || !(kind.cut_constant_m_mhz > 0)) return {"", std::nan("")};
  return {"cut " + say_quantity(antenna::cut_length_m(kind, mhz), Unit::metre, 2, style), std::nan("")};
}

Noted note_of(const Plan& plan, L id, std::string_view key, const Style& style) {
  if (is_cable(id)) {
    if (const feedline::Cable* cable = feedline::find_cable(key)) return cable_note(*cable, plan, style);
  } else if (id == L::lead_wire) {
    if (const radio::Wire* wire = radio::find_wire(key)) return lead_note(*wire, plan, style);
  } else if (id == L::antenna_kind) {
    if (const antenna::Kind* kind = antenna::find_kind(key)) return kind_note(*kind, plan, style);
  }
  return {"", std::nan("")};
}

std::string lower(std::string_view text) {
  std::string low(text);
  for (char& c : low)
    if (c >= 'A' && c <= 'Z') c = char(c - 'A' + 'a');
  return low;
}

/// Letters and digits alone: who seeks "rg58" finds "RG-58".
std::string bare(std::string_view text) {
  std::string kept;
  for (const char c : text)
    if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || (static_cast<unsigned char>(c) & 0x80) != 0) kept += c;
  return kept;
}

}  // namespace

std::vector<OptionNote> noted_options(const Plan& plan, L id, const Style& style) {
  const Lever& row = lever(id);
  if (row.kind != Kind::choice) return {};
  const std::span<const Option> options = row.options();
  std::vector<std::pair<double, OptionNote>> all;
  for (std::size_t i = 0; i < options.size(); ++i) {
    const bool chosen = plan.has(id) && std::size_t(plan[id]) == i;
    if (options[i].retired && !chosen) continue;
    Noted noted = note_of(plan, id, options[i].key, style);
    all.emplace_back(noted.rank, OptionNote{i, std::move(noted.words)});
  }
  std::stable_sort(all.begin(), all.end(), [](const auto& a, const auto& b) {
    if (std::isnan(a.first) || std::isnan(b.first)) return !std::isnan(a.first) && std::isnan(b.first);
    return a.first < b.first;
  });
  std::vector<OptionNote> notes;
  for (auto& [rank, note] : all) notes.push_back(std::move(note));
  return notes;
}

std::string order_words(const Plan& plan, L id, const Style& style) {
  if (is_cable(id) && plan.has(L::antenna_frequency_mhz))
    return "least loss first, at " +
           say_lever(lever(L::antenna_frequency_mhz), plan[L::antenna_frequency_mhz], style);
  if (id == L::lead_wire) return "thickest first";
  return {};
}

bool found_by(std::string_view sought, std::string_view name, std::string_view words) {
  const std::string all = lower(name) + " " + lower(words), run = bare(all);
  std::string_view rest = sought;
  while (!rest.empty()) {
    const std::size_t space = rest.find(' ');
    const std::string word = lower(rest.substr(0, space));
    rest = space == std::string_view::npos ? std::string_view{} : rest.substr(space + 1);
    if (word.empty() || all.find(word) != std::string::npos) continue;
    const std::string letters = bare(word);
    if (letters.empty() || run.find(letters) == std::string::npos) return false;
  }
  return true;
}

}  // namespace gs
