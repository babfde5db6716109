"""Which values occur in a column of the log."""

from sqlalchemy import Connection, text

_INDEXED = ("kind", "family", "metal", "machine", "welder", "material_lot")


def values_in(connection: Connection, name: str, most: int) -> list[str]:
    """Return the values in order, at most so many, by jumping along the column's index."""
    assert name in _INDEXED, name
    query = text(
        f"WITH RECURSIVE found(value) AS (SELECT min({name}) FROM entries UNION ALL"
        f" SELECT (SELECT min({name}) FROM entries WHERE entries.{name} > found.value) FROM found"
        " WHERE found.value IS NOT NULL) SELECT value FROM found WHERE value IS NOT NULL LIMIT :most"
    )
    return [str(value) for value in connection.execute(query, {"most": most}).scalars()]
