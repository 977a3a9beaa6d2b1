#include "app/platform/platform.h"
#include "app/shell.h"

#ifndef __EMSCRIPTEN__
#include <cstdio>

#include "app/command_line.h"
#endif

int main([[maybe_unused]] int argc, [[maybe_unused]] char** argv) {
#ifndef __EMSCRIPTEN__
  int status = 0;
  if (gs::command_line(argc, argv, status)) return status;
#endif
  static gs::Shell shell;  // outlives main on the page
  if (!gs::platform::start(shell, 1024, 768, "Groundsheet")) {
#ifndef __EMSCRIPTEN__
    std::fprintf(stderr, "%s\n", std::string(gs::platform::trouble()).c_str());
#endif
    return 1;
  }
  gs::platform::run();
  return 0;
}
