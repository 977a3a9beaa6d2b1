// The antenna's share of the plan: what the levers say about it, for every part and sheet that asks.
#pragma once

#include "core/antenna/feed.h"
#include "core/outing/plan.h"

namespace gs {

/// The catalogue row, or null where no kind is chosen.
const antenna::Kind* antenna_kind(const Plan& plan);
/// What the levers leave open or say. Length and dip count only where a person gave them: else they are the kind's
/// own.
antenna::Setup antenna_setup(const Plan& plan);
/// Apex, span and ends. NaN where apex or span is missing.
antenna::Space antenna_space(const Plan& plan);

}  // namespace gs
