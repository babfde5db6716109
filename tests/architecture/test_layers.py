"""The house stands: layers, Qt in one place, nothing heavy before it is needed."""

import pkgutil

import welds
from tests.architecture.fresh import modules_after, run_fresh

BELOW_THE_WINDOW = ("errors", "quantities", "reference", "physics", "advice", "bench", "report")


def modules_of(layer: str) -> list[str]:
    """Return every module of a layer by its full name."""
    package = [f"welds.{layer}"]
    folder = [f"{path}/{layer}" for path in welds.__path__]
    return package + [found.name for found in pkgutil.walk_packages(folder, prefix=f"welds.{layer}.")]


def test_the_import_contracts_are_kept():
    """The contracts stand in pyproject.toml; this runs the tool that reads them."""
    report = run_fresh(
        "from importlinter.cli import lint_imports_command as main; main(['--no-cache', '--no-logo'])"
    )
    assert "0 broken" in report


def test_the_walk_finds_the_modules():
    assert "welds.reference.load" in modules_of("reference")


def test_everything_below_the_window_imports_without_qt():
    modules = [name for layer in BELOW_THE_WINDOW for name in modules_of(layer)]
    assert "PySide6" not in modules_after(f"import {', '.join(modules)}")


def test_everything_below_the_window_imports_without_pint_and_pandas():
    modules = [name for layer in BELOW_THE_WINDOW for name in modules_of(layer)]
    assert not {"pint", "pandas"} & modules_after(f"import {', '.join(modules)}")


def test_the_command_line_starts_without_qt_pint_and_pandas():
    modules = modules_after(f"import {', '.join(modules_of('cli'))}, welds.__main__")
    assert not {"PySide6", "pint", "pandas"} & modules
