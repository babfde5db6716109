"""YAML without its traps: every scalar stays the text that was typed, and no key may come twice.

Plain YAML turns `NO` into false, `1:30` into 90 and keeps the last of two equal keys in silence.
"""

from pathlib import Path

import yaml

from welds.errors import ReferenceDataError
from welds.language import tr
from welds.reference.text_file import read_text

DEEPEST = 50


class YamlMap(dict[str, object]):
    """A mapping that remembers on which line each key stood."""

    __slots__ = ("line_of",)

    def __init__(self) -> None:
        super().__init__()
        self.line_of: dict[str, int] = {}


class YamlList(list[object]):
    """A list that remembers on which line each entry stood."""

    __slots__ = ("lines",)

    def __init__(self) -> None:
        super().__init__()
        self.lines: list[int] = []


class _TextLoader(yaml.CSafeLoader):
    """Composes nodes only; with no resolvers every scalar is text."""


_TextLoader.yaml_implicit_resolvers = {}
_PLAIN_TAGS = {f"tag:yaml.org,2002:{kind}" for kind in ("str", "seq", "map")}


def read_yaml(path: Path, shown: str) -> YamlMap:
    """Return the file's top mapping, with mappings, lists and texts inside; messages call it `shown`."""
    return parse_yaml(read_text(path, shown), shown)


def parse_yaml(text: str, shown: str) -> YamlMap:
    """Return the top mapping of a text that is already read."""
    try:
        node = yaml.compose(text, Loader=_TextLoader)
        if not isinstance(node, yaml.MappingNode):
            raise ReferenceDataError(shown, tr("expected 'name: value' lines at the top"))
        value = _plain(node, shown, set())
    except yaml.MarkedYAMLError as error:
        line = error.problem_mark.line + 1 if error.problem_mark else None
        raise ReferenceDataError(
            shown, tr("not readable as YAML: {problem}", problem=error.problem), line
        ) from error
    except yaml.YAMLError as error:
        raise ReferenceDataError(
            shown, tr("not readable as YAML: {problem}", problem=str(error).splitlines()[0])
        ) from error
    except UnicodeEncodeError as error:  # half a character, as a broken name of a file has it
        raise ReferenceDataError(
            shown, tr("not readable as YAML: {problem}", problem=error.reason)
        ) from error
    except RecursionError as error:
        raise ReferenceDataError(shown, tr("not readable as YAML: nested too deeply")) from error
    assert isinstance(value, YamlMap)
    return value


def _plain(node: yaml.Node, shown: str, seen: set[int], depth: int = 0) -> object:
    line = node.start_mark.line + 1
    if depth > DEEPEST:
        raise ReferenceDataError(shown, tr("not readable as YAML: nested too deeply"), line)
    if node.tag not in _PLAIN_TAGS:
        raise ReferenceDataError(shown, tr("tags (!) are not used here"), line)
    if isinstance(node, yaml.ScalarNode):
        return str(node.value).strip()
    if id(node) in seen:
        raise ReferenceDataError(
            shown, tr("anchors and aliases (& and *) are not used here; write it out"), line
        )
    seen.add(id(node))
    if isinstance(node, yaml.SequenceNode):
        entries = YamlList()
        for item in node.value:
            entries.append(_plain(item, shown, seen, depth + 1))
            entries.lines.append(item.start_mark.line + 1)
        return entries
    assert isinstance(node, yaml.MappingNode)
    mapping = YamlMap()
    for key_node, value_node in node.value:
        line = key_node.start_mark.line + 1
        if not isinstance(key_node, yaml.ScalarNode):
            raise ReferenceDataError(shown, tr("a key must be a plain word"), line)
        key = str(key_node.value)
        if key in mapping:
            problem = tr("key {key!r} comes twice (first on line {line})", key=key, line=mapping.line_of[key])
            raise ReferenceDataError(shown, problem, line)
        mapping[key] = _plain(value_node, shown, seen, depth + 1)
        mapping.line_of[key] = line
    return mapping
