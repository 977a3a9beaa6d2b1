// What the kit list comes to.
#include "core/outing/reading_rows.h"

namespace gs {
namespace {

constexpr std::string_view kKitSource = "reliability of series and parallel systems; docs/methods/kit";

constexpr ReadingRow kRows[] = {
    {R::kit_chance_pct,
     {.key = "kit.chance_pct",
      .name = "Kit holds",
      .link = Link::kit,
      .unit = Unit::percent,
      .better = Better::more,
      .source = kKitSource,
      .formula = "each vital function fails only when all that does it fails; the functions' chances multiplied"}},
    {R::kit_single_points,
     {.key = "kit.single_points",
      .name = "Single points of failure",
      .link = Link::kit,
      .better = Better::less,
      .source = "by definition; docs/methods/kit",
      .formula = "items that a vital function hangs on alone, counted"}},
    {R::kit_weight_kg,
     {.key = "kit.weight_kg",
      .name = "Carried weight",
      .link = Link::kit,
      .unit = Unit::kilogram,
      .digits = 1,
      .better = Better::less,
      .source = "by definition; docs/methods/kit",
      .formula = "weight of every piece, spares too"}},
    {R::kit_volume_l,
     {.key = "kit.volume_l",
      .name = "Room in the bag",
      .link = Link::kit,
      .unit = Unit::litre,
      .digits = 0,
      .better = Better::less,
      .source = "by definition; docs/methods/kit",
      .formula = "volume of every piece, spares too"}},
    {R::kit_set_up_min,
     {.key = "kit.set_up_min",
      .name = "Set-up by the list",
      .link = Link::kit,
      .unit = Unit::minute,
      .better = Better::less,
      .source = "by definition; docs/methods/kit",
      .formula = "each item's share of setting up, once"}},
    {R::kit_to_pack,
     {.key = "kit.to_pack",
      .name = "Still to pack",
      .link = Link::kit,
      .better = Better::less,
      .source = "by definition; docs/methods/kit",
      .formula = "items that are not ticked as packed, counted"}},
};

}  // namespace

std::span<const ReadingRow> kit_readings() { return kRows; }

}  // namespace gs
