#!/bin/sh
# Asks public databases for known holes in the locked libraries. Needs a network; no part of the usual checks.
# Exit code: 0 all were looked up and none is known to be unsafe, 1 some are, 2 not all could be looked up.
set -eu

root=$(CDPATH='' cd -- "$(dirname -- "$0")/.." && pwd -P)
. "$root/packaging/setup.sh"

python=$(find_python) || die "$(python_wanted)"
work=$(mktemp -d)
trap 'rm -rf -- "$work"' EXIT
trap 'exit 130' INT
trap 'exit 143' TERM HUP
{ "$python" -m venv "$work/venv" && "$work/venv/bin/python" -m pip install --disable-pip-version-check pip-audit; } \
  >"$work/log" 2>&1 </dev/null || die "nothing was audited: pip-audit could not be installed"

for service in pypi osv; do
  "$work/venv/bin/python" -m pip_audit --requirement "$root/packaging/constraints.txt" --no-deps --disable-pip \
    --vulnerability-service "$service" --timeout 10 --format json --output "$work/$service.json" \
    --progress-spinner off >>"$work/log" 2>&1 </dev/null || true
done

exec "$work/venv/bin/python" - "$work" <<'END'
import json
import sys
from pathlib import Path

known, safe, missed = {}, set(), set()
for file in Path(sys.argv[1]).glob("*.json"):
    for each in json.loads(file.read_text(encoding="utf-8") or '{"dependencies": []}')["dependencies"]:
        if "vulns" not in each:
            missed.add(each["name"])
        elif each["vulns"]:
            known[each["name"], each["version"]] = [hole["id"] for hole in each["vulns"]]
        else:
            safe.add(each["name"])
for (name, version), holes in sorted(known.items()):
    print(f"{name} {version}: {', '.join(holes)}")
looked_up = safe | {name for name, _version in known}
missed -= looked_up
if not looked_up:
    print("welds: nothing was audited: no database of known holes answers from here", file=sys.stderr)
elif missed:
    print(f"welds: {len(looked_up)} audited; not looked up: {', '.join(sorted(missed))}", file=sys.stderr)
else:
    print(f"welds: {len(looked_up)} audited, {len(known)} with known holes")
sys.exit(1 if known else 2 if missed or not looked_up else 0)
END
