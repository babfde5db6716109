"""Logs to test with: files in a folder of the test's own, and a private PostgreSQL server."""

import os
import pwd
import shutil
import subprocess
import tempfile
from collections.abc import Callable, Iterator
from pathlib import Path

import psycopg
import pytest

from welds.logbook.fields import Reading, read_entry
from welds.logbook.logbook import Logbook
from welds.logbook.opening import open_logbook

BAIT_TANK = {
    "process": "tig",
    "metal": "5052-H32",
    "thickness_mm": 2.03,
    "joint": "outside-corner",
    "settings": {"current": 112, "polarity": "AC", "ac_frequency": 120, "cup": 7},
    "outcome": "worked-well",
    "notes": "bait tank, long corner (invented)",
    "made_at": "2026-03-03T14:05:00+01:00",
    "machine": "200 A AC/DC TIG, 230 V",
    "welder": "first bench",
}
MUDGUARD = {
    "process": "mig",
    "metal": "galvanised",
    "thickness_mm": 1.5,
    "joint": "lap",
    "position": "PB",
    "other_metal": "low-carbon",
    "other_thickness_mm": 3,
    "settings": {"current": 95, "wire_feed": 5.1, "voltage": 17.5, "transfer": "short-circuit"},
    "outcome": "failed",
    "faults": ["burned through", "porous"],
    "notes": "trailer mudguard (invented)",
    "made_at": "2026-04-01",
}

POSTGRESQL = sorted(Path("/usr/lib/postgresql").glob("*/bin/initdb"))


class Server:
    """A PostgreSQL server of our own, on a socket in a folder of its own; a fresh schema for each test.

    A schema rather than a database, which is 300 files each.
    """

    def __init__(self, folder: Path) -> None:
        self.folder, self.bin = folder, POSTGRESQL[-1].parent
        # A server refuses to run as root; then another account of the system runs it.
        self.user = "postgres" if os.geteuid() == 0 else pwd.getpwuid(os.geteuid()).pw_name
        if os.geteuid() == 0:
            account = pwd.getpwnam(self.user)
            os.chown(folder, account.pw_uid, account.pw_gid)
        self._count = 0

    def run(self, program: str, *arguments: str) -> None:
        """Run one of the server's programs."""
        done = subprocess.run(
            [self.bin / program, *arguments],
            cwd=self.folder,
            user=self.user if os.geteuid() == 0 else None,
            env={"PATH": os.environ["PATH"], "LC_ALL": "C.UTF-8"},
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            text=True,
            check=False,
            timeout=60,
        )
        assert done.returncode == 0, done.stdout

    def make(self) -> None:
        """Make the server's folder."""
        self.run("initdb", "-D", "data", "-A", "trust", "-U", "welds", "-E", "UTF8", "--no-sync")

    def start(self) -> None:
        """Start and wait until it answers."""
        options = f"-k {self.folder} -c listen_addresses='' -c fsync=off -c max_connections=40"
        self.run("pg_ctl", "-D", "data", "-l", "log", "-w", "-o", options, "start")

    def stop(self) -> None:
        """Stop at once, every connection dropped."""
        self.run("pg_ctl", "-D", "data", "-m", "immediate", "-w", "stop")

    def new_log(self) -> str:
        """Return an address under which nothing is kept yet."""
        self._count += 1
        name = f"shop{self._count}"
        with psycopg.connect(host=str(self.folder), user="welds", dbname="postgres") as connection:
            connection.execute(f"CREATE SCHEMA {name}")
        return f"postgresql+psycopg://welds@/postgres?host={self.folder}&options=-csearch_path%3D{name}"


@pytest.fixture(scope="session")
def server() -> Iterator[Server]:
    """Return the running server; a missing one is a failure on the build machine."""
    if not POSTGRESQL:
        if "CI" in os.environ:
            pytest.fail("PostgreSQL is missing (Debian: postgresql)")
        pytest.skip("needs PostgreSQL (Debian: postgresql)")
    folder = Path(tempfile.mkdtemp(prefix="welds-server-", dir="/tmp" if os.geteuid() == 0 else None))
    running = Server(folder)
    try:
        running.make()
        running.start()
        yield running
        running.stop()
    finally:
        shutil.rmtree(folder, ignore_errors=True)


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """Return where a log may be made."""
    return tmp_path / "yard.db"


@pytest.fixture(params=["file", "server"])
def address(request: pytest.FixtureRequest, tmp_path: Path) -> str:
    """Return the address of an empty log, once in a file, once on the server."""
    if request.param == "file":
        return str(tmp_path / "yard.db")
    return request.getfixturevalue("server").new_log()


@pytest.fixture
def log(address: str) -> Iterator[Logbook]:
    """Return an empty open log, once in a file, once on the server."""
    with open_logbook(address) as opened:
        yield opened


@pytest.fixture
def reading(tables) -> Callable[..., Reading]:
    """Return a maker of readings: the bait tank, with some fields changed."""

    def make(given: dict | None = None, **changes: object) -> Reading:
        return read_entry({**(given or BAIT_TANK), **changes}, tables)

    return make


@pytest.fixture
def picture(tmp_path: Path) -> Path:
    """Return a small picture as a phone makes it: lying on its side, with a note of that."""
    from PIL import Image

    image = Image.new("RGB", (60, 30), "white")
    image.paste((200, 0, 0), (0, 0, 30, 30))
    turned = Image.Exif()
    turned[0x0112] = 6  # to be turned right by a quarter
    file = tmp_path / "bead.jpg"
    image.save(file, quality=95, exif=turned)
    return file
