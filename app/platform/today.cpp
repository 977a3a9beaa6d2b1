// Local date, UTC offset and UTC by the C++ library, the same natively and on the web.
#include <array>
#include <chrono>
#include <ctime>

#include "app/platform/platform.h"

namespace gs::platform {

Today today() {
  const std::time_t now = std::time(nullptr);
  std::tm local{};
  if (localtime_r(&now, &local) == nullptr) return {};
  std::array<char, 16> text{};
  std::strftime(text.data(), text.size(), "%Y-%m-%d", &local);
  return {text.data(), int(local.tm_gmtoff / 60)};
}

double utc_now_s() {
  return std::chrono::duration<double>(std::chrono::system_clock::now().time_since_epoch()).count();
}

}  // namespace gs::platform
