"""What the log knows of a job: past welds for its cards, and the entries that its tasks name."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from welds.advice.evidence import Evidence
from welds.advice.request import Joint, Process, Request
from welds.job.job import Job
from welds.logbook.entry import Entry
from welds.reference.metals import find_metal
from welds.reference.tables import Tables

if TYPE_CHECKING:
    from welds.logbook.logbook import Logbook


@dataclass(frozen=True, slots=True)
class Past:
    """Evidence by process and family; entries by the word in the file, None where the log has none of it."""

    evidence: Mapping[tuple[Process, str], Evidence] = field(default_factory=dict)
    logged: Mapping[str, Entry | None] = field(default_factory=dict)

    def of(self, request: Request, tables: Tables) -> Evidence | None:
        """Return the welds that may speak about a request; None where there are none."""
        found = self.evidence.get(_kind(request, tables))
        return found if found is not None and found.welds else None


def read_past(job: Job, log: "Logbook", tables: Tables, *, is_learning: bool = True) -> Past:
    """Read what the job needs from an open log, once for each process and family of metal."""
    from welds.logbook.past import evidence_for

    requests = {_kind(each, tables): each for each in _requests(job)} if is_learning else {}
    named = dict.fromkeys(word for task in job.tasks for word in task.links.log)
    return Past(
        {kind: evidence_for(log, request, tables) for kind, request in requests.items()},
        {word: log.find(word) for word in named},
    )


def _requests(job: Job) -> Iterator[Request]:
    """Yield what cards are asked for; of a repair both processes, as the bench decides which one does it."""
    yield from (joint.request for joint in job.joints)
    for work in job.repairs:
        damage = work.damage
        yield from (Request(each, damage.metal.id, damage.thickness_mm, Joint.BUTT) for each in Process)


def _kind(request: Request, tables: Tables) -> tuple[Process, str]:
    return request.process, find_metal(tables, request.metal).family
