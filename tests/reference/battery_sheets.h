// Makers' sheets of amperes and hours, for laws that are fitted to some of their points and judged on the others.
#pragma once

#include <array>
#include <vector>

#include "core/battery/chemistry.h"
#include "core/battery/rate_sheet.h"

namespace gs::test {

/// Currents and times of one lead-acid sheet at 25 C. `three` names the points that a person would type in (20 h, 4
/// or 5 h, 1 h or the nearest), `two` those for Peukert's law. All rows seen.
struct Sheet {
  const char* name;
  const char* source;
  std::vector<battery::Rate> points;
  std::array<std::size_t, 3> three;
  std::array<std::size_t, 2> two;
};

inline const std::vector<Sheet> kSheets = {
    {"GP 645, 6 V 4.5 Ah",
     "CSB GP 645 data sheet, to 1.75 V a cell",
     {{5.22, 0.5}, {3.06, 1}, {1.77, 2}, {1.23, 3}, {0.979, 4}, {0.804, 5}, {0.531, 8}, {0.435, 10}, {0.229, 20}},
     {8, 4, 1},
     {8, 1}},
    {"GP 12400, 40 Ah",
     "CSB GP 12400 data sheet, to 1.75 V a cell; 20 h from its rating line",
     {{49, 0.5}, {30, 1}, {17.4, 2}, {12.3, 3}, {9.71, 4}, {2, 20}},
     {5, 4, 1},
     {5, 1}},
    {"NP4-12 to 1.70 V, 4 Ah",
     "NP4-12 data sheet (maker's name not in the excerpt), to 1.70 V a cell",
     {{3.75, 0.5}, {2.32, 1}, {1.05, 3}, {0.71, 5}, {0.38, 10}, {0.2, 20}},
     {5, 3, 1},
     {5, 1}},
    {"NP4-12 to 1.75 V, 4 Ah",
     "the same, to 1.75 V a cell",
     {{2.25, 1}, {1, 3}, {0.7, 5}, {0.38, 10}, {0.2, 20}},
     {4, 2, 0},
     {4, 0}},
    {"12V-40AH",
     "12V-40AH specification sheet (Vinachem), end voltage 10.8 to 9.6 V by rate",
     {{24, 1}, {6.8, 5}, {3.72, 10}, {2, 20}},
     {3, 1, 0},
     {3, 0}},
    {"LC-X1228, 28 Ah",
     "Panasonic, Sealed Lead-Acid Handbook, January 1999, p. 124",
     {{21, 1}, {5, 5}, {2.65, 10}, {1.4, 20}},
     {3, 1, 0},
     {3, 0}},
    {"J305P-AC, 330 Ah flooded",
     "Trojan J305P-AC data sheet 03/14, ampere-hours by rate and reserve minutes",
     {{75, 3.25}, {54.2, 5}, {30.4, 10}, {25, 711.0 / 60}, {16.5, 20}, {3.67, 100}},
     {4, 1, 0},
     {4, 0}},
    {"CB12-115, 115 Ah",
     "CB12-115 data sheet (maker's name not in the excerpt), to 10.5 V",
     {{119.7, 0.5},
      {66.88, 1},
      {42.63, 2},
      {27.97, 3},
      {24.01, 4},
      {19.01, 5},
      {13.72, 8},
      {11.11, 10},
      {5.75, 20}},
     {8, 5, 1},
     {8, 1}},
};

/// Reserve minutes at 25 A and 20 h rating, with the exponent that an instrument maker prints for them: Link 2000
/// owner's manual, p. 26 (seen). Two of its rows cannot be reproduced: 8GU1, whose minutes exceed its rating, and
/// 27TM, printed 1.28 and computed 1.291.
struct ExponentRow {
  const char* name;
  double label_ah, minutes, printed;
};
inline constexpr ExponentRow kExponents[] = {
    {"8GU24", 70, 130, 1.13},  {"8GU27", 86, 167, 1.12},  {"8GU30H", 95, 188, 1.12}, {"84D", 180, 388, 1.11},
    {"8G8D", 225, 500, 1.10},  {"T-105", 225, 447, 1.24}, {"T-125", 235, 488, 1.19}, {"T-145", 244, 530, 1.14},
    {"J250", 250, 535, 1.17},  {"J305", 305, 660, 1.21},  {"L16", 350, 760, 1.28},   {"24TM", 85, 135, 1.23},
    {"30XHS", 130, 225, 1.24}, {"EV8D", 216, 450, 1.17},
};

/// The constants of another program for one maker's 40 Ah block (CSB GP 12400, with a measured block's slope), by
/// the label: for its worked figures, through the same functions that the catalogue's row goes through.
struct M40Block {
  battery::KineticLaw law{42.757 / 40, 3.3644, 0.41494, 12.78, 1.35, 0.00552, Evidence::seen, "worked out apart"};
  battery::Chemistry chemistry = *battery::find_chemistry("sealed_lead");
  M40Block() {
    chemistry.quick_mohm_ah = 9.8 * 40;
    chemistry.kinetic = &law;
  }
  M40Block(const M40Block&) = delete;
  M40Block& operator=(const M40Block&) = delete;
};

}  // namespace gs::test
