"""No screen, no person's folders, and the tables read once."""

import os
from itertools import count
from pathlib import Path

import pytest
from hypothesis import settings

from tests.support.server import server  # noqa: F401
from welds import language
from welds.reference.load import load_tables
from welds.reference.tables import Tables

os.environ["QT_QPA_PLATFORM"] = os.environ.get("WELDS_TEST_PLATFORM", "offscreen")

PERSONAL_FOLDERS = ("XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME", "XDG_STATE_HOME")

# On the build machine the same examples every time; at a desk new ones, so that more is found.
settings.register_profile("welds", deadline=None, derandomize="CI" in os.environ)
settings.load_profile("welds")

_homes = count()


def pytest_ignore_collect(collection_path: Path) -> bool | None:
    """Collect only test files under tests/; examples in docstrings are looked for in the physics alone."""
    if collection_path.suffix == ".py" and not collection_path.name.startswith("test_"):
        return True
    return None


@pytest.fixture(autouse=True)
def own_folders(tmp_path_factory: pytest.TempPathFactory, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Give every test its own folders for configuration, data and cache; not made before something writes."""
    home = tmp_path_factory.getbasetemp() / "homes" / str(next(_homes))
    for name in PERSONAL_FOLDERS:
        monkeypatch.setenv(name, str(home / name.lower()))
    return home


@pytest.fixture(autouse=True)
def english(monkeypatch: pytest.MonkeyPatch) -> None:
    """Let every test begin in English, whatever the desk speaks and whatever the test before it spoke."""
    for name in ("LC_ALL", "LC_MESSAGES", "LANG"):
        monkeypatch.setenv(name, "C.UTF-8")
    language.use(language.ENGLISH)


@pytest.fixture(scope="session")
def tables() -> Tables:
    """Return the shipped reference tables."""
    return load_tables()
