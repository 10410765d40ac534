"""Archives from strangers. A bomb is some 1,000:1, a novel 10:1 (measured: common practice of both)."""

import io
import struct
import zipfile

import pytest

from afterdraft.errors import DamagedFile, LockedFile, TooLarge
from afterdraft.formats import archive
from afterdraft.formats.archive import Archive
from tests.specimens.docx import pack


def test_a_sound_archive_gives_its_entries() -> None:
    opened = Archive(pack({"a/b.xml": "<x/>", "c.txt": "see"}), "n.zip")
    assert opened.names() == ("a/b.xml", "c.txt")
    assert "c.txt" in opened and "d" not in opened
    assert opened.read("a/b.xml") == b"<x/>"


def test_a_missing_entry_is_a_key_error() -> None:
    with pytest.raises(KeyError):
        Archive(pack({"a": "b"}), "n.zip").read("c")


@pytest.mark.parametrize(
    "data",
    [b"", b"PK", b"PK\x03\x04" + b"\0" * 50, pack({"a": "b" * 999})[:-30]],
    ids=["nothing", "two letters", "a beginning", "without its end"],
)
def test_no_archive(data: bytes) -> None:
    with pytest.raises(DamagedFile, match="cut short or damaged"):
        Archive(data, "n.zip")


def test_a_bomb_is_refused_before_it_is_opened() -> None:
    with pytest.raises(TooLarge, match="unpack to 29 MB"):
        Archive(pack({"a": b"\0" * 30 * 1024 * 1000}), "n.zip")


def test_what_repeats_itself_much_but_is_small_is_no_bomb() -> None:
    assert len(Archive(pack({"a": b"<w:p/>" * 100_000}), "n.zip").read("a")) == 600_000


def test_too_many_entries(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(archive, "MOST_ENTRIES", 3)
    with pytest.raises(TooLarge, match="it holds 4 files"):
        Archive(pack(dict.fromkeys("abcd", "")), "n.zip")


def test_an_entry_larger_than_its_reader_allows() -> None:
    with pytest.raises(TooLarge):
        Archive(pack({"a": "12345"}), "n.zip").read("a", most=4)


@pytest.mark.parametrize("name", ["../a", "a/../../b", "/etc/a", "C:/a", "..\\a", "\\a"])
def test_names_that_lead_out(name: str) -> None:
    with pytest.raises(DamagedFile, match="lead out of it"):
        Archive(pack({name: "x"}), "n.zip")


def test_a_false_statement_of_size_gains_nothing() -> None:
    """The central directory says 10 bytes, the data unpack to a million."""
    data = bytearray(pack({"a": b"\0" * 1_000_000}))
    directory = data.rindex(b"PK\x01\x02")
    data[directory + 24 : directory + 28] = struct.pack("<I", 10)
    with pytest.raises(DamagedFile, match="“a” is damaged"):
        Archive(bytes(data), "n.zip").read("a")


def test_damage_within_an_entry() -> None:
    data = bytearray(pack({"a": "The ferry was late. " * 50}))
    data[40] ^= 0xFF
    with pytest.raises(DamagedFile, match="“a” is damaged"):
        Archive(bytes(data), "n.zip").read("a")


def test_an_encrypted_entry() -> None:
    target = io.BytesIO()
    with zipfile.ZipFile(target, "w") as made:
        made.writestr("a", "x")
    data = bytearray(target.getvalue())
    data[data.rindex(b"PK\x01\x02") + 8] |= 1
    with pytest.raises(LockedFile):
        Archive(bytes(data), "n.zip")
