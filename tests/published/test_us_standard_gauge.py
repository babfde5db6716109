"""The sheet gauge that United States law prints, in full.

United States Code, Title 15, section 206, standard gauge for sheet and plate iron and steel (1893)
[USC15-206]: number of gauge, approximate thickness in fractions of an inch, weight per square foot in
ounces avoirdupois. Gauges 7/0 to 21 were read in the statute (the fractions of 7/0 to 2 noted down from
memory); the copy was cut off at 22, so the rest is from memory.
"""

from fractions import Fraction

import pytest

from welds.errors import InputError
from welds.reference.basis import Basis
from welds.reference.gauges import Gauge, gauge_thickness_mm, gauges_of

STATUTE = """
0000000 1/2      320
000000  15/32    300
00000   7/16     280
0000    13/32    260
000     3/8      240
00      11/32    220
0       5/16     200
1       9/32     180
2       17/64    170
3       1/4      160
4       15/64    150
5       7/32     140
6       13/64    130
7       3/16     120
8       11/64    110
9       5/32     100
10      9/64     90
11      1/8      80
12      7/64     70
13      3/32     60
14      5/64     50
15      9/128    45
16      1/16     40
17      9/160    36
18      1/20     32
19      7/160    28
20      3/80     24
21      11/320   22
22      1/32     20
23      9/320    18
24      1/40     16
25      7/320    14
26      3/160    12
27      11/640   11
28      1/64     10
29      9/640    9
30      1/80     8
31      7/640    7
32      13/1280  6.5
33      3/320    6
34      11/1280  5.5
35      5/640    5
36      9/1280   4.5
37      17/2560  4.25
38      1/160    4
"""
ROWS = [line.split() for line in STATUTE.split("\n") if line]
OUNCES_PER_SQUARE_FOOT_OF_ONE_INCH = 640  # 480 lb per cubic foot, the weight of wrought iron the law took


@pytest.mark.parametrize(("number", "fraction", "ounces"), ROWS)
def test_the_law_agrees_with_itself(number, fraction, ounces):
    assert Fraction(fraction) == Fraction(ounces) / OUNCES_PER_SQUARE_FOOT_OF_ONE_INCH


@pytest.mark.parametrize(
    ("number", "fraction"), [row[:2] for row in ROWS if len(row[0]) < 3 and row[0] != "00"]
)
def test_the_table_holds_what_the_law_prints(tables, number, fraction):
    thickness = float(Fraction(fraction)) * 25.4
    assert gauge_thickness_mm(tables, "USG", int(number)) == pytest.approx(
        thickness, abs=0.00006
    )  # 4 decimals
    by_number = {row["gauge"]: row for row in tables.table("gauges").rows if row["system"] == "USG"}
    row = by_number[int(number)]
    assert row["fraction"] == fraction
    assert row["thickness_in"] == pytest.approx(float(Fraction(fraction)), rel=1e-12)


def test_nothing_is_added_to_the_law(tables):
    assert {gauge.gauge for gauge in gauges_of(tables, "USG")} == set(range(39))
    with pytest.raises(InputError):
        gauge_thickness_mm(tables, "USG", 39)


def test_only_what_was_read_is_graded_printed(tables):
    grades = {row["gauge"]: row["basis"] for row in tables.table("gauges").rows if row["system"] == "USG"}
    assert {number for number, grade in grades.items() if grade is Basis.PRINTED} == set(range(3, 22))


def test_records_say_the_same_as_the_rows(tables):
    assert Gauge("USG", 16, 0.0625, 1.5875) in gauges_of(tables, "USG")
