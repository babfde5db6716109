"""The maker of pictures of the job page works; what they show is for eyes."""

import pytest

from tests.screens.make_job_screens import SIZES, picture
from welds.gui.engine import load_engine

pytestmark = [pytest.mark.heavy, pytest.mark.qt_log_ignore("This plugin does not support", extend=True)]


@pytest.mark.parametrize(
    ("state", "theme", "units"), [("Repairs", "dark", "inch"), ("Edit", "light", "metric")]
)
def test_a_picture_holds_the_whole_page(qapp, tmp_path, state, theme, units):
    grabbed = picture(qapp, load_engine(None), state, SIZES[0], theme, units, tmp_path)
    assert (grabbed.width(), grabbed.height()) == SIZES[0]
    image = grabbed.toImage()
    colours = {image.pixel(x, y) for x in range(0, SIZES[0][0], 7) for y in range(0, SIZES[0][1], 7)}
    assert len(colours) > 10
