"""Writing the bench file: the same lines that are read, each with a comment on what it means."""

import json
import re
from collections.abc import Iterator, Mapping

from welds.bench import notes

_PLAIN = re.compile(r"[A-Za-z0-9][A-Za-z0-9 ._/+()-]*")
_PLAIN_LINE = re.compile(r"[A-Za-z0-9][A-Za-z0-9 ._/+(),-]*")
_COMMENT_COLUMN = 46
LAST_OF_FOUR_DIGITS = 0xFFFF

Raw = Mapping[str, object]
"""A bench as texts: what stands in the file, with lists and mappings."""


def bench_yaml(raw: Raw) -> str:
    """Return the file for a raw bench; fields of the shelf that it does not have stand there as examples."""
    parts = [notes.HEAD]
    in_use = raw.get("in_use")
    if in_use:
        parts.append(f"{_line('in_use', in_use)}\n")
    parts.append(f"{notes.MACHINES_HEAD}machines:\n" + "\n".join(_machines(raw.get("machines"))))
    parts.append(f"\n{notes.SHELF_HEAD}" + "\n".join(_shelf(raw.get("shelf"))) + "\n")
    return "\n".join(parts)


def _machines(machines: object) -> Iterator[str]:
    assert isinstance(machines, list)
    for machine in machines:
        lead = "  - "
        for field, value in machine.items():
            yield from _field(lead, field, value, notes.MACHINE.get(field, ""))
            lead = "    "


def _shelf(shelf: object) -> Iterator[str]:
    there: Raw = shelf if isinstance(shelf, Mapping) else {}
    yield "shelf:"
    for field, (meaning, example) in notes.SHELF.items():
        if field in there:
            yield from _field("  ", field, there[field], meaning)
        else:
            yield _commented(f"  # {field}: {example}", meaning)
    for field, value in there.items():
        if field not in notes.SHELF:
            yield from _field("  ", field, value, "")


def _field(lead: str, field: str, value: object, meaning: str) -> Iterator[str]:
    blocks = isinstance(value, list) and any(isinstance(entry, Mapping) for entry in value)
    nested = isinstance(value, Mapping) and any(isinstance(entry, Mapping) for entry in value.values())
    if blocks:
        yield _commented(f"{lead}{_word(field)}:", meaning)
        yield from (f"{' ' * len(lead)}  - {flow_text(entry)}" for entry in value)  # type: ignore[attr-defined]
    elif nested:
        yield _commented(f"{lead}{_word(field)}:", meaning)
        for name, entry in value.items():  # type: ignore[attr-defined]
            yield f"{' ' * len(lead)}  {_word(name)}: {flow_text(entry)}"
    else:
        yield _commented(lead + _line(field, value), meaning)


def _line(field: str, value: object) -> str:
    if isinstance(value, str) and _PLAIN_LINE.fullmatch(value) and value == value.strip():
        return f"{_word(field)}: {value}"
    return f"{_word(field)}: {flow_text(value)}"


def flow_text(value: object) -> str:
    """Return a value on one line, as it stands in the file."""
    if isinstance(value, Mapping):
        return "{" + ", ".join(f"{_word(name)}: {flow_text(entry)}" for name, entry in value.items()) + "}"
    if isinstance(value, list):
        return "[" + ", ".join(flow_text(entry) for entry in value) + "]"
    return _word(str(value))


def _word(text: str) -> str:
    """Return a text as YAML reads it back; what could be taken for something else is quoted."""
    if _PLAIN.fullmatch(text) and text == text.strip():
        return text
    # JSON writes what lies beyond four hexadecimal digits as a pair, which YAML does not take.
    letters = (each if ord(each) > LAST_OF_FOUR_DIGITS else json.dumps(each)[1:-1] for each in text)
    return f'"{"".join(letters)}"'


def _commented(line: str, meaning: str) -> str:
    """Return the line with its meaning beside it, or above where it is long; a list's dash stays in front."""
    if not meaning:
        return line
    if len(line) <= _COMMENT_COLUMN:
        return f"{line.ljust(_COMMENT_COLUMN)}  # {meaning}"
    indent = " " * (len(line) - len(line.lstrip()))
    return f"{indent}# {meaning}\n{line}"
