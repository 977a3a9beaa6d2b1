#include "app/look/fonts.h"

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include "app/look/fonts_data.h"
#include "app/look/metrics.h"
#include "app/look/utf8.h"

namespace gs::look {
namespace {

// What people type stands at 16, 18 and 20; the other text sizes carry our own words, the two headline sizes
// figures, units and small letters.
constexpr std::u32string_view kSigns = U"\u00a0°±²³µ·½×÷ΔΩηλμπσφ–—‘’“”•…′″←↑→↓−√∞≈≤≥";
constexpr std::u32string_view kAccented = U"¡£§«»¿ıŒœŠšŸ";  // beside the letters of Latin-1
constexpr std::u32string_view kDigits = U"+";               // beside 0 to 9
constexpr std::u32string_view kHeadline = U" %()+,-./:<>ABCFHMRSTUVW\u00a0°±µΩμ–…′″−∞≈≤≥";

/// First and last code point of each range, ended by 0, as the atlas wants them.
std::vector<ImWchar> ranges(std::u32string_view singles, std::initializer_list<ImWchar> spans) {
  std::vector<ImWchar> out(spans);
  for (const char32_t c : singles) out.insert(out.end(), 2, ImWchar(c));
  out.push_back(0);
  return out;
}

const ImWchar* digits_ranges() {
  static const std::vector<ImWchar> ours = ranges(kDigits, {'0', '9'});
  return ours.data();
}

const ImWchar* ranges_of(Cut cut) {
  // the atlas keeps pointers to them
  static const std::vector<ImWchar> ours = ranges(kSigns, {' ', '~'});
  static const std::vector<ImWchar> typed =
      ranges(std::u32string(kSigns).append(kAccented), {' ', '~', 0xC0, 0xFF});
  static const std::vector<ImWchar> headline = ranges(kHeadline, {'0', '9', 'a', 'z'});
  if (cut.size > type::kValue) return headline.data();
  return cut.size >= type::kLabel && cut.size <= type::kLead ? typed.data() : ours.data();
}

struct File {
  const unsigned char* data;
  unsigned size;
};

File file_of(Face face) {
  switch (face) {
    case Face::bold:
      return {kB612Bold, kB612BoldSize};
    case Face::italic:
      return {kB612Italic, kB612ItalicSize};
    case Face::regular:
      break;
  }
  return {kB612Regular, kB612RegularSize};
}

// The plain letters of U+00C0 to U+017F in order (a dot where there is none): the family has hardly any of Latin
// Extended-A, and a person's name for a place should be readable all the same.
constexpr char32_t kPlainFirst = 0xC0;
constexpr std::string_view kPlain =
    "AAAAAAACEEEEIIIIDNOOOOO.OUUUUYTsaaaaaaaceeeeiiiidnooooo.ouuuuyty"
    "AaAaAaCcCcCcCcDdDdEeEeEeEeEeGgGgGgGgHhHhIiIiIiIiIiJjJjKkkLlLlLlLlLlNnNnNnnNnOoOoOoOoRrRrRrSsSsSsSsTtTtTtUuUuUu"
    "UuUuUu"
    "WwYyYZzZzZzs";
static_assert(kPlain.size() == 0xC0);

}  // namespace

ImFont* Fonts::get(Face face, float size) const {
  ImFont* best = nullptr;  // kCuts rises in size within a face
  for (std::size_t i = 0; i < kCuts.size(); ++i) {
    if (kCuts[i].face != face) continue;
    best = at[i];
    if (kCuts[i].size >= size - 0.01F) break;
  }
  return best;
}

ImFont* Fonts::fit(Face face, float size, std::string_view text) const {
  ImFont* font = get(face, size);
  if (size <= type::kValue) return font;
  for (std::size_t i = 0; i < text.size();)
    if (drawn_as(*font, next_code_point(text, i)) == 0) return get(face, type::kValue);
  return font;
}

float digits_px(float scale) {
  constexpr float kLargeScale = 3, kMost = 400, kMostAtLargeScale = 200;  // atlas: at most 32 MB at scale 5.25
  return std::round(std::min(type::kCount * scale, scale <= kLargeScale ? kMost : kMostAtLargeScale));
}

Fonts build_fonts(ImFontAtlas& atlas, float scale) {
  Fonts fonts;
  fonts.scale = std::clamp(scale, 0.5F, 6.0F);
  atlas.Clear();
  atlas.Flags |= ImFontAtlasFlags_NoPowerOfTwoHeight | ImFontAtlasFlags_NoMouseCursors;
  const auto bake = [&](Face face, float em_px, const ImWchar* characters) {
    const File file = file_of(face);
    ImFontConfig config;
    config.FontData = const_cast<unsigned char*>(file.data);  // only read: the atlas does not own it
    config.FontDataSize = int(file.size);
    config.FontDataOwnedByAtlas = false;
    config.SizePixels = em_px;  // the em: see subset_fonts.sh
    config.OversampleH = config.OversampleV =
        1;  // glyphs stand on whole device px, so no sub-pixel copies are needed
    config.PixelSnapH = true;
    config.GlyphRanges = characters;
    return atlas.AddFont(&config);
  };
  for (std::size_t i = 0; i < kCuts.size(); ++i)
    fonts.at[i] = bake(kCuts[i].face, std::round(kCuts[i].size * fonts.scale), ranges_of(kCuts[i]));
  fonts.digits = bake(Face::bold, digits_px(fonts.scale), digits_ranges());
  fonts.digits_most = digits_px(fonts.scale) / fonts.scale;
  atlas.Build();
  return fonts;
}

ImWchar drawn_as(const ImFont& font, char32_t code) {
  const auto has = [&](char32_t c) { return c < 0x10000 && font.FindGlyphNoFallback(ImWchar(c)) != nullptr; };
  if (has(code)) return ImWchar(code);
  if (code < kPlainFirst || code >= kPlainFirst + kPlain.size()) return 0;
  const auto plain = static_cast<unsigned char>(kPlain[code - kPlainFirst]);
  return plain != '.' && has(plain) ? plain : ImWchar(0);
}

}  // namespace gs::look
