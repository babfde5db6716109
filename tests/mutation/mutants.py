"""Every mutant the operators make of a module, and which of them can change nothing."""

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from cosmic_ray.ast import ast_nodes, get_ast
from cosmic_ray.mutating import mutate_code
from cosmic_ray.operators.provider import OperatorProvider
from parso.tree import NodeOrLeaf

ROOT = Path(__file__).parents[2]

OPERATORS = {name: make for name in OperatorProvider() if not (make := OperatorProvider()[name]).arguments()}
"""All that need no arguments."""

FAMILIES = {
    "ReplaceBinaryOperator": ("operator",),
    "ReplaceComparisonOperator": ("comparison",),
    "ReplaceUnaryOperator": ("factor", "not_test"),
}
"""Nodes on which the operators of a large family can do anything; asking all of all nodes takes minutes."""

SAME_ON_ENUMS = ("ReplaceComparisonOperator_Is_Eq", "ReplaceComparisonOperator_IsNot_NotEq")
FLAGS = ("ReplaceTrueWithFalse", "ReplaceFalseWithTrue", "NumberReplacer")
BITS = ("RShift", "LShift", "BitOr", "BitAnd", "BitXor")


@dataclass(frozen=True)
class Mutant:
    """One change of one module; `harmless` says why it can change no answer, where it cannot."""

    module: str
    operator: str
    occurrence: int
    line: int
    harmless: str = ""

    @property
    def key(self) -> str:
        """The name under which its outcome is kept."""
        return f"{self.module} {self.operator} {self.occurrence}"

    @property
    def puts_bits(self) -> bool:
        """Whether arithmetic becomes a bit operation, on which nearly any run with fractions fails."""
        return self.operator.startswith("ReplaceBinaryOperator") and self.operator.endswith(BITS)

    def text(self) -> str:
        """Return the module's changed text."""
        source = (ROOT / self.module).read_text(encoding="utf-8")
        return mutate_code(source, OPERATORS[self.operator](), self.occurrence)


def mutants_of(module: str) -> Iterator[Mutant]:
    """Yield all mutants of a module, named by its path in the checkout."""
    nodes = list(ast_nodes(get_ast((ROOT / module).read_text(encoding="utf-8"))))
    for name, make in OPERATORS.items():
        types = next((types for family, types in FAMILIES.items() if name.startswith(family)), None)
        operator = make()
        places = (
            (node, start)
            for node in nodes
            if types is None or node.type in types
            for start, _ in operator.mutation_positions(node)
        )
        for occurrence, (node, (line, _)) in enumerate(places):
            yield Mutant(module, name, occurrence, line, _why_harmless(name, node))


def _why_harmless(operator: str, node: NodeOrLeaf) -> str:
    if operator in SAME_ON_ENUMS:
        return "`is` as `==`: what is compared so are members of enumerations and booleans"
    if node.type == "decorator" and node.get_code().strip().startswith(("@cache\n", "@lru_cache")):
        return "a cache taken off: the same answers, later"
    if node.type == "operator" and node.parent.type in ("parameters", "lambdef"):
        return "the mark of keyword-only arguments"
    child, parent = node, node.parent
    while parent is not None:
        if parent.type == "tfpdef" or (parent.type == "annassign" and parent.children[1] is child):
            return "an annotation"
        if parent.type == "funcdef" and child.get_previous_sibling() == "->":
            return "an annotation"
        if parent.type == "decorator" and operator in FLAGS:
            return "frozen, slots or the size of a cache"
        child, parent = parent, parent.parent
    return ""
