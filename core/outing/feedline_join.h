// The feed line's share of the plan: cable, load and radio joined. Everything the feed line's readings, reasons and
// curves rest on.
#pragma once

#include <vector>

#include "core/feedline/cable.h"
#include "core/feedline/line.h"
#include "core/feedline/swr.h"
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
  not_allowed,           // rules: the signal is not where the licence allows it
  not_allowed_anywhere,  // rules: the licence has no place for this mode or frequency
  no_kit,                // the kit list is empty
  no_date,               // the outing has no date
  no_horizon,            // the sun does not come to the horizon on that date
  later,                 // this link does not answer yet
};

/// What is known of the load at the antenna's end, best first.
enum class LoadFrom : unsigned char { none, impedance, swr_at_antenna, swr_at_radio, antenna_kind };

struct FeedlineJoin {
  // the cable, known when cable_doubt is none or outside_tested
  Doubt cable_doubt = Doubt::none;
  L cable_culprit = L::count;
  const feedline::Cable* cable = nullptr;
  double attenuation_db_per_100m = 0;  // this roll's, at the frequency
  feedline::Line line{};
  double matched_db = 0;
  // the load, known when load_doubt is none
  Doubt load_doubt = Doubt::none;
  L load_culprit = L::count;
  LoadFrom load_from = LoadFrom::none;
  feedline::Complex load_ohm{};  // only from an impedance
  double swr_at_antenna = 0, swr_at_radio = 0;
  feedline::LossRange loss{};  // one value three times when the impedance is known
};
FeedlineJoin join_feedline(const Plan& plan);

/// Matched loss of the plan's cable and length at another frequency, dB: the loss curve. NaN where the cable is not
/// known.
double matched_loss_at_db(const Plan& plan, double frequency_mhz);

/// Measured figures that cannot be true behind this line, or that contradict the feed-point impedance.
std::vector<Clash> feedline_clashes(const Plan& plan, const Style& style);

}  // namespace gs
