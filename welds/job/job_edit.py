"""Changing, adding and taking out entries of a job file without touching the rest, comments included."""

from collections.abc import Callable, Mapping
from pathlib import Path

import yaml

from welds.errors import FileUnavailableError, InputError
from welds.job import yaml_edit
from welds.job.yaml_edit import Value
from welds.language import mark, tr
from welds.reference.whole_file import write_whole

SECTIONS = ("pieces", "joints", "repairs", "steps", "stock")
LISTS = ("after", "covers", "open_for", "pieces", "coating", "log")
"""Fields that hold several names."""
_MEND = mark("a job file that can be read; welds job check says where it cannot")

Fields = Mapping[str, str]
"""What a person typed, by field; nothing typed means that the field is not there."""


def new_job(name: str, units: str, defaults: Fields) -> str:
    """Return the text of a job file with nothing in it yet."""
    given = ", ".join(f"{key}: {yaml_edit.written(value)}" for key, value in defaults.items() if value)
    lines = [
        f"job: {yaml_edit.written(name)}",
        f"units: {units}",
        *([f"defaults: {{{given}}}"] if given else []),
    ]
    return "\n".join(lines) + "\n"


def entries_in(text: str) -> dict[str, dict[str, dict[str, str]]]:
    """Return what each entry says, by section and id, as a person would type it."""
    try:
        top = yaml_edit.read(text)
    except (yaml.YAMLError, RecursionError, UnicodeEncodeError) as error:
        raise InputError(mark("job file"), tr("no YAML any more"), tr(_MEND)) from error
    found: dict[str, dict[str, dict[str, str]]] = {}
    for section in SECTIONS:
        found[section] = {}
        listed = top.get(section) if isinstance(top, dict) else None
        for entry in listed if isinstance(listed, list) else []:
            if isinstance(entry, dict) and isinstance(entry.get("id"), str):
                found[section][entry["id"]] = {key: _typed(value) for key, value in entry.items()}
    return found


def with_entry(text: str, section: str, key: str, fields: Fields) -> str:
    """Return the text with one entry saying just what `fields` say, added where there is none of that id."""
    wanted = {"id": key} | {name: value.strip() for name, value in fields.items() if value.strip()}
    before = entries_in(text)
    if key not in before[section]:
        new = yaml_edit.with_item(
            text, section, {name: _value(name, value) for name, value in wanted.items()}
        )
    else:
        new = text
        old = before[section][key]
        for name in dict.fromkeys((*old, *wanted)):
            if old.get(name) != wanted.get(name):
                value = _value(name, wanted[name]) if name in wanted else None
                new = yaml_edit.with_field(new, _entry(new, section, key), name, value)
    expected = {**before, section: {**before[section], key: wanted}}
    return _checked(new, expected)


def without_entry(text: str, section: str, key: str) -> str:
    """Return the text without one entry."""
    before = entries_in(text)
    nodes = yaml_edit.items(yaml_edit.field(yaml_edit.compose(text), section))
    place = next((n for n, node in enumerate(nodes) if _id_of(node) == key), None)
    if place is None:
        raise InputError(section, key, tr("an entry of this job"))
    kept = {name: value for name, value in before[section].items() if name != key}
    return _checked(yaml_edit.without_item(text, section, place), {**before, section: kept})


def with_holes(text: str, repair: str, holes: str) -> str:
    """Return the text of a job file with other holes in one repair."""
    fields = entries_in(text)["repairs"].get(repair)
    if fields is None or "holes" not in fields:
        raise InputError("repair", repair, tr("a repair of this job that has its holes written down"))
    return with_entry(text, "repairs", repair, {**fields, "holes": holes})


def write_job(path: Path, change: Callable[[str], str]) -> None:
    """Change a job file; as it was where anything fails."""
    try:
        # Line ends stay as they are, so that nothing but the change changes.
        text = change(path.read_bytes().decode("utf-8"))
    except UnicodeDecodeError as error:
        raise InputError(mark("job file"), path.name, tr("a UTF-8 text file")) from error
    except OSError as error:
        raise FileUnavailableError(str(path), error.strerror or str(error)) from error
    write_whole(path, text)


def _checked(text: str, expected: Mapping[str, Mapping[str, Fields]]) -> str:
    """Return the text if it says what was meant, entry by entry."""
    if entries_in(text) != expected:
        raise InputError(
            mark("job file"), tr("written in an unusual way"), tr("this change by hand, in a text editor")
        )
    return text


def _entry(text: str, section: str, key: str) -> yaml.MappingNode:
    for node in yaml_edit.items(yaml_edit.field(yaml_edit.compose(text), section)):
        if isinstance(node, yaml.MappingNode) and _id_of(node) == key:
            return node
    raise InputError(section, key, tr("an entry of this job"))


def _id_of(node: yaml.Node) -> object:
    return yaml_edit.plain(yaml_edit.field(node, "id"))


def _value(name: str, typed: str) -> Value:
    if name not in LISTS:
        return typed
    return [each.strip() for each in typed.split(",") if each.strip()]


def _typed(value: object) -> str:
    return ", ".join(str(each) for each in value) if isinstance(value, list) else str(value)
