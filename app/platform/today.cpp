// Local date, UTC offset and UTC by the C++ library, the same natively and on the web.
#include <array>
#include <chrono>
#include <ctime>
#include <optional>

#include "app/platform/platform.h"
#include "core/sky/calendar.h"

namespace gs::platform {

Today today() {
  const std::time_t now = std::time(nullptr);
  std::tm local{};
  if (localtime_r(&now, &local) == nullptr) return {};
  std::array<char, 16> text{};
  std::strftime(text.data(), text.size(), "%Y-%m-%d", &local);
  return {text.data(), int(local.tm_gmtoff / 60)};
}

pace::ZoneDay zone_on(std::string_view date) {
  const std::optional<sky::Date> day = sky::read_date(date);
  if (!day) return {};
  constexpr double kYear2000Day = 10957;
  return pace::zone_day(kYear2000Day + sky::day_number(*day), [](double utc_s) {
    const std::time_t then = std::time_t(utc_s);
    std::tm local{};
    return localtime_r(&then, &local) == nullptr ? 0.0 : double(local.tm_gmtoff) / 60;
  });
}

double utc_now_s() {
  return std::chrono::duration<double>(std::chrono::system_clock::now().time_since_epoch()).count();
}

}  // namespace gs::platform
