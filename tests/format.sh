#!/usr/bin/env bash
# Fails when a file of our own is not laid out as .clang-format asks, and names it.
#   tests/format.sh [BASE]   only the files changed since BASE, e.g. main
set -euo pipefail
cd "$(cd "$(dirname "$(readlink -f "$0")")/.." && pwd)"
mapfile -t files < <(
  if [ $# -gt 0 ]; then git diff --name-only --diff-filter=d "$1"; else git ls-files; fi |
    grep -E '^(core|ui|app|tests)/.*\.(cpp|h)$' || true
)
[ ${#files[@]} -eq 0 ] || clang-format --dry-run -Werror "${files[@]}"
