"""A job worked out: order, blanks, sheets, cards, tacks, repairs, what it uses up."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace

from welds.advice.equipment import GENERIC, Equipment
from welds.advice.request import Joint
from welds.advice.setting import Caution, Severity
from welds.errors import WeldsError
from welds.job.amounts import Amounts, joint_amounts
from welds.job.bench_cards import BenchCards
from welds.job.blank_answer import BlankAnswer, answer_blank
from welds.job.brake_book import book_file, in_temper, k_of_brake
from welds.job.drawn import read_drawings
from welds.job.hole_drawing import HoleDrawing
from welds.job.job import Job, JointWork, Piece
from welds.job.materials import Materials, sum_up
from welds.job.nesting import Flat, Sheet, nest
from welds.job.order import Turn, ordered
from welds.job.past import Past
from welds.job.repair import RepairAnswer, decide_repair
from welds.job.setups import SetUp, set_ups
from welds.job.tack_plan import TackPlan, plan_tacks
from welds.language import tr
from welds.logbook.entry import Entry
from welds.reference.metals import find_metal
from welds.reference.tables import Tables


@dataclass(frozen=True, slots=True)
class JobPlan:
    """Everything about a job; mappings go by the tasks' ids, `logged` by the words that name log entries.

    `refused` says why a repair is not answered; `problems` name all that has no answer (a joint without card,
    a piece without room on its sheet).
    """

    job: Job
    machine: str
    turns: tuple[Turn, ...]
    blanks: Mapping[str, BlankAnswer]
    sheets: tuple[Sheet, ...]
    set_ups: tuple[SetUp, ...]
    tacks: Mapping[str, TackPlan]
    repairs: Mapping[str, RepairAnswer]
    refused: Mapping[str, str]
    drawings: Mapping[str, HoleDrawing]
    materials: Materials
    amounts: Mapping[str, Amounts]
    cautions: tuple[Caution, ...]
    problems: tuple[str, ...]
    logged: Mapping[str, Entry | None]

    @property
    def done(self) -> int:
        """How many tasks are done."""
        return sum(turn.is_done for turn in self.turns)


def plan_job(job: Job, tables: Tables, equipment: Equipment = GENERIC, past: Past | None = None) -> JobPlan:
    """Return the plan, its cards moved by past welds; raises InputError where the order runs in a circle."""
    past = past or Past()
    turns = ordered(job)
    problems: list[str] = []
    place = {turn.id: number for number, turn in enumerate(turns)}
    joints = sorted(job.joints, key=lambda joint: place[joint.id])
    bench = BenchCards(tables, equipment, past.of)
    found = set_ups(joints, bench)
    blanks = _blanks(job, tables, problems)
    tacks = {joint.id: _tacks(joint, tables) for joint in joints if joint.request.joint is not Joint.PLUG}
    amounts = {}
    for each in found:
        if each.card is None:
            problems += [
                tr("{task}: no card: {problem}", task=joint.id, problem=each.problem) for joint in each.joints
            ]
            continue
        for joint in each.joints:
            starts = len(tacks[joint.id].runs) if joint.id in tacks else 1
            amounts[joint.id] = joint_amounts(tables, each.machine, joint, each.card, starts)
    drawings = read_drawings(job, problems)
    repairs, refused = _repairs(job, bench, drawings)
    problems += (f"{key}: {why}" for key, why in refused.items())
    problems += _not_logged(job, past)
    return JobPlan(
        job,
        equipment.machine.name,
        turns,
        blanks,
        _sheets(job, blanks, problems),
        found,
        tacks,
        repairs,
        refused,
        drawings,
        sum_up(tables, equipment, amounts, found, job.prices),
        amounts,
        _cautions(found, repairs),
        tuple(problems),
        past.logged,
    )


def flat_size(piece: Piece, blanks: Mapping[str, BlankAnswer]) -> tuple[float, float] | None:
    """Return both sides of a piece's flat, or None where it could not be laid out."""
    if piece.part is None:
        return piece.size_mm
    answer = blanks.get(piece.id)
    return None if answer is None or not piece.width_mm else (answer.blank.length_mm, piece.width_mm)


def _blanks(job: Job, tables: Tables, problems: list[str]) -> dict[str, BlankAnswer]:
    blanks = {}
    for piece in job.pieces:
        if piece.part is None:
            continue
        try:
            known_k, k_from = _k_of(piece)
            blanks[piece.id] = answer_blank(
                tables,
                piece.metal,
                piece.part,
                width_mm=piece.width_mm,
                known_k=known_k,
                k_from=k_from,
                is_along_grain=piece.is_along_grain,
            )
        except WeldsError as error:
            problems.append(tr("{task}: no blank: {problem}", task=piece.id, problem=error))
    return blanks


def _k_of(piece: Piece) -> tuple[float | None, str]:
    """Return the K that is known, and from what: stated, or kept of a test bend on the person's own brake."""
    if not piece.brake:
        return piece.known_k, ""
    kept = k_of_brake(book_file(), piece.brake, in_temper(piece.metal), piece.thickness_mm)
    return kept.k, tr("test bend on {brake}", brake=piece.brake)


def _tacks(joint: JointWork, tables: Tables) -> TackPlan:
    request = joint.request
    thin = min(request.thickness_mm, request.other_thickness_mm or request.thickness_mm)
    family = find_metal(tables, request.metal).family
    return plan_tacks(tables, family, thin, request.joint, joint.length_mm, is_closed=joint.is_closed)


def _sheets(job: Job, blanks: Mapping[str, BlankAnswer], problems: list[str]) -> tuple[Sheet, ...]:
    sheets: list[Sheet] = []
    for stock in job.stock:
        flats = []
        for piece in job.pieces:
            size = flat_size(piece, blanks)
            if piece.stock == stock.id and size is not None:
                flats += [Flat(piece.id, size)] * piece.count
        if flats:
            used, left_over = nest(stock, flats)
            sheets += used
            problems += [
                tr("{piece}: no room on {sheet}", piece=piece, sheet=stock.id)
                for piece in dict.fromkeys(left_over)
            ]
    return tuple(sheets)


def _repairs(
    job: Job, bench: BenchCards, drawings: Mapping[str, HoleDrawing]
) -> tuple[dict[str, RepairAnswer], dict[str, str]]:
    repairs, refused = {}, {}
    for work in job.repairs:
        drawing = drawings.get(work.id)
        damage = replace(work.damage, closest_mm=drawing.closest_mm if drawing else None)
        try:
            repairs[work.id] = decide_repair(bench, damage)
        except WeldsError as error:
            refused[work.id] = str(error)
    return repairs, refused


def _not_logged(job: Job, past: Past) -> Iterator[str]:
    for task in job.tasks:
        for word in task.links.log:
            if word in past.logged and past.logged[word] is None:
                yield tr("{task}: the log has no entry {word}", task=task.id, word=word)


def _cautions(found: tuple[SetUp, ...], repairs: Mapping[str, RepairAnswer]) -> tuple[Caution, ...]:
    """Return every caution of every card and repair once, what binds hardest first."""
    severities = list(Severity)
    all_of_them = {caution.rule: caution for each in found if each.card for caution in each.card.cautions}
    all_of_them |= {caution.rule: caution for each in repairs.values() for caution in each.cautions}
    return tuple(sorted(all_of_them.values(), key=lambda caution: severities.index(caution.severity)))
