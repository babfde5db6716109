"""Files that are not what they say: one clear line each, bounded memory, nothing lost, nothing elsewhere."""

import io
import json
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.hostile.cases import cases

ROOT = Path(__file__).parents[2]
LAUGHS = "\n".join(
    ["a0: &a0 ha", *(f"a{n}: &a{n} [{', '.join([f'*a{n - 1}'] * 9)}]" for n in range(1, 30)), "job: *a29"]
)
BAD_TEXTS = {
    "billion laughs": LAUGHS,
    "merge keys": "base: &b {x: 1}\njob: {<<: *b}",
    "a tag that makes an object": "job: !!python/object/apply:os.system ['true']",
    "deep": "[" * 100_000,
    "deep by indent": "\n".join(" " * n + "a:" for n in range(3000)),
    "long line": "job: " + "x" * 4_000_000,
    "NUL": "job: a\0b",
    "right to left": "\u202ejob: \u05d0\u05d1\u202c",
    "combining": "job: " + "e" + "\u0301" * 100_000,
    "huge number": "prices: {disc: " + "9" * 100_000 + "}\njob: x",
    "too large": "job: x\n" + "# more\n" * 1_000_000,
    "binary": "\x7fELF\x02\x01",
    "two documents": "job: x\n---\njob: y",
    "nothing": "",
    "only a mark": "\ufeff",
    "lone surrogate": 'job: "\\ud800"',
}
READERS = ("job check F", "job plan F", "job materials F", "bench check --bench F", "bench show --bench F")


def one_line(answer) -> str:
    assert answer.code in (2, 3, 4), answer
    (line,) = answer.err.splitlines() or answer.out.splitlines()
    assert "Traceback" not in line
    assert len(line) < 2000
    return line


@pytest.mark.parametrize("reader", READERS)
@pytest.mark.parametrize("name", BAD_TEXTS)
def test_a_text_that_is_none_of_ours(box, reader, name):
    file = box.work / "F"
    file.write_text(BAD_TEXTS[name], encoding="utf-8", errors="surrogatepass")
    before = file.read_bytes()
    answer = box.run(reader.split())
    if answer.code:
        assert all(len(line) < 2000 for line in (answer.err + answer.out).splitlines())
        assert "Traceback" not in answer.err
    assert answer.code in (0, 2, 4)
    assert file.read_bytes() == before


yaml_words = st.one_of(
    st.sampled_from(
        ("job", "joints", "id", "metal", "5052", "&a", "*a", "<<", "!!x", "|", ">", "- ", "{", "}")
    ),
    st.sampled_from(
        ("[", "]", ": ", "\n", "\n  ", "\t", "'", '"', "#", "---", "\0", "\u202e", "1e999", "machines")
    ),
    st.text(max_size=5),
)


@cases(60, 0.1)
@given(st.lists(yaml_words, max_size=40).map("".join), st.sampled_from(READERS), st.integers(0, 5000))
def test_any_text_as_a_job_or_a_bench(box, text, reader, cut):
    whole = (box.work / ("bench.yaml" if "bench" in reader else "job.yaml")).read_text(encoding="utf-8")
    (box.work / "F").write_text(whole[:cut] + text + whole[cut + len(text) :], "utf-8", "surrogatepass")
    answer = box.run(reader.split())
    assert answer.code in (0, 2, 3, 4)
    assert "Traceback" not in answer.err


# --------------------------------------------------------------------------------------- tables of one's own


@cases(6, 0.01)
@given(
    st.lists(st.sampled_from((",", "\n", '"', "5", "8", "\0", "=1", "9" * 500, "number", "é")), max_size=20)
)
def test_any_text_as_a_table_of_ones_own(box, parts):
    folder = box.work / "tables"
    folder.mkdir(exist_ok=True)
    head = "number,bore_mm,bore_in,source_id,place,basis\n24,38.1,1.5,COMMON_PRACTICE,mine,practice\n"
    (folder / "cups.csv").write_text(head + "".join(parts), encoding="utf-8")
    answer = box.run(["tables", "check", "tables"])
    assert answer.code in (0, 2)
    assert all("cups.csv" in line for line in answer.err.splitlines())


# ----------------------------------------------------------------------------------------- the log's files


@pytest.mark.parametrize(
    "cell",
    ["[" * 50_000, '"' * 9, "9" * 6000, "1e999", "\u202e", "e" + "\u0301" * 5000, "x" * 140_000, "NaN", "{}"],
)
@pytest.mark.parametrize("column", ["photos", "settings.current", "thickness_mm", "notes", "faults", "uid"])
def test_a_cell_that_breaks_readers(box, column, cell):
    names = {"process": "tig", "metal": "5052", "thickness_mm": "2", "joint": "butt", "outcome": "worked"}
    names = {**names, "settings.current": "80", column: cell}
    file = io.StringIO()
    file.write(
        ",".join(names) + "\n" + ",".join('"' + each.replace('"', '""') + '"' for each in names.values())
    )
    (box.work / "F.csv").write_text(file.getvalue(), encoding="utf-8")
    answer = box.run(["log", "import", "F.csv", "--accept", "--log", "yard.db"])
    assert answer.code in (0, 2)
    assert len(answer.err.splitlines()) <= 1
    assert all(len(line) < 500 for line in answer.out.splitlines())
    assert box.run(["log", "check", "--log", "yard.db"]).code == 0


