"""Bench files written from text."""

import textwrap

import pytest

from welds.bench.bench import Bench
from welds.bench.load import load_bench


@pytest.fixture
def load(tmp_path, tables):
    def load(text: str) -> Bench:
        path = tmp_path / "bench.yaml"
        path.write_text(textwrap.dedent(text), encoding="utf-8")
        return load_bench(path, tables)

    return load
