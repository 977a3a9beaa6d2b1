// The program without a window.
#pragma once

namespace gs {

/// Carries out --evaluate, --check, --levers, --readings, --checks. True when the arguments asked for one of them
/// (or were wrong); `status` is then the exit status.
bool command_line(int argc, char** argv, int& status);

}  // namespace gs
