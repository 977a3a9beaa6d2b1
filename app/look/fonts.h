// The one font family, baked at the device's own size so that text is always drawn at scale 1.
#pragma once

#include <array>
#include <string_view>

#include "imgui.h"

namespace gs::look {

enum class Face : unsigned char { regular, bold, italic };

/// One (face, logical size) pair of the atlas.
struct Cut {
  Face face;
  float size;
};

inline constexpr std::array<Cut, 11> kCuts{{{Face::regular, 15},
                                            {Face::regular, 16},
                                            {Face::regular, 18},
                                            {Face::bold, 15},
                                            {Face::bold, 16},
                                            {Face::bold, 18},
                                            {Face::bold, 20},
                                            {Face::bold, 26},
                                            {Face::bold, 34},
                                            {Face::bold, 42},
                                            {Face::italic, 15}}};

struct Fonts {
  float scale = 0;                         // device px per logical px they were baked for
  std::array<ImFont*, kCuts.size()> at{};  // in the order of kCuts
  ImFont* digits = nullptr;                // figures and + only: the count, the contact button
  float digits_most = 0;                   // logical size up to which they are not stretched

  /// The font of this face and logical size. A size that was not baked gives the nearest one above (or the largest)
  /// of the face.
  ImFont* get(Face face, float size) const;

  /// The same, but a headline size that lacks a character of the text gives way to the largest text size, which has
  /// all that our own words need.
  ImFont* fit(Face face, float size, std::string_view text) const;
};

/// Device px of the digits' em: what the count wants, but no more than the atlas has room for at a large scale.
float digits_px(float scale);

/// Clears the atlas and bakes every cut at round(size x scale) device px to the em. `scale` is pixel ratio x text
/// scale and is kept within 0.5 and 6. The atlas must be handed to the renderer again afterwards. Sizes 16, 18 and
/// 20 hold ASCII, Latin-1 and the signs of the trade; 15 and 26 the same without accents; 34 and 42 figures, units
/// and small letters.
Fonts build_fonts(ImFontAtlas& atlas, float scale);

/// The character that is drawn for this one: itself when the font has it, else its plain letter (A for A with a
/// macron), else 0: the pen draws a hollow box.
ImWchar drawn_as(const ImFont& font, char32_t code);

}  // namespace gs::look
