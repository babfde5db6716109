"""Changing entries of lists in a YAML text by cutting and inserting, so that the rest stays byte for byte."""

import re
from collections.abc import Mapping, Sequence

import yaml

_PLAIN = re.compile(r"[A-Za-z0-9](?:[A-Za-z0-9 ._/+-]*[A-Za-z0-9])?")

Value = str | Sequence[str]
"""What a field holds: words, or a list of them."""


def compose(text: str) -> yaml.Node | None:
    """Return the text's top node, every scalar as text; raises YAMLError."""
    return yaml.compose(text, Loader=yaml.BaseLoader)


def read(text: str) -> object:
    """Return the text's content as text, lists and dictionaries, without places in it: faster."""
    return plain(yaml.compose(text, Loader=yaml.CBaseLoader))


def plain(node: yaml.Node | None) -> object:
    """Return a node as text, lists and dictionaries."""
    if isinstance(node, yaml.MappingNode):
        return {key.value: plain(value) for key, value in node.value}
    if isinstance(node, yaml.SequenceNode):
        return [plain(each) for each in node.value]
    return node.value if isinstance(node, yaml.ScalarNode) else None


def field(node: yaml.Node | None, name: str) -> yaml.Node | None:
    """Return what a mapping holds under a name."""
    return next((value for key, value in _pairs(node) if key.value == name), None)


def items(node: yaml.Node | None) -> list[yaml.Node]:
    """Return the entries of a list."""
    return list(node.value) if isinstance(node, yaml.SequenceNode) else []


def with_field(text: str, entry: yaml.MappingNode, name: str, value: Value | None) -> str:
    """Return the text with one field of an entry changed, added, or taken out where `value` is None."""
    pairs = _pairs(entry)
    place = next((n for n, (key, _) in enumerate(pairs) if key.value == name), None)
    if place is None:
        return text if value is None else _with_new_field(text, entry, f"{name}: {written(value)}")
    key, old = pairs[place]
    if value is not None:
        start, end = old.start_mark.index, _end(text, old)
        blank = "" if text[start - 1 : start].isspace() else " "
        return f"{text[:start]}{blank}{written(value)}{text[end:]}"
    if entry.flow_style:
        return _without(text, [each.start_mark.index for each, _ in pairs], place, _end(text, pairs[-1][1]))
    start = _line_start(text, key.start_mark.index)
    after = pairs[place + 1][0].start_mark.index if place + 1 < len(pairs) else None
    end = _line_end(text, _end(text, old)) if after is None else _line_start(text, after)
    return text[:start] + text[end:]


def with_item(text: str, name: str, fields: Mapping[str, Value]) -> str:
    """Return the text with one more entry at the end of a list, which is begun where it is missing."""
    top = compose(text)
    listed = field(top, name)
    if isinstance(listed, yaml.SequenceNode) and listed.flow_style:
        inside = ", ".join(f"{key}: {written(value)}" for key, value in fields.items())
        end = listed.end_mark.index - 1
        comma = ", " if listed.value else ""
        head = text[:end].rstrip() if not text[:end].rstrip().endswith(",") else text[:end]
        return f"{head}{comma}{{{inside}}}{text[end:]}"
    if isinstance(listed, yaml.SequenceNode):
        end = _line_end(text, _end(text, listed))
        return _on_line(text, end, _block_item(fields, listed.start_mark.column))
    if listed is not None:
        end = _line_end(text, listed.start_mark.index)
        return _on_line(text, end, _block_item(fields, 2))
    return _on_line(text, len(text), [f"{name}:", *_block_item(fields, 2)])


def without_item(text: str, name: str, place: int) -> str:
    """Return the text without one entry of a list; without the list's name where it was the only one."""
    key, listed = next((key, value) for key, value in _pairs(compose(text)) if key.value == name)
    entries = items(listed)
    if isinstance(listed, yaml.CollectionNode) and listed.flow_style:
        return _without(text, [each.start_mark.index for each in entries], place, _end(text, entries[-1]))
    start = _line_start(text, entries[place].start_mark.index)
    if len(entries) == 1:
        start = _line_start(text, key.start_mark.index)
    return text[:start] + text[_line_end(text, _end(text, entries[place])) :]


def written(value: Value) -> str:
    """Return a value as it stands in YAML, quoted where it could be read as something else."""
    if not isinstance(value, str):
        return f"[{', '.join(written(each) for each in value)}]"
    if _PLAIN.fullmatch(value):
        return value
    return '"' + value.replace("\\", "\\\\").replace('"', '\\"').replace("\n", " ") + '"'


def _with_new_field(text: str, entry: yaml.MappingNode, line: str) -> str:
    last = _end(text, entry.value[-1][1])
    if entry.flow_style:
        return f"{text[:last]}, {line}{text[last:]}"
    indent = " " * entry.value[0][0].start_mark.column
    return _on_line(text, _line_end(text, last), [indent + line])


def _block_item(fields: Mapping[str, Value], column: int) -> list[str]:
    lines = [f"{key}: {written(value)}" for key, value in fields.items()]
    return [" " * column + ("- " if n == 0 else "  ") + line for n, line in enumerate(lines)]


def _on_line(text: str, at: int, lines: Sequence[str]) -> str:
    """Insert whole lines at the beginning of a line, with the line ends the text has."""
    end = "\r\n" if "\r\n" in text else "\n"
    gap = "" if at == 0 or text[at - 1] == "\n" else end
    return text[:at] + gap + "".join(line + end for line in lines) + text[at:]


def _without(text: str, starts: Sequence[int], place: int, last_end: int) -> str:
    """Cut one of the entries between brackets, with the comma that parted it from its neighbour."""
    if place + 1 < len(starts):
        return text[: starts[place]] + text[starts[place + 1] :]
    head = text[: starts[place]].rstrip()
    return head.removesuffix(",") + text[last_end:]


def _pairs(node: yaml.Node | None) -> list[tuple[yaml.ScalarNode, yaml.Node]]:
    return node.value if isinstance(node, yaml.MappingNode) else []


def _end(text: str, node: yaml.Node) -> int:
    """Return where a node's own text ends; a block's mark stands at the next thing after it."""
    if isinstance(node, yaml.CollectionNode) and not node.flow_style and node.value:
        last = node.value[-1]
        return _end(text, last[1] if isinstance(last, tuple) else last)
    start, end = node.start_mark.index, node.end_mark.index
    return start + len(text[start:end].rstrip())


def _line_start(text: str, at: int) -> int:
    return text.rfind("\n", 0, at) + 1


def _line_end(text: str, at: int) -> int:
    """Return where the next line begins."""
    found = text.find("\n", at)
    return len(text) if found < 0 else found + 1
