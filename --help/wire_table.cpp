// Written by assets/catalogues/make_tables.py from the CSV files beside it. Do not edit.
#include "core/radio/lead.h"

namespace gs::radio {
namespace {


constexpr Wire kWires[] = {
    {"awg24", "AWG 24", false, 24, 2.0, Evidence::practice, "half of AWG 18 and less: from memory, signal wire"},
    {"awg22", "AWG 22", false, 22, 3.0, Evidence::practice, "half of AWG 18 and less: from memory, signal wire"},
    {"awg20", "AWG 20", false, 20, 5.0, Evidence::practice, "half of AWG 18 and less: from memory, signal wire"},
    {"awg18", "AWG 18", false, 18, 10.0, Evidence::memory, "ABYC E-11, allowable amperage, insulation for 60 C, single conductors outside engine spaces; from memory"},
    {"awg16", "AWG 16", false, 16, 15.0, Evidence::memory, "ABYC E-11, allowable amperage, insulation for 60 C, single conductors outside engine spaces; from memory"},
    {"awg14", "AWG 14", false, 14, 20.0, Evidence::memory, "ABYC E-11, allowable amperage, insulation for 60 C, single conductors outside engine spaces; from memory"},
    {"awg12", "AWG 12", false, 12, 25.0, Evidence::memory, "ABYC E-11, allowable amperage, insulation for 60 C, single conductors outside engine spaces; from memory"},
    {"awg10", "AWG 10", false, 10, 40.0, Evidence::memory, "ABYC E-11, allowable amperage, insulation for 60 C, single conductors outside engine spaces; from memory"},
    {"awg8", "AWG 8", false, 8, 55.0, Evidence::memory, "ABYC E-11, allowable amperage, insulation for 60 C, single conductors outside engine spaces; from memory"},
    {"awg6", "AWG 6", false, 6, 80.0, Evidence::memory, "ABYC E-11, allowable amperage, insulation for 60 C, single conductors outside engine spaces; from memory"},
    {"awg4", "AWG 4", false, 4, 105.0, Evidence::memory, "ABYC E-11, allowable amperage, insulation for 60 C, single conductors outside engine spaces; from memory"},
};

}  // namespace

std::span<const Wire> wires() { return kWires; }

}  // namespace gs::radio
