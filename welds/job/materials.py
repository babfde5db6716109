"""What the whole job uses up and costs, and what of it has to be bought."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from welds.advice.equipment import Equipment, Shelf
from welds.advice.request import Process
from welds.advice.setting import Purchase
from welds.job.amounts import Amounts, rod_length_m, total, use
from welds.job.job import Prices
from welds.job.setups import SetUp
from welds.language import tr
from welds.quantities.band import Band
from welds.reference.fillers import Filler
from welds.reference.shielding import Gas
from welds.reference.tables import Tables


@dataclass(frozen=True, slots=True)
class FillerTotal:
    """All rod or wire of one class and size."""

    filler: str
    diameter_mm: float | None
    kg: Band
    length_m: Band | None
    is_on_shelf: bool | None
    """None where the shelf does not say."""


@dataclass(frozen=True, slots=True)
class GasTotal:
    """All of one gas; `left_l` is what is measured on the shelf, `buy_l` what is missing at worst."""

    gas: str
    litres: Band
    left_l: float | None
    buy_l: float


@dataclass(frozen=True, slots=True)
class CostLine:
    """One part of the cost."""

    what: str
    cost: Band


@dataclass(frozen=True, slots=True)
class Materials:
    """The sums of a job; `troubles` say what they are without."""

    fillers: tuple[FillerTotal, ...]
    gases: tuple[GasTotal, ...]
    discs: Band
    seam_m: float
    arc_s: Band
    bench_s: Band
    energy_kwh: Band
    costs: tuple[CostLine, ...]
    currency: str
    unpriced: tuple[str, ...]
    to_buy: tuple[Purchase, ...]
    troubles: tuple[str, ...]

    @property
    def cost(self) -> Band | None:
        """What all priced parts come to, or None where nothing has a price."""
        return total([line.cost for line in self.costs], self.currency) if self.costs else None


def sum_up(
    tables: Tables,
    equipment: Equipment,
    amounts: Mapping[str, Amounts],
    set_ups: Sequence[SetUp],
    prices: Prices,
) -> Materials:
    """Return the sums over all joints; `amounts` are by joint id."""
    each = list(amounts.values())
    fillers = _fillers(tables, equipment.shelf, each)
    gases = _gases(tables, equipment.shelf, each)
    seam_m = sum(one.seam_mm for one in each) / 1000.0
    disc = use(tables, "seam-per-disc", Process.TIG)
    discs = Band(seam_m / disc.high, seam_m / disc.start, seam_m / disc.low, "discs")
    bench = total([one.bench_s for one in each], "s")
    energy = total([one.energy_kwh for one in each], "kWh")
    costs, unpriced = _costs(fillers, gases, discs, bench, energy, prices)
    bought = [purchase for each_set in set_ups if each_set.card for purchase in each_set.card.shopping]
    return Materials(
        fillers,
        gases,
        discs,
        seam_m,
        total([one.arc_s for one in each], "s"),
        bench,
        energy,
        tuple(costs),
        prices.currency,
        tuple(unpriced),
        tuple(dict.fromkeys(bought)),
        tuple(f"{key}: {one.trouble}" for key, one in amounts.items() if one.trouble),
    )


def _fillers(tables: Tables, shelf: Shelf, amounts: Sequence[Amounts]) -> tuple[FillerTotal, ...]:
    groups: dict[tuple[str, float | None], list[Amounts]] = {}
    for one in amounts:
        if one.filler:
            groups.setdefault((one.filler, one.filler_mm), []).append(one)
    densities = {row.id: row.density_kg_m3 for row in tables.records(Filler)}
    totals = []
    for (filler, size), members in groups.items():
        kg = total([one.filler_kg for one in members], "kg")
        length = None
        if size is not None and filler in densities:
            length = replace(kg.scaled(rod_length_m(1.0, size, densities[filler])), unit="m")
        totals.append(FillerTotal(filler, size, kg, length, _has_filler(shelf, filler, size)))
    return tuple(totals)


def _has_filler(shelf: Shelf, filler: str, size: float | None) -> bool | None:
    known = shelf.metals_of_rods | shelf.metals_of_wires
    if not known:
        return None
    sizes = shelf.rod_sizes(filler) | shelf.wire_sizes(filler)
    return filler in known and (size is None or not sizes or size in sizes)


def _gases(tables: Tables, shelf: Shelf, amounts: Sequence[Amounts]) -> tuple[GasTotal, ...]:
    groups: dict[str, list[Band]] = {}
    for one in amounts:
        if one.gas:
            groups.setdefault(one.gas, []).append(one.gas_l)
    totals = []
    for gas, bands in groups.items():
        litres = total(bands, "L")
        left = _left(tables, shelf, gas)
        totals.append(GasTotal(gas, litres, left, max(0.0, litres.high - (left or 0.0))))
    return tuple(totals)


def _left(tables: Tables, shelf: Shelf, iso_code: str) -> float | None:
    """Return the litres of all gases of a code together; the shelf knows them by name, a card by code."""
    names = [gas.id for gas in tables.records(Gas) if gas.iso_code == iso_code]
    measured = [left for name in names if (left := shelf.litres_left(name)) is not None]
    return sum(measured) if measured else None


def _costs(
    fillers: Sequence[FillerTotal],
    gases: Sequence[GasTotal],
    discs: Band,
    bench: Band,
    energy: Band,
    prices: Prices,
) -> tuple[list[CostLine], list[str]]:
    parts: list[tuple[str, Band, float | None]] = [
        (tr("filler {filler}", filler=each.filler), each.kg, prices.filler_kg.get(each.filler))
        for each in fillers
    ]
    parts += [
        (tr("gas {gas}", gas=each.gas), each.litres.scaled(0.001), prices.gas_m3.get(each.gas))
        for each in gases
    ]
    parts += [
        (tr("discs"), discs, prices.disc),
        (tr("power"), energy, prices.power_kwh),
        (tr("time at the bench"), bench.scaled(1.0 / 3600.0), prices.labour_h),
    ]
    costs = []
    for what, amount, price in parts:
        if price is not None:
            costs.append(CostLine(what, replace(amount.scaled(price), unit=prices.currency)))
    return costs, [what for what, _, price in parts if price is None]
