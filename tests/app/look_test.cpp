// Themes, layouts and the font atlas.
#include <chrono>
#include <cmath>
#include <iterator>
#include <string>
#include <string_view>
#include <vector>

#include "app/look/fonts.h"
#include "app/look/metrics.h"
#include "app/look/pen.h"
#include "app/look/theme.h"
#include "app/look/utf8.h"
#include "doctest/doctest.h"

using namespace gs::look;
using gs::ThemeName;

namespace {

constexpr ThemeName kThemes[] = {ThemeName::daylight, ThemeName::dusk, ThemeName::night};
constexpr const char* kThemeWords[] = {"daylight", "dusk", "night"};

struct Role {
  const char* name;
  ImU32 colour;
};
std::vector<Role> text_roles(const Theme& t) {
  return {{"ink", t.ink}, {"ink2", t.ink2},   {"contour", t.contour}, {"blue", t.blue},
          {"pin", t.pin}, {"holds", t.holds}, {"tight", t.tight},     {"fails", t.fails}};
}
std::vector<Role> grounds(const Theme& t) {
  return {{"paper", t.paper}, {"fold", t.fold}, {"band", t.band},          {"wood", t.wood},
          {"water", t.water}, {"soil", t.soil}, {"relief 1", t.relief[1]}, {"veil", t.veil}};
}

}  // namespace

TEST_CASE("contrast follows WCAG 2.2's definition") {
  // Black on white is 21 (given in the definition). A pure primary's luminance is its coefficient in the
  // definition, so on white: red 1.05 / (0.2126 + 0.05), green 1.05 / 0.7652, blue 1.05 / 0.1222.
  const ImU32 white = IM_COL32(255, 255, 255, 255);
  CHECK(contrast(white, IM_COL32(0, 0, 0, 255)) == doctest::Approx(21).epsilon(1e-9));
  CHECK(contrast(IM_COL32(255, 0, 0, 255), white) == doctest::Approx(1.05 / 0.2626).epsilon(1e-9));
  CHECK(contrast(white, IM_COL32(0, 255, 0, 255)) == doctest::Approx(1.05 / 0.7652).epsilon(1e-9));
  CHECK(contrast(white, IM_COL32(0, 0, 255, 255)) == doctest::Approx(1.05 / 0.1222).epsilon(1e-9));
  // sRGB's curve at mid grey, IEC 61966-2-1: 128/255 is 0.2159 linear.
  CHECK(contrast(white, IM_COL32(128, 128, 128, 255)) == doctest::Approx(1.05 / 0.2659).epsilon(2e-4));
}

TEST_CASE("every text colour can be read on every ground") {
  // WCAG 2.2, 1.4.6 (level AAA): 7:1 by day; 1.4.3 (level AA): 4.5:1 at night, where the eye must stay dark.
  for (std::size_t i = 0; i < std::size(kThemes); ++i) {
    const Theme& t = theme(kThemes[i]);
    const double need = t.dim ? 4.5 : 7;
    double lowest = 99;
    std::string where;
    for (const Role& text : text_roles(t))
      for (const Role& ground : grounds(t)) {
        const double c = contrast(text.colour, ground.colour);
        CAPTURE(kThemeWords[i]);
        CAPTURE(text.name);
        CAPTURE(ground.name);
        CHECK(c >= need);
        if (c < lowest) lowest = c, where = std::string(text.name) + " on " + ground.name;
      }
    CHECK(contrast(t.on_solid, t.solid) >= need);
    CHECK(contrast(t.on_ink, t.ink) >= need);
    MESSAGE(std::string(kThemeWords[i]), ": lowest ", lowest, " (", where, "), needed ", need, "; on_solid/solid ",
            contrast(t.on_solid, t.solid), ", on_ink/ink ", contrast(t.on_ink, t.ink));
  }
}

TEST_CASE("state colours and fills are told from what they stand on") {
  // WCAG 2.2, 1.4.11: 3:1 for parts of a graphic that must be seen.
  for (const ThemeName name : kThemes) {
    const Theme& t = theme(name);
    for (const Sign s : {Sign::holds, Sign::tight, Sign::fails, Sign::unknown})
      CHECK(contrast(t.of(s), t.band) >= 3);
    CHECK(contrast(t.ink2, t.fold) >= 3);  // outlines of what can be pressed
  }
}

TEST_CASE("night keeps blue light below 8 %") {
  const Theme& t = theme(ThemeName::night);
  std::vector<Role> all = text_roles(t);
  for (const Role& g : grounds(t)) all.push_back(g);
  for (const ImU32 c : t.relief) all.push_back({"relief", c});
  for (const ImU32 c : {t.solid, t.on_solid, t.on_ink, t.rule}) all.push_back({"other", c});
  for (const Role& r : all) CHECK(double(r.colour >> IM_COL32_B_SHIFT & 0xFFU) / 255 < 0.08);
}

TEST_CASE("layouts change at their breakpoints") {
  CHECK(layout_of(390, 844) == Layout::phone);
  CHECK(layout_of(599, 800) == Layout::phone);
  CHECK(layout_of(512, 384) == Layout::phone);  // a 1024 x 768 tablet at 200 % text
  CHECK(layout_of(600, 800) == Layout::portrait);
  CHECK(layout_of(820, 1180) == Layout::portrait);
  CHECK(layout_of(1024, 768) == Layout::tablet);
  CHECK(layout_of(700, 700) == Layout::tablet);
  CHECK(layout_of(1199, 800) == Layout::tablet);
  CHECK(layout_of(1200, 800) == Layout::wide);
  CHECK(layout_of(1440, 900) == Layout::wide);
  CHECK(layout_of(844, 390) == Layout::on_side);
  CHECK(layout_of(1024, 499) == Layout::on_side);
  CHECK(layout_of(1024, 500) == Layout::tablet);
  CHECK(chain::cell_width(1024) == 119);  // six cells and the side column on the tablet's width
}

