"""The window as a person starts it, in a process of its own."""

import shutil

import pytest

from tests.support.opening import open_window

SLOW = {"PIL", "alembic", "ezdxf", "jsonschema", "numpy", "pandas", "pint", "pyqtgraph", "sqlalchemy", "xml"}


def test_the_window_paints_before_anything_slow_is_imported():
    opening = open_window()
    assert not SLOW & opening.modules_when_painted
    assert opening.complaints == ""


@pytest.mark.slow
@pytest.mark.skipif(shutil.which("xvfb-run") is None, reason="needs a virtual X screen (Debian: xvfb xauth)")
def test_the_window_opens_on_a_real_x_screen():
    opening = open_window(through=("xvfb-run", "-a"), QT_QPA_PLATFORM="xcb")
    assert opening.complaints == ""
