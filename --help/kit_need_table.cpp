// Written by assets/catalogues/make_tables.py from the CSV files beside it. Do not edit.
#include "core/kit/need.h"

namespace gs::kit {
namespace {


constexpr Need kNeeds[] = {
    {"power", "Power", Need::Grade::vital, "what the set runs on", Evidence::practice, "common practice"},
    {"radio", "Radio", Need::Grade::vital, "the set itself", Evidence::practice, "common practice"},
    {"lead", "DC lead", Need::Grade::vital, "from battery to set, with its fuses", Evidence::practice, "common practice"},
    {"keying", "Speaking or keying", Need::Grade::vital, "microphone or key, with its own lead", Evidence::practice, "common practice"},
    {"feedline", "Feed line", Need::Grade::vital, "from set to antenna, plugs that fit both", Evidence::practice, "common practice"},
    {"antenna", "Antenna", Need::Grade::vital, "the wire or the whip", Evidence::practice, "common practice"},
    {"support", "Support", Need::Grade::vital, "tree and cord, mast, tripod or car", Evidence::practice, "common practice"},
    {"writing", "Plan and tally", Need::Grade::vital, "the plan, the clock and what to count on", Evidence::practice, "common practice"},
    {"ground", "Counterpoise", Need::Grade::wise, "radials of a whip, return wire of an end-fed one", Evidence::practice, "common practice"},
    {"measuring", "Meter", Need::Grade::wise, "shows what the antenna does before the set does", Evidence::practice, "common practice"},
    {"listening", "Courtesy", Need::Grade::wise, "headphones: a park is there for others too", Evidence::practice, "common practice; park rules on noise"},
    {"water", "Water", Need::Grade::safety, "more than one thinks", Evidence::practice, "common practice"},
    {"seat", "Sitting", Need::Grade::wise, "two hours on a stone are long", Evidence::practice, "common practice"},
    {"found", "Being found", Need::Grade::safety, "a note left at home, a whistle, a beacon: there may be no coverage", Evidence::practice, "common practice"},
    {"safety", "First aid", Need::Grade::safety, "plasters, bandage, cold pack for a burn", Evidence::practice, "common practice"},
    {"marking", "Marking", Need::Grade::safety, "bright tape on guys and wire ends", Evidence::practice, "common practice; no official figure was found"},
    {"protection", "Eyes and hands", Need::Grade::safety, "eyes and head whenever a weight is thrown", Evidence::second_hand, "Arborist News, 2005, for helmet and eyes"},
};

}  // namespace

std::span<const Need> needs() { return kNeeds; }

}  // namespace gs::kit
