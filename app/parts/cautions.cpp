// What can hurt someone: to look at first, to do, to know. Local rules and licensed practice come first.
#include "app/parts/ui.h"
#include "core/safety/caution.h"

namespace gs::parts {

void Ui::cautions() {
  section("Before and while", "cautions");
  int index = 0;
  for (const safety::Caution& caution : safety::cautions()) {
    paragraph(caution.words, "caution:" + std::to_string(index++), theme.ink);
    gap(6);
  }
  paragraph("These are the usual cautions. Local rules, the makers' instructions and licensed practice come first.",
            "cautions:rules", theme.ink2);
}

}  // namespace gs::parts
