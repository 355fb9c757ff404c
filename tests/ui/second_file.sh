#!/bin/sh
# second_file.sh PROGRAM SAMPLES: every FILE given to the desktop is opened, each in a window of its own.
set -eu
home=$(mktemp -d)
trap 'rm -rf "$home"' EXIT
export XDG_CONFIG_HOME="$home" XDG_DATA_HOME="$home"
cp "$2/biogas-pump-set.lobewright.json" "$home/first.json"
cp "$2/unequal-lobes.lobewright.json" "$home/second.json"
"$1" "$home/first.json" "$home/second.json" &
first=$!
# Both note themselves among the recent files.
for attempt in $(seq 1 120); do
  sleep 0.5
  second=$(pgrep -f "$1 -- $home/second.json" || true)
  if [ -n "$second" ] && grep -qs second.json "$home"/*/*.conf; then
    kill $second "$first"
    echo "both files opened"
    exit 0
  fi
done
kill "$first"
echo "the second file was not opened"
exit 1
