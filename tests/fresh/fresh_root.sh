#!/usr/bin/env bash
# Measures what a bare machine waits for: makes a minimal Debian root, clones the last commit into it, and runs the
# commands of the README there with a cold compiler cache. Needs root, debootstrap and a Debian mirror.
#   tests/fresh/fresh_root.sh ROOT [batch] [start] [tests]     all three in this order unless given
# Prints wall time and processor time of each; on an idle machine with two cores, wall time of a build is half of its
# processor time. A second run takes ROOT as it finds it: remove it to begin from nothing.
set -euo pipefail
here="$(cd "$(dirname "$(readlink -f "$0")")/../.." && pwd)"
root="$(realpath -m "$1")"
shift
[ $# -gt 0 ] || set -- batch start tests
mirror="${MIRROR:-http://deb.debian.org/debian}"

if [ ! -e "$root/etc/debian_version" ]; then
  debootstrap --variant=minbase --include=ca-certificates bookworm "$root" "$mirror" >/dev/null
fi
cp /etc/resolv.conf /etc/hosts "$root/etc/"
for file in /etc/apt/apt.conf.d/*proxy*; do
  [ ! -e "$file" ] || cp "$file" "$root/etc/apt/apt.conf.d/"
done
for place in proc dev sys; do
  mountpoint -q "$root/$place" || mount --rbind "/$place" "$root/$place"
  mount --make-rslave "$root/$place"
done
trap 'for place in proc dev sys; do umount -R -l "$root/$place"; done' EXIT
rm -rf "$root/lobewright"
git clone -q --no-hardlinks "$here" "$root/lobewright"

inside() {
  exec nice chroot "$root" env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/root LANG=C.UTF-8 \
    QT_QPA_PLATFORM="${platform:-}" "$@"
}

# Until the desktop program itself runs; it takes the place of app/start in the same process.
until_started() {
  (platform=offscreen inside /lobewright/app/start) &
  local program=$!
  until [[ "$(readlink "/proc/$program/exe")" == */lobewright/build/*/lobewright ]]; do
    kill -0 $program 2>/dev/null || return 1
    sleep 0.2
  done
  kill $program
  wait $program || true
}

packages() {
  case "$1" in
    batch) echo toolchain core ;;
    start) echo toolchain core desktop ;;
    tests) echo toolchain core desktop tests ;;
  esac
}

# The braces keep the clock in this shell: a subshell that is replaced by a program takes its own clock with it.
TIMEFORMAT='%R s of wall time, %U + %S s of processor time'
for what in "$@"; do
  echo "== $what: packages"
  # shellcheck disable=SC2046
  time { (inside /lobewright/resources/install-packages.sh $(packages "$what")); }
  echo "== $what: build and run"
  case "$what" in
    batch) time { (inside /lobewright/app/start --batch); } ;;
    start) time until_started ;;
    tests) time { (inside /lobewright/tests/run); } ;;
  esac
done
