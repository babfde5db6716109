#!/bin/sh
# Sets up what is missing, then runs every check, headless: format, lint, types, layers, tests.
# test.sh [quick] [arguments for pytest]    quick: without the tests marked slow; heavy ones are run by hand
set -eu

root=$(CDPATH='' cd -- "$(dirname -- "$0")/.." && pwd -P)
. "$root/packaging/setup.sh"
prepare test
cd "$root"

export QT_QPA_PLATFORM=offscreen
unset DISPLAY WAYLAND_DISPLAY

failed=
check() {
  name=$1
  shift
  if output=$("$venv/bin/python" -P "$@" 2>&1); then
    printf '%-8s ok\n' "$name"
  else
    printf '%-8s FAILED\n%s\n' "$name" "$output"
    failed="$failed $name"
  fi
}

checks() {
  check format -m ruff format --check .
  check lint -m ruff check .
  check types -m mypy
  check layers -c 'from importlinter.cli import lint_imports_command as main; main()'
}

case ${1:-} in quick) shift; chosen=yes ;; *) chosen= ;; esac
tests() { "$venv/bin/python" -m pytest -m "not heavy${chosen:+ and not slow}" "$@"; }

if [ $# -gt 0 ]; then
  checks
  tests "$@" || failed="$failed tests"
else  # checks and the window's tests on one core, all others on another, about as long; shown one after the other
  window="tests/gui"
  said=$(mktemp)
  trap 'rm -f "$said"' EXIT
  (
    checks
    tests -p no:cacheprovider $window || failed="$failed window-tests"
    [ -z "$failed" ] || { printf 'failed:%s\n' "$failed"; exit 1; }
  ) >"$said" 2>&1 &
  aside=$!
  tests $(printf -- '--ignore=%s ' $window) || failed="$failed tests"
  wait "$aside" || failed="$failed checks-or-window-tests"
  cat "$said"
fi

[ -z "$failed" ] || { printf 'failed:%s\n' "$failed"; exit 1; }
