// Written by assets/catalogues/make_tables.py from the CSV files beside it. Do not edit.
#include "core/radio/current.h"

namespace gs::radio {
namespace {


constexpr RadioClass kRadio_classes[] = {
    {"w5", 5.0, 0.2, 0.4, 2.0, Evidence::practice, "full power: a vendor's article has around 2 A at 5 W, an owner 1.95 A; receive 0.03 to 0.55 A measured by owners; idle from the 100 W class's ratio"},
    {"w10", 10.0, 0.3, 0.5, 2.6, Evidence::practice, "receive 0.14 to 0.55 A measured by owners; transmit current of this class was not found: between the neighbours"},
    {"w20", 20.0, 0.5, 0.8, 5.0, Evidence::practice, "common practice: no measured set found"},
    {"w50", 50.0, 0.8, 1.6, 10.0, Evidence::practice, "common practice: no measured set found"},
    {"w100", 100.0, 1.1, 3.24, 19.45, Evidence::seen, "an owner's bench, 13.8 V, 7 MHz carrier into 50 ohm, the middle one of three sets; fitted to 5, 20, 50 and 100 W"},
};

}  // namespace

std::span<const RadioClass> radio_classes() { return kRadio_classes; }

}  // namespace gs::radio
