#!/bin/sh
# run.sh BUILD NAME: fuzzes one target from its hand-written seeds for FUZZ_SECONDS (60); finds stay in BUILD/finds.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
build=$1
name=$2
mkdir -p "$build/corpus/$name" "$build/finds"
program=$(find "$build" -name "${name}_fuzz" -type f | head -n 1)
"$program" -max_total_time="${FUZZ_SECONDS:-60}" -timeout=10 -rss_limit_mb=2048 -max_len=65536 -print_final_stats=1 -verbosity=0 \
  -artifact_prefix="$build/finds/$name-" "$build/corpus/$name" "$here/seeds/$name" 2>&1 | grep -vE '^#|^INFO' | tail -n 30 >"$build/$name.log.new" || true
cat "$build/$name.log.new"
if grep -qE 'ERROR|SUMMARY|deadly signal' "$build/$name.log.new"; then exit 1; fi
grep -q 'number_of_executed_units' "$build/$name.log.new"
