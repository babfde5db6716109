"""What a power cut leaves of files that were being written: system calls recorded by strace, played to a cut.

At a cut, what was synced is on the disk. Of what was written since, each sector of 512 bytes is there or not,
by chance. New names, renames and removals reach the disk in order, as a journal keeps them, and no later than
their folder, or the new file itself, is synced. No file system and no disk is tried, nor one that loses what
it said was synced: this is about whether the program syncs what it has to before it goes on.
"""

import os
import random
import re
import shutil
import subprocess
import sys
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import NamedTuple

SECTOR = 512
CALLS = (
    *(
        "openat",
        "lseek",
        "write",
        "writev",
        "pwrite64",
        "pwritev",
        "ftruncate",
        "fallocate",
        "fsync",
        "fdatasync",
    ),
    *("sync_file_range", "rename", "renameat", "renameat2", "link", "unlink", "unlinkat"),
)
LINE = re.compile(r"\d+ +(\w+)\((.*)\) += (\d+)")
HANDLE = re.compile(r"(\d+|AT_FDCWD)<([^>]*)>")
TEXT = re.compile(r'"((?:\\x[0-9a-f]{2})*)"')
SHARED = "-shm"
"""What ends so is shared memory, which SQLite makes again at the first opening."""


class Step(NamedTuple):
    """One thing done to a file: make, write, cut, sync, rename (to `other`), remove; or words said."""

    what: str
    path: str
    place: int = 0
    content: bytes = b""
    other: str = ""


def can_record() -> bool:
    """Say whether strace is here and may look at a program."""
    tried = ["strace", "-o", os.devnull, "true"]
    return shutil.which("strace") is not None and subprocess.run(tried, capture_output=True).returncode == 0


def record(code: str, folder: Path, **environment: str) -> list[Step]:
    """Return what the code does to files in the folder and what it writes to its output, in order."""
    trace = folder.with_name(f"{folder.name}.trace")
    strace = [
        "strace",
        "-f",
        "-y",
        "-xx",
        "-s",
        "100000000",
        "-e",
        f"trace={','.join(CALLS)}",
        "-o",
        str(trace),
    ]
    root = str(Path(__file__).parents[2])
    done = subprocess.run(
        [*strace, sys.executable, "-P", "-c", code],
        env={**os.environ, "PYTHONPATH": root, "PYTHONDONTWRITEBYTECODE": "1", **environment},
        capture_output=True,
        text=True,
        check=False,
        timeout=120,
    )
    assert done.returncode == 0, done.stderr[-2000:]
    steps = list(_steps(trace, os.path.realpath(folder)))
    trace.unlink()
    return steps


def _steps(trace: Path, folder: str) -> Iterator[Step]:
    offsets: dict[str, int] = {}
    with trace.open(encoding="ascii") as lines:
        for line in lines:
            assert "unfinished" not in line, "two threads write at once: not taken apart here"
            found = LINE.match(line)
            if found is None:
                continue
            call, given, result = found[1], found[2], int(found[3])
            handles = [(number, _plain(path)) for number, path in HANDLE.findall(given)]
            texts = [_raw(each) for each in TEXT.findall(given)]
            numbers = [int(each) for each in re.findall(r", (\d+)", TEXT.sub("", given))]
            if call == "write" and handles and handles[0][0] == "1":
                yield Step("said", "", content=texts[0])
                continue
            paths = [os.path.normpath(each.decode()) for each in texts] if call not in WRITES else []
            path = paths[0] if paths else handles[0][1] if handles else ""
            if not path.startswith(folder) or path.endswith(SHARED):
                continue
            if call == "openat":
                offsets[str(result)] = 0
                if "O_CREAT" in given:
                    yield Step("make", path)
                if "O_TRUNC" in given:
                    yield Step("cut", path, 0)
            elif call == "lseek":
                offsets[handles[0][0]] = result
            elif call == "write":
                yield Step("write", path, offsets[handles[0][0]], texts[0][:result])
                offsets[handles[0][0]] += result
            elif call == "pwrite64":
                yield Step("write", path, numbers[-1], texts[0][:result])
            elif call == "ftruncate":
                yield Step("cut", path, numbers[0])
            elif call in ("fsync", "fdatasync"):
                yield Step("sync", path)
            elif call.startswith("rename"):
                yield Step("rename", path, other=paths[1])
            elif call.startswith("unlink"):
                yield Step("remove", path)
            else:
                raise AssertionError(f"not taken apart here: {call}")


