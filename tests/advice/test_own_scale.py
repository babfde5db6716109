"""What a machine's own scale reads; expected readings are worked by hand."""

import pytest

from welds.advice.advise import advise
from welds.advice.equipment import Control, Equipment, Machine
from welds.advice.own_scale import in_words
from welds.advice.request import Joint, Process, Request

DIAL = Control("wire_feed", scale="dial", marks=(("1", 2.0), ("5", 6.0), ("10", 16.0)))
POSITIVE = Control("electrode_negative", scale="% electrode positive", marks=(("50", 50.0), ("10", 90.0)))
SWITCH = Control("electrode_negative", scale="cleaning switch", marks=(("low", 80.0), ("high", 60.0)))


@pytest.mark.parametrize(
    ("control", "figure", "words"),
    [
        (DIAL, 2.0, "1 on this machine's dial"),
        (DIAL, 5.0, "4 on this machine's dial"),  # three quarters of the way from 1 to 5
        (DIAL, 8.0, "6 on this machine's dial"),  # a fifth of the way from 5 to 10
        (DIAL, 16.0, "10 on this machine's dial"),
        (POSITIVE, 70.0, "30 % electrode positive"),
        (POSITIVE, 65.0, "35 % electrode positive"),
        (SWITCH, 80.0, "low on this machine's cleaning switch"),
        (SWITCH, 66.0, "high on this machine's cleaning switch"),
    ],
)
def test_reading(control, figure, words) -> None:
    assert in_words(control, figure) == words


def test_the_card_shows_it_beside_the_figure(tables) -> None:
    from welds.quantities.units import Units
    from welds.report.layout import setting_line

    feeder = Machine("a MIG set", frozenset({"mig"}), controls=(DIAL,))
    card = advise(Request(Process.MIG, "low-carbon", 2.0, Joint.BUTT), tables, Equipment(feeder))
    feed = card.settings["wire_feed"]
    assert feed.own_scale == in_words(DIAL, feed.start)
    assert "on this machine's dial" in feed.reasons[-1].text
    assert feed.own_scale in setting_line(feed, Process.MIG, Units.METRIC).second


def test_a_dial_that_ends_clips(tables) -> None:
    short = Control("wire_feed", scale="dial", marks=(("1", 1.0), ("2", 2.0)))
    feeder = Machine("a MIG set", frozenset({"mig"}), controls=(short,))
    card = advise(Request(Process.MIG, "low-carbon", 2.0, Joint.BUTT), tables, Equipment(feeder))
    assert card.settings["wire_feed"].band.high <= 2.0
    assert not next(check for check in card.checks if check.name == "wire feed").ok
