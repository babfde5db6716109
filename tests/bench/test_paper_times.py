"""How long a plan and a page of paper take. Goal: 300 unlike joints in 1 s."""

import pytest
from PySide6.QtCore import QBuffer, QIODevice
from PySide6.QtGui import QPdfWriter, QTextDocument

from tests.bench.records import making_again
from tests.job.conftest import HEAD
from tests.job.many import three_hundred_joints
from welds.advice.advise import advise
from welds.advice.request import Joint, Process, Request
from welds.gui.page import Paper
from welds.gui.pdf import card_page, page_pdf
from welds.job.job_file import load_job
from welds.job.plan import plan_job
from welds.quantities.units import Units

CORNER = Request(Process.TIG, "5052", 2.03, Joint.OUTSIDE_CORNER)


@pytest.fixture
def job(tmp_path, tables):
    file = tmp_path / "job.yaml"
    file.write_text(HEAD + three_hundred_joints(), encoding="utf-8")
    return load_job(file, tables)


def test_plan_of_three_hundred_joints(beside, job, tables):
    again = making_again([each.card for each in plan_job(job, tables).set_ups])
    plan = beside(
        "job of 300 unlike joints", lambda: plan_job(job, tables), "records of 300 cards made anew", again, 5
    )
    assert len(plan.set_ups) == 300


def empty_pdf() -> bytes:
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    document = QTextDocument()
    document.print_(QPdfWriter(buffer))
    return bytes(buffer.data().data())


def test_card_as_pdf(beside, qapp, tables):
    card = advise(CORNER, tables)

    def make() -> bytes:
        return page_pdf(card_page(card, Units.METRIC, tables.sources), Paper.A4)

    pdf = beside("card as PDF", make, "an empty QTextDocument as PDF", empty_pdf, 20)
    assert len(pdf) > len(empty_pdf())
