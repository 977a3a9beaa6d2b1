#!/bin/sh
# Builds the page and serves it on this machine alone. All set-up included.
#   sh web/run.sh [--port N]     serves it and prints the address
#   sh web/run.sh --pack DIR     writes the folder that any static https host serves
set -eu
caller=$PWD
cd "$(dirname "$0")/.."
port=8123
pack=
while [ $# -gt 0 ]; do
  case $1 in
    --port) [ $# -ge 2 ] || { echo "--port needs a number" >&2; exit 1; }; port=$2; shift 2 ;;
    --pack) [ $# -ge 2 ] || { echo "--pack needs a folder" >&2; exit 1; }; pack=$2; shift 2
            case $pack in /*) ;; *) pack=$caller/$pack ;; esac ;;
    *) echo "$1: not known; sh web/run.sh [--port N] | --pack DIR" >&2; exit 1 ;;
  esac
done
sh web/set_up.sh page
sh web/build.sh web page
if [ -n "$pack" ]; then
  exec node web/pack.mjs --build build/web --out "$pack"
fi
node web/pack.mjs --build build/web --out build/page
exec node web/serve.mjs --dir build/page --port "$port"
