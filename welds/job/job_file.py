"""A job from its YAML file, or every fault in it with line and field."""

from collections import Counter
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import TypeVar

from welds.advice.validate import FIELDS, enum_value
from welds.errors import FileUnavailableError, ReferenceDataError, nearest
from welds.job.faults import JobFileError
from welds.job.job import Job, Prices
from welds.job.job_entries import (
    Setting,
    read_joint,
    read_piece,
    read_prices,
    read_repair,
    read_step,
    read_stock,
)
from welds.job.job_fields import Entry, entries
from welds.language import tr
from welds.quantities.units import Units
from welds.reference.strict_yaml import YamlMap, parse_yaml, read_yaml
from welds.reference.tables import Tables

T = TypeVar("T")

_TOP = ("job", "about", "units", "defaults", "prices", "stock", "pieces", "joints", "repairs", "steps")
_LISTS = ("stock", "pieces", "joints", "repairs", "steps")


def load_job(path: Path, tables: Tables) -> Job:
    """Return the job, or raise JobFileError with the first fault and all others."""
    job, faults = read_job(path, tables)
    if faults or job is None:
        first, *others = faults
        raise JobFileError(first.file, first.problem, first.line, others)
    return job


def read_job(path: Path, tables: Tables) -> tuple[Job | None, list[JobFileError]]:
    """Return the job as far as it can be read, and every fault, by line."""
    file = str(path)
    if not path.is_file():
        raise FileUnavailableError(file, tr("is not there, or is not a file"))
    try:
        return _read(file, read_yaml(path, file), tables)
    except ReferenceDataError as error:
        return None, [JobFileError(file, error.problem, error.row)]


def faults_of_entry(text: str, section: str, key: str, tables: Tables) -> list[str]:
    """Return what is wrong with one entry of a job's text, before it is written."""
    try:
        _, faults = _read("job", parse_yaml(text, "job"), tables)
    except ReferenceDataError as error:
        return [error.problem]
    where = f"{section}.{key}"
    return [fault.problem for fault in faults if fault.problem.startswith((f"{where}:", f"{where}."))]


def _read(file: str, top: YamlMap, tables: Tables) -> tuple[Job, list[JobFileError]]:
    faults: list[JobFileError] = []
    job = _job(file, top, tables, faults)
    return job, sorted(faults, key=lambda fault: fault.line or 0)


def _job(file: str, top: YamlMap, tables: Tables, faults: list[JobFileError]) -> Job:
    head = Entry(file, "", top, faults)
    head.refuse_unknown(_TOP)
    name = head.text("job")
    if not name:
        head.complain(tr("job is missing: the name of the job"))
    units: Units | None = head.read("units", lambda value: enum_value(Units, value, "units"), None)
    defaults = _section(file, top, "defaults", faults)
    defaults.refuse_unknown(field for field in FIELDS if field != "length")
    bare = Setting(tables, units, defaults.found, {})
    stock = tuple(_each(file, top, "stock", read_stock, bare, faults))
    setting = Setting(tables, units, defaults.found, {each.id: each for each in stock})
    job = Job(
        name,
        head.text("about"),
        stock,
        tuple(_each(file, top, "pieces", read_piece, setting, faults)),
        tuple(_each(file, top, "joints", read_joint, setting, faults)),
        tuple(_each(file, top, "repairs", read_repair, setting, faults)),
        tuple(_each(file, top, "steps", read_step, setting, faults)),
        read_prices(_section(file, top, "prices", faults), tables) if "prices" in top else Prices(),
        Path(file),
        units,
    )
    _check_names(file, top, faults)
    return job


def _each(
    file: str,
    top: YamlMap,
    section: str,
    read: Callable[[str, Entry, Setting], T | None],
    setting: Setting,
    faults: list[JobFileError],
) -> Iterator[T]:
    for key, entry in entries(file, top, section, faults):
        found = read(key, entry, setting)
        if found is not None:
            yield found


def _section(file: str, top: YamlMap, name: str, faults: list[JobFileError]) -> Entry:
    found = top.get(name, YamlMap())
    if not isinstance(found, YamlMap):
        faults.append(
            JobFileError(
                file, tr("{name}: expected 'name: value' lines below it", name=name), top.line_of[name]
            )
        )
        found = YamlMap()
    return Entry(file, name, found, faults)


def _check_names(file: str, top: YamlMap, faults: list[JobFileError]) -> None:
    """Note ids that come twice and links to nothing, whether or not their entries could be read."""
    quiet: list[JobFileError] = []
    found = [(section, *each) for section in _LISTS for each in entries(file, top, section, quiet)]
    times = Counter(key for _, key, _ in found)
    tasks = [key for section, key, _ in found if section != "stock"]
    pieces = [key for section, key, _ in found if section == "pieces"]
    for _, key, entry in found:
        entry.faults = faults
        if times[key] > 1:
            entry.complain(tr("this id comes twice in the file"), "id")
        for link in ("after", "covers", "open_for", "pieces"):
            known = pieces if link == "pieces" else tasks
            for name in _listed(entry.found.get(link)):
                if name not in known:
                    near = nearest(name, known)
                    hint = tr("; nearest: {near}", near=near) if near else ""
                    entry.complain(
                        tr("{name} is no piece of this job{hint}", name=name, hint=hint)
                        if link == "pieces"
                        else tr("{name} is no task of this job{hint}", name=name, hint=hint),
                        link,
                    )
                elif name == key:
                    entry.complain(tr("{name} names itself", name=name), link)


def _listed(value: object) -> list[str]:
    listed = value if isinstance(value, list) else [value]
    return [each for each in listed if isinstance(each, str)]
