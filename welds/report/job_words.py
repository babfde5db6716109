"""A job's parts as rows of words, shared by every form it comes out in."""

from collections.abc import Iterator

from welds.advice.card import Card
from welds.job.brake_book import in_temper
from welds.job.job import JointWork, Piece, RepairWork, Step
from welds.job.materials import Materials
from welds.job.order import Turn
from welds.job.plan import JobPlan, flat_size
from welds.language import figure, mark, tr
from welds.logbook.entry import Entry
from welds.quantities.band import Band
from welds.quantities.units import Units
from welds.reference.names import id_or_name
from welds.report import layout
from welds.report.cut_length import cut_length
from welds.report.wording import outcome_words

Row = tuple[str, ...]
KINDS = {Piece: mark("cut"), RepairWork: mark("mend"), JointWork: mark("weld"), Step: mark("do")}
_FIT = mark("fit")
_SECONDS = 60.0


def turn_kind(turn: Turn) -> str:
    """Return what kind of task it is, in an English word; `tr` says it."""
    return KINDS[type(turn.task)] if turn.task is not None else _FIT


def turn_state(turn: Turn) -> str:
    """Return done, now, later or can wait, in English; `tr` says it."""
    if turn.is_done:
        return mark("done")
    if turn.can_wait:
        return mark("can wait")
    return mark("now") if turn.is_now else mark("later")


def order_rows(plan: JobPlan) -> Iterator[Row]:
    """Yield number, kind, task, state and reason of every turn."""
    for number, turn in enumerate(plan.turns, 1):
        why = "; ".join(f"{need.first}: {need.why}" for need in turn.needs)
        log = turn.task.links.log if turn.task is not None else ()
        said = "; ".join(logged_words(word, plan.logged.get(word)) for word in log)
        task = f"{turn.id}: {turn.name}"
        if log:
            task = tr("{task} (log {welds})", task=task, welds=said)
        yield str(number), tr(turn_kind(turn)), task, tr(turn_state(turn)), why


def logged_words(word: str, entry: Entry | None) -> str:
    """Return what came of a logged weld; its name alone where it was not looked up or is not there."""
    if entry is None:
        return word
    current = entry.figure("current")
    ran = figure(f"{current:g} A, ") if current is not None else ""
    faults = f", {', '.join(map(id_or_name, entry.faults))}" if entry.faults else ""
    return f"{word}: {ran}{outcome_words(entry.outcome)}{faults}, {entry.made_at[:10]}"


def cut_rows(plan: JobPlan, units: Units) -> Iterator[Row]:
    """Yield piece, number, sheet, both sides of the flat and the stock it comes from."""
    for piece in plan.job.pieces:
        size = flat_size(piece, plan.blanks)
        flat = " x ".join(cut_length(side, units) for side in size) if size else tr("no blank")
        sheet = f"{in_temper(piece.metal)} {cut_length(piece.thickness_mm, units)}"
        folded = tr("folded") if piece.part is not None else ""
        yield piece.id, str(piece.count), sheet, flat, folded, piece.stock or ""


def sheet_lines(plan: JobPlan) -> Iterator[str]:
    """Yield one line for each stock sheet used."""
    for sheet in plan.sheets:
        yield (
            tr(
                "{stock}, sheet {number}: {blanks} blanks, {waste:.0%} left over",
                stock=sheet.stock.id,
                number=sheet.number,
                blanks=len(sheet.placed),
                waste=sheet.waste,
            )
        )


def set_up_rows(plan: JobPlan, units: Units) -> Iterator[Row]:
    """Yield the number of the card, its title, its joints and its start current or why there is no card."""
    for number, each in enumerate(plan.set_ups, 1):
        joints = ", ".join(f"{joint.id} ({_count_words(joint, units)})" for joint in each.joints)
        title = f"{layout.title(each.request)}, {layout.subtitle(each.request, units)}"
        if each.card is None:
            yield str(number), title, joints, tr("no card: {problem}", problem=each.problem)
            continue
        current = each.card.settings.get("current")
        line = layout.setting_line(current, each.request.process, units) if current else None
        start = line.start_text if line else ""
        yield str(number), title, joints, " ".join(filter(None, (start, _learned(each.card))))


def _count_words(joint: JointWork, units: Units) -> str:
    if not joint.length_mm:
        return str(joint.count)
    return f"{joint.count} x {cut_length(joint.length_mm, units)}"


def _learned(card: Card) -> str:
    if card.learned is None:
        return ""
    welds = card.learned.welds
    if welds == 1:
        return tr("(learned from 1 past weld)")
    return tr("(learned from {welds} past welds)", welds=welds)


