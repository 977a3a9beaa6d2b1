// The kinds of antenna that people carry to a park: catalogue rows.
#pragma once

#include <span>
#include <string_view>

#include "core/evidence.h"

namespace gs::antenna {

/// How a kind hangs; rigging.h says what each needs.
enum class Shape : unsigned char {
  dipole,
  inverted_v,
  sloping_dipole,
  sloper,
  inverted_l,
  vertical,
  ground_plane,
  loop,
  whip
};

/// Where the current, and so most of the magnetic field, is strongest.
enum class CurrentMaximum : unsigned char { middle, base, feed_and_opposite };

/// One catalogue row (assets/catalogues/antenna-kinds.csv).
struct Kind {
  std::string_view key;   // kept for ever: outing files hold it
  std::string_view name;  // what people call it
  bool retired;           // no longer offered, still read from old files
  Shape shape;
  double cut_constant_m_mhz;  // length x frequency of the trade's rule; 0 where no length is resonant by itself
  Evidence cut_evidence;
  std::string_view cut_source;
  double radiation_ohm;  // at the current maximum, in resonance; 0 for a whip, whose own is worked out (whip.h)
  double feed_ohm, feed_lowest_ohm,
      feed_highest_ohm;  // of the antenna itself before any transformer, no wire loss; 0: any length has its own
  double ground_ohm;     // usual ground loss in series; 0: none counted, or worked out from the radials
  double transformer_ratio;  // of impedance, 1 where none belongs to the kind
  double transformer_db;     // its usual loss
  double usual_swr;          // what a meter against 50 ohm reads at best where the kind hangs well
  Evidence feed_evidence;
  std::string_view feed_source;
  int wires;                  // side by side: two for a folded dipole
  int supports;               // high points that somebody must climb, throw to or bring
  std::string_view rig_note;  // how apex height and free span are used
  CurrentMaximum current_maximum;
  double set_up_min, pack_down_min;
  Evidence work_evidence;
  std::string_view work_source;

  bool is_whip() const { return shape == Shape::whip; }
  /// Of a length that suits nothing: a matching unit makes it do.
  bool non_resonant() const { return cut_constant_m_mhz == 0 && !is_whip(); }
  /// Upright over radials that lie on the ground: their loss stands in series.
  bool over_radials() const { return shape == Shape::vertical || shape == Shape::inverted_l; }
  /// At a voltage maximum behind a transformer of high ratio.
  bool end_fed() const { return shape == Shape::sloper && !non_resonant(); }
  /// Two ends to trim by the same amount; else one, or a loop without any.
  bool two_ends() const {
    return shape == Shape::dipole || shape == Shape::inverted_v || shape == Shape::sloping_dipole;
  }
};

/// All rows, retired ones included, in catalogue order.
std::span<const Kind> kinds();

/// The row with this key, or null.
const Kind* find_kind(std::string_view key);

}  // namespace gs::antenna
