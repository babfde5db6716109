"""The program as a process of its own: start-up, pipes, broken tables."""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
CARD = ("card", "--process", "tig", "--metal", "5052", "--thickness", "2 mm", "--joint", "butt")


def start(*words: str, code: str = "", **options):
    command = [sys.executable, *(("-c", code) if code else ("-m", "welds")), *words]
    environment = {**os.environ, "PYTHONPATH": str(ROOT), **options.pop("env", {})}
    options = {"capture_output": True, "text": True, "check": False, "env": environment} | options
    return subprocess.run(command, **options)


def test_card_brings_in_neither_qt_nor_pandas() -> None:
    code = (
        "import sys; sys.argv = ['welds', *sys.argv[1:]]\n"
        "from welds.__main__ import main\n"
        "code = main()\n"
        "print(sorted({'PySide6', 'pandas', 'jsonschema'} & set(sys.modules)), file=sys.stderr)\n"
        "sys.exit(code)"
    )
    done = start(*CARD, code=code)
    assert done.returncode == 0
    assert done.stderr == "[]\n"
    assert done.stdout.startswith("TIG, butt, 5052")


def test_pdf_is_written_without_a_screen(tmp_path) -> None:
    pdf = tmp_path / "card.pdf"
    done = start(*CARD, "--pdf", str(pdf), env={"QT_QPA_PLATFORM": "", "DISPLAY": ""})
    assert (done.returncode, done.stderr) == (0, "")
    assert pdf.read_bytes().startswith(b"%PDF")
    chart = tmp_path / "chart.pdf"
    assert start("chart", "--process", "tig", "--metal", "5052", "--pdf", str(chart)).returncode == 0
    assert chart.read_bytes().startswith(b"%PDF")


def test_a_reader_that_leaves_early_gets_no_traceback() -> None:
    process = subprocess.Popen(
        [sys.executable, "-m", "welds", "tables", "show", "metals", "--json"],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        env={**os.environ, "PYTHONPATH": str(ROOT)},
    )
    assert process.stdout is not None
    assert process.stderr is not None
    process.stdout.read(10)
    process.stdout.close()
    assert process.stderr.read() == b""
    process.stderr.close()
    assert process.wait(30) == 0


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="needs a device that is always full")
def test_a_full_disk_is_said_in_one_line() -> None:
    with Path("/dev/full").open("w") as full:
        done = start(*CARD, capture_output=False, stdout=full, stderr=subprocess.PIPE)
    assert done.returncode == 4
    assert done.stderr.count("\n") == 1


def test_batch_answers_line_by_line() -> None:
    process = subprocess.Popen(
        [sys.executable, "-m", "welds", "card", "--batch"],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        env={**os.environ, "PYTHONPATH": str(ROOT)},
    )
    assert process.stdin is not None
    assert process.stdout is not None
    for joint in ("butt", "tee"):
        request = {"process": "tig", "metal": "5052", "thickness_mm": 2, "joint": joint}
        process.stdin.write(json.dumps(request).encode() + b"\n")
        process.stdin.flush()
        assert json.loads(process.stdout.readline())["request"]["joint"] == joint
    process.stdin.close()
    process.stdout.close()
    assert process.wait(30) == 0


def test_text_survives_a_terminal_without_unicode() -> None:
    done = start(*CARD, env={"PYTHONIOENCODING": "ascii", "LC_ALL": "C"})
    assert (done.returncode, done.stderr) == (0, "")


def test_broken_own_table_is_named_and_nothing_is_answered(tmp_path) -> None:
    own = tmp_path / "welds" / "tables"
    own.mkdir(parents=True)
    (own / "cups.csv").write_text("number,bore\n5,8\n", encoding="utf-8")
    done = start(*CARD, env={"XDG_CONFIG_HOME": str(tmp_path)})
    assert done.returncode == 2
    assert done.stdout == ""
    assert done.stderr.count("\n") == 1
    assert "cups.csv" in done.stderr


def test_own_rows_reach_the_tables(tmp_path) -> None:
    own = tmp_path / "welds" / "tables"
    own.mkdir(parents=True)
    (own / "cups.csv").write_text(
        "number,bore_mm,bore_in,source_id,place,basis\n24,38.1,1.5,COMMON_PRACTICE,mine,practice\n",
        encoding="utf-8",
    )
    done = start("tables", "show", "cups", "--json", env={"XDG_CONFIG_HOME": str(tmp_path)})
    assert done.returncode == 0, done.stderr
    assert json.loads(done.stdout)[-1]["number"] == 24
