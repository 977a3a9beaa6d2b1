// Written by assets/catalogues/make_tables.py from the CSV files beside it. Do not edit.
#include "core/radio/mode.h"

namespace gs::radio {
namespace {


constexpr Mode kModes[] = {
    {"cw", "CW", false,
     0.4, Evidence::second_hand, "FCC OET Bulletin 65 Supplement B, edition 97-01, table 2",
     0.44, Evidence::practice, "22 of the 50 time units of the standard word PARIS carry signal (ITU-R M.1677-1, from memory for the timing): counted"},
    {"ssb", "SSB", false,
     0.2, Evidence::second_hand, "FCC OET Bulletin 65 Supplement B, edition 97-01, table 2, conversational, no speech processing",
     0.4, Evidence::practice, "worked out: mean over peak envelope of a Rayleigh-like voice, 0.886 sqrt(0.20); an assumption"},
    {"ssb_processed", "SSB, processed", false,
     0.5, Evidence::second_hand, "FCC OET Bulletin 65 Supplement B, edition 97-01, table 2, conversational, heavy speech processing; other lists have 0.40, the larger is taken",
     0.63, Evidence::practice, "worked out: 0.886 sqrt(0.50); an assumption"},
    {"data", "Data, full carrier", false,
     1.0, Evidence::second_hand, "FCC OET Bulletin 65 Supplement B, edition 97-01, table 2, FSK, RTTY and AFSK",
     1.0, Evidence::practice, "constant envelope while sending; slotted modes: the share of slots goes into the transmit share"},
    {"fm", "FM", false,
     1.0, Evidence::second_hand, "FCC OET Bulletin 65 Supplement B, edition 97-01, table 2",
     1.0, Evidence::practice, "constant envelope"},
    {"am", "AM, carrier and both sidebands", false,
     0.375, Evidence::practice, "worked out: (1 + m^2/2)/(1 + m)^2 of the peak at full sine modulation, m = 1",
     0.5, Evidence::practice, "worked out: the envelope's mean is the carrier, half of the peak at full modulation"},
    {"carrier", "Carrier, tuning up", false,
     1.0, Evidence::second_hand, "FCC OET Bulletin 65 Supplement B, edition 97-01, table 2",
     1.0, Evidence::practice, "constant envelope"},
};

}  // namespace

std::span<const Mode> modes() { return kModes; }

}  // namespace gs::radio
