// The parts that evaluate() is made of: each fills in the readings of its links from the plan and from what joins
// them.
#pragma once

#include <initializer_list>
#include <vector>

#include "core/outing/outing_day.h"
#include "core/outing/outlook.h"

namespace gs {

struct Doubtful {
  Doubt doubt = Doubt::none;
  L culprit = L::count;
};

/// What more than one link needs to know of another. NaN: not known, with the reason beside it.
struct Joined {
  Now now;
  FeedlineJoin line;
  double leaves_w;  // power that the radio lets go
  Doubtful no_watts;
  double to_antenna_w;                         // largest power that may arrive, for exposure
  double starts_min, pack_by_min, on_air_min;  // clock
  Doubtful no_clock;
  OutingDay day;
  std::vector<Stretch> stretches;  // on the air, past and to come, in order of time; on_air_min is their sum
  double average_a;                // from the battery
  double runtime_min;              // until the battery ends the outing
  L ends_by;                       // the lever that ends it then
  Doubtful no_power;
};

/// A stint's own plan on the way through the links; evaluate_stints.cpp.
struct StintJoin {
  int stint;
  const Plan* plan;
  Joined joined;
  Outlook out;
};
/// Joins the feed line of every stint that the outing is on the air in, and notes in the stretches what power
/// leaves the radio.
std::vector<StintJoin> begin_stints(Joined& joined);
/// Feed line, antenna, safety and rules stand for the whole outing: where a stint's figure is worse, or not known,
/// it takes the plan's place and says which stint it is.
void end_stints(std::vector<StintJoin>& stints, Outlook& out);

inline void put(Outlook& out, R id, const Figure& figure) { out.at[std::size_t(id)] = figure; }
inline void withhold(Outlook& out, std::initializer_list<R> ids, Doubtful why) {
  for (const R id : ids) put(out, id, unknown(why.doubt, why.culprit));
}
/// The first of these levers that is missing; Doubt::none when all are there.
Doubtful first_missing(const Plan& plan, std::initializer_list<L> needed);
/// A judged figure with what it may be.
Figure ranged(const Plan& plan, R id, double value, double one_end, double other_end);

void put_clock(const Plan& plan, Joined& joined, Outlook& out);
void put_feedline(const Plan& plan, Joined& joined, Outlook& out);
void put_power(const Plan& plan, Joined& joined, Outlook& out);
void put_antenna(const Plan& plan, Joined& joined, Outlook& out);
void put_sky(const Plan& plan, const Joined& joined, Outlook& out);
void put_pace(const Plan& plan, Joined& joined, Outlook& out);
void put_safety(const Plan& plan, Joined& joined, Outlook& out);
void put_rules(const Plan& plan, const Joined& joined, Outlook& out);
void put_kit(const Plan& plan, Outlook& out);
/// What rests on the watts that arrive, or on those that the set lets go behind this line, rests on the cable's law
/// too: outside its tested range they say so.
void carry_line_doubt(const Joined& joined, Outlook& out);

}  // namespace gs
