// Outside check values of the rules link.
#pragma once

#include "core/evidence.h"
#include "core/rules/may_transmit.h"

namespace gs::test {

/// One signal and whether the rules allow it. Read off the text of 47 CFR 97.301, 97.303, 97.305 and 97.307
/// (2026-09-23, seen) by hand, apart from this code; the first eight hold the question pool's own (US Amateur Extra
/// 2024-2028, E1A01 to E1A04, seen).
struct SignalRow {
  rules::Class licence;
  rules::Region region;
  double dial_mhz;
  const char* mode;
  double width_khz, low_mhz, high_mhz;
  bool allowed;
};
using rules::Class;
using rules::Region;
inline constexpr SignalRow kSignals[] = {
    // clang-format off
    {Class::extra, Region::two, 14.34800, "usb", 3.0, 14.348000, 14.351000, false},
    {Class::extra, Region::two, 14.34700, "usb", 3.0, 14.347000, 14.350000, true},
    {Class::extra, Region::two, 14.34900, "usb", 3.0, 14.349000, 14.352000, false},
    {Class::extra, Region::two, 14.34720, "usb", 2.8, 14.347200, 14.350000, true},
    {Class::extra, Region::two, 14.14720, "data_usb", 2.8, 14.147200, 14.150000, true},
    {Class::extra, Region::two, 14.14730, "data_usb", 2.8, 14.147300, 14.150100, false},
    {Class::extra, Region::two, 3.60100, "lsb", 3.0, 3.598000, 3.601000, false},
    {Class::extra, Region::two, 3.60300, "lsb", 3.0, 3.600000, 3.603000, true},
    {Class::extra, Region::two, 7.12700, "lsb", 3.0, 7.124000, 7.127000, false},
    {Class::extra, Region::two, 7.12800, "lsb", 3.0, 7.125000, 7.128000, true},
    {Class::general, Region::two, 7.17600, "lsb", 3.0, 7.173000, 7.176000, false},
    {Class::general, Region::two, 7.17800, "lsb", 3.0, 7.175000, 7.178000, true},
    {Class::general, Region::two, 14.22400, "usb", 3.0, 14.224000, 14.227000, false},
    {Class::general, Region::two, 14.22500, "usb", 3.0, 14.225000, 14.228000, true},
    {Class::general, Region::two, 14.28500, "usb", 2.8, 14.285000, 14.287800, true},
    {Class::general, Region::two, 3.80200, "lsb", 3.0, 3.799000, 3.802000, false},
    {Class::general, Region::two, 3.80300, "lsb", 3.0, 3.800000, 3.803000, true},
    {Class::general, Region::two, 3.98500, "lsb", 3.0, 3.982000, 3.985000, true},
    {Class::general, Region::two, 21.44800, "usb", 3.0, 21.448000, 21.451000, false},
    {Class::general, Region::two, 21.44700, "usb", 3.0, 21.447000, 21.450000, true},
    {Class::general, Region::two, 18.10900, "usb", 3.0, 18.109000, 18.112000, false},
    {Class::general, Region::two, 18.16500, "usb", 3.0, 18.165000, 18.168000, true},
    {Class::general, Region::two, 18.16600, "usb", 3.0, 18.166000, 18.169000, false},
    {Class::general, Region::two, 24.98800, "usb", 3.0, 24.988000, 24.991000, false},
    {Class::general, Region::two, 10.12000, "usb", 2.8, 10.120000, 10.122800, false},
    {Class::general, Region::two, 10.12000, "cw", 0.15, 10.119925, 10.120075, true},
    {Class::general, Region::two, 10.13600, "data_usb", 2.8, 10.136000, 10.138800, true},
    {Class::general, Region::two, 10.14800, "data_usb", 2.8, 10.148000, 10.150800, false},
    {Class::general, Region::two, 14.02500, "cw", 0.15, 14.024925, 14.025075, false},
    {Class::general, Region::two, 14.02510, "cw", 0.15, 14.025025, 14.025175, true},
    {Class::general, Region::two, 14.06000, "cw", 0.15, 14.059925, 14.060075, true},
    {Class::extra, Region::two, 14.00005, "cw", 0.15, 13.999975, 14.000125, false},
    {Class::technician, Region::two, 28.49700, "usb", 3.0, 28.497000, 28.500000, true},
    {Class::technician, Region::two, 28.49800, "usb", 3.0, 28.498000, 28.501000, false},
    {Class::technician, Region::two, 7.06000, "cw", 0.15, 7.059925, 7.060075, true},
    {Class::technician, Region::two, 14.06000, "cw", 0.15, 14.059925, 14.060075, false},
    {Class::technician, Region::two, 7.07400, "data_usb", 2.8, 7.074000, 7.076800, false},
    {Class::technician, Region::two, 28.07400, "data_usb", 2.8, 28.074000, 28.076800, true},
    {Class::general, Region::two, 5.36370, "usb", 2.8, 5.363700, 5.366500, true},
    {Class::general, Region::two, 5.36400, "usb", 2.8, 5.364000, 5.366800, false},
    {Class::general, Region::two, 1.80300, "lsb", 3.0, 1.800000, 1.803000, true},
    {Class::general, Region::two, 1.80200, "lsb", 3.0, 1.799000, 1.802000, false},
    {Class::general, Region::two, 50.12500, "usb", 3.0, 50.125000, 50.128000, true},
    {Class::general, Region::two, 50.09900, "usb", 3.0, 50.099000, 50.102000, false},
    {Class::general, Region::two, 29.69100, "fm", 16.0, 29.683000, 29.699000, true},
    {Class::general, Region::two, 29.69300, "fm", 16.0, 29.685000, 29.701000, false},
    {Class::general, Region::one, 3.79000, "lsb", 3.0, 3.787000, 3.790000, false},
    {Class::extra, Region::one, 7.19800, "lsb", 3.0, 7.195000, 7.198000, true},
    {Class::extra, Region::one, 7.20200, "lsb", 3.0, 7.199000, 7.202000, false},
    {Class::general, Region::three, 3.89000, "lsb", 3.0, 3.887000, 3.890000, true},
    {Class::extra, Region::two, 3.99900, "am", 6.0, 3.996000, 4.002000, false},
    {Class::extra, Region::two, 3.88500, "am", 6.0, 3.882000, 3.888000, true},
    // clang-format on
};

/// Voice segments and dial ranges of Region 2, from the same text, 3.0 kHz wide (60 m 2.8).
struct VoiceRow {
  rules::Class licence;
  const char *band, *mode;
  double low_mhz, high_mhz, dial_low_mhz, dial_high_mhz;
};
inline constexpr VoiceRow kVoice[] = {
    // clang-format off
    {Class::extra, "160m", "lsb", 1.8000, 2.0000, 1.8030, 2.0000},
    {Class::extra, "75m", "lsb", 3.6000, 4.0000, 3.6030, 4.0000},
    {Class::extra, "60m", "usb", 5.3515, 5.3665, 5.3515, 5.3637},
    {Class::extra, "40m", "lsb", 7.1250, 7.3000, 7.1280, 7.3000},
    {Class::extra, "20m", "usb", 14.1500, 14.3500, 14.1500, 14.3470},
    {Class::extra, "17m", "usb", 18.1100, 18.1680, 18.1100, 18.1650},
    {Class::extra, "15m", "usb", 21.2000, 21.4500, 21.2000, 21.4470},
    {Class::extra, "12m", "usb", 24.9300, 24.9900, 24.9300, 24.9870},
    {Class::extra, "10m", "usb", 28.3000, 29.7000, 28.3000, 29.6970},
    {Class::extra, "6m", "usb", 50.1000, 54.0000, 50.1000, 53.9970},
    {Class::extra, "2m", "usb", 144.1000, 148.0000, 144.1000, 147.9970},
    {Class::advanced, "160m", "lsb", 1.8000, 2.0000, 1.8030, 2.0000},
    {Class::advanced, "75m", "lsb", 3.7000, 4.0000, 3.7030, 4.0000},
    {Class::advanced, "60m", "usb", 5.3515, 5.3665, 5.3515, 5.3637},
    {Class::advanced, "40m", "lsb", 7.1250, 7.3000, 7.1280, 7.3000},
    {Class::advanced, "20m", "usb", 14.1750, 14.3500, 14.1750, 14.3470},
    {Class::advanced, "17m", "usb", 18.1100, 18.1680, 18.1100, 18.1650},
    {Class::advanced, "15m", "usb", 21.2250, 21.4500, 21.2250, 21.4470},
    {Class::advanced, "12m", "usb", 24.9300, 24.9900, 24.9300, 24.9870},
    {Class::advanced, "10m", "usb", 28.3000, 29.7000, 28.3000, 29.6970},
    {Class::advanced, "6m", "usb", 50.1000, 54.0000, 50.1000, 53.9970},
    {Class::advanced, "2m", "usb", 144.1000, 148.0000, 144.1000, 147.9970},
    {Class::general, "160m", "lsb", 1.8000, 2.0000, 1.8030, 2.0000},
    {Class::general, "75m", "lsb", 3.8000, 4.0000, 3.8030, 4.0000},
    {Class::general, "60m", "usb", 5.3515, 5.3665, 5.3515, 5.3637},
    {Class::general, "40m", "lsb", 7.1750, 7.3000, 7.1780, 7.3000},
    {Class::general, "20m", "usb", 14.2250, 14.3500, 14.2250, 14.3470},
    {Class::general, "17m", "usb", 18.1100, 18.1680, 18.1100, 18.1650},
    {Class::general, "15m", "usb", 21.2750, 21.4500, 21.2750, 21.4470},
    {Class::general, "12m", "usb", 24.9300, 24.9900, 24.9300, 24.9870},
    {Class::general, "10m", "usb", 28.3000, 29.7000, 28.3000, 29.6970},
    {Class::general, "6m", "usb", 50.1000, 54.0000, 50.1000, 53.9970},
    {Class::general, "2m", "usb", 144.1000, 148.0000, 144.1000, 147.9970},
    {Class::technician, "10m", "usb", 28.3000, 28.5000, 28.3000, 28.4970},
    {Class::technician, "6m", "usb", 50.1000, 54.0000, 50.1000, 53.9970},
    {Class::technician, "2m", "usb", 144.1000, 148.0000, 144.1000, 147.9970},
    // clang-format on
};

}  // namespace gs::test
