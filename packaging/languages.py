"""Brings the translators' files in welds/languages/ up to date with the words in the code and in the tables.

Run it in the environment of the tests, then open the files in Qt Linguist. Qt's own
lupdate reads the code; the words that stand in data/ are handed to it as one more file of code.
"""

import json
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path

import PySide6

ROOT = Path(__file__).parents[1]
sys.path.insert(0, str(ROOT))

from welds import language  # noqa: E402
from welds.reference.prose import prose_of_data  # noqa: E402

LUPDATE = Path(PySide6.__file__).with_name("lupdate")
OPTIONS = (
    *("-tr-function-alias", "tr+=mark", "-source-language", "en"),
    *("-no-obsolete", "-locations", "none", "-disable-heuristic", "similartext"),
)


def update(folder: Path) -> None:
    """Write or renew a file for each language but English in `folder`."""
    folder.mkdir(exist_ok=True)
    with tempfile.TemporaryDirectory() as scratch:
        words, listed = Path(scratch) / "data_words.py", Path(scratch) / "files.lst"
        words.write_text("".join(f"tr({_quoted(text)})\n" for text in prose_of_data()), encoding="utf-8")
        listed.write_text("\n".join(map(str, (*_sources(), words))), encoding="utf-8")
        for code in sorted(set(language.NAMES) - {language.ENGLISH}):
            told = (*OPTIONS, "-target-language", code, "-ts", folder / f"{code}.ts")
            subprocess.run([LUPDATE, f"@{listed}", *told], check=True, stdout=subprocess.DEVNULL)


def _quoted(text: str) -> str:
    return json.dumps(text, ensure_ascii=False)


def _sources() -> Iterator[Path]:
    return (file for file in sorted((ROOT / "welds").rglob("*.py")) if "migrations" not in file.parts)


if __name__ == "__main__":
    update(Path(sys.argv[1]) if len(sys.argv) > 1 else ROOT / "welds" / "languages")
