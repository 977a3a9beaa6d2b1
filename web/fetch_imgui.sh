#!/bin/sh
# fetch_imgui.sh FOLDER: Dear ImGui's sources from Debian's archive, checked by apt's signatures and by our own pin. apt's own
# configuration stays untouched: everything happens in a private one. Without apt nothing is done; CMake takes the upstream tag.
set -eu
folder=$1
version=1.90.1+ds-1
suite=trixie
archive="imgui_${version%-*}.orig.tar.xz"
sha256=ecce377df0f90b292f15dcbd83d438bddc162b2388c881132bde18c787572a1c

[ -e "$folder/.version-$version" ] && exit 0
command -v apt-get >/dev/null 2>&1 || exit 0

private=$(mktemp -d)
trap 'rm -rf "$private"' EXIT
mkdir -p "$private/lists/partial" "$private/cache/archives/partial" "$private/parts" "$private/source"

# The mirror this machine already uses, in either style of sources file.
mirror=
for list in /etc/apt/sources.list /etc/apt/sources.list.d/*.sources /etc/apt/sources.list.d/*.list; do
  [ -r "$list" ] || continue
  found=$(sed -e '/^[[:space:]]*#/d' "$list" | tr -s ' \t' '\n\n' | grep -E '^[a-z+]+:/.*/debian/?$' | head -n 1 || true)
  [ -n "$found" ] && { mirror=$found; break; }
done
[ -n "$mirror" ] || { echo "No Debian mirror is configured here; CMake will take Dear ImGui's upstream tag." >&2; exit 0; }

cat >"$private/parts/imgui.sources" <<EOF
Types: deb-src
URIs: $mirror
Suites: $suite
Components: main
Signed-By: /usr/share/keyrings/debian-archive-keyring.gpg
EOF
private_apt() {
  apt-get -q -o Dir::Etc::SourceList=/dev/null -o Dir::Etc::SourceParts="$private/parts" \
    -o Dir::Etc::Preferences=/dev/null -o Dir::Etc::PreferencesParts=/dev/null \
    -o Dir::State::Lists="$private/lists" -o Dir::Cache="$private/cache" \
    -o Acquire::Languages=none -o APT::Sandbox::User=root \
    -o APT::Update::Post-Invoke::= -o APT::Update::Post-Invoke-Success::= "$@"
}
private_apt update
(cd "$private/source" && private_apt source --download-only --only-source "imgui=$version")
echo "$sha256  $private/source/$archive" | sha256sum -c -
rm -rf "$folder"
mkdir -p "$folder"
tar -xf "$private/source/$archive" -C "$folder" --strip-components=1
touch "$folder/.version-$version"
