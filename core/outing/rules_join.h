// May one transmit here: licence, place, dial and mode of the plan against the tables, and the one line about it.
#pragma once

#include <string>
#include <string_view>

#include "core/outing/evaluate_parts.h"
#include "core/rules/may_transmit.h"

namespace gs {

struct RulesJoin {
  Doubtful doubtful;  // none: answer is known
  rules::Answer answer{};
  const rules::ModeWidth* mode = nullptr;
  bool by_table = false;  // false: another country's licence, within the Region's or its own edges
};
RulesJoin join_rules(const Plan& plan);

/// The power limit where the dial may stand: at the nearest such place where it may not stand at frequency_mhz.
rules::PowerLimit limit_near(const rules::Answer& answer, rules::Region region, rules::Class licence,
                             double frequency_mhz);

/// "the dial is inside, but a part of the signal is over the edge"; "" where it is allowed.
std::string why_not(rules::Why why, std::string_view class_name);

/// One line for a screen: that one may, from where to where and with how much; or that one may not, by how much,
/// and the nearest dial; or what is missing.
std::string say_rules(const Plan& plan, const Style& style = {});

}  // namespace gs
