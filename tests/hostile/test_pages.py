"""Whatever is typed into a page: a sentence beside the field or an answer, and no other error."""

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from tests.hostile.cases import cases
from tests.hostile.sites import refusal
from tests.hostile.words import LENGTHS, ODD, REQUEST, VALUES, anything
from welds.advice.advise import advise
from welds.advice.evidence import Outcome
from welds.advice.request import Joint, Process, Request
from welds.advice.validate import FIELDS
from welds.bench.templates import USUAL, starting_bench
from welds.gui.bench_in_use import BenchInUse
from welds.gui.engine import load_engine
from welds.gui.pages.bench.form_fields import FIELDS as BENCH_FIELDS
from welds.gui.pages.bench.presenter import BenchPresenter
from welds.gui.pages.compare.presenter import ComparePresenter
from welds.gui.pages.heat.knobs import knobs_of
from welds.gui.pages.heat.live import frame_of
from welds.gui.pages.log.entry_form import TEXTS, EntryForm
from welds.gui.pages.setup.presenter import DEFAULTS, SetupPresenter
from welds.job.demo import demo_file
from welds.job.job_edit import with_entry
from welds.job.job_file import faults_of_entry
from welds.job.job_form import FORMS
from welds.logbook.filter_fields import FIELDS as FILTER_FIELDS
from welds.logbook.filter_fields import filter_of
from welds.quantities.units import Units

units = st.sampled_from(list(Units))
likely = st.sampled_from(sorted({*LENGTHS, *(word for words in VALUES.values() for word in words)}))
typed = st.one_of(likely, anything, likely.map(lambda text: text[1:] + text[:1]))


@pytest.fixture(scope="module")
def engine():
    return load_engine(None)


def field_texts(names, most=6):
    """Return a strategy of some fields by name, as a person types them one after the other."""
    return st.lists(st.tuples(st.sampled_from(sorted(names)), typed), max_size=most)


@cases(40, 0.05)
@given(st.lists(st.tuples(st.sampled_from(FIELDS), typed), max_size=6), units)
def test_set_up(qapp, engine, changes, shown_in):
    presenter = SetupPresenter(engine)
    presenter.restore(DEFAULTS, shown_in)
    for name, text in changes:
        likely_text = REQUEST.get(name, ODD)[len(text) % len(REQUEST.get(name, ODD))]
        for value in (likely_text, text):
            presenter.set_field(name, (value,) if name == "coating" else value)
            assert presenter.is_stale or presenter.card is not None
            presenter.go_to_nearest()


@cases(8, 0.01)
@given(st.lists(st.tuples(st.sampled_from(("thickness", "metal", "base")), typed), max_size=4), units)
def test_side_by_side(qapp, engine, steps, shown_in):
    presenter = ComparePresenter(engine)
    presenter.take_card(DEFAULTS, shown_in)
    for kind, text in steps:
        if kind == "base":
            presenter.set_thickness(text)
        else:
            presenter.choose_kind(kind)
            before = presenter.columns
            assert presenter.add_value(text) or presenter.columns == before
        assert presenter.shown is not None


@cases(15, 0.02)
@given(field_texts(BENCH_FIELDS), anything, anything, units)
def test_bench(qapp, tables, tmp_path, changes, shades, litres, shown_in):
    file = tmp_path / "bench.yaml"
    file.write_text(starting_bench(USUAL), encoding="utf-8")
    before = file.read_bytes()
    in_use = BenchInUse(tables, file)
    presenter = BenchPresenter(in_use, tables, lambda request, equipment: advise(request, tables, equipment))
    standing = []
    presenter.standing_changed.connect(standing.append)
    presenter.start()
    presenter.take_request(Request(Process.TIG, "5052", 2.0, Joint.TEE), shown_in)
    for name, text in changes:
        presenter.set_field(name, text)
    presenter.set_helmets(shades)
    presenter.set_gases({"argon": litres})
    presenter.save()
    now = file.read_bytes()
    if standing[-1].is_sound and not standing[-1].is_unsaved:
        assert not BenchInUse(tables, file).trouble
    else:
        assert now == before
        assert standing[-1].words


@cases(60, 0.05)
@given(field_texts(TEXTS), st.lists(st.tuples(st.integers(0, 200), typed), max_size=5), units)
def test_log_form(qapp, engine, texts, settings, shown_in):
    form = EntryForm(engine, shown_in, {"process": "tig", "metal": "5052", "joint": "butt"})
    for name, text in texts:
        form.set_text(name, text)
    names = sorted(form.kinds)
    for place, text in settings:
        form.set_setting(names[place % len(names)], text)
    draft = form.draft()
    assert "\n" not in refusal(lambda: form.reading(Outcome.WORKED))
    assert EntryForm.of_draft(engine, draft).texts == form.texts


@cases(60, 0.05)
@given(field_texts(FILTER_FIELDS), units)
@example(fields=[("photos", "0\n0")], shown_in=Units.METRIC)  # found by ten thousand
def test_filters_of_the_log(tables, fields, shown_in):
    assert "\n" not in refusal(lambda: filter_of(dict(fields), tables, shown_in))


@cases(30, 0.05)
@given(st.integers(0, 20), typed, units)
def test_heat_sliders(engine, place, text, shown_in):
    knobs = knobs_of(engine.card(engine.request(DEFAULTS)))
    name, knob = list(knobs.knobs.items())[place % len(knobs.knobs)]

    def drawn():
        request, settings = knobs.with_value(name, knob.read(text, shown_in)).asked
        return frame_of(request, settings, engine.tables, None, lambda: False)

    assert "\n" not in refusal(drawn)


@cases(30, 0.03)
@given(st.sampled_from(sorted(FORMS)), st.data())
def test_entries_of_a_job(tables, section, data):
    text = demo_file().read_text(encoding="utf-8")
    names = [field.name for field in FORMS[section]]
    fields = dict(data.draw(st.lists(st.tuples(st.sampled_from(names), typed), max_size=4)))
    key = data.draw(st.one_of(st.just("new-one"), anything))

    def written():
        changed = with_entry(text, section, key, fields)
        faults_of_entry(changed, section, key, tables)
        assert changed.startswith(text[:200])

    assert refusal(written).count("\n") < 12  # one line a field that cannot be used


def test_half_a_character_as_a_name_is_refused():
    """As a file's broken name has it; found by ten thousand entries."""
    said = refusal(lambda: with_entry(demo_file().read_text(encoding="utf-8"), "joints", "\udcff", {}))
    assert "no YAML any more" in said
