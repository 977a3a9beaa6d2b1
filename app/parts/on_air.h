// What the sheet of being on the air is made of: clock, count, what is to come, the two buttons. Each fills the
// column from ui.y down.
#pragma once

#include <string>

#include "app/parts/ui.h"
#include "core/outing/live.h"

namespace gs::parts {

// Words and instants (on_air_words.cpp)

/// "18:09" of an instant by the outing's own offset; by UTC and named so where the outing has none.
std::string clock_at(const Session& session, double utc_s);
/// What the last entry of the tally is called: "the one at 18:09", "3 forgotten"; "" for an empty tally.
std::string last_entry(const Session& session);
/// What summer time does to the stay, and whether the machine's zone is another on its day.
void clock_words(Ui& ui);
/// Where the usual pace comes from, in a sentence.
void pace_from(Ui& ui);
/// What is beside the outlook while one is on the air.
Live live(const Session& session);

/// on_air_chain.cpp: the six shapes on one line across the area, each a way to its sheet.
void chain_small(Ui& ui, look::Box area);
void air_clock(Ui& ui);      // on_air_clock.cpp: UTC with seconds, UTC midnight, when to pack
void air_count(Ui& ui);      // on_air_count.cpp: count, target, tally strokes, pace with its range
void air_strokes(Ui& ui);    // on_air_count.cpp: when they came, along the time on the air
void air_forecast(Ui& ui);   // on_air_forecast.cpp: contacts when packing starts, chance of the target
void air_battery(Ui& ui);    // on_air_forecast.cpp: charge at leave-by against the reserve
void air_sentences(Ui& ui);  // on_air_words.cpp: drying up, clock in doubt, another zone

/// "+1 contact": reversed for as long as the finger is down and a moment after it counted. True with the times of
/// the presses that count, monotonic.
bool contact_button(Ui& ui, look::Box box);
/// Names what it takes back. True when pressed.
bool undo_button(Ui& ui, look::Box box);
/// Digits for "some I forgot"; puts them into the tally. Fills the column.
void forgotten_pad(Ui& ui);

}  // namespace gs::parts
