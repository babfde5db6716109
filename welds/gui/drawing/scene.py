"""What one picture of a joint shows, as plain floats taken from a card; no Qt."""

import re
from collections.abc import Mapping
from dataclasses import dataclass, replace

from welds.advice.card import Card
from welds.advice.request import Joint, Process
from welds.advice.setting import Setting
from welds.gui.drawing.geometry import JointShape, joint_shape
from welds.gui.drawing.placing import least_distance, placed
from welds.gui.drawing.torch import CLEAR_MM, CUP_WALL_MM, NOZZLE_WALL_MM, Torch, mig_gun, tig_torch
from welds.quantities.units import Units

CUP_STEP_MM = 25.4 / 16.0
"""A cup's number is its bore in sixteenths of an inch."""
NOZZLE_BORE_MM = 13.0
ROD_ANGLE_DEG = 20.0
USUAL_TIP_DEG = 40.0


@dataclass(frozen=True, slots=True)
class JointScene:
    """One joint with its torch. Lengths in millimetres; 0 means "not there"."""

    process: Process = Process.TIG
    joint: Joint = Joint.BUTT
    position: str = "PA"
    units: Units = Units.METRIC
    thickness_mm: float = 2.0
    other_thickness_mm: float = 2.0
    gap_mm: float = 0.0
    is_bevelled: bool = False
    hole_mm: float = 0.0
    has_bar: bool = False
    has_purge: bool = False
    arc_mm: float = 1.6
    arc_spread_deg: float = 60.0
    travel_lean_deg: float = 15.0
    filler_mm: float = 0.0
    tungsten_mm: float = 1.6
    tip_low_deg: float = 30.0
    tip_high_deg: float = 30.0
    tip_flat_mm: float = 0.2
    cup_number: float = 6.0
    stick_out_mm: float = 6.0
    has_gas_lens: bool = False
    wire_mm: float = 0.8
    tip_to_work_mm: float = 10.0
    tip_recess_mm: float = 0.0

    @property
    def tip_angle_deg(self) -> float:
        """Included angle of the tungsten's point as drawn."""
        return (self.tip_low_deg + self.tip_high_deg) / 2.0

    @property
    def cup_bore_mm(self) -> float:
        """Inside diameter of the cup."""
        return self.cup_number * CUP_STEP_MM


def scene_from_card(card: Card, units: Units) -> JointScene:
    """Return the scene a card describes; what it leaves open is drawn in the usual proportions."""
    request, settings = card.request, card.settings
    common = JointScene(
        process=request.process,
        joint=request.joint,
        position=request.position,
        units=units,
        thickness_mm=request.thickness_mm,
        other_thickness_mm=request.other_thickness_mm or request.thickness_mm,
        gap_mm=request.gap_mm,
        is_bevelled=_number(settings, "passes", 1.0) > 1.0,
        hole_mm=_number(settings, "plug_hole", 0.0),
        has_bar=_says(settings, "backing", "copper", "bar"),
        has_purge=_says(settings, "backing", "argon", "purge", "gas"),
    )
    return _mig(common, settings) if request.process is Process.MIG else _tig(common, settings)


def _tig(scene: JointScene, settings: Mapping[str, Setting]) -> JointScene:
    tungsten = _number(settings, "tungsten_diameter", 1.6)
    is_ac = _says(settings, "polarity", "ac")
    low, high, flat = _tip(settings, tungsten)
    return replace(
        scene,
        tungsten_mm=tungsten,
        arc_mm=max(1.0, min(tungsten, 4.0)),
        arc_spread_deg=arc_spread_deg(_number(settings, "ac_frequency", 0.0) if is_ac else 0.0),
        tip_low_deg=low,
        tip_high_deg=high,
        tip_flat_mm=flat,
        cup_number=_number(settings, "cup", 6.0),
        stick_out_mm=_number(settings, "stick_out", 6.0),
        has_gas_lens=settings["gas_lens"].start is True if "gas_lens" in settings else False,
        filler_mm=_number(settings, "filler_diameter", 0.0),
        travel_lean_deg=15.0,
    )


