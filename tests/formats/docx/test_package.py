"""Files that are not what they seem, or not whole: refused in plain words."""

import pytest

from afterdraft.errors import DamagedFile, EmptyManuscript, LockedFile, TooLarge, UnreadableManuscript
from afterdraft.formats.docx.read import read
from tests.specimens.docx import as_strict, br, docx, p, pack, r, style, styled, unpack

GOOD = docx(p("The ferry was late."))
OLE = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"  # how compound files begin (MS-CFB §2.2)
DOCUMENT = "word/document.xml"


def changed(part: str, content: bytes | None) -> bytes:
    """The good file with another content of one part, or without it."""
    files = {name: data for name, data in unpack(GOOD).items() if name != part}
    return pack(files | ({part: content} if content is not None else {}))


BOMB = b"".join(
    [
        b'<!DOCTYPE d [<!ENTITY a "ha">',
        *(b'<!ENTITY %c "%s">' % (98 + level, b"&%c;" % (97 + level) * 10) for level in range(9)),
        b"]><d>&j;</d>",
    ]
)
OUTSIDE = b'<!DOCTYPE d [<!ENTITY x SYSTEM "file:///etc/hostname">]><d>&x;</d>'
DEEP = b'<w:p xmlns:w="x">' * 100_000

REFUSED = {
    "empty file": (b"", DamagedFile, "it is empty"),
    "text": (b"Once upon a time", DamagedFile, "not a Word document"),
    "old .doc": (OLE + b"\0" * 600 + "WordDocument".encode("utf-16-le"), DamagedFile, "save it as .docx"),
    "locked": (OLE + b"\0" * 600 + "EncryptedPackage".encode("utf-16-le"), LockedFile, "password"),
    "picture": (b"\x89PNG\r\n\x1a\n", DamagedFile, "a picture"),
    "photograph": (b"\xff\xd8\xff\xe0", DamagedFile, "a picture"),
    "PDF": (b"%PDF-1.7", DamagedFile, "a PDF"),
    "rtf": (b"{\\rtf1 x}", DamagedFile, ".rtf"),
    "cut short": (GOOD[: len(GOOD) // 2], DamagedFile, "cut short"),
    "only its beginning": (GOOD[:10], DamagedFile, "cut short"),
    "no text part": (changed(DOCUMENT, None), DamagedFile, "no text part"),
    "spreadsheet": (pack({"xl/workbook.xml": "<x/>"}), DamagedFile, "a spreadsheet"),
    "OpenDocument": (pack({"content.xml": "<x/>"}), DamagedFile, ".odt"),
    "e-book": (pack({"META-INF/container.xml": "<x/>"}), DamagedFile, ".epub"),
    "other root": (changed(DOCUMENT, b"<x/>"), DamagedFile, "no text body"),
    "broken XML": (changed(DOCUMENT, b"<w:document"), DamagedFile, "is damaged"),
    "empty part": (changed(DOCUMENT, b""), DamagedFile, "is damaged"),
    "broken listing": (changed("_rels/.rels", b"\0"), DamagedFile, "is damaged"),
    "entity bomb": (changed(DOCUMENT, BOMB), DamagedFile, "damaged|declarations"),
    "entity from outside": (changed(DOCUMENT, OUTSIDE), DamagedFile, "declarations"),
    "endless nesting": (changed(DOCUMENT, DEEP), DamagedFile, "is damaged"),
    "no text": (docx(p(), p(r("  "))), EmptyManuscript, "holds no text"),
    "no paragraph": (docx(), EmptyManuscript, "holds no text"),
    "zip bomb": (changed(DOCUMENT, b" " * 80_000_000), TooLarge, "unpack"),
}


@pytest.mark.parametrize(("data", "error", "words"), REFUSED.values(), ids=REFUSED)
def test_refused_in_plain_words(data: bytes, error: type[UnreadableManuscript], words: str) -> None:
    with pytest.raises(error, match=words) as caught:
        read(data, "my novel.docx")
    assert "my novel.docx" in str(caught.value) and "Nothing was changed" in str(caught.value)


def test_nested_to_the_parsers_limit_is_read_or_refused() -> None:
    deep = "<w:smartTag>" * 240 + r("deep") + "</w:smartTag>" * 240
    assert read(docx(p(deep)), "deep.docx").blocks[0].text == "deep"
    deeper = "<w:smartTag>" * 1900 + r("deep") + "</w:smartTag>" * 1900
    with pytest.raises(DamagedFile):
        read(docx(p(deeper)), "deep.docx")


def test_the_strict_form_of_the_standard_reads_the_same() -> None:
    sheet = style("H", "heading 1", '<w:pPr><w:jc w:val="center"/></w:pPr>')
    body = styled("H", "One"), p(r("It ") + r("rained", "<w:i/>") + br("page") + r("on."))
    usual = docx(*body, styles=sheet, title="Rain", author="Ann Bell")
    one, other = read(usual, "a.docx"), read(as_strict(usual), "a.docx")
    assert one.blocks == other.blocks
    assert (other.title, other.author) == ("Rain", "Ann Bell")


def test_parts_are_found_by_their_relations_not_by_name() -> None:
    files = unpack(docx(p("Found."), styles=style("N", "Normal", default=True)))
    moved = {name.replace("word/document.xml", "deep/er/text.xml"): data for name, data in files.items()}
    moved["_rels/.rels"] = moved["_rels/.rels"].replace(b'"word/document.xml', b'"/deep/er/text.xml')
    moved["deep/er/_rels/text.xml.rels"] = files["word/_rels/document.xml.rels"].replace(
        b'"styles', b'"../../word/styles'
    )
    block = read(pack(moved), "moved.docx").blocks[0]
    assert (block.text, block.look.style, block.source.part) == ("Found.", "Normal", "deep/er/text.xml")


def test_a_file_without_any_listing_is_read_all_the_same() -> None:
    assert read(changed("_rels/.rels", None), "bare.docx").blocks[0].text == "The ferry was late."


def test_a_relation_to_the_outside_is_not_followed() -> None:
    files = unpack(docx(p("Safe."), styles=""))
    listing = files["word/_rels/document.xml.rels"].replace(b"Target=", b'TargetMode="External" Target=')
    assert read(pack(files | {"word/_rels/document.xml.rels": listing}), "x.docx").blocks[0].look.style == ""
