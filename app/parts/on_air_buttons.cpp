// The contact button, Undo, and the digits for what was forgotten.
#include <algorithm>

#include "app/parts/on_air.h"

namespace gs::parts {

using look::Align;
using look::Box;
using look::Face;
using look::Icon;
using mirror::Role;
namespace type = look::type;
namespace space = look::space;

bool contact_button(Ui& ui, Box box) {
  look::Pen& pen = ui.pen;
  const look::Theme& theme = ui.theme;
  const View& view = ui.session.view;
  constexpr std::string_view kId = "air:contact";
  const bool flashing = ui.now_s < view.flash_until_s, calm = ui.hand.reduced_motion;
  const bool light = ui.hand.down(kId) != (flashing && !calm);
  const ImU32 fill = light ? theme.fold : theme.solid, ink = light ? theme.ink : theme.on_solid;
  pen.fill(box, fill, look::radius::kContact);
  if (light || theme.on_solid != theme.paper)
    pen.outline(box, theme.dim ? theme.ink : theme.ink2, look::stroke::kStrong, look::radius::kContact);
  {
    const look::Ground ground(pen, fill);
    const float size = pen.digits_size(std::min(type::kContactButton, box.h * 0.55F));
    const bool flat = box.h < 90;
    const float word = flat ? type::kLabel : type::kValue, between = flat ? 6 : 14;
    const float all = size * type::kCapEm + between + word;
    const float base = box.mid_y() - all / 2 + size * type::kCapEm;
    pen.digits(box.mid_x(), base, "+1", size, ink, Align::centre);
    pen.text(box.mid_x(), base + between + word * 0.85F, "contact", Face::bold, word, ink, Align::centre);
  }
  if (flashing && calm) pen.outline(box.grown(5), theme.ink, look::stroke::kRule, look::radius::kContact + 5);
  if (flashing) ui.wake_at(view.flash_until_s);
  mirror::Node record;
  record.role = Role::button;
  record.id = kId;
  record.name = "Add one contact, " + std::to_string(contacts_in(ui.session.outing().happened)) + " so far";
  return ui.target(std::move(record), box, look::radius::kContact);
}

bool undo_button(Ui& ui, Box box) {
  const std::string last = last_entry(ui.session);
  const bool any = !last.empty();
  constexpr std::string_view kId = "air:undo";
  if (box.h < 100)
    return ui.button_in(box, kId, any ? "Undo " + last : "Nothing to undo", Weight::plain,
                        any ? Icon::undo : Icon::count, type::kBody, any);
  // a block beside the contact button: sign, word, what it takes back
  const bool down = any && ui.hand.down(kId);
  const ImU32 fill = !any ? ui.theme.paper : down ? ui.theme.solid : ui.theme.fold;
  const ImU32 ink = !any ? ui.theme.ink2 : down ? ui.theme.on_solid : ui.theme.ink;
  if (any) ui.pen.fill(box, fill, look::radius::kContact);
  if (any) ui.pen.outline(box, ui.theme.ink2, look::stroke::kOutline, look::radius::kContact);
  const look::Ground ground(ui.pen, fill);
  if (any) ui.pen.icon(Icon::undo, box.mid_x() - 24, box.mid_y() - 60, 48, ink, look::stroke::kStrong);
  ui.pen.text(box.mid_x(), box.mid_y() + 24, any ? "Undo" : "Nothing", Face::bold, type::kValue, ink,
              Align::centre);
  ui.pen.paragraph(box.x + 10, box.mid_y() + 54, box.w - 20, any ? last : "to undo", Face::regular, type::kLabel,
                   ink, Align::centre);
  mirror::Node record;
  record.role = Role::button;
  record.id = kId;
  record.name = any ? "Undo " + last : "Nothing to undo";
  record.disabled = !any;
  return ui.target(std::move(record), box, look::radius::kContact);
}

namespace {

constexpr std::size_t kMostDigits = 3;

}  // namespace

void forgotten_pad(Ui& ui) {
  View& view = ui.session.view;
  const auto close = [&] {
    view.panel = Panel::none;
    view.typed.clear();
    ui.wake_at(ui.now_s);
  };
  const std::size_t group_at = ui.tree.nodes.size();
  const float top = ui.y;
  ui.open_group(Role::dialog, "keypad", "Some I forgot", {ui.x, ui.y, ui.w, 0});
  constexpr std::string_view kQuestion = "How many were forgotten?";
  const float lines = float(ui.pen.lines(kQuestion, ui.w - 56, Face::bold, type::kLead).size());
  const Box head = ui.take(22 + lines * type::line_height(type::kLead));
  ui.pen.paragraph(head.x, head.y + 31, ui.w - 56, kQuestion, Face::bold, type::kLead, ui.theme.ink);
  ui.node(Role::heading, "keypad:title", "How many were forgotten?", head).level = 2;
  if (ui.icon_button({head.right() - 48, head.y, 48, 48}, "keypad:close", "Close", Icon::close, ui.theme.ink))
    close();
  const int count = view.typed.empty() ? 0 : std::stoi(view.typed);
  const Box display = ui.take(56);
  ui.pen.fill(display, ui.theme.fold, look::radius::kKey);
  {
    const look::Ground ground(ui.pen, ui.theme.fold);
    if (count == 0) {
      ui.pen.line({display.mid_x(), display.y + 12}, {display.mid_x(), display.bottom() - 12}, ui.theme.blue, 2);
    } else {
      ui.pen.figure(display.mid_x(), look::Pen::centred(display.mid_y(), type::kFigure), std::to_string(count),
                    type::kFigure, ui.theme.ink, Align::centre);
    }
  }
  ui.node(Role::status, "keypad:typed", count == 0 ? "nothing typed" : std::to_string(count) + " forgotten",
          display)
      .live = true;
  ui.gap();
  constexpr std::string_view kKeys[] = {"7", "8", "9", "4", "5", "6", "1", "2", "3", "erase", "0", "set"};
  const float key_w = (ui.w - 2 * space::kGap) / 3;
  constexpr float kKeyHigh = space::kTargetMain;
  for (std::size_t i = 0; i < std::size(kKeys); ++i) {
    const Box box{ui.x + float(i % 3) * (key_w + space::kGap), ui.y + float(i / 3) * (kKeyHigh + space::kGap),
                  key_w, kKeyHigh};
    const std::string id = "keypad:" + std::string(kKeys[i]);
    if (kKeys[i] == "erase") {
      if (ui.button_in(box, id, "Erase", Weight::plain, Icon::count, type::kLabel, true, {}, look::radius::kKey) &&
          !view.typed.empty()) {
        view.typed.pop_back();
        ui.wake_at(ui.now_s);
      }
    } else if (kKeys[i] == "set") {
      const std::string label = count > 0 ? "Add " + std::to_string(count) : "Add";
      if (ui.button_in(box, id, label, Weight::main, Icon::count, type::kBody, count > 0, {}, look::radius::kKey)) {
        ui.session.count_forgotten(ui.session.now().utc_s, count);
        close();
      }
    } else if (ui.button_in(box, id, kKeys[i], Weight::plain, Icon::count, type::kValue, true, {},
                            look::radius::kKey) &&
               view.typed.size() < kMostDigits && !(view.typed.empty() && kKeys[i] == "0")) {
      view.typed += kKeys[i];
      ui.wake_at(ui.now_s);
    }
  }
  ui.gap(4 * (kKeyHigh + space::kGap));
  ui.tree.nodes[group_at].h = ui.y - top;
  ui.close_group();
}

}  // namespace gs::parts
