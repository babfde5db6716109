"""Changing one value in a job file without touching the rest, comments included."""

from pathlib import Path

import yaml

from welds.errors import FileUnavailableError, InputError


def with_holes(text: str, repair: str, holes: str) -> str:
    """Return the text of a job file with other holes in one repair."""
    try:
        place = _holes_of(yaml.compose(text, Loader=yaml.SafeLoader), repair)
    except yaml.YAMLError as error:
        raise InputError("job file", "no YAML any more", "mend it; welds job check says where") from error
    if place is None:
        raise InputError("repair", repair, "a repair of this job that has its holes written down")
    return f'{text[: place.start_mark.index]}"{holes}"{text[place.end_mark.index :]}'


def write_holes(path: Path, repair: str, holes: str) -> None:
    """Write other holes into one repair of a job file."""
    try:
        # Line ends stay as they are, so that nothing but the holes changes.
        changed = with_holes(path.read_bytes().decode("utf-8"), repair, holes)
        path.write_bytes(changed.encode("utf-8"))
    except UnicodeDecodeError as error:
        raise InputError("job file", path.name, "a UTF-8 text file") from error
    except OSError as error:
        raise FileUnavailableError(str(path), error.strerror or str(error)) from error


def _holes_of(top: yaml.Node | None, repair: str) -> yaml.ScalarNode | None:
    for entry in _sequence(_field(top, "repairs")):
        name, holes = _field(entry, "id"), _field(entry, "holes")
        if isinstance(name, yaml.ScalarNode) and name.value == repair and isinstance(holes, yaml.ScalarNode):
            return holes
    return None


def _field(node: yaml.Node | None, name: str) -> yaml.Node | None:
    pairs = node.value if isinstance(node, yaml.MappingNode) else []
    return next((value for key, value in pairs if key.value == name), None)


def _sequence(node: yaml.Node | None) -> list[yaml.Node]:
    return list(node.value) if isinstance(node, yaml.SequenceNode) else []
