"""A preliminary procedure sheet of one logged weld: the headings of ISO 15609-1, filled as far as known.

What the log does not hold stays an empty line to be written on. The sheet is no qualified procedure and says
so on top.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from html import escape

from welds.advice.request import Process
from welds.language import code, figure, mark, tr
from welds.logbook.entry import Entry
from welds.logbook.settings import build_kinds
from welds.quantities.display import show
from welds.quantities.units import Units
from welds.reference.faults import imperfection_words
from welds.reference.metals import Metal, find_metal
from welds.reference.tables import Tables
from welds.report.wording import joint_name, outcome_words, value_words

STANDING = mark(
    "Preliminary: what was done once, not a qualified procedure. Where a code, a customer or safety asks for"
    " a qualified one, it has to be qualified by test under the rules that apply."
)
BLANK = "_" * 24
_SAME_EVERYWHERE = frozenset({"A", "V", "Hz", "percent", "s"})


@dataclass(frozen=True, slots=True)
class ProcedureSheet:
    """A name for its file, title, fields in order (empty where not known) and the page in HTML."""

    name: str
    title: str
    fields: tuple[tuple[str, str], ...]
    html: str

    @property
    def text(self) -> str:
        """The sheet as plain text, what it is not on top."""
        return "\n".join([self.title, tr(STANDING), *(f"{name}: {value}" for name, value in self.fields)])


def procedure_sheet(entry: Entry, tables: Tables, units: Units) -> ProcedureSheet:
    """Return the sheet of an entry."""
    which = entry.number or entry.uid[:8]
    title = tr("Preliminary welding procedure specification, log entry {which}", which=which)
    groups = tuple(_groups(entry, tables, units))
    fields = tuple(field for _, group in groups for field in group)
    return ProcedureSheet(f"procedure-sheet-log-{which}", title, fields, _page(title, groups))


def _groups(entry: Entry, tables: Tables, units: Units) -> Iterator[tuple[str, tuple[tuple[str, str], ...]]]:
    figures = _Figures(entry, tables, units)
    names = [name for name in (entry.metal, entry.other_metal) if name]
    metals = [find_metal(tables, name) for name in names]
    yield (
        tr("General"),
        (
            (tr("Manufacturer"), ""),
            (tr("Number of this specification"), tr("log {entry}", entry=entry.number or entry.uid)),
            (tr("Welding procedure qualification record"), tr("none: preliminary")),
            (tr("Date"), entry.made_at[:10]),
            (tr("Welder"), entry.welder),
        ),
    )
    yield (
        tr("Parent metal"),
        (
            (tr("Designation"), _joined(list(dict.fromkeys(map(_designation, names, metals))))),
            (tr("Group (ISO/TR 15608)"), ""),
            (tr("Heat or lot"), entry.material_lot),
            (tr("Thickness"), figures.length(entry.thickness_mm)),
            (tr("Thickness, other piece"), figures.length(entry.other_thickness_mm)),
            (tr("Outside diameter"), ""),
        ),
    )
    yield (
        tr("Joint"),
        (
            (tr("Welding process (ISO 4063)"), _process(entry)),
            (tr("Type of joint and weld"), joint_name(entry.joint)),
            (tr("Welding position (ISO 6947)"), entry.position),
            (tr("Preparation, edges and gap"), figures.gap()),
            (tr("Method of preparation and cleaning"), ""),
            (tr("Jigging, tack welds"), figures.of("tacks")),
            (tr("Runs"), figures.of("passes")),
            (tr("Back gouging, backing"), figures.of("backing")),
        ),
    )
    is_mig = entry.process is Process.MIG
    yield (
        tr("Filler and gas"),
        (
            (tr("Filler, designation"), figures.of("wire" if is_mig else "filler_metal")),
            (tr("Filler, size"), figures.of("wire_diameter" if is_mig else "filler_diameter")),
            (tr("Filler, maker and lot, handling"), ""),
            (tr("Shielding gas (ISO 14175)"), figures.of("shielding_gas")),
            (tr("Shielding gas flow"), figures.of("gas_flow")),
            (tr("Backing gas"), ""),
        ),
    )
    yield (
        tr("Electrical"),
        (
            (
                tr("Current and polarity"),
                " ".join(filter(None, (figures.of("current"), figures.of("polarity")))),
            ),
            (tr("Arc voltage"), figures.of("voltage") or figures.of("arc_voltage")),
            (tr("Balance, frequency, pulse"), figures.several("electrode_negative", "ac_frequency", "pulse")),
            (tr("Wire feed speed"), figures.of("wire_feed")),
            (tr("Mode of metal transfer"), figures.of("transfer")),
            (tr("Tungsten electrode, type and size"), figures.several("tungsten_type", "tungsten_diameter")),
            (tr("Nozzle"), figures.of("cup")),
            (tr("Contact tip to work, stick-out"), figures.of("tip_to_work") or figures.of("stick_out")),
        ),
    )
    yield (
        tr("Technique and heat"),
        (
            (tr("Travel speed"), figures.of("travel_speed")),
            (tr("Weave, torch angle"), ""),
            (tr("Sketch of the joint, order of runs"), ""),
            (tr("Heat input"), figures.of("heat_input")),
            (tr("Preheat temperature"), figures.of("preheat")),
            (tr("Interpass temperature"), figures.of("interpass")),
            (tr("Post-heating"), ""),
            (tr("Post-weld heat treatment"), ""),
            (tr("Machine"), entry.machine),
        ),
    )
    yield (
        tr("What came of it"),
        (
            (tr("Outcome"), outcome_words(entry.outcome)),
            (
                tr("Imperfections (ISO 6520-1)"),
                ", ".join(imperfection_words(tables, fault) for fault in entry.faults),
            ),
            (tr("Remarks"), entry.notes),
        ),
    )


def _joined(metals: list[str]) -> str:
    return metals[0] if len(metals) == 1 else tr("{metal} to {other}", metal=metals[0], other=metals[1])


def _designation(name: str, metal: Metal) -> str:
    """Return the metal as logged, temper and all, with what it is."""
    return metal.name if name in metal.name.split() else f"{name} ({metal.name})"


def _process(entry: Entry) -> str:
    if entry.process is Process.TIG:
        return tr("141, tungsten inert gas")
    gas = str(entry.settings.get("shielding_gas", ""))
    if not gas:
        return tr("131 or 135, by the gas")
    return tr("131, metal inert gas") if gas.startswith("I") else tr("135, metal active gas")


class _Figures:
    """The entry's settings in words; an empty text where there is none."""

    def __init__(self, entry: Entry, tables: Tables, units: Units) -> None:
        self._entry, self._units = entry, units
        self._kinds = tables.derived(build_kinds)

    def of(self, name: str) -> str:
        value = self._entry.settings.get(name)
        if value is None:
            return ""
        unit = self._kinds[name].unit if name in self._kinds else None
        if isinstance(value, bool) or not isinstance(value, int | float):
            return value_words(name, value, self._entry.process)
        if name.endswith("diameter") or name in ("tip_to_work", "stick_out"):
            unit = "mm"
        if unit in (None, "1"):
            return figure(f"{value:g}")
        if self._units is Units.METRIC or unit in _SAME_EVERYWHERE:
            return figure(f"{value:g} {'%' if unit == 'percent' else unit}")  # as logged: nothing is rounded
        shown = show(float(value), str(unit), name, self._units)
        return f"{shown.text} {shown.unit_text}".strip()

    def several(self, *names: str) -> str:
        return ", ".join(filter(None, (self.of(name) for name in names)))

    def length(self, mm: float | None) -> str:
        if mm is None:
            return ""
        shown = show(mm, "mm", "thickness", self._units)
        return f"{shown.text} {shown.unit_text}".strip()

    def gap(self) -> str:
        return tr("gap {length}", length=self.length(self._entry.gap_mm)) if self._entry.gap_mm else ""


def _page(title: str, groups: tuple[tuple[str, tuple[tuple[str, str], ...]], ...]) -> str:
    rows = []
    for head, fields in groups:
        rows.append(f'<tr><td colspan="2"><b>{escape(head)}</b></td></tr>')
        rows += [
            f"<tr><td>{escape(name)}</td><td>{_lines(value) if value else BLANK}</td></tr>"
            for name, value in fields
        ]
    return (
        f'<html lang="{code()}"><head><meta charset="utf-8">'
        "<style>body { font-family: sans-serif; font-size: 9pt;"
        " color: #000000; background-color: #ffffff; } td { vertical-align: top; }</style>"
        f"<title>{escape(title)}</title></head><body>"
        f"<h2>{escape(title)}</h2><p>{escape(tr(STANDING))}</p>"
        '<table border="1" cellspacing="0" cellpadding="3" width="100%">'
        f"{''.join(rows)}</table></body></html>\n"
    )


def _lines(text: str) -> str:
    return "<br>".join(escape(line) for line in text.splitlines())
