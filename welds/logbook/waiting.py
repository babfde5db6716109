"""A folder of small JSON files that survives a crash: entries that wait for the log, and drafts."""

import json
import re
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from welds.errors import FileUnavailableError
from welds.reference.whole_file import write_whole

_NAME = re.compile(r"[A-Za-z0-9-]{1,64}")


class JsonFolder:
    """One JSON object a file; a file is there whole or not at all, and on the disk when `keep` returns."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder

    def keep(self, name: str, value: Mapping[str, Any]) -> Path:
        """Write the object, or raise FileUnavailableError."""
        target = self._path(name)
        try:
            self.folder.mkdir(parents=True, exist_ok=True)
        except OSError as error:
            raise FileUnavailableError(str(target), error.strerror or str(error)) from error
        write_whole(target, json.dumps(value))
        return target

    def all(self) -> dict[str, dict[str, Any]]:
        """Return every object by name, oldest first; a file that cannot be read is left where it is."""
        found = {}
        try:
            paths = sorted(self.folder.glob("*.json"), key=lambda path: path.stat().st_mtime_ns)
        except OSError:
            return {}
        for path in paths:
            try:
                value = json.loads(path.read_text(encoding="utf-8"))
            except (OSError, ValueError):
                continue
            if isinstance(value, dict):
                found[path.stem] = value
        return found

    def drop(self, name: str) -> None:
        """Remove the object, if it is there."""
        self._path(name).unlink(missing_ok=True)

    def _path(self, name: str) -> Path:
        if not _NAME.fullmatch(name):
            raise ValueError(f"not a name: {name!r}")
        return self.folder / f"{name}.json"
