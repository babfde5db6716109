"""The bundle is whole: away from where it was made it answers and paints, without Python and checkout."""

import json
import os
import re
import shutil
import subprocess
import sys
import threading
import time
import xml.etree.ElementTree as ElementTree
from pathlib import Path

import pytest

from welds import __version__, language
from welds.reference.edition import edition

ROOT = Path(__file__).parents[2]
PACKAGING = ROOT / "packaging"
FLUSHED = re.compile(r"qt\.widgets\.painting: Flushing .* of (\w+)\(")
CARET_BLINKS = 8
"""So many times the window is brought to the screen only when it is up and its first input has the focus."""


@pytest.fixture(scope="module")
def bundle(tmp_path_factory: pytest.TempPathFactory) -> Path:
    pytest.importorskip("PyInstaller")
    folder = tmp_path_factory.mktemp("bundle")
    places = ("--distpath", str(folder / "made"), "--workpath", str(folder / "work"))
    made = subprocess.run(
        [sys.executable, "-P", "-m", "PyInstaller", "--noconfirm", *places, str(PACKAGING / "welds.spec")],
        env={**os.environ, "PYINSTALLER_CONFIG_DIR": str(folder / "cache")},
        capture_output=True,
        text=True,
        check=False,
    )
    assert made.returncode == 0, made.stderr[-2000:]
    shutil.rmtree(folder / "work")
    moved = folder / "elsewhere"
    return Path(shutil.move(folder / "made" / "welds", moved))


def environment(home: Path, **more: str) -> dict[str, str]:
    """Nothing of ours: no PATH, no PYTHONPATH."""
    home.mkdir(exist_ok=True)
    return {"HOME": str(home), "LANG": "C.UTF-8", "QT_QPA_PLATFORM": "offscreen", **more}


def run_bundle(bundle: Path, home: Path, *arguments: str, given: str = "") -> str:
    done = subprocess.run(
        [bundle / "welds", *arguments],
        cwd=bundle.parent,
        env=environment(home),
        input=given,
        capture_output=True,
        text=True,
        check=False,
    )
    assert (done.returncode, done.stderr) == (0, "")
    return done.stdout


@pytest.mark.slow
def test_every_language_is_inside_with_the_words_of_its_dialogs(bundle: Path):
    inside = {path.name for path in bundle.rglob("*") if path.suffix in (".ts", ".qm")}
    others = set(language.NAMES) - {language.ENGLISH}
    assert {name for code in others for name in (f"{code}.ts", f"qtbase_{code}.qm")} <= inside


def test_bundle_answers_as_this_checkout_does(bundle: Path, tmp_path: Path):
    request = (
        "card",
        "--process",
        "tig",
        "--metal",
        "5052",
        "--thickness",
        "2 mm",
        "--joint",
        "outside-corner",
        "--json",
    )
    here = subprocess.run(
        [sys.executable, "-P", "-m", "welds", *request],
        env={**os.environ, "PYTHONPATH": str(ROOT)},
        capture_output=True,
        text=True,
        check=True,
    )
    assert json.loads(run_bundle(bundle, tmp_path / "home", *request)) == json.loads(here.stdout)


@pytest.mark.slow
def test_bundle_names_program_and_tables(bundle: Path, tmp_path: Path):
    said = run_bundle(bundle, tmp_path / "home", "--version")
    assert said == f"welds {__version__}\ntables {edition()}\n"


@pytest.mark.slow
def test_bundle_writes_a_log_and_a_pdf(bundle: Path, tmp_path: Path):
    weld = {"process": "tig", "metal": "5052", "thickness_mm": 2.0, "joint": "tee", "outcome": "worked"}
    weld["settings"] = {"current": 90.0}
    run_bundle(bundle, tmp_path / "home", "log", "add", "--json", given=json.dumps(weld))
    (kept,) = json.loads(run_bundle(bundle, tmp_path / "home", "log", "list", "--json"))
    assert kept["settings"]["current"] == 90.0
    pdf = tmp_path / "chart.pdf"
    run_bundle(bundle, tmp_path / "home", "chart", "--process", "tig", "--metal", "5052", "--pdf", str(pdf))
    assert pdf.read_bytes().startswith(b"%PDF")


