// Colour roles and the three themes. A role says what a colour is for; no other file holds a colour value.
#pragma once

#include <array>

#include "core/outing/settings.h"
#include "imgui.h"

namespace gs::look {

/// The four state shapes. Shape, word and colour each carry the state alone.
enum class Sign : unsigned char { holds, tight, fails, unknown };

/// One colour per role, opaque, packed as Dear ImGui packs them.
struct Theme {
  ImU32 paper;    // the sheet
  ImU32 fold;     // fill of what can be pressed
  ImU32 ink;      // first voice
  ImU32 ink2;     // second voice, outlines, "not known"
  ImU32 rule;     // decoration only: too faint for anything that must be seen
  ImU32 contour;  // notes and dimensions on drawings
  ImU32 blue;     // live curve, wire, UTC
  ImU32 pin;      // the pinned plan
  ImU32 holds, tight, fails;
  ImU32 on_ink;                   // text on ink
  ImU32 band, wood, water, soil;  // tints: tight zone, at ease, water, set-up and pack-down
  std::array<ImU32, 5> relief;    // Sky's openings, the meadow
  ImU32 veil;                     // patch behind words that stand on a drawing
  ImU32 solid, on_solid;          // the main button and its words
  bool dim;  // night: no large bright areas, so bars are `solid` or outlined and solid buttons get an ink2 outline

  ImU32 of(Sign sign) const;
};

/// The table of one theme; an unknown name gives daylight.
const Theme& theme(ThemeName name);

/// Contrast ratio of two opaque colours, 1 to 21, the order does not matter. Alpha is ignored.
/// Source: W3C, Web Content Accessibility Guidelines 2.2, "contrast ratio" and "relative luminance".
double contrast(ImU32 a, ImU32 b);

}  // namespace gs::look
