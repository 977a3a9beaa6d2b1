#include "app/sheets/begin.h"

#include "app/sheets/sample_outing_text.h"
#include "core/outing/archive.h"

namespace gs::sheets {

Outing sample_outing() { return read_outing(kSampleOutingText).outing; }

}  // namespace gs::sheets
