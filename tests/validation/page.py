"""VALIDATION.md: what the advice was compared with, how far off it is, what it rests on, where it ends.

python -m tests.validation.page        writes the page anew
"""

from collections import Counter
from collections.abc import Iterable, Sequence
from itertools import groupby
from pathlib import Path

from tests.published.schedule_scores import Score, left_out_scores, scores, shown_scores, summary
from tests.validation.coverage_map import Asked, coverage_map
from tests.validation.documents import Document, documents, published
from tests.validation.groups import by, table, thickness_class
from tests.validation.heat_scores import QUESTIONS, HeatScores, heat_scores, share
from tests.validation.map_section import coverage_section, settings_section
from welds.reference.load import load_tables
from welds.reference.tables import Tables

PAGE = Path(__file__).parents[2] / "VALIDATION.md"
HEAD = """\
# Validation

What the advice was compared with, how far off it is, what it rests on, and where it ends. Written by
`python -m tests.validation.page`; a test fails when the page is not what that would write. A row's error is
the distance of its middle from our start, as a share of our start; it meets the band where its range and
ours share a value. *Left out* means that the row's whole document was kept out of everything that predicts
it. `welds tables sources ID` prints a document's citation, how much of it was read, its address and what
rests on it.
"""


def page(tables: Tables) -> str:
    """Return the whole page; a minute of work."""
    pooled, left_out = scores(tables), left_out_scores(tables)
    voltage = scores(tables, "voltage")
    heat = heat_scores(tables)
    asked = tables.derived(coverage_map)
    parts = (
        HEAD,
        _bars(pooled, left_out, voltage, heat),
        _schedules(pooled, left_out, voltage),
        _shown(tables),
        _heat(heat),
        _published(tables),
        _documents(documents(tables, pooled, left_out)),
        settings_section(asked),
        coverage_section(asked),
        _not_covered(tables, asked, pooled),
    )
    return "\n".join(parts)


def _bars(
    pooled: Sequence[Score], left_out: Sequence[Score], voltage: Sequence[Score], heat: HeatScores
) -> str:
    rows = []

    def bar(what: str, value: float, most: float | None = None, least: float | None = None) -> None:
        is_met = value <= most if most is not None else value >= (least or 0.0)
        limit = f"at most {most:.0%}" if most is not None else f"at least {least:.0%}"
        rows.append((what, f"{value:.1%}", limit, "met" if is_met else "**missed**"))

    for name, found, most in (
        ("current, pooled rows", pooled, (0.08, 0.20, 0.97)),
        ("current, document left out", left_out, (0.15, None, 0.90)),
        ("MIG voltage, pooled rows", voltage, (0.06, 0.15, 0.90)),
    ):
        middle, ninth, overlap = summary(found)
        bar(f"{name}: median error of {len(found)}", middle, most=most[0])
        if most[1] is not None:
            bar(f"{name}: nine rows in ten within", ninth, most=most[1])
        bar(f"{name}: rows that meet the band", overlap, least=most[2])
    widest = max(score.half_width for score in pooled if score.is_published)
    bar("current, widest half band where published rows cover", widest, most=0.20)
    for name, answers in (
        ("heat, rows fitted on", heat.seen),
        ("heat, every tenth row left out", heat.without_a_tenth),
        ("heat, document left out", heat.without_its_document),
    ):
        for question, (words, least) in HEAT_BARS.items():
            bar(f"{name}: {words}", share(answers.values(), question), least=least)
    return "\n".join(["## Against the bars", "", table(("what", ":measured", "bar", ""), rows), ""])


HEAT_HEAD = (":through", ":holds", ":half cold", ":double falls")
HEAT_BARS = {
    "through": ("melts through, 1 to 4 t wide", 0.85),
    "half": ("half the current stays cold", 0.90),
    "double": ("twice the current falls out", 0.90),
}


def _schedules(pooled: Sequence[Score], left_out: Sequence[Score], voltage: Sequence[Score]) -> str:
    both = (pooled, left_out)
    parts = ["## Current against the schedules", ""]
    for words, head, key in (
        ("By process and metal", ("process", "metal"), lambda s: (s.process, s.metal)),
        ("By thickness", ("process", "thickness"), lambda s: (s.process, *thickness_class(s))),
        ("By joint", ("process", "joint"), lambda s: (s.process, s.joint)),
        ("By position", ("process", "position"), lambda s: (s.process, s.position)),
        (
            "By document, metal and joint",
            ("process", "document", "metal", "joint"),
            lambda s: (s.process, s.document, s.metal, s.joint),
        ),
    ):
        parts += [f"### {words}", "", by(head, key, *both), ""]
    parts += ["## MIG voltage against the schedules", ""]
    head = ("document", "metal", "joint")
    return "\n".join([*parts, by(head, lambda s: (s.document, s.metal, s.joint), voltage), ""])


