// What the sheet for being on the air shows beside the outlook: pace, what is left, what is late, and whether it is
// drying up.
#pragma once

#include <string>

#include "core/outing/outing_day.h"
#include "core/outing/outlook.h"
#include "core/pace/drying.h"

namespace gs {

/// Local minutes of the outing's date and minutes; NaN where not known, 0 or more otherwise. Contacts as counts.
struct Live {
  Phase phase = Phase::planning;
  double now_min, starts_min, planned_start_min, pack_by_min, leave_by_min;
  double on_air_min;        // so far, pauses and breaks left out
  double left_min;          // on the air, still to come, until packing starts
  double pack_in_min;       // until packing starts, by the clock; 0 when it is time
  double utc_midnight_min;  // local time of the next 00:00 UTC before leave-by; NaN where none comes
  double late_min;          // later on the air than planned
  double late_cost;         // contacts that this costs, at the usual pace
  int counted = 0;          // whole tally
  double counts = 0;        // of them under the counting rule: those of the UTC day that stands best
  int target = 0;
  double last_utc_s;       // of the last press of the tally
  double since_last_min;   // by the clock
  pace::Pace pace;         // as it stands
  pace::PaceRange likely;  // eight in ten
  pace::Drying drying;
  double mah_per_contact;       // so far: average current over the time on the air and the contacts
  double zone_ahead_min = 0;    // the machine's clock stands in another zone by so much
  bool clock_doubtful = false;  // the clock stands before the last contact: it was set back
};
Live live(const Plan& plan, const Outlook& outlook, const Now& now);

/// "It may be drying up: 48 min without a contact. At a steady pace such a wait comes once in 300." "" where
/// nothing is shown.
std::string say_drying(const Live& live, const Style& style);
/// "25 min late: that costs about 3 contacts." "" where it is on time or not known.
std::string say_late(const Live& live, const Style& style);
/// "The clock stands before your last contact: check it. Contacts still count." and the zone's sentence. "" where
/// both agree.
std::string say_clock(const Live& live);

}  // namespace gs
