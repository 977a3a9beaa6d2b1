#include "app/parts/chain_cells.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "app/look/metrics.h"
#include "app/parts/change.h"

namespace gs::parts {

Cell cell(const Session& session, Link link) {
  Cell result{};
  result.link = link;
  result.now = standing(session.outlook(), link);
  result.pinned = {State::unknown, std::numeric_limits<double>::quiet_NaN(), R::count};
  if (session.pinned_outlook()) result.pinned = standing(*session.pinned_outlook(), link);
  const std::string name(link_name(link));
  const R binds = result.now.binds;
  result.spoken = name + ", " + std::string(state_word(result.now.state));
  if (binds == R::count) {
    result.second = "joins later";
    result.spoken += ", " + result.second;
  } else {
    const Figure& figure = session.outlook()[binds];
    result.figure = figure_text(binds, figure, session.style());
    if (figure.state == State::unknown) {
      result.second = reason(session.plan(), binds, figure, session.style());
      result.spoken += ", " + result.second;
    } else {
      const Reading& row = reading(binds);
      const std::string limit =
          "limit " + say_lever(lever(limit_lever(binds)), session.plan()[limit_lever(binds)], session.style());
      result.short_second = lower_first(std::string(row.name));
      result.second = result.short_second + ", " + limit;
      result.change = change_of(session, binds);
      result.spoken += ", " + std::string(row.name) + " " +
                       speak_quantity(figure.value, row.unit, row.digits, session.style()) + ", " + limit +
                       change_spoken(session, binds);
    }
  }
  if (link == Link::safety) {
    // the distance stands beside the state: the state says whether anybody looked, not how far
    const Figure& keep_out = session.outlook()[R::safety_public_m];
    result.figure = figure_text(R::safety_public_m, keep_out, session.style());
    if (keep_out.state != State::unknown)
      result.spoken += ", keep-out " + figure_spoken(R::safety_public_m, keep_out, session.plan(), session.style());
  }
  if (result.short_second.empty()) result.short_second = result.second;
  result.spoken += ", opens " + name;
  return result;
}

float drawn_slack(const Standing& standing) {
  if (!std::isfinite(standing.slack)) return 1;
  return std::clamp(float(standing.slack), look::chain::kSlackLeast, look::chain::kSlackMost);
}

bool dead_from(const std::array<Cell, 6>& cells, std::size_t index) {
  return std::any_of(cells.begin(), cells.begin() + std::ptrdiff_t(index) + 1,
                     [](const Cell& link) { return link.now.state == State::fails; });
}

std::array<Cell, 6> chain_cells(const Session& session) {
  std::array<Cell, 6> cells;
  std::transform(kChain.begin(), kChain.end(), cells.begin(), [&](Link link) { return cell(session, link); });
  return cells;
}

}  // namespace gs::parts
