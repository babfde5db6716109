"""One card for every set-up: joints that are set up alike share it, judged by the longest seam among them."""

import gc
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, replace

from welds.advice.card import Card
from welds.advice.equipment import Machine
from welds.advice.request import Request
from welds.errors import WeldsError
from welds.job.bench_cards import BenchCards, for_process
from welds.job.job import JointWork


@dataclass(frozen=True, slots=True)
class SetUp:
    """A card, or why there is none, and the joints it is for."""

    request: Request
    joints: tuple[JointWork, ...]
    card: Card | None
    problem: str
    machine: Machine


def set_ups(joints: Sequence[JointWork], bench: BenchCards) -> tuple[SetUp, ...]:
    """Return the set-ups in the order in which their first joints come."""
    alike: dict[Request, list[JointWork]] = {}
    for joint in joints:
        alike.setdefault(replace(joint.request, length_mm=None), []).append(joint)
    with _collector_paused():
        return tuple(_set_up(request, members, bench) for request, members in alike.items())


def _set_up(request: Request, joints: Sequence[JointWork], bench: BenchCards) -> SetUp:
    longest = max(joint.length_mm for joint in joints)
    asked = replace(request, length_mm=longest) if longest else request
    machine = for_process(bench.equipment, request.process).machine
    try:
        return SetUp(asked, tuple(joints), bench.card(asked), "", machine)
    except WeldsError as error:
        return SetUp(asked, tuple(joints), None, str(error), machine)


@contextmanager
def _collector_paused() -> Iterator[None]:
    """Keep the garbage collector from walking through hundreds of cards while more are made.

    That takes a third of the time, and cards are frozen values without circles: it would find nothing.
    """
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()
