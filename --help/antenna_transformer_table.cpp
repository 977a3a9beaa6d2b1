// Written by assets/catalogues/make_tables.py from the CSV files beside it. Do not edit.
#include "core/antenna/wires.h"

namespace gs::antenna {
namespace {


constexpr TransformerRow kTransformers[] = {
    {"un64_43_3600", "64:1 on a 61 mm mix-43 ring, 32 turns tapped at 4, 3.6 MHz", false,
     64.0, 0.41, Evidence::second_hand,
     "9 W of 100 lost, a writer's bench: open and short impedances, two-port model"},
    {"un49_resistive", "49:1, resistive load", false,
     49.0, 0.1, Evidence::second_hand,
     "through-loss 17.0 dB where 16.9 is the ratio; a maker's page, core and frequency not given"},
    {"un49_43_small", "49:1, 2-turn primary on a 36 mm mix-43 ring", false,
     49.0, 1.94, Evidence::second_hand,
     "conductance 0.00715 S of 0.02: 36 % into the core, a builder's page"},
    {"un49_43_large", "49:1, 2-turn primary on a 61 mm mix-43 ring", false,
     49.0, 1.49, Evidence::second_hand,
     "conductance 0.00573 S of 0.02: 29 % into the core, the same page"},
    {"un9_usual", "9:1, usual", false,
     9.0, 1.0, Evidence::practice,
     "0.4 dB good, 1 usual, 2 poor"},
    {"bal4_61", "4:1 on a 61 mm mix-61 ring, 12 turns, 1.8 to 30 MHz", false,
     4.0, 0.05, Evidence::second_hand,
     "two back to back lose under 0.5 W of 20: about 1 % each, an owner's bench"},
    {"box_broadband", "Matching box of a broadband 7 m vertical, 3.6 MHz", false,
     6.7, 3.56, Evidence::second_hand,
     "8.4 mW in, 3.7 out into 333 ohm on an owner's bench, although its SWR is good from 13 to 35 MHz"},
};

}  // namespace

std::span<const TransformerRow> transformers() { return kTransformers; }

}  // namespace gs::antenna
