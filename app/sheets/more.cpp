#include <algorithm>

#include "app/platform/platform.h"
#include "app/sheets/begin.h"
#include "app/sheets/sheets.h"
#include "core/outing/archive.h"
#include "core/outing/utf8.h"

namespace gs::sheets {

using look::Box;
using look::Icon;
using mirror::Role;
using parts::Ui;

namespace {

template <class T>
bool pick(Ui& ui, std::string_view id, std::string_view name, T& value,
          std::initializer_list<std::pair<T, const char*>> options) {
  const int lines =
      ui.pen.paragraph(ui.x, ui.y + 20, ui.w, name, look::Face::bold, look::type::kBody, ui.theme.ink);
  ui.gap(4 + 24 * float(lines));
  std::vector<Ui::Chip> items;
  for (const auto& option : options)
    items.push_back({std::string(id) + "=" + option.second, option.second, {}, option.first == value});
  const int tapped = ui.chips(id, name, items);
  ui.gap(16);
  if (tapped < 0) return false;
  value = (options.begin() + tapped)->first;
  ui.wake_at(ui.now_s);
  return true;
}

/// The class counts for every outing that does not say otherwise.
void licence(Ui& ui) {
  ui.pen.text(ui.x, ui.y + 20, "Licence class", look::Face::bold, look::type::kBody, ui.theme.ink);
  ui.gap(28);
  const std::string& now = ui.session.settings.licence;
  std::vector<Ui::Chip> items{{"settings.licence=none", "not said", {}, now.empty()}};
  const std::span<const Option> options = lever(L::rules_class).options();
  for (const Option& option : options)
    items.push_back(
        {"settings.licence=" + std::string(option.key), std::string(option.name), {}, option.key == now});
  const int tapped = ui.chips("settings.licence", "Licence class", items);
  ui.gap(16);
  if (tapped < 0) return;
  ui.session.set_licence(tapped == 0 ? std::string{} : std::string(options[std::size_t(tapped) - 1].key));
  ui.wake_at(ui.now_s);
}

}  // namespace

void more(Ui& ui) {
  Session& session = ui.session;
  const float left = ui.surface.x + ui.margin(), width = ui.surface.w - 2 * ui.margin();
  const float top = ui.y;
  ui.open_group(Role::main, "main", "More", {ui.surface.x, top, ui.surface.w, ui.surface.bottom() - top});
  ui.begin_scroll("more", {ui.surface.x, top, ui.surface.w, ui.surface.bottom() - top});
  const bool two = width > 760;
  const float each = two ? (width - 40) / 2 : width, start = ui.y + 16;
  ui.column(left, each, start);
  ui.section("How it reads", "more:reads");
  pick(ui, "settings.text", "Text size", session.settings.text_pct,
       {{100, "100 %"}, {125, "125 %"}, {150, "150 %"}, {200, "200 %"}});
  pick(ui, "settings.hand", "Controls for the", session.settings.left_hand,
       {{false, "right hand"}, {true, "left hand"}});
  pick(ui, "settings.length", "Lengths and weights", session.settings.style.feet,
       {{false, "metres"}, {true, "feet"}});
  pick(ui, "settings.decimal", "Decimal sign", session.settings.style.decimal_sign,
       {{'.', "point 7.5"}, {',', "comma 7,5"}});
  licence(ui);
  pick(ui, "settings.temperature", "Temperatures", session.settings.style.fahrenheit,
       {{false, "\u00B0C"}, {true, "\u00B0F"}});
  const float first_bottom = ui.y;
  if (two) ui.column(left + each + 40, each, start);
  ui.section("This outing", "more:outing");
  Session* const keeper = &session;  // outlives every frame
  ui.text_field({.id = "outing:title",
                 .label = "Name of this outing",
                 .value = session.outing().name,
                 .hint = {},
                 .most_chars = kMostNameChars,
                 .commit = [keeper](const std::string& name) { return keeper->rename_kept(keeper->key(), name); }});
  ui.gap();
  ui.text_field({.id = "outing:notes",
                 .label = "Notes",
                 .value = session.outing().notes,
                 .hint = "where to park, who to ask, what to try next time; kept in the outing's file",
                 .most_chars = kMostNotesChars,
                 .lines = 4,
                 .commit = [keeper](const std::string& words) {
                   keeper->note_down(clean_lines(words, kMostNotesChars));
                   return std::string{};
                 }});
  ui.gap();
  const std::size_t kept = session.shelf.outings().size();
  const std::string all = kept < 2 ? std::string("Outings") : "Outings, " + std::to_string(kept);
  if (ui.button("outings", all, parts::Weight::plain, Icon::kit)) {
    session.put_away();
    session.view = View{};
    session.view.sheet = Sheet::outings;
    ui.hand.scroll_to("outings", 0);
    ui.wake_at(ui.now_s);
  }
  ui.gap();
  if (ui.button("things", "My own things", parts::Weight::plain, Icon::battery)) {
    session.view = View{};
    session.view.sheet = Sheet::things;
    ui.hand.scroll_to("things", 0);
    ui.wake_at(ui.now_s);
  }
  ui.gap();
  const std::size_t past = session.past().size();
  if (ui.button("history", past == 0 ? std::string("Earlier outings") : "Earlier outings, " + std::to_string(past),
                parts::Weight::plain, Icon::contacts))
    open_history(ui);
  ui.gap();
  if (ui.button("file:save", "Save a copy as a file", parts::Weight::plain, Icon::count))
    platform::save_file(file_name(session.outing().name), write_outing(session.outing()));
  ui.gap();
  if (ui.button("file:open", "Open an outing file", parts::Weight::plain, Icon::count) && !platform::pick_file()) {
    session.notes.push_back("Drop the file onto this window.");
    ui.wake_at(ui.now_s);
  }
  ui.gap();
  if (ui.button("outing:sample", "Start from the sample outing", parts::Weight::plain, Icon::kit)) {
    session.open(sample_outing(), "opening the sample");
    session.view.sheet = Sheet::overview;
    ui.wake_at(ui.now_s);
  }
  ui.gap();
  if (ui.button("outing:new", "Begin a new outing", parts::Weight::plain, Icon::plus)) {
    session.open(new_outing(), "beginning a new outing");
    session.view.sheet = Sheet::overview;
    ui.wake_at(ui.now_s);
  }
  ui.gap(16);
  ui.section("About", "more:about");
  ui.paragraph(
      "Groundsheet computes an outing as one chain, from the battery to the contacts. Figures are as good as what "
      "they "
      "rest on: Why shows it. Local rules, licensed practice and your own eyes come first.",
      "more:words", ui.theme.ink);
  ui.gap();
  if (ui.button("page:methods", "How the figures are made", parts::Weight::plain, Icon::why))
    ui.show_page("methods.html");
  ui.gap();
  if (ui.button("page:licences", "Licences", parts::Weight::plain, Icon::count)) ui.show_page("licences.html");
  ui.gap(24);
  ui.y = std::max(ui.y, first_bottom);
  ui.end_scroll();
  ui.close_group();
}

}  // namespace gs::sheets
