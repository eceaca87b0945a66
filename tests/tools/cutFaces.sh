#!/bin/sh
# Cuts a typeface into what every page shows, the signs that hardly one shows (such as # and @), and what a name in another language needs. Wants fonttools and brotli (python3-fonttools, python3-brotli).
#   sh tests/tools/cutFaces.sh whole.woff2 src/styles/fonts/andada
# writes andada.woff2, andada-signs.woff2 and andada-more.woff2; the ranges are those of src/styles/tokens.css. Weights 400 to 700, kerning, ligatures and tabular figures stay.
set -eu
first='U+0020-0022,U+0025-003F,U+0041-005A,U+0061-007A,U+00A0,U+00B0-00B2,U+00B7,U+00B9,U+00D7,U+00E9,U+00F7,U+00FC,U+2010-2014,U+2018,U+2019,U+201C,U+201D,U+2026,U+202F,U+2212'
signs='U+0023-0024,U+0040,U+005B-0060,U+007B-007E,U+00B3,U+00BD'
more='U+00A1-00AF,U+00B4-00B6,U+00B8,U+00BA-00BC,U+00BE-00D6,U+00D8-00E8,U+00EA-00F6,U+00F8-00FB,U+00FD-00FF,U+0131,U+0152-0153,U+02C6,U+02DA,U+02DC,U+2009,U+2015,U+201A,U+201E,U+2020-2022,U+2030,U+2039,U+203A,U+2044,U+2070,U+2074,U+2080-2084,U+20AC,U+2122,U+2215'
cut() {
  python3 -m fontTools.subset "$1" --unicodes="$2" --layout-features='kern,liga,tnum' --flavor=woff2 --no-hinting --desubroutinize --output-file="$3"
}
work=$(mktemp)
cp "$1" "$work"
cut "$work" "$first" "$2.woff2"
cut "$work" "$signs" "$2-signs.woff2"
cut "$work" "$more" "$2-more.woff2"
rm "$work"
