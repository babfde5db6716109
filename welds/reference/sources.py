"""The documents behind the figures."""

from dataclasses import dataclass, fields
from pathlib import Path

from welds.errors import ReferenceDataError, nearest
from welds.language import tr
from welds.reference.strict_yaml import YamlMap, read_yaml


@dataclass(frozen=True, slots=True)
class Source:
    """One document: `how_read` says how much of it was seen, `caution` what to distrust in it."""

    id: str
    citation: str
    status: str
    how_read: str
    publisher: str = ""
    year: str = ""
    caution: str = ""
    url: str = ""


_FIELDS = tuple(field.name for field in fields(Source) if field.name != "id")
_NEEDED = ("citation", "status", "how_read")


def read_sources(path: Path, shown: str, faults: list[ReferenceDataError]) -> dict[str, Source]:
    """Return the sound sources by id; what is wrong goes to `faults`."""
    try:
        found = read_yaml(path, shown)
    except ReferenceDataError as error:
        faults.append(error)
        return {}
    sources: dict[str, Source] = {}
    for key, entry in found.items():
        line = found.line_of[key]
        if not isinstance(entry, YamlMap):
            faults.append(
                ReferenceDataError(
                    shown, tr("source {key}: expected citation, status, how_read", key=key), line
                )
            )
            continue
        problems = _problems(entry)
        faults.extend(
            ReferenceDataError(shown, tr("source {key}: {problem}", key=key, problem=problem), line)
            for problem in problems
        )
        if not problems:
            sources[key] = Source(id=key, **{name: str(text) for name, text in entry.items()})
    return sources


def _problems(entry: YamlMap) -> list[str]:
    problems = [tr("{name!r} is missing or empty", name=name) for name in _NEEDED if not entry.get(name)]
    for name, text in entry.items():
        if name not in _FIELDS:
            hint = nearest(name, _FIELDS)
            problems.append(
                tr("unknown entry {name!r}", name=name) + (tr("; nearest: {hint}", hint=hint) if hint else "")
            )
        elif not isinstance(text, str):
            problems.append(tr("{name!r} must be one text", name=name))
    return problems
