"""The bench that every page's cards are fitted to, and the one place where the window reads and writes it."""

from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from welds.advice.equipment import Equipment
    from welds.reference.tables import Tables


class BenchInUse:
    """Keeps what was last read or saved; without a file there is no machine to fit a card to."""

    def __init__(self, tables: "Tables", file: Path | None) -> None:
        from welds.bench.keep import Kept, own_bench

        self._tables, self._file = tables, file
        self.kept: Kept = Kept(None) if file is None else own_bench(tables, file)

    @property
    def equipment(self) -> "Equipment":
        """What the advice is given."""
        return self.kept.equipment

    @property
    def trouble(self) -> str:
        """One line where the bench is not what its file now says."""
        return self.kept.trouble

    @property
    def file(self) -> Path:
        """Where the bench is kept."""
        from welds.bench.keep import bench_file

        return self._file or bench_file()

    def save(self, written: str) -> None:
        """Check, write and take up a bench; raises BenchFileError or FileUnavailableError."""
        from welds.bench.keep import save_bench

        self.kept = save_bench(written, self._tables, self.file)
