// A kit list to start from: one usual item for each job that the plan has.
#pragma once

#include <vector>

#include "core/kit/catalogue.h"
#include "core/outing/plan.h"

namespace gs {

/// A catalogue row as a line of the list.
kit::Item as_item(const kit::UsualItem& row);

/// Power, radio, lead, keying, feed line, antenna, its support and paper, picked by the plan's power, capacity,
/// mode, antenna and cable where they are known; with them fuses, adapters, tools and what else is seldom left at
/// home. Weights and chances are the catalogue's. Never empty.
std::vector<kit::Item> usual_kit(const Plan& plan);
/// The same with what goes along at the car, for a short carry or in a backpack: the catalogue's rows of that style
/// for functions that nothing serves yet; the backpack takes the thin feed line, and the car a second one, a mast
/// and a spare of the battery.
std::vector<kit::Item> usual_kit(const Plan& plan, kit::Style style);

}  // namespace gs
