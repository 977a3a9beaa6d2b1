#include "core/outing/antenna_setup.h"

namespace gs {

const antenna::Kind* antenna_kind(const Plan& plan) {
  return plan.has(L::antenna_kind) ? &antenna::kinds()[std::size_t(plan[L::antenna_kind])] : nullptr;
}

antenna::Setup antenna_setup(const Plan& plan) {
  antenna::Setup setup;
  const auto given = [&plan](L id) { return plan.from[std::size_t(id)] == From::yours; };
  if (plan.has(L::antenna_wire)) setup.wire = antenna::Wire(int(plan[L::antenna_wire]));
  if (given(L::antenna_wire_m)) setup.wire_m = plan[L::antenna_wire_m];
  if (given(L::antenna_dip_mhz)) setup.dip_mhz = plan[L::antenna_dip_mhz];
  if (plan.has(L::antenna_radials)) setup.radial_count = plan[L::antenna_radials];
  if (given(L::antenna_radial_m) && plan.has(L::antenna_frequency_mhz))
    setup.radial_waves = plan[L::antenna_radial_m] / antenna::wavelength_m(plan[L::antenna_frequency_mhz]);
  if (plan.has(L::antenna_whip_m)) setup.whip_m = plan[L::antenna_whip_m];
  if (plan.has(L::antenna_coil_at_pct)) setup.coil_at = plan[L::antenna_coil_at_pct] / 100;
  if (plan.has(L::antenna_coil_q)) setup.coil_q = plan[L::antenna_coil_q];
  if (plan.has(L::antenna_ground_ohm)) setup.vehicle_ground_ohm = plan[L::antenna_ground_ohm];
  setup.ground_measured = given(L::antenna_ground_ohm);
  setup.transformer_measured = given(L::antenna_transformer_db);
  if (plan.has(L::antenna_transformer_db)) setup.transformer_db = plan[L::antenna_transformer_db];
  return setup;
}

antenna::Space antenna_space(const Plan& plan) {
  antenna::Space space{.apex_m = plan[L::antenna_apex_m], .span_m = plan[L::antenna_span_m]};
  if (plan.has(L::antenna_end_m)) space.end_m = plan[L::antenna_end_m];
  return space;
}

}  // namespace gs
