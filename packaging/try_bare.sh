#!/bin/sh
# Starts a Debian package in a root that holds nothing but the package and what it depends on, unpacked: no shell, no
# Python. One card, one painted window. Needs root and the system's package mirror; try_deb.sh installs it in earnest.
# try_bare.sh PACKAGE
set -eu

[ $# -eq 1 ] && [ -f "$1" ] || { echo "welds: name the package: try_bare.sh dist/welds_VERSION_ARCH.deb" >&2; exit 2; }
[ "$(id -u)" = 0 ] || { echo "welds: a clean root can be entered by root only" >&2; exit 2; }

work=$(mktemp -d)
trap 'rm -rf --one-file-system -- "$work"' EXIT
trap 'exit 130' INT
trap 'exit 143' TERM HUP
bare=$work/root
mkdir -p "$work/archives/partial" "$bare/tmp" "$bare/root"
: >"$work/installed"

# The first of each choice. An empty list of what is installed makes apt fetch everything, down to libc.
wanted=$(dpkg-deb -f "$1" Depends | sed 's/([^)]*)//g; s/|[^,]*//g; s/,//g')
# shellcheck disable=SC2086  # names of packages
apt-get -qq -y --no-install-recommends --download-only -o Debug::NoLocking=1 -o "Dir::State::status=$work/installed" \
  -o "Dir::Cache::archives=$work/archives" install $wanted >"$work/said" 2>&1 \
  || { tail -n 3 "$work/said" >&2; echo "welds: what the package depends on cannot be fetched" >&2; exit 1; }
for package in "$work/archives"/*.deb "$1"; do
  dpkg-deb -x "$package" "$bare"
done

enter=$(command -v chroot)
inside() { env -i HOME=/root "$@"; }
inside "$enter" "$bare" /usr/bin/welds card --process tig --metal 5052 --thickness "0.080 in" --joint outside-corner \
  >"$work/card"
grep -q "^TIG, outside corner, 5052" "$work/card" || { echo "welds: no card" >&2; exit 1; }

inside QT_QPA_PLATFORM=offscreen QT_LOGGING_RULES=qt.widgets.painting.debug=true \
  "$enter" "$bare" /usr/bin/welds >"$work/window" 2>&1 &
window=$!
left=100
until grep -q MainWindow "$work/window" || [ $left = 0 ] || ! kill -0 $window 2>/dev/null; do
  sleep 0.2
  left=$((left - 1))
done
sleep 3 # what a start makes after its first paint
kill $window 2>/dev/null || { tail -n 5 "$work/window" >&2; echo "welds: the window did not stay open" >&2; exit 1; }
wait $window 2>/dev/null || true
grep -q MainWindow "$work/window" || { tail -n 5 "$work/window" >&2; echo "welds: nothing was painted" >&2; exit 1; }
if grep -qi "fault of the program" "$work/window"; then
  tail -n 5 "$work/window" >&2
  exit 1
fi
echo "welds: the package answers and paints with nothing but what it depends on"