WRITES = ("write", "pwrite64", "writev", "pwritev")


def _raw(text: str) -> bytes:
    return bytes.fromhex(text.replace("\\x", ""))


def _plain(path: str) -> str:
    return _raw(path).decode() if path.startswith("\\x") else path


@dataclass
class File:
    """What is on the disk of a file for sure, and what was done since."""

    safe: bytearray = field(default_factory=bytearray)
    since: list[Step] = field(default_factory=list)

    def sync(self) -> None:
        for step in self.since:
            _do(self.safe, step)
        self.since.clear()

    def after_cut(self, chance: random.Random) -> bytes:
        """Return what may be found: of what was not synced, some sectors and some not."""
        left, share = bytearray(self.safe), chance.choice((0.0, 0.5, 1.0))
        for step in self.since:
            if step.what == "cut" and chance.random() < share:
                _do(left, step)
            for start in range(0, len(step.content), SECTOR):
                if chance.random() < share:
                    _do(
                        left,
                        step._replace(place=step.place + start, content=step.content[start : start + SECTOR]),
                    )
        return bytes(left)


def _do(content: bytearray, step: Step) -> None:
    if step.what == "cut":
        del content[step.place :]
        content.extend(bytes(step.place - len(content)))
        return
    content.extend(bytes(max(0, step.place - len(content))))
    content[step.place : step.place + len(step.content)] = step.content


class Disk:
    """Files and their names as a program knows them, and what of that a cut would leave."""

    def __init__(self, folder: Path) -> None:
        self.folder = os.path.realpath(folder)
        self.names = {
            str(each): File(bytearray(each.read_bytes()))
            for each in Path(self.folder).rglob("*")
            if each.is_file() and not each.name.endswith(SHARED)
        }
        self.safe_names = dict(self.names)
        self.since: list[tuple[Step, File | None]] = []

    def do(self, step: Step) -> None:
        """Do one step."""
        if step.what == "make" and step.path not in self.names:
            self.names[step.path] = File()
            self._note(step, self.names[step.path])
        elif step.what in ("write", "cut"):
            self.names[step.path].since.append(step)
        elif step.what == "sync" and step.path in self.names:
            self.names[step.path].sync()
            self._keep_names(lambda made: made.what == "make" and made.path == step.path)
        elif step.what == "sync":
            self._keep_names(lambda done: step.path in map(os.path.dirname, (done.path, done.other)))
        elif step.what == "rename":
            self.names[step.other] = self.names.pop(step.path)
            self._note(step, None)
        elif step.what == "remove":
            self.names.pop(step.path, None)
            self._note(step, None)

    def leave(self, target: Path, chance: random.Random) -> None:
        """Write into an empty folder what a cut now would leave."""
        names = dict(self.safe_names)
        for step, made in self.since[: chance.randint(0, len(self.since))]:
            _name(names, step, made)
        shutil.rmtree(target, ignore_errors=True)
        target.mkdir()
        for path, file in names.items():
            place = target / os.path.relpath(path, self.folder)
            place.parent.mkdir(parents=True, exist_ok=True)
            place.write_bytes(file.after_cut(chance))

    def _note(self, step: Step, made: File | None) -> None:
        self.since.append((step, made))

    def _keep_names(self, covers) -> None:
        """Have on the disk all changes of names up to the last one that is covered."""
        last = max((place for place, (step, _made) in enumerate(self.since, 1) if covers(step)), default=0)
        for step, made in self.since[:last]:
            _name(self.safe_names, step, made)
        del self.since[:last]


def _name(names: dict[str, File], step: Step, made: File | None) -> None:
    if made is not None:
        names[step.path] = made
    elif step.what == "rename":
        names[step.other] = names.pop(step.path)
    else:
        names.pop(step.path, None)
