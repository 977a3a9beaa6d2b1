#include "core/outing/kit_start.h"

#include <algorithm>
#include <string_view>

#include "core/antenna/kind.h"

namespace gs {
namespace {

/// The catalogue has sets and batteries in a few sizes: the smallest that reaches, else the largest.
std::string_view radio_key(const Plan& plan) {
  const double full_w = plan.has(L::radio_full_power_w) ? plan[L::radio_full_power_w] : 100;
  return full_w <= 5 ? "set_5w" : full_w <= 10 ? "set_10w" : full_w <= 20 ? "set_20w" : "set_100w";
}

std::string_view battery_key(const Plan& plan) {
  if (plan.has(L::battery_chemistry)) {
    const std::string_view chemistry = option_key(L::battery_chemistry, plan[L::battery_chemistry]);
    if (chemistry.find("lead") != std::string_view::npos || chemistry.find("agm") != std::string_view::npos)
      return "lead_acid_7ah";
  }
  const double capacity_ah = plan.has(L::battery_capacity_ah) ? plan[L::battery_capacity_ah] : 12;
  return capacity_ah <= 3.5  ? "battery_3ah"
         : capacity_ah <= 7  ? "battery_6ah"
         : capacity_ah <= 15 ? "battery_12ah"
                             : "battery_20ah";
}

std::string_view line_key(const Plan& plan) {
  if (!plan.has(L::feedline_cable)) return "line_rg58_10m";
  const std::string_view cable = option_key(L::feedline_cable, plan[L::feedline_cable]);
  if (cable.find("174") != std::string_view::npos || cable.find("316") != std::string_view::npos)
    return "line_rg174_8m";
  return cable.find("8x") != std::string_view::npos ? "line_rg8x_15m" : "line_rg58_10m";
}

}  // namespace

kit::Item as_item(const kit::UsualItem& row) {
  kit::Item item;
  item.name = row.name;
  item.function = row.function;
  item.weight_g = row.weight_g;
  item.works = row.works;
  item.vital = row.vital;
  item.volume_l = row.volume_l;
  item.set_up_min = row.set_up_min;
  item.charge = row.charge;
  item.lever = row.lever;
  item.amount = row.amount;
  return item;
}

std::vector<kit::Item> usual_kit(const Plan& plan) {
  const bool key = plan.has(L::radio_mode) && option_key(L::radio_mode, plan[L::radio_mode]) == "cw";
  bool whip = false, end_fed = false;
  if (plan.has(L::antenna_kind)) {
    whip = antenna::kinds()[std::size_t(plan[L::antenna_kind])].shape == antenna::Shape::whip;
    end_fed = option_key(L::antenna_kind, plan[L::antenna_kind]).substr(0, 7) == "end_fed";
  }
  std::vector<std::string_view> keys{battery_key(plan),
                                     radio_key(plan),
                                     "dc_lead",
                                     key ? "paddle" : "microphone",
                                     line_key(plan),
                                     whip      ? "whip"
                                     : end_fed ? "wire_end_fed"
                                               : "wire_dipole",
                                     whip ? "clamp_tripod" : "throw_line",
                                     "log_paper"};
  if (whip) keys.push_back("radials");
  for (const std::string_view common : {"fuses", "adapters", "tools", "lamp", "licence_copy"})
    keys.push_back(common);
  std::vector<kit::Item> items;
  for (const std::string_view each : keys) {
    const kit::UsualItem* row = kit::find_usual_item(each);
    if (row && !row->retired) items.push_back(as_item(*row));
  }
  return items;
}

std::vector<kit::Item> usual_kit(const Plan& plan, kit::Style style) {
  std::vector<kit::Item> items = usual_kit(plan);
  const auto swap = [&items](std::string_view function, std::string_view key) {
    for (kit::Item& item : items)
      if (item.function == function) item = as_item(*kit::find_usual_item(key));
  };
  const auto add = [&items](std::string_view key) { items.push_back(as_item(*kit::find_usual_item(key))); };
  if (style == kit::Style::backpack && !plan.has(L::feedline_cable)) swap("feedline", "line_rg174_8m");
  for (const kit::UsualItem& row : kit::usual_items()) {
    const auto serves = [&row](const kit::Item& item) { return item.function == row.function; };
    if (!row.retired && (row.styles & int(style)) && std::none_of(items.begin(), items.end(), serves))
      items.push_back(as_item(row));
  }
  if (style == kit::Style::car) {
    add("line_rg58_10m");
    add("mast_10m");
    for (kit::Item& item : items)
      if (item.function == "power") ++item.backups;
  }
  return items;
}

}  // namespace gs
