"""A job file made for one test."""

from collections.abc import Callable
from pathlib import Path

import pytest

from welds.job.job import Job
from welds.job.job_file import load_job

HEAD = """\
job: test job
units: metric
defaults: {process: tig, metal: 5052-H32, thickness: 2 mm}
"""


@pytest.fixture
def job_file(tmp_path: Path) -> Callable[[str], Path]:
    def write(text: str, head: str = HEAD) -> Path:
        path = tmp_path / "job.yaml"
        path.write_text(head + text, encoding="utf-8")
        return path

    return write


@pytest.fixture
def job_of(job_file, tables) -> Callable[[str], Job]:
    return lambda text: load_job(job_file(text), tables)
