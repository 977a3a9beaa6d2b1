// A long choice as a list: what matters about each option beside its name, and a field that finds by typing.
#include "app/parts/ui.h"
#include "core/outing/option_notes.h"

namespace gs::parts {

using look::Box;
using look::Face;
using mirror::Role;
namespace type = look::type;
namespace space = look::space;

namespace {

constexpr std::size_t kSearchFrom = 8;  // options; fewer are seen at a glance

/// What stands in the field, while it is being typed too.
std::string sought(Ui& ui, const std::string& id) {
  Session* const keeper = &ui.session;
  const TextField field{.id = id,
                        .label = "Find",
                        .value = ui.session.view.sought,
                        .hint = {},
                        .most_chars = 40,
                        .commit = [keeper](const std::string& text) {
                          keeper->view.sought = text;
                          return std::string{};
                        }};
  ui.text_field(field);
  ui.gap();
  return ui.typing.text(field);
}

/// One option; true when it was taken.
bool option_row(Ui& ui, const std::string& id, std::string_view name, const std::string& words, bool chosen) {
  const float room = ui.w - 36;
  const Face face = chosen ? Face::bold : Face::regular;
  const std::vector<std::string_view> names = ui.pen.lines(name, room, face, type::kBody);
  std::vector<std::string_view> notes;
  if (!words.empty()) notes = ui.pen.lines(words, room, Face::regular, type::kLabel);
  const float step = type::line_height(type::kBody), small = type::line_height(type::kLabel);
  const float text_h = float(names.size()) * step + float(notes.size()) * small;
  const Box box = ui.take(std::max(space::kRow, text_h + 16));
  const ImU32 fill = ui.hand.down(id) ? ui.theme.fold : ui.theme.paper;
  const look::Ground ground(ui.pen, fill);
  if (ui.hand.down(id)) ui.pen.fill(box, fill);
  ui.pen.ring({box.x + 14, box.mid_y()}, 10, ui.theme.ink, look::stroke::kRule);
  if (chosen) ui.pen.disc({box.x + 14, box.mid_y()}, 6, ui.theme.ink);
  float base = box.mid_y() - text_h / 2 + type::kBody;
  for (const std::string_view line : names) {
    ui.pen.text(box.x + 36, base, line, face, type::kBody, ui.theme.ink);
    base += step;
  }
  base -= step - small;
  for (const std::string_view line : notes) {
    ui.pen.text(box.x + 36, base, line, Face::regular, type::kLabel, ui.theme.ink2);
    base += small;
  }
  mirror::Node record;
  record.role = Role::radio;
  record.id = id;
  record.name = std::string(name) + (words.empty() ? "" : ", " + words);
  record.checked = chosen ? 1 : 0;
  const bool taken = ui.target(std::move(record), box, 0);
  ui.rule();
  return taken;
}

}  // namespace

void Ui::lever_list(L id) {
  const Lever& row = lever(id);
  const Plan& plan = session.plan();
  const std::string key(row.key);
  const std::vector<OptionNote> all = noted_options(plan, id, session.style());
  const std::string wanted = all.size() >= kSearchFrom ? sought(*this, key + ":find") : std::string{};
  if (const std::string order = order_words(plan, id, session.style()); !order.empty() && wanted.empty())
    paragraph(order, key + ":order", theme.ink2);
  const std::size_t group_at = tree.nodes.size();
  const float top = y;
  open_group(Role::radiogroup, key, std::string(row.name), {x, y, w, 0});
  std::size_t found = 0;
  for (const OptionNote& note : all) {
    const Option& option = row.options()[note.option];
    if (!found_by(wanted, option.name, note.words)) continue;
    ++found;
    const bool chosen = plan.has(id) && std::size_t(plan[id]) == note.option;
    if (!option_row(*this, key + "=" + std::string(option.key), option.name, note.words, chosen)) continue;
    session.set(id, std::string(option.key));
    session.view.panel = Panel::none;
    session.view.sought.clear();
    wake_at(now_s);
  }
  tree.nodes[group_at].h = y - top;
  close_group();
  if (wanted.empty()) return;
  const std::string count = found == 0 ? "None is called that: fewer letters find more."
                                       : std::to_string(found) + " of " + std::to_string(all.size()) + " found";
  gap();
  const float count_top = y;
  const int lines = pen.paragraph(x, y + type::kLabel, w, count, Face::regular, type::kLabel, theme.ink2);
  gap(float(lines) * type::line_height(type::kLabel));
  node(Role::status, key + ":found", count, {x, count_top, w, y - count_top}).live = true;
}

}  // namespace gs::parts
