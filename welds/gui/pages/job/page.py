"""Making the job page for the window."""

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QWidget

from welds.gui.engine import Engine
from welds.gui.pages.job.presenter import JobPresenter
from welds.gui.pages.job.view import JobView
from welds.gui.pages.log.desk import LogDesk
from welds.gui.pages.setup.presenter import SetupPresenter
from welds.gui.prompts import Prompts


def make_job_page(
    engine: Engine, setup: SetupPresenter, prompts: Prompts, desk: LogDesk | None, window: QWidget
) -> JobView:
    """Return the page; it follows the units of the set-up page, and a new job begins with its metal."""

    def usual() -> dict[str, str]:
        fields = setup.fields
        return {name: str(fields.get(name, "")) for name in ("process", "metal", "thickness")}

    presenter = JobPresenter(engine, setup.units, window, desk, usual)
    setup.units_changed.connect(presenter.set_units)
    application = QCoreApplication.instance()
    if application is not None:
        application.aboutToQuit.connect(presenter.jobs.wait)
    return JobView(presenter, prompts, window)
