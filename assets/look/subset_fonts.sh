#!/bin/sh
# [B612_DIR=FOLDER] sh subset_fonts.sh OUT_DIR
# Cuts B612 Regular, Bold and Italic down to the characters Groundsheet can show and writes them as C++ arrays to
# OUT_DIR/fonts_data.cpp. Needs the Debian packages fonts-b612, fonttools (with python3-fonttools). The result depends only
# on the font files. B612's licence is OFL-1.1: its text goes with whatever holds these arrays.
set -eu
out=${1:?output folder}
fonts=${B612_DIR:-/usr/share/fonts/opentype/b612}
# ASCII, Latin-1, Latin Extended-A (names that people type), Greek and signs of the trade, dashes, quotes, arrows
codes=U+0020-007E,U+00A0-017F,U+03A9,U+03BB,U+03BC,U+0394,U+03B7,U+03C0,U+03C3,U+03C6,U+2013,U+2014,U+2018,U+2019
codes=$codes,U+201C,U+201D,U+2022,U+2026,U+2032,U+2033,U+2190-2193,U+2206,U+2126,U+2212,U+221A,U+221E,U+2248,U+2264,U+2265
# notes on drawings, all Italic is for, are our own words
codes_of() { [ "$1" = Italic ] && echo "${codes}" | sed 's/U+00A0-017F/U+00A0,U+00B0-00B3,U+00B5,U+00B7,U+00BD,U+00D7,U+00F7/' || echo "$codes"; }
subset=$(command -v pyftsubset) || { echo "pyftsubset is missing: install the package fonttools" >&2; exit 1; }
mkdir -p "$out"
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
for face in Regular Bold Italic; do
  [ -r "$fonts/B612-$face.otf" ] || { echo "no $fonts/B612-$face.otf: install the package fonts-b612" >&2; exit 1; }
  # the system's own python: another one that comes first in PATH may not know the package
  /usr/bin/python3 "$subset" "$fonts/B612-$face.otf" --unicodes="$(codes_of $face)" --output-file="$work/$face.otf" --no-hinting \
    --desubroutinize --layout-features= --drop-tables+=GSUB,GPOS,GDEF,DSIG,kern --name-IDs=0,1,2,13,14 --no-recalc-timestamp
done
/usr/bin/python3 - "$work" "$out/fonts_data.cpp" <<'PY'
import pathlib, sys
from fontTools.ttLib import TTFont
work, target = pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2])
text = ['// Written by assets/look/subset_fonts.sh. Fonts: B612, OFL-1.1.', '#include "app/look/fonts_data.h"', '',
        'namespace gs::look {', '']
for face in ("Regular", "Bold", "Italic"):
    # The atlas takes a size as the height from ascent to descent, in whole px. With the two an em apart (capitals stand 0.75
    # em high) a size is the em, as everywhere else in the design.
    font = TTFont(work / f"{face}.otf", recalcTimestamp=False)
    em = font["head"].unitsPerEm
    font["hhea"].ascent, font["hhea"].descent, font["hhea"].lineGap = em * 3 // 4, em * 3 // 4 - em, 0
    font.save(work / f"{face}.em.otf")
    data = (work / f"{face}.em.otf").read_bytes()
    name = f"kB612{face}"
    text.append(f"const unsigned {name}Size = {len(data)};")
    text.append(f"const unsigned char {name}[] = {{")
    text += ["  " + ",".join(map(str, data[i:i + 32])) + "," for i in range(0, len(data), 32)]
    text += ["};", ""]
text.append("}  // namespace gs::look\n")
new = "\n".join(text)
if not target.exists() or target.read_text() != new:   # an unchanged file is not compiled again
    target.write_text(new)
PY
