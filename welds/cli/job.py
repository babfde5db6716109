"""`welds job`: a whole job from a file: check, plan, materials; and a demo to begin with."""

from collections.abc import Sequence
from pathlib import Path

from welds.cli.arguments import Once, Parser, add_common, add_file
from welds.cli.card import WritePdf
from welds.cli.output import check_writable, destinations, print_json, print_text, write_text
from welds.cli.session import Session, open_session
from welds.errors import NOTHING, InputError, nearest
from welds.job.plan import JobPlan
from welds.language import mark, tr

DESCRIPTION = mark("A whole job from a YAML file: pieces, joints, repairs, in the order to do them.")
ACTIONS = {
    "check": mark("say what is wrong in a job file"),
    "plan": mark("order, cut list, blanks, cards, tack plans, materials; --pdf writes the packet"),
    "materials": mark("filler, gas, discs, time, power and cost"),
    "demo": mark("print the demo job (invented), or write it to FILE"),
}
_FAULTY = 2


def run(argv: Sequence[str], write_pdf: WritePdf) -> int:
    """Do what the first word asks."""
    action, *rest = argv or ("",)
    if action in ("-h", "--help"):
        width = max(map(len, ACTIONS))
        print_text(
            "\n".join(
                [
                    tr(DESCRIPTION),
                    *(f"  welds job {name.ljust(width)}  {tr(what)}" for name, what in ACTIONS.items()),
                ]
            )
        )
        return 0
    if action not in ACTIONS:
        allowed = ", ".join(ACTIONS)
        raise InputError(
            "welds job", action or NOTHING, allowed, nearest(action, ACTIONS) if action else None
        )
    if action == "demo":
        return _demo(rest)
    if action == "check":
        return _check(rest)
    return _plan(rest, write_pdf) if action == "plan" else _materials(rest)


def _demo(argv: Sequence[str]) -> int:
    from welds.job.demo import demo_file

    parser = Parser("welds job demo", tr(ACTIONS["demo"]))
    parser.add_argument("file", nargs="?", default=None, metavar="FILE")
    options = parser.read(argv)
    text = demo_file().read_text(encoding="utf-8")
    if options.file is None:
        print_text(text)
    elif Path(options.file).exists():
        raise InputError("FILE", options.file, tr("a file that is not there yet"))
    else:
        write_text(options.file, text)
    return 0


def _check(argv: Sequence[str]) -> int:
    from welds.job.job_file import read_job
    from welds.job.order import ordered

    parser = _parser("check")
    options = parser.read(argv)
    session = open_session(options)
    job, faults = read_job(Path(_file(options.file)), session.tables)
    lines = [str(fault) for fault in faults]
    if job is not None and not faults:
        ordered(job)
    if options.json:
        print_json({"faults": [{"line": each.line, "problem": each.problem} for each in faults]})
    else:
        print_text("\n".join(lines) if lines else tr("no faults found"))
    return _FAULTY if faults else 0


def _plan(argv: Sequence[str], write_pdf: WritePdf) -> int:
    from welds.report.job_texts import job_html, job_json, job_text

    parser = _parser("plan")
    files = parser.add_argument_group(tr("how the plan comes out"))
    add_file(files, "--html", tr("one page without the cards"))
    add_file(files, "--pdf", tr("the packet: everything, with cards and drawings"), needs_name=True)
    options = parser.read(argv)
    out = destinations(options, ("html", "pdf"), ("json",))
    session = open_session(options)
    plan = _planned(_file(options.file), session, options.log)
    units = session.asked_units or plan.job.units or session.units
    for form, file in out.files.items():
        if form == "pdf":
            check_writable(file)
            write_pdf(file, plan, units, session.tables.sources)
            print_text(tr("written: {file}", file=file))
        else:
            write_text(file, job_html(plan, units))
    if out.on_stdout == "json":
        print_json(job_json(plan))
    elif not out.is_silent:
        print_text((job_html if out.on_stdout == "html" else job_text)(plan, units))
    return 0


def _materials(argv: Sequence[str]) -> int:
    from welds.report.job_texts import materials_csv, materials_json, materials_text

    parser = _parser("materials")
    add_file(parser.add_argument_group(tr("how the list comes out")), "--csv", tr("a shopping list"))
    options = parser.read(argv)
    out = destinations(options, ("csv",), ("json",))
    materials = _planned(_file(options.file), open_session(options), options.log).materials
    for file in out.files.values():
        write_text(file, materials_csv(materials))
    if out.on_stdout == "json":
        print_json(materials_json(materials))
    elif not out.is_silent:
        print_text((materials_csv if out.on_stdout == "csv" else materials_text)(materials))
    return 0


def _parser(action: str) -> Parser:
    parser = Parser(f"welds job {action}", tr(ACTIONS[action]))
    parser.add_argument("file", nargs="?", action=Once, metavar="FILE", help=tr("the job, a YAML file"))
    add_common(parser)
    return parser


def _file(given: str | None) -> str:
    if given is None:
        raise InputError("FILE", NOTHING, tr("a job file; welds job demo prints one to begin with"))
    return given


def _planned(file: str, session: Session, log_text: str | None) -> JobPlan:
    from welds.cli.log_evidence import log_to_read
    from welds.job.job_file import load_job
    from welds.job.past import read_past
    from welds.job.plan import plan_job

    job = load_job(Path(file), session.tables)
    with log_to_read(log_text) as log:
        past = None if log is None else read_past(job, log, session.tables)
    return plan_job(job, session.tables, session.equipment, past)
