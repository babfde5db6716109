"""Reading the command line: argparse, but every slip becomes one InputError with the nearest right word."""

import argparse
from collections.abc import Iterable, Sequence
from typing import NoReturn

from welds.errors import NOTHING, InputError, nearest
from welds.language import NAMES, mark, tr

_NEEDED = "the following arguments are required: "
_IGNORED = "ignored explicit argument "
_STRAY = mark('options with their values; one with a blank in it in quotes, as in --thickness "2 mm"')
STDOUT = "-"
"""A file name that means standard output."""


class _Formatter(argparse.HelpFormatter):
    """The usual layout of a help text; its own word before the usage in the language in use."""

    def add_usage(
        self,
        usage: str | None,
        actions: Iterable[argparse.Action],
        groups: Iterable[argparse._MutuallyExclusiveGroup],
        prefix: str | None = None,
    ) -> None:
        super().add_usage(usage, actions, groups, tr("usage: ") if prefix is None else prefix)


class Parser(argparse.ArgumentParser):
    """A parser that raises instead of printing its usage and leaving."""

    def __init__(self, prog: str, description: str) -> None:
        super().__init__(
            prog=prog,
            description=description,
            allow_abbrev=False,
            add_help=False,
            formatter_class=_Formatter,
        )
        self._positionals.title, self._optionals.title = tr("positional arguments"), tr("options")
        self.add_argument("-h", "--help", action="help", help=tr("show this help message and exit"))

    def error(self, message: str) -> NoReturn:
        """Turn argparse's complaint into one of ours."""
        option, _, rest = message.removeprefix("argument ").partition(": ")
        if rest.startswith("expected"):
            option = option.split("/")[0]
            raise InputError(option, NOTHING, tr("one value, as in {option}=VALUE", option=option))
        if rest.startswith(_IGNORED):
            value = rest.removeprefix(_IGNORED)
            message = tr("argument {option}: ignored explicit argument {value}", option=option, value=value)
        elif message.startswith(_NEEDED):
            names = message.removeprefix(_NEEDED)
            message = tr("the following arguments are required: {names}", names=names)
        raise InputError(
            mark("command line"), message, tr("{prog} --help lists what it takes", prog=self.prog)
        )

    def read(self, argv: Sequence[str]) -> argparse.Namespace:
        """Return the options; whatever is left over is refused with the nearest option."""
        options, unknown = self.parse_known_args(argv)
        if unknown:
            known = [name for action in self._actions for name in action.option_strings]
            word = unknown[0].split("=")[0]
            if not word.startswith("-"):
                raise InputError(self.prog, word, tr(_STRAY))
            raise InputError(
                self.prog, word, tr("one of its options (--help lists them)"), nearest(word, known)
            )
        return options


class Once(argparse.Action):
    """Stores one value, and refuses a second one rather than forgetting the first."""

    def __call__(
        self,
        parser: argparse.ArgumentParser,
        namespace: argparse.Namespace,
        values: object,
        option_string: str | None = None,
    ) -> None:
        """Store the value, or raise InputError where there is one."""
        if getattr(namespace, self.dest) is not None:
            raise InputError(option_string or self.dest, values, tr("given once"))
        setattr(namespace, self.dest, values)


def add_common(parser: Parser, *, has_many_benches: bool = False) -> None:
    """Add what every command takes."""
    group = parser.add_argument_group(tr("for every command"))
    group.add_argument("--json", action="store_true", help=tr("print JSON, always metric"))
    group.add_argument(
        "--units", action=Once, metavar="metric|inch", help=tr("units to read bare numbers in and to show")
    )
    bench = tr("your machine and shelf, a YAML file")
    if has_many_benches:
        group.add_argument("--bench", action="append", default=[], metavar="FILE", help=bench)
    else:
        group.add_argument("--bench", action=Once, metavar="FILE", help=bench)
    group.add_argument("--log", action=Once, metavar="FILE|URL", help=tr("another log than your own"))
    group.add_argument("--lang", action=Once, metavar=languages(), help=tr("language of the words"))


def languages() -> str:
    """Return what `--lang` takes."""
    return "|".join(NAMES)


def add_file(parser: argparse._ActionsContainer, name: str, what: str, *, needs_name: bool = False) -> None:
    """Add an option that writes a file; without a name it goes to standard output, where that is possible."""
    if needs_name:
        parser.add_argument(name, action=Once, metavar="FILE", help=what)
    else:
        parser.add_argument(name, action=Once, nargs="?", const=STDOUT, metavar="FILE", help=what)
