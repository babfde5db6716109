import pytest

from tests.screens.make_heat_screens import CASES, SIZES, all_screens, picture
from welds.gui.engine import load_engine

pytestmark = [pytest.mark.heavy, pytest.mark.qt_log_ignore("This plugin does not support", extend=True)]


def test_every_look_of_every_card_is_listed_once():
    names = [name for name, *_rest in all_screens()]
    assert len(names) == len(set(names)) == len(CASES) * len(SIZES) * 4


@pytest.mark.parametrize(
    ("name", "theme", "units"), [("tank-kept", "dark", "inch"), ("plug", "light", "metric")]
)
def test_a_picture_holds_the_whole_page(qapp, name, theme, units):
    grabbed = picture(qapp, load_engine(None), CASES[name], SIZES[0], theme, units)
    assert (grabbed.width(), grabbed.height()) == SIZES[0]
    image = grabbed.toImage()
    colours = {image.pixel(x, y) for x in range(0, SIZES[0][0], 7) for y in range(0, SIZES[0][1], 7)}
    assert len(colours) > 15
