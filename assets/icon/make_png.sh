#!/bin/sh
# make_png.sh: draws the PNG icons beside this file from groundsheet.svg. Run by hand after the drawing changed; the PNGs are
# kept in the repository. Needs rsvg-convert (package librsvg2-bin) or chromium, and imagemagick to make the files small.
set -eu
cd "$(dirname "$0")"
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

draw() {  # svg, size, png
  if command -v rsvg-convert >/dev/null; then
    rsvg-convert -w "$2" -h "$2" "$1" -o "$work/big.png"
  else
    printf '<style>body{margin:0}svg{display:block;width:%spx;height:%spx}</style>' "$2" "$2" > "$work/page.html"
    cat "$1" >> "$work/page.html"
    chromium --headless --no-sandbox --disable-gpu --hide-scrollbars --default-background-color=00000000 \
      --force-device-scale-factor=1 --window-size=512,512 --user-data-dir="$work/profile" \
      --screenshot="$work/page.png" "file://$work/page.html" >/dev/null 2>&1
    convert "$work/page.png" -crop "$2x$2+0+0" +repage "$work/big.png"
  fi
  convert "$work/big.png" -strip -dither None -colors 128 -define png:compression-level=9 \
    -define png:exclude-chunks=date,time,tIME,tEXt "$3"
}

# Where the system cuts its own shape the ground fills the whole square; a mask may cut all but the middle 80 % as a circle,
# so there the mark is smaller and its middle is the icon's.
sed 's/ rx="96"//' groundsheet.svg > "$work/square.svg"
sed 's/translate(0 0)/translate(256 256) scale(0.8) translate(-256 -268)/' "$work/square.svg" > "$work/maskable.svg"

draw groundsheet.svg 192 icon-192.png
draw groundsheet.svg 512 icon-512.png
draw "$work/maskable.svg" 512 icon-maskable-512.png
draw "$work/square.svg" 180 apple-touch-icon-180.png