def _shown(tables: Tables) -> str:
    shown, unasked = shown_scores(tables)
    documents_of = {
        str(row["row_id"]): str(row["source_id"])
        for name in ("tig_schedules", "mig_schedules")
        for row in tables.table(name).rows
    }
    rows = [
        (
            score.row_id,
            score.document,
            f"off by {score.error:.0%}, {'meets' if score.overlaps else 'misses'} the band",
        )
        for score in shown
    ]
    rows += [
        (name, documents_of[name], words) for name, _, words in (text.partition(": ") for text in unasked)
    ]
    about = "They stand alone or far from all others; the card shows them and does not lean on them."
    return "\n".join(
        [
            "## Rows that are shown and not pooled",
            "",
            about,
            "",
            table(("row", "document", "asked"), rows),
            "",
        ]
    )


def _heat(heat: HeatScores) -> str:
    parts = [
        "## Heat model against single-pass butt rows",
        "",
        "Share of rows that melt through 1 to 4 thicknesses wide, that hold, that stay cold at half and fall",
        "out at twice their current: by constants fitted to all rows, and to all but the row's own document.",
        "",
    ]
    for words, key in (
        ("document", lambda row: row.document),
        ("metal", lambda row: row.family),
        ("thickness", lambda row: "below 2 mm" if row.thickness_mm < 2.0 else "from 2 mm"),
    ):
        lines = []
        for name, rows in groupby(sorted(heat.rows, key=key), key=key):
            ids = [row.row_id for row in rows]
            cells = [
                f"{share([answers[each] for each in ids], question):.0%}"
                for answers in (heat.seen, heat.without_its_document)
                for question in QUESTIONS
            ]
            lines.append((name, len(ids), *cells))
        head = (words, ":rows", *HEAT_HEAD, f":left out: {HEAT_HEAD[0].removeprefix(':')}", *HEAT_HEAD[1:])
        parts += [table(head, lines), ""]
    return "\n".join(parts)


def _published(tables: Tables) -> str:
    rows = [
        (f"[{each.name}](tests/published/{each.name})", each.about, ", ".join(each.documents), each.checks)
        for each in published(tables)
    ]
    return "\n".join(
        [
            "## Worked examples, printed tables and other tools",
            "",
            "Each module states its own tolerance, from the digits that are printed.",
            "",
            table(("module", "what", "documents", ":checks"), rows),
            "",
        ]
    )


def _documents(found: Iterable[Document]) -> str:
    kinds: dict[str, list[Document]] = {kind: [] for kind in KINDS}
    unused = []
    for each in found:
        if not each.rests and not each.compared:
            unused.append(each.id)
        elif not each.is_read:
            kinds["memory"].append(each)
        else:
            kinds["compared" if each.compared else "alone"].append(each)
    parts = ["## Every document", ""]
    for kind, words in KINDS.items():
        rows = [(each.id, each.read, "; ".join(each.rests), "; ".join(each.compared)) for each in kinds[kind]]
        head = ("document", "how it was read", "what rests on it", "what it is compared with")
        parts += [f"### {words} ({len(rows)})", "", table(head, rows), ""]
    parts += [f"### Listed, and behind no figure ({len(unused)})", "", ", ".join(unused) + ".", ""]
    return "\n".join(parts)


KINDS = {
    "compared": "Read, and compared with",
    "alone": "Read and used; nothing independent to compare with",
    "memory": "Not read: from memory, practice or our own definition",
}


def _not_covered(tables: Tables, asked: Sequence[Asked], pooled: Sequence[Score]) -> str:
    rows_of = Counter((score.process, score.metal, score.joint) for score in pooled)
    family = {str(row["id"]): str(row["family"]) for row in tables.table("metals").rows}
    answered = {
        (each.request.process.value, family[each.request.metal], each.request.joint.value)
        for each in asked
        if each.refusal is None
    }
    lines = []
    for process, cases in groupby(sorted(answered - set(rows_of)), key=lambda case: case[0]):
        for metal, joints in groupby(cases, key=lambda case: case[1]):
            lines.append((process, metal, ", ".join(joint for _process, _metal, joint in joints)))
    return "\n".join(
        [
            "## What is not covered",
            "",
            "Answered without a schedule row of that joint, by a factor on the butt or by the rows of seams:",
            "",
            table(("process", "metal", "joints"), lines),
            "",
            *(f"- {line}" for line in NOT_COMPARED),
            "",
        ]
    )


NOT_COMPARED = (
    "Other positions than those above are moved by `position_factors`, which no schedule row checks.",
    "Travel, gas flow, tungsten, cup, filler diameter: their rows are used as they are; none was left out.",
    "Bead shape: no measured width and depth with all conditions was found; the heat model is held against"
    " rows that melted through and did not fall out.",
    "No weld was made for this page. What a bench's own welds say is on its cards, not here.",
    "The holes of the tables themselves are listed in DEVELOPERS.md, *Known holes in the tables*.",
)


if __name__ == "__main__":
    PAGE.write_text(page(load_tables()), encoding="utf-8")
