"""The translators' files: complete, and true to the English in fields, figures, tags and keyboard letters."""

import ast
import re
import shutil
import subprocess
import sys
from collections import Counter
from functools import cache
from pathlib import Path
from xml.etree import ElementTree

import pytest

from welds import language
from welds.reference.prose import prose_of_data

ROOT = Path(__file__).resolve().parents[2]
LANGUAGES = sorted(set(language.NAMES) - {language.ENGLISH})
FIELD = re.compile(r"\{[^{}]*(?:\{[^{}]*\}[^{}]*)*\}")
TAG = re.compile(r"<[^<>]+>")
NUMBER = re.compile(r"\d+(?:[.,]\d+)*")
LETTER = re.compile(r"&(?=\w)(?![a-z]+;)")


def messages(file: Path) -> list[ElementTree.Element]:
    return list(ElementTree.parse(file).getroot().iter("message"))


def pairs(code: str) -> list[tuple[str, str]]:
    return list(language.read_catalogue(code).items())


@cache
def all_that_is_said() -> frozenset[str]:
    """Return every literal handed to tr, mark or Qt's own tr in the program, and the tables' words."""
    found = set()
    for file in (ROOT / "welds").rglob("*.py"):
        for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and node.args:
                called = (
                    node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")
                )
                first = node.args[0]
                if (
                    called in ("tr", "mark")
                    and isinstance(first, ast.Constant)
                    and isinstance(first.value, str)
                ):
                    found.add(first.value)
    return frozenset(found - {""}) | frozenset(prose_of_data())


@pytest.mark.parametrize("code", LANGUAGES)
def test_everything_said_has_a_finished_translation(code):
    assert all_that_is_said() - set(language.read_catalogue(code)) == set()


@pytest.mark.parametrize("code", LANGUAGES)
def test_nothing_stands_there_that_is_not_said_any_more(code):
    stands = {message.findtext("source") for message in messages(language.catalogue_file(code))}
    assert stands - all_that_is_said() == set()


@pytest.mark.parametrize("code", LANGUAGES)
def test_fields_and_tags_are_kept(code):
    changed = [
        (text, said)
        for text, said in pairs(code)
        if Counter(FIELD.findall(text)) != Counter(FIELD.findall(said))
        or Counter(TAG.findall(text)) != Counter(TAG.findall(said))
    ]
    assert changed == []


@pytest.mark.parametrize("code", LANGUAGES)
def test_no_figure_is_lost(code):
    """A figure may be written with a comma, never dropped: in a caution it is what saves a hand."""

    def figures(text: str) -> set[str]:
        return {number.replace(",", ".") for number in NUMBER.findall(FIELD.sub("", text))}

    assert [(text, said) for text, said in pairs(code) if not figures(text) <= figures(said)] == []


@pytest.mark.parametrize("code", LANGUAGES)
def test_what_has_a_keyboard_letter_keeps_one(code):
    changed = [
        (text, said) for text, said in pairs(code) if len(LETTER.findall(text)) != len(LETTER.findall(said))
    ]
    assert changed == []


@pytest.mark.parametrize("code", LANGUAGES)
def test_a_text_has_one_translation_wherever_it_stands(code):
    said: dict[str, set[str | None]] = {}
    for message in messages(language.catalogue_file(code)):
        said.setdefault(message.findtext("source", ""), set()).add(message.findtext("translation"))
    assert {text: each for text, each in said.items() if len(each) > 1} == {}


def test_the_tool_finds_nothing_new(tmp_path):
    """Qt's lupdate, over a copy: every text is there already, none is unfinished."""
    shutil.copytree(language.catalogue_file("de").parent, tmp_path / "languages")
    tool = ROOT / "packaging" / "languages.py"
    subprocess.run([sys.executable, str(tool), str(tmp_path / "languages")], check=True, timeout=120)
    for code in LANGUAGES:
        renewed = messages(tmp_path / "languages" / f"{code}.ts")
        unfinished = [
            each.findtext("source")
            for each in renewed
            if each.find("translation").get("type") == "unfinished"
        ]
        assert unfinished == []
        assert len(renewed) == len(messages(language.catalogue_file(code)))
