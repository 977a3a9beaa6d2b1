#!/bin/sh
# Installs and passes all tests: native, the same core tests as WebAssembly under node, browser, fuzzing. All set-up included.
#   sh tests/run.sh          what every change runs
#   sh tests/run.sh full     adds what takes long: everything under sanitizers, half an hour of fuzzing a target
set -eu
cd "$(dirname "$0")/.."
full=${1:-}
[ -z "$full" ] || [ "$full" = full ] || { echo "$full: not known; sh tests/run.sh [full]" >&2; exit 1; }

sh web/set_up.sh tests
stamp=tests/browser/node_modules/.lock.sha256
lock=$(sha256sum tests/browser/package-lock.json | cut -d' ' -f1)
if [ "$(cat $stamp 2>/dev/null || true)" != "$lock" ]; then
  (cd tests/browser && PUPPETEER_SKIP_DOWNLOAD=1 npm ci --no-fund --no-audit)
  echo "$lock" >$stamp
fi
for tree in native web fuzz; do
  echo "Building $tree"
  sh web/build.sh $tree
done
node web/pack.mjs --build build/web --out build/page
if [ "$full" = full ]; then
  sh web/build.sh asan
  ASAN_OPTIONS=detect_leaks=0 ctest --test-dir build/asan --output-on-failure -R '^(core|app)$'
  FUZZ_SECONDS=1800
fi
export FUZZ_SECONDS="${FUZZ_SECONDS:-60}"
exec ctest --test-dir build/native --output-on-failure --parallel 2
