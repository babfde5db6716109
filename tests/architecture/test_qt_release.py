"""The release of Qt for Python that is installed does not eat None."""

import sys

from PySide6.QtGui import QPainterPath


def test_methods_that_return_nothing_keep_the_count_of_none():
    """PySide6 6.12.0 drops a reference with every such call on Python 3.11 and aborts after some thousands.

    From Python 3.12 on None is immortal, its count constant, and the test still holds.
    """
    path = QPainterPath()
    before = sys.getrefcount(None)
    for step in range(1000):
        path.lineTo(step, step)
    assert before - sys.getrefcount(None) < 100
