"""From a card to its face: report.layout decides order and labels, this adds what only the window needs."""

from collections.abc import Mapping

from welds.advice.card import Card
from welds.advice.setting import Caution, Setting, Severity
from welds.gui.card_face import CardFace, CautionLine, CheckLine, Figure, FigureGroup, ReasonLine, StepLine
from welds.language import mark, tr
from welds.quantities.units import Units
from welds.reference.basis import Basis
from welds.reference.names import name_of
from welds.reference.settings import SettingNote
from welds.reference.sources import Source
from welds.report import layout
from welds.report.wording import label_inside

MULTIPLIED = "\u00d7"
GRADE_WORDS: Mapping[Basis, str] = {
    Basis.PRINTED: mark("printed source"),
    Basis.QUOTED: mark("quoted source"),
    Basis.DERIVED: mark("worked out"),
    Basis.PRACTICE: mark("shop practice"),
    Basis.RECALLED: mark("from memory"),
}


def face_of(
    card: Card, units: Units, sources: Mapping[str, Source], notes: Mapping[str, SettingNote]
) -> CardFace:
    """Return the card in words, in these units; `notes` say what each setting does."""
    headlines = [_figure(line, sources, notes) for line in layout.headlines(card, units)]
    groups = [
        FigureGroup(group.title, tuple(_figure(line, sources, notes) for line in group.lines))
        for group in layout.groups(card, units)
    ]
    figures = [figure for group in groups for figure in group.figures]
    return CardFace(
        card=card,
        title=_capital(layout.title(card.request)),
        subtitle=layout.subtitle(card.request, units),
        stops=_cautions(card, Severity.STOP, sources),
        warnings=_cautions(card, Severity.WARN, sources),
        notes=_cautions(card, Severity.NOTE, sources),
        main=headlines[0],
        big=tuple(headlines[1:]),
        groups=_without({figure.name for figure in headlines}, groups),
        figure_count=len(figures),
        weak_count=sum(not figure.is_published for figure in figures),
        checks=tuple(CheckLine(check.name, check.text, check.ok) for check in card.checks),
        steps=tuple(
            StepLine(step.text, _step_source(step.source, step.basis, sources)) for step in card.preparation
        ),
        machine=card.machine,
        notice=tr(card.notice),
        has_wave=_is_alternating(card.settings),
        adjusted=_adjusted(card, units),
    )


def _adjusted(card: Card, units: Units) -> str:
    """Return the changed settings with the faults that asked for them."""
    if not card.adjustments:
        return ""
    process = card.request.process
    names = dict.fromkeys(step.setting for step in card.adjustments if step.setting in card.settings)
    lines = (layout.setting_line(card.settings[name], process, units) for name in names)
    moved = ", ".join(
        tr("{setting} now {figure}", setting=label_inside(line.name), figure=line.start_text)
        for line in lines
    )
    faults = ", ".join(dict.fromkeys(name_of(step.fault) for step in card.adjustments))
    return tr("Changed for {faults}: {moved}.", faults=faults, moved=moved)


def _figure(
    line: layout.SettingLine, sources: Mapping[str, Source], notes: Mapping[str, SettingNote]
) -> Figure:
    note = notes.get(line.name)
    reasons = tuple(
        ReasonLine(
            _capital(reason.text),
            layout.factor_text(reason).replace("x ", f"{MULTIPLIED} "),
            _citation(reason.source, sources),
        )
        for reason in line.reasons
    )
    cited = {reason.source for reason in line.reasons}
    others = tuple(_citation(source, sources) for source in line.sources if source not in cited)
    return Figure(
        name=line.name,
        label=line.label,
        start=line.start,
        unit=line.unit,
        second=line.second,
        range=line.range_text,
        grade=tr(GRADE_WORDS[line.basis]),
        grade_meaning=line.basis.meaning,
        is_published=line.basis.is_published,
        reasons=reasons,
        more_sources=others,
        alternatives=line.alternatives,
        does=note.does if note else "",
        too_little=note.too_little if note else "",
        too_much=note.too_much if note else "",
    )


def _cautions(card: Card, severity: Severity, sources: Mapping[str, Source]) -> tuple[CautionLine, ...]:
    def line(caution: Caution) -> CautionLine:
        return CautionLine(caution.rule, caution.text, _step_source(caution.source, caution.basis, sources))

    return tuple(line(caution) for caution in card.cautions if caution.severity is severity)


def _without(names: set[str], groups: list[FigureGroup]) -> tuple[FigureGroup, ...]:
    """Return the groups without what already stands as a big figure."""
    left = (
        FigureGroup(group.title, tuple(figure for figure in group.figures if figure.name not in names))
        for group in groups
    )
    return tuple(group for group in left if group.figures)


def _step_source(source: str | None, basis: Basis, sources: Mapping[str, Source]) -> str:
    cited = _citation(source, sources)
    if cited:
        grade = GRADE_WORDS[basis]
        return cited if basis.is_published or grade in cited.lower() else f"{cited} ({tr(grade)})"
    return "" if basis.is_published else _capital(tr(GRADE_WORDS[basis]))


def _citation(source: str | None, sources: Mapping[str, Source]) -> str:
    if source is None:
        return ""
    return sources[source].citation if source in sources else source


def _is_alternating(settings: Mapping[str, Setting]) -> bool:
    needed = ("ac_frequency", "electrode_negative", "current")
    return settings["polarity"].start == "AC" and all(name in settings for name in needed)


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]
