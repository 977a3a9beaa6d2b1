#include <algorithm>

#include "app/parts/ui.h"

namespace gs::parts {

using look::Box;
using look::Face;
using look::Icon;
using mirror::Role;
namespace type = look::type;
namespace space = look::space;

bool Ui::button_in(Box box, std::string_view id, std::string_view label, Weight weight, Icon icon, float size,
                   bool enabled, std::string_view spoken, float corner) {
  mirror::Node record;
  record.role = Role::button;
  record.id = id;
  record.name = spoken.empty() ? label : spoken;
  record.disabled = !enabled;
  const bool pressed = enabled && hand.down(id);
  const bool dark = enabled && (weight == Weight::main) != pressed;
  const bool outlined =
      enabled && (!dark || theme.on_solid != theme.paper);  // a dim theme's solid is an outline too
  const ImU32 fill = !enabled ? theme.paper : dark ? theme.solid : theme.fold;
  const ImU32 ink = !enabled ? theme.ink2 : dark ? theme.on_solid : theme.ink;
  const float radius = std::min(box.h / 2, corner);
  if (enabled) pen.fill(box, fill, radius);
  if (outlined) pen.outline(box, theme.ink2, look::stroke::kOutline, radius);
  {
    const look::Ground ground(pen, fill);
    const float icon_w = icon == Icon::count ? 0 : 24 + 8;
    const float room = box.w - icon_w - 24;
    float text_size = size;
    std::vector<std::string_view> lines = pen.lines(label, room, Face::bold, text_size);
    if (lines.size() > 1 && text_size > type::kLabel) {
      text_size = type::kLabel;
      lines = pen.lines(label, room, Face::bold, text_size);
    }
    float widest = 0;
    for (const std::string_view line : lines) widest = std::max(widest, pen.width(line, Face::bold, text_size));
    const float left = box.mid_x() - (widest + icon_w) / 2;
    if (icon != Icon::count) pen.icon(icon, left, box.mid_y() - 12, 24, ink);
    const float step = type::line_height(text_size);
    float baseline = look::Pen::centred(box.mid_y(), text_size) - step * float(lines.size() - 1) / 2;
    for (const std::string_view line : lines) {
      pen.text(left + icon_w, baseline, line, Face::bold, text_size, ink);
      baseline += step;
    }
  }
  return target(std::move(record), box, radius);
}

bool Ui::button(std::string_view id, std::string_view label, Weight weight, Icon icon) {
  const float room = w - 24 - (icon == Icon::count ? 0 : 32);
  const std::size_t lines = pen.lines(label, room, Face::bold, type::kLabel).size();
  const float height = std::max(space::kTargetMain, 24 + float(lines) * type::line_height(type::kLabel));
  return button_in(take(height), id, label, weight, icon, type::kBody);
}

bool Ui::icon_button(Box box, std::string_view id, std::string_view spoken, Icon icon, ImU32 colour) {
  mirror::Node record;
  record.role = Role::button;
  record.id = id;
  record.name = spoken;
  if (hand.down(id)) pen.fill(box, theme.fold, look::radius::kChip);
  pen.icon(icon, box.mid_x() - 12, box.mid_y() - 12, 24, colour);
  return target(std::move(record), box);
}

int Ui::chips(std::string_view id, std::string_view name, const std::vector<Chip>& items) {
  constexpr float kInside = 16;
  // Shared out evenly when all fit in one row, else row by row at their own width.
  float natural = -space::kGap;
  for (const Chip& chip : items)
    natural += pen.width(chip.label, Face::bold, type::kBody) + 2 * kInside + space::kGap;
  const float extra = natural < w ? (w - natural) / float(items.size()) : 0;
  const float top = y;
  const std::size_t group_at = tree.nodes.size();
  open_group(Role::radiogroup, std::string(id), std::string(name), {x, y, w, space::kTarget});
  int tapped = -1;
  float left = x;
  for (std::size_t i = 0; i < items.size(); ++i) {
    const Chip& chip = items[i];
    const float width =
        std::min(w, std::max(space::kTarget, pen.width(chip.label, Face::bold, type::kBody) + 2 * kInside + extra));
    if (left > x && left + width > right() + 0.5F) {
      left = x;
      gap(space::kTarget + space::kGap);
    }
    const Box box{left, y, width, space::kTarget};
    left += width + space::kGap;
    mirror::Node record;
    record.role = Role::radio;
    record.id = chip.id;
    record.name = chip.spoken.empty() ? chip.label : chip.spoken;
    record.checked = chip.chosen ? 1 : 0;
    const bool dark = chip.chosen != hand.down(chip.id);
    const ImU32 fill = dark ? theme.solid : theme.fold;
    pen.fill(box, fill, look::radius::kChip);
    if (!dark || theme.on_solid != theme.paper)
      pen.outline(box, theme.ink2, look::stroke::kOutline, look::radius::kChip);
    {
      const look::Ground ground(pen, fill);
      const Face face = chip.chosen ? Face::bold : Face::regular;
      const bool fits = pen.width(chip.label, Face::bold, type::kBody) <= width - 16;
      const float size = fits ? type::kBody : type::kTick;  // else on two lines
      const std::vector<std::string_view> lines = pen.lines(chip.label, width - 16, face, size);
      const float step = size * 1.2F;
      float base = look::Pen::centred(box.mid_y(), size) - step * float(lines.size() - 1) / 2;
      for (const std::string_view line : lines) {
        pen.text(box.mid_x(), base, line, face, size, dark ? theme.on_solid : theme.ink, look::Align::centre);
        base += step;
      }
    }
    if (target(std::move(record), box)) tapped = int(i);
  }
  gap(space::kTarget);
  tree.nodes[group_at].h = y - top;
  close_group();
  return tapped;
}

bool Ui::row(std::string_view id, std::string_view label, std::string_view value, std::string_view spoken,
             signed char expanded, bool value_bold) {
  const Face face = value_bold ? Face::bold : Face::regular;
  const float value_w = pen.width(value, face, type::kBody);
  const bool can_open = expanded >= 0;
  const float chevron_w = can_open ? 28 : 0;
  const float label_room = w - value_w - chevron_w - 24;
  std::vector<std::string_view> lines = pen.lines(label, label_room, Face::regular, type::kBody);
  // the value goes below a label that would take three lines, or lose a word's end
  const bool drops = lines.size() > 2 || look::Pen::breaks_word(lines);
  if (drops) lines = pen.lines(label, w - chevron_w, Face::regular, type::kBody);
  const std::vector<std::string_view> values = pen.lines(value, w - chevron_w, face, type::kBody);
  const float step = type::line_height(type::kBody);
  const float text_h = float(lines.size() + (drops ? values.size() : 0)) * step;
  const Box box = take(std::max(space::kRow, text_h + 16));
  if (can_open && hand.down(id)) pen.fill(box, theme.fold);
  float baseline = look::Pen::centred(box.mid_y(), type::kBody) - (text_h - step) / 2;
  float label_right = box.x;
  for (const std::string_view line : lines) {
    label_right = box.x + pen.text(box.x, baseline, line, Face::regular, type::kBody, theme.ink);
    baseline += step;
  }
  const float value_right = box.right() - chevron_w;
  const float value_base = drops ? baseline : baseline - step;
  if (!drops && label_right + 12 < value_right - value_w - 12)
    pen.leader(label_right + 8, value_right - value_w - 8, value_base, theme.ink2);
  if (drops) {
    for (std::size_t k = 0; k < values.size(); ++k)
      pen.text(value_right, value_base + step * float(k), values[k], face, type::kBody, theme.ink,
               look::Align::right);
  } else {
    pen.text(value_right, value_base, value, face, type::kBody, theme.ink, look::Align::right);
  }
  if (can_open) pen.icon(expanded ? Icon::down : Icon::chev, box.right() - 20, box.mid_y() - 10, 20, theme.ink);
  mirror::Node record;
  record.id = id;
  record.name = std::string(label) + ", " + std::string(spoken);
  if (!can_open) {
    record.role = Role::text;
    node(Role::text, record.id, record.name, box);
    return false;
  }
  record.role = Role::button;
  record.expanded = expanded;
  return target(std::move(record), box, 0);
}

}  // namespace gs::parts
