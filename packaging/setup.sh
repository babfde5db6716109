# Sourced by run.sh, test.sh and bundle.sh, with $root set to the checkout: makes sure that the virtual environment holds
# what the program (`prepare run`), its bundle (`prepare bundle`) or its tests (`prepare test`) need. Sets $venv. POSIX sh.
# shellcheck shell=sh disable=SC2086,SC2154  # lists of package names are split on purpose; root comes from outside

say() { printf 'welds: %s\n' "$*" >&2; }
die() { say "$*"; exit 2; }

case ${WELDS_VENV:-} in
  "") venv=$root/.venv ;;
  /*) venv=$WELDS_VENV ;;
  *) venv=$PWD/$WELDS_VENV ;;
esac

# The first five: importing Qt at all; the others: a window.
qt_libraries="libgl1 libegl1 libdbus-1-3 libfontconfig1 libglib2.0-0 libxcb-cursor0 libxcb-icccm4
  libxcb-keysyms1 libxcb-shape0 libxkbcommon-x11-0 libwayland-cursor0 libwayland-egl1"
# Read PDFs back; a real X window; a log on a server; check what desktops and their stores read; play out power cuts.
test_tools="poppler-utils xvfb xauth postgresql desktop-file-utils appstream strace"

# What an up-to-date environment has written in it: both input files, and where they and it are.
fingerprint() {
  printf '%s %s %s\n' "$root" "$venv" \
    "$(cat "$root/pyproject.toml" "$root/packaging/constraints.txt" "$root/packaging/setup.sh" | cksum)"
}

# An environment made for the tests serves the program and the bundle too.
is_ready() {
  [ -x "$venv/bin/python" ] && [ -r "$venv/welds-ready" ] || return 1
  { IFS= read -r ready_for && IFS= read -r ready_print; } <"$venv/welds-ready" || return 1
  [ "$ready_print" = "$print" ] && { [ "$ready_for" = "$1" ] || [ "$ready_for" = test ]; }
}

prepare() {
  print=$(fingerprint)
  if is_ready "$1"; then return 0; fi
  mkdir -p "$(dirname -- "$venv")" || die "cannot make a folder for $venv"
  take_lock
  if ! is_ready "$1"; then install_all "$1"; fi
  drop_lock
}

# ---------------------------------------------------------------------------- one set-up at a time

# A lock left by a process that is gone is taken over: of those who find it, the one that makes `heir` inherits.
take_lock() {
  lock=$venv.lock
  waited=0
  until mkdir "$lock" 2>/dev/null; do
    [ -d "$lock" ] || [ -w "$(dirname -- "$lock")" ] || die "cannot write in $(dirname -- "$lock")"
    if owner_is_gone && mkdir "$lock/heir" 2>/dev/null; then
      if owner_is_gone; then
        printf '%s\n' $$ >"$lock/owner"
        rmdir "$lock/heir"
        break
      fi
      rmdir "$lock/heir"
    fi
    [ $waited != 0 ] || say "another set-up is at work; waiting for it ($lock)"
    waited=1
    sleep 1
  done
  printf '%s\n' $$ >"$lock/owner"
  trap drop_lock EXIT
  trap 'exit 130' INT
  trap 'exit 143' TERM HUP
}

owner_is_gone() {
  owner=$(cat "$lock/owner" 2>/dev/null) && [ -n "$owner" ] && ! kill -0 "$owner" 2>/dev/null
}

drop_lock() {
  trap - EXIT INT TERM HUP
  rm -rf -- "$lock"
}

# --------------------------------------------------------------------------------- what is installed

install_all() {
  rm -f -- "$venv/welds-ready"
  install_system "$1"
  find_python >/dev/null && install_system "$1"  # what goes with the Python that has just come
  python=$(find_python) || die "$(python_wanted)"
  if ! [ -x "$venv/bin/python" ] || ! "$venv/bin/python" -c "$python_test" 2>/dev/null; then
    say "making a Python environment in $venv"
    "$python" -m venv --clear "$venv" || die "the Python environment could not be made in $venv"
  fi
  case $1 in run) what=. ;; *) what=".[$1]" ;; esac
  say "installing the packages the program needs (a minute on the first start)"
  # Run from the checkout and name the file without its folder: pip splits these variables at spaces.
  if ! (cd "$root" && PIP_CONSTRAINT=packaging/constraints.txt PIP_BUILD_CONSTRAINT=packaging/constraints.txt \
    "$venv/bin/python" -m pip install --disable-pip-version-check --no-input -e "$what") \
    >"$venv/welds-setup.log" 2>&1 </dev/null; then
    if grep -q 'Retrying (Retry' "$venv/welds-setup.log"; then
      why="the package index cannot be reached; is this machine online?"
    else
      why=$(grep -E '^ *(ERROR|error):' "$venv/welds-setup.log" | tail -n 1)
    fi
    die "the packages could not be installed: ${why:-pip failed} (all that was said is in $venv/welds-setup.log)"
  fi
  if ! missing=$(QT_QPA_PLATFORM=offscreen "$venv/bin/python" -P -c 'import PySide6.QtWidgets' 2>&1); then
    die "Qt does not start; a system library is missing: $(printf '%s\n' "$missing" | tail -n 1)"
  fi
  printf '%s\n%s\n' "$1" "$print" >"$venv/welds-ready.new"
  mv -- "$venv/welds-ready.new" "$venv/welds-ready"
}

# Debian and its relatives only; elsewhere the check of Qt above speaks.
install_system() {
  command -v apt-get >/dev/null && command -v dpkg-query >/dev/null || return 0
  needed=$(absent $qt_libraries)
  find_python >/dev/null || needed=$needed$(absent python3 python3-venv ca-certificates)
  wanted=$needed
  case $1 in
    test) wanted=$needed$(absent $test_tools $(bundle_tools)) ;;
    bundle) needed=$needed$(absent $(bundle_tools)); wanted=$needed ;;
  esac
  [ -n "$wanted" ] || return 0
  if [ "$(id -u)" = 0 ]; then
    say "installing system libraries: $wanted"
    if ! { apt-get update -qq && DEBIAN_FRONTEND=noninteractive \
      apt-get install -y -qq --no-install-recommends $wanted; } >"$venv.apt.log" 2>&1 </dev/null; then
      tail -n 3 "$venv.apt.log" >&2
      die "the system libraries could not be installed; all that was said is in $venv.apt.log"
    fi
    rm -f -- "$venv.apt.log"
  elif [ -n "$needed" ]; then
    die "system libraries are missing; run this, then start again:
  sudo apt-get update && sudo apt-get install -y --no-install-recommends $wanted"
  else
    say "some tests will be skipped without: sudo apt-get install -y --no-install-recommends $wanted"
  fi
}

# Take libraries apart; and Debian keeps Python's own library in a package beside it.
bundle_tools() {
  printf 'binutils '
  case $(find_python) in /usr/bin/python3.*) echo "lib$(basename -- "$(find_python)")" ;; esac
}

# The packages of the list that are not installed; newer Debians add t64 to some names.
absent() {
  for package; do
    dpkg-query -W -f '${db:Status-Abbrev}\n' "$package" "${package}t64" 2>/dev/null | grep -q '^ii' ||
      printf '%s ' "$package"
  done
}

python_test='import sys, venv, ensurepip; sys.exit(sys.version_info < (3, 11))'

# The real file, not the name python3: when the system's Python is replaced, the environment is seen to be broken.
find_python() {
  for candidate in ${WELDS_PYTHON:+"$WELDS_PYTHON"} python3 python3.14 python3.13 python3.12 python3.11; do
    if "$candidate" -c "$python_test" 2>/dev/null; then
      "$candidate" -c 'import os, sys; print(os.path.realpath(sys.executable))'
      return 0
    fi
  done
  return 1
}

python_wanted() {
  found=$(python3 -c 'import platform; print(platform.python_version())' 2>/dev/null) || found=none
  echo "Python 3.11 or newer with its venv module is needed (found: $found); set WELDS_PYTHON if it is somewhere else"
}