def _mig(scene: JointScene, settings: Mapping[str, Setting]) -> JointScene:
    is_short = _says(settings, "transfer", "short")
    lean = -10.0 if scene.position == "PG" else 0.0 if scene.joint is Joint.PLUG else 12.0
    return replace(
        scene,
        wire_mm=_number(settings, "wire_diameter", 0.8),
        tip_to_work_mm=_number(settings, "tip_to_work", 10.0),
        tip_recess_mm=0.0 if is_short else 3.0,
        arc_mm=2.0 if is_short else 4.0,
        arc_spread_deg=70.0,
        travel_lean_deg=lean,
    )


def arc_spread_deg(frequency_hz: float) -> float:
    """Return how wide the arc's cone is drawn: AC at a low frequency widest, DC (0 Hz) narrow."""
    if frequency_hz <= 0:
        return 50.0
    return max(52.0, min(80.0, 80.0 - (frequency_hz - 60.0) * 0.2))


def shape_of(scene: JointScene) -> JointShape:
    """Return the scene's joint in its welding position."""
    reach = max(scene.cup_bore_mm / 2.0 + CUP_WALL_MM, NOZZLE_BORE_MM / 2.0 + NOZZLE_WALL_MM)
    arm = max(reach + 2.5, 1.6 * max(scene.thickness_mm, scene.other_thickness_mm), 11.0)
    shape = joint_shape(
        scene.joint,
        scene.thickness_mm,
        scene.other_thickness_mm,
        scene.gap_mm,
        scene.hole_mm,
        arm,
        scene.is_bevelled,
    )
    return placed(shape, scene.position)


def torch_of(scene: JointScene, shape: JointShape) -> Torch:
    """Return torch or gun for the shape, cup or nozzle kept clear of the metal."""
    outlines = [piece.outline for piece in shape.pieces]
    if scene.process is Process.MIG:
        radius = NOZZLE_BORE_MM / 2.0 + NOZZLE_WALL_MM
        least = least_distance(outlines, shape.root, shape.axis_deg, radius) + CLEAR_MM
        return mig_gun(
            scene.wire_mm,
            NOZZLE_BORE_MM,
            scene.tip_to_work_mm,
            min(scene.arc_mm, 0.5 * scene.tip_to_work_mm),
            scene.arc_spread_deg,
            scene.tip_recess_mm,
            least,
        )
    radius = scene.cup_bore_mm / 2.0 + CUP_WALL_MM
    least = least_distance(outlines, shape.root, shape.axis_deg, radius) + CLEAR_MM
    return tig_torch(
        scene.tungsten_mm,
        scene.tip_angle_deg,
        scene.tip_flat_mm,
        scene.cup_bore_mm,
        scene.stick_out_mm,
        scene.arc_mm,
        scene.arc_spread_deg,
        scene.has_gas_lens,
        least,
    )


def _number(settings: Mapping[str, Setting], name: str, usual: float) -> float:
    start = settings[name].start if name in settings else usual
    return usual if isinstance(start, (str, bool)) else float(start)


def _says(settings: Mapping[str, Setting], name: str, *words: str) -> bool:
    text = str(settings[name].start).lower() if name in settings else ""
    return any(re.search(rf"\b{word}", text) for word in words)


def _tip(settings: Mapping[str, Setting], tungsten_mm: float) -> tuple[float, float, float]:
    """Least and greatest included angle and the flat in mm, read out of the words for the tip."""
    text = str(settings["tip"].start) if "tip" in settings else ""
    angles = re.search(r"(\d+(?:\.\d+)?)(?:\s*to\s*(\d+(?:\.\d+)?))?\s*(?:°|deg)", text)
    flat = re.search(r"(\d+(?:\.\d+)?)\s*mm", text)
    low = float(angles.group(1)) if angles else USUAL_TIP_DEG
    high = float(angles.group(2)) if angles and angles.group(2) else low
    low, high = (max(15.0, min(120.0, angle)) for angle in (low, high))
    return low, high, float(flat.group(1)) if flat else tungsten_mm / 4.0
