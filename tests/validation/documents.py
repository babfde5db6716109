"""Each document of data/sources.yaml: how much was read, what rests on it, what it is compared with."""

import ast
import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path
from statistics import median

from tests.published.schedule_scores import Score
from welds.reference.sources import Source
from welds.reference.tables import Tables
from welds.reference.uses import uses_of_sources

ROOT = Path(__file__).parents[2]
UNREAD = re.compile(r"from memory|common practice|own definition")
CITED = re.compile(r"\[([A-Z][\w.+-]+)\]")


@dataclass(frozen=True)
class Document:
    """One line of the report."""

    id: str
    read: str
    rests: tuple[str, ...]
    compared: tuple[str, ...]

    @property
    def is_read(self) -> bool:
        """False where nothing was read."""
        return UNREAD.match(self.read) is None


@dataclass(frozen=True)
class Published:
    """One module of tests/published."""

    name: str
    about: str
    documents: tuple[str, ...]
    checks: int


def published(tables: Tables) -> Iterator[Published]:
    """Yield the modules that compare with documents or tools, with the documents each names."""
    for path in sorted((ROOT / "tests" / "published").glob("test_*.py")):
        tree = ast.parse(path.read_text(encoding="utf-8"))
        words = ast.get_docstring(tree) or ""
        named = dict.fromkeys(key for key in CITED.findall(words) if key in tables.sources)
        checks = sum(
            isinstance(each, ast.FunctionDef) and each.name.startswith("test_") for each in tree.body
        )
        about = re.sub(rf"(?:,? ?{CITED.pattern})+", "", words.splitlines()[0]).strip()
        yield Published(path.name, about, tuple(named), checks)


def documents(tables: Tables, pooled: Iterable[Score], left_out: Iterable[Score]) -> list[Document]:
    """Return every document, in the order of the file."""
    scored = {
        source: (
            [score.error for score in pooled if score.document == source],
            [score.error for score in left_out if score.document == source],
        )
        for source in tables.sources
    }
    tests: dict[str, list[str]] = {}
    for module in published(tables):
        for key in module.documents:
            tests.setdefault(key, []).append(module.name)
    code, cells = _named_in_code(tables.sources), _named_in_cells(tables)
    uses = tables.derived(uses_of_sources)
    found = []
    for source in tables.sources.values():
        seen, unseen = scored[source.id]
        compared = [f"card: median {median(seen):.1%} off"] if seen else []
        compared += [f"left out: {median(unseen):.1%}"] if unseen else []
        rests = [f"{use.where} ({use.count} {use.basis})" for use in uses[source.id]]
        rests += code.get(source.id, [])
        rests += [f"note in {name}" for name in cells.get(source.id, [])]
        found.append(Document(source.id, _read(source), tuple(rests), (*compared, *tests.get(source.id, []))))
    return found


def _read(source: Source) -> str:
    """Return the first clause of how it was read."""
    return re.split(r"[;,(]| - ", source.how_read)[0].strip()


def _named_in_code(sources: Mapping[str, Source]) -> dict[str, list[str]]:
    """Return the modules that cite a document, in a docstring or as the source of a reason."""
    found: dict[str, list[str]] = {}
    for path in sorted((ROOT / "welds").rglob("*.py")):
        text = path.read_text(encoding="utf-8")
        module = ".".join(path.relative_to(ROOT / "welds").with_suffix("").parts)
        for key in dict.fromkeys((*CITED.findall(text), *re.findall(r'"([A-Z][\w.+-]+)"', text))):
            if key in sources:
                found.setdefault(key, []).append(module)
    return found


def _named_in_cells(tables: Tables) -> dict[str, list[str]]:
    """Return the tables whose cells or sheet mention a document beside the row's own source."""
    words = re.compile(r"[A-Z][\w.+-]*\w")
    found: dict[str, list[str]] = {}
    for name in tables.names:
        table = tables.table(name)
        texts = [table.sheet.about] + [
            value
            for row in table.rows
            for column, value in row.items()
            if column != "source_id" and isinstance(value, str)
        ]
        mentioned = {word for text in texts for word in words.findall(text)}
        for key in tables.sources:
            if key in mentioned:
                found.setdefault(key, []).append(name)
    return found
