#include <algorithm>
#include <cmath>

#include "app/look/pen.h"
#include "app/look/utf8.h"

namespace gs::look {
namespace {

constexpr std::string_view kEllipsis = "\u2026";
constexpr float kMissingEm = 0.55F;  // advance of the hollow box
constexpr float kAscentEm = 0.965F,
                kDescentEm = 0.25F;  // of the family's own hhea table: 1930 and 500 of 2000 units

float advance_px(const ImFont& font, char32_t code) {
  const ImWchar drawn = drawn_as(font, code);
  return drawn != 0 ? font.FindGlyphNoFallback(drawn)->AdvanceX : std::round(font.FontSize * kMissingEm);
}

bool has_digit(std::string_view text) {
  return std::any_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

/// A word of a figure that is set small: it has no digit and is no sign.
bool is_unit(std::string_view word) {
  constexpr std::string_view kSigns[] = {"+",      "-",      "<",      ">",      "=",     "\u2212",
                                         "\u00b1", "\u2264", "\u2265", "\u2248", "\u221e"};
  if (has_digit(word)) return false;
  return std::none_of(std::begin(kSigns), std::end(kSigns),
                      [&](std::string_view s) { return word.starts_with(s); });
}

/// A space that parts a figure from its unit, or from another short word that says what it counts: no line ends
/// there while another place will do.
bool holds_together(std::string_view text, std::size_t space) {
  constexpr std::size_t kLongestUnit = 4;  // bytes: "mAh", "\u00b0C", "min"
  if (space == 0 || !(text[space - 1] >= '0' && text[space - 1] <= '9')) return false;
  const std::string_view after = text.substr(space + 1);
  const std::string_view word = after.substr(0, after.find_first_of(" .,;:)"));
  return !word.empty() && word.size() <= kLongestUnit && !has_digit(word);
}

}  // namespace

float Pen::text_px(std::string_view text, const ImFont& font) const {
  float sum = 0;
  for (std::size_t i = 0; i < text.size();) sum += advance_px(font, next_code_point(text, i));
  return sum;
}

float Pen::width(std::string_view text, Face face, float size) const {
  return text_px(text, *fonts_.fit(face, size, text)) / scale_;
}

float Pen::text(float x, float baseline, std::string_view text, Face face, float size, ImU32 colour, Align align) {
  const ImFont& font = *fonts_.fit(face, size, text);
  const float width_px = text_px(text, font);
  const float shift = align == Align::left ? 0 : align == Align::centre ? width_px / 2 : width_px;
  const float left = std::round(x * scale_ - shift), base = std::round(baseline * scale_);
  if (record_ != nullptr && !text.empty()) {
    const float line = type::line_height(size);
    const float above = size * kAscentEm + (line - size * (kAscentEm + kDescentEm)) / 2;
    record_->push_back({std::string(text),
                        {left / scale_, base / scale_ - above, width_px / scale_, line},
                        clip(),
                        face,
                        size,
                        colour,
                        ground()});
  }
  const float em = font.FontSize;
  if (base - 1.1F * em > list_.GetClipRectMax().y || base + 0.4F * em < list_.GetClipRectMin().y)
    return width_px / scale_;
  const float top = base - std::round(font.Ascent);  // the atlas counts a glyph's y from there
  float pen = left;
  for (std::size_t i = 0; i < text.size();) {
    const ImWchar drawn = drawn_as(font, next_code_point(text, i));
    if (drawn == 0) {
      const float wide = std::round(em * kMissingEm);
      outline({(pen + 1) / scale_, (base - em * type::kCapEm) / scale_, (wide - 2) / scale_,
               em * type::kCapEm / scale_},
              colour, stroke::kHair);
      pen += wide;
      continue;
    }
    const ImFontGlyph& glyph = *font.FindGlyphNoFallback(drawn);
    if (glyph.Visible) {
      list_.PrimReserve(6, 4);
      list_.PrimRectUV({pen + glyph.X0, top + glyph.Y0}, {pen + glyph.X1, top + glyph.Y1}, {glyph.U0, glyph.V0},
                       {glyph.U1, glyph.V1}, colour);
    }
    pen += glyph.AdvanceX;
  }
  return width_px / scale_;
}

std::vector<std::string_view> Pen::lines(std::string_view text, float width, Face face, float size) const {
  const ImFont& font = *fonts_.fit(face, size, text);
  const float room = width * scale_ + 0.01F;
  std::vector<std::string_view> out;
  constexpr std::size_t kNone = std::string_view::npos;
  std::size_t start = 0, space = kNone, i = 0;
  float used = 0, used_at_space = 0;
  const auto end_line = [&](std::size_t to, std::size_t next, float carried) {
    out.push_back(text.substr(start, to - start));
    start = next;
    space = kNone;
    used = carried;
  };
  while (i < text.size()) {
    const std::size_t here = i;
    const char32_t code = next_code_point(text, i);
    if (code == '\n') {
      end_line(here, i, 0);
      continue;
    }
    const float advance = advance_px(font, code);
    if (code == ' ') {  // a space may hang over the end
      if (space == kNone || !holds_together(text, here)) {
        space = here;
        used_at_space = used + advance;
      }
    } else if (used + advance > room && here > start) {
      if (space != kNone)
        end_line(space, space + 1, used - used_at_space);
      else
        end_line(here, here, 0);
    }
    used += advance;
  }
  out.push_back(text.substr(start));
  return out;
}

bool Pen::breaks_word(const std::vector<std::string_view>& lines) {
  for (std::size_t i = 1; i < lines.size(); ++i)
    if (lines[i - 1].data() + lines[i - 1].size() == lines[i].data()) return true;
  return false;
}

int Pen::paragraph(float x, float baseline, float width, std::string_view words, Face face, float size,
                   ImU32 colour, Align align) {
  const auto broken = lines(words, width, face, size);
  const float at_x = align == Align::left ? x : align == Align::centre ? x + width / 2 : x + width;
  for (const std::string_view line : broken) {
    text(at_x, baseline, line, face, size, colour, align);
    baseline += type::line_height(size);
  }
  return int(broken.size());
}

std::string Pen::elided(std::string_view text, float width, Face face, float size) const {
  const ImFont& font = *fonts_.fit(face, size, text);
  const float room = width * scale_ + 0.01F;
  if (text_px(text, font) <= room) return std::string(text);
  float used = text_px(kEllipsis, font);
  std::size_t i = 0, end = 0;
  while (i < text.size()) {
    used += advance_px(font, next_code_point(text, i));
    if (used > room) break;
    end = i;
  }
  while (end > 0 && text[end - 1] == ' ') --end;
  return std::string(text.substr(0, end)).append(kEllipsis);
}

float Pen::unit_size(float size, float ratio) {
  constexpr float kSizes[] = {type::kTick,  type::kLabel,  type::kBody,    type::kLead,
                              type::kValue, type::kFigure, type::kHeadline};
  const float want = std::round(size * ratio);
  for (const float s : kSizes)
    if (s >= want) return std::min(s, size);
  return size;
}

std::vector<Pen::Piece> Pen::pieces(std::string_view figure, float size, float ratio) {
  if (!has_digit(figure)) return {{figure, size, 0}};
  std::vector<Piece> out;
  while (!figure.empty()) {
    const std::size_t space = figure.find(' ');
    const std::string_view word = figure.substr(0, space);
    const float gap = out.empty() ? 0 : size * type::kThinGapEm;
    if (!word.empty()) out.push_back({word, is_unit(word) ? unit_size(size, ratio) : size, gap});
    figure = space == std::string_view::npos ? std::string_view{} : figure.substr(space + 1);
  }
  return out;
}

float Pen::figure_width(std::string_view text, float size, float ratio) const {
  float sum = 0;
  for (const Piece& piece : pieces(text, size, ratio))
    sum += piece.gap_before + width(piece.text, Face::bold, piece.size);
  return sum;
}

float Pen::figure(float x, float baseline, std::string_view words, float size, ImU32 colour, Align align,
                  float ratio) {
  const float whole = figure_width(words, size, ratio);
  float pen = x - (align == Align::left ? 0 : align == Align::centre ? whole / 2 : whole);
  for (const Piece& piece : pieces(words, size, ratio)) {
    pen += piece.gap_before;
    pen += text(pen, baseline, piece.text, Face::bold, piece.size, colour);
  }
  return whole;
}

float Pen::digits_size(float size) const { return std::min(size, fonts_.digits_most); }

float Pen::digits_width(std::string_view text, float size) const {
  return text_px(text, *fonts_.digits) / fonts_.digits->FontSize * size;
}

float Pen::digits(float x, float baseline, std::string_view text, float size, ImU32 colour, Align align) {
  const ImFont& font = *fonts_.digits;
  const float scale = size * scale_ / font.FontSize, width = digits_width(text, size);
  const float shift = align == Align::left ? 0 : align == Align::centre ? width / 2 : width;
  const float left = std::round((x - shift) * scale_), base = std::round(baseline * scale_);
  if (record_ != nullptr)
    record_->push_back({std::string(text),
                        {left / scale_, baseline - size * type::kCapEm, width, size * type::kCapEm},
                        clip(),
                        Face::bold,
                        size,
                        colour,
                        ground()});
  float pen = left;
  for (std::size_t i = 0; i < text.size();) {
    const ImFontGlyph* glyph = font.FindGlyphNoFallback(ImWchar(next_code_point(text, i)));
    if (glyph == nullptr) continue;
    const auto put = [&](float y) { return base + (y - font.Ascent) * scale; };
    list_.PrimReserve(6, 4);
    list_.PrimRectUV({pen + glyph->X0 * scale, put(glyph->Y0)}, {pen + glyph->X1 * scale, put(glyph->Y1)},
                     {glyph->U0, glyph->V0}, {glyph->U1, glyph->V1}, colour);
    pen += glyph->AdvanceX * scale;
  }
  return width;
}

}  // namespace gs::look
