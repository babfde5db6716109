"""Every place where the program writes a file that a person would miss, over a file that stands there."""

import os
from collections.abc import Callable
from pathlib import Path

from tests.logbook.conftest import BAIT_TANK
from welds.__main__ import write_pdf
from welds.bench.keep import save_bench
from welds.bench.templates import starting_bench
from welds.cli.main import main
from welds.errors import WeldsError
from welds.gui.drawing.export import write_picture
from welds.gui.memory import LastUse, Memory
from welds.job.brake_book import BrakeK, keep
from welds.job.demo import demo_file
from welds.job.job_edit import write_job
from welds.logbook.archive import back_up
from welds.logbook.drafts import Drafts
from welds.logbook.exporting import export_file
from welds.logbook.fields import read_entry
from welds.logbook.opening import open_logbook
from welds.logbook.photos import FolderPhotos
from welds.logbook.places import Place
from welds.reference.tables import Tables
from welds.reference.whole_file import write_whole

CARD = ("card", "--process", "tig", "--metal", "5052", "--thickness", "2 mm", "--joint", "butt")
OLD_BENCH = "200 A AC/DC TIG, 230 V"


def refusal(write: Callable[[], object]) -> str:
    """Return what the person is told, or nothing where it was written."""
    try:
        told = write()
    except WeldsError as error:
        return str(error)
    return told if isinstance(told, str) else ""


def command(*words: str) -> str:
    """Run a command line; return what the person is told."""
    code = main([*CARD, *words], open_window=lambda *_: 0, write_pdf=write_pdf)
    return f"exit {code}" if code else ""


def writers(folder: Path, log_folder: Path, tables: Tables) -> dict[str, tuple[Path, Callable[[], object]]]:
    """Return each write with its file, after having written every file once."""
    log = open_logbook(str(log_folder / "yard.db"))
    log.add(read_entry(BAIT_TANK, tables))
    folder.mkdir(exist_ok=True)
    job, bench, drafts = folder / "job.yaml", folder / "bench.yaml", Place(folder)
    write_whole(job, demo_file().read_text(encoding="utf-8"))
    bend = BrakeK("hand brake", "5052-H32", 2.0, 3.0, 0.4)
    found: dict[str, tuple[Path, Callable[[], object]]] = {
        "bench": (bench, lambda: save_bench(starting_bench([OLD_BENCH]), tables, bench)),
        "last use": (folder / "last-use.json", lambda: Memory(folder).save(LastUse())),
        "brakes": (folder / "brakes.yaml", lambda: keep(folder / "brakes.yaml", bend)),
        "job": (job, lambda: write_job(job, lambda text: text + "# more\n")),
        "draft": (drafts.drafts / "a.json", lambda: Drafts(drafts).keep({"base": {}}, "a") and None),
        "log as CSV": (folder / "log.csv", lambda: export_file(log, folder / "log.csv", tables)),
        "log as JSON": (folder / "log.json", lambda: export_file(log, folder / "log.json", tables)),
        "backup": (folder / "log.zip", lambda: back_up(log, folder / "log.zip")),
        "card as HTML": (folder / "card.html", lambda: command("--html", str(folder / "card.html"))),
        "card as PDF": (folder / "card.pdf", lambda: command("--pdf", str(folder / "card.pdf"))),
        "picture": (folder / "p.svg", lambda: write_picture(folder / "p.svg", 9, 9, lambda *_: None)),
    }
    for _, write in found.values():
        assert refusal(write) == ""
    found["photo"] = (
        folder / "photos",
        lambda: FolderPhotos(folder / "photos").put(os.urandom(9), ".png") and None,
    )
    (folder / "photos").mkdir()
    return found
