"""A pooled reading in words: what each document says by itself."""

from welds.advice.pooling import Reading
from welds.advice.setting import Reason
from welds.language import tr

MOST_DOCUMENTS = 5
DIFFERENT = 0.02


def taken_from(reading: Reading) -> str:
    """Return what a reading rests on, as the end of a sentence."""
    rows, documents = len(reading.points), len(reading.documents)
    if documents == 1:
        return tr("from {rows} rows of 1 document", rows=rows)
    return tr("from {rows} rows of {documents} documents", rows=rows, documents=documents)


def alone(reading: Reading) -> list[Reason]:
    """Return one line per document where documents differ, so that pooling hides no disagreement."""
    values = list(reading.by_document.items())[:MOST_DOCUMENTS]
    if len(values) < 2 or max(v for _, v in values) / min(v for _, v in values) - 1 < DIFFERENT:
        return []
    return [
        Reason(
            tr("this document by itself says {current:.0f} A", current=value), source=document, is_aside=True
        )
        for document, value in values
    ]
