// Written by assets/catalogues/make_tables.py from the CSV files beside it. Do not edit.
#include "core/safety/caution.h"

namespace gs::safety {
namespace {


constexpr Caution kCautions[] = {
    {"power_lines", Caution::Kind::look, Caution::When::always, "Power lines", "safety.looked_at_lines", "antenna", "look up and all round", "A wire overhead or near?", "Looked, clear", "Wire near", "Look up and all round. Nothing you raise or throw may come within 3.1 m of a wire, not even while it falls. Take every wire as bare and live.",
     Evidence::seen, "US question pool 2022-2026, T0B06: 10 ft; 29 CFR 1926.1408 Table A; Consumer Product Safety Commission release on antennas and power lines, as reprinted"},
    {"fuse", Caution::Kind::look, Caution::When::battery, "Fuse", "safety.looked_at_fuse", "battery radio", "at the battery's end of the lead", "A fuse at the battery?", "Looked, it is there", "No fuse yet", "A fuse sits at the battery's end of the lead, no bigger than the thinnest wire behind it allows. Wire between battery and fuse is not protected: keep it under 18 cm.",
     Evidence::second_hand, "ABYC E-11, 7 in from the battery, as stated by marine surveyors"},
    {"coax", Caution::Kind::look, Caution::When::always, "Coax", "safety.looked_at_coax", "feedline", "whole, tight, off the path", "Feed line whole and off the path?", "Looked, it is", "Not yet", "Look along the whole feed line: jacket whole, plugs tight, none of it across a path, none of it where people sit while you transmit.",
     Evidence::practice, "common practice"},
    {"lightning", Caution::Kind::know, Caution::When::always, "Thunder", "", "antenna contacts clock sky", "into a solid building or a closed metal car", "", "", "", "If you hear thunder you are within its reach. Drop the line, touch no wire, go into a solid building or a closed metal car. Come back 30 minutes after the last thunder.",
     Evidence::second_hand, "US National Weather Service lightning guidance, as reprinted by county and utility pages"},
    {"mast_fall", Caution::Kind::act, Caution::When::mast, "Mast", "safety.done_mast_fall", "antenna", "clear all round as far as the mast is high", "", "", "", "Keep a clear circle as wide as the mast is high, and never step under a mast that is going up or coming down. If it tips towards a wire, let go.",
     Evidence::practice, "common practice; letting go: a utility's safety page"},
    {"rf_touch", Caution::Kind::act, Caution::When::always, "RF burns", "safety.done_rf_touch", "antenna radio", "nobody can touch what radiates", "", "", "", "Nobody can touch wire, whip, loop or its capacitor while you transmit: RF burns go deep. End-fed wires, loaded whips and loops are the worst. Metal near them can burn as well.",
     Evidence::seen, "US question pool 2022-2026, T0C07; US Navy electrician training text on RF burns"},
    {"wire_ends", Caution::Kind::act, Caution::When::always, "Wire ends and tips", "safety.done_wire_ends", "antenna", "bright at eye height, out of reach", "", "", "", "Mark wire ends and whip tips with something bright and soft at eye height, and keep them out of reach: an end carries the highest voltage, and at dusk nobody sees it.",
     Evidence::practice, "common practice; voltage at an end: textbooks of antennas"},
    {"tripping", Caution::Kind::act, Caution::When::always, "Guys and lines", "safety.done_tripping", "antenna feedline", "away from paths, bright tape on them", "", "", "", "Lead feed line, guys and radials away from paths, and hang bright tape on them at knee and eye height. No sharp stakes.",
     Evidence::practice, "common practice; no official figure was found"},
    {"throw_line", Caution::Kind::act, Caution::When::tree, "Throwing", "safety.done_throw_line", "antenna", "helmet, eye protection, nobody in reach", "", "", "", "Helmet and eye protection for whoever throws, nobody else in reach of the weight or under the line. No throwing where a wire is within the line's length and 3.1 m.",
     Evidence::second_hand, "helmet and eyes: Arborist News, 2005; distances: common practice"},
    {"lithium", Caution::Kind::act, Caution::When::battery, "Lithium", "safety.done_lithium", "battery", "no charging below freezing, ends covered", "", "", "", "Do not charge lithium cells below 0 C unless their maker allows it. Keep their terminals covered, and let no swollen or dropped pack come along.",
     Evidence::second_hand, "EVE LF280N specification: charge 0 to 60 C, as quoted; terminals and damage: common practice"},
    {"vehicle", Caution::Kind::act, Caution::When::vehicle, "Whip on a car", "safety.done_vehicle", "antenna", "in the middle of a metal roof", "", "", "", "A whip on a car belongs in the middle of a metal roof. On a boot lid or a plastic roof the people inside are in its field.",
     Evidence::seen, "FCC OET Bulletin 65 Supplement B, p. 4 and footnote 7"},
    {"driving", Caution::Kind::act, Caution::When::vehicle, "Driving", "safety.done_driving", "antenna contacts", "parked, engine off, whip stowed", "", "", "", "Operate parked, engine off, whip stowed before you drive: know its height under bridges and wires. Local law says what a driver may hold.",
     Evidence::practice, "common practice; traffic law differs from place to place"},
    {"hearing", Caution::Kind::act, Caution::When::always, "Hearing", "safety.done_hearing", "contacts radio", "not too loud, one ear free", "", "", "", "At 85 dB(A) ears last 8 hours, at 94 one hour, at 100 a quarter. Keep one ear free for what happens around you.",
     Evidence::seen, "NIOSH recommended limit, Publication 98-126; one ear free: common practice"},
    {"park_rules", Caution::Kind::act, Caution::When::tree, "Park's rules", "safety.done_park_rules", "antenna contacts", "ask before a line or a stake", "", "", "", "Ask before a line goes over a branch or a stake into the ground: some parks forbid it. Smooth rope, no wire on bark, take everything away.",
     Evidence::seen, "36 CFR 2.1(a)(1)(ii) and a county park code; handling: common practice"},
};

}  // namespace

std::span<const Caution> cautions() { return kCautions; }

}  // namespace gs::safety
