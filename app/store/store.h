// Keeps texts on this machine under keys: two copies each, damaged ones set aside.
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace gs::store {

/// Keys are "outing", "outing-2", "bin-1", "settings", "things", "open": small letters, then perhaps a hyphen and a
/// number. Others are not kept.
bool is_key(std::string_view key);

/// What was there at start. `notes` are sentences for the person (a damaged record was set aside, everything is
/// gone, nothing can be kept here, ...).
struct Kept {
  std::map<std::string, std::string, std::less<>> records;
  std::vector<std::string> notes;
};
Kept load();

/// Saves at once (native) or as soon as the browser does (web; Host::stored tells the outcome, Host::kept_elsewhere
/// what other windows keep). Never blocks a frame.
void save(std::string_view key, std::string_view text);
/// Takes both copies away.
void remove(std::string_view key);

}  // namespace gs::store