@cases(15, 0.1)
@given(st.sampled_from(("yard.csv", "yard.json")), st.integers(0, 3000), st.binary(max_size=20))
def test_an_import_with_some_bytes_changed_is_all_or_nothing(box, name, at, harm):
    box.fresh()
    whole = (box.work / name).read_bytes()
    (box.work / f"F{name}").write_bytes(whole[:at] + harm + whole[at + len(harm) :])
    answer = box.run(["log", "import", f"F{name}", "--accept", "--log", "other.db"])
    assert answer.code in (0, 2)
    assert len(answer.err.splitlines()) <= 1
    listed = box.run(["log", "list", "--json", "--log", "other.db"])
    assert len(json.loads(listed.out)) <= 2
    assert answer.code == 0 or json.loads(listed.out) == []


def backup_with(box, **members: bytes) -> str:
    """Write the yard's backup anew with some members in place of its own, or beside them."""
    with zipfile.ZipFile(box.work / "yard.zip") as good, zipfile.ZipFile(box.work / "bad.zip", "w") as out:
        named = {name.replace("__", "/").replace("DOT", "."): content for name, content in members.items()}
        for name in {**dict.fromkeys(good.namelist()), **named}:
            content = named.get(name)
            out.writestr(name, good.read(name) if content is None else content, zipfile.ZIP_DEFLATED)
    return "bad.zip"


BAD_BACKUPS = {
    "a manifest nested deeply": {"manifestDOTjson": b"[" * 100_000},
    "a manifest that is a list": {"manifestDOTjson": b"[]"},
    "a manifest of zeros": {"manifestDOTjson": b"\0" * 60_000_000},
    "one endless line": {"entriesDOTjsonl": b" " * 60_000_000},
    "lines of nothing": {"entriesDOTjsonl": b"\n" * 60_000_000},
    "an entry twice": {"entriesDOTjsonl": b"@twice"},
    "an entry that is a list": {"entriesDOTjsonl": b"[]\n[]\n"},
    "an entry without fields": {"entriesDOTjsonl": b"{}\n{}\n"},
    "a deep entry": {"entriesDOTjsonl": b"[" * 100_000 + b"\n"},
    "a huge number": {"entriesDOTjsonl": b"9" * 10_000 + b"\n"},
    "a picture out of the folder": {"photos__DOTDOT__DOTDOT__evil": b"x"},
    "a picture at the root": {"photos____etc__evil": b"x"},
    "a picture of zeros": {"photos__" + "0" * 64: b"\0" * 60_000_000},
    "a picture that is text": {"photos__" + "0" * 64: b"screws"},
}


@pytest.mark.parametrize("name", BAD_BACKUPS)
def test_a_backup_made_to_harm_changes_nothing(box, name):
    members = dict(BAD_BACKUPS[name])
    if members.get("entriesDOTjsonl") == b"@twice":
        with zipfile.ZipFile(box.work / "yard.zip") as good:
            members["entriesDOTjsonl"] = good.read("entries.jsonl").splitlines(keepends=True)[0] * 2
    file = backup_with(box, **members)
    before = box.run(["log", "list", "--json", "--log", "yard.db"]).out
    there = sorted(box.work.parent.rglob("*"))
    answer = box.run(["log", "restore", file, "--log", "yard.db"])
    assert "whole" in one_line(answer)
    assert box.run(["log", "list", "--json", "--log", "yard.db"]).out == before
    new = [each for each in box.work.parent.rglob("*") if each not in there]
    assert [each for each in new if each.is_file() and not each.name.endswith((".db-shm", ".db-wal"))] == []


def test_names_that_lead_elsewhere_or_come_twice_are_never_unpacked(box):
    file = box.work / "bad.zip"
    with zipfile.ZipFile(box.work / "yard.zip") as good, zipfile.ZipFile(file, "w") as out:
        for name in good.namelist():
            out.writestr(name, good.read(name))
        for name in ("../evil", "/welds-evil", "C:\\evil", "a/../../evil", "manifest.json/evil"):
            out.writestr(name, b"evil")
        link = zipfile.ZipInfo("link")
        link.external_attr = 0o120777 << 16
        out.writestr(link, "/etc/passwd")
    answer = box.run(["log", "restore", "bad.zip", "--log", "new.db"])
    assert answer.code == 0
    assert box.strays(answer, ["new.db"]) == []
    assert not list(box.work.parent.rglob("*evil*"))
    assert not Path("/welds-evil").exists()


