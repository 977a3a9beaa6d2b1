// Written by assets/catalogues/make_tables.py from the CSV files beside it. Do not edit.
#include "core/outing/table.h"

namespace gs {
namespace {


constexpr Limit kLimits[] = {
    {"feedline.arrives_pct", 50.0, 70.0, "", Evidence::practice,
     "Half the power is 3 dB, half an S-unit at the other end: a line that eats more than that deserves a better cable. From 70 % (1.5 dB, a quarter of an S-unit) nobody hears the difference"},
    {"feedline.swr_at_radio", 3.0, 2.0, "", Evidence::practice,
     "Sets of the trade hold full power to about 2:1 and then turn it down; the matching units built into them reach about 3:1"},
    {"power.spare_min", 0.0, 30.0, "", Evidence::practice,
     "The battery must outlast the time on the air; half an hour more covers a late pack-down and a colder evening"},
    {"power.supply_at_key_down_v", 0.0, 0.3, "radio.minimum_supply_v", Evidence::practice,
     "Below its minimum supply a set distorts or switches off; three tenths of a volt cover an old plug and a cold battery"},
    {"antenna.fits_m", 0.0, 1.0, "", Evidence::practice,
     "A metre more than the wire needs leaves room for knots, sag and a tree that is not where it was paced out"},
    {"antenna.efficiency_pct", 5.0, 50.0, "", Evidence::practice,
     "Half the power radiated is 3 dB; a loaded whip on a low band radiates a few percent and still makes contacts"},
    {"clock.on_air_min", 30.0, 60.0, "", Evidence::practice,
     "Under half an hour on the air is hardly an outing; an hour leaves room for slow bands"},
    {"pace.chance_of_target_pct", 50.0, 80.0, "", Evidence::practice,
     "Even chances are the least one goes out for; likely means 8 in 10"},
    {"safety.left_to_look_at", 1.0, 0.0, "", Evidence::practice,
     "Nothing is safe until somebody looked: power lines overhead, the fuse at the battery, wires underfoot"},
    {"rules.room_khz", 0.0, 0.1, "", Evidence::practice,
     "47 CFR 97.307(b): the whole signal inside; a tenth of a kilohertz covers what sets and their displays are off (common practice)"},
    {"rules.power_pct", 100.0, 90.0, "", Evidence::practice,
     "47 CFR 97.313: at its limit power is still lawful; a tenth less covers what meters of sets are off (common practice)"},
    {"kit.chance_pct", 80.0, 90.0, "", Evidence::practice,
     "One outing in five that ends early for want of a part is the most one puts up with; nine in ten is what a bag with spares of the weak pieces reaches"},
};

}  // namespace

std::span<const Limit> limits() { return kLimits; }

}  // namespace gs
