#include "core/sky/locator.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>

namespace gs::sky {
namespace {

/// One pair of characters: the first symbol and how many there are.
struct Pair {
  char first;
  int count;
  const char* symbols;
};
constexpr Pair kPairs[] = {
    {'A', 18, "a letter A to R"}, {'0', 10, "a digit"}, {'a', 24, "a letter a to x"}, {'0', 10, "a digit"}};
constexpr int kMostPairs = 4;

// Cells of the finest kind: 1/120 degree of longitude by 1/240 degree of latitude.
constexpr int kFinePerDegreeEast = 120, kFinePerDegreeNorth = 240;
constexpr int kFineEast = 360 * kFinePerDegreeEast, kFineNorth = 180 * kFinePerDegreeNorth;

/// Fine cells across one cell of a locator with so many pairs; the same number east and north.
constexpr int fine_per_cell(int pairs) {
  int cells = 1;
  for (int i = kMostPairs - 1; i >= pairs; --i) cells *= kPairs[i].count;
  return cells;
}

bool is_blank(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }
char upper(char c) { return c >= 'a' && c <= 'z' ? char(c - 'a' + 'A') : c; }

/// South-west corner in fine cells, and the pairs that were read.
struct Corner {
  int east = 0, north = 0, pairs = 0;
};

std::string read_corner(std::string_view text, Corner& corner) {
  while (!text.empty() && is_blank(text.front())) text.remove_prefix(1);
  while (!text.empty() && is_blank(text.back())) text.remove_suffix(1);
  if (text.empty()) return "A locator is 4, 6 or 8 characters, such as JN58 or JN58td.";
  for (std::size_t i = 0; i < text.size() && i < 2 * kMostPairs; ++i) {
    const Pair& pair = kPairs[i / 2];
    const int symbol = upper(text[i]) - upper(pair.first);
    if (symbol < 0 || symbol >= pair.count)
      return "Character " + std::to_string(i + 1) + " of a locator is " + pair.symbols + ".";
    (i % 2 ? corner.north : corner.east) += symbol * fine_per_cell(int(i / 2) + 1);
  }
  if (text.size() != 4 && text.size() != 6 && text.size() != 8)
    return "A locator has 4, 6 or 8 characters, this one has " + std::to_string(text.size()) + ".";
  corner.pairs = int(text.size()) / 2;
  return {};
}

std::string text_of(Corner corner) {
  std::string text;
  for (int i = 0; i < corner.pairs; ++i) {
    const int size = fine_per_cell(i + 1);
    text += char(kPairs[i].first + corner.east / size % kPairs[i].count);
    text += char(kPairs[i].first + corner.north / size % kPairs[i].count);
  }
  return text;
}

}  // namespace

ReadLocator read_locator(std::string_view text) {
  Corner corner;
  ReadLocator read;
  read.trouble = read_corner(text, corner);
  if (!read.ok()) return read;
  const double cells = fine_per_cell(corner.pairs);
  read.width_deg = cells / kFinePerDegreeEast;
  read.height_deg = cells / kFinePerDegreeNorth;
  read.centre = {(corner.north + cells / 2) / kFinePerDegreeNorth - 90,
                 (corner.east + cells / 2) / kFinePerDegreeEast - 180};
  return read;
}

std::string locator_of(Place place, int characters) {
  if (!is_place(place) || (characters != 4 && characters != 6 && characters != 8)) return {};
  // Decimal degrees cannot hold most cell lines exactly: a hair below the line counts as on it.
  constexpr double kOnTheLine = 1e-9;
  const auto cells = [](double from_edge_deg, int per_degree) {
    return int(std::floor(from_edge_deg * per_degree + kOnTheLine));
  };
  Corner corner;
  corner.pairs = characters / 2;
  corner.east = (cells(place.longitude_deg + 180, kFinePerDegreeEast) % kFineEast + kFineEast) % kFineEast;
  corner.north = std::min(cells(place.latitude_deg + 90, kFinePerDegreeNorth), kFineNorth - 1);
  return text_of(corner);
}

double locator_number(std::string_view text) {
  Corner corner;
  if (!read_corner(text, corner).empty()) return std::numeric_limits<double>::quiet_NaN();
  return double((std::int64_t(corner.pairs) * kFineEast + corner.east) * kFineNorth + corner.north);
}

std::string locator_from_number(double number) {
  constexpr double kMost = double(kMostPairs + 1) * kFineEast * kFineNorth;
  if (!(number >= 0 && number < kMost) || number != std::floor(number)) return {};
  const std::int64_t whole = std::int64_t(number), cell = whole / kFineNorth;
  const Corner corner{int(cell % kFineEast), int(whole % kFineNorth), int(cell / kFineEast)};
  const std::string text = corner.pairs >= 2 ? text_of(corner) : std::string{};
  return locator_number(text) == number ? text : std::string{};
}

}  // namespace gs::sky
