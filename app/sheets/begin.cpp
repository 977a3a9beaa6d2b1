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

}  // namespace gs::sheets
