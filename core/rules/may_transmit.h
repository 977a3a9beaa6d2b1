// May this class transmit here with this mode? The whole signal must lie inside, not the dial alone (47
// CFR 97.307(b)).
#pragma once

#include <vector>

#include "core/rules/bands.h"

namespace gs::rules {

/// A stretch that is open to a class and a mode, and where the dial may stand in it. MHz.
struct Stretch {
  double low_mhz, high_mhz;            // what the signal must keep within
  double dial_low_mhz, dial_high_mhz;  // the two are equal on a fixed channel
};

/// Every stretch wide enough for the signal, from low to high. width_khz > 0; else none. `fm`: the mode is wide
/// frequency modulation, which most of HF forbids.
std::vector<Stretch> stretches(Region region, Class licence, Kind kind, Place place, double width_khz, bool fm);

enum class Why : unsigned char {
  allowed,
  no_band,    // in no amateur band of this Region
  not_class,  // a part of the band that this class does not have
  not_mode,   // this class has the frequency, but not for this mode
  over_edge,  // the dial is inside, a part of the signal is not
};

struct Answer {
  bool allowed;
  Why why;
  double signal_low_mhz, signal_high_mhz;
  /// To the nearest place the dial may stand: how far the dial may still move where allowed, minus how far it must
  /// move where not. kHz.
  double room_khz;
  Stretch nearest;  // the stretch that it is in, or the nearest one; NaN in every member where there is none
};

/// width_khz 0: the mode's own. frequency_mhz > 0 is what the dial shows: the carrier of SSB, the middle of
/// everything centred. Answers for the band edges, segments and emission types of 47 CFR 97.301, 97.303, 97.305
/// and 97.307 as the tables have them; local rules and the licence decide.
Answer may_transmit(Region region, Class licence, double frequency_mhz, const ModeWidth& mode,
                    double width_khz = 0);

/// The same for a licence of another country, of which no table is here: the whole signal within the Region's
/// amateur bands, whatever the mode. Edges: the widest class of 47 CFR 97.301 in that Region. National rules may be
/// narrower.
Answer within_region(Region region, double frequency_mhz, const ModeWidth& mode, double width_khz = 0);

/// And within two edges that a person typed from the own licence. 0 < low_mhz < high_mhz, else nothing is allowed.
Answer within_edges(double low_mhz, double high_mhz, double frequency_mhz, const ModeWidth& mode,
                    double width_khz = 0);

}  // namespace gs::rules
