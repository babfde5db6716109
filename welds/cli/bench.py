"""`welds bench`: the person's machines and shelf; init writes a start, show tells, check reads it through."""

import argparse
import sys
from collections.abc import Callable, Mapping, Sequence
from dataclasses import asdict
from pathlib import Path

from welds.advice.equipment import Machine, Shelf
from welds.bench.bench import Bench
from welds.cli.arguments import Parser, add_common
from welds.cli.output import print_json, print_text
from welds.cli.session import check_common, open_tables
from welds.errors import NOTHING, BenchFileError, InputError, nearest
from welds.language import mark, tr

DESCRIPTION = mark("Your machines and shelf: init, show, check. Every card is fitted to the machine in use.")


def run(argv: Sequence[str]) -> int:
    """Run the named action and return its exit code."""
    parser = Parser("welds bench", tr(DESCRIPTION))
    parser.add_argument("action", nargs="?", help=", ".join(_ACTIONS))
    parser.add_argument(
        "--template",
        action="append",
        default=[],
        metavar="NAME",
        help=tr("with init: a machine to start from; may be given more than once (a wrong name lists them)"),
    )
    add_common(parser)
    options = parser.read(argv)
    check_common(options)
    if options.action not in _ACTIONS:
        near = nearest(options.action, _ACTIONS) if options.action else None
        raise InputError("welds bench", options.action or NOTHING, ", ".join(_ACTIONS), near)
    if options.template and options.action != "init":
        raise InputError("--template", options.template[0], tr("only with init"))
    return _ACTIONS[options.action](options) or 0


def _init(options: argparse.Namespace) -> None:
    from welds.bench.keep import save_bench
    from welds.bench.templates import USUAL, starting_bench

    path = _path(options)
    if path.exists():
        raise InputError("welds bench init", path, tr("a file that is not there yet; yours is left as it is"))
    kept = save_bench(starting_bench(options.template or USUAL), open_tables(), path)
    if options.json:
        print_json({"file": str(path), "machines": [machine.name for machine in _there(kept.bench).machines]})
        return
    print_text(
        tr(
            "written: {path}\nEdit it to match your rating plates and shelf, then: welds bench check",
            path=path,
        )
    )


def _show(options: argparse.Namespace) -> None:
    from welds.bench.keep import own_bench
    from welds.bench.load import load_bench

    tables, path, trouble = open_tables(), _path(options), ""
    if options.bench is not None:
        bench: Bench | None = load_bench(path, tables)
    else:
        kept = own_bench(tables)
        bench, trouble = kept.bench, kept.trouble
    if trouble:
        print(f"welds: {' '.join(trouble.split())}", file=sys.stderr)
    if options.json:
        print_json(_as_json(bench, path, trouble))
    elif bench is None:
        print_text(tr("no bench yet, so no machine limits a card; welds bench init writes {path}", path=path))
    else:
        from welds.report.bench_text import bench_lines

        print_text("\n".join(bench_lines(bench, tables)))


def _check(options: argparse.Namespace) -> int:
    from welds.bench.load import bench_text, check_bench

    path = _path(options)
    try:
        _, faults = check_bench(bench_text(path), str(path), open_tables())
    except BenchFileError as error:
        faults = [error]
    if options.json:
        found = [{"file": fault.file, "line": fault.line, "problem": fault.problem} for fault in faults]
        print_json({"faults": found, "ok": not faults})
    elif faults:
        print("\n".join(str(fault) for fault in faults), file=sys.stderr)
    else:
        print_text(tr("no mistakes found: {path}", path=path))
    return BenchFileError.exit_code if faults else 0


def _path(options: argparse.Namespace) -> Path:
    from welds.bench.keep import bench_file

    return bench_file() if options.bench is None else Path(options.bench)


def _there(bench: Bench | None) -> Bench:
    assert bench is not None
    return bench


def _as_json(bench: Bench | None, path: Path, trouble: str) -> dict[str, object]:
    return {
        "file": str(path),
        "in_use": bench.machine.name if bench else None,
        "machines": [_plain(machine) for machine in bench.machines] if bench else [],
        "shelf": _plain(bench.shelf) if bench else {},
        "trouble": trouble,
    }


def _plain(stated: Machine | Shelf) -> dict[str, object]:
    """Return what was stated, sets as sorted lists."""
    return {
        name: sorted(value) if isinstance(value, frozenset) else value
        for name, value in asdict(stated).items()
        if value not in (None, (), frozenset(), "")
    }


_ACTIONS: Mapping[str, Callable[[argparse.Namespace], int | None]] = {
    "init": _init,
    "show": _show,
    "check": _check,
}
