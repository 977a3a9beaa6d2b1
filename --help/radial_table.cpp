// Written by assets/catalogues/make_tables.py from the CSV files beside it. Do not edit.
#include "core/antenna/radials.h"

namespace gs::antenna {
namespace {


constexpr RadialRow kRadials[] = {
    {2.0, 59.0, 52.0, 59.0, Evidence::second_hand,
     "4.2 dB under a perfect ground with 2 radials of 0.27 wavelengths, Proc. IRE 25(6), June 1937, as tabulated on a public page; ohms for 36 ohm of radiation"},
    {4.0, 42.0, 20.0, 110.0, Evidence::second_hand,
     "interpolated in the logarithm of the number between 2 and 15 radials of the 1937 paper; a mailing list's field test of 2008 says over 100"},
    {8.0, 30.0, 15.0, 40.0, Evidence::second_hand,
     "interpolated as before; the field test of 2008 says 40"},
    {16.0, 21.0, 11.0, 25.0, Evidence::second_hand,
     "2.1 dB with 15 radials of 0.27 wavelengths in the 1937 paper (22 ohm); a handbook table read second hand has 17 for radials of 0.1 wavelengths"},
    {24.0, 15.0, 11.0, 19.0, Evidence::second_hand,
     "interpolated between 15 and 60 radials of the 1937 paper; handbook table 11"},
    {36.0, 11.0, 8.0, 15.0, Evidence::second_hand,
     "interpolated as before; handbook table 8"},
    {60.0, 7.0, 4.0, 22.0, Evidence::second_hand,
     "0.8 dB with 60 radials of 0.27 wavelengths in the 1937 paper; handbook table 5; 22 with radials of 0.14 wavelengths"},
    {120.0, 5.0, 0.0, 7.0, Evidence::second_hand,
     "113 radials of about a quarter wave lose 0.74 dB by one reading of the paper's figures, 0.18 dB when longer; handbook table 0"},
};

}  // namespace

std::span<const RadialRow> radials() { return kRadials; }

}  // namespace gs::antenna
