"""Pictures of welds: copied byte for byte, named by their hash, so that the original is never touched."""

import hashlib
import io
import os
from pathlib import Path
from typing import TYPE_CHECKING, Protocol

from sqlalchemy import Connection, select

from welds.errors import FileUnavailableError, InputError, LogbookUnavailableError
from welds.language import tr
from welds.logbook.entry import Photo
from welds.logbook.offers import CHOOSE, TRY_AGAIN
from welds.logbook.schema import photo_files
from welds.logbook.store import Store
from welds.reference.whole_file import write_whole

if TYPE_CHECKING:
    from PIL.ImageFile import ImageFile

LARGEST_BYTES = 50_000_000
LARGEST_PX, DRAWN_PX = 250_000_000, 60_000_000
"""What a picture may have, and what may be drawn in full to make a small one of it; JPEG is drawn smaller."""
THUMBNAIL_PX = 320
KINDS = {
    "JPEG": ".jpg",
    "MPO": ".jpg",
    "PNG": ".png",
    "WEBP": ".webp",
    "TIFF": ".tif",
    "GIF": ".gif",
    "BMP": ".bmp",
}
_HEIC = (b"ftypheic", b"ftypheix", b"ftypmif1", b"ftypheim")


class PhotoStore(Protocol):
    """Where the bytes are."""

    def put(self, content: bytes, suffix: str) -> str:
        """Keep the bytes and return their SHA-256."""

    def content(self, sha256: str) -> bytes | None:
        """Return the bytes, or None where they are not here."""

    def path(self, sha256: str) -> Path | None:
        """Return the file that holds the bytes, where there is one."""

    def names(self) -> set[str]:
        """Return the hashes of everything that is kept."""


class FolderPhotos:
    """Pictures as files in a folder beside the log."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder

    def put(self, content: bytes, suffix: str) -> str:
        """Write the file whole, on the disk when this returns; the same bytes are kept once."""
        sha256 = hashlib.sha256(content).hexdigest()
        if self.path(sha256) is not None:
            return sha256
        try:
            self.folder.mkdir(parents=True, exist_ok=True)
            write_whole(self.folder / f"{sha256}{suffix}", content)
        except (OSError, FileUnavailableError) as error:
            reason = error.problem if isinstance(error, FileUnavailableError) else error.strerror or error
            problem = tr("a picture cannot be kept: {reason}", reason=reason)
            raise LogbookUnavailableError(str(self.folder), problem, (TRY_AGAIN, CHOOSE)) from error
        return sha256

    def content(self, sha256: str) -> bytes | None:
        """Return the bytes, or None where the file is gone."""
        path = self.path(sha256)
        try:
            return path.read_bytes() if path else None
        except OSError:
            return None

    def path(self, sha256: str) -> Path | None:
        """Return the file, or None where there is none."""
        for suffix in (*dict.fromkeys(KINDS.values()), ".heic"):
            path = self.folder / f"{sha256}{suffix}"
            if path.is_file():
                return path
        return None

    def names(self) -> set[str]:
        """Return the hashes of the files."""
        return {path.stem for path in self.folder.glob("*.*") if path.suffix != ".part"}


class ServerPhotos:
    """Pictures inside the database, where every bench sees them."""

    def __init__(self, store: Store) -> None:
        self._store = store

    def put(self, content: bytes, suffix: str) -> str:
        """Write the bytes; the same bytes are kept once."""
        sha256 = hashlib.sha256(content).hexdigest()

        def work(connection: Connection) -> None:
            from sqlalchemy.dialects.postgresql import insert as insert_new

            connection.execute(
                insert_new(photo_files).on_conflict_do_nothing(), {"sha256": sha256, "content": content}
            )

        self._store.write(work)
        return sha256

    def content(self, sha256: str) -> bytes | None:
        """Return the bytes, or None where they are not in the database."""
        query = select(photo_files.c.content).where(photo_files.c.sha256 == sha256)
        found = self._store.read(lambda connection: connection.execute(query).scalar_one_or_none())
        return None if found is None else bytes(found)

    def path(self, sha256: str) -> Path | None:
        """Return None: there is no file."""
        return None

    def names(self) -> set[str]:
        """Return the hashes of the pictures."""
        query = select(photo_files.c.sha256)
        return self._store.read(lambda connection: set(connection.execute(query).scalars()))


def read_photo(path: Path) -> tuple[bytes, str]:
    """Return the bytes of a picture file and the suffix of its kind.

    Raises FileUnavailableError where it cannot be read, InputError where it is no picture.
    """
    try:
        with path.open("rb") as file:
            content = file.read(LARGEST_BYTES + 1)
    except (OSError, ValueError) as error:
        raise FileUnavailableError(str(path), getattr(error, "strerror", None) or str(error)) from error
    if len(content) > LARGEST_BYTES:
        raise InputError(
            "photo",
            path.name,
            tr("a picture of up to {size} MB", size=LARGEST_BYTES // 1000000),
        )
    return content, suffix_of(content, path.name)


def suffix_of(content: bytes, name: str) -> str:
    """Return the suffix that goes with the bytes, or raise InputError where they are no picture."""
    if content[4:12] in _HEIC:
        return ".heic"
    try:
        with _opened(content) as image:
            size = image.width * image.height
            kind = KINDS[image.format or ""]
            image.verify()
    except Exception as error:  # whatever a broken picture makes the decoder raise
        raise InputError("photo", name, tr("a picture: JPEG, PNG, WebP, TIFF, GIF, BMP or HEIC")) from error
    if size > LARGEST_PX:
        raise InputError(
            "photo",
            name,
            tr("a picture of up to {size} million points", size=LARGEST_PX // 1000000),
        )
    return kind


def _opened(content: bytes) -> "ImageFile":
    """Open a picture as far as its head; nothing is drawn yet."""
    from PIL import Image

    Image.init()
    Image.MAX_IMAGE_PIXELS = None  # LARGEST_PX and DRAWN_PX stand in for it, and say so in words
    # What is an MPO shows only once it was opened as a JPEG.
    return Image.open(io.BytesIO(content), formats=[kind for kind in KINDS if kind in Image.OPEN])


def add_photo(photos: PhotoStore, path: Path, name: str = "") -> Photo:
    """Copy a picture file into the log."""
    content, suffix = read_photo(path)
    return Photo((name or path.name)[:255], photos.put(content, suffix))


def thumbnail(photos: PhotoStore, sha256: str, cache: Path) -> bytes | None:
    """Return a small upright JPEG, kept in the cache; None where the picture is gone or cannot be drawn."""
    small = cache / f"{sha256}.jpg"
    if small.is_file():
        return small.read_bytes()
    content = photos.content(sha256)
    drawn = None if content is None else _small(content)
    if drawn is not None:
        try:
            cache.mkdir(parents=True, exist_ok=True)
            part = small.with_suffix(f".{os.getpid()}")
            part.write_bytes(drawn)
            os.replace(part, small)
        except OSError:
            pass  # it is drawn again next time
    return drawn


def _small(content: bytes) -> bytes | None:
    from PIL import ImageOps

    try:
        with _opened(content) as image:
            image.draft("RGB", (2 * THUMBNAIL_PX, 2 * THUMBNAIL_PX))
            if image.width * image.height > DRAWN_PX:
                return None
            upright = ImageOps.exif_transpose(image).convert("RGB")
            upright.thumbnail((THUMBNAIL_PX, THUMBNAIL_PX))
            out = io.BytesIO()
            upright.save(out, "JPEG", quality=85)
    except Exception:  # a picture nobody can draw has no thumbnail
        return None
    return out.getvalue()
