"""What is wrong with a job file, and where."""

from collections.abc import Sequence

from welds.errors import WeldsError


class JobFileError(WeldsError):
    """A job file holds something that cannot be used; `others` are the faults found after this one."""

    def __init__(
        self, file: str, problem: str, line: int | None = None, others: Sequence["JobFileError"] = ()
    ) -> None:
        self.file = file
        self.line = line
        self.problem = problem
        self.others = tuple(others)
        more = f" (and {len(others)} more; `welds job check` lists all)" if others else ""
        super().__init__(f"{file}{f', line {line}' if line else ''}: {problem}{more}")
