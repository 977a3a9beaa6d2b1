// Written by assets/catalogues/make_tables.py from the CSV files beside it. Do not edit.
#include "core/antenna/radials.h"

namespace gs::antenna {
namespace {


constexpr RadialFieldRow kRadial_fields[] = {
    {4.0, -5.5, -4.3, Evidence::second_hand,
     "mailing list, 2008: open field, receiver just over a mile away; quarter-wave radials pegged down, or 0.03 wavelengths up; site and soil not stated"},
    {8.0, -2.7, -2.4, Evidence::second_hand,
     "the same test"},
    {16.0, -1.3, -0.8, Evidence::second_hand,
     "the same test; its raw reading on the raised ones gives -1.2"},
    {32.0, -0.8, -0.7, Evidence::second_hand,
     "the same test"},
    {60.0, 0.0, -0.2, Evidence::second_hand,
     "the same test; the reference of all its figures"},
};

}  // namespace

std::span<const RadialFieldRow> radial_fields() { return kRadial_fields; }

}  // namespace gs::antenna