@pytest.mark.slow
def test_bundle_paints_its_window(bundle: Path, tmp_path: Path):
    lines: list[str] = []
    window = subprocess.Popen(
        [bundle / "welds"],
        env=environment(tmp_path / "home", QT_LOGGING_RULES="qt.widgets.painting.debug=true"),
        stderr=subprocess.PIPE,
        text=True,
    )
    assert window.stderr is not None
    reader = threading.Thread(target=lines.extend, args=(window.stderr,))
    reader.start()
    try:
        latest = time.monotonic() + 60.0
        painted: list[str] = []
        while len(painted) < CARET_BLINKS and window.poll() is None and time.monotonic() < latest:
            time.sleep(0.1)
            painted = [found[1] for line in lines if (found := FLUSHED.match(line))]
        assert window.poll() is None, lines[-5:]
    finally:
        window.terminate()
        window.wait()
        reader.join()
        window.stderr.close()
    assert len(painted) >= CARET_BLINKS
    # A first start asks its questions; a report of a fault would be another window.
    assert {"MainWindow"} <= set(painted) <= {"MainWindow", "WelcomeDialog"}
    assert not [line for line in lines if "fault" in line]


@pytest.mark.slow
def test_bundle_brings_its_notices(bundle: Path):
    notices = (bundle / "licences" / "THIRD-PARTY-NOTICES.txt").read_text(encoding="utf-8")
    for part in (
        "PySide6_Essentials",
        "shiboken6",
        "numpy",
        "pandas",
        "Pint",
        "PyYAML",
        "Python",
        "SQLAlchemy",
    ):
        assert re.search(rf"^{part} \d", notices, re.MULTILINE), part
    assert "Version 3, 29 June 2007" in (bundle / "licences" / "LGPL-3.0.txt").read_text(encoding="utf-8")
    assert (bundle / "licences" / "GPL-3.0.txt").is_file()
    assert (bundle / "licences" / "Apache-2.0.txt").read_bytes() == (ROOT / "LICENSE").read_bytes()


@pytest.mark.slow
def test_bundle_keeps_qt_replaceable_and_leaves_the_tests_out(bundle: Path):
    inside = bundle / "_internal"
    assert (inside / "PySide6" / "Qt" / "lib" / "libQt6Core.so.6").is_file()
    names = {path.name for path in inside.iterdir()}
    assert not names & {"scipy", "pytest", "hypothesis", "mendeleev", "mypy", "tkinter"}
    assert not [
        name for name in names if re.match(r"libQt6(Charts|Graphs|DataVisualization)", name)
    ]  # GPL only


@pytest.mark.slow
@pytest.mark.skipif(shutil.which("dpkg-deb") is None, reason="needs Debian's tools")
def test_debian_package_holds_what_a_desktop_looks_for(bundle: Path, tmp_path: Path):
    made = subprocess.run(
        ["sh", PACKAGING / "deb.sh", tmp_path, bundle], capture_output=True, text=True, check=False
    )
    assert made.returncode == 0, made.stderr
    (package,) = tmp_path.glob(f"welds_{__version__}_*.deb")
    tree = tmp_path / "tree"
    subprocess.run(["dpkg-deb", "-x", package, tree], check=True)
    assert (tree / "usr/bin/welds").resolve() == (tree / "usr/lib/welds/welds").resolve()
    for name in (
        "applications/welds.desktop",
        "metainfo/welds.metainfo.xml",
        "icons/hicolor/scalable/apps/welds.svg",
        "icons/hicolor/48x48/apps/welds.png",
        "doc/welds/copyright",
        "doc/welds/licences/LGPL-3.0.txt",
    ):
        assert (tree / "usr/share" / name).is_file(), name
    assert json.loads(run_bundle(tree / "usr/lib/welds", tmp_path / "home", "log", "list", "--json")) == []


def test_the_store_page_is_of_this_version():
    releases = ElementTree.parse(PACKAGING / "welds.metainfo.xml").findall("releases/release")
    assert releases[0].get("version") == __version__


@pytest.mark.parametrize(
    ("tool", "file"),
    [
        (("desktop-file-validate",), "welds.desktop"),
        (("appstreamcli", "validate", "--no-net"), "welds.metainfo.xml"),
    ],
    ids=("desktop", "metainfo"),
)
def test_metadata_is_valid(tool: tuple[str, ...], file: str):
    if shutil.which(tool[0]) is None:
        pytest.skip(f"needs {tool[0]}")
    checked = subprocess.run([*tool, PACKAGING / file], capture_output=True, text=True, check=False)
    assert checked.returncode == 0, checked.stdout


def test_the_icon_is_drawn_in_every_size(tmp_path: Path):
    image = pytest.importorskip("PIL.Image")
    script = (sys.executable, "-P", PACKAGING / "render_icon.py")
    subprocess.run([*script, ROOT / "welds" / "gui" / "welds.svg", tmp_path], check=True)
    drawn = sorted(tmp_path.glob("hicolor/*/apps/welds.png"))
    assert len(drawn) > 5
    for path in drawn:
        with image.open(path) as picture:
            side = int(path.parts[-3].partition("x")[0])
            assert picture.size == (side, side)
            assert picture.convert("RGBA").getpixel((0, 0))[3] == 0, "the corners are transparent"
            assert len(picture.convert("RGB").getcolors(side * side)) > 8
