// Plans made in one line, and the seeded random outings of the property tests.
#pragma once

#include <cmath>
#include <initializer_list>
#include <iterator>
#include <random>
#include <string>
#include <utility>

#include "core/feedline/cable.h"
#include "core/outing/outlook.h"

namespace gs::test {

using Sets = std::initializer_list<std::pair<L, Value>>;

inline Outing outing_of(Sets sets) {
  Outing outing;
  for (const auto& [id, value] : sets) outing = with(std::move(outing), id, value);
  return outing;
}

inline Plan plan_of(Sets sets) { return resolve(outing_of(sets).set); }

/// The same outing with more set.
inline Outing also(Outing outing, Sets sets) {
  for (const auto& [id, value] : sets) outing = with(std::move(outing), id, value);
  return outing;
}

/// An outing with every link known: 100 W in a dipole, 20 Ah, four hours on site.
inline Outing whole_outing() {
  return outing_of({{L::radio_full_power_w, 100.0},
                    {L::battery_chemistry, "lifepo4"},
                    {L::battery_capacity_ah, 20.0},
                    {L::antenna_kind, "dipole"},
                    {L::antenna_frequency_mhz, 14.2},
                    {L::antenna_apex_m, 8.0},
                    {L::antenna_span_m, 25.0},
                    {L::feedline_cable, "rg58c"},
                    {L::feedline_length_m, 15.0},
                    {L::clock_arrive_min, 600.0},
                    {L::clock_leave_by_min, 840.0},
                    {L::rules_class, "extra"},
                    {L::safety_looked_at_lines, "yes"},
                    {L::safety_looked_at_fuse, "yes"},
                    {L::safety_looked_at_coax, "yes"}});
}

/// The share of the catalogue's loss at which this cable has `wanted_db_per_100m`: how a plan says "this line loses
/// that much".
inline double roll_pct_for(const char* cable, double frequency_mhz, double wanted_db_per_100m) {
  return 100 * wanted_db_per_100m / feedline::attenuation_db_per_100m(*feedline::find_cable(cable), frequency_mhz);
}

/// Uniform in [0, 1) from the engine's own bits: the standard's distributions differ between libraries.
inline double unit_of(std::mt19937_64& bits) { return double(bits() >> 11) / 9007199254740992.0; }

/// How often a lever stays unset: often enough where a set one would hide others (an impedance rules over a
/// measured SWR, a transmit power above full power withholds all watts) that every way through the joins is taken.
inline double skip_share(L id) {
  if (id >= L::count) return 0.95;
  if (id == L::radio_transmit_power_w) return 0.6;
  // most feed lines are one roll by the catalogue
  for (const L rare : {L::feedline_second_length_m, L::feedline_plug_pairs, L::feedline_choke_db,
                       L::feedline_own_loss_db, L::feedline_own_second_db})
    if (id == rare) return 0.7;
  return lever(id).optional ? 0.4 : 0.08;
}

/// Readings that answer for power, line and load alone: known without battery, antenna kind, clock or pace. Two of
/// the line's need an impedance.
inline bool of_feedline(R id) {
  if (id == R::feedline_radio_r_ohm || id == R::feedline_radio_x_ohm) return false;
  return reading(id).link == Link::feedline || id == R::radio_turned_down_w || id == R::antenna_swr;
}

/// Every lever, limits and eases too, anywhere in its range or not set.
inline Values random_values(std::mt19937_64& bits) {
  Values set(lever_count());
  for (std::size_t i = 0; i < lever_count(); ++i) {
    const Lever& row = lever(L(i));
    const double skip = unit_of(bits), place = unit_of(bits);
    if (skip < skip_share(L(i))) continue;
    if (row.kind == Kind::choice) {
      const auto options = row.options();
      set[i] = std::string(options[std::size_t(place * double(options.size()))].key);
    } else if (row.kind == Kind::text) {
      constexpr const char* kTexts[] = {"JO31", "jo31QX", "FN42AB17", "RR99xx99", "no place", "ZZ99"};
      set[i] = kTexts[std::size_t(place * double(std::size(kTexts)))];
    } else if (row.scale == Scale::log) {
      set[i] = row.least * std::pow(row.most / row.least, place);
    } else {
      set[i] = row.least + (row.most - row.least) * place;
    }
  }
  return set;
}

}  // namespace gs::test
