"""Fillers by goal for single aluminium alloys, as a textbook prints them.

G. Mathers, The Welding of Aluminium and its Alloys, Woodhead Publishing 2002, table 3.3, p. 49 [MATHERS]:
for each parent alloy the filler for highest strength, best ductility, salt-water corrosion resistance,
least cracking tendency and colour match after anodising.
"""

import pytest

from welds.advice.request import Goal
from welds.reference.fillers import filler_choice
from welds.reference.metals import find_metal

GOALS = (Goal.STRENGTH, Goal.DUCTILITY, Goal.SALT_WATER, Goal.LEAST_CRACKING, Goal.ANODISED_COLOUR)
PRINTED = {
    "1100": "4043 1050 1050 4043 1100",
    "3103": "4043 1050 1050 4043 1050",
    "5052": "5356 5356 5554 5356 5356",
    "5083": "5183 5356 5183 5356 5356",
    "5086": "5356 5356 5183 5356 5356",
    "5454": "5356 5554 5554 5356 5554",
    "6061": "5356 5356 4043 4043 5654",
    "6063": "5356 5356 4043 4043 6356",
}
# 1050 is 99.5 % aluminium and no AWS class: the nearest, 1100, stands for it. 6356 is no class at all and can
# only be 5356. Both departures are told in the rows.
READ_AS = {"1050": "1100", "6356": "5356"}
CASES = [
    (alloy, goal, printed)
    for alloy, line in PRINTED.items()
    for goal, printed in zip(GOALS, line.split(), strict=True)
]


@pytest.mark.parametrize(("alloy", "goal", "printed"), CASES)
def test_the_answer_is_the_printed_one(tables, alloy, goal, printed):
    metal = find_metal(tables, alloy)  # 3103 answers as its near twin 3003
    choice = filler_choice(tables, metal, metal, goal)
    assert choice.first == "ER" + READ_AS.get(printed, printed)
    assert choice.sources == ("MATHERS",)
    if printed in READ_AS:
        assert printed in choice.note
        assert choice.basis == "derived"


def test_an_answer_is_graded_printed_only_for_the_alloy_in_the_table(tables):
    for alloy, goal, printed in CASES:
        metal = find_metal(tables, alloy)
        grade = filler_choice(tables, metal, metal, goal).basis
        is_as_printed = metal.id == alloy and printed not in READ_AS
        assert grade == ("printed" if is_as_printed else "derived"), (alloy, goal)
