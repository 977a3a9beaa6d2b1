// After the outing: planned beside what happened, what may become usual, what was measured, tables to take along.
#include <algorithm>
#include <cmath>

#include "app/parts/change.h"
#include "app/parts/on_air.h"
#include "app/parts/stepper.h"
#include "app/platform/platform.h"
#include "app/sheets/begin.h"
#include "app/sheets/sheets.h"
#include "core/outing/beside.h"

namespace gs::sheets {

using look::Align;
using look::Box;
using look::Face;
using look::Icon;
using mirror::Role;
using parts::Ui;
namespace type = look::type;
namespace space = look::space;

namespace {

constexpr float kChipWide = 110;

std::string say(const Beside& row, double value, const Style& style) {
  if (!std::isfinite(value)) return "\u2013";
  return say_quantity(value, row.unit, digits_needed(value, std::max(row.digits, 1)), style);
}

/// "+8 min" with its triangle; nothing where one of both is not known.
void draw_change(Ui& ui, const Beside& row, float x, float base) {
  if (!std::isfinite(row.change())) return;
  const bool same = say(row, row.planned, ui.session.style()) == say(row, row.happened, ui.session.style());
  const bool better = (row.change() > 0) == (row.better == Better::more);
  const bool judged = row.better != Better::neither && !same;
  const look::Delta delta = !judged ? look::Delta::same : better ? look::Delta::better : look::Delta::worse;
  const ImU32 colour = !judged ? ui.theme.ink2 : better ? ui.theme.holds : ui.theme.fails;
  std::string text = "same";
  if (!same) text = (row.change() > 0 ? "+" : "\u2212") + say(row, std::abs(row.change()), ui.session.style());
  ui.pen.delta(delta, x, base, colour);
  ui.pen.text(x + 18, base, text, judged ? Face::bold : Face::regular, type::kLabel, colour);
}

bool adopt_chip(Ui& ui, const Beside& row, Box box) {
  const std::string id = "adopt:" + row.key;
  const bool taken = ui.session.view.adopted.count(row.key) != 0;
  const bool dark = taken != ui.hand.down(id);
  const ImU32 fill = dark ? ui.theme.solid : ui.theme.fold, ink = dark ? ui.theme.on_solid : ui.theme.ink;
  ui.pen.fill(box, fill, look::radius::kChip);
  if (!dark || ui.theme.on_solid != ui.theme.paper)
    ui.pen.outline(box, ui.theme.ink2, look::stroke::kOutline, look::radius::kChip);
  const look::Ground ground(ui.pen, fill);
  const float shift = taken ? 12 : 0;
  if (taken) ui.pen.icon(Icon::check, box.x + 10, box.mid_y() - 10, 20, ink);
  ui.pen.text(box.mid_x() + shift, look::Pen::centred(box.mid_y(), type::kLabel), taken ? "Adopted" : "Adopt",
              Face::bold, type::kLabel, ink, Align::centre);
  mirror::Node record;
  record.role = Role::checkbox;
  record.id = id;
  record.name = "Adopt " + lower_first(row.name) + ", " + say(row, row.happened, ui.session.style());
  record.checked = taken ? 1 : 0;
  return ui.target(std::move(record), box);
}

void one_row(Ui& ui, const Beside& row) {
  const Style& style = ui.session.style();
  const bool narrow = ui.w < 560, slim = ui.w < 340;
  const std::vector<std::string_view> names =
      ui.pen.lines(row.name, narrow ? ui.w : ui.w * 0.3F, row.can_adopt ? Face::bold : Face::regular, type::kBody);
  const float rest = narrow ? type::line_height(type::kBody) * float(names.size() - 1) : 0;
  const float slim_h = row.can_adopt ? 86 + space::kTarget : 86;
  const Box box = ui.take(slim     ? slim_h + rest
                          : narrow ? (row.can_adopt ? 78.0F : 66.0F) + rest
                                   : (row.can_adopt ? 56.0F : 42.0F));
  const std::string planned = say(row, row.planned, style), happened = say(row, row.happened, style);
  const float base = narrow ? box.y + 24 : look::Pen::centred(box.mid_y(), type::kBody);
  float name_base = base - (narrow ? 0 : 11 * float(names.size() - 1));
  for (const std::string_view line : names) {
    ui.pen.text(box.x, name_base, line, row.can_adopt ? Face::bold : Face::regular, type::kBody, ui.theme.ink);
    name_base += narrow ? type::line_height(type::kBody) : 22;
  }
  const float figures = narrow ? box.y + 52 + rest : base;
  const float planned_x = narrow ? box.x + 70 : box.x + box.w * 0.46F;
  const float happened_x = narrow ? box.x + 150 : box.x + box.w * 0.62F;
  ui.pen.figure(planned_x, figures, planned, type::kLead, ui.theme.pin, Align::right);
  ui.pen.figure(happened_x, figures, happened, type::kLead, ui.theme.ink, Align::right);
  // slim: the change below the figures it is the change of
  draw_change(ui, row, slim ? box.x : happened_x + 16, slim ? figures + 24 : figures);
  mirror::Node& node = ui.node(Role::row, "beside:" + row.key,
                               row.name + ": planned " + planned + ", happened " +
                                   (std::isfinite(row.happened) ? happened : "not measured") +
                                   (row.follows.empty() ? "" : ", from " + row.follows),
                               box);
  node.value.clear();
  if (row.can_adopt) {
    const Box chip{box.right() - kChipWide,
                   (slim     ? box.bottom() - space::kTarget - 4
                    : narrow ? box.y + 26 + rest
                             : box.mid_y() - 24),
                   kChipWide, space::kTarget};
    if (adopt_chip(ui, row, chip)) {
      auto& adopted = ui.session.view.adopted;
      if (adopted.erase(row.key) == 0) adopted.insert(row.key);
      ui.wake_at(ui.now_s);
    }
  } else if (!row.follows.empty() && !narrow &&
             ui.pen.width(row.follows, Face::italic, type::kTick) < box.right() - happened_x - 120) {
    ui.pen.text(box.right(), base, row.follows, Face::italic, type::kTick, ui.theme.contour, Align::right);
  }
  ui.rule();
}

void table(Ui& ui, const std::vector<Beside>& rows) {
  const float top = ui.y;
  const std::size_t at = ui.tree.nodes.size();
  ui.open_group(Role::table, "after:beside", "Planned beside what happened", {ui.x, top, ui.w, 0});
  for (const bool adoptable : {true, false}) {
    if (std::none_of(rows.begin(), rows.end(), [&](const Beside& row) { return row.can_adopt == adoptable; }))
      continue;
    const Box head = ui.take(34);
    const std::string_view words = adoptable ? "Can be adopted" : "Followed from these";
    ui.pen.text(head.x, head.y + 24, words, Face::bold, type::kLabel, ui.theme.ink);
    if (ui.w >= 560 && adoptable) {
      ui.pen.text(head.x + head.w * 0.46F, head.y + 24, "planned", Face::bold, type::kLabel, ui.theme.pin,
                  Align::right);
      ui.pen.text(head.x + head.w * 0.62F, head.y + 24, "happened", Face::bold, type::kLabel, ui.theme.ink,
                  Align::right);
    }
    ui.rule();
    for (const Beside& row : rows)
      if (row.can_adopt == adoptable) one_row(ui, row);
  }
  ui.tree.nodes[at].h = ui.y - top;
  ui.close_group();
}

/// Those chips that are chosen, as they would become usual.
std::vector<OwnUsual> adopted_of(const Session& session, const std::vector<Beside>& rows) {
  std::vector<OwnUsual> adopted;
  for (const Beside& row : rows)
    if (row.can_adopt && session.view.adopted.count(row.key) != 0) adopted.push_back({row.key, row.happened});
  return adopted;
}

void again(Ui& ui, const std::vector<Beside>& rows) {
  Session& session = ui.session;
  const std::vector<OwnUsual> adopted = adopted_of(session, rows);
  const std::string target = value_text(session.plan(), L::pace_target, session.style());
  ui.section("The same outing again", "after:again");
  const double planned = chance_again_pct(session.outing(), {});
  if (!std::isfinite(planned)) {
    ui.paragraph("Its chance is not known.", "after:again:none", ui.theme.ink2);
  } else {
    const auto line = [&](const char* id, const std::string& words, double pct, ImU32 colour) {
      const std::string text = say_quantity(pct, Unit::percent, 0, session.style());
      const float room = ui.w - ui.pen.figure_width(text, type::kValue) - 12;
      const float lines = float(ui.pen.lines(words, room, Face::regular, type::kBody).size());
      const Box box = ui.take(16 + 24 * lines);
      ui.pen.paragraph(box.x, box.y + 26, room, words, Face::regular, type::kBody, colour);
      ui.pen.figure(box.right(), box.y + 28, text, type::kValue, colour, Align::right);
      ui.node(Role::text, id, "Chance of " + target + ", " + words + ": " + text, box);
    };
    line("after:planned", "as planned", planned, ui.theme.pin);
    if (!adopted.empty())
      line("after:adopted", "with " + std::to_string(adopted.size()) + " adopted",
           chance_again_pct(session.outing(), adopted), ui.theme.ink);
  }
  ui.gap();
  ui.paragraph("This outing stays as it was; what you adopt becomes usual for outings that set nothing else.",
               "after:words", ui.theme.ink2);
  ui.gap(12);
  const std::string label =
      adopted.empty() ? "Choose what to adopt" : "Use " + std::to_string(adopted.size()) + " from now on";
  if (ui.button_in(ui.take(space::kTargetMain), "after:use", label, parts::Weight::main,
                   adopted.empty() ? Icon::count : Icon::check, type::kBody, !adopted.empty())) {
    session.make_usual(adopted);
    session.view.adopted.clear();
    session.notes.push_back(std::to_string(adopted.size()) + (adopted.size() == 1 ? " value is" : " values are") +
                            " usual from now on.");
    ui.wake_at(ui.now_s);
  }
  ui.gap(16);
}

void measured(Ui& ui) {
  Session& session = ui.session;
  ui.section("Measured in the park", "after:measured");
  for (const Measurable& row : measurable(session.plan())) {
    const std::string id = "measure:" + std::string(row.key);
    const Measured* found = last_measured(session.outing().happened, row.key);
    const double* number = found ? std::get_if<double>(&found->value) : nullptr;
    if (!number) {
      if (ui.row(id, row.name, "not measured", "not measured, enter it", 0, false)) {
        const L lever_id = find_lever(row.key);
        const R reading_id = find_reading(row.key);
        double from = is_lever(lever_id) ? session.plan()[lever_id] : session.outlook()[reading_id].value;
        if (!std::isfinite(from)) from = row.least;
        from = std::clamp(std::round(from / row.step) * row.step, row.least, row.most);
        session.note_measured(std::string(row.key), from, session.now().utc_s);
        ui.wake_at(ui.now_s);
      }
      continue;
    }
    const std::string text =
        say_quantity(*number, row.unit, digits_needed(*number, std::max(1, row.digits)), session.style());
    if (const auto wanted =
            parts::stepper_row(ui, {id, std::string(row.name), text, *number, row.least, row.most, row.step})) {
      const double value = std::clamp(std::round(*wanted / row.step * 1e6) / 1e6 * row.step, row.least, row.most);
      session.note_measured(std::string(row.key), std::round(value * 1e6) / 1e6, session.now().utc_s);
      ui.wake_at(ui.now_s);
    }
  }
  ui.gap(16);
}

void counted(Ui& ui) {
  const Session& session = ui.session;
  const Live now = parts::live(session);
  const std::string count = std::to_string(now.counted);
  const bool enough = now.counts >= now.target;
  const std::string words =
      "of " + std::to_string(now.target) + " contacts: " + (enough ? "it counted" : "not enough");
  const float count_room = ui.w - ui.pen.figure_width(count, type::kHeadline) - 16;
  const float count_lines = float(ui.pen.lines(words, count_room, Face::bold, type::kLabel).size());
  const Box box = ui.take(60 + 21 * (count_lines - 1));
  const float count_w = ui.pen.figure(box.x, box.y + 44, count, type::kHeadline, ui.theme.ink);
  ui.pen.paragraph(box.x + count_w + 16, box.y + 42, count_room, words, Face::bold, type::kLabel, ui.theme.ink);
  ui.node(Role::text, "after:count", count + " " + words, box);
  constexpr float kHigh = 40;
  int shown = now.counted;
  while (shown > 0 && look::Pen::tally_width(kHigh, shown, 0) > ui.w) --shown;
  ui.pen.tally(ui.x, ui.take(kHigh + 16).y, kHigh, shown, 0, ui.theme.ink, ui.theme.ink2);
}

/// An outing that was ended stands in the history by itself; one whose day went by only when the person says so.
void kept_in_history(Ui& ui) {
  Session& session = ui.session;
  if (session.phase() != Phase::after) return;
  ui.section("Earlier outings", "after:history");
  if (session.in_history()) {
    ui.paragraph("It stands among them and counts for the usual pace of the next.", "after:kept", ui.theme.ink2);
  } else if (!past_of(session.outing(), session.now())) {
    ui.paragraph("Less than a minute on the air says nothing of a pace: it does not stand among them.",
                 "after:too_short", ui.theme.ink2);
  } else if (session.past_trouble().empty()) {
    if (ui.button("after:keep", "Count it among them", parts::Weight::plain, Icon::plus)) {
      session.put_into_history();
      ui.wake_at(ui.now_s);
    }
  } else {
    ui.paragraph(session.past_trouble(), "after:past_trouble", ui.theme.fails);
  }
  ui.gap();
  if (ui.button("after:open_history", "Look at all of them", parts::Weight::plain, Icon::contacts))
    open_history(ui);
  ui.gap(16);
}

void to_take_along(Ui& ui, const std::vector<Beside>& rows) {
  Session& session = ui.session;
  ui.section("To take along", "after:files");
  const std::string name = file_stem(session.outing().name);
  if (ui.button("after:tally", "Save the tally as a table", parts::Weight::plain, Icon::count))
    platform::save_file(name + "-tally.csv", tally_csv(session.plan(), session.now()));
  ui.gap();
  if (ui.button("after:table", "Save planned and happened as a table", parts::Weight::plain, Icon::count))
    platform::save_file(name + "-planned-happened.csv", beside_csv(rows));
  ui.gap(24);
}

}  // namespace

void after(Ui& ui) {
  Session& session = ui.session;
  if (!ui.low()) ui.chain_strip(Link::contacts);
  const Box all{ui.surface.x, ui.y, ui.surface.w, ui.surface.bottom() - ui.y};
  ui.open_group(Role::main, "main", "After the outing", all);
  const std::vector<Beside> rows = planned_beside_happened(session.plan(), session.now());
  ui.begin_scroll("after", all);
  if (ui.low()) ui.chain_strip(Link::contacts);
  const float margin = ui.margin(), wide = all.w - 2 * margin;
  const bool two = wide > 860;
  const float first_w = two ? wide * 0.66F - 18 : wide, top = ui.y + 8;
  ui.column(all.x + margin, first_w, top);
  ui.title("After the outing", "sheet");
  ui.paragraph((session.outing().date.empty() ? std::string() : session.outing().date + ", ") +
                   "planned beside what happened",
               "after:what", ui.theme.ink2);
  if (rows.empty()) {
    ui.gap();
    ui.paragraph("Nothing happened yet. Start being on the air on the day of the outing.", "after:none",
                 ui.theme.ink);
  } else {
    table(ui, rows);
    ui.gap(16);
    measured(ui);
    const float first_bottom = ui.y;
    if (two) ui.column(all.x + margin + wide * 0.66F + 18, wide * 0.34F - 18, top);
    counted(ui);
    ui.rule();
    again(ui, rows);
    kept_in_history(ui);
    to_take_along(ui, rows);
    ui.y = std::max(ui.y, first_bottom);
  }
  ui.end_scroll();
  ui.close_group();
}

}  // namespace gs::sheets