TEST_CASE("the atlas stays small at every scale") {
  // Our limits: 4096 px and 32 MB at ratio 2.625 with 200 % text, which is scale 5.25.
  for (const float scale : {1.0F, 2.0F, 2.625F, 5.25F}) {
    ImFontAtlas atlas;
    const auto start = std::chrono::steady_clock::now();
    const Fonts fonts = build_fonts(atlas, scale);
    const double ms = std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
    const long bytes = long(atlas.TexWidth) * atlas.TexHeight * 4;
    CHECK(fonts.scale == scale);
    CHECK(atlas.TexWidth <= 4096);
    CHECK(atlas.TexHeight <= 4096);
    CHECK(bytes <= 32'000'000);
    MESSAGE("scale ", scale, ": ", atlas.TexWidth, " x ", atlas.TexHeight, " px, ", double(bytes) / 1e6,
            " MB, built in ", ms, " ms");
  }
}

TEST_CASE("all digits of a cut have one advance, 0.65 em") {
  // 1300 of 2000 units in the hmtx table of each font file, as fontTools 4.38 reads it.
  for (const float scale : {1.0F, 2.0F, 2.625F}) {
    ImFontAtlas atlas;
    const Fonts fonts = build_fonts(atlas, scale);
    for (std::size_t i = 0; i < kCuts.size(); ++i) {
      const float advance = fonts.at[i]->FindGlyphNoFallback('0')->AdvanceX;
      for (ImWchar c = '1'; c <= '9'; ++c) CHECK(fonts.at[i]->FindGlyphNoFallback(c)->AdvanceX == advance);
      CHECK(std::fabs(advance - 0.65F * std::round(kCuts[i].size * scale)) <= 0.5F);  // whole px
    }
  }
}

TEST_CASE("every character that the design needs is in the atlas") {
  ImFontAtlas atlas;
  const Fonts fonts = build_fonts(atlas, 1);
  std::string ascii;
  for (char c = ' '; c <= '~'; ++c) ascii += c;
  const auto missing = [](const ImFont& font, std::string_view text) {
    int count = 0;
    for (std::size_t i = 0; i < text.size();) {
      const char32_t code = next_code_point(text, i);
      if (drawn_as(font, code) != code) ++count;
    }
    return count;
  };
  const std::string words = ascii + "Ωλµμ Δ−×÷±°²³½·≥≤→←↑↓∞≈ηφπσ√′″–—‘’“”•…";
  for (const Cut cut : kCuts) {
    const ImFont& font = *fonts.get(cut.face, cut.size);
    CAPTURE(cut.size);
    if (cut.size <= type::kValue) CHECK(missing(font, words) == 0);
    CHECK(missing(font,
                  "0123456789 W V A Ah mAh Wh dB dBm dBi m cm mm km ft in kg g °C °F MHz kHz min h s Ω kΩ % µH"
                  " UTC SWR 19:20 +7 −4.0 ±0.3 > 99 < 1 ≥ 6 ≤ 2 ≈ 3 1.5 ′ ″") == 0);
  }
  for (const float size : {type::kLabel, type::kBody})
    CHECK(missing(*fonts.get(Face::regular, size), "ÄÖÜßéèñåøæÇœŠ") == 0);
  CHECK(missing(*fonts.get(Face::bold, type::kLead), "ÄÖÜßéèñåøæÇœŠ") == 0);
}

TEST_CASE("a letter that the font lacks gives way to its plain one") {
  ImFontAtlas atlas;
  const Fonts fonts = build_fonts(atlas, 1);
  const ImFont& body = *fonts.get(Face::regular, type::kBody);
  const ImFont& value = *fonts.get(Face::bold, type::kValue);
  CHECK(drawn_as(body, U'Ł') == 'L');
  CHECK(drawn_as(body, U'ź') == 'z');
  CHECK(drawn_as(body, U'ſ') == 's');
  CHECK(drawn_as(body, U'é') == 0xE9);  // the font has it
  CHECK(drawn_as(value, U'é') == 'e');  // this size is not baked with accents
  CHECK(drawn_as(value, U'ÿ') == 'y');
  CHECK(drawn_as(body, U'ש') == 0);
  CHECK(drawn_as(body, char32_t(0x1F600)) == 0);
  // a headline that needs more than figures falls back to the largest text size
  CHECK(fonts.fit(Face::bold, type::kHeadline, "32.9 W") == fonts.get(Face::bold, type::kHeadline));
  CHECK(fonts.fit(Face::bold, type::kHeadline, "Quite?") == fonts.get(Face::bold, type::kValue));
}

TEST_CASE("UTF-8 is walked without stumbling") {
  const auto walk = [](std::string_view text) {
    std::u32string out;
    for (std::size_t i = 0; i < text.size();) out += next_code_point(text, i);
    return out;
  };
  CHECK(walk("aé−\U0001F600") == U"aé−\U0001F600");
  // The Unicode Standard, chapter 3, table 3-7: C0, C1 and F5 to FF never occur, a sequence may not be cut short.
  CHECK(walk("\xC0x") == std::u32string{kReplacement, U'x'});
  CHECK(walk("\xE2\x88") == std::u32string(2, kReplacement));
  CHECK(walk("\x80") == std::u32string{kReplacement});
  CHECK(walk("\xF5") == std::u32string{kReplacement});
}
