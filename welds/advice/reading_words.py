"""A pooled reading in words: what each document says by itself."""

from welds.advice.pooling import Reading
from welds.advice.setting import Reason

MOST_DOCUMENTS = 5
DIFFERENT = 0.02


def alone(reading: Reading) -> list[Reason]:
    """Return one line per document where documents differ, so that pooling hides no disagreement."""
    values = list(reading.by_document.items())[:MOST_DOCUMENTS]
    if len(values) < 2 or max(v for _, v in values) / min(v for _, v in values) - 1 < DIFFERENT:
        return []
    return [
        Reason(f"this document by itself says {value:.0f} A", source=document) for document, value in values
    ]
