// The keyboard at every size: whatever it comes to, the page comes to rest with it in sight.
#include <doctest/doctest.h>

#include <algorithm>
#include <cstdio>

#include "tests/app/screens.h"

using namespace gs;
using stage::Screen;
using stage::Stage;

namespace {

struct Size {
  float w, h;
  int text_pct;
};
constexpr Size kSizes[] = {{844, 390, 200}, {390, 844, 200}, {320, 568, 100}, {1024, 768, 100}};

}  // namespace

TEST_CASE("the keyboard through every screen: each stop comes to rest, with some of it in sight") {
  int stops = 0;
  for (const Size& size : kSizes)
    for (const Screen& screen : stage::screens()) {
      CAPTURE(screen.name);
      CAPTURE(size.w);
      CAPTURE(size.h);
      Stage stage(size.w, size.h);
      screen.open(stage);
      stage.session().settings.text_pct = size.text_pct;
      stage.settle();
      std::string first;
      constexpr int kMostStops = 40;
      for (int n = 0; n < kMostStops; ++n) {
        stage.press(platform::Key::tab);
        stage.settle();  // fails where frames never end
        const std::string& focus = stage.tree().focus;
        if (focus.empty() || focus == first) break;
        if (first.empty()) first = focus;
        const mirror::Node& node = stage.at(focus);
        CAPTURE(focus);
        CHECK(node.h - node.cut_top - node.cut_bottom > std::min(20.0F, node.h - 1));
        ++stops;
      }
    }
  std::printf("  %d stops of the keyboard\n", stops);
  CHECK(stops > 1000);
}
