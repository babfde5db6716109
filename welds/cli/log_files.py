"""`welds log export`, `import`, `backup`, `restore`, `check`, `sheet`."""

from collections import Counter
from pathlib import Path

from welds.cli.arguments import STDOUT
from welds.cli.log_options import Context
from welds.cli.output import check_writable, print_json, print_text, write_text
from welds.errors import InputError
from welds.language import mark, tr

BAD_INPUT, UNAVAILABLE = 2, 4
_STANDINGS = {"new": mark("new"), "duplicate": mark("duplicate"), "bad": mark("bad")}


def export(context: Context) -> int:
    """Write every entry to a CSV or JSON file."""
    from welds.logbook.exporting import export_file

    with context.open() as log:
        count = export_file(log, Path(context.options.file), context.tables)
    if context.options.json:
        print_json({"file": context.options.file, "entries": count})
    else:
        print_text(tr("written: {file} ({count} welds)", file=context.options.file, count=count))
    return 0


def bring_in(context: Context) -> int:
    """Show what would become of each row; with --accept write it, all or nothing."""
    from welds.logbook.importing import Standing, accept, preview_file

    with context.open(to_write=True) as log:
        found = preview_file(log, Path(context.options.file), context.tables, context.asked_units)
        bad = found.count(Standing.BAD)
        is_accepted = context.options.accept and not bad
        token = accept(log, found) if is_accepted else None
    counts = Counter(row.standing.value for row in found.rows)
    if context.options.json:
        rows = [
            {"row": row.place, "standing": row.standing.value, "reason": row.reason} for row in found.rows
        ]
        print_json({"written": is_accepted, "undo": token, "counts": dict(counts), "rows": rows})
    else:
        for row in found.rows:
            if row.standing is not Standing.NEW:
                print_text(
                    tr(
                        "row {place}: {standing}: {reason}",
                        place=row.place,
                        standing=tr(_STANDINGS[row.standing.value]),
                        reason=row.reason,
                    )
                )
        words = ", ".join(f"{counts[each.value]} {tr(_STANDINGS[each.value])}" for each in Standing)
        print_text(f"{words}; {_next_step(context, is_accepted, bad, token)}")
    return BAD_INPUT if bad else 0


def _next_step(context: Context, is_accepted: bool, bad: int, token: str | None) -> str:
    if bad:
        return tr("nothing written: put the bad rows right first")
    if not is_accepted:
        return tr("nothing written yet: repeat with --accept")
    return (
        tr("written; welds log undo {token} takes them out again", token=token)
        if token
        else tr("nothing to write")
    )


def backup(context: Context) -> int:
    """Write the whole log with its pictures into one file."""
    from welds.logbook.archive import back_up

    with context.open() as log:
        count = back_up(log, Path(context.options.file))
    if context.options.json:
        print_json({"file": context.options.file, "entries": count})
    else:
        print_text(tr("written: {file} ({count} welds)", file=context.options.file, count=count))
    return 0


def restore(context: Context) -> int:
    """Make the log what a backup holds."""
    from welds.logbook.restoring import restore as make_again

    if context.options.read_only:
        raise InputError("--read-only", tr("with restore"), tr("without it"))
    count, aside = make_again(context.place, Path(context.options.file))
    if context.options.json:
        print_json({"entries": count, "old_log": str(aside) if aside else None})
    else:
        restored = tr("restored: {count} welds", count=count)
        moved = tr("the log that was there is now {file}", file=aside)
        print_text(f"{restored}; {moved}" if aside else restored)
    return 0


def check(context: Context) -> int:
    """Read the whole log and say what is found; 4 where it is damaged."""
    from welds.logbook.checking import check_log
    from welds.logbook.opening import maintain

    with context.open() as log:
        backup_file = maintain(log)
        found = check_log(log)
    if context.options.json:
        print_json(found.as_json() | {"backup_made": str(backup_file) if backup_file else None})
    else:
        print_text("\n".join(found.lines()))
        if backup_file:
            print_text(tr("backup made: {file}", file=backup_file))
    return 0 if found.is_whole else UNAVAILABLE


def sheet(context: Context) -> int:
    """Print or write the preliminary procedure sheet of one entry."""
    from welds.report.procedure_sheet import procedure_sheet

    options = context.options
    with context.open() as log:
        entry = log.get(options.entry)
    page = procedure_sheet(entry, context.tables, context.units)
    if options.pdf is not None:
        check_writable(options.pdf)
        context.write_pdf(options.pdf, page, context.units, context.tables.sources)
        print_text(tr("written: {file}", file=options.pdf))
    if options.html not in (None, STDOUT):
        write_text(options.html, page.html)
    if options.html == STDOUT:
        print_text(page.html)
    elif options.json:
        print_json({"title": page.title, "fields": [list(field) for field in page.fields]})
    elif options.pdf is None and options.html is None:
        print_text(page.text)
    return 0
