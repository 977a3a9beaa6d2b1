#!/bin/sh
# build.sh native|web|fuzz|asan: configures (once) and builds one tree under build/. Rebuilds only what changed.
set -eu
cd "$(dirname "$0")/.."
tree=$1
folder=build/$tree
imgui=
[ -e build/deps/imgui/imgui.h ] && imgui="-DFETCHCONTENT_SOURCE_DIR_IMGUI=$PWD/build/deps/imgui"

case $tree in
  native) options="-DCMAKE_BUILD_TYPE=RelWithDebInfo -DGROUNDSHEET_WEB_BUILD=$PWD/build/web -DGROUNDSHEET_FUZZ_BUILD=$PWD/build/fuzz" ;;
  web) options="-DCMAKE_BUILD_TYPE=Release" ;;
  fuzz) options="-DCMAKE_BUILD_TYPE=Debug -DCMAKE_CXX_COMPILER=clang++-14 -DGROUNDSHEET_FUZZ=ON -DGROUNDSHEET_SANITIZE=address,undefined" ;;
  asan) options="-DCMAKE_BUILD_TYPE=Debug -DGROUNDSHEET_SANITIZE=address,undefined" ;;
  *) echo "build.sh native|web|fuzz|asan" >&2; exit 1 ;;
esac
if [ "$tree" = web ]; then
  for toolchain in "$(em-config EMSCRIPTEN_ROOT 2>/dev/null)/cmake/Modules/Platform/Emscripten.cmake" \
                   /usr/share/emscripten/cmake/Modules/Platform/Emscripten.cmake; do
    [ -e "$toolchain" ] && break
  done
  options="$options -DCMAKE_TOOLCHAIN_FILE=$toolchain"
  if [ "${2:-}" = page ]; then options="$options -DGROUNDSHEET_TESTS=OFF"; else options="$options -DGROUNDSHEET_TESTS=ON"; fi
fi
# shellcheck disable=SC2086 -- a list of options
cmake -S . -B "$folder" -G Ninja $options $imgui >"/tmp/groundsheet-configure-$$" 2>&1 || { cat "/tmp/groundsheet-configure-$$" >&2; rm -f "/tmp/groundsheet-configure-$$"; exit 1; }
rm -f "/tmp/groundsheet-configure-$$"
if [ "$tree" = fuzz ]; then
  cmake --build "$folder" --target archive_fuzz quantity_fuzz
elif [ "${2:-}" = page ]; then
  cmake --build "$folder" --target app
else
  cmake --build "$folder"
fi
