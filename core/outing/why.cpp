#include "core/outing/why.h"

#include <algorithm>
#include <cmath>

#include "core/radio/fold_back.h"

namespace gs {
namespace {

Mark mark_of(Evidence evidence) {
  switch (evidence) {
    case Evidence::seen:
      return Mark::published;
    case Evidence::second_hand:
      return Mark::second_hand;
    case Evidence::memory:
      return Mark::memory;
    case Evidence::practice:
      return Mark::practice;
  }
  return Mark::none;
}

/// Collects lines for one reading.
class Lines {
 public:
  Lines(const Plan& plan, const Style& style, Why& why) : plan_(plan), style_(style), why_(why) {}

  void lever_line(L id) {
    const Lever& row = lever(id);
    WhyLine line{std::string(row.name), {}, Mark::yours};
    if (!plan_.has(id)) {
      line.value = {"not set", ""};
      line.mark = Mark::none;
    } else if (row.kind == Kind::text) {
      line.value = {row.write(plan_[id]), ""};
    } else if (row.kind == Kind::choice) {
      line.value = {std::string(row.options()[std::size_t(plan_[id])].name), ""};
    } else {
      line.value = print_quantity(plan_[id], row.unit, digits_needed(plan_[id], row.digits), style_);
    }
    if (plan_.has(id) && plan_.from[std::size_t(id)] == From::usual) line.mark = mark_of(row.evidence);
    why_.lines.push_back(std::move(line));
  }
  void factor(std::string text, double value, Unit unit, int digits, Mark mark) {
    why_.lines.push_back({std::move(text), print_quantity(value, unit, digits, style_), mark});
  }
  void follows(std::string text, double value, Unit unit, int digits) {
    why_.lines.push_back({std::move(text), print_quantity(value, unit, digits, style_), Mark::computed, true});
  }

