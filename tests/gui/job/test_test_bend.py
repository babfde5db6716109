"""A test bend on the job page: its K is kept for the brake and the sheet, and the piece reckons with it."""

from pathlib import Path

import pytest
from PySide6.QtWidgets import QDialogButtonBox, QPushButton, QWidget

from tests.gui.fakes import FakePrompts
from welds.gui.engine import Engine
from welds.gui.pages.job.presenter import JobPresenter
from welds.gui.pages.job.view import JobView
from welds.job.brake_book import book_file, read_book
from welds.quantities.units import Units

JOB = """job: x
pieces:
  - {id: tray, metal: 5052-H32, thickness: 2 mm, legs: "40, 40 mm", angles: [90], radius: 3.2 mm,
     width: 50 mm, k: 0.4}
"""


def test_the_k_of_a_bend_by_hand_reaches_the_blank(qtbot, tables, tmp_path: Path):
    """Strip 100, legs 52 and 51.8, r 3.2, t 2: straight 103.8 - 2 * 5.2 = 93.4, so the bend took 6.6;
    6.6 / (pi/2) = 4.2017 is the neutral radius, and K = (4.2017 - 3.2) / 2 = 0.501."""
    file = tmp_path / "job.yaml"
    file.write_text(JOB, encoding="utf-8")
    window = QWidget()
    qtbot.addWidget(window)
    presenter = JobPresenter(Engine(tables, None, None), Units.METRIC, window)
    prompts = FakePrompts(window)
    view = JobView(presenter, prompts, window)
    with qtbot.waitSignal(presenter.opened, timeout=10_000):
        presenter.open(file)
    forms = []
    prompts.show_form = forms.append
    titles = [view.tabs.tabText(n) for n in range(view.tabs.count())]
    blanks = view.tabs.widget(titles.index("Blanks"))
    button = next(each for each in blanks.findChildren(QPushButton) if "Test bend" in each.text())
    button.click()
    (dialog,) = forms
    save = dialog.buttons.button(QDialogButtonBox.StandardButton.Save)
    assert not save.isEnabled()
    for line, text in (
        (dialog.brake, "yard brake"), (dialog.flat, "100"), (dialog.first, "52"), (dialog.second, "58"),
    ):  # fmt: skip
        line.setText(text)
    assert "measure strip and legs again" in dialog.words.text()
    assert not save.isEnabled()
    dialog.second.setText("51.8")
    assert dialog.words.text() == "K = 0.501"
    with qtbot.waitSignal(presenter.opened, timeout=10_000):
        save.click()
    assert [(each.brake, each.metal) for each in read_book(book_file())] == [("yard brake", "5052-H32")]
    answer = presenter.shown.plan.blanks["tray"]
    assert answer.ks[0].method == "test bend on yard brake"
    assert answer.blank.lines[0].k == pytest.approx(0.5009, abs=1e-4)
    presenter.jobs.wait()
