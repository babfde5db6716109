#!/bin/sh
# Installs a Debian package in a clean root and starts it there: one card, one painted window. Needs root and debootstrap.
# try_deb.sh PACKAGE [SUITE [MIRROR]]; the mirror is the one that this system's packages come from.
set -eu

[ $# -ge 1 ] && [ -f "$1" ] || { echo "welds: name the package: try_deb.sh dist/welds_VERSION_ARCH.deb" >&2; exit 2; }
[ "$(id -u)" = 0 ] || { echo "welds: a clean root can be made by root only" >&2; exit 2; }
command -v debootstrap >/dev/null || { echo "welds: debootstrap is needed: apt-get install debootstrap" >&2; exit 2; }
suite=${2:-bookworm}
mirror=${3:-$(apt-get indextargets --format '$(SITE)' 'Identifier: Packages' | head -n 1)}

clean=$(mktemp -d)
undo() {
  umount "$clean/proc" 2>/dev/null || true
  rm -rf --one-file-system -- "$clean"
}
trap undo EXIT
trap 'exit 130' INT
trap 'exit 143' TERM HUP

echo "welds: making a clean $suite"
debootstrap --variant=minbase "$suite" "$clean" "$mirror" >"$clean.log" 2>&1 \
  || { tail -n 3 "$clean.log" >&2; echo "welds: no clean root; all that was said is in $clean.log" >&2; exit 1; }
rm -f -- "$clean.log"
mount -t proc proc "$clean/proc"
cp -- "$1" "$clean/welds.deb"

inside() { chroot "$clean" /usr/bin/env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/root LANG=C.UTF-8 "$@"; }

echo "welds: installing"
inside DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends /welds.deb >"$clean/said" 2>&1 \
  || { tail -n 5 "$clean/said" >&2; echo "welds: the package does not install" >&2; exit 1; }
inside welds --version
inside welds card --process tig --metal 5052 --thickness "0.080 in" --joint outside-corner >"$clean/card"
grep -q "^TIG, outside corner, 5052" "$clean/card" || { echo "welds: no card" >&2; exit 1; }

echo "welds: opening the window"
code=0
inside QT_QPA_PLATFORM=offscreen QT_LOGGING_RULES=qt.widgets.painting.debug=true \
  timeout 20 welds >"$clean/window" 2>&1 || code=$?
[ "$code" = 124 ] || { tail -n 5 "$clean/window" >&2; echo "welds: the window did not stay open ($code)" >&2; exit 1; }
grep -q "MainWindow" "$clean/window" || { tail -n 5 "$clean/window" >&2; echo "welds: nothing was painted" >&2; exit 1; }
if grep -qi "fault of the program" "$clean/window"; then
  tail -n 5 "$clean/window" >&2
  exit 1
fi
echo "welds: the package installs, answers and paints in a clean $suite"
