// What can hurt someone: to look at first, to do, to know. Local rules and licensed practice come first.
#include <algorithm>
#include <cmath>

#include "app/parts/ui.h"
#include "core/outing/overhead_join.h"
#include "core/outing/rules_join.h"
#include "core/safety/caution.h"

namespace gs::parts {

using look::Box;
using look::Face;
using mirror::Role;
using safety::Caution;
namespace type = look::type;
namespace space = look::space;

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

/// The caution in a line, with this outing's own figure where it has one.
std::string brief_words(const Caution& caution, const Plan& plan, const Style& style) {
  if (caution.key == "power_lines")
    if (const double stay_off_m = join_overhead(plan).stay_off_m; std::isfinite(stay_off_m))
      return "look up, " + say_quantity(stay_off_m, Unit::metre, 1, style) + " all round";
  return std::string(caution.brief);
}

void told_small(Ui& ui, std::string_view text, std::string id, Face face, ImU32 colour) {
  const std::size_t lines = ui.pen.lines(text, ui.w, face, type::kLabel).size();
  const Box box = ui.take(float(lines) * type::line_height(type::kLabel) + 2);
  ui.pen.paragraph(box.x, box.y + type::kLabel, ui.w, text, face, type::kLabel, colour);
  ui.node(Role::text, std::move(id), std::string(text), box);
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

void mark_as(Ui& ui, const Caution& caution, bool ticked) {
  const L mark = find_lever(caution.mark);
  ui.session.set(mark, std::string(lever(mark).options()[ticked ? 1 : 0].key));
  ui.wake_at(ui.now_s);
}

std::string row_id(const Caution& caution) { return "caution:" + std::string(caution.key) + ":row"; }

/// Name over a line of it, which unfold to the whole; at the right "Looked" or "Done". Once that was tapped the
/// mark itself takes it back.
void marked(Ui& ui, const Caution& caution) {
  constexpr float kBeside = Ui::kTickMark + 14, kPillLeast = 86;
  look::Pen& pen = ui.pen;
  const Plan& plan = ui.session.plan();
  const Style& style = ui.session.style();
  const bool ticked = plan[find_lever(caution.mark)] > 0, look = caution.kind == Caution::Kind::look;
  const std::string id = row_id(caution), brief = brief_words(caution, plan, style);
  const std::string words = std::string(caution.words) + here(caution, plan, style), note = origin(caution);
  const bool open = ui.session.view.unfolded == id;
  const std::string_view answer = look ? "Looked" : "Done";
  const float pill_w = std::max(kPillLeast, pen.width(answer, Face::bold, type::kLabel) + 28);
  const bool under = ui.w < 270;  // the answer below the words
  const float text_w = ui.w - kBeside - (ticked || under ? 0 : pill_w + space::kGap);
  constexpr float kMore = 26;
  const std::vector<std::string_view> names = pen.lines(caution.name, text_w - kMore, Face::bold, type::kBody);
  const std::vector<std::string_view> briefs = pen.lines(brief, text_w - 4, Face::regular, type::kLabel);
  const float step = type::line_height(type::kBody), small = type::line_height(type::kLabel);
  const float text_h = float(names.size()) * step + float(briefs.size()) * small;
  const float words_h = std::max(61.0F, text_h + 16);
  const Box box = ui.take(words_h + (under && !ticked ? space::kTarget + 2 * space::kGap : 0));
  // the tick: at first a word to press, then the mark that it made
  const Box mark{box.x + 1, box.y + 12, Ui::kTickMark, Ui::kTickMark};
  const Box pill = under
                       ? Box{box.x + kBeside, box.y + words_h + space::kGap, ui.w - kBeside, space::kTarget}
                       : Box{box.right() - pill_w, box.y + (words_h - space::kTarget) / 2, pill_w, space::kTarget};
  const Box hit = ticked ? Box{box.x, box.y + 3, space::kTarget, space::kTarget} : pill;
  const std::string tick_id = "tick:" + std::string(caution.mark);
  ui.tick_mark(mark, ticked, look);
  if (!ticked) {
    const bool down = ui.hand.down(tick_id);
    const ImU32 fill = down ? ui.theme.solid : ui.theme.fold;
    pen.fill(pill, fill, look::radius::kChip);
    pen.outline(pill, ui.theme.ink2, look::stroke::kOutline, look::radius::kChip);
    const look::Ground ground(pen, fill);
    pen.text(pill.mid_x(), look::Pen::centred(pill.mid_y(), type::kLabel), answer, Face::bold, type::kLabel,
             down ? ui.theme.on_solid : ui.theme.ink, look::Align::centre);
  }
  mirror::Node tick;
  tick.role = Role::checkbox;
  tick.id = tick_id;
  tick.name = std::string(caution.name) + ". " + words + " " + note;
  tick.checked = ticked ? 1 : 0;
  if (ui.target(std::move(tick), hit)) mark_as(ui, caution, !ticked);

  const float text_x = box.x + kBeside;
  const float from = ticked ? box.x + space::kTarget + space::kGap : box.x;
  const Box more{from, box.y, text_x + text_w - from, words_h};
  const ImU32 fill = ui.hand.down(id) ? ui.theme.fold : ui.theme.paper;
  if (ui.hand.down(id)) pen.fill({text_x - 4, more.y, more.right() - text_x + 4, more.h}, fill);
  {
    const look::Ground ground(pen, fill);
    float base = box.y + (words_h - text_h) / 2 + type::kBody;
    for (std::size_t i = 0; i < names.size(); ++i, base += step) {
      const float wide = pen.text(text_x, base, names[i], Face::bold, type::kBody, ui.theme.ink);
      if (i + 1 == names.size())
        pen.icon(open ? look::Icon::down : look::Icon::chev, text_x + wide + 6, base - 16, 20, ui.theme.ink);
    }
    base -= step - small;
    for (const std::string_view line : briefs) {
      pen.text(text_x, base, line, Face::regular, type::kLabel, ui.theme.ink2);
      base += small;
    }
  }
  mirror::Node unfold;
  unfold.role = Role::button;
  unfold.id = id;
  unfold.name = std::string(caution.name) + ", " + brief + ", the whole caution";
  unfold.expanded = open ? 1 : 0;
  if (ui.target(std::move(unfold), more, 0)) {
    ui.session.view.unfolded = open ? std::string{} : id;
    ui.wake_at(ui.now_s);
  }
  if (open) {
    const float left = ui.x, width = ui.w;
    ui.column(left + kBeside, width - kBeside, ui.y);
    told_small(ui, words, "caution:" + std::string(caution.key), Face::regular, ui.theme.ink);
    told_small(ui, note, "caution:" + std::string(caution.key) + ":source", Face::italic, ui.theme.ink2);
    ui.column(left, width, ui.y + 10);
  }
  ui.rule();
}

void told(Ui& ui, const Caution& caution) {
  const std::string id = "caution:" + std::string(caution.key);
  ui.gap(8);
  ui.paragraph(std::string(caution.name) + ": " + std::string(caution.brief) + ".", id, ui.theme.fails);
  told_small(ui, caution.words, id + ":words", Face::regular, ui.theme.ink);
  told_small(ui, origin(caution), id + ":source", Face::italic, ui.theme.ink2);
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

namespace {

constexpr float kAnswer = 64;

/// The first that nobody looked at yet, where it stands among those to look at, and how many these are.
struct NextLook {
  const Caution* caution = nullptr;
  int number = 0, of = 0;
};

NextLook next_look(const Plan& plan) {
  NextLook next;
  for (const Caution& caution : safety::cautions()) {
    if (caution.kind != Caution::Kind::look || !applies(caution, plan)) continue;
    ++next.of;
    if (next.caution != nullptr || plan[find_lever(caution.mark)] > 0) continue;
    next.caution = &caution;
    next.number = next.of;
  }
  return next;
}

std::string look_count(const NextLook& next) {
  return std::to_string(next.number) + " of " + std::to_string(next.of);
}

}  // namespace

float Ui::next_look_height() const {
  const NextLook next = next_look(session.plan());
  if (next.caution == nullptr) return 0;
  const float count_w = pen.width(look_count(next), Face::regular, type::kLabel) + 12;
  const std::size_t asks = pen.lines(next.caution->ask, w - count_w, Face::bold, type::kBody).size();
  const std::string brief = brief_words(*next.caution, session.plan(), session.style());
  const std::size_t briefs = pen.lines(brief, w, Face::regular, type::kLabel).size();
  return float(asks) * type::line_height(type::kBody) + float(briefs) * type::line_height(type::kLabel) + 12 +
         kAnswer + 8;
}

void Ui::next_look_foot() {
  const NextLook next = next_look(session.plan());
  if (next.caution == nullptr) return;
  const Caution& caution = *next.caution;
  const std::string count = look_count(next);
  const float count_w = pen.width(count, Face::regular, type::kLabel) + 12, top = y;
  pen.text(right(), y + type::kBody, count, Face::regular, type::kLabel, theme.ink2, look::Align::right);
  const float step = type::line_height(type::kBody);
  for (const std::string_view line : pen.lines(caution.ask, w - count_w, Face::bold, type::kBody)) {
    pen.text(x, y + type::kBody, line, Face::bold, type::kBody, theme.ink);
    gap(step);
  }
  node(Role::heading, "look:ask", std::string(caution.ask) + " " + count, {x, top, w, y - top}).level = 2;
  told_small(*this, brief_words(caution, session.plan(), session.style()), "look:brief", Face::regular, theme.ink2);
  gap(10);
  const Box row = take(kAnswer);
  const float each = (row.w - space::kGap) / 2;
  const auto answer = [&](float left, const char* id, std::string_view label, Weight weight) {
    return button_in({left, row.y, each, row.h}, id, label, weight, look::Icon::count, type::kBody, true,
                     std::string(caution.name) + ": " + std::string(label), look::radius::kButton);
  };
  if (answer(row.x, "look:trouble", caution.trouble, Weight::plain)) {
    // it stays not looked at, and the whole caution says what to do
    session.view.unfolded = row_id(caution);
    keyboard_to = row_id(caution);
    wake_at(now_s);
  }
  if (answer(row.x + each + space::kGap, "look:clear", caution.clear, Weight::main)) mark_as(*this, caution, true);
  gap(8);
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
