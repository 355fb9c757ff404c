#!/usr/bin/env bash
# Installs the built programs into a folder of its own and packs them for Debian; both are run from an
# unrelated folder.
#   tests/package/package_test.sh BUILD [--install]
# --install (as root) also installs the package into this machine with apt-get, runs it, removes it.
set -euo pipefail
build="$(readlink -f "$1")"
really=false
[ "${2:-}" = "--install" ] && really=true
place="$(mktemp -d)"
trap 'rm -rf "$place"' EXIT
export HOME="$place/home" XDG_CONFIG_HOME="$place/home/config" XDG_DATA_HOME="$place/home/data"
mkdir -p "$HOME" "$place/elsewhere"
cd "$place/elsewhere"

fail() {
  echo "FAILED: $*" >&2
  exit 1
}

# The programs answer, the batch one solves an installed sample, the desktop shows its window.
runs_from() {
  local prefix="$1"
  "$prefix/bin/lobewright-cli" --version | grep -Eq '[0-9]+\.[0-9]+\.[0-9]+' || fail "no version"
  "$prefix/bin/lobewright-cli" solve "$prefix/share/lobewright/samples/biogas-pump-set.lobewright.json" \
    --out "$place/solved" >/dev/null 2>&1 || fail "the sample is not solved"
  [ -s "$place/solved/summary.json" ] || fail "no summary"
  "$prefix/bin/lobewright-cli" report "$prefix/share/lobewright/samples/biogas-pump-set.lobewright.json" \
    --out "$place/report.pdf" 2>/dev/null || fail "no report"
  [ "$(head -c 5 "$place/report.pdf")" = "%PDF-" ] || fail "the report is no PDF"
  xvfb-run -a -s "-screen 0 1280x800x24" bash -c '
    "$0" & program=$!
    for _ in $(seq 100); do
      xdotool search --onlyvisible --name Lobewright >/dev/null 2>&1 && { kill $program; exit 0; }
      kill -0 $program 2>/dev/null || exit 1
      sleep 0.2
    done
    kill $program; exit 1' "$prefix/bin/lobewright" || fail "the desktop shows no window"
}

has() {
  for file in "${@:2}"; do
    [ -s "$1/$file" ] || fail "$file is not installed"
  done
}
installed=(share/applications/local.lobewright.lobewright.desktop
  share/metainfo/local.lobewright.lobewright.metainfo.xml
  share/mime/packages/local.lobewright.lobewright.xml
  share/icons/hicolor/scalable/apps/lobewright.svg
  share/lobewright/design.schema.json
  share/lobewright/samples/biogas-pump-set.lobewright.json
  share/doc/lobewright/help/contents.md share/doc/lobewright/help/de/contents.md
  share/doc/lobewright/copyright share/doc/lobewright/changelog)

prefix="$place/prefix"
cmake --install "$build" --prefix "$prefix" >/dev/null
has "$prefix" "${installed[@]}"
runs_from "$prefix"
update-mime-database "$prefix/share/mime" 2>/dev/null || true
desktop-file-validate "$prefix/share/applications/local.lobewright.lobewright.desktop"
echo "installed into a folder: runs"

export SOURCE_DATE_EPOCH=1767225600
(cd "$build" && cpack -G DEB -B "$place/packed" >"$place/cpack.log" 2>&1) || {
  cat "$place/cpack.log" >&2
  fail "cpack"
}
package="$(ls "$place"/packed/lobewright_*.deb)"
# The same files give the same package, byte for byte.
(cd "$build" && cpack -G DEB -B "$place/again" >"$place/cpack.log" 2>&1) || fail "cpack, again"
cmp "$package" "$place"/again/lobewright_*.deb || fail "packed again, the package differs"
depends="$(dpkg-deb -f "$package" Depends)"
for library in libc6 libqt6widgets6 libtbb12 qt6-qpa-plugins; do
  grep -q "$library" <<<"$depends" || fail "$library is not among the dependencies: $depends"
done
[ "$(dpkg-deb -f "$package" Section)" = science ] || fail "section"
dpkg-deb -x "$package" "$place/root"
has "$place/root/usr" "${installed[@]}"
runs_from "$place/root/usr"
echo "package $(basename "$package"): unpacks and runs"

if $really; then
  cp "$package" /tmp/lobewright-package-test.deb # where apt's own user can read it
  DEBIAN_FRONTEND=noninteractive apt-get install -y -qq /tmp/lobewright-package-test.deb >/dev/null
  rm -f /tmp/lobewright-package-test.deb
  runs_from /usr
  [ "$(XDG_DATA_DIRS=/usr/share xdg-mime query filetype \
    /usr/share/lobewright/samples/biogas-pump-set.lobewright.json 2>/dev/null || true)" \
    != "text/plain" ] || fail "the file type is not known"
  DEBIAN_FRONTEND=noninteractive apt-get remove -y -qq lobewright >/dev/null
  [ ! -e /usr/bin/lobewright ] || fail "not removed"
  echo "package installed, run and removed"
fi
