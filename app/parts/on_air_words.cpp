#include <algorithm>
#include <cmath>

#include "app/parts/on_air.h"
#include "core/pace/utc.h"

namespace gs::parts {

std::string clock_at(const Session& session, double utc_s) {
  if (!session.plan().has(L::clock_utc_offset_min)) return pace::clock_text(utc_s, false) + " UTC";
  // cut, not rounded: a clock shows a minute when it has come
  const double minute = std::floor(local_min_of(session.plan(), session.now(), utc_s));
  return say_quantity(minute, Unit::clock_minute, 0);
}

std::string last_entry(const Session& session) {
  const auto& tally = session.outing().happened.tally;
  if (tally.empty()) return {};
  const Tap& last = tally.back();
  if (last.forgotten) return std::to_string(last.count) + " forgotten";
  return "the one at " + clock_at(session, last.at_utc_s);
}

std::string clock_doubt(const Session& session) {
  const Happened& happened = session.outing().happened;
  const double now_s = session.now().utc_s;
  if (happened.on_air.empty() || !pace::is_instant(now_s)) return {};
  constexpr double kMostSetBackS = 120;
  double last_s = happened.on_air.back().from_utc_s;
  if (!happened.tally.empty()) last_s = std::max(last_s, happened.tally.back().at_utc_s);
  if (last_s - now_s <= kMostSetBackS) return {};
  return "Check the clock: it stands before the last contact. Contacts still count.";
}

void air_sentences(Ui& ui) {
  const Session& session = ui.session;
  if (const std::string doubt = clock_doubt(session); !doubt.empty())
    ui.paragraph(doubt, "air:clock_doubt", ui.theme.tight);
  const double ahead = zone_ahead_min(session.plan(), session.now());
  if (ahead != 0) {
    const std::string by = say_quantity(std::abs(ahead), Unit::minute, 0, session.style());
    ui.paragraph("This device's clock is set " + by + (ahead > 0 ? " ahead of" : " behind") +
                     " the outing's zone. Local times here are the outing's; UTC is the same.",
                 "air:zone", ui.theme.ink2);
  }
}

}  // namespace gs::parts
