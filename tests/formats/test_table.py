"""A file's format is told by what it holds, then by its name."""

import io
import re
import zipfile

import docx
import pytest

from afterdraft.errors import DamagedFile, LockedFile, UnknownFormat, UnreadableManuscript
from afterdraft.formats.kinds import READS
from afterdraft.formats.table import DOCX, EPUB, HTML, LOCKED, MARKDOWN, ODT, OLE, RTF, TEXT, Format, read, told


def word() -> bytes:
    document = docx.Document()
    document.add_paragraph("The ferry was late.")
    saved = io.BytesIO()
    document.save(saved)
    return saved.getvalue()


def zipped(*names: str) -> bytes:
    made = io.BytesIO()
    with zipfile.ZipFile(made, "w") as package:
        for name in names:
            package.writestr(name, "<x/>")
    return made.getvalue()


@pytest.mark.parametrize(
    ("data", "name", "expected"),
    [
        (word(), "draft.docx", DOCX),
        (word(), "draft.txt", DOCX),
        (word(), "draft", DOCX),
        (b"The ferry was late.", "draft.txt", TEXT),
        (b"The ferry was late.", "DRAFT.TXT", TEXT),
        (b"The ferry was late.", "draft", TEXT),
        (b"The ferry was late.", ".draft", TEXT),
        (b"The ferry was late.", "draft.md", MARKDOWN),
        (b"The ferry was late.", "draft.2.markdown", MARKDOWN),
        (b"", "draft.txt", TEXT),
        (zipped("mimetype", "content.xml"), "draft.odt", ODT),
        (zipped("mimetype", "content.xml"), "draft.docx", ODT),
        (zipped("mimetype", "content.xml"), "draft", ODT),
        (word(), "draft.odt", DOCX),
        (zipped("META-INF/container.xml"), "draft.zip", EPUB),
        (b"PK", "draft.epub", EPUB),
        (b"{\\rtf1\\ansi The ferry", "draft.rtf", RTF),
        (b"{\\rtf1\\ansi The ferry", "draft.txt", RTF),
        (b"The ferry", "draft.rtf", RTF),
        (b"<!doctype html><p>The ferry", "draft.txt", HTML),
        (b"  <html><p>The ferry", "draft", HTML),
        (b"<?xml version='1.0'?><html/>", "draft.xhtml", HTML),
        ("\ufeff<html>".encode("utf-16-le"), "draft.html", HTML),
        (b"<p>The ferry", "draft.htm", HTML),
    ],
)
def test_the_format_is_told(data: bytes, name: str, expected: Format) -> None:
    assert told(data, name) is expected


# First bytes as the formats' own specifications give them: ISO 32000 (PDF), ISO/IEC 15948 (PNG), JFIF, GIF.
@pytest.mark.parametrize(
    ("data", "name"),
    [
        (b"%PDF-1.7\n", "draft.pdf"),
        (b"%PDF-1.7\n", "draft.txt"),
        (b"\x89PNG\r\n\x1a\n", "draft.txt"),
        (b"\xff\xd8\xff\xe0\x00\x10JFIF", "draft.txt"),
        (b"GIF89a", "draft.txt"),
        (b"<!doctype docbook><p>The ferry", "draft.txt"),
        (b"<?xml version='1.0'?><book/>", "draft.html"),
        (zipped("mimetype", "other.xml"), "draft.txt"),
        (OLE + bytes(2000), "draft.doc"),
        (b"The ferry was late.", "draft.fountain"),
    ],
)
def test_what_is_not_read_is_named_with_what_is(data: bytes, name: str) -> None:
    with pytest.raises(UnknownFormat, match=rf"Nothing was changed.*{re.escape(READS)}"):
        read(data, name)


def test_a_locked_word_file_says_so() -> None:
    with pytest.raises(LockedFile, match="password"):
        read(OLE + bytes(1000) + LOCKED + bytes(1000), "draft.docx")


@pytest.mark.parametrize(
    ("data", "name"),
    [
        (word()[:3000], "draft.docx"),
        (word()[:3000], "draft"),
        (b"The ferry was late.", "draft.docx"),
        (zipped("word/other.xml"), "draft.docx"),
    ],
)
def test_a_damaged_word_file_says_so(data: bytes, name: str) -> None:
    with pytest.raises(DamagedFile, match="Nothing was changed"):
        read(data, name)


@pytest.mark.parametrize("data", [b"%PDF-1.7\n", b"{\\rtf1 The ferry", zipped("mimetype", "content.xml")])
def test_another_file_under_the_name_of_a_word_file_is_refused_in_words(data: bytes) -> None:
    with pytest.raises(UnreadableManuscript, match="Nothing was changed"):
        read(data, "draft.docx")


def test_an_empty_word_file_is_refused_in_words() -> None:
    with pytest.raises(UnreadableManuscript, match="Nothing was changed"):
        read(b"", "draft.docx")


def test_both_formats_are_read_to_the_same_text() -> None:
    texts = {read(data, name).blocks[0].text for data, name in ((word(), "a.docx"), (b"The ferry was late.", "a.txt"))}
    assert texts == {"The ferry was late."}
