// Sizes in logical px (device px / (pixel ratio x text scale)) and the five layouts.
#pragma once

#include <array>

namespace gs::look {

namespace type {  // em sizes; the faces that exist at each are listed in fonts.cpp
inline constexpr float kTick = 15, kLabel = 16, kBody = 18, kLead = 20, kValue = 26, kFigure = 34, kHeadline = 42;
inline constexpr float kContactButton = 108, kCount = 150;           // digits only
inline constexpr float kLineRatio = 1.32F;                           // line height / size
inline constexpr float kUnitRatio = 0.62F, kChainUnitRatio = 0.54F;  // size of a unit / size of its figure
inline constexpr float kThinGapEm = 0.17F;                           // before a unit and in thousands, set by code
inline constexpr float kCapEm = 0.75F, kXHeightEm = 0.55F, kDigitEm = 0.65F;  // measured in the font files
constexpr float line_height(float size) { return size * kLineRatio; }
}  // namespace type

namespace space {
inline constexpr float kUnit = 8, kMarginTablet = 24, kMarginPhone = 16, kMarginSlim = 8, kGap = 8, kSection = 24;
inline constexpr float kRow = 52, kKitRow = 49, kTarget = 48, kTargetMain = 56;
inline constexpr float kContactTablet = 224, kContactPhone = 160, kGuard = 32;
}  // namespace space

namespace stroke {
inline constexpr float kHair = 1, kLine = 1.5F, kRule = 2, kStrong = 3, kLive = 4.5F;
inline constexpr float kChainStrip = 4, kChainOverview = 5, kThumbRing = 5, kOutline = 1.5F;
inline constexpr std::array<float, 2> kNeed{3, 5}, kDead{3, 6}, kDash{6, 4}, kTap{2, 3};  // on, off
inline constexpr std::array<float, 4> kPin{9, 4, 2, 4};
}  // namespace stroke

namespace radius {
inline constexpr float kChip = 24, kButton = 28, kPanel = 10, kKey = 10, kContact = 22;
}  // namespace radius

namespace sign {
inline constexpr float kStrip = 10.5F, kFolded = 11, kOverview = 14, kList = 9, kHalo = 3;
}  // namespace sign

namespace chain {
inline constexpr float kHeader = 56, kStrip = 187, kPhoneStrip = 160, kFoldedStrip = 76, kSlimCell = 92,
                       kTwoRows = 2 * kSlimCell;
inline constexpr float kSlackStrip = 18, kSlackPhone = 17, kSlackColumn = 31, kSlackOverview = 54, kSlackTall = 66;
inline constexpr float kSlackLeast = -1.2F, kSlackMost = 2;
inline constexpr float kSideFrom = 900;  // surface: with less, Safety, Clock and Kit stand below the chain
constexpr float side_width(float logical_w) { return logical_w < 1200 ? 240.0F : 268.0F; }
constexpr float cell_width(float logical_w) {
  return float(int((logical_w - 2 * space::kMarginTablet - side_width(logical_w) - 22) / 6));
}
}  // namespace chain

namespace slider {
inline constexpr float kHeight = 128, kHead = 60, kBar = 12, kThumb = 21, kThumbDragged = 27, kStepper = 52,
                       kHit = 56;
inline constexpr float kPennantW = 15, kPennantH = 12;
}  // namespace slider

namespace motion {  // seconds; all 0 when the person asked for less motion
inline constexpr float kChain = 0.14F, kUnfold = 0.16F, kPanel = 0.12F, kCountFlash = 0.22F;
}  // namespace motion

/// A phone's surface at the largest text: narrower than this six links stand in two rows; lower than this what
/// stands fixed elsewhere scrolls with its sheet.
inline constexpr float kSlimWidth = 306, kLowHeight = 600;

enum class Layout : unsigned char { wide, tablet, portrait, phone, on_side };

/// The layout for a surface of this logical size: phone below 600 wide; on_side below 500 high and not a phone's
/// width; portrait when taller than wide and below 1200 wide; wide from 1200.
constexpr Layout layout_of(float logical_w, float logical_h) {
  if (logical_w < 600) return Layout::phone;
  if (logical_h < 500) return Layout::on_side;
  if (logical_w >= 1200) return Layout::wide;
  return logical_h > logical_w ? Layout::portrait : Layout::tablet;
}

}  // namespace gs::look
