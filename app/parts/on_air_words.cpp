#include <cmath>

#include "app/parts/on_air.h"
#include "core/pace/utc.h"

namespace gs::parts {

std::string clock_at(const Session& session, double utc_s) {
  if (!session.plan().has(L::clock_utc_offset_min)) return pace::clock_text(utc_s, false) + " UTC";
  // cut, not rounded: a clock shows a minute when it has come
  return wall_clock(std::floor(shown_min(session.plan(), local_min_of(session.plan(), session.now(), utc_s))));
}

std::string last_entry(const Session& session) {
  const auto& tally = session.outing().happened.tally;
  if (tally.empty()) return {};
  const Tap& last = tally.back();
  if (last.forgotten) return std::to_string(last.count) + " forgotten";
  return "the one at " + clock_at(session, last.at_utc_s);
}

Live live(const Session& session) { return gs::live(session.plan(), session.outlook(), session.now()); }

void pace_from(Ui& ui) {
  const Plan& plan = ui.session.plan();
  if (!plan.has(L::pace_per_hour)) return;
  ui.paragraph(say_pace_from(plan, ui.session.style()), "pace:from", ui.theme.ink2);
  ui.gap(4);
}

void clock_words(Ui& ui) {
  Session& session = ui.session;
  const Plan& plan = session.plan();
  if (const std::string words = say_clock_change(plan); !words.empty()) {
    ui.paragraph(words, "clock:change", ui.theme.ink);
    ui.gap();
  }
  const double ahead = zone_ahead_that_day_min(plan);
  if (ahead == 0) return;
  ui.paragraph("On that day this device's clock stands " +
                   say_quantity(std::abs(ahead), Unit::minute, 0, session.style()) +
                   (ahead > 0 ? " ahead of" : " behind") + " the outing's UTC offset.",
               "clock:zone", ui.theme.ink2);
  ui.gap();
  if (ui.button("clock:zone:use", "Use this device's clock of that day", Weight::plain, look::Icon::clock)) {
    session.set(L::clock_utc_offset_min, plan[L::clock_utc_offset_min] + ahead);
    ui.wake_at(ui.now_s);
  }
  ui.gap();
}

void air_sentences(Ui& ui) {
  const Session& session = ui.session;
  const Live now = live(session);
  if (const std::string words = say_drying(now, session.style()); !words.empty()) {
    ui.paragraph(words, "air:drying", ui.theme.tight);
    ui.last_node().live = true;
  }
  if (const std::string words = say_clock(now); !words.empty())
    ui.paragraph(words, now.clock_doubtful ? "air:clock_doubt" : "air:zone",
                 now.clock_doubtful ? ui.theme.tight : ui.theme.ink2);
}

}  // namespace gs::parts
