"""`welds log`: the log of welds that were made."""

from collections.abc import Callable, Mapping, Sequence

from welds.cli import log_files, log_find, log_write
from welds.cli.log_options import Context, parser_of
from welds.errors import InputError, nearest
from welds.language import mark, tr

Action = Callable[[Context], int]

ACTIONS: Mapping[str, tuple[str, Action]] = {
    "add": (mark("log a weld: options, or JSON on standard input"), log_write.add),
    "list": (mark("the welds, newest first; filter and page"), log_find.show_list),
    "show": (mark("one weld by number or uid"), log_find.show),
    "edit": (mark("change fields of one weld"), log_write.edit),
    "remove": (mark("take one weld out; answers with how to undo it"), log_write.remove),
    "undo": (mark("take a change back by its token"), log_write.undo),
    "similar": (mark("the past welds most like a request"), log_find.similar),
    "sheet": (mark("a preliminary procedure sheet of one weld"), log_files.sheet),
    "export": (mark("every weld into FILE.csv or FILE.json"), log_files.export),
    "import": (mark("look at a CSV or JSON file; --accept writes it, all or nothing"), log_files.bring_in),
    "backup": (mark("the whole log with its pictures into one FILE"), log_files.backup),
    "restore": (mark("make the log what a backup FILE holds; the old one is moved aside"), log_files.restore),
    "check": (mark("is the log whole, and what waits to go in"), log_files.check),
}
_HELP = ("-h", "--help", "help")


def run(argv: Sequence[str], write_pdf: Callable[..., None]) -> int:
    """Answer; 4 where the log cannot be used."""
    if not argv or argv[0] in _HELP:
        print(_usage())
        return 0
    name, *rest = argv
    if name not in ACTIONS:
        raise InputError("welds log", name, ", ".join(ACTIONS), nearest(name, ACTIONS))
    what, action = ACTIONS[name]
    return action(Context(parser_of(name, tr(what)).read(rest), write_pdf))


def _usage() -> str:
    width = max(map(len, ACTIONS))
    lines = (f"  welds log {name.ljust(width)}  {tr(what)}" for name, (what, _) in ACTIONS.items())
    return "\n".join(
        [tr("The log of welds that were made:"), *lines, tr("welds log ACTION --help says more.")]
    )
