// Written by assets/catalogues/make_tables.py from the CSV files beside it. Do not edit.
#include "core/rules/bands.h"

namespace gs::rules {
namespace {


constexpr ModeWidth kMode_widths[] = {
    {"ssb", "SSB, the usual sideband", Kind::phone, Place::by_band, 3.0,
     Evidence::seen, "width: US amateur Extra question pool 2024-2028, E1A01 and E1A02; sideband: lower below 10 MHz but upper on 60 m, IARU Region 1 HF band plan notes, 47 CFR 97.303(h)(3)"},
    {"usb", "SSB upper", Kind::phone, Place::upper, 3.0,
     Evidence::seen, "US amateur Extra question pool 2024-2028, E1A01"},
    {"lsb", "SSB lower", Kind::phone, Place::lower, 3.0,
     Evidence::seen, "US amateur Extra question pool 2024-2028, E1A02"},
    {"cw", "CW", Kind::cw, Place::centred, 0.15,
     Evidence::seen, "47 CFR 97.303(h): 150HA1A"},
    {"data_usb", "Data through an upper-sideband set", Kind::data, Place::upper, 2.8,
     Evidence::seen, "47 CFR 97.303(h): 2K80J2D; the whole audio range where the real one is not known"},
    {"narrow_data", "Keyboard data, 31 baud, by its own frequency", Kind::data, Place::centred, 0.06,
     Evidence::seen, "47 CFR 97.303(h): 60H0J2B"},
    {"fsk", "FSK, 170 Hz shift, by its middle", Kind::data, Place::centred, 0.304,
     Evidence::seen, "47 CFR 2.202(g): 304HF1B, 100 Bd; slower keying takes less"},
    {"am", "AM", Kind::phone, Place::centred, 6.0,
     Evidence::seen, "47 CFR 2.202(g): 6K00A3E"},
    {"fm", "FM", Kind::phone, Place::centred, 16.0,
     Evidence::seen, "47 CFR 2.202(g): 16K0F3E"},
};

}  // namespace

std::span<const ModeWidth> mode_widths() { return kMode_widths; }

}  // namespace gs::rules
