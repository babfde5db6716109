"""A private PostgreSQL server to test with."""

import os
import pwd
import shutil
import subprocess
import tempfile
from collections.abc import Iterator
from pathlib import Path

import pytest

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
        import psycopg

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