 private:
  const Plan& plan_;
  const Style& style_;
  Why& why_;
};

void cable_lines(const Plan& plan, const FeedlineJoin& join, const Style& style, Lines& lines) {
  lines.lever_line(L::feedline_cable);
  if (join.cable) {
    const double catalogue_db = feedline::attenuation_db_per_100m(*join.cable, plan[L::antenna_frequency_mhz]);
    lines.factor("Catalogue loss of 100 m at " +
                     say_lever(lever(L::antenna_frequency_mhz), plan[L::antenna_frequency_mhz], style),
                 catalogue_db, Unit::decibel, 2, mark_of(join.cable->loss_evidence));
  } else {
    lines.lever_line(L::antenna_frequency_mhz);
  }
  if (plan.has(L::feedline_own_loss_db)) {
    for (const L id : {L::feedline_own_loss_db, L::feedline_own_at_mhz, L::feedline_own_second_db,
                       L::feedline_own_second_at_mhz})
      if (plan.has(id)) lines.lever_line(id);
  } else {
    lines.lever_line(L::feedline_roll_loss_pct);
  }
  lines.lever_line(L::feedline_temperature_c);
  lines.lever_line(L::feedline_length_m);
  if (join.second) {
    lines.lever_line(L::feedline_second_cable);
    lines.lever_line(L::feedline_second_length_m);
  }
  for (const L id : {L::feedline_plug_pairs, L::feedline_choke_db})
    if (plan[id] > 0) lines.lever_line(id);
  if (join.cable) lines.follows("Matched loss", join.matched_db, Unit::decibel, 2);
}

void load_lines(const Plan& plan, const FeedlineJoin& join, Lines& lines) {
  if (plan.has(L::antenna_feed_r_ohm)) {
    lines.lever_line(L::antenna_feed_r_ohm);
    lines.lever_line(L::antenna_feed_x_ohm);
  } else if (join.load_from == LoadFrom::antenna_kind) {
    lines.lever_line(L::antenna_kind);
    lines.factor("Usual feed-point resistance of the kind", join.load_ohm.real(), Unit::ohm, 0, Mark::practice);
  } else {
    lines.lever_line(L::feedline_measured_swr);
    if (plan.has(L::feedline_measured_swr)) lines.lever_line(L::feedline_measured_at);
  }
  if (join.load_from == LoadFrom::none || join.load_doubt != Doubt::none) return;
  lines.follows("SWR at antenna", join.swr_at_antenna, Unit::none, 1);
}

/// The total loss that comes out when the characteristic impedance is taken as real: the usual shortcut.
double shortcut_loss_db(const FeedlineJoin& join) {
  feedline::Run real = join.run;
  for (feedline::Line& piece : real.pieces) piece.z0_ohm = piece.z0_ohm.real();
  return feedline::total_loss_db(real, join.load_ohm);
}

std::string loss_assumes(const Plan& plan, const FeedlineJoin& join, const Style& style) {
  const bool none_counted = !(plan[L::feedline_plug_pairs] > 0) && !(plan[L::feedline_choke_db] > 0);
  const std::string always =
      say_quantity(plan[L::feedline_temperature_c], Unit::celsius, 0, style) +
      (none_counted ? "; plugs and chokes left out" : "; plugs count at the radio, the choke at the antenna");
  if (join.load_from == LoadFrom::none || join.load_doubt != Doubt::none) return always;
  if (join.impedance_known())
    return always +
           "; the characteristic impedance has its loss angle: copper loss follows the current. With a real one, "
           "the "
           "usual shortcut, it would be " +
           say_quantity(shortcut_loss_db(join), Unit::decibel, 2, style);
  return always + "; a measured SWR has no phase, so the loss lies between " +
         say_quantity(join.loss.least_db, Unit::decibel, 2, style) + " and " +
         say_quantity(join.loss.most_db, Unit::decibel, 2, style) +
         "; the shortcut of a real characteristic impedance would name one figure for all of them";
}

/// How the radio's and the cable's watts follow from each other, for one of them.
std::string_view watts_formula(R id) {
  switch (id) {
    case R::radio_turned_down_w:
      return "transmit power \u00D7 (1 \u2212 (reflection at the set's limit \u00F7 reflection at the "
             "radio)\u00B2), nothing within "
             "the limit or the matching unit's reach";
    case R::feedline_cable_matched_w:
      return "power that leaves the radio \u2212 what the matched loss alone would let through";
    case R::feedline_cable_swr_w:
      return "what the matched loss alone would let through \u2212 power to the antenna";
    default:
      return "transmit power \u2212 what the set turns down \u2212 what warms the cable";
  }
}

std::string cable_source(const FeedlineJoin& join) {
  if (!join.cable) return "the cable catalogue";
  std::string text(join.cable->loss_source);
  if (!join.cable->fit_note.empty()) text += ". " + std::string(join.cable->fit_note);
  return text;
}

/// What an error of a tenth in the lever that matters most does to the reading; `now`: what it is.
std::string if_wrong(R id, const Plan& plan, double now, const Style& style) {
  constexpr L kCandidates[] = {L::feedline_length_m, L::feedline_roll_loss_pct, L::feedline_measured_swr,
                               L::antenna_feed_r_ohm, L::radio_transmit_power_w};
  const Reading& row = reading(id);
  if (!std::isfinite(now)) return {};
  L most = L::count;
  Figure worst{};
  for (const L candidate : row.rests_on.empty() ? std::span<const L>(kCandidates) : row.rests_on) {
    if (!plan.has(candidate) || lever(candidate).kind != Kind::number) continue;
    Plan wrong = plan;
    double& x = wrong.x[std::size_t(candidate)];
    x *= 1.1;  // past the lever's own range too: the sentence says a tenth
    if (candidate == L::radio_transmit_power_w)
      wrong.x[std::size_t(L::radio_full_power_w)] = std::max(x, plan[L::radio_full_power_w]);
    const Figure figure = evaluate(wrong)[id];
    if (!std::isfinite(figure.value)) continue;
    if (most == L::count || std::abs(figure.value - now) > std::abs(worst.value - now)) {
      most = candidate;
      worst = figure;
    }
  }
  if (most == L::count) return {};
  std::string text =
      std::string(lever(most).name) + " a tenth higher: " + say_quantity(worst.value, row.unit, row.digits, style);
  if (worst.state != State::none) text += ", " + std::string(state_word(worst.state));
  return text;
}

/// A line a function: its chance, or what does it alone, or its weight.
void kit_lines(R id, const KitSummary& kit, Lines& lines) {
  for (const KitFunction& function : kit.functions) {
    const std::string pieces = function.pieces == 1 ? "1 piece" : std::to_string(function.pieces) + " pieces";
    const std::string text = function.name + ", " + pieces;
    if (id == R::kit_weight_kg)
      lines.factor(text, function.weight_g, Unit::gram, 0, Mark::yours);
    else if (id == R::kit_chance_pct && function.vital)
      lines.factor(text, function.chance_pct, Unit::percent, 1, Mark::yours);
    else if (id == R::kit_single_points && function.vital && function.pieces == 1)
      lines.factor(text, 1, Unit::none, 0, Mark::yours);
  }
}

std::string_view kit_assumes(R id) {
  if (id == R::kit_weight_kg || id == R::kit_volume_l)
    return "what is listed; clothes and the bags themselves are not";
  if (id == R::kit_set_up_min) return "one person, one thing after the other";
  if (id == R::kit_to_pack) return "what was ticked is in the bag";
  if (id == R::kit_single_points) return "what does the same job stands in for each other, spares too";
  return "pieces fail apart from each other; two that share a charger or a wet bag hold less";
}

/// The chances are guesses: what becomes of the kit when every piece gives out twice as often as was guessed.
std::string kit_if_wrong(R id, const Plan& plan, const Style& style) {
  if (id == R::kit_single_points || id == R::kit_to_pack || !plan.kit.known) return {};
  const Reading& row = reading(id);
  const auto a_tenth_more = [&](std::string_view what, double value) {
    return "every " + std::string(what) +
           " a tenth higher: " + say_quantity(1.1 * value, row.unit, row.digits, style);
  };
  if (id == R::kit_volume_l) return a_tenth_more("volume", plan.kit.volume_l);
  if (id == R::kit_set_up_min) return a_tenth_more("share", plan.kit.set_up_min);
  if (id == R::kit_weight_kg) return a_tenth_more("weight", plan.kit.weight_g / 1000);
  double chance = 1;
  for (const KitFunction& function : plan.kit.functions) {
    const double all_fail = (1 - function.chance_pct / 100) * std::pow(2.0, function.pieces);
    if (function.vital) chance *= 1 - std::min(1.0, all_fail);
  }
  const Figure worse = judge(plan, id, 100 * chance);
  std::string text = "every piece gives out twice as often: " + say_quantity(worse.value, Unit::percent, 0, style);
  if (worse.state != State::unknown) text += ", " + std::string(state_word(worse.state));
  return text;
}

}  // namespace

std::string_view mark_word(Mark mark) {
  switch (mark) {
    case Mark::none:
      return "";
    case Mark::published:
      return "published";
    case Mark::second_hand:
      return "second hand";
    case Mark::practice:
      return "practice";
    case Mark::memory:
      return "memory";
    case Mark::yours:
      return "yours";
    case Mark::computed:
      return "";
  }
  return "";
}

Why why(R id, const Plan& plan, const Style& style) {
  Why result;
  Lines lines(plan, style, result);
  const FeedlineJoin join = join_feedline(plan);
  const Outlook outlook = evaluate(plan);
  const Reading& row = reading(id);
  result.source = row.source;
  switch (id) {
    case R::feedline_weight_g:
      result.formula = "mass a metre \u00D7 length";
      lines.lever_line(L::feedline_cable);
      if (plan.has(L::feedline_cable)) {
        const feedline::Cable& cable = feedline::cables()[std::size_t(plan[L::feedline_cable])];
        if (cable.mass_g_per_m > 0)
          lines.factor("Mass of 1 m", cable.mass_g_per_m, Unit::gram, 0, mark_of(cable.body_evidence));
        result.source = cable.body_source;
      }
      lines.lever_line(L::feedline_length_m);
      if (join.second) {
        lines.lever_line(L::feedline_second_cable);
        lines.lever_line(L::feedline_second_length_m);
      }
      result.assumes = "plugs left out";
      break;
    case R::feedline_matched_loss_db:
      result.formula = "loss of 100 m at the frequency \u00D7 this roll's share \u00D7 length \u00F7 100 m";
      cable_lines(plan, join, style, lines);
      result.source = cable_source(join);
      result.assumes = say_quantity(plan[L::feedline_temperature_c], Unit::celsius, 0, style) +
                       "; a load of the cable's own impedance";
      break;
    case R::antenna_swr:
    case R::feedline_swr_at_radio:
      result.formula = "the line's loss hides part of the reflection on its way back";
      load_lines(plan, join, lines);
      cable_lines(plan, join, style, lines);
      result.assumes =
          "SWR as a meter made for " + say_quantity(kMeterOhm, Unit::ohm, 0, style) +
          " reads it; behind a cable of another impedance, or where only the other end was read, a range";
      break;
    case R::feedline_total_loss_db:
    case R::feedline_arrives_pct:
      result.formula = "power into the load \u00F7 power into the line";
      cable_lines(plan, join, style, lines);
      load_lines(plan, join, lines);
      if (std::isfinite(outlook[R::feedline_total_loss_db].value))
        lines.follows("Line loss", outlook[R::feedline_total_loss_db].value, Unit::decibel, 2);
      result.source = cable_source(join);
      result.assumes = loss_assumes(plan, join, style);
      break;
    case R::radio_turned_down_w:
    case R::feedline_power_to_antenna_w:
    case R::feedline_cable_matched_w:
    case R::feedline_cable_swr_w:
      result.formula = watts_formula(id);
      lines.lever_line(L::radio_transmit_power_w);
      lines.lever_line(L::radio_tuner);
      lines.lever_line(L::radio_fold_back_swr);
      if (std::isfinite(outlook[R::radio_turned_down_w].value)) {
        lines.factor("SWR at radio", join.swr_at_radio, Unit::none, 1, Mark::computed);
        lines.follows("Set turns down", outlook[R::radio_turned_down_w].value, Unit::watt, 1);
      }
      cable_lines(plan, join, style, lines);
      load_lines(plan, join, lines);
      if (std::isfinite(outlook[R::feedline_total_loss_db].value))
        lines.follows("Line loss", outlook[R::feedline_total_loss_db].value, Unit::decibel, 2);
      if (id != R::radio_turned_down_w) result.source = cable_source(join);
      result.assumes = loss_assumes(plan, join, style) +
                       "; reflected power is not lost, it comes back and warms the cable twice";
      break;
    case R::kit_chance_pct:
    case R::kit_single_points:
    case R::kit_weight_kg:
    case R::kit_volume_l:
    case R::kit_set_up_min:
    case R::kit_to_pack:
      result.formula = row.formula;
      if (!plan.kit.known) result.lines.push_back({"Kit list", {"not set", ""}, Mark::none});
      kit_lines(id, plan.kit, lines);
      if (std::isfinite(outlook[id].value))
        lines.follows(std::string(row.name), outlook[id].value, row.unit, row.digits);
      result.assumes = kit_assumes(id);
      result.if_wrong = kit_if_wrong(id, plan, style);
      return result;
    default:
      // what the row itself says: its formula and the levers it rests on
      result.formula = row.formula;
      result.assumes = row.assumes;
      for (const L lever_id : row.rests_on) lines.lever_line(lever_id);
      if (row.in_words && std::isfinite(outlook[id].value))
        result.lines.push_back(
            {std::string(row.name), {say_reading(id, outlook[id].value, style), ""}, Mark::computed, true});
      else if (std::isfinite(outlook[id].value))
        lines.follows(std::string(row.name), outlook[id].value, row.unit, row.digits);
      break;
  }
  result.if_wrong = if_wrong(id, plan, outlook[id].value, style);
  return result;
}

}  // namespace gs
