// Earlier outings: what they came to in three small plots and a row each, what they make usual, tables to take
// along.
#include <algorithm>
#include <cmath>

#include "app/parts/on_air.h"
#include "app/parts/plot.h"
#include "app/platform/platform.h"
#include "app/sheets/sheets.h"
#include "core/outing/archive.h"

namespace gs::sheets {

using look::Icon;
using mirror::Role;
using parts::Ui;
using parts::Weight;
namespace space = look::space;

namespace {

constexpr std::size_t kPlotted = 30, kShownMore = 50;
constexpr float kPlotHigh = 210;

double pace_of(const PastOuting& one) { return one.contacts * 60 / one.on_air_min; }

std::string name_of(const PastOuting& one) { return one.name.empty() ? "Outing without a name" : one.name; }

/// "Sat 13 Jun 2026", or "".
std::string day_of(const PastOuting& one) {
  const auto date = sky::read_date(one.date);
  return date ? sky::day_words(*date) + " " + std::to_string(date->year) : one.date;
}

std::string tenths(double value, const Style& style) {
  return say_quantity(value, Unit::none, digits_needed(std::round(value * 10) / 10, 1), style);
}

std::string of_target(const PastOuting& one) {
  const std::string contacts = say_quantity(one.contacts, Unit::none, 0);
  return one.target > 0 ? contacts + " of " + say_quantity(one.target, Unit::none, 0) : contacts;
}

/// The last ones, oldest first, along the axis of all three plots.
struct Plotted {
  std::span<const PastOuting> outings;
  int first;  // number of the first among all
  parts::PlotAxis axis() const {
    parts::PlotAxis axis{.title = "outing", .least = first - 0.5, .most = first + double(outings.size()) - 0.5};
    if (outings.size() <= 4)
      for (std::size_t i = 0; i < outings.size(); ++i) axis.marks.push_back(first + double(i));
    return axis;
  }
  template <class Value>
  std::vector<parts::PlotPoint> points(Value value) const {
    std::vector<parts::PlotPoint> points;
    for (std::size_t i = 0; i < outings.size(); ++i) points.push_back({first + double(i), value(outings[i])});
    return points;
  }
};

double most_of(std::initializer_list<std::span<const parts::PlotPoint>> curves, double least) {
  double most = least;
  for (const auto& curve : curves)
    for (const parts::PlotPoint& point : curve)
      if (point.y > most) most = point.y;
  return most * 1.25;
}

void dots(parts::Plot& plot, const std::vector<parts::PlotPoint>& points) {
  for (const parts::PlotPoint& point : points)
    if (std::isfinite(point.y)) plot.dots.push_back({point.x, point.y, {}});
}

void pace_plot(Ui& ui, const Plotted& shown) {
  const Style& style = ui.session.style();
  parts::Plot plot;
  plot.id = "history:pace";
  plot.name = "Pace of each outing";
  plot.x = shown.axis();
  const auto paces = shown.points(pace_of);
  const double usual = own_paces(ui.session.past()).front().per_hour;
  plot.y = {.title = "contacts an hour", .digits = 1, .least = 0, .most = most_of({paces}, usual)};
  plot.curves = {{parts::CurveKind::live, "pace", paces}};
  plot.lines = {{parts::PlotLine::Kind::need, false, usual, "usual " + tenths(usual, style)}};
  dots(plot, paces);
  plot.sentence = "The last outing had " + tenths(paces.back().y, style) + " an hour; together they make " +
                  tenths(usual, style) + " an hour usual.";
  ui.plot(plot, kPlotHigh);
}

void count_plot(Ui& ui, const Plotted& shown) {
  parts::Plot plot;
  plot.id = "history:count";
  plot.name = "Contacts of each outing, and its target";
  plot.x = shown.axis();
  const auto counts = shown.points([](const PastOuting& one) { return one.contacts; });
  const auto targets =
      shown.points([](const PastOuting& one) { return one.target > 0 ? one.target : std::nan(""); });
  plot.y = {.title = "contacts", .least = 0, .most = most_of({counts, targets}, 4)};
  plot.curves = {{parts::CurveKind::live, "contacts", counts}, {parts::CurveKind::other, "target", targets}};
  dots(plot, counts);
  const auto reached = std::count_if(shown.outings.begin(), shown.outings.end(), [](const PastOuting& one) {
    return one.target > 0 && one.contacts >= one.target;
  });
  plot.sentence =
      std::to_string(reached) + " of " + std::to_string(shown.outings.size()) + " reached their target.";
  ui.plot(plot, kPlotHigh);
}

void battery_plot(Ui& ui, const Plotted& shown) {
  const auto read = shown.points([](const PastOuting& one) { return one.left_pct.value_or(std::nan("")); });
  const auto planned =
      shown.points([](const PastOuting& one) { return one.left_planned_pct.value_or(std::nan("")); });
  const auto known = [](const parts::PlotPoint& point) { return std::isfinite(point.y); };
  const auto count = std::count_if(read.begin(), read.end(), known);
  if (count == 0) {
    ui.paragraph(
        "Battery left at leave-by has not been noted after an outing yet. Noted there, it stands here beside what "
        "was "
        "planned.",
        "history:battery:none", ui.theme.ink2);
    return;
  }
  parts::Plot plot;
  plot.id = "history:battery";
  plot.name = "Battery left at leave-by, planned and measured";
  plot.x = shown.axis();
  plot.y = {.title = "battery left", .unit = Unit::percent, .least = 0, .most = 100};
  plot.curves = {{parts::CurveKind::live, "measured", read}, {parts::CurveKind::pinned, "planned", planned}};
  dots(plot, read);
  double off = 0;
  int both = 0;
  for (std::size_t i = 0; i < read.size(); ++i)
    if (known(read[i]) && known(planned[i])) off += read[i].y - planned[i].y, ++both;
  const std::string points =
      both == 0 ? "" : say_quantity(std::abs(std::round(off / both)), Unit::none, 0) + " points ";
  plot.sentence = both == 0 ? std::string("Measured on ") + std::to_string(count) + ", planned on none of these."
                            : "On " + std::to_string(both) + " with both, " + points + (off < 0 ? "less" : "more") +
                                  " was left than planned on average.";
  ui.plot(plot, kPlotHigh);
}

void past_row(Ui& ui, std::size_t at) {
  Session& session = ui.session;
  const PastOuting one = session.past()[at];  // copied: what is done may change the list
  const Style& style = session.style();
  const std::string id = "past:" + std::to_string(at), day = day_of(one);
  const bool open = session.view.unfolded == id;
  const std::string value = of_target(one), pace = tenths(pace_of(one), style) + " an hour";
  if (ui.row(id, day.empty() ? name_of(one) : day + ", " + name_of(one), value,
             value + (one.target > 0 ? "" : " contacts") + ", " + pace, open ? 1 : 0)) {
    session.view.unfolded = open ? std::string{} : id;
    ui.wake_at(ui.now_s);
  }
  if (open) {
    const auto fact = [&](const char* key, std::string_view label, const std::string& words) {
      if (!words.empty()) ui.row(id + ":" + key, label, words, words, -1, false);
    };
    const auto percent = [&](const std::optional<double>& pct) {
      return pct ? say_quantity(*pct, Unit::percent, 0, style) : std::string{};
    };
    std::string antenna;
    for (const Option& kind : lever(L::antenna_kind).options())
      if (kind.key == one.antenna) antenna = kind.name;
    fact("pace", "Pace", pace);
    fact("time", "On the air", say_quantity(one.on_air_min, Unit::minute, 0, style));
    fact("set_up", "Set-up", one.set_up_min > 0 ? say_quantity(one.set_up_min, Unit::minute, 0, style) : "");
    fact("antenna", "Antenna", antenna);
    fact("left_planned", "Battery at leave-by, planned", percent(one.left_planned_pct));
    fact("left", "Battery at leave-by, measured", percent(one.left_pct));
    ui.gap();
    if (session.past_trouble().empty() &&
        ui.button(id + ":out", "Take it out of the history", Weight::plain, Icon::close)) {
      session.drop_past(at);
      session.view.unfolded.clear();
      ui.wake_at(ui.now_s);
    }
    ui.gap();
  }
  ui.rule();
}

/// The open outing where its day went by and nobody ended it: it would be forgotten otherwise.
void offer_open(Ui& ui) {
  Session& session = ui.session;
  if (session.phase() != Phase::after || session.in_history() || !session.past_trouble().empty()) return;
  const std::optional<PastOuting> open = past_of(session.outing(), session.now());
  if (!open || (session.dropped_past() && is_same_outing(*open, *session.dropped_past()))) return;
  ui.paragraph(name_of(*open) + " was on the air" + (open->date.empty() ? "" : " on " + day_of(*open)) +
                   " and does not count here yet: " + of_target(*open) + " contacts in " +
                   say_quantity(open->on_air_min, Unit::minute, 0, session.style()) + ".",
               "history:open", ui.theme.ink);
  ui.gap();
  if (ui.button("history:keep", "Count " + name_of(*open) + " among them", Weight::plain, Icon::plus)) {
    session.put_into_history();
    ui.wake_at(ui.now_s);
  }
  ui.gap(16);
}

void rows(Ui& ui) {
  Session& session = ui.session;
  ui.section("Outing by outing", "history:outings");
  if (session.dropped_past()) {
    if (ui.button("past:back", "Bring back " + name_of(*session.dropped_past()), Weight::plain, Icon::undo)) {
      session.bring_back_past();
      ui.wake_at(ui.now_s);
    }
    ui.gap();
  }
  const std::size_t all = session.past().size(), shown = std::min(all, session.view.past_shown);
  for (std::size_t i = all; i-- > all - shown;)
    past_row(ui, i);  // the newest first; one taken out stands behind it
  if (shown < all) {
    ui.gap();
    if (ui.button("past:more", "Show older ones, " + std::to_string(all - shown), Weight::plain, Icon::down)) {
      session.view.past_shown += kShownMore;
      ui.wake_at(ui.now_s);
    }
  }
  ui.gap(16);
}

/// What outings made usual, each given back with a tap.
void made_usual(Ui& ui) {
  Session& session = ui.session;
  ui.section("Usual from your outings", "history:usual");
  parts::pace_from(ui);
  const std::vector<OwnUsual> usual = session.settings.usual;  // copied: a tap changes it
  if (usual.empty())
    ui.paragraph("Nothing else was adopted yet. After an outing, what was measured can be.", "history:usual:none",
                 ui.theme.ink2);
  for (const OwnUsual& own : usual) {
    const L id = find_lever(own.key);
    if (!is_lever(id)) continue;
    const std::string text = say_lever(lever(id), own.value, session.style());
    ui.row("usual:" + own.key, lever(id).name, text, text, -1);
    if (ui.button("usual:" + own.key + ":drop", "No longer: " + lower_first(std::string(lever(id).name)),
                  Weight::plain, Icon::undo)) {
      session.drop_usual(own.key);
      ui.wake_at(ui.now_s);
    }
    ui.gap();
    ui.rule();
  }
  ui.gap(16);
}

void to_take_along(Ui& ui) {
  const Session& session = ui.session;
  ui.section("To take along", "history:files");
  if (ui.button("history:csv", "Save as a table", Weight::plain, Icon::count))
    platform::save_file("earlier-outings.csv", history_csv(session.past()));
  ui.gap();
  if (platform::can_share()) {
    if (ui.button("history:share", "Share the table", Weight::plain, Icon::count))
      platform::share_file("earlier-outings.csv", history_csv(session.past()));
    ui.gap();
  }
  if (ui.button("history:file", "Save as a file for another device", Weight::plain, Icon::count))
    platform::save_file("earlier-outings.json", write_history(session.past(), session.past_kept()));
  ui.gap();
  ui.paragraph("Opened there like an outing file, its outings are added to those that are there.",
               "history:file:words", ui.theme.ink2);
  ui.gap(24);
}

}  // namespace

void open_history(Ui& ui) {
  ui.session.view = View{};
  ui.session.view.sheet = Sheet::history;
  ui.hand.scroll_to("history", 0);
  ui.wake_at(ui.now_s);
}

void history(Ui& ui) {
  const Session& session = ui.session;
  const std::vector<PastOuting>& past = session.past();
  const float left = ui.surface.x + ui.margin(), width = ui.surface.w - 2 * ui.margin(), top = ui.y;
  ui.open_group(Role::main, "main", "Earlier outings",
                {ui.surface.x, top, ui.surface.w, ui.surface.bottom() - top});
  ui.begin_scroll("history", {ui.surface.x, top, ui.surface.w, ui.surface.bottom() - top});
  ui.column(left, width, ui.y + 12);
  ui.title("Earlier outings", "sheet");
  ui.gap();
  if (!session.past_trouble().empty()) {
    ui.paragraph(session.past_trouble(), "history:trouble", ui.theme.fails);
    ui.gap();
  }
  offer_open(ui);
  const bool two = width > 760;
  const float each = two ? (width - 40) / 2 : width, start = ui.y;
  ui.column(left, each, start);
  if (past.empty()) {
    ui.paragraph(
        "None yet. An outing stands here once it was on the air and was ended: how many contacts in how many "
        "minutes, "
        "and nothing about anybody. From then on the usual pace comes from your own outings.",
        "history:none", ui.theme.ink);
    ui.gap(16);
    if (session.dropped_past()) rows(ui);
  } else {
    const std::size_t count = std::min(past.size(), kPlotted);
    const Plotted shown{std::span(past).last(count), int(past.size() - count) + 1};
    pace_plot(ui, shown);
    count_plot(ui, shown);
    battery_plot(ui, shown);
    ui.gap(16);
  }
  const float first_bottom = ui.y;
  if (two) ui.column(left + each + 40, each, start);
  if (!past.empty()) rows(ui);
  made_usual(ui);
  if (!past.empty()) to_take_along(ui);
  ui.y = std::max(ui.y, first_bottom);
  ui.end_scroll();
  ui.close_group();
}

}  // namespace gs::sheets
