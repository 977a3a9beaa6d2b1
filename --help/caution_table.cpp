// Written by assets/catalogues/make_tables.py from the CSV files beside it. Do not edit.
#include "core/safety/caution.h"

namespace gs::safety {
namespace {


constexpr Caution kCautions[] = {
    {"power_lines", Caution::Kind::look, Caution::When::always, "Look up and all round. Nothing you raise or throw may come within 3.1 m of a wire, not even while it falls. Take every wire as bare and live.",
     Evidence::seen, "US question pool 2022-2026, T0B06: 10 ft; 29 CFR 1926.1408 Table A; Consumer Product Safety Commission release on antennas and power lines, as reprinted"},
    {"fuse", Caution::Kind::look, Caution::When::battery, "A fuse sits at the battery's end of the lead, no bigger than the thinnest wire behind it allows. Wire between battery and fuse is not protected: keep it under 18 cm.",
     Evidence::second_hand, "ABYC E-11, 7 in from the battery, as stated by marine surveyors"},
    {"coax", Caution::Kind::look, Caution::When::always, "Look along the whole feed line: jacket whole, plugs tight, none of it across a path, none of it where people sit while you transmit.",
     Evidence::practice, "common practice"},
    {"lightning", Caution::Kind::know, Caution::When::always, "If you hear thunder you are within its reach. Drop the line, touch no wire, go into a solid building or a closed metal car. Come back 30 minutes after the last thunder.",
     Evidence::second_hand, "US National Weather Service lightning guidance, as reprinted by county and utility pages"},
    {"mast_fall", Caution::Kind::act, Caution::When::mast, "Keep a clear circle as wide as the mast is high, and never step under a mast that is going up or coming down. If it tips towards a wire, let go.",
     Evidence::practice, "common practice; letting go: a utility's safety page"},
    {"rf_touch", Caution::Kind::act, Caution::When::always, "Nobody can touch wire, whip, loop or its capacitor while you transmit: RF burns go deep. End-fed wires, loaded whips and loops are the worst. Metal near them can burn as well.",
     Evidence::seen, "US question pool 2022-2026, T0C07; US Navy electrician training text on RF burns"},
    {"tripping", Caution::Kind::act, Caution::When::always, "Lead feed line, guys and radials away from paths, and hang bright tape on them at knee and eye height. No sharp stakes.",
     Evidence::practice, "common practice; no official figure was found"},
    {"throw_line", Caution::Kind::act, Caution::When::tree, "Helmet and eye protection for whoever throws, nobody else in reach of the weight or under the line. No throwing where a wire is within the line's length and 3.1 m.",
     Evidence::second_hand, "helmet and eyes: Arborist News, 2005; distances: common practice"},
    {"lithium", Caution::Kind::act, Caution::When::battery, "Do not charge lithium cells below 0 C unless their maker allows it. Keep their terminals covered, and let no swollen or dropped pack come along.",
     Evidence::second_hand, "EVE LF280N specification: charge 0 to 60 C, as quoted; terminals and damage: common practice"},
    {"vehicle", Caution::Kind::act, Caution::When::vehicle, "A whip on a car belongs in the middle of a metal roof. On a boot lid or a plastic roof the people inside are in its field.",
     Evidence::seen, "FCC OET Bulletin 65 Supplement B, p. 4 and footnote 7"},
    {"hearing", Caution::Kind::act, Caution::When::always, "At 85 dB(A) ears last 8 hours, at 94 one hour, at 100 a quarter. Keep one ear free for what happens around you.",
     Evidence::seen, "NIOSH recommended limit, Publication 98-126; one ear free: common practice"},
    {"park_rules", Caution::Kind::act, Caution::When::tree, "Ask before a line goes over a branch or a stake into the ground: some parks forbid it. Smooth rope, no wire on bark, take everything away.",
     Evidence::seen, "36 CFR 2.1(a)(1)(ii) and a county park code; handling: common practice"},
};

}  // namespace

std::span<const Caution> cautions() { return kCautions; }

}  // namespace gs::safety
