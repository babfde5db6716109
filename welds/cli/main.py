"""The command line: finds the command, and turns every error into one line and an exit code."""

import os
import sys
from collections.abc import Callable, Sequence
from types import TracebackType
from typing import TYPE_CHECKING

from welds import __version__, language
from welds.errors import FileUnavailableError, InputError, WeldsError, nearest
from welds.language import mark, tr

if TYPE_CHECKING:
    from welds.cli.card import WritePdf

COMMANDS = {
    "card": mark("a set-up for one joint"),
    "compare": mark("set-ups side by side: joints, metals, thicknesses, processes"),
    "chart": mark("a wall chart for one metal and process"),
    "bead": mark("what given settings melt in a joint: width, depth, burn-through, cooling"),
    "faults": mark("from the looks of a bead to causes and the change of setting"),
    "blank": mark("flat length of a folded part: bends, least radius, drawing"),
    "repair": mark("plug, patch or replace: with the arithmetic"),
    "job": mark("a whole job from a file: check, plan, materials, demo"),
    "bench": mark("your machines and shelf: init, show, check"),
    "log": mark("the log of welds made: add, list, show, edit, similar, export, backup, ..."),
    "tables": mark("the reference tables: list, show NAME, check [DIR], sources"),
}
_HELP = ("-h", "--help", "help")
_VERSION = ("--version", "version")
ANSWERED = 0
INTERRUPTED = 130


def main(argv: Sequence[str], *, open_window: Callable[[str, str], int], write_pdf: "WritePdf") -> int:
    """Run one command and return its exit code: 0, 2 bad input, 3 not in the tables, 4 file unavailable.

    Without a command the window is opened, on the log that `--log` names. Nothing but answers goes to
    standard output. `--lang` is looked for before all else: even a complaint is made in that language.
    """
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="backslashreplace")
    try:
        asked = _language_of(argv)
        language.use(asked or language.system_language())
        if not argv or argv[0].partition("=")[0] in ("--log", "--lang"):
            return open_window(_log_of_window(argv), asked)
        code = _run(argv, write_pdf)
        if sys.stdout is not None:
            sys.stdout.flush()
    except WeldsError as error:
        return _complain(error)
    except SystemExit as leaving:  # argparse leaves by itself after printing its help
        return leaving.code if isinstance(leaving.code, int) else ANSWERED
    except KeyboardInterrupt:
        return INTERRUPTED
    except BrokenPipeError:  # the reader has seen enough
        _close_stdout()
        return ANSWERED
    except OSError as error:
        _close_stdout()
        return _complain(FileUnavailableError(tr("standard output"), error.strerror or str(error)))
    else:
        return code


def report_fault(kind: type[BaseException], fault: BaseException, trace: TracebackType | None) -> None:
    """Say in one line that the program itself is wrong; the whole trace only in Python's development mode."""
    if sys.flags.dev_mode:
        sys.__excepthook__(kind, fault, trace)
        return
    while trace is not None and trace.tb_next is not None:
        trace = trace.tb_next
    what = " ".join(f"{kind.__name__}: {fault}".split())
    if trace is not None:
        place = f"{trace.tb_frame.f_globals.get('__name__')}:{trace.tb_lineno}"
        what = tr("{fault} at {place}", fault=what, place=place)
    said = tr("a fault of the program itself, please report it: {fault}", fault=what)
    print(f"welds: {said}", file=sys.stderr)


def _run(argv: Sequence[str], write_pdf: "WritePdf") -> int:
    command, *rest = argv
    if command in _VERSION:
        from welds.reference.edition import edition

        print(f"welds {__version__}", tr("tables {edition}", edition=edition()), sep="\n")
    elif command in _HELP:
        print(_usage())
    elif command == "card":
        from welds.cli import card

        card.run(rest, write_pdf)
    elif command == "compare":
        from welds.cli import compare

        compare.run(rest, write_pdf)
    elif command == "chart":
        from welds.cli import chart

        chart.run(rest, write_pdf)
    elif command == "bench":
        from welds.cli import bench

        return bench.run(rest)
    elif command == "bead":
        from welds.cli import bead

        bead.run(rest)
    elif command == "faults":
        from welds.cli import faults

        faults.run(rest)
    elif command == "blank":
        from welds.cli import blank

        blank.run(rest, write_pdf)
    elif command == "repair":
        from welds.cli import repair

        repair.run(rest)
    elif command == "job":
        from welds.cli import job

        return job.run(rest, write_pdf)
    elif command == "log":
        from welds.cli import log

        return log.run(rest, write_pdf)
    elif command == "tables":
        from welds.cli import tables

        return tables.run(rest)
    else:
        known = (*COMMANDS, "--version", "--help")
        raise InputError(mark("command"), command, ", ".join(known), nearest(command, known))
    return ANSWERED


def _language_of(argv: Sequence[str]) -> str:
    """Return the language that `--lang` names, or an empty text."""
    for place, word in enumerate(argv):
        name, has_value, value = word.partition("=")
        if name == "--lang":
            asked = value if has_value else argv[place + 1] if place + 1 < len(argv) else ""
            if asked and asked not in language.NAMES:
                allowed = ", ".join(language.NAMES)
                raise InputError("--lang", asked, allowed, nearest(asked, language.NAMES))
            return asked
    return ""


def _log_of_window(argv: Sequence[str]) -> str:
    """Return the log that was named, or an empty text; a slip in it is said here, not in the window."""
    if not argv:
        return ""
    from welds.cli.arguments import Once, Parser, languages
    from welds.logbook.places import place_of

    parser = Parser("welds", tr("Open the window."))
    parser.add_argument("--log", action=Once, metavar="FILE|URL", help=tr("another log than your own"))
    parser.add_argument("--lang", action=Once, metavar=languages(), help=tr("language of the words"))
    named: str = parser.read(argv).log or ""
    if named:
        place_of(named)
    return named


def _usage() -> str:
    width = max(map(len, COMMANDS))
    lines = (f"  welds {name.ljust(width)}  {tr(what)}" for name, what in COMMANDS.items())
    return "\n".join(
        [
            tr("welds opens the window (--log FILE|URL: on another log); with a command it answers here:"),
            *lines,
            tr("welds COMMAND --help says more."),
        ]
    )


def _complain(error: WeldsError) -> int:
    if sys.stderr is not None:
        print(f"welds: {' '.join(str(error).split())}", file=sys.stderr)
    return error.exit_code


def _close_stdout() -> None:
    """Point standard output at nothing, so that the interpreter's own last flush stays quiet."""
    nowhere = os.open(os.devnull, os.O_WRONLY)
    os.dup2(nowhere, 1)
    os.close(nowhere)
