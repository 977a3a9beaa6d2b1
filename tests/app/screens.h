// Every sheet and panel there is, each with how to come there, for the tests that look at them all.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "tests/app/stage.h"

namespace gs::stage {

struct Screen {
  std::string name;
  std::function<void(Stage&)> open;  // from a stage that was just set
};
const std::vector<Screen>& screens();

}  // namespace gs::stage
