#!/bin/sh
# Sets up what is missing, then makes the program folder that needs no Python: dist/welds, or FOLDER/welds.
# bundle.sh [FOLDER]
set -eu

root=$(CDPATH='' cd -- "$(dirname -- "$0")/.." && pwd -P)
dist=${1:-$root/dist}

# Its own environment: nothing of the tests can slip into the bundle.
: "${WELDS_VENV:=$root/build/venv}"
. "$root/packaging/setup.sh"
prepare bundle

# The same input gives the same bytes: fixed order of hashes, and the time of the last commit as time of the build.
PYTHONHASHSEED=0
SOURCE_DATE_EPOCH=${SOURCE_DATE_EPOCH:-$(git -C "$root" log -1 --format=%ct 2>/dev/null || echo 1577836800)}
export PYTHONHASHSEED SOURCE_DATE_EPOCH

work=$(mktemp -d)
trap 'rm -rf -- "$work"' EXIT
trap 'exit 130' INT
trap 'exit 143' TERM HUP
say "making the bundle (about a minute)"
if ! "$venv/bin/python" -P -m PyInstaller --noconfirm --log-level WARN --distpath "$dist" --workpath "$work" \
  "$root/packaging/welds.spec" >"$work.log" 2>&1 </dev/null; then
  tail -n 5 "$work.log" >&2
  die "the bundle could not be made; all that was said is in $work.log"
fi
rm -f -- "$work.log"
echo "$dist/welds"
