"""What is wrong with a job file, and where."""

from collections.abc import Sequence

from welds.errors import WeldsError
from welds.language import tr


class JobFileError(WeldsError):
    """A job file holds something that cannot be used; `others` are the faults found after this one."""

    def __init__(
        self, file: str, problem: str, line: int | None = None, others: Sequence["JobFileError"] = ()
    ) -> None:
        self.file = file
        self.line = line
        self.problem = problem
        self.others = tuple(others)
        place = tr("{file}, line {line}", file=file, line=line) if line else file
        more = tr(" (and {number} more; `welds job check` lists all)", number=len(others)) if others else ""
        super().__init__(f"{place}: {problem}{more}")
