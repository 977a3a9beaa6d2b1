// The frame that every link's sheet stands in: chain on top, drawing and figures on one side, levers on the other,
// panels in the place of what they answer. A sheet fills in a LinkSheet and is done.
#pragma once

#include <functional>
#include <initializer_list>
#include <vector>

#include "app/sheets/sheets.h"

namespace gs::sheets {

/// The sheet's question turned round: which levers may change so that the headline reaches a value.
struct TurnOffer {
  std::function<std::string(const Session&)> question;  // "Which battery for 3 h 00?"; "" where there is none
  std::function<Turn(const Session&)> turn;
};

/// What stands fixed at a phone's foot in the place of a slider.
struct Foot {
  std::function<float(const parts::Ui&)> height;  // 0: nothing to show
  std::function<void(parts::Ui&)> draw;
};

struct LinkSheet {
  Link link;
  R headline;                                    // count: none
  std::function<void(parts::Ui&)> drawing;       // under the headline; may be empty
  std::vector<R> readings;                       // rows under the drawing
  std::function<void(parts::Ui&)> below;         // under the readings; may be empty
  L slider;                                      // the lever that lies open; count: none
  std::vector<L> levers;                         // rows
  TurnOffer turn{};                              // may be empty
  bool cautions_at_hand = false;                 // above the levers instead of under the figures
  std::function<void(parts::Ui&)> at_hand = {};  // above the levers; may be empty
  Foot foot = {};                                // of a sheet without a slider; may be empty
};

/// The drawing of the Battery sheet (discharge.cpp).
void discharge(parts::Ui& ui);

void link_sheet(parts::Ui& ui, const LinkSheet& sheet);

}  // namespace gs::sheets
