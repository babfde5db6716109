"""The house stands: layers, Qt in one place, nothing heavy before it is needed."""

import pkgutil

import welds
from tests.architecture.fresh import modules_after, run_fresh

BELOW_THE_WINDOW = sorted(
    {found.name for found in pkgutil.iter_modules(welds.__path__)} - {"__main__", "gui", "cli"}
)
RUN_BY_ALEMBIC = "welds.logbook.migrations."


def modules_of(*layers: str) -> str:
    """Return every module of the layers, ready for an import statement."""
    names = []
    for layer in layers:
        folder = [f"{path}/{layer}" for path in welds.__path__]
        walked = [found.name for found in pkgutil.walk_packages(folder, prefix=f"welds.{layer}.")]
        names += [f"welds.{layer}", *(name for name in walked if not name.startswith(RUN_BY_ALEMBIC))]
    return ", ".join(names)


def test_the_import_contracts_are_kept():
    """The contracts stand in pyproject.toml; this runs the tool that reads them."""
    report = run_fresh(
        "from importlinter.cli import lint_imports_command as main; main(['--no-cache', '--no-logo'])"
    )
    assert "0 broken" in report


def test_the_walk_finds_the_modules():
    assert "welds.reference.load" in modules_of("reference")


def test_everything_below_the_window_imports_without_qt_pint_and_pandas():
    assert not {"PySide6", "pint", "pandas"} & modules_after(f"import {modules_of(*BELOW_THE_WINDOW)}")


def test_the_command_line_starts_without_qt_pint_and_pandas():
    assert not {"PySide6", "pint", "pandas"} & modules_after(f"import {modules_of('cli')}, welds.__main__")