def pause_lines(plan: JobPlan, units: Units) -> Iterator[str]:
    """Yield when to let go: the interpass limit and what the machine's duty cycle says, by card."""
    for number, each in enumerate(plan.set_ups, 1):
        if each.card is None:
            continue
        interpass = each.card.settings.get("interpass")
        if interpass is not None:
            line = layout.setting_line(interpass, each.request.process, units)
            yield tr(
                "Card {number}: wait between runs until it is below {temperature}",
                number=number,
                temperature=line.start_text,
            )
        for check in each.card.checks:
            if "duty" in check.name:
                yield tr("Card {number}: {text}", number=number, text=check.text)


def material_rows(materials: Materials) -> Iterator[Row]:
    """Yield what, usual amount, range, and what the shelf says."""
    for filler in materials.fillers:
        size = figure(f" {filler.diameter_mm:g} mm") if filler.diameter_mm else ""
        length = figure(f", {filler.length_m.start:.1f} m") if filler.length_m else ""
        shelf = {True: tr("on the shelf"), False: tr("not on the shelf: buy"), None: ""}[filler.is_on_shelf]
        grams = filler.kg.scaled(1000.0)
        yield f"{filler.filler}{size}", f"{grams.start:.0f} g{length}", _span(grams, "g"), shelf
    for gas in materials.gases:
        left = "" if gas.left_l is None else tr("{litres:.0f} L left", litres=gas.left_l)
        buy = tr("buy up to {litres:.0f} L", litres=gas.buy_l) if gas.left_l is not None and gas.buy_l else ""
        shelf = ", ".join(filter(None, (left, buy)))
        yield tr("gas {gas}", gas=gas.gas), f"{gas.litres.start:.0f} L", _span(gas.litres, "L"), shelf
    yield tr("discs"), figure(f"{materials.discs.start:.1f}"), _span(materials.discs, ""), ""
    for what, band in (
        (tr("arc time"), materials.arc_s),
        (tr("welding time at the bench"), materials.bench_s),
    ):
        minutes = band.scaled(1.0 / _SECONDS)
        yield what, f"{minutes.start:.0f} min", _span(minutes, "min"), ""
    yield (
        tr("power from the mains"),
        figure(f"{materials.energy_kwh.start:.2f} kWh"),
        _span(materials.energy_kwh, "kWh"),
        "",
    )
    for line in materials.costs:
        cost, unit = line.cost, materials.currency
        yield (
            tr("cost of {what}", what=line.what),
            f"{figure(f'{cost.start:.2f}')} {unit}",
            _span(cost, unit),
            "",
        )
    if materials.cost is not None:
        cost, unit = materials.cost, materials.currency
        yield tr("cost of all of that"), f"{figure(f'{cost.start:.2f}')} {unit}", _span(cost, unit), ""


def material_notes(materials: Materials) -> Iterator[str]:
    """Yield what the sums are without, and what else the cards want bought."""
    yield (
        tr(
            "Sums of the drawn sections with what is lost and what welds come out over; lows and highs are"
            " added up by themselves. Cutting, folding, repairs and painting are in none of them; a patch's"
            " seam is where it stands as a joint of its own."
        )
    )
    if materials.costs and materials.unpriced:
        yield tr("Without a price in the file: {names}", names=", ".join(materials.unpriced))
    for purchase in materials.to_buy:
        said = mark("Buy: {item}") if purchase.is_needed else mark("Better with: {item}")
        yield tr(said, item=purchase.item)
    yield from materials.troubles


def check_lines(plan: JobPlan) -> Iterator[str]:
    """Yield what to look at when it is done."""
    yield tr("Light test: shine a lamp from behind in the dark; light through a seam is a missed spot.")
    yield tr("Look at every crater, start and corner; mend cracks and holes before anything is covered up.")
    failed = [
        tr("card {number}: {text}", number=number, text=check.text)
        for number, each in enumerate(plan.set_ups, 1)
        if each.card is not None
        for check in each.card.checks
        if not check.ok
    ]
    yield from failed
    for key, answer in plan.repairs.items():
        yield from (f"{key}: {check}" for check in answer.checks)


def _span(band: Band, unit: str) -> str:
    digits = 0 if band.high >= 20.0 else 1 if band.high >= 2.0 else 2
    low, high = (figure(f"{each:.{digits}f}") for each in (band.low, band.high))
    return (tr("{low} to {high}", low=low, high=high) + f" {unit}").strip()
