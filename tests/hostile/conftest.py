"""The box, made once; its folders stand in for the person's in every test here."""

import pytest

from tests.hostile.box import Box


@pytest.fixture(scope="session")
def _one_box(tmp_path_factory, tables) -> Box:
    with pytest.MonkeyPatch.context() as patch:
        folder = tmp_path_factory.mktemp("box")
        patch.setenv("XDG_DATA_HOME", str(folder / "making"))
        return Box(folder, tables)


@pytest.fixture
def box(_one_box, own_folders, monkeypatch, tables) -> Box:
    """Return the box as it was made; the shipped tables are read once."""
    for name in ("XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME", "XDG_STATE_HOME"):
        monkeypatch.setenv(name, str(_one_box.home / name.lower()))
    monkeypatch.setattr("welds.reference.load.load_tables", lambda folder=None: tables)
    monkeypatch.setattr("welds.logbook.store.FIRST_PAUSE_S", 0.001)
    _one_box.fresh()
    return _one_box
