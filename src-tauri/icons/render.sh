#!/bin/sh
# Renders the mark to the sizes the bundles and phones ask for. Needs chromium and ImageMagick.
set -eu
cd "$(dirname "$0")"
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
chromium --headless --no-sandbox --disable-gpu --hide-scrollbars \
  --default-background-color=00000000 --window-size=512,512 \
  --screenshot="$work/icon.png" "file://$PWD/mark.svg" >/dev/null 2>&1
convert "$work/icon.png" -define png:color-type=6 icon.png
for size in 32 128; do convert icon.png -resize ${size}x${size} -define png:color-type=6 ${size}x${size}.png; done
convert icon.png -resize 256x256 -define png:color-type=6 128x128@2x.png
