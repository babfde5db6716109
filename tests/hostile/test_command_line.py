"""Whatever is typed: an answer or one clear line, the right exit code, nothing written where nobody asked."""

import io
import json
import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.hostile.cases import cases
from tests.hostile.words import BASES, ODD, REQUEST, anything, command_lines
from welds.cli.main import COMMANDS

CODES = {0, 2, 3, 4}
LISTS_FAULTS = re.compile(r"(tables|bench) check|job check|log import")
"""Commands whose answer is the list of what is wrong, one line a fault."""
SHARE = {name: 0.02 if name in ("chart", "job") else 0.06 for name in BASES} | {"log": 0.1, "card": 0.1}
SLOW = {"chart": 8, "job": 8, "log": 25}

LONG = "a number of 5000 digits"
numbers = st.one_of(
    st.integers(), st.floats(), st.sampled_from((0, -1, 10**400, 1e308, 5e-324, True, 2, 2.03))
)
values = st.recursive(
    st.one_of(st.none(), st.booleans(), numbers, anything, st.just(LONG)),
    lambda inner: st.one_of(st.lists(inner, max_size=3), st.dictionaries(anything, inner, max_size=3)),
    max_leaves=5,
)


@st.composite
def requests(draw) -> bytes:
    """Draw a line of a batch: a request with some fields bent, or no JSON at all."""
    fields = {"process": "tig", "metal": "5052", "thickness_mm": 2, "joint": "butt"}
    for _ in range(draw(st.integers(0, 3))):
        name = draw(st.one_of(st.sampled_from((*REQUEST, "thickness_mm", "gap_mm", "length_mm")), anything))
        fields[name] = draw(st.one_of(st.sampled_from(REQUEST.get(name, ODD)), values))
    whole = json.dumps(fields).replace(f'"{LONG}"', "9" * 5000).encode()
    cut = draw(st.integers(0, len(whole)))
    return draw(
        st.sampled_from((whole, whole, whole, whole[:cut], b"\xff" + whole, b"[" * 5000, whole + whole))
    )


stdins = st.one_of(st.lists(requests(), max_size=4).map(b"\n".join), st.binary(max_size=30))


@pytest.fixture(scope="module")
def options(_one_box) -> dict[str, dict[str, str]]:
    """Return every command's options with what they take, as its own help lists them."""
    found = {}
    for base in (base for bases in BASES.values() for base in bases):
        command, *action = base.split()[:2]
        words = [command, *(action if command in ("log", "job") else [])]
        text = _one_box.run([*words, "--help"]).out
        pairs = re.findall(r"^  (--[a-z-]+)(?: ?\[?([A-Z][A-Z_=|-]*))?", text, re.MULTILINE)
        found[" ".join(words)] = dict(pairs)
    return found


def test_every_command_has_a_base_to_bend(options):
    assert {words.split()[0] for words in options} >= set(COMMANDS)
    assert all(
        "--json" in options[words]
        for words in options
        if words != "job demo" and words.split()[0] in COMMANDS
    )
    assert options["blank"]["--test-bend"] == "TEST-BEND"


@pytest.mark.parametrize("name", BASES)
def test_an_answer_or_one_clear_line(box, options, name):
    @cases(SLOW.get(name, 20), SHARE[name])
    @given(command_lines(name, options), stdins)
    def holds(words, stdin):
        box.fresh()
        answer = box.run(words, stdin)
        said = answer.err.splitlines()
        assert answer.code in CODES
        assert "Traceback" not in answer.err
        if answer.code and not LISTS_FAULTS.match(" ".join(words)):
            assert len(said) == 1, said
            assert said[0].startswith("welds: ")
        assert box.strays(answer, words) == []

    holds()


@cases(20, 0.2)
@given(st.lists(requests(), min_size=1, max_size=6))
def test_a_batch_answers_every_line(box, lines):
    answer = box.run(["card", "--batch"], b"\n".join(lines))
    assert (answer.code, answer.err) == (0, "")
    answers = [json.loads(line) for line in answer.out.splitlines()]
    assert len(answers) == len(list(io.BytesIO(b"\n".join(lines))))
    for each in answers:
        assert ("settings" in each) != (each.get("exit") in (2, 3))
