// Putting charge back: how long, from what, and whether the cold allows it.
#pragma once

#include "core/battery/chemistry.h"

namespace gs::battery {

/// The bulk at full current, and the slow tail after it. Lithium may be used before the tail; lead-acid needs it.
struct ChargeTime {
  double bulk_h, tail_h;
};

/// Time to put `missing_ah` >= 0 back with `charger_a` > 0: missing x the chemistry's charge factor over the
/// current, then its tail (none when nothing is missing). A charger of 0 A takes for ever (infinite bulk). Source:
/// constant current, then constant voltage; factor and tail of the row.
ChargeTime charge_time(const Chemistry& chemistry, double missing_ah, double charger_a);

/// Average current that a panel puts into a pack: rated watts times the share that it really gives, over the pack's
/// voltage. panel_w >= 0, gives_pct >= 0, pack_v > 0.
double panel_current_a(double panel_w, double gives_pct, double pack_v);

/// Largest charging current per Ah of capacity at this cell temperature: 0 at and below the chemistry's charging
/// limit, a gentle rate in the cool, then its usual most. No upper temperature limit is kept: 45 C for most packs.
double most_charge_a_per_ah(const Chemistry& chemistry, double temperature_c);

/// Health in percent of its label with which a pack just makes a discharge test by the plan's own law: steady
/// `current_a` > 0 for `hours` >= 0 from full to the chemistry's empty voltage. May pass 100, at most 400; 0 for no
/// time.
double health_from_test_pct(const Chemistry& chemistry, double label_ah, double current_a, double hours,
                            double temperature_c);

}  // namespace gs::battery
