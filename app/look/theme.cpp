#include "app/look/theme.h"

#include <cmath>

namespace gs::look {
namespace {

constexpr ImU32 rgb(unsigned hex) { return IM_COL32(hex >> 16U & 0xFFU, hex >> 8U & 0xFFU, hex & 0xFFU, 255); }

constexpr Theme kDaylight{.paper = rgb(0xFBF8EE),
                          .fold = rgb(0xECE5D0),
                          .ink = rgb(0x16201C),
                          .ink2 = rgb(0x36423C),
                          .rule = rgb(0xB9B09A),
                          .contour = rgb(0x63340D),
                          .blue = rgb(0x0B3D66),
                          .pin = rgb(0x56206C),
                          .holds = rgb(0x11482A),
                          .tight = rgb(0x5C3A00),
                          .fails = rgb(0x88140B),
                          .on_ink = rgb(0xFBF8EE),
                          .band = rgb(0xF3E5BF),
                          .wood = rgb(0xD9E5CC),
                          .water = rgb(0xCFE2EA),
                          .soil = rgb(0xE9DCC0),
                          .relief = {rgb(0xFBF8EE), rgb(0xEAEBD3), rgb(0xCDDDB6), rgb(0xA3C79A), rgb(0x7DB08A)},
                          .veil = rgb(0xFBF8EE),
                          .solid = rgb(0x16201C),
                          .on_solid = rgb(0xFBF8EE),
                          .dim = false};

constexpr Theme kDusk{.paper = rgb(0x12191C),
                      .fold = rgb(0x1F2A2E),
                      .ink = rgb(0xF4EFE0),
                      .ink2 = rgb(0xC9D0C5),
                      .rule = rgb(0x4A575A),
                      .contour = rgb(0xE6BF93),
                      .blue = rgb(0xA3CFF0),
                      .pin = rgb(0xDDBBEF),
                      .holds = rgb(0x9ADBAB),
                      .tight = rgb(0xF4C659),
                      .fails = rgb(0xFFAA97),
                      .on_ink = rgb(0x12191C),
                      .band = rgb(0x2E2A1B),
                      .wood = rgb(0x1E3326),
                      .water = rgb(0x1B3442),
                      .soil = rgb(0x2E281C),
                      .relief = {rgb(0x12191C), rgb(0x1C2B2F), rgb(0x21413F), rgb(0x2B6655), rgb(0x3E8A6E)},
                      .veil = rgb(0x12191C),
                      .solid = rgb(0xF4EFE0),
                      .on_solid = rgb(0x12191C),
                      .dim = false};

// Long wavelengths only, and little of them, so that the eye stays adapted to the dark.
constexpr Theme kNight{.paper = rgb(0x080100),
                       .fold = rgb(0x1A0600),
                       .ink = rgb(0xEC6414),
                       .ink2 = rgb(0xD2570F),
                       .rule = rgb(0x4A1A02),
                       .contour = rgb(0xD2570F),
                       .blue = rgb(0xEC6414),
                       .pin = rgb(0xDC5C10),
                       .holds = rgb(0xEC6414),
                       .tight = rgb(0xEC6414),
                       .fails = rgb(0xFF7A14),
                       .on_ink = rgb(0x080100),
                       .band = rgb(0x180500),
                       .wood = rgb(0x200A00),
                       .water = rgb(0x180500),
                       .soil = rgb(0x180500),
                       .relief = {rgb(0x080100), rgb(0x1A0600), rgb(0x2C0C00), rgb(0x481600), rgb(0x642000)},
                       .veil = rgb(0x080100),
                       .solid = rgb(0x3A1200),
                       .on_solid = rgb(0xFF7A14),
                       .dim = true};

/// WCAG 2.2, definition of relative luminance (threshold 0.04045, as its note on the sRGB standard has it).
double luminance(ImU32 colour) {
  const auto linear = [](ImU32 byte) {
    const double c = double(byte & 0xFFU) / 255;
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
  };
  return 0.2126 * linear(colour >> IM_COL32_R_SHIFT) + 0.7152 * linear(colour >> IM_COL32_G_SHIFT) +
         0.0722 * linear(colour >> IM_COL32_B_SHIFT);
}

}  // namespace

ImU32 Theme::of(Sign sign) const {
  switch (sign) {
    case Sign::holds:
      return holds;
    case Sign::tight:
      return tight;
    case Sign::fails:
      return fails;
    case Sign::unknown:
      break;
  }
  return ink2;
}

const Theme& theme(ThemeName name) {
  switch (name) {
    case ThemeName::dusk:
      return kDusk;
    case ThemeName::night:
      return kNight;
    case ThemeName::daylight:
    case ThemeName::count:
      break;
  }
  return kDaylight;
}

double contrast(ImU32 a, ImU32 b) {
  const double la = luminance(a), lb = luminance(b);
  return (std::fmax(la, lb) + 0.05) / (std::fmin(la, lb) + 0.05);
}

}  // namespace gs::look
