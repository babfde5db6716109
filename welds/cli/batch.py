"""`welds card --batch`: one JSON request a line in, one card or error a line out, in order."""

import json
import sys
from collections.abc import Iterator
from typing import Any, NoReturn

from welds.cli.log_evidence import past_welds
from welds.cli.output import print_json
from welds.cli.session import Session
from welds.errors import (
    NOTHING,
    AmbiguousInputError,
    FileUnavailableError,
    InputError,
    NotCoveredError,
    WeldsError,
)
from welds.language import mark, tr

LINE = mark("line")
_WANTED = mark(
    'one JSON object, such as {"process": "tig", "metal": "5052", "thickness_mm": 2, "joint": "butt"}'
)

LONGEST_BYTES = 1_000_000


def run_batch(session: Session, log: str | None) -> None:
    """Answer every line of standard input; a bad line gets an error and the next one is read."""
    from welds.advice.advise import advise
    from welds.advice.validate import request_from_fields
    from welds.report.json_card import card_json

    with past_welds(log) as past:
        for line in _lines():
            try:
                request = request_from_fields(read_object(line), session.tables, session.asked_units)
                evidence = past(request, session.tables)
                answer = card_json(advise(request, session.tables, session.equipment, evidence))
            except WeldsError as error:
                answer = {"error": error_json(error), "exit": error.exit_code}
            print_json(answer, is_line=True)
            sys.stdout.flush()


def error_json(error: WeldsError) -> dict[str, Any]:
    """Return the error's parts, each under its name."""
    parts: dict[str, Any] = {"kind": "other", "message": str(error)}
    if isinstance(error, InputError):
        parts |= {
            "kind": "input",
            "field": error.field,
            "given": _shown(error.given),
            "allowed": error.allowed,
        }
        parts["nearest"] = error.nearest
    if isinstance(error, AmbiguousInputError):
        parts |= {"kind": "ambiguous", "readings": list(error.readings)}
    if isinstance(error, NotCoveredError):
        parts |= {
            "kind": "not-covered",
            "asked": error.asked,
            "reason": error.reason,
            "nearest": error.nearest,
        }
    return parts


def read_object(line: bytes) -> dict[str, object]:
    """Return the JSON object on the line; refuses a repeated key and numbers that are none."""
    if len(line) > LONGEST_BYTES:
        raise InputError(
            LINE, tr("more than {longest_bytes} MB", longest_bytes=LONGEST_BYTES // 1000000), _WANTED
        )
    try:
        text = line.decode("utf-8")
    except UnicodeDecodeError as error:
        raise InputError(
            LINE, tr("a byte that is not UTF-8 (byte {place})", place=error.start + 1), _WANTED
        ) from error
    if not text.strip():
        raise InputError(LINE, NOTHING, tr(_WANTED))
    try:
        value = json.loads(text, object_pairs_hook=_once, parse_constant=_no_constant)
    except RecursionError as error:
        raise InputError(LINE, tr("JSON nested too deeply"), tr(_WANTED)) from error
    except ValueError as error:
        raise InputError(LINE, tr("not JSON ({error})", error=error), tr(_WANTED)) from error
    if not isinstance(value, dict):
        raise InputError(LINE, _shown(value), tr(_WANTED))
    return value


def _lines() -> Iterator[bytes]:
    if sys.stdin is None:
        raise FileUnavailableError(tr("standard input"), tr("is closed"))
    try:
        while line := sys.stdin.buffer.readline(LONGEST_BYTES + 1):
            yield line.removesuffix(b"\n").removesuffix(b"\r")
            while len(line) > LONGEST_BYTES and not line.endswith(b"\n"):  # the rest of one that is too long
                line = sys.stdin.buffer.readline(LONGEST_BYTES + 1)
    except OSError as error:
        raise FileUnavailableError(tr("standard input"), error.strerror or str(error)) from error


def _once(pairs: list[tuple[str, object]]) -> dict[str, object]:
    found: dict[str, object] = {}
    for key, value in pairs:
        if key in found:
            raise InputError(key, tr("the same key twice"), tr("each key once"))
        found[key] = value
    return found


def _no_constant(name: str) -> NoReturn:
    raise InputError(LINE, name, tr("finite numbers"))


def _shown(value: object) -> str:
    return f"{value!s:.80}"
