// Two wells of charge: one that the load draws on, one that only seeps into it. Why lead-acid gives less at a hard
// load, and recovers while one listens.
#pragma once

namespace gs::battery {

/// Kinetic battery model of Manwell and McGowan (Solar Energy 50 (1993) 399). Valid: capacity_ah > 0, rate_per_h >
/// 0, 0 < share <= 1. A share of 1 is a plain tank: charge counting.
struct Wells {
  double capacity_ah;  // both wells, full
  double rate_per_h;   // how fast the two level out: k = k' / (c (1 - c))
  double share;        // of the well that the load draws on: c
};

/// What is in them. charge_ah: both together. lag_ah: by how much the bound well stands higher than the one in use,
/// each over its own share; 0 at rest.
struct WellState {
  double charge_ah, lag_ah = 0;
};

WellState full(const Wells& wells);

/// After `hours` >= 0 at a steady `current_a` (negative: charging), in closed form. Charge is conserved exactly;
/// the well in use may come out below empty, which filling() shows.
WellState after(const Wells& wells, const WellState& state, double current_a, double hours);

double available_ah(const Wells& wells, const WellState& state);
double bound_ah(const Wells& wells, const WellState& state);

/// How full the well in use is: 1 full, 0 or less empty.
double filling(const Wells& wells, const WellState& state);

/// Overs of `sending_a` for `over_h`, pauses at `pause_a` between them, in endless turn. 0 <= share <= 1; over_h >=
/// 0; a share of 0 means that hardly anything is sent: one over now and then.
struct Overs {
  double sending_a, pause_a, share, over_h;
};
double average_a(const Overs& overs);

/// State at the end of the over that ends at `hours` from the start of the first one, or at that first one's end;
/// exact for whole turns, smooth between them: the lower edge of the saw-tooth.
WellState at_over_end(const Wells& wells, const WellState& state, const Overs& overs, double hours);

/// State at the start of an over, once this train of overs has taken `taken_ah` from full wells.
WellState at_over_start(const Wells& wells, const Overs& overs, double taken_ah);

/// Hours until the well in use is down to `least_filling` on that edge, or within the first over; 0 where it starts
/// lower, infinite where nothing is drawn. Root finding on the closed form, within 1e-10 relative.
double hours_to_filling(const Wells& wells, const WellState& state, const Overs& overs, double least_filling);

/// Charge given in `hours` > 0 of a steady load that empties a full pair of wells just then; hours at a steady
/// `current_a` > 0 until they are empty.
double given_ah(const Wells& wells, double hours);
double hours_to_empty(const Wells& wells, double current_a);

}  // namespace gs::battery
