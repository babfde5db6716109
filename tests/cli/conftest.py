"""Running commands inside the test's own process."""

import io
import json
import sys
from dataclasses import dataclass
from pathlib import Path

import pytest

from welds.cli.main import main


@dataclass
class Result:
    """What a command left behind."""

    code: int
    out: str
    err: str

    @property
    def json(self):
        return json.loads(self.out)

    @property
    def complaint(self) -> str:
        """The one line on standard error; anything more is a fault."""
        lines = self.err.splitlines()
        assert len(lines) == 1, self.err
        assert lines[0].startswith("welds: ")
        assert "Traceback" not in self.err
        return lines[0]


@dataclass
class Lent:
    """Stands in for the window and the PDF writer, and remembers what it was asked."""

    windows: int = 0
    pdfs: tuple = ()

    logs: tuple = ()

    def open_window(self, log, lang) -> int:
        self.windows += 1
        self.logs = (*self.logs, log)
        return 0

    def write_pdf(self, path, report, units, sources) -> None:
        self.pdfs = (*self.pdfs, (path, report, units, sources))
        Path(path).write_bytes(b"%PDF-1.4 made by the test")


@pytest.fixture
def lent() -> Lent:
    return Lent()


@pytest.fixture
def welds(capsys, monkeypatch, lent, tables):
    """Run `welds` with words as arguments; the shipped tables are read once for all tests."""
    monkeypatch.setattr("welds.reference.load.load_tables", lambda folder=None: tables)

    def run(*words: str, stdin: bytes = b"") -> Result:
        monkeypatch.setattr(sys, "stdin", io.TextIOWrapper(io.BytesIO(stdin), encoding="utf-8"))
        code = main(list(words), open_window=lent.open_window, write_pdf=lent.write_pdf)
        captured = capsys.readouterr()
        return Result(code, captured.out, captured.err)

    return run
