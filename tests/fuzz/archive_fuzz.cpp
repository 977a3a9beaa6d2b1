// Any bytes as an outing file and as settings: refused whole, or read into something that writes and reads back the
// same.
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <string_view>

#include "core/outing/archive.h"
#include "core/outing/own_things.h"
#include "core/outing/plan.h"

using namespace gs;

namespace {

void demand(bool holds) {
  if (!holds) __builtin_trap();
}

bool one_line(const std::string& text) { return text.find('\n') == std::string::npos; }

/// What was read may be set by hand too: in range, of the right kind.
void demand_sound(const Values& values) {
  demand(values.size() == lever_count());
  for (std::size_t i = 0; i < values.size(); ++i) {
    if (lever(L(i)).kind != Kind::text) demand(refusal(L(i), values[i]).empty());
    if (const double* number = std::get_if<double>(&values[i])) demand(std::isfinite(*number));
  }
}

void try_outing(std::string_view text) {
  const LoadedOuting loaded = read_outing(text);
  for (const std::string& note : loaded.notes) demand(!note.empty() && one_line(note));
  if (!loaded.refusal.empty()) {
    demand(one_line(loaded.refusal) && loaded.outing == Outing{} && loaded.notes.empty() && !loaded.newer);
    return;
  }
  demand_sound(loaded.outing.set);
  if (loaded.outing.pinned) demand_sound(*loaded.outing.pinned);
  const std::string written = write_outing(loaded.outing);
  demand(written.size() <= kMostFileBytes);
  const LoadedOuting again = read_outing(written);
  demand(again.refusal.empty() && again.outing == loaded.outing && write_outing(again.outing) == written);

  Outing unpinned = loaded.outing;  // as the app does when the pin is taken away
  unpinned.pinned.reset();
  unpinned.pinned_name.clear();
  unpinned.kept = kept_without_pin(unpinned.kept);
  demand(read_outing(write_outing(unpinned)).outing == unpinned);
}

void try_settings(std::string_view text) {
  const LoadedSettings loaded = read_settings(text);
  if (!loaded.refusal.empty()) {
    demand(one_line(loaded.refusal) && loaded.settings == Settings{});
    return;
  }
  demand(loaded.settings.text_pct >= 100 && loaded.settings.text_pct <= 200);
  const LoadedSettings again = read_settings(write_settings(loaded.settings));
  demand(again.refusal.empty() && again.notes.empty() && again.settings == loaded.settings);
}

void try_things(std::string_view text) {
  const LoadedThings loaded = read_things(text);
  for (const std::string& note : loaded.notes) demand(!note.empty() && one_line(note));
  if (!loaded.refusal.empty()) return demand(one_line(loaded.refusal) && loaded.things.empty());
  demand(loaded.things.size() <= kMostOwnThings);
  for (const OwnThing& thing : loaded.things) {
    demand(!thing.name.empty());
    demand_sound(thing.set);
  }
  demand(read_things(write_things(loaded.things)).things == loaded.things);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  try_outing(text);
  try_settings(text);
  try_things(text);
  return 0;
}
