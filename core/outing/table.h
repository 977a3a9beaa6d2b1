// The row types of the three tables that everything is made of: levers, readings, checks.
#pragma once

#include <array>
#include <span>
#include <string>
#include <string_view>

#include "core/evidence.h"
#include "core/outing/quantity.h"

namespace gs {

struct Plan;
enum class L : unsigned short;  // levers.h

/// A link of the chain, or one of the three that stand alongside.
enum class Link : unsigned char { battery, radio, feedline, antenna, sky, contacts, safety, clock, kit, count };
/// The links that feed one another, in that order; the others stand beside them.
inline constexpr std::array<Link, 6> kChain{Link::battery, Link::radio, Link::feedline,
                                            Link::antenna, Link::sky,   Link::contacts};

enum class Kind : unsigned char { number, choice, text };
enum class Scale : unsigned char { linear, log };
enum class Better : unsigned char { more, less, neither };

/// One option of a choice lever. `key` is what files hold; the plan holds the option's index.
struct Option {
  std::string_view key, name;
  bool retired = false;  // still read from files, no longer offered
};

/// One input of the outing.
struct Lever {
  std::string_view key, name;
  Link link;
  Kind kind = Kind::number;
  Unit unit = Unit::none;
  int digits = 0;                        // decimals that are printed
  double least = 0, most = 0, step = 1;  // in the unit; for choices unused
  Scale scale = Scale::linear;
  std::span<const Option> (*options)() = nullptr;    // choices only
  double (*usual)(const Plan&) = nullptr;            // may rest on levers above; null: the person must give it
  bool optional = false;                             // true: nothing is missing while it is not set
  std::string (*wrong)(std::string_view) = nullptr;  // text levers: why this text cannot be, "" when it can
  double (*read)(std::string_view) = nullptr;        // text levers: the number that stands for it in the plan
  std::string (*write)(double) = nullptr;            // and back
  bool (*applies)(const Plan&) = nullptr;            // null: always
  double (*cap)(const Plan&) = nullptr;    // most under this plan, where another lever holds it lower; NaN: none
  double tolerance = 0;                    // how far the real thing may stand from what was set, in the unit
  Evidence evidence = Evidence::practice;  // of usual value and range
  std::string_view source;                 // of usual value and range
};

/// The step that suits a value: the lever's own, or two significant figures where those are finer.
double step_at(const Lever& row, double value);

/// One result of the plan.
struct Reading {
  std::string_view key, name;
  Link link;
  Unit unit = Unit::none;
  int digits = 0;
  Better better = Better::neither;
  std::string_view source;
  std::string_view assumes = {};     // what it takes for granted, where the row alone says why
  std::string_view formula = {};     // in words, where the row alone says why
  std::span<const L> rests_on = {};  // levers that the reading rests on, most telling first
  std::string (*in_words)(double, const Style&, bool spoken) = nullptr;  // in the place of figure and unit
};

/// Limit and ease of a judged reading, from assets/catalogues/limits.csv.
struct Limit {
  std::string_view reading_key;
  double limit, ease;
  std::string_view over;  // key of a lever whose value both are added to; "" for plain figures
  Evidence evidence;
  std::string_view source;
};
std::span<const Limit> limits();

std::string_view link_name(Link link);  // "Feed line"
std::string_view link_key(Link link);   // "feedline"

}  // namespace gs
