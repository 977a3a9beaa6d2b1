// All outings that are kept here: open one, copy, rename, hand out, throw away and bring back; and where else to
// begin.
#include <algorithm>

#include "app/platform/platform.h"
#include "app/sheets/begin.h"
#include "app/sheets/sheets.h"
#include "core/outing/archive.h"

namespace gs::sheets {

using look::Box;
using look::Face;
using look::Icon;
using mirror::Role;
using parts::Ui;
using parts::Weight;
namespace type = look::type;
namespace space = look::space;

namespace {

constexpr float kRowHigh = 64;

std::string shown_name(const KeptOuting& kept) {
  return !kept.name.empty() ? kept.name : kept.trouble.empty() ? "Outing without a name" : "Cannot be read";
}

void go_to_overview(Ui& ui) {
  ui.session.view = View{};
  ui.wake_at(ui.now_s);
}

/// What is done to one outing; stands below its row while that is open.
void actions(Ui& ui, const KeptOuting& kept) {
  const std::string key = kept.key, name = shown_name(kept), text = kept.text;
  ui.gap();
  if (kept.trouble.empty()) {
    Session* const keeper = &ui.session;  // outlives every frame
    ui.text_field(
        {.id = key + ":rename",
         .label = "Name",
         .value = kept.name,
         .hint = {},
         .most_chars = kMostNameChars,
         .commit = [keeper, key](const std::string& wanted) { return keeper->rename_kept(key, wanted); }});
    ui.gap();
  }
  struct Action {
    const char* id;
    const char* label;
    bool offered;
  };
  const Action all[] = {{"copy", "Duplicate", kept.trouble.empty()},
                        {"save", "Save as a file", true},
                        {"share", "Share", platform::can_share()},
                        {"bin", "Throw away", true}};
  std::vector<Action> offered;
  std::copy_if(std::begin(all), std::end(all), std::back_inserter(offered),
               [](const Action& action) { return action.offered; });
  const std::size_t across = ui.w < 260 ? 1 : 2;
  const float each = across == 1 ? ui.w : (ui.w - space::kGap) / 2;
  std::string done;
  for (std::size_t i = 0; i < offered.size(); ++i) {
    const Box box{ui.x + float(i % across) * (each + space::kGap), ui.y, each, space::kTargetMain};
    const std::string id = key + ":" + offered[i].id;
    if (ui.button_in(box, id, offered[i].label, Weight::plain, Icon::count, type::kBody, true,
                     std::string(offered[i].label) + ", " + name))
      done = offered[i].id;
    if (i % across == across - 1 || i + 1 == offered.size()) ui.gap(space::kTargetMain + space::kGap);
  }
  if (done.empty()) return;
  if (done == "copy") ui.session.duplicate(key);
  if (done == "save") platform::save_file(file_name(kept.name), text);
  if (done == "share") platform::share_file(file_name(kept.name), text);
  if (done == "bin") ui.session.throw_away(key);
  if (done == "copy" || done == "bin") ui.session.view.unfolded.clear();
  ui.wake_at(ui.now_s);
}

void outing_row(Ui& ui, const KeptOuting& kept) {
  look::Pen& pen = ui.pen;
  const bool open_now = kept.key == ui.session.key();
  const std::string name = shown_name(kept), id = "open:" + kept.key, more = kept.key + ":more";
  std::string below = kept.trouble.empty() ? kept.date : kept.trouble;
  const auto add = [&below](std::string_view words) {
    below += (below.empty() ? "" : " \u00B7 ") + std::string(words);
  };
  if (open_now) add("open now");
  if (kept.newer) add("made by a newer version");
  const float text_w = ui.w - 2 * space::kTarget - 8;
  const int lines = std::max(1, int(pen.lines(below, text_w, Face::regular, type::kLabel).size()));
  const std::vector<std::string_view> names = pen.lines(name, text_w, Face::bold, type::kBody);
  const float step = type::line_height(type::kBody), rest = step * float(names.size() - 1);
  const Box row = ui.take(kRowHigh + rest + float(lines - 1) * type::line_height(type::kLabel));
  const Box main{row.x, row.y, row.w - space::kTarget - space::kGap, row.h};
  const Box side{row.right() - space::kTarget, row.y + 8, space::kTarget, space::kTarget};
  const bool pressed = ui.hand.down(id);
  if (pressed) pen.fill(main, ui.theme.fold);
  {
    const look::Ground ground(pen, pressed ? ui.theme.fold : pen.ground());
    pen.icon(open_now ? Icon::check : Icon::kit, main.x + 4, main.y + 14, 24, ui.theme.ink);
    pen.paragraph(main.x + 40, main.y + 27, text_w, name, Face::bold, type::kBody, ui.theme.ink);
    pen.paragraph(main.x + 40, main.y + 50 + rest, text_w, below, Face::regular, type::kLabel, ui.theme.ink2);
  }
  mirror::Node record;
  record.role = Role::button;
  record.id = id;
  record.name = (kept.trouble.empty() ? "Open " : "") + name + (below.empty() ? "" : ", " + below);
  record.current = open_now;
  record.disabled = !kept.trouble.empty();
  const bool tapped = ui.target(std::move(record), main, 0);
  const bool unfolded = ui.session.view.unfolded == more;
  if (ui.icon_button(side, more, "More for " + name, unfolded ? Icon::down : Icon::more, ui.theme.ink)) {
    ui.session.view.unfolded = unfolded ? std::string{} : more;
    ui.wake_at(ui.now_s);
  }
  ui.last_node().expanded = unfolded ? 1 : 0;
  if (unfolded) actions(ui, kept);
  ui.rule();
  if (!tapped) return;
  const std::string why = ui.session.open_kept(kept.key);
  if (!why.empty()) ui.session.notes.push_back(why);
  go_to_overview(ui);
}

void shelf(Ui& ui) {
  ui.section("Kept on this device", "outings:kept");
  // the next outing first, those without a date last; copied, since a row may change the shelf
  std::vector<KeptOuting> all = ui.session.shelf.outings();
  std::stable_sort(all.begin(), all.end(),
                   [](const KeptOuting& a, const KeptOuting& b) { return a.date > b.date; });
  if (all.empty())
    ui.paragraph("None yet: an outing is kept as soon as something is set.", "outings:none", ui.theme.ink2);
  const std::size_t group_at = ui.tree.nodes.size();
  const float top = ui.y;
  ui.open_group(Role::group, "outings:list", "Outings", {ui.x, top, ui.w, 0});
  for (const KeptOuting& kept : all) outing_row(ui, kept);
  ui.tree.nodes[group_at].h = ui.y - top;
  ui.close_group();
}

void thrown_away(Ui& ui) {
  const std::vector<KeptOuting> bin = ui.session.shelf.bin();
  if (bin.empty()) return;
  ui.gap(16);
  ui.section("Thrown away lately", "outings:bin");
  for (auto kept = bin.rbegin(); kept != bin.rend(); ++kept) {
    if (ui.button("back:" + kept->key, "Bring back " + shown_name(*kept), Weight::plain, Icon::undo)) {
      ui.session.shelf.bring_back(kept->key);
      ui.wake_at(ui.now_s);
    }
    ui.gap();
  }
  ui.paragraph("The last ten are kept.", "outings:bin:words", ui.theme.ink2);
}

void begin(Ui& ui) {
  Session& session = ui.session;
  ui.section("Begin", "outings:begin");
  if (ui.button("outings:new", "Begin a new outing", Weight::main, Icon::plus)) {
    session.open(new_outing(), "beginning a new outing");
    go_to_overview(ui);
  }
  ui.gap();
  if (ui.button("outings:file", "Open an outing file", Weight::plain, Icon::count) && !platform::pick_file()) {
    session.notes.push_back("Drop the file onto this window.");
    ui.wake_at(ui.now_s);
  }
  ui.gap(16);
  ui.section("Invented examples", "outings:demos");
  int number = 0;
  for (const Outing& demo : demo_outings()) {
    if (ui.button("demo:" + std::to_string(number++), demo.name, Weight::plain, Icon::kit)) {
      session.put_away();
      const std::string text = write_outing(demo);
      const auto& kept = session.shelf.outings();
      const auto same =
          std::find_if(kept.begin(), kept.end(), [&](const KeptOuting& one) { return one.text == text; });
      if (same != kept.end()) {
        session.open_kept(std::string(same->key));  // untouched and here already
      } else {
        session.open(demo, "opening " + demo.name);
      }
      go_to_overview(ui);
    }
    ui.gap();
  }
}

}  // namespace

std::string file_stem(std::string_view outing_name) {
  std::string name;
  for (const char c : outing_name)
    name += (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') ? c : c >= 'A' && c <= 'Z' ? char(c - 'A' + 'a') : '-';
  return name.empty() ? "outing" : name;
}

std::string file_name(std::string_view outing_name) { return file_stem(outing_name) + ".json"; }

void outings(Ui& ui) {
  const float left = ui.surface.x + ui.margin(), width = ui.surface.w - 2 * ui.margin(), top = ui.y;
  ui.open_group(Role::main, "main", "Outings", {ui.surface.x, top, ui.surface.w, ui.surface.bottom() - top});
  ui.begin_scroll("outings", {ui.surface.x, top, ui.surface.w, ui.surface.bottom() - top});
  ui.column(left, width, ui.y + 12);
  ui.title("Outings", "sheet");
  ui.gap();
  const bool two = width > 760;
  const float each = two ? (width - 40) / 2 : width, start = ui.y;
  ui.column(left, each, start);
  shelf(ui);
  thrown_away(ui);
  const float first_bottom = ui.y;
  ui.column(two ? left + each + 40 : left, each, two ? start : ui.y + 16);
  begin(ui);
  ui.gap(24);
  ui.y = std::max(ui.y, first_bottom);
  ui.end_scroll();
  ui.close_group();
}

}  // namespace gs::sheets
