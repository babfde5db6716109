"""Which gas of the tables serves this case; asked by every rule that depends on the gas."""

from collections.abc import Mapping

from welds.advice.case import Case
from welds.advice.mig_seams import Bench, build_mig_seams
from welds.advice.request import Process, Transfer
from welds.errors import InputError, NotCoveredError, nearest
from welds.reference.shielding import Gas, GasUse, find_gas, gas_uses
from welds.reference.tables import Tables

MOSTLY_HELIUM_PERCENT = 75.0
"""From here on a TIG gas behaves as helium does; below it as argon does."""


Orders = Mapping[tuple[str, str, Transfer | None], tuple[Gas, ...]]


def suitable_gases(case: Case, transfer: Transfer | None) -> tuple[Gas, ...]:
    """Return the gases that fit process, family and transfer, the usual one first."""
    return case.tables.derived(build_orders).get((case.request.process, case.family, transfer), ())


def build_orders(tables: Tables) -> Orders:
    """Return the fitting gases of every case: those schedules were printed for first, then by standing."""
    lines = tables.derived(build_mig_seams).volt_lines
    orders: dict[tuple[str, str, Transfer | None], tuple[Gas, ...]] = {}
    for family in {use.family for use in tables.records(GasUse)}:
        for process, transfer in ((Process.TIG, None), *((Process.MIG, each) for each in Transfer)):
            gases = [find_gas(tables, use.gas) for use in gas_uses(tables, process, family, transfer)]
            if transfer is not None:
                bench = Bench(family, transfer)
                gases.sort(key=lambda gas: (bench, gas.id) not in lines)
            orders[process, family, transfer] = tuple(gases)
    return orders


def choose_gas(case: Case, transfer: Transfer | None = None) -> tuple[Gas, str]:
    """Return the gas and why: the one on the machine, else the usual one, else one from the shelf."""
    fitting = suitable_gases(case, transfer)
    words = f"{case.request.process} on {case.family}" + (f", {transfer} transfer" if transfer else "")
    if not fitting:
        raise NotCoveredError(words, "the tables hold no gas for it")
    by_id = {gas.id: gas for gas in fitting}
    wanted = case.request.gas
    if wanted is not None:
        if wanted not in by_id:
            close = nearest(wanted, by_id) or fitting[0].id
            raise InputError("gas", wanted, f"{', '.join(by_id)} for {words}", close)
        return by_id[wanted], "the gas on the machine"
    stocked = [gas for gas in fitting if gas.id in case.equipment.shelf.gases]
    if stocked and fitting[0] not in stocked:
        return stocked[0], f"{fitting[0].name} is not on the shelf; this one suits too"
    return fitting[0], "the usual gas for this metal and process"


def tig_gas_class(gas: Gas) -> str:
    """Return which TIG schedules a gas falls under."""
    return "helium" if gas.helium_percent >= MOSTLY_HELIUM_PERCENT else "argon"
