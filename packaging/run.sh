#!/bin/sh
# Sets up what is missing, then starts the program: without arguments its window, with arguments the command line.
set -eu

script=$0
while [ -h "$script" ]; do
  target=$(readlink "$script")
  case $target in /*) script=$target ;; *) script=$(dirname -- "$script")/$target ;; esac
done
root=$(CDPATH='' cd -- "$(dirname -- "$script")/.." && pwd -P)

. "$root/packaging/setup.sh"
prepare run

case ${1:-} in '' | --log | --log=*) opens_window=yes ;; *) opens_window= ;; esac
if [ "$opens_window" ] && [ -z "${DISPLAY:-}${WAYLAND_DISPLAY:-}${QT_QPA_PLATFORM:-}" ] && [ "$(uname -s)" = Linux ]; then
  die "there is no screen to open a window on (DISPLAY and WAYLAND_DISPLAY are not set); without a window: sh packaging/run.sh --help"
fi
exec "$venv/bin/python" -P -m welds "$@"
