// Battery chemistries of packs sold for 12 V sets, and the curves their behaviour is read off.
#pragma once

#include <span>
#include <string_view>

#include "core/evidence.h"

namespace gs::battery {

/// One published point of a curve.
struct CurvePoint {
  double x, y;
  Evidence evidence;
  std::string_view source;
};

/// Straight between points, flat outside them. `x` must be finite. The catalogue's curves have at least one point
/// and never turn back.
double at(std::span<const CurvePoint> curve, double x);

/// The x at which a rising curve stands at `y`: the ends outside its range, the lower x of a flat piece.
double where(std::span<const CurvePoint> curve, double y);

/// Wells and voltage of a chemistry whose charge cannot simply be counted, as parts of the label's ampere-hours.
/// Voltage at the terminals, with s the filling of the well in use: full_v - slope (1 - s) - bend (1/s - 1) - I R.
struct KineticLaw {
  double capacity_per_label, rate_per_h, share;
  double full_v, slope_v, bend_v;
  Evidence evidence;
  std::string_view source;
};

/// How far a pack of this chemistry may stand from the row: factors on capacity and resistance, volts on the
/// resting voltage of the whole pack.
struct Spread {
  double capacity_low, capacity_high, resistance_low, resistance_high, resting_low_v, resting_high_v;
  Evidence evidence;
  std::string_view source;
};

/// One catalogue row. Voltages are those of the whole pack.
struct Chemistry {
  std::string_view key;  // kept for ever: outing files hold it
  std::string_view name;
  bool retired;  // no longer offered, still read from old files
  double cells, nominal_v;
  double empty_v;            // below this the pack is flat or its protection opens
  double usual_reserve_pct;  // what is commonly left in
  double quick_mohm_ah;      // resistance of a 1 Ah pack against a key-down of seconds
  double slow_mohm_ah;       // what a load that lasts adds to it; nothing where there are wells
  double fixed_mohm;         // protection board and terminals, whatever the size
  double most_discharge_a_per_ah;
  double charge_from_c;   // at and below this it must not be charged
  double gentle_below_c;  // colder than this only at the gentle rate
  double gentle_charge_a_per_ah, most_charge_a_per_ah;
  double charge_factor;  // charge to be put in over charge taken out
  double charge_tail_h;  // the slow last part after the charger's full current
  Evidence pack_evidence;
  std::string_view pack_source;
  Evidence reserve_evidence;
  std::string_view reserve_source;
  Evidence resistance_evidence;
  std::string_view resistance_source;
  Evidence discharge_evidence;
  std::string_view discharge_source;
  Evidence charge_evidence;
  std::string_view charge_source;
  std::span<const CurvePoint> resting_v;         // x: charge left, %; 0 to 100. Empty where there are wells
  std::span<const CurvePoint> capacity_at_c;     // x: C; y: share of the capacity at 25 C
  std::span<const CurvePoint> capacity_at_rate;  // x: A per Ah; y: share of the label. Empty where there are wells
  std::span<const CurvePoint> resistance_at_c;   // x: C; y: times the resistance at 25 C
  const KineticLaw* kinetic;                     // null: charge is counted
  Spread spread;
};

/// All rows, retired ones included, in catalogue order.
std::span<const Chemistry> chemistries();
/// The row with this key, or null.
const Chemistry* find_chemistry(std::string_view key);

}  // namespace gs::battery
