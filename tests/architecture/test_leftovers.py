"""Nothing is left over: what is defined is used by the program, and nothing of size is written twice."""

import ast
from collections import Counter, defaultdict
from collections.abc import Iterator
from pathlib import Path

WELDS = Path(__file__).parents[2] / "welds"
MODULES = {
    path.relative_to(WELDS): ast.parse(path.read_text(encoding="utf-8")) for path in WELDS.rglob("*.py")
}

FORMULAS = Path("physics")
"""A formula may wait for its first user: it stands there with its source and its published example."""

MEASURES = {
    "is_settled",  # the heat page's tests wait for it
    "is_standing",  # cautions that hold for every request
    "measured_angles",  # a folded part is measured again
    "measured_legs",
    "contrast",  # of the colours on screen
    "text_pairs",
    "prose_of_data",  # packaging/languages.py hands it to the translators
}
"""What only tests and packaging call, because it looks at the program from outside."""

LIKE = 5
"""Statements that two functions may not share word for word."""


def test_everything_defined_is_used_by_the_program():
    used: Counter[str] = Counter()
    for tree in MODULES.values():
        for node in ast.walk(tree):
            if isinstance(node, ast.Name):
                used[node.id] += 1
            elif isinstance(node, ast.Attribute):
                used[node.attr] += 1
            elif isinstance(node, ast.alias):
                used[node.name] += 1
    unused = {f"{path}: {name}" for path, name in definitions() if not used[name] and name not in MEASURES}
    assert unused == set()
    assert {name for _path, name in definitions()} >= MEASURES


def test_no_function_is_written_twice():
    found = defaultdict(list)
    for path, tree in MODULES.items():
        for node in ast.walk(tree):
            if isinstance(node, ast.FunctionDef) and statements(node) >= LIKE:
                found["".join(ast.dump(each) for each in without_docstring(node))].append(
                    f"{path}: {node.name}"
                )
    assert len(found) > 100
    assert [places for places in found.values() if len(places) > 1] == []


def definitions() -> Iterator[tuple[Path, str]]:
    """Yield functions, classes and methods in our own spelling, undecorated by a registry."""
    for path, tree in MODULES.items():
        if FORMULAS in path.parents:
            continue
        for node in ast.walk(tree):
            if isinstance(node, ast.FunctionDef | ast.ClassDef):
                is_ours = isinstance(node, ast.ClassDef) or node.name == node.name.lower()
                if is_ours and not node.name.startswith("__") and node.name not in MIGRATION:
                    yield path, node.name


MIGRATION = {"upgrade", "downgrade"}
"""Called by the tool that runs migrations."""


def without_docstring(function: ast.FunctionDef) -> list[ast.stmt]:
    """Return the body below the docstring."""
    return function.body[ast.get_docstring(function) is not None :]


def statements(function: ast.FunctionDef) -> int:
    """Return how many statements the body has, at any depth."""
    return sum(isinstance(node, ast.stmt) for each in without_docstring(function) for node in ast.walk(each))
