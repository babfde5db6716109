"""`welds chart`: a wall chart, thickness down, joint across."""

from collections.abc import Sequence

from welds.advice.request import Joint
from welds.advice.validate import FIELDS
from welds.cli.arguments import Parser, add_common, add_file
from welds.cli.card import WritePdf
from welds.cli.output import check_writable, destinations, print_json, print_text, write_text
from welds.cli.request_options import add_request, given_fields
from welds.cli.session import Session, open_session
from welds.language import mark, tr
from welds.report.chart import THICKNESSES, Chart, make_chart
from welds.report.chart_texts import chart_csv, chart_html, chart_json, chart_markdown, chart_text

DESCRIPTION = mark("Start and range of current for one metal and process: thickness down, joint across.")
_MANY = frozenset({"coating", "thickness", "joint"})
_FILES = ("csv", "html", "markdown", "pdf")


def run(argv: Sequence[str], write_pdf: WritePdf) -> None:
    """Draw up the chart, then print or write it."""
    options = _parser().read(argv)
    out = destinations(options, _FILES, ("json",))
    session = open_session(options)
    chart = _chart(session, given_fields(options))
    for form, file in out.files.items():
        if form == "pdf":
            check_writable(file)
            write_pdf(file, chart, session.units, session.tables.sources)
            print_text(tr("written: {file}", file=file))
        else:
            write_text(file, _rendered(chart, form, session))
    if out.on_stdout == "json":
        print_json(chart_json(chart))
    elif not out.is_silent:
        print_text(_rendered(chart, out.on_stdout or "text", session))


def _parser() -> Parser:
    parser = Parser("welds chart", tr(DESCRIPTION))
    add_request(parser, lists=_MANY, names=[name for name in FIELDS if name != "length"])
    group = parser.add_argument_group(tr("how the chart comes out"))
    add_file(group, "--csv", tr("one line a cell, metric"))
    add_file(group, "--html", tr("a page to hang on the wall"))
    add_file(group, "--markdown", tr("a Markdown table"))
    add_file(group, "--pdf", tr("a page to hang on the wall"), needs_name=True)
    add_common(parser)
    return parser


def _chart(session: Session, fields: dict[str, object]) -> Chart:
    from welds.advice.advise import advise
    from welds.advice.validate import request_from_fields

    named_rows, named_columns = fields.pop("thickness", None), fields.pop("joint", None)
    thicknesses = named_rows if isinstance(named_rows, list) else list(THICKNESSES[session.units])
    joints = named_columns if isinstance(named_columns, list) else [joint.value for joint in Joint]
    base = request_from_fields(
        {**fields, "thickness": thicknesses[0], "joint": joints[0]}, session.tables, session.asked_units
    )
    rows = [
        request_from_fields(
            {**fields, "thickness": each, "joint": joints[0]}, session.tables, session.asked_units
        )
        for each in thicknesses
    ]
    columns = [
        request_from_fields({**fields, "thickness": thicknesses[0], "joint": each}, session.tables)
        for each in joints
    ]
    return make_chart(
        base,
        sorted({row.thickness_mm for row in rows}),
        list(dict.fromkeys(column.joint for column in columns)),
        lambda request: advise(request, session.tables, session.equipment),
        keeps_rows=named_rows is not None,
        keeps_columns=named_columns is not None,
    )


def _rendered(chart: Chart, form: str, session: Session) -> str:
    if form == "csv":
        return chart_csv(chart)
    render = {"html": chart_html, "markdown": chart_markdown, "text": chart_text}[form]
    return render(chart, session.units)
