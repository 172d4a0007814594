#!/usr/bin/env bash
# Installs a Debian package of the app, looks at what came, opens the app's window
# and removes it again. Without root rights it is unpacked into a folder instead.
#
#     tests/package.sh PACKAGE.deb
set -euo pipefail
cd "$(dirname "$0")/.."
package=$(realpath "$1")
name=returnline
program=returnline-app

fail() {
  echo "package: $*" >&2
  exit 1
}
field() { dpkg-deb --field "$package" "$1"; }
has() { [[ "$2" == *"$3"* ]] || fail "$1 is \"$2\", without \"$3\""; }

version=$(sed -n '/^\[workspace.package\]/,/^\[/s/^version = "\(.*\)"/\1/p' Cargo.toml)
[ "$(field Package)" = "$name" ] || fail "the name is $(field Package)"
[ "$(field Version)" = "$version" ] || fail "the version is $(field Version), not $version"
[ "$(field Architecture)" = "$(dpkg --print-architecture)" ] || fail "made for $(field Architecture)"
[ -n "$(field Maintainer)" ] || fail "no maintainer"
has Section "$(field Section)" utils
has Depends "$(field Depends)" libwebkit2gtk-4.1-0
has Depends "$(field Depends)" libgtk-3-0
has Description "$(field Description)" "Ground-loop callbacks"
[ -z "$(dpkg-deb --ctrl-tarfile "$package" | tar -t | grep -E 'inst$|rm$')" ] ||
  fail "it runs scripts when installed, and should not"

installed=
folder=$(mktemp -d)
leave() {
  if [ -n "$installed" ]; then dpkg --purge "$name" >/dev/null; fi
  rm -rf "$folder"
}
trap leave EXIT
if [ "$(id -u)" -eq 0 ]; then
  if dpkg-query -W -f='${Status}' "$name" 2>/dev/null | grep -q ' installed'; then
    fail "$name is installed already: remove it first"
  fi
  installed=yes
  dpkg --install "$package" >/dev/null
  dpkg --verify "$name" | grep . && fail "files differ from the package's own sums"
  root=
else
  dpkg-deb --extract "$package" "$folder"
  root=$folder
fi

entry=$root/usr/share/applications/Returnline.desktop
[ -f "$entry" ] || fail "no desktop entry"
for line in Type=Application Name=Returnline "Exec=$program" "Icon=$program" Terminal=false; do
  grep -qx "$line" "$entry" || fail "the desktop entry has no line $line"
done
desktop-file-validate "$entry" || fail "the desktop entry is not valid"
for size in 32x32 128x128 256x256@2 512x512; do
  icon=$root/usr/share/icons/hicolor/$size/apps/$program.png
  [ "$(head -c 4 "$icon" | tail -c 3)" = PNG ] || fail "no icon of $size"
done
for text in copyright LICENSE-MIT LICENSE-APACHE OFL.txt; do
  [ -s "$root/usr/share/doc/$name/$text" ] || fail "no $text"
done
ldd "$root/usr/bin/$program" | grep 'not found' && fail "libraries are missing"

echo "package: starting $root/usr/bin/$program"
RETURNLINE_APP=$root/usr/bin/$program ${CARGO:-cargo} test -q --workspace \
  --features tauri/custom-protocol,returnline-tests/window --test app_window \
  -- --exact the_window_opens_and_says_what_it_is | tee "$folder/test.log"
grep -q '1 passed' "$folder/test.log" || fail "the window test did not run"

if [ -n "$installed" ]; then
  dpkg --purge "$name" >/dev/null
  installed=
  for left in "/usr/bin/$program" "$entry" "/usr/share/doc/$name"; do
    [ ! -e "$left" ] || fail "$left is left behind"
  done
fi
echo "package: $(basename "$package") installs, opens and goes"
