"""What people say of a weld that came out badly, as the fault table names it."""

from welds.errors import InputError
from welds.language import tr
from welds.reference.faults import find_fault
from welds.reference.tables import Tables

SAID = {
    "burned-through": "burn-through",
    "burnt-through": "burn-through",
    "blew-through": "burn-through",
    "stayed-cold": "lack-of-fusion",
    "cold": "lack-of-fusion",
    "cold-lap": "506",
    "porous": "porosity",
    "pores": "porosity",
    "cracked": "crack",
    "undercutting": "undercut",
    "warped": "distortion",
    "sagged": "509",
}


def read_fault(tables: Tables, text: object) -> str:
    """Return the plain name or the ISO 6520-1 number that a person's word means; InputError else."""
    if isinstance(text, bool) or not isinstance(text, str | int):
        raise InputError("faults", text, tr("plain names such as burn-through, or numbers of ISO 6520-1"))
    plain = "-".join(str(text).lower().replace("-", " ").replace("_", " ").split())
    return find_fault(tables, SAID.get(plain, plain))
