#include "app/sheets/begin.h"

#include "app/platform/platform.h"
#include "app/sheets/demo_outing_texts.h"
#include "core/outing/archive.h"
#include "core/outing/plan.h"

namespace gs::sheets {

Outing sample_outing() { return read_outing(kDemoOutingTexts[0]).outing; }

std::vector<Outing> demo_outings() {
  std::vector<Outing> outings;
  for (const std::string_view text : kDemoOutingTexts) outings.push_back(read_outing(text).outing);
  return outings;
}

Outing new_outing() {
  const platform::Today today = platform::today();
  Outing outing;
  outing.date = today.date;
  const Value offset = double(today.utc_offset_min);
  return refusal(L::clock_utc_offset_min, offset).empty() ? with(outing, L::clock_utc_offset_min, offset) : outing;
}

std::string file_stem(const Outing& outing) {
  std::string name;
  for (const char c : outing.name)
    name += (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') ? c : c >= 'A' && c <= 'Z' ? char(c - 'A' + 'a') : '-';
  return name.empty() ? "outing" : name;
}

}  // namespace gs::sheets
