"""Why one setting differs from another: what their chains of reasons do not share, in words."""

import re
from collections.abc import Iterator, Mapping, Sequence
from difflib import SequenceMatcher

from welds.advice.setting import Reason, Setting
from welds.language import tr
from welds.report.layout import factor_text

READS: Mapping[str, tuple[str, ...]] = {
    "current": ("polarity", "transfer", "wire_diameter"),
    "machine_maximum": ("current", "polarity"),
    "ac_frequency": ("polarity",),
    "electrode_negative": ("polarity",),
    "tungsten_type": ("polarity",),
    "tungsten_diameter": ("current", "polarity", "electrode_negative", "tungsten_type"),
    "tip": ("current", "polarity", "tungsten_diameter"),
    "filler_diameter": ("polarity", "filler_metal"),
    "shielding_gas": ("transfer",),
    "gas_flow": ("polarity", "transfer"),
    "cup": ("gas_lens", "current", "polarity", "tungsten_diameter"),
    "gas_lens": ("tungsten_diameter",),
    "stick_out": ("gas_lens",),
    "post_flow": ("current",),
    "arc_voltage": ("current", "voltage"),
    "travel_speed": ("polarity", "transfer"),
    "heat_input": ("current", "arc_voltage", "travel_speed"),
    "filter_shade": ("current",),
    "wire_diameter": ("transfer", "wire"),
    "voltage": ("current", "transfer"),
    "wire_feed": ("current", "transfer", "wire_diameter"),
    "tip_to_work": ("transfer",),
    "plug_time": ("plug_hole", "wire_feed", "wire_diameter"),
}
"""Which settings each one is worked out from; a test watches the rules and compares."""

NOTICEABLE = 0.005
"""A factor that moves a figure by less than this share says nothing."""


_FIGURE = re.compile(r"\d+([.,]\d+)?")


def changed_links(base: Setting, other: Setting) -> tuple[str, ...]:
    """Return what stands in `other`'s chain and not in `base`'s, and the reverse, in the chain's order.

    A link that took another's place is told with the one it replaced; an effect is told in percent.
    """
    return tuple(_changes(_moving(base), _moving(other)))


def has_own_cause(base: Setting, other: Setting) -> bool:
    """Say whether the chains differ by more than the figures named in otherwise equal sentences."""
    return _skeletons(base) != _skeletons(other)


def _skeletons(setting: Setting) -> list[str]:
    """Return the sentences without their figures."""
    return [_FIGURE.sub("#", reason.text) for reason in _moving(setting)]


def _moving(setting: Setting) -> list[Reason]:
    return [reason for reason in setting.reasons if not reason.is_aside]


def _changes(base: Sequence[Reason], other: Sequence[Reason]) -> Iterator[str]:
    there, here = [_key(reason) for reason in base], [_key(reason) for reason in other]
    for kind, from_there, to_there, from_here, to_here in SequenceMatcher(
        None, there, here, autojunk=False
    ).get_opcodes():
        if kind == "equal":
            continue
        old, new = base[from_there:to_there], other[from_here:to_here]
        yield from _exchanged(list(old), new)


def _exchanged(old: list[Reason], new: Sequence[Reason]) -> Iterator[str]:
    """Pair each new link with the next old one of its kind; what is left over came or went."""
    for reason in new:
        kin = next((each for each in old if (each.factor is None) == (reason.factor is None)), None)
        if kin is None:
            yield reason.text + _effect(reason.factor)
        else:
            old.remove(kin)
            yield _replaced(kin, reason)
    yield from (
        tr("not here: {text}{effect}", text=reason.text, effect=_effect(reason.factor, undone=True))
        for reason in old
    )


def _key(reason: Reason) -> tuple[str, float | None]:
    """Return what makes two links the same: their words, and their factor as far as it can be noticed."""
    return reason.text, None if reason.factor is None else round(reason.factor, 2)


def _replaced(old: Reason, new: Reason) -> str:
    if old.text == new.text:
        return tr(
            "{text} ({factor}, base {base_factor})",
            text=new.text,
            factor=factor_text(new),
            base_factor=factor_text(old),
        )
    return tr(
        "{text}{effect} (base: {base_text}{base_effect})",
        text=new.text,
        effect=_effect(new.factor),
        base_text=_what_parts(old.text, new.text),
        base_effect=_effect(old.factor),
    )


def _what_parts(text: str, other: str) -> str:
    """Return the text without the words that it shares with the other at either end.

    Where they share little, only what comes before the last shared pause is left out.
    """
    words, others = text.split(), other.split()
    head = _shared(words, others)
    tail = _shared(words[head:][::-1], others[head:][::-1])
    left = " ".join(words[head : len(words) - tail])
    if 0 < len(words) - head - tail <= len(words) / 2 and left.count("(") == left.count(")"):
        return left.rstrip(",;:")
    shared = " ".join(words[:head])
    pause = max(shared.rfind(sign) for sign in ",:;")
    return text[pause + 1 :].strip() if pause >= 0 else text


def _shared(words: Sequence[str], others: Sequence[str]) -> int:
    """Return how many words both begin with."""
    pairs = enumerate(zip(words, others, strict=False))
    return next((place for place, (one, other) in pairs if one != other), min(len(words), len(others)))


def _effect(factor: float | None, *, undone: bool = False) -> str:
    if factor is None or abs(factor - 1.0) < NOTICEABLE:
        return ""
    share = 1.0 / factor if undone else factor
    return f", {percent_text(share)}"


def percent_text(share: float) -> str:
    """Return a ratio as what it adds or takes: 1.11 as "+11 %"."""
    return f"{round(100.0 * (share - 1.0)):+d} %"
