"""The wall chart: thickness down, joint across, one metal and process; each cell an answer of the advice."""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from welds.advice.card import NOTICE, Card
from welds.advice.request import Joint, Process, Request
from welds.advice.setting import Caution, Setting, Severity
from welds.errors import WeldsError
from welds.language import mark, tr
from welds.quantities.units import Units
from welds.reference.basis import Basis, weakest
from welds.report import layout
from welds.report.wording import hand_words, process_name

CELL_SETTINGS: Mapping[Process, tuple[str, ...]] = {
    Process.TIG: ("current",),
    Process.MIG: ("current", "wire_feed", "wire_diameter", "voltage"),
}
"""What a cell carries, the figure to start with first."""

THICKNESSES: Mapping[Units, tuple[str, ...]] = {
    Units.METRIC: tuple(
        f"{mm} mm" for mm in ("0.8", "1", "1.2", "1.5", "2", "2.5", "3", "4", "5", "6", "8", "10", "12")
    ),
    Units.INCH: tuple(
        f"{inch} in"
        for inch in (
            "1/32",
            "0.050",
            "1/16",
            "5/64",
            "3/32",
            "1/8",
            "5/32",
            "3/16",
            "1/4",
            "5/16",
            "3/8",
            "1/2",
        )
    ),
}
"""Rows of a chart for which no thicknesses were named: sizes that sheet is sold in."""

LIMITED = mark("joint wants {current}")
"""What stands in a cell whose current the machine cannot be set to."""

_CELL_WORDS = {"wire_diameter": mark("wire {figure}")}
_ORDER = {severity: rank for rank, severity in enumerate(Severity)}


@dataclass(frozen=True, slots=True)
class Cell:
    """One thickness in one joint: the settings, or why there are none."""

    thickness_mm: float
    joint: Joint
    settings: Mapping[str, Setting]
    problem: str = ""

    @property
    def basis(self) -> Basis | None:
        """The weakest grade in the cell, or None for an empty one."""
        return weakest(setting.basis for setting in self.settings.values()) if self.settings else None


@dataclass(frozen=True, slots=True)
class Chart:
    """All cells, row by row, with the cautions of every card that was asked."""

    request: Request
    machine: str
    thicknesses_mm: tuple[float, ...]
    joints: tuple[Joint, ...]
    rows: tuple[tuple[Cell, ...], ...]
    cautions: tuple[Caution, ...]
    notice: str = NOTICE

    @property
    def cells(self) -> Iterator[Cell]:
        """Every cell, row by row."""
        return (cell for row in self.rows for cell in row)

    @property
    def sources_note(self) -> str:
        """The ids of the documents that the figures rest on."""
        ids = {
            source for cell in self.cells for setting in cell.settings.values() for source in setting.sources
        }
        return (
            tr("Sources: {ids}; `welds tables sources` describes them", ids=", ".join(sorted(ids)))
            if ids
            else ""
        )

    @property
    def limit_note(self) -> str:
        """What to do about a cell at the machine's limit, or nothing where there is none."""
        units = Units.METRIC
        if not any(cell.settings and limit_text(cell, self.request.process, units) for cell in self.cells):
            return ""
        return tr("Joint wants: more or less than the machine gives; its card says what can be done")

    @property
    def basis_note(self) -> str:
        """What the star beside a figure means, or nothing where no cell has one."""
        starred = any(cell.basis and not cell.basis.is_published for cell in self.cells)
        return tr("* rests on practice or memory: no published source covers it") if starred else ""


def make_chart(
    request: Request,
    thicknesses_mm: Sequence[float],
    joints: Sequence[Joint],
    answer: Callable[[Request], Card],
    *,
    keeps_rows: bool = True,
    keeps_columns: bool = True,
) -> Chart:
    """Return the chart for `request` with its thickness and joint replaced cell by cell.

    Rows and columns without any answer are kept, to say why, or left out. Where nothing at all can be
    answered, the first refusal is raised.
    """
    cautions: dict[str, Caution] = {}
    refusals: list[WeldsError] = []
    machine = ""
    grid: list[list[Cell]] = []
    for thickness_mm in thicknesses_mm:
        grid.append([])
        for joint in joints:
            try:
                card = answer(replace(request, thickness_mm=thickness_mm, joint=joint))
            except WeldsError as error:
                refusals.append(error)
                grid[-1].append(Cell(thickness_mm, joint, {}, str(error)))
            else:
                machine = card.machine
                cautions.update((caution.rule, caution) for caution in card.cautions)
                grid[-1].append(Cell(thickness_mm, joint, _cell_settings(card)))
    answered = {cell.joint for row in grid for cell in row if cell.settings}
    if refusals and not answered:
        raise refusals[0]
    if not keeps_rows:
        grid = [row for row in grid if any(cell.settings for cell in row)]
    if not keeps_columns:
        grid = [[cell for cell in row if cell.joint in answered] for row in grid]
    return Chart(
        request=request,
        machine=machine,
        thicknesses_mm=tuple(row[0].thickness_mm for row in grid),
        joints=tuple(cell.joint for cell in grid[0]),
        rows=tuple(tuple(row) for row in grid),
        cautions=tuple(sorted(cautions.values(), key=lambda caution: _ORDER[caution.severity])),
    )


def _cell_settings(card: Card) -> dict[str, Setting]:
    names = CELL_SETTINGS[card.request.process]
    return {name: card.settings[name] for name in names if name in card.settings}


def chart_title(chart: Chart) -> str:
    """Return what the chart is for: "TIG, 5052, position PA, unhurried hand"."""
    request = chart.request
    metals = request.metal
    if request.other_metal:
        metals = tr("{metal} to {other}", metal=request.metal, other=request.other_metal)
    position = tr("position {position}", position=request.position)
    return f"{process_name(request.process)}, {metals}, {position}, {hand_words(request.hand)}"


def cell_texts(cell: Cell, process: Process, units: Units) -> tuple[str, ...]:
    """Return the cell's lines: the current with a star where no source covers it, its range, the rest."""
    lines = {name: layout.setting_line(each, process, units) for name, each in cell.settings.items()}
    if "current" not in lines:
        return ("-",)
    star = "" if cell.basis is None or cell.basis.is_published else "*"
    main = lines.pop("current")
    rest = ", ".join(
        tr(_CELL_WORDS[name], figure=line.start_text) if name in _CELL_WORDS else line.start_text
        for name, line in lines.items()
    )
    short = limit_text(cell, process, units)
    return tuple(text for text in (main.start_text + star, main.range_text, rest, short) if text)


def limit_text(cell: Cell, process: Process, units: Units) -> str:
    """Return the current the joint wants where the machine cannot be set to it, or nothing."""
    current = cell.settings["current"]
    if current.wanted is None or current.band is None:
        return ""
    if current.band.low <= current.wanted.start <= current.band.high:
        return ""
    wants = layout.setting_line(replace(current, band=current.wanted), process, units).start_text
    return tr(LIMITED, current=wants)


def problems(chart: Chart) -> tuple[str, ...]:
    """Return each reason for an empty cell once."""
    return tuple(dict.fromkeys(cell.problem for cell in chart.cells if cell.problem))
