"""Encodings are told by content, against Python's own codecs and the WHATWG Encoding Standard."""

import codecs

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.formats.txt.encoding import decoded, windows_1252

PROSE = "The ferry was late, and the café “Rosé” — shut.\nÉtienne waited… ‘Why?’\n"
CYRILLIC = "Паром опоздал, и вся деревня ждала у причала.\nНикто не знал почему.\n"

# The rows 0x80 to 0x9F of index-windows-1252.txt of the WHATWG Encoding Standard (from memory); the rest is Latin-1.
WHATWG = (
    "\u20ac\x81\u201a\u0192\u201e\u2026\u2020\u2021\u02c6\u2030\u0160\u2039\u0152\x8d\u017d\x8f"
    "\x90\u2018\u2019\u201c\u201d\u2022\u2013\u2014\u02dc\u2122\u0161\u203a\u0153\x9d\u017e\u0178"
)


@pytest.mark.parametrize("text", [PROSE, CYRILLIC], ids=["latin", "cyrillic"])
@pytest.mark.parametrize(
    ("mark", "encoding"),
    [
        (b"", "utf-8"),
        (codecs.BOM_UTF8, "utf-8"),
        (b"", "utf-16-le"),
        (b"", "utf-16-be"),
        (codecs.BOM_UTF16_LE, "utf-16-le"),
        (codecs.BOM_UTF16_BE, "utf-16-be"),
        (codecs.BOM_UTF32_LE, "utf-32-le"),
        (codecs.BOM_UTF32_BE, "utf-32-be"),
    ],
)
def test_every_unicode_encoding_is_told_with_and_without_its_mark(text: str, mark: bytes, encoding: str) -> None:
    found = decoded(mark + text.encode(encoding))
    assert (found.text, found.encoding, found.notices) == (text, encoding, ())


def test_windows_1252_is_what_is_left() -> None:
    found = decoded(PROSE.encode("cp1252"))
    assert (found.text, found.encoding) == (PROSE, "windows-1252")


@pytest.mark.parametrize("byte", range(256))
def test_windows_1252_is_the_one_of_the_web(byte: int) -> None:
    one = bytes([byte])
    assert windows_1252(one) == (WHATWG[byte - 0x80] if 0x80 <= byte <= 0x9F else one.decode("latin-1"))


@given(st.text(st.characters(codec="cp1252")))
def test_windows_1252_is_pythons_where_python_has_it(text: str) -> None:
    assert windows_1252(text.encode("cp1252")) == text


@given(st.binary(max_size=200))
def test_no_bytes_are_refused(data: bytes) -> None:
    assert isinstance(decoded(data).text, str)


@given(st.text(st.characters(exclude_categories=("Cc", "Cs"), exclude_characters="\ufeff\ufffd")))
def test_utf8_comes_back_as_it_was(text: str) -> None:
    zeros_apart = text + "é"  # so that it is no other encoding's text
    assert decoded(zeros_apart.encode()).text == zeros_apart


def test_one_broken_place_does_not_make_a_utf8_file_windows_1252() -> None:
    found = decoded(PROSE.encode() * 20 + b"caf\xe9 noir\n")
    assert found.encoding == "utf-8"
    assert "caf\ufffd noir" in found.text
    assert found.notices == ("1 characters were already unreadable in the file; they show as “\ufffd”.",)


def test_control_characters_are_left_out_and_told() -> None:
    found = decoded(b"One\x00 two\x07 three\x1a\n")
    assert found.text == "One two three\n"
    assert found.notices == ("3 invisible control characters were left out.",)


def test_windows_quotes_widened_byte_by_byte_are_quotes_again() -> None:
    # The HTML Standard's table for numeric character references 0x80 to 0x9F.
    assert decoded("\x93Well\x85\x94 she said\x97once.\n".encode()).text == "“Well…” she said—once.\n"


def test_a_next_line_sign_alone_is_a_line_end_and_stays() -> None:
    assert decoded("One\x85Two".encode()).text == "One\x85Two"
