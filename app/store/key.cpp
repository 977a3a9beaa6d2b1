#include "app/store/store.h"

namespace gs::store {

bool is_key(std::string_view key) {
  constexpr std::size_t kMostDigits = 8;
  const std::size_t hyphen = key.find('-');
  const std::string_view stem = key.substr(0, hyphen);
  if (stem == "settings" || stem == "things" || stem == "history" || stem == "open")
    return hyphen == std::string_view::npos;
  if (stem != "outing" && stem != "bin") return false;
  if (hyphen == std::string_view::npos) return stem == "outing";
  const std::string_view digits = key.substr(hyphen + 1);
  return !digits.empty() && digits.size() <= kMostDigits && digits[0] != '0' &&
         digits.find_first_not_of("0123456789") == std::string_view::npos;
}

}  // namespace gs::store
