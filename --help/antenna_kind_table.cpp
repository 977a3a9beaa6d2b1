// Written by assets/catalogues/make_tables.py from the CSV files beside it. Do not edit.
#include "core/antenna/kind.h"

namespace gs::antenna {
namespace {


constexpr Kind kKinds[] = {
    {"dipole", "Half-wave dipole", false, Shape::dipole,
     142.6464, Evidence::practice,
     "rule of the trade, 468/f feet for the whole wire: 5 % under half a wave in space, for end effect and surroundings",
     72.0, 72.0, 54.0, 87.0, 0.0, 1.0, 0.0, 1.5, Evidence::memory,
     "72 ohm: thin half-wave wire in resonance in free space, textbooks agree within 8 %; lowest and highest: 0.1 and 0.3 wavelengths above average ground, worked out from the plane-wave spectrum over a half-space",
     2, "both ends hang at apex height; the wire lies along the free span",
     CurrentMaximum::middle,
     15.0, 10.0, Evidence::practice,
     "a throw and a rope at each end, 5 to 10 minutes each"},
    {"inverted_v", "Inverted V", false, Shape::inverted_v,
     142.6464, Evidence::practice,
     "the dipole's rule; bending asks for 1 to 2 % more wire and low ends for as much less",
     60.0, 60.0, 47.0, 75.0, 0.0, 1.0, 0.0, 1.2, Evidence::second_hand,
     "60.4 ohm in free space and 75.2 over average ground at 120 degrees between the legs, a writer's wire model on a mailing list of 2006; 47 ohm at 90 degrees from a wire model of our own",
     1, "middle at apex height; the legs run down along the free span with 90 degrees or more between them",
     CurrentMaximum::middle,
     10.0, 8.0, Evidence::practice,
     "one throw and two stakes"},
    {"end_fed_half_wave", "End-fed half wave", false, Shape::sloper,
     142.6464, Evidence::practice,
     "the dipole's rule; with a counterpoise of a twentieth of a wave the wire itself resonates 1 to 2 % shorter",
     72.0, 2450.0, 1700.0, 3800.0, 0.0, 49.0, 1.0, 1.35, Evidence::second_hand,
     "2450 ohm is what writers' 49:1 transformers are made for, reports run from 1700 to 4000; loss of the transformer 0.4 to 2 dB measured by their builders, 1 dB taken",
     1, "the far end hangs at apex height; the wire slopes to the feed box near the ground along the free span",
     CurrentMaximum::middle,
     8.0, 5.0, Evidence::practice,
     "one throw; feed box on the ground"},
    {"quarter_wave_vertical", "Quarter-wave vertical on the ground", false, Shape::vertical,
     71.3232, Evidence::practice,
     "rule of the trade, 234/f feet for the upright wire",
     36.5, 36.5, 36.5, 96.0, 0.0, 1.0, 0.0, 1.1, Evidence::memory,
     "half the resistance of the dipole of twice the height (image theory); what the radials leave of ground loss comes from their number",
     1, "the wire hangs from apex height; radials lie all round within the free span",
     CurrentMaximum::base,
     10.0, 10.0, Evidence::practice,
     "one throw; unrolling and gathering sixteen radials"},
    {"ground_plane", "Quarter-wave vertical, four raised radials", false, Shape::ground_plane,
     71.3232, Evidence::practice,
     "rule of the trade, 234/f feet for the upright wire and for each raised radial",
     53.0, 53.0, 53.0, 65.0, 7.0, 1.0, 0.0, 1.2, Evidence::second_hand,
     "53 ohm with radials sloping 45 degrees down (wire model of our own, textbooks say about 50); ground loss as of 60 radials on the ground, which four raised ones can equal (measurements of 2009, their summary)",
     1, "the wire hangs from apex height; four radials slope from its foot, ends out of reach",
     CurrentMaximum::base,
     15.0, 10.0, Evidence::practice,
     "one throw and four ties"},
    {"loop", "Full-wave loop", false, Shape::loop,
     306.324, Evidence::practice,
     "rule of the trade, 1005/f feet round the loop",
     125.0, 125.0, 100.0, 140.0, 0.0, 1.0, 0.0, 2.5, Evidence::memory,
     "handbooks print 100 to 130 ohm; 124 to 132 for a square from a wire model of our own; without a transformer or a quarter wave of 75 ohm line",
     1, "top corner at apex height; base line along the free span, out of reach",
     CurrentMaximum::feed_and_opposite,
     20.0, 15.0, Evidence::practice,
     "one throw, two side ties and a long wire to unroll"},
    {"loaded_whip", "Loaded whip on a vehicle", false, Shape::whip,
     0.0, Evidence::practice,
     "not cut to length: the coil brings it to resonance",
     0.0, 0.0, 0.0, 0.0, 0.0, 1.0, 0.0, 1.0, Evidence::practice,
     "radiation, coil and ground are worked out from height, coil Q and ground loss",
     0, "stands on the vehicle; wants a way clear of people and branches, no support",
     CurrentMaximum::base,
     2.0, 2.0, Evidence::practice,
     "screw it on, tune, drive on"},
};

}  // namespace

std::span<const Kind> kinds() { return kKinds; }

}  // namespace gs::antenna
