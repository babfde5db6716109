"""One CSV file read against its sheet; every fault is collected with its row and column."""

import csv
from collections.abc import Container, Iterator, Mapping
from io import StringIO
from pathlib import Path

from welds.errors import ReferenceDataError, nearest
from welds.language import tr
from welds.reference.cells import Cell, Kind
from welds.reference.sheet import Sheet
from welds.reference.tables import Row
from welds.reference.text_file import read_text

Keyed = dict[tuple[Cell, ...], Row]


def read_rows(
    path: Path,
    shown: str,
    sheet: Sheet,
    source_ids: Container[str],
    faults: list[ReferenceDataError],
    *,
    complete: bool = True,
) -> Keyed:
    """Return the sound rows by key. `complete` asks for every column, even those a row may leave empty."""
    try:
        lines = list(_lines(read_text(path, shown), shown))
    except ReferenceDataError as error:
        faults.append(error)
        return {}
    header = lines[0][1]
    problems = _header_problems(header, sheet, complete)
    if not problems and len(lines) == 1:
        problems = [(None, tr("only a header, no rows"))]
    if problems:
        faults.extend(ReferenceDataError(shown, problem, lines[0][0], column) for column, problem in problems)
        return {}
    return _Reader(shown, sheet, header, source_ids, faults).rows(lines[1:])


def _lines(text: str, shown: str) -> Iterator[tuple[int, list[str]]]:
    """Yield (line number, cells) for each line that holds anything."""
    reader = csv.reader(StringIO(text, newline=""), strict=True)
    line = 0
    try:
        for cells in reader:
            line, start = reader.line_num, line + 1
            stripped = [cell.strip() for cell in cells]
            if any(stripped):
                yield start, stripped
    except csv.Error as error:
        raise ReferenceDataError(shown, tr("not readable as CSV: {error}", error=error), line + 1) from error


def _header_problems(header: list[str], sheet: Sheet, complete: bool) -> list[tuple[str | None, str]]:
    if len(header) == 1 and ";" in header[0]:
        return [(None, tr("cells are separated by semicolons here; use commas"))]
    problems: list[tuple[str | None, str]] = []
    for name in dict.fromkeys(header):
        if name not in sheet.columns:
            hint = nearest(name, set(sheet.columns) - set(header)) if name else None
            problems.append(
                (name or None, tr("unknown column") + (tr("; nearest: {hint}", hint=hint) if hint else ""))
            )
        elif header.count(name) > 1:
            problems.append((name, tr("the column comes {count} times", count=header.count(name))))
    needed = (name for name, column in sheet.columns.items() if complete or not column.optional)
    missing = [name for name in needed if name not in header and name != "note"]
    if len(missing) == 1:
        problems.append((missing[0], tr("the column is missing")))
    elif missing:
        problems.append((None, tr("columns are missing: {names}", names=", ".join(missing))))
    return problems


class _Reader:
    """Turns the lines of one file into rows."""

    def __init__(
        self,
        shown: str,
        sheet: Sheet,
        header: list[str],
        source_ids: Container[str],
        faults: list[ReferenceDataError],
    ) -> None:
        self._shown, self._sheet, self._header = shown, sheet, header
        self._source_ids, self._faults = source_ids, faults
        self._readers = [(name, sheet.columns[name].reader()) for name in header]
        self._empty = {name: column.empty for name, column in sheet.columns.items()}
        self._graded = [name for name, column in sheet.columns.items() if column.kind is Kind.GRADES]

    def rows(self, lines: list[tuple[int, list[str]]]) -> Keyed:
        rows: Keyed = {}
        first_line: dict[tuple[Cell, ...], int] = {}
        for line, texts in lines:
            before = len(self._faults)
            row = self._row(line, texts)
            if len(self._faults) > before:
                continue
            key = tuple(row[name] for name in self._sheet.key)
            if key in rows:
                named = ", ".join(f"{name} {value}" for name, value in zip(self._sheet.key, key, strict=True))
                self._fault(
                    line,
                    tr(
                        "{named} comes twice (first in row {first_line})",
                        named=named,
                        first_line=first_line[key],
                    ),
                    self._sheet.key[0],
                )
                continue
            rows[key], first_line[key] = row, line
        return rows

    def _fault(self, line: int, problem: str, column: str | None = None) -> None:
        self._faults.append(ReferenceDataError(self._shown, problem, line, column))

    def _row(self, line: int, texts: list[str]) -> dict[str, Cell]:
        row = dict(self._empty)
        if len(texts) != len(self._header):
            self._fault(
                line,
                tr(
                    "{cells} cells, but the header has {columns}",
                    cells=len(texts),
                    columns=len(self._header),
                ),
            )
            return row
        before = len(self._faults)
        for (name, read), text in zip(self._readers, texts, strict=True):
            if text:
                try:
                    row[name] = read(text)
                except ValueError as error:
                    self._fault(line, str(error), name)
            elif not self._sheet.columns[name].optional:
                self._fault(line, tr("the cell is empty"), name)
        if len(self._faults) == before:
            self._check_across(line, row)
        return row

    def _check_across(self, line: int, row: Mapping[str, Cell]) -> None:
        if row["source_id"] not in self._source_ids:
            self._fault(
                line,
                tr("source {source_id!r} is not in sources.yaml", source_id=row["source_id"]),
                "source_id",
            )
        for low, high in self._sheet.order:
            lower, higher = row[low], row[high]
            if isinstance(lower, (int, float)) and isinstance(higher, (int, float)) and lower > higher:
                self._fault(
                    line,
                    tr(
                        "{low_column} {low:g} is above {high_column} {high:g}",
                        low_column=low,
                        low=lower,
                        high_column=high,
                        high=higher,
                    ),
                    low,
                )
        for name in self._graded:
            grades = row[name]
            if isinstance(grades, tuple):
                for graded in (entry[0] for entry in grades):
                    if graded not in self._sheet.columns:
                        self._fault(line, tr("{column!r} is not a column of this table", column=graded), name)
