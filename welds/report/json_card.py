"""The card as a JSON object: `welds.card/1`, always metric, described by data/schema/card.json."""

from typing import Any

from welds.advice.card import Card
from welds.advice.request import Request
from welds.advice.setting import Caution, Setting
from welds.language import tr
from welds.report.learned_json import learned_json
from welds.report.plain_number import plain_number
from welds.report.wording import machine_name

SCHEMA = "welds.card/1"
SCHEMA_FILE = "schema/card.json"

Json = dict[str, Any]


def card_json(card: Card) -> Json:
    """Return the card as plain dictionaries, lists, numbers and texts; `learned` only where welds spoke."""
    answer: Json = {
        "schema": SCHEMA,
        "request": request_json(card.request),
        "settings": {name: setting_json(setting) for name, setting in card.settings.items()},
        "checks": [{"name": check.name, "ok": check.ok, "text": check.text} for check in card.checks],
        "preparation": [
            {"text": step.text, "source": step.source, "basis": step.basis.value} for step in card.preparation
        ],
        "cautions": [caution_json(caution) for caution in card.cautions],
        "machine": machine_name(card.machine),
        "notice": tr(card.notice),
    }
    if card.learned is not None:
        answer["learned"] = learned_json(card.learned)
    return answer


def caution_json(caution: Caution) -> Json:
    """Return one caution."""
    return {
        "severity": caution.severity.value,
        "text": caution.text,
        "source": caution.source,
        "basis": caution.basis.value,
    }


def request_json(request: Request) -> Json:
    """Return the request with the keys of a batch line, so that it can be asked again as it is."""
    always: Json = {
        "process": request.process.value,
        "metal": request.metal,
        "thickness_mm": request.thickness_mm,
        "joint": request.joint.value,
        "position": request.position,
        "gap_mm": request.gap_mm,
        "coating": [coating.value for coating in request.coatings],
        "place": request.place.value,
        "hand": request.hand.value,
    }
    where_given: Json = {
        "other_metal": request.other_metal,
        "other_thickness_mm": request.other_thickness_mm,
        "goal": request.goal,
        "solvent": request.solvent,
        "part": request.part,
        "length_mm": request.length_mm,
        "gas": request.gas,
        "wire_mm": request.wire_diameter_mm,
        "transfer": request.transfer,
    }
    return always | {
        name: getattr(value, "value", value) for name, value in where_given.items() if value is not None
    }


def setting_json(setting: Setting) -> Json:
    """Return one setting with its grade, sources and reasons."""
    figure: Json
    if setting.band is not None:
        band = setting.band
        figure = {
            "low": plain_number(band.low),
            "start": plain_number(band.start),
            "high": plain_number(band.high),
            "unit": band.unit,
        }
    else:
        assert setting.value is not None
        figure = {"value": _scalar(setting.value)}
        if setting.unit:
            figure["unit"] = setting.unit
        if setting.text:
            figure["text"] = setting.text
        figure["alternatives"] = [_scalar(choice.value) for choice in setting.alternatives]
        if any(choice.text for choice in setting.alternatives):
            figure["alternative_texts"] = [choice.text for choice in setting.alternatives]
    return figure | {
        "basis": setting.basis.value,
        "sources": list(dict.fromkeys(setting.sources)),
        "reasons": [
            {
                "text": reason.text,
                "factor": None if reason.factor is None else plain_number(reason.factor),
                "source": reason.source,
            }
            for reason in setting.reasons
        ],
    }


def _scalar(value: str | float | bool) -> str | float | bool:
    if isinstance(value, float):
        return int(value) if value.is_integer() else plain_number(value)
    return value
