"""The person's bench, machines and shelf, from one small YAML file.

Example::

    in_use: 200 A AC/DC TIG, 230 V
    machines:
      - name: 200 A AC/DC TIG, 230 V
        processes: [tig]
        current_min_a: 5
        current_max_a: 200
        duty_cycle:
          - {current_a: 200, percent: 30}
    shelf:
      tungstens: {WLa20: [1.6 mm, 3/32 in]}
      fillers: {ER5356: [2.4 mm]}
      gases: {argon: 3200}
"""

from pathlib import Path

from welds.advice.equipment import Equipment, Machine, Shelf
from welds.bench.bench import Bench
from welds.bench.machine_fields import read_machine
from welds.bench.readers import Place, entries, not_usable, text
from welds.bench.shelf_fields import read_shelf
from welds.errors import BenchFileError, ReferenceDataError, nearest
from welds.language import tr
from welds.reference.strict_yaml import YamlMap, parse_yaml
from welds.reference.tables import Tables
from welds.reference.text_file import read_text

TOP = ("in_use", "machines", "machine", "shelf")
"""`machine` is the short form for a bench with one."""


def load_equipment(path: Path, tables: Tables) -> Equipment:
    """Return the machine in use, the shelf and the other machines; raises as `load_bench` does."""
    return load_bench(path, tables).equipment()


def load_bench(path: Path, tables: Tables) -> Bench:
    """Return what the file describes, or raise BenchFileError with the first mistake's line and field.

    Gases, tungsten types and filler metals have to be names that the tables know.
    """
    return read_bench(bench_text(path), str(path), tables)


def bench_text(path: Path) -> str:
    """Return the file's text, or raise BenchFileError."""
    try:
        return read_text(path, str(path))
    except ReferenceDataError as error:
        raise BenchFileError(str(path), error.problem, error.row) from error
    except ValueError as error:  # a name that no file can have
        raise BenchFileError(str(path), tr("cannot be read: {error}", error=error)) from error


def read_bench(written: str, file: str, tables: Tables) -> Bench:
    """Return the bench that a text describes, or raise BenchFileError with the first mistake."""
    bench, faults = check_bench(written, file, tables)
    if bench is None or faults:
        raise faults[0]
    return bench


def check_bench(written: str, file: str, tables: Tables) -> tuple[Bench | None, list[BenchFileError]]:
    """Return the bench and every mistake in the text, in the order of its lines."""
    try:
        top = parse_yaml(written, file)
    except ReferenceDataError as error:
        return None, [BenchFileError(file, error.problem, error.row)]
    faults: list[BenchFileError] = []
    for field in top:
        if field not in TOP:
            near = nearest(field, TOP)
            hint = tr("; nearest: {near}", near=near) if near else ""
            allowed = "in_use, machines, shelf"
            problem = tr(
                "unknown field {field}; allowed: {allowed}{hint}", field=field, allowed=allowed, hint=hint
            )
            faults.append(BenchFileError(file, problem, top.line_of[field]))
    place = Place(file, "", None)
    machines = _machines(top, place, faults)
    shelf = Shelf()
    if "shelf" in top:
        try:
            shelf = read_shelf(top["shelf"], place.below("shelf", top.line_of["shelf"]), tables, faults)
        except BenchFileError as error:
            faults.append(error)
    in_use = _in_use(top, machines, place, faults)
    faults.sort(key=lambda fault: fault.line or 0)
    return (Bench(tuple(machines), shelf, in_use) if machines and not faults else None), faults


def _machines(top: YamlMap, place: Place, faults: list[BenchFileError]) -> list[Machine]:
    """Read the machines one by one, so that a mistake in one hides none in the next."""
    written: list[tuple[object, Place]] = []
    try:
        if "machine" in top:
            written.append((top["machine"], place.below("machine", top.line_of["machine"])))
        if "machines" in top:
            here = place.below("machines", top.line_of["machines"])
            written += [(entry, here.at(line)) for entry, line in entries(top["machines"], here)]
    except BenchFileError as error:
        faults.append(error)
        return []
    if not written and not faults:
        line = top.line_of.get("machines")
        faults.append(BenchFileError(place.file, tr("machines: at least one, with name and processes"), line))
    found: list[Machine] = []
    for value, here in written:
        try:
            machine = read_machine(value, here, faults)
        except BenchFileError as error:
            faults.append(error)
            continue
        if machine is not None and machine.name in {each.name for each in found}:
            faults.append(here.error(tr("two machines are called {name}", name=machine.name)))
        elif machine is not None:
            found.append(machine)
    return found


def _in_use(top: YamlMap, machines: list[Machine], place: Place, faults: list[BenchFileError]) -> str:
    if "in_use" not in top:
        return ""
    here = place.below("in_use", top.line_of["in_use"])
    try:
        name = text(top["in_use"], here)
    except BenchFileError as error:
        faults.append(error)
        return ""
    names = [each.name for each in machines]
    if names and not faults and name not in names:
        faults.append(here.error(not_usable(name, names)))
    return name
