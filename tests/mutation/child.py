"""A forked child: it alone sees the changed module, and runs tests until one fails.

Nothing is written into the checkout. The parent has imported what the project rests on, and the layers below
the changed one; a child imports the rest anew, with the changed text in place of the module's own.
"""

import gc
import importlib
import json
import os
import resource
import signal
import sys
import tempfile
import warnings
from collections.abc import Callable, Mapping, Sequence
from contextlib import suppress
from functools import cache
from importlib.machinery import ModuleSpec, SourceFileLoader
from importlib.util import spec_from_file_location
from itertools import groupby
from pathlib import Path
from types import CodeType

import hypothesis
import pytest

ROOT = Path(__file__).parents[2]
PRELOADED = (
    "PIL.Image", "alembic.command", "contourpy", "ezdxf", "jsonschema", "mendeleev", "numpy", "pandas",
    "periodictable", "pint", "platformdirs", "psycopg", "rectpack", "skfem", "sqlalchemy", "yaml",
    "welds.errors", "welds.quantities.registry",
)  # fmt: skip
MEMORY = 6 * 1024**3
ARGUMENTS = (
    "-x", "-q", "-o", "addopts=", "--import-mode=importlib", "--doctest-modules", "-m", "not slow",
    "-p", "no:cacheprovider", "--rootdir", str(ROOT), "-c", str(ROOT / "pyproject.toml"),
    "-W", "ignore::pytest.PytestConfigWarning", "-W", "ignore::pytest.PytestAssertRewriteWarning",
)  # fmt: skip
"""Plugins are not loaded, so their options are unknown."""


class _Loader(SourceFileLoader):
    """Hands out the changed module's code."""

    def __init__(self, name: str, path: str, code: CodeType) -> None:
        super().__init__(name, path)
        self._code = code

    def get_code(self, fullname: str) -> CodeType:
        return self._code


class _Finder:
    """Finds one module, with its changed code."""

    def __init__(self, module: str, code: CodeType) -> None:
        self._path = str(ROOT / module)
        self.name = module.removesuffix(".py").replace("/", ".")
        self._code = code

    def find_spec(self, name: str, path: object = None, target: object = None) -> ModuleSpec | None:
        if name != self.name:
            return None
        return spec_from_file_location(name, self._path, loader=_Loader(name, self._path, self._code))


class _Only:
    """Keeps the wanted tests, quickest first, and remembers the one that failed."""

    def __init__(self, wanted: Mapping[str, float]) -> None:
        self.wanted = wanted
        self.failed = ""

    def pytest_sessionstart(self) -> None:
        # No search for the smallest failing example, and no book of failures.
        phases = (hypothesis.Phase.explicit, hypothesis.Phase.generate)
        hypothesis.settings.register_profile("mutants", hypothesis.settings(), phases=phases, database=None)
        hypothesis.settings.load_profile("mutants")

    def pytest_collection_modifyitems(self, items: list[pytest.Item]) -> None:
        items[:] = sorted(
            (item for item in items if item.nodeid in self.wanted), key=lambda item: self.wanted[item.nodeid]
        )

    def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
        if report.failed:
            self.failed = report.nodeid


def preload(folder: Path) -> None:
    """Import what does not change and read the tables; the numeric libraries get one thread each."""
    os.environ.update(OPENBLAS_NUM_THREADS="1", PYTEST_DISABLE_PLUGIN_AUTOLOAD="1", CI="1")
    sys.dont_write_bytecode, sys.pycache_prefix = False, str(folder / "pycache")
    for name in PRELOADED:
        importlib.import_module(name)
    load = importlib.import_module("welds.reference.load")
    load.load_tables = cache(load.load_tables)
    load.load_tables()
    gc.freeze()


def in_child(work: Callable[[], object], seconds: int) -> tuple[int, int]:
    """Fork; return the child's id and the end of a pipe on which its answer arrives as JSON."""
    read_end, write_end = os.pipe()
    child = os.fork()
    if child:
        os.close(write_end)
        return child, read_end
    status = 1
    try:
        os.setsid()
        resource.setrlimit(resource.RLIMIT_CPU, (seconds, seconds + 5))
        resource.setrlimit(resource.RLIMIT_AS, (MEMORY, MEMORY))
        nothing = os.open(os.devnull, os.O_RDWR)
        for stream in (0, 1, 2):
            os.dup2(nothing, stream)
        os.environ["TMPDIR"] = tempfile.mkdtemp()
        os.write(write_end, json.dumps(work()).encode())
        status = 0
    finally:
        os._exit(status)


def stop(child: int) -> None:
    """End a child, and whatever it started."""
    with suppress(ProcessLookupError):
        os.killpg(child, signal.SIGKILL)


def try_out(module: str, text: str, tests: Sequence[tuple[str, float]]) -> tuple[str, str]:
    """Return an outcome (invalid, killed, survived) and the test that killed; to be called in a child."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        try:
            code = compile(text, str(ROOT / module), "exec", dont_inherit=True)
        except SyntaxError:
            return "invalid", ""
    finder = _Finder(module, code)
    sys.meta_path.insert(0, finder)
    try:
        # Before pytest, which reads for itself what it is given to look for examples in.
        changed = importlib.import_module(finder.name)
    except Exception:
        return "killed", "import"
    for file, group in groupby(tests, key=lambda test: test[0].partition("::")[0]):
        only = _Only(dict(group))
        answer = pytest.main([*ARGUMENTS, str(ROOT / file)], plugins=[only])
        if answer == pytest.ExitCode.NO_TESTS_COLLECTED:
            return "unclear", file
        if answer != pytest.ExitCode.OK:
            return "killed", only.failed or file
        if sys.modules[finder.name] is not changed:
            return "unclear", file
    return "survived", ""
