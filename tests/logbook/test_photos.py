"""Pictures: copied as they are, shown upright, kept by what is in them."""

import hashlib
import io
from pathlib import Path

import pytest
from PIL import Image

from welds.errors import FileUnavailableError, InputError
from welds.logbook.checking import check_log
from welds.logbook.fields import changed_entry
from welds.logbook.photos import THUMBNAIL_PX


def test_the_copy_is_the_original_byte_for_byte(log, reading, picture):
    before = picture.read_bytes()
    (photo,) = log.add(reading(photos=[str(picture)])).entry.photos
    assert photo.name == "bead.jpg"
    assert photo.sha256 == hashlib.sha256(before).hexdigest()
    assert log.photos.content(photo.sha256) == before
    assert picture.read_bytes() == before
    if log.store.is_file:
        assert log.photo_file(photo).parent == log.place.photos


def test_the_thumbnail_stands_upright_and_is_small(log, reading, picture, tmp_path):
    large = tmp_path / "large.jpg"
    with Image.open(picture) as image:
        image.resize((1200, 600)).save(large, exif=image.getexif())
    (photo,) = log.add(reading(photos=[str(large)])).entry.photos
    for _ in range(2):  # drawn, then from the cache
        with Image.open(io.BytesIO(log.thumbnail(photo))) as small:
            assert small.height == THUMBNAIL_PX
            assert small.width == THUMBNAIL_PX / 2
            assert small.getpixel((80, 20))[0] > 150  # what lay left is on top now
            assert small.getpixel((80, 20))[1] < 80
            assert min(small.getpixel((80, 300))) > 200


def test_the_same_picture_is_kept_once(log, reading, picture):
    first, second = (log.add(reading(photos=[str(picture)], notes=n)).entry for n in "ab")
    assert first.photos == second.photos
    assert len(log.photos.names()) == 1
    log.remove(first.number)
    assert log.photos.content(second.photos[0].sha256) is not None


def test_pictures_are_added_and_taken_away_by_an_edit(log, reading, picture, tables):
    entry = log.add(reading()).entry
    edited = log.edit(changed_entry(entry, {"photos": [str(picture)]}, tables))
    assert len(log.get(1).photos) == 1
    log.undo(edited.undo)
    assert log.get(1).photos == ()


def test_a_removed_entry_comes_back_with_its_pictures(log, reading, picture):
    entry = log.add(reading(photos=[str(picture)])).entry
    log.undo(log.remove(entry.number).undo)
    (photo,) = log.get(entry.number).photos
    assert log.thumbnail(photo) is not None


def test_a_missing_picture_is_counted_not_fatal(log, reading, picture):
    entry = log.add(reading(photos=[{"name": "gone.jpg", "sha256": "ab" * 32}])).entry
    assert log.thumbnail(entry.photos[0]) is None
    assert check_log(log).photos_missing == 1


@pytest.mark.parametrize("suffix", [".png", ".webp", ".tif", ".gif", ".bmp"])
def test_other_kinds_of_pictures(log, reading, tmp_path, suffix):
    file = tmp_path / f"bead{suffix}"
    Image.new("RGB", (10, 10), "red").save(file)
    (photo,) = log.add(reading(photos=[str(file)])).entry.photos
    assert log.thumbnail(photo) is not None


def test_a_picture_only_phones_can_draw_is_kept_without_a_thumbnail(log, reading, tmp_path):
    file = tmp_path / "bead.heic"
    file.write_bytes(b"\0\0\0\x18ftypheic" + bytes(50))
    (photo,) = log.add(reading(photos=[str(file)])).entry.photos
    assert log.photos.content(photo.sha256) == file.read_bytes()
    assert log.thumbnail(photo) is None


@pytest.mark.parametrize("content", [b"", b"text", b"\x89PNG\r\n\x1a\nbroken"])
def test_what_is_no_picture_is_refused_and_nothing_is_logged(log, reading, tmp_path, content):
    file = tmp_path / "bead.jpg"
    file.write_bytes(content)
    with pytest.raises(InputError, match="a picture"):
        log.add(reading(photos=[str(file)]))
    assert log.count() == 0


def test_a_picture_that_is_not_there(log, reading):
    with pytest.raises(FileUnavailableError):
        log.add(reading(photos=[str(Path("no") / "bead.jpg")]))
    assert log.count() == 0
