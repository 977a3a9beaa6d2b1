// Keeps outings and settings on this machine: two copies each, damaged ones set aside.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace gs::store {

/// What was there at start. Empty texts: nothing was kept. `notes` are sentences for the person (a damaged record
/// was set aside, everything is gone, nothing can be kept here, ...).
struct Kept {
  std::string outing, settings;
  std::vector<std::string> notes;
};
Kept load();

/// Saves at once (native) or as soon as the browser does (web; Host::stored tells the outcome). Never blocks a
/// frame.
void save_outing(std::string_view text);
void save_settings(std::string_view text);

}  // namespace gs::store
