#include "core/outing/findings_feedline.h"

#include <cmath>
#include <limits>

namespace gs {
namespace {

constexpr double kDbPerSUnit = 6;        // IARU Region 1 Technical Recommendation R.1 (1981)
constexpr double kHides = 1.3;           // antenna's SWR over the radio's from where a meter is misled
constexpr double kBadAntennaSwr = 2;     // from here a better match is worth a hand: common practice
constexpr double kOpenReadsLow = 4;      // an open end that reads less than this looks like an antenna
constexpr double kPhaseMattersDb = 0.3;  // range of the loss that is worth a second measurement
constexpr double kSwrCostsDb = 0.5;      // and loss because of SWR that is worth mending
constexpr double kNobodyHearsDb = 1;     // the least change of level that an ear notices in speech: common practice

struct Say {
  const Style& style;
  std::string swr(double value) const { return print_quantity(value, Unit::none, 1, style).number; }
  std::string db(double value) const { return say_quantity(value, Unit::decibel, value < 0.95 ? 2 : 1, style); }
};

void hidden(const FeedlineJoin& join, const Say& say, std::vector<Finding>& found) {
  const double antenna = join.swr_at_antenna, radio = join.swr_at_radio;
  if (antenna >= kBadAntennaSwr && antenna > kHides * radio)
    found.push_back({antenna > 3 ? State::fails : State::tight, "The line hides a bad antenna: " + say.swr(radio) +
                                                                    " at the radio, " + say.swr(antenna) +
                                                                    " at the antenna."});
  const double open =
      feedline::swr_range_at_radio(join.run, kMeterOhm, std::numeric_limits<double>::infinity()).typical;
  if (open < kOpenReadsLow)
    found.push_back({State::tight, "With nothing on its end this line would read " + say.swr(open) +
                                       ": a low SWR at the radio proves little."});
}

void beside(const Plan& plan, const FeedlineJoin& join, const Say& say, std::vector<Finding>& found) {
  const MeasuredBeside both = measured_beside(plan, join);
  if (!both.known) return;
  const std::string figures = "SWR " + std::string(both.at_radio ? "at the radio" : "at the antenna") +
                              ": measured " + say.swr(both.measured) + ", by the antenna's figures " +
                              say.swr(both.modelled) + ". ";
  if (both.agree())
    found.push_back({State::holds, figures + "They agree."});
  else if (both.measured > both.modelled)
    found.push_back({State::tight, figures +
                                       "The antenna is not where the figures have it: length, height, a joint, or "
                                       "current on the outside of the cable."});
  else if (both.at_radio)
    found.push_back({State::tight, figures +
                                       "The line takes more than its figures say, or the antenna has loss: read "
                                       "the SWR with the far end open."});
  else
    found.push_back({State::tight, figures +
                                       "Loss in the antenna or its ground flatters it, or the figures are not "
                                       "this antenna's."});
}

void cost(const FeedlineJoin& join, const Say& say, std::vector<Finding>& found) {
  const double extra_db = join.loss.typical_db - join.matched_db;
  if (extra_db >= kSwrCostsDb)
    found.push_back({State::tight, "SWR costs " + say.db(extra_db) +
                                       " on this line. A match at the antenna would save it; a "
                                       "matching unit at the radio does not."});
  if (join.loss.most_db - join.loss.least_db >= kPhaseMattersDb)
    found.push_back({State::none, "An SWR alone leaves open whether " + say.db(join.loss.least_db) + " or " +
                                      say.db(join.loss.most_db) +
                                      " is lost: resistance and reactance of the feed point would settle it."});
  if (join.loss.most_db < kNobodyHearsDb)
    found.push_back(
        {State::holds, "A line without loss would add " + say.db(join.loss.typical_db) + ", " +
                           print_quantity(join.loss.typical_db / kDbPerSUnit, Unit::none, 2, say.style).number +
                           " S-units: nobody hears that."});
}

void cable(const Plan& plan, const FeedlineJoin& join, const Outlook& outlook, const Say& say,
           std::vector<Finding>& found) {
  for (const feedline::Cable* one : {join.cable, join.second}) {
    if (!one || !(one->working_vrms > 0)) continue;
    const Figure& highest = outlook[R::feedline_highest_v];
    if (highest.value > one->working_vrms)
      found.push_back({State::fails, "Up to " + say_quantity(highest.value, Unit::volt, 0, say.style) +
                                         " on the line; " + std::string(one->name) + " is made for " +
                                         say_quantity(one->working_vrms, Unit::volt, 0, say.style) + "."});
  }
  if (join.second && join.second->z0_ohm != join.cable->z0_ohm)
    found.push_back({State::none, "Two impedances in a row, " +
                                      say_quantity(join.cable->z0_ohm, Unit::ohm, 0, say.style) + " and " +
                                      say_quantity(join.second->z0_ohm, Unit::ohm, 0, say.style) +
                                      ": the joint reflects, and lengths matter."});
  if (join.cable_doubt == Doubt::outside_tested)
    found.push_back(
        {State::tight,
         "Loss is stretched: " +
             reason(plan, R::feedline_matched_loss_db, outlook[R::feedline_matched_loss_db], say.style) + "."});
}

}  // namespace

std::vector<Finding> feedline_findings(const Plan& plan, const Outlook& outlook, const Style& style) {
  const FeedlineJoin join = join_feedline(plan);
  std::vector<Finding> found;
  if (!join.cable || join.load_doubt != Doubt::none || join.load_from == LoadFrom::none) return found;
  const Say say{style};
  hidden(join, say, found);
  beside(plan, join, say, found);
  cost(join, say, found);
  cable(plan, join, outlook, say, found);
  order_findings(found);
  return found;
}

}  // namespace gs
