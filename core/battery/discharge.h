// A pack on the air: overs and pauses drain it, key-down tests it, and the first of four ends stops it. State goes
// from one stretch to the next, so that an outing may change its power, mode or battery on the way.
#pragma once

#include "core/battery/kinetic.h"
#include "core/battery/pack.h"

namespace gs::battery {

/// How well the pack and the figures are taken to be: as the catalogue has them, at the worse end of its spread, or
/// at the better.
enum class Luck : unsigned char { usual, worse, better };

/// A pack's law with everything about it worked in: health, temperature, spread. Plain numbers, cheap to copy.
struct Law {
  const Chemistry* chemistry;
  Wells wells;  // share 1 where charge is counted
  double quick_ohm, slow_ohm, fixed_ohm;
  double resting_offset_v;
  Pack pack;  // with the spread on its health
};

/// Pack as in pack.h.
Law law_of(const Pack& pack, Luck luck = Luck::usual);

/// One stretch of operating. Valid: 0 <= pause_a, sending_a; key_down_a >= sending_a; 0 <= share <= 1; over_h >= 0;
/// lead_ohm >= 0, from the terminals to the set and back.
struct Load {
  double pause_a, sending_a, key_down_a, share, over_h, lead_ohm;
};
double average_a(const Load& load);

/// What the pack takes to the air: full, less pack.used_ah, taken at this load just before.
WellState at_start(const Law& law, const Load& load);

/// What stops it. minimum_supply_v: at the set; cut_off_v: at the terminals, where cells are spoilt or their
/// protection opens; most_a: what the pack may give.
struct Floors {
  double minimum_supply_v, cut_off_v, most_a;
};
enum class EndBy : unsigned char { reserve, minimum_supply, cut_off, current_limit };
struct End {
  double hours;
  EndBy by;
  double by_reserve_h;  // until the reserve is reached, whatever else stops it before
};

/// Hours of this stretch until something stops it, from `state`. Infinite where nothing is drawn and all is above
/// its floor. The average drains charge, the peak tests the voltage at the end of each over. The reserve counts
/// from the capacity at this health and temperature; where charge is counted, from the capacity at this load.
End end_of(const Law& law, const WellState& state, const Load& load, const Floors& floors);

/// The same current all the time, through no lead.
Load steady(double current_a);

/// What counts as the whole pack at this load, and its state of charge in percent by. Counted chemistries: health,
/// temperature and the rate curve at the average (Sunland, Samsung sheets in the catalogue). Lead-acid: health and
/// temperature; what a hard load leaves behind comes out of the wells.
double counts_as_ah(const Law& law, const Load& load);

/// Hours until a rested pack is at its reserve or empty (lead-acid: at its empty voltage), whatever the set needs.
double hours_alone(const Pack& pack, const Load& load);

/// Charge that it gives in that time: 0 when it is used up, all that may be taken where nothing is drawn. Never
/// rises with a steady load.
double usable_ah(const Pack& pack, const Load& load);

/// The smallest label that lasts `hours` at this load, the rest of `pack` as it is; its capacity_ah does not
/// matter. Within 1e-9 relative. 0 where nothing is drawn or no time asked for, and nothing used.
double needed_label_ah(const Pack& pack, const Load& load, double hours);

/// After `hours` of the stretch, on average over its overs.
WellState after(const Law& law, const WellState& state, const Load& load, double hours);

/// Volts at the terminals, >= 0: at rest for long (levels even); while nothing is sent; and at key-down at the end
/// of an over, `hours` into a stretch that began with `state`.
double rested_v(const Law& law, const WellState& state);
double paused_v(const Law& law, const WellState& state, const Load& load);
double key_down_v(const Law& law, const WellState& state, const Load& load, double hours);

/// State of charge of a rested pack that stands at `v`, in percent, 0..100: rested_v() the other way round.
double left_at_rest_pct(const Law& law, double v);

/// Charge left of what the pack gives at this load, in percent, 0..100.
double left_pct(const Law& law, const WellState& state, const Load& load);

/// Whether this load lies outside what the law was tested on: hotter or colder than its tables, harder than their
/// shortest time, or a floor above the voltages that makers tabulate.
bool outside_tested(const Law& law, const Load& load, const Floors& floors);

}  // namespace gs::battery