@cases(15, 0.1)
@given(st.integers(0, 6000), st.binary(min_size=1, max_size=30))
def test_a_backup_with_some_bytes_changed_restores_all_or_nothing(box, at, harm):
    box.fresh()
    whole = (box.work / "yard.zip").read_bytes()
    at %= len(whole)
    (box.work / "bad.zip").write_bytes(whole[:at] + harm + whole[at + len(harm) :])
    answer = box.run(["log", "restore", "bad.zip", "--log", "new.db"])
    assert answer.code in (0, 2, 4)
    if answer.code:
        one_line(answer)
        assert not (box.work / "new.db").exists()
    else:
        assert len(json.loads(box.run(["log", "list", "--json", "--log", "new.db"]).out)) == 2


# ------------------------------------------------------------------------------------------------ pictures


def bomb() -> bytes:
    """Return a PNG of some kilobytes that is 13,000 pixels wide and high."""
    import struct
    import zlib

    def chunk(kind: bytes, content: bytes) -> bytes:
        whole = kind + content
        return struct.pack(">I", len(content)) + whole + struct.pack(">I", zlib.crc32(whole))

    side = 13_000
    rows = zlib.compress(b"\0" * (side // 8 + 1) * side, 9)
    head = struct.pack(">IIBBBBB", side, side, 1, 0, 0, 0, 0)
    return b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", head) + chunk(b"IDAT", rows) + chunk(b"IEND", b"")


ADD = (
    "log add --log n.db --process tig --metal 5052 --thickness 2mm --joint butt --current 80 --outcome worked"
)
NOT_PICTURES = {
    "text": b"screws\n",
    "nothing": b"",
    "a cut JPEG": b"\xff\xd8\xff\xe0\x00\x10JFIF",
    "a head of a PNG": b"\x89PNG\r\n\x1a\n" + b"\0" * 100,
    "a drawing with a script": b"<svg xmlns='http://www.w3.org/2000/svg'><script>x</script></svg>",
    "a program": b"\x7fELF" + b"\0" * 2000,
    "an archive": b"PK\x03\x04" + b"\0" * 100,
    "PostScript": b"%!PS-Adobe-3.0 EPSF-3.0\n%%BoundingBox: 0 0 9 9\n",
}


@pytest.mark.parametrize("name", NOT_PICTURES)
def test_a_photo_that_is_none(box, name):
    (box.work / "p.jpg").write_bytes(NOT_PICTURES[name])
    assert "photo" in one_line(box.run([*ADD.split(), "--photo", "p.jpg"]))
    assert not list(box.work.glob("n-photos/*"))


def test_a_photo_larger_than_the_memory_is_kept_or_refused_in_one_line(box):
    (box.work / "p.png").write_bytes(bomb())
    answer = box.run([*ADD.split(), "--photo", "p.png"])
    assert (answer.code == 0 and answer.err == "") or "photo" in one_line(answer)


# ------------------------------------------------------------------------- sizes: memory and time are bounded

MEASURE = """
import sys
sys.path.insert(0, {root!r})
from welds.cli.main import main
code = main({words!r}, open_window=lambda *_: 0, write_pdf=lambda *_: None)
status = open("/proc/self/status").read()
print(int(status.partition("VmHWM:")[2].split()[0]) // 1024, file=sys.stderr)
sys.exit(code)
"""


def measured(box, words: list[str], stdin=None) -> tuple[int, str, int]:
    """Run in a process of its own; return code, what it said and its largest memory in MB."""
    code = MEASURE.format(root=str(ROOT), words=words)
    done = subprocess.run(
        [sys.executable, "-P", "-c", code],
        cwd=box.work,
        stdin=stdin,
        capture_output=True,
        text=True,
        check=False,
        timeout=120,
    )
    *said, memory = done.stderr.splitlines()
    return done.returncode, "\n".join(said), int(memory)


linux = pytest.mark.skipif(not Path("/proc/self/status").exists(), reason="the system tells its memory there")


@linux
@pytest.mark.slow
def test_a_gigabyte_takes_no_gigabyte(box):
    with (box.work / "F.csv").open("wb") as file:
        file.write(b"process,metal,thickness_mm,joint,outcome,settings.current\n")
        file.truncate(1_000_000_000)
    code, said, memory = measured(box, ["log", "import", "F.csv"])
    assert (code, said.count("\n")) == (2, 0)
    assert memory < 250


@linux
@pytest.mark.slow
@pytest.mark.parametrize("words", ["job check /dev/zero", "log add", f"{ADD} --photo /dev/zero"])
def test_a_file_without_an_end_is_given_up(box, words):
    with open("/dev/zero", "rb") as endless:
        code, said, memory = measured(box, words.split(), endless)
    assert code in (2, 4)
    assert said.count("\n") == 0
    assert memory < 400


def test_a_device_is_no_backup(box):
    assert "whole" in one_line(box.run(["log", "restore", "/dev/zero", "--log", "yard.db"]))


@linux
@pytest.mark.slow
def test_an_endless_line_gets_its_error_and_the_next_one_its_card(box):
    with (box.work / "F").open("wb") as file:
        file.truncate(200_000_000)
        file.seek(0, 2)
        file.write(b"\nno request\n")
    with (box.work / "F").open("rb") as lines:
        code, said, memory = measured(box, ["card", "--batch"], lines)
    assert (code, said) == (0, "")
    assert memory < 250
