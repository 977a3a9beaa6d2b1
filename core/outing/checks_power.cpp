#include "core/outing/checks_power.h"

#include "core/battery/chemistry.h"
#include "core/outing/power_rows.h"
#include "core/radio/lead.h"
#include "core/radio/mode.h"

namespace gs {
namespace {

template <class Row>
std::vector<Option> options_of(std::span<const Row> rows) {
  std::vector<Option> options;
  for (const Row& row : rows) options.push_back({row.key, row.name, row.retired});
  return options;
}

}  // namespace

std::span<const Option> chemistry_options() {
  static const std::vector<Option> options = options_of(battery::chemistries());
  return options;
}

std::span<const Option> mode_options() {
  static const std::vector<Option> options = options_of(radio::modes());
  return options;
}

std::span<const Option> wire_options() {
  static const std::vector<Option> options = options_of(radio::wires());
  return options;
}

std::span<const Check> power_checks() {
  static const std::vector<Check> all = [] {
    std::vector<Check> rows;
    for (const std::span<const Check> part :
         {battery_checks(), park_checks(), charge_checks(), radio_checks(), lead_checks()})
      rows.insert(rows.end(), part.begin(), part.end());
    return rows;
  }();
  return all;
}

namespace power {

std::string missing(std::span<const CheckInput> inputs, std::span<const double> in) {
  for (std::size_t i = 0; i < inputs.size(); ++i)
    if (!inputs[i].row.optional && !std::isfinite(in[i])) return needs(inputs[i].row);
  return {};
}

SendingShare sending_share(double share_pct, double keyed_min, double every_min) {
  if (std::isfinite(keyed_min)) {
    if (keyed_min > every_min) return {0, "Keyed for is more than Out of"};
    return {keyed_min / every_min, {}};
  }
  if (std::isfinite(share_pct)) return {share_pct / 100, {}};
  return {0, needs(kTransmitShare)};
}

const battery::Chemistry& chemistry_of(double index) { return battery::chemistries()[std::size_t(index)]; }

double reserve_or_usual_pct(double reserve_pct, const battery::Chemistry& chemistry) {
  return std::isfinite(reserve_pct) ? reserve_pct : chemistry.usual_reserve_pct;
}

}  // namespace power
}  // namespace gs
