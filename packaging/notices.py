"""What goes along with the bundle: a notice for every part that others made, and the licences' texts."""

import re
import shutil
import subprocess
import sys
import sysconfig
from collections.abc import Iterable
from importlib.metadata import Distribution, distribution, distributions
from pathlib import Path

TEXTS = Path(__file__).with_name("licences")
HEAD = """\
Welds is made from parts that others made. This file names every part of this folder, with its licence.

Qt and PySide6 (with shiboken6) are used under the GNU Lesser General Public License, version 3:
LGPL-3.0.txt, which adds to GPL-3.0.txt, both beside this file. They are unchanged, lie in _internal/PySide6
and _internal/shiboken6 as libraries of their own, and may be replaced by others of the same interface. Their
sources, and the notices of what Qt itself contains, are at
https://download.qt.io/official_releases/QtForPython/ and https://download.qt.io/official_releases/qt/ under
the version named below. psycopg is under the same licence; its sources are at
https://github.com/psycopg/psycopg. Of the libraries named under "brings along", those whose text does not
stand there are under the terms that their own sources carry.
"""
OF_PYTHON = ("base_library.zip", Path(sysconfig.get_config_var("INSTSONAME") or "").name)
_LICENCE_FILE = re.compile(r"(^|/)(LICEN[CS]E|COPYING|NOTICE|AUTHORS)[^/]*$|/licenses?/", re.IGNORECASE)
_RULE = "=" * 100


def write_notices(parts: Iterable[tuple[str, str, str]], folder: Path, root: Path) -> list[str]:
    """Write the notices for what PyInstaller collected and return the files that nobody owns.

    A part is (name in the bundle, file it came from, kind).
    """
    files = {Path(source) for _name, source, _kind in parts if source and Path(source).is_absolute()}
    owners = {
        Path(str(dist.locate_file(file))).resolve(): dist
        for dist in distributions()
        for file in dist.files or ()
    }
    python = Path(sysconfig.get_path("stdlib")).resolve()
    used: dict[str, tuple[Distribution, set[str]]] = {"pyinstaller": (distribution("pyinstaller"), set())}
    system, orphans = [], []
    for file in sorted(files):
        real = file.resolve()
        if dist := owners.get(real):
            brought = used.setdefault(dist.name, (dist, set()))[1]
            if real.parent.name.endswith(".libs"):
                brought.add(real.name)
        elif python in real.parents or real.name in OF_PYTHON or root in real.parents:
            continue
        elif copyright_file := _debian_copyright(file):
            system.append((file.name, copyright_file))
        else:
            orphans.append(str(file))
    sections = [HEAD, _python_notice(python)]
    sections += [_notice(dist, brought) for _name, (dist, brought) in sorted(used.items(), key=_by_name)]
    for path in dict.fromkeys(path for _name, path in system):
        names = ", ".join(name for name, its in system if its == path)
        sections.append(
            _section(f"{names} (from Debian's {path.parent.name})", [path.read_text("utf-8", "replace")])
        )
    folder.mkdir(parents=True, exist_ok=True)
    (folder / "THIRD-PARTY-NOTICES.txt").write_text("\n".join(sections), encoding="utf-8")
    for text in sorted(TEXTS.glob("*.txt")):
        shutil.copyfile(text, folder / text.name)
    shutil.copyfile(root / "LICENSE", folder / "Apache-2.0.txt")
    return orphans


def _by_name(item: tuple[str, object]) -> str:
    return item[0].lower()


def _section(title: str, texts: Iterable[str]) -> str:
    return "\n".join([_RULE, title, _RULE, "", *(text.strip() + "\n" for text in texts)])


def _notice(dist: Distribution, brought: set[str]) -> str:
    said = dist.metadata["License-Expression"] or (dist.metadata["License"] or "").strip().partition("\n")[0]
    classes = [
        line.rpartition(" :: ")[2] for line in dist.metadata.get_all("Classifier", ()) if "License ::" in line
    ]
    licence = said or ", ".join(classes) or "see below"
    texts = [
        Path(str(dist.locate_file(file))).read_text("utf-8", "replace")
        for file in sorted(dist.files or (), key=str)
        if ".dist-info/" in str(file) and _LICENCE_FILE.search(str(file).partition(".dist-info")[2])
    ]
    if brought:
        texts.insert(0, "brings along: " + ", ".join(sorted(brought)))
    if not texts:
        texts = [f"Full text: see {_text_beside(licence, dist.name)} in this folder."]
    return _section(f"{dist.name} {dist.version}: {licence}", texts)


def _text_beside(licence: str, name: str) -> str:
    for key, file in (("LGPL-3.0", "LGPL-3.0.txt"), ("Apache-2.0", "Apache-2.0.txt")):
        if key in licence:
            return file
    raise SystemExit(f"{name} has no licence text ({licence}): put one into packaging/licences")


def _python_notice(stdlib: Path) -> str:
    for path in (stdlib / "LICENSE.txt", Path(f"/usr/share/doc/python3.{sys.version_info.minor}/copyright")):
        if path.is_file():
            return _section(f"Python {sys.version.split()[0]}: PSF-2.0", [path.read_text("utf-8", "replace")])
    raise SystemExit("the licence of Python itself is not beside its library")


def _debian_copyright(library: Path) -> Path | None:
    """Return the copyright file of the Debian package a library came from."""
    if shutil.which("dpkg-query") is None:
        return None
    for name in dict.fromkeys((str(library), str(library).removeprefix("/usr"), str(library.resolve()))):
        found = subprocess.run(["dpkg-query", "-S", name], capture_output=True, text=True, check=False)
        if found.returncode == 0:
            path = Path("/usr/share/doc") / found.stdout.partition(":")[0] / "copyright"
            return path if path.is_file() else None
    return None
