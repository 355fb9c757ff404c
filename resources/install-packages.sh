#!/usr/bin/env bash
# Installs the Debian packages of packages.txt that are missing; needs root or sudo only if there are any.
#   resources/install-packages.sh [PART …]   toolchain, core, desktop, tests; all of them unless given
set -euo pipefail
list="$(dirname "$(readlink -f "$0")")/packages.txt"
wanted() {
  [ $# -gt 0 ] || set -- toolchain core desktop tests
  awk -v parts=" $* " '/^# ---/ { taken = index(parts, " " $3 " ") } /^[^#]/ && taken' "$list"
}
missing=()
while read -r package; do
  dpkg-query -W -f='${Status}' "$package" 2>/dev/null | grep -q 'install ok installed' || missing+=("$package")
done < <(wanted "$@")
[ ${#missing[@]} -eq 0 ] && exit 0
command -v apt-get >/dev/null || {
  echo "These packages are missing, and there is no apt-get here to install them: ${missing[*]}" >&2
  exit 1
}
echo "Installing ${#missing[@]} packages: ${missing[*]}"
as_root=()
[ "$(id -u)" -eq 0 ] || as_root=(sudo)
"${as_root[@]}" apt-get update -qq
"${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${missing[@]}" >/dev/null
