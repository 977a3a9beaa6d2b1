// The feed line's share of the plan: cable, load and radio joined. Everything the feed line's readings, reasons and
// curves rest on.
#pragma once

#include <vector>

#include "core/feedline/cable.h"
#include "core/feedline/run.h"
#include "core/outing/plan.h"

namespace gs {

/// Why a figure is not known or not to be taken at face value.
enum class Doubt : unsigned char {
  none,
  missing,               // an input is missing: the culprit
  contradiction,         // the culprit contradicts another figure; `clashes` has the sentence
  impossible,            // two levers cannot both be true; `clashes` has the sentence
  not_in_catalogue,      // the catalogue does not know it for the culprit's choice
  outside_tested,        // computed, but outside the range the culprit's row was tested in
  evaluation_owed,       // safety: nearer than a formula alone can say
  not_looked_at,         // safety: nobody has looked at the culprit yet
  people_too_near,       // safety: people were said to stand nearer than the keep-out
  line_too_near,         // safety: a power line is nearer than what may fall or be thrown
  line_near,             // safety: or hardly farther
  line_not_paced,        // safety: somebody looked at power lines, and gave no distance
  no_wire_there,         // antenna: no wire passes over the obstacle
  no_own_length,         // antenna: no length of this kind resonates by itself
  not_allowed,           // rules: the signal is not where the licence allows it
  not_allowed_anywhere,  // rules: the licence has no place for this mode or frequency
  no_kit,                // the kit list is empty
  no_minutes,            // no item of the kit says how long it takes
  no_date,               // the outing has no date
  no_horizon,            // the sun does not come to the horizon on that date
  no_fuse,               // power: no blade fuse carries the current and saves the wire
  later,                 // this link does not answer yet
};

/// What is known of the load at the antenna's end, best first.
enum class LoadFrom : unsigned char { none, impedance, swr_at_antenna, swr_at_radio, antenna_kind };

/// What meters, radios and matching units of the trade are made for: SWR is read against this, whatever the cable.
inline constexpr double kMeterOhm = 50;
/// Loss of one pair of plugs at HF in dB: 0 to 0.05, common practice.
inline constexpr double kPlugPairDb = 0.02;

struct FeedlineJoin {
  // the cable, known when cable_doubt is none or outside_tested
  Doubt cable_doubt = Doubt::none;
  L cable_culprit = L::count;
  const feedline::Cable* cable = nullptr;
  const feedline::Cable* second = nullptr;  // at the antenna's end; null: none
  double attenuation_db_per_100m = 0;       // this roll's, at the frequency
  feedline::Run run{};                      // plugs, cables, choke
  double matched_db = 0;                    // of all of it
  bool meter_impedance = true;              // every cable is of kMeterOhm
  // the load, known when load_doubt is none
  Doubt load_doubt = Doubt::none;
  L load_culprit = L::count;
  LoadFrom load_from = LoadFrom::none;
  feedline::Complex load_ohm{};                       // only from an impedance or the antenna's kind
  double swr_at_antenna = 0, swr_at_radio = 0;        // what a meter reads there
  feedline::SwrRange antenna_range{}, radio_range{};  // over the phases that are not known
  feedline::LossRange loss{};                         // one value three times when the impedance is known
  bool impedance_known() const { return load_from == LoadFrom::impedance || load_from == LoadFrom::antenna_kind; }
  bool swr_alone() const { return load_from == LoadFrom::swr_at_antenna || load_from == LoadFrom::swr_at_radio; }
};
FeedlineJoin join_feedline(const Plan& plan);

/// Matched loss of the plan's feed line at another frequency, dB: the loss curve. NaN where the cable is not known.
double matched_loss_at_db(const Plan& plan, double frequency_mhz);
/// Total loss over every phase at another frequency, if the SWR that was read stood there too; NaN three times
/// where the load is not known from an SWR alone, or no load could show it there.
feedline::LossRange loss_range_at_db(const Plan& plan, double frequency_mhz);
/// Attenuation of the plan's first cable, as this roll has it, dB/100 m.
double attenuation_at_db_per_100m(const Plan& plan, double frequency_mhz);

/// The load as the antenna's figures have it (impedance, else the kind's usual one): what a model says beside a
/// reading. False where nothing is known of it.
bool modelled_load(const Plan& plan, feedline::Complex& load_ohm);

/// A measured SWR beside what the model says a meter there would read.
struct MeasuredBeside {
  bool known = false;  // false: one of the two is missing
  bool at_radio = true;
  double measured = 0, modelled = 0;
  bool agree() const;  // within a fifth, what portable meters agree to: common practice, from memory
};
MeasuredBeside measured_beside(const Plan& plan, const FeedlineJoin& join);

/// Measured figures that cannot be true behind this line, or that contradict the feed-point impedance.
std::vector<Clash> feedline_clashes(const Plan& plan, const Style& style);

}  // namespace gs
