import pytest

from tests.screens.make_screens import REQUESTS, SIZES, Screen, all_screens, picture
from welds.gui.engine import load_engine

pytestmark = [pytest.mark.heavy, pytest.mark.qt_log_ignore("This plugin does not support", extend=True)]


def test_every_look_of_every_request_is_listed_once():
    names = [screen.name for screen in all_screens()]
    assert len(names) == len(set(names)) == len(REQUESTS) * len(SIZES) * 4


@pytest.mark.parametrize("request_name", ["console-box", "fuel-tank", "too-thick"])
def test_a_picture_holds_the_whole_page(qapp, tmp_path, request_name):
    grabbed = picture(qapp, load_engine(None), Screen(request_name, (1366, 768), "light", "metric"), tmp_path)
    assert (grabbed.width(), grabbed.height()) == (1366, 768)
    image = grabbed.toImage()
    colours = {image.pixel(x, y) for x in range(0, 1366, 7) for y in range(0, 768, 7)}
    assert len(colours) > 20
