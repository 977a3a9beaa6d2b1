#!/bin/sh
# set_up.sh page|tests: everything that building the page, or passing the tests, needs on this machine. Does nothing twice.
set -eu
cd "$(dirname "$0")/.."
what=${1:-page}

page_packages="g++ cmake ninja-build python3 emscripten libeigen3-dev nlohmann-json3-dev fonts-b612 fonttools dpkg-dev debian-archive-keyring ca-certificates"
test_packages="git libglfw3-dev libgl-dev libgl1-mesa-dri doctest-dev chromium xvfb xauth xdotool imagemagick clang-14 libclang-rt-14-dev brotli"
packages=$page_packages
[ "$what" = tests ] && packages="$packages $test_packages"

if command -v apt-get >/dev/null 2>&1; then
  missing=
  for package in $packages; do
    [ "$(dpkg-query -W -f='${db:Status-Status}' "$package" 2>/dev/null)" = installed ] || missing="$missing $package"
  done
  # Node may come from elsewhere; Debian's own is new enough.
  command -v node >/dev/null 2>&1 || missing="$missing nodejs"
  [ "$what" = tests ] && { command -v npm >/dev/null 2>&1 || missing="$missing npm"; }
  if [ -n "$missing" ]; then
    echo "Installing:$missing"
    sudo=
    if [ "$(id -u)" != 0 ]; then
      command -v sudo >/dev/null 2>&1 || { echo "Neither root nor sudo here. As root: apt-get install$missing" >&2; exit 1; }
      sudo=sudo
    fi
    $sudo apt-get -q update
    # shellcheck disable=SC2086 -- a list of names
    $sudo env DEBIAN_FRONTEND=noninteractive apt-get -q install -y --no-install-recommends $missing
  fi
else
  missing=
  for tool in c++ cmake ninja python3 em++ node pyftsubset; do
    command -v "$tool" >/dev/null 2>&1 || missing="$missing $tool"
  done
  [ "$what" = tests ] && for tool in git npm xvfb-run xdotool import; do
    command -v "$tool" >/dev/null 2>&1 || missing="$missing $tool"
  done
  if [ -n "$missing" ]; then
    echo "This machine has no apt-get, and these commands are missing:$missing" >&2
    echo "Install them: a C++20 compiler, CMake 3.22+, Ninja, Python 3, Emscripten 3.1.6+, Node 18+, fontTools; for the tests also" >&2
    echo "git, npm, GLFW 3.3, OpenGL headers, Chromium, Xvfb, xdotool, ImageMagick. The B612 font files: -DB612_DIR=FOLDER." >&2
    exit 1
  fi
fi

# What the packages brought is what we built and tested with.
pins=web/pins.sha256
if [ -e /usr/include/nlohmann/json.hpp ] && [ "${GROUNDSHEET_ANY_VERSION:-}" != 1 ]; then
  check=$(mktemp)
  while read -r sum file; do
    case "$file" in
      */doctest.h) [ "$what" = tests ] || continue ;;
    esac
    if [ -d "$file" ]; then
      found=$(cd "$file" && find . -type f | LC_ALL=C sort | xargs sha256sum | sha256sum | cut -d' ' -f1)
    else
      found=$(sha256sum "$file" 2>/dev/null | cut -d' ' -f1)
    fi
    [ "$found" = "$sum" ] || echo "$file is not the version that is pinned in $pins." >>"$check"
  done <"$pins"
  if [ -s "$check" ]; then
    cat "$check" >&2
    echo "GROUNDSHEET_ANY_VERSION=1 builds with what is there." >&2
    rm -f "$check"
    exit 1
  fi
  rm -f "$check"
fi

sh web/fetch_imgui.sh build/deps/imgui
