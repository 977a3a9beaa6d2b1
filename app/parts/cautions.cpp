// What can hurt someone: to look at first, to do, to know. Local rules and licensed practice come first.
#include <algorithm>
#include <cmath>

#include "app/parts/ui.h"
#include "core/outing/overhead_join.h"
#include "core/outing/rules_join.h"
#include "core/safety/caution.h"

namespace gs::parts {

using safety::Caution;

namespace {

/// What this outing adds to a caution: its own figure, "" where it has none.
std::string here(const Caution& caution, const Plan& plan, const Style& style) {
  if (caution.key == "power_lines") {
    const OverheadJoin here = join_overhead(plan);
    if (!std::isfinite(here.stay_off_m)) return {};
    const auto metres = [&](double m) { return say_quantity(m, Unit::metre, 1, style); };
    return " Here, " + metres(here.height_m) + " high" +
           (here.loose_m > 0 ? " and with " + metres(here.loose_m) + " of wire or throw line" : std::string{}) +
           ": no power line within " + metres(here.stay_off_m) + " all round.";
  }
  if (caution.key == "lithium" && plan.has(L::battery_temperature_c) && plan[L::battery_temperature_c] <= 0)
    return " It is " + say_quantity(plan[L::battery_temperature_c], Unit::celsius, 0, style) +
           " here: no charging before the pack is warm.";
  return {};
}

bool applies(const Caution& caution, const Plan& plan) {
  if (caution.mark.empty()) return true;
  const Lever& row = lever(find_lever(caution.mark));
  return !row.applies || row.applies(plan);
}

/// "seen: 36 CFR 2.1": how well it is known, and from where.
std::string origin(const Caution& caution) {
  if (caution.evidence == Evidence::practice) return std::string(caution.source) + ".";
  return std::string(evidence_word(caution.evidence)) + ": " + std::string(caution.source) + ".";
}

void marked(Ui& ui, const Caution& caution) {
  const Plan& plan = ui.session.plan();
  const L mark = find_lever(caution.mark);
  const bool ticked = plan[mark] > 0;
  if (!ui.tick_row({.id = "tick:" + std::string(caution.mark),
                    .name = std::string(caution.name),
                    .words = std::string(caution.words) + here(caution, plan, ui.session.style()),
                    .note = origin(caution),
                    .ticked = ticked,
                    .round = caution.kind == Caution::Kind::look}))
    return;
  ui.session.set(mark, std::string(lever(mark).options()[ticked ? 0 : 1].key));
  ui.wake_at(ui.now_s);
}

void told(Ui& ui, const Caution& caution) {
  ui.gap(6);
  ui.paragraph(std::string(caution.name) + ": " + std::string(caution.words), "caution:" + std::string(caution.key),
               ui.theme.fails);
  ui.gap(2);
  ui.paragraph(origin(caution), "caution:" + std::string(caution.key) + ":source", ui.theme.ink2);
  ui.gap(6);
}

}  // namespace

void Ui::cautions(Link link) {
  const bool all = link == Link::safety;
  const auto shown = [&](const Caution& caution) {
    return (all || safety::is_raised_by(caution, link_key(link))) && applies(caution, session.plan());
  };
  const std::span<const Caution> rows = safety::cautions();
  if (std::none_of(rows.begin(), rows.end(), shown)) return;
  gap();
  section(all ? "Look before you transmit" : "Take care", "cautions");
  for (const Caution::Kind kind : {Caution::Kind::look, Caution::Kind::act, Caution::Kind::know})
    for (const Caution& caution : rows) {
      if (caution.kind != kind || !shown(caution)) continue;
      kind == Caution::Kind::know ? told(*this, caution) : marked(*this, caution);
    }
  gap(6);
  paragraph("These are the usual cautions. Local rules, the makers' instructions and licensed practice come first.",
            "cautions:rules", theme.ink2);
}

void Ui::may_transmit() {
  const Figure& room = session.outlook()[R::rules_room_khz];
  const float indent =
      room.state == State::fails || room.state == State::holds || room.state == State::tight ? 26.0F : 0;
  if (indent > 0) pen.sign(sign_of(room.state), {x + 9, y + look::type::kBody - 6}, look::sign::kList);
  const float left = x, width = w;
  column(left + indent, width - indent, y);
  paragraph(say_rules(session.plan(), session.style()), "rules:line",
            room.state == State::fails ? theme.fails : theme.ink);
  column(left, width, y);
}

}  // namespace gs::parts
