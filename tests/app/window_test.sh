#!/bin/sh
# window_test.sh PROGRAM: the window opens under a virtual display, a click on the sample outing computes it, what was set is kept.
set -eu
program=$1
data=$(mktemp -d)
trap 'rm -rf "$data"' EXIT
export GROUNDSHEET_DATA="$data"
xvfb-run -a -s '-screen 0 1024x768x24' sh -eu -c '
  "$0" & window=$!
  trap "kill $window 2>/dev/null || true" EXIT
  tries=0
  until xdotool search --name "^Groundsheet$" >/dev/null 2>&1; do
    tries=$((tries + 1)); [ $tries -lt 100 ] || { echo "no window"; exit 1; }
    sleep 0.1
  done
  sleep 1
  # Tab to the sample button and press it: the keyboard reaches every control
  for key in Tab Tab Tab Tab; do xdotool key $key; sleep 0.1; done
  xdotool mousemove 760 500 click 1
  sleep 1
  import -window root "$GROUNDSHEET_DATA/window.png"
' "$program"
grep -q '"feedline.cable"' "$data/outing.a" || { echo "the sample was not kept"; ls "$data"; exit 1; }
colours=$(identify -format %k "$data/window.png")
[ "$colours" -gt 50 ] || { echo "the window is blank: $colours colours"; exit 1; }
echo "window: sample opened by a click, kept on disk, $colours colours on screen"
