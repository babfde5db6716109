"""Which gas of the tables serves this case; asked by every rule that depends on the gas."""

from collections.abc import Mapping
from itertools import product

from welds.advice.case import Case
from welds.advice.mig_seams import Bench, build_mig_seams
from welds.advice.request import Process, Transfer
from welds.errors import InputError, NotCoveredError, nearest
from welds.language import tr
from welds.reference.names import id_or_name
from welds.reference.shielding import Gas, GasUse, find_gas, gas_uses
from welds.reference.tables import Tables

MOSTLY_HELIUM_PERCENT = 75.0
"""From here on a TIG gas behaves as helium does; below it as argon does."""


def suitable_gases(case: Case, transfer: Transfer | None) -> tuple[Gas, ...]:
    """Return the gases that fit process, family and transfer, the usual one first."""
    if case.request.process is Process.TIG:
        return case.tables.derived(build_tig_orders).get(case.family, ())
    return case.tables.derived(build_mig_orders).get((case.family, transfer), ())


def build_tig_orders(tables: Tables) -> Mapping[str, tuple[Gas, ...]]:
    """Return the fitting TIG gases of every family by standing."""
    return {family: _in_order(tables, Process.TIG, family, None) for family in _families(tables)}


def build_mig_orders(tables: Tables) -> Mapping[tuple[str, Transfer | None], tuple[Gas, ...]]:
    """Return the fitting MIG gases: those that schedules were printed for first, then by standing."""
    lines = tables.derived(build_mig_seams).volt_lines
    orders: dict[tuple[str, Transfer | None], tuple[Gas, ...]] = {}
    for family, transfer in product(_families(tables), Transfer):
        standing = _in_order(tables, Process.MIG, family, transfer)
        printed = [gas for gas in standing if (Bench(family, transfer), gas.id) in lines]
        orders[family, transfer] = tuple(dict.fromkeys((*printed, *standing)))
    return orders


def _families(tables: Tables) -> set[str]:
    return {use.family for use in tables.records(GasUse)}


def _in_order(tables: Tables, process: Process, family: str, transfer: Transfer | None) -> tuple[Gas, ...]:
    return tuple(find_gas(tables, use.gas) for use in gas_uses(tables, process, family, transfer))


def choose_gas(case: Case, transfer: Transfer | None = None) -> tuple[Gas, str]:
    """Return the gas and why: the one on the machine, else the usual one, else one from the shelf."""
    fitting = suitable_gases(case, transfer)
    wanted = case.request.gas
    if not fitting:
        raise NotCoveredError(_words(case, transfer), tr("the tables hold no gas for it"))
    if wanted is not None:
        by_id = {gas.id: gas for gas in fitting}
        if wanted not in by_id:
            close = nearest(wanted, by_id) or fitting[0].id
            raise InputError(
                "gas",
                wanted,
                tr("{gases} for {asked}", gases=", ".join(by_id), asked=_words(case, transfer)),
                close,
            )
        return by_id[wanted], tr("the gas on the machine")
    stocked = [gas for gas in fitting if gas.id in case.equipment.shelf.gases]
    if stocked and fitting[0] not in stocked:
        return stocked[0], tr("{name} is not on the shelf; this one suits too", name=fitting[0].name)
    return fitting[0], tr("the usual gas for this metal and process")


def _words(case: Case, transfer: Transfer | None) -> str:
    asked = tr("{process} on {metal}", process=case.request.process.value, metal=id_or_name(case.family))
    return asked + (tr(", {transfer} transfer", transfer=id_or_name(transfer)) if transfer else "")


def tig_gas_class(gas: Gas) -> str:
    """Return which TIG schedules a gas falls under."""
    return "helium" if gas.helium_percent >= MOSTLY_HELIUM_PERCENT else "argon"
