"""Where the reference data is, installed or not."""

from pathlib import Path

import welds
from welds.errors import ReferenceDataError
from welds.language import tr


def data_root() -> Path:
    """Return the folder with tables/ and sources.yaml: the installed package's, else the checkout's."""
    package = Path(welds.__file__).resolve().parent
    for candidate in (package / "data", package.parent / "data"):
        if (candidate / "tables").is_dir():
            return candidate
    raise ReferenceDataError("data", tr("the data folder is missing; install the program again"))
