"""The words for people that stand in data/: what a translator is given beside the code."""

import csv
from collections.abc import Iterator
from pathlib import Path

from welds.reference.hazards import HAZARDS_FILE
from welds.reference.paths import data_root
from welds.reference.strict_yaml import YamlMap, read_yaml


def prose_of_data() -> tuple[str, ...]:
    """Return every text of a prose column and of the cautions once, in English."""
    texts = (text for text in _texts(data_root()) if any(map(str.isalpha, text)))
    return tuple(dict.fromkeys(texts))


def _texts(root: Path) -> Iterator[str]:
    """Yield what the files say; not through the tables, which say it in the language in use."""
    for path in sorted((root / "tables").glob("*.yaml")):
        sheet = read_yaml(path, path.name)
        yield from (str(sheet["title"]), str(sheet["about"]))
        columns = sheet["columns"]
        assert isinstance(columns, YamlMap)
        prose = [name for name, column in columns.items() if _is_prose(column)]
        with path.with_suffix(".csv").open(encoding="utf-8", newline="") as file:
            for row in csv.DictReader(file):
                yield from (row[name].strip() for name in prose)
    for hazard in read_yaml(root / HAZARDS_FILE, HAZARDS_FILE).values():
        assert isinstance(hazard, YamlMap)
        yield str(hazard["text"])


def _is_prose(column: object) -> bool:
    return isinstance(column, YamlMap) and column["type"] == "prose"
