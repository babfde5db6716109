"""The command line as a whole: commands, help, exit codes."""

import re

import pytest

from welds import __version__
from welds.cli.main import main, report_fault


def test_without_arguments_the_window_opens(welds, lent) -> None:
    assert welds().code == 0
    assert lent.windows == 1


@pytest.mark.parametrize("words", [("--log", "yard.db"), ("--log=yard.db",)])
def test_the_window_opens_on_another_log(welds, lent, words) -> None:
    assert welds(*words).code == 0
    assert lent.logs == ("yard.db",)


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("--log",), "one value"),
        (("--log", "mysql://shop/log"), "postgresql+psycopg://USER@HOST/DATABASE"),
        (("--log", "yard.db", "--units"), "--help lists them"),
    ],
)
def test_a_slip_in_the_log_is_said_before_the_window_opens(welds, lent, words, said) -> None:
    result = welds(*words)
    assert result.code == 2
    assert said in result.complaint
    assert lent.windows == 0


@pytest.mark.parametrize("word", ["--version", "version"])
def test_version(welds, word) -> None:
    program, tables = welds(word).out.splitlines()
    assert program == f"welds {__version__}"
    assert re.fullmatch(r"tables \d{4}-\d\d-\d\d, digest [0-9a-f]{12}", tables)


@pytest.mark.parametrize(
    "words", [("--help",), ("help",), ("card", "--help"), ("chart", "-h"), ("tables", "--help")]
)
def test_help_is_an_answer(welds, words) -> None:
    result = welds(*words)
    assert result.code == 0
    assert f"welds {words[0]}" in result.out or "welds card" in result.out
    assert result.err == ""


@pytest.mark.parametrize(
    ("word", "nearest"),
    [("crad", "card"), ("charts", "chart"), ("table", "tables"), ("--versoin", "--version")],
)
def test_unknown_command_gets_the_nearest(welds, word, nearest) -> None:
    result = welds(word)
    assert result.code == 2
    assert result.out == ""
    assert result.complaint.endswith(f"nearest: {nearest}")


def test_an_interrupted_command_leaves_quietly(capsys) -> None:
    def interrupted(_log, _lang) -> int:
        raise KeyboardInterrupt

    assert main([], open_window=interrupted, write_pdf=lambda *_: None) == 130
    assert capsys.readouterr().err == ""


def test_a_fault_of_ours_is_one_line_and_not_a_traceback(capsys) -> None:
    try:
        {}["no such rule"]
    except KeyError as fault:
        report_fault(type(fault), fault, fault.__traceback__)
    err = capsys.readouterr().err
    assert err.startswith("welds: a fault of the program itself")
    assert "KeyError: 'no such rule' at" in err
    assert err.count("\n") == 1
