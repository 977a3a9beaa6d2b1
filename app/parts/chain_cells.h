// One link of the chain as every view of the chain shows it: standing, figure, words.
#pragma once

#include <array>
#include <string>

#include "app/session.h"

namespace gs::parts {

inline constexpr std::array<Link, 3> kBeside{Link::safety, Link::clock, Link::kit};

struct Cell {
  Link link;
  Standing now;
  Standing pinned;     // unknown where nothing is pinned
  std::string figure;  // "82 %"; empty where not known
  std::string short_second;
  std::string second;  // "limit 50 %", or what is missing
  Change change;       // of the reading that binds
  std::string spoken;  // "Feed line, holds, 82 percent, same as pinned, opens Feed line"
};
Cell cell(const Session& session, Link link);

/// Height of a standing over the limit line in slack, clamped for drawing; an unknown link stands at the ease line.
float drawn_slack(const Standing& standing);
/// True from the first failed link on: what follows counts only until that failure.
bool dead_from(const std::array<Cell, 6>& cells, std::size_t index);
std::array<Cell, 6> chain_cells(const Session& session);

}  // namespace gs::parts
