#include "app/parts/stepper.h"

#include <algorithm>

namespace gs::parts {

using look::Box;
using look::Face;
using look::Icon;
using mirror::Role;
namespace type = look::type;

std::optional<double> stepper_row(Ui& ui, const Stepped& row) {
  const float value_w = std::max(104.0F, ui.pen.figure_width(row.text, type::kLead) + 16);
  const float beside = ui.w - value_w - 2 * 52 - 24;
  // the name above the steppers where there is too little beside them
  std::vector<std::string_view> label = ui.pen.lines(row.name, beside, Face::regular, type::kBody);
  const bool above = label.size() > 2 || look::Pen::breaks_word(label);
  if (above) {
    label = ui.pen.lines(row.name, ui.w, Face::regular, type::kBody);
    for (const std::string_view line : label) {
      ui.pen.text(ui.x, ui.y + type::kBody, line, Face::regular, type::kBody, ui.theme.ink);
      ui.gap(22);
    }
    label.clear();
  }
  const Box box = ui.take(68);  // round steppers of 52, 8 px of air to what stands above and below
  const float middle = above ? std::max(48.0F, std::min(value_w, ui.w - 2 * 52 - 16)) : value_w;
  const Box more{box.right() - 52, box.y + 8, 52, 52}, less{more.x - middle - 52 - 16, box.y + 8, 52, 52};
  float base = look::Pen::centred(box.mid_y(), type::kBody) - float(label.size()) * 11 + 11;
  for (const std::string_view line : label) {
    ui.pen.text(box.x, base, line, Face::regular, type::kBody, ui.theme.ink);
    base += 22;
  }
  const float text_size = ui.pen.figure_width(row.text, type::kLead) <= middle ? type::kLead : type::kTick;
  ui.pen.figure((less.right() + more.x) / 2, look::Pen::centred(box.mid_y(), text_size), row.text, text_size,
                ui.theme.ink, look::Align::centre);
  mirror::Node record;
  record.role = Role::slider;
  record.id = row.id;
  record.name = row.name;
  record.value = row.text;
  record.now = row.value;
  record.least = row.least;
  record.most = row.most;
  record.step = row.step;
  ui.target(std::move(record), {less.right() + 8, box.y + 8, more.x - less.right() - 16, 52}, 10);
  int steps = 0;
  if (ui.icon_button(less, row.id + ":less", "Less " + row.name, Icon::minus, ui.theme.ink)) --steps;
  ui.pen.ring({less.mid_x(), less.mid_y()}, 25, ui.theme.ink, look::stroke::kRule);
  if (ui.icon_button(more, row.id + ":more", "More " + row.name, Icon::plus, ui.theme.ink)) ++steps;
  ui.pen.ring({more.mid_x(), more.mid_y()}, 25, ui.theme.ink, look::stroke::kRule);
  if (const auto step = ui.asked.steps.find(row.id); step != ui.asked.steps.end()) steps += step->second;
  std::optional<double> wanted;
  if (steps != 0) wanted = std::clamp(row.value + steps * row.step, row.least, row.most);
  if (const auto set = ui.asked.set.find(row.id); set != ui.asked.set.end())
    wanted = std::clamp(set->second, row.least, row.most);
  if (wanted && *wanted == row.value) wanted.reset();
  return wanted;
}

}  // namespace gs::parts
