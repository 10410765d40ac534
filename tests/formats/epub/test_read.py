"""E-books (EPUB 3.3, EPUB 2.0.1): pages in the order of reading, and what is refused."""

import pytest

from afterdraft.errors import DamagedFile, EmptyManuscript, LockedFile, ProtectedFile, TooLarge
from afterdraft.formats.epub.read import read
from afterdraft.manuscript.blocks import Aside, Source
from tests.specimens.docx import pack
from tests.specimens.epub import encryption, epub, page, parts

ONE, TWO = page("<h1>One</h1><p>It rained.</p>"), page("<h1>Two</h1><p>It stopped.</p>")


def test_pages_come_in_the_order_of_the_spine_and_each_begins_a_page() -> None:
    found = read(epub(ONE, TWO), "book.epub")
    assert [(block.text, block.gap.turn) for block in found.blocks] == [
        ("One", "none"),
        ("It rained.", "none"),
        ("Two", "page"),
        ("It stopped.", "none"),
    ]
    assert found.blocks[2].source == Source(part="OPS/2.xhtml", ordinal=4)
    assert (found.format, found.title, found.author, found.language) == (
        "epub",
        "The Salt Stair",
        "Brona Aske",
        "en-GB",
    )


def test_style_sheets_of_the_package_are_followed_and_no_others() -> None:
    link = '<link rel="stylesheet" href="css/a%20b.css"/><link rel="stylesheet" href="http://example.org/x.css"/>'
    found = read(epub(page('<p class="c">x</p>', link), more={"OPS/css/a b.css": ".c{text-align:center}"}), "b.epub")
    assert found.blocks[0].look.align == "center"


def test_notes_go_apart() -> None:
    text = (
        '<p>It<a epub:type="noteref" href="#n">1</a> rained.</p><aside epub:type="footnote" id="n"><p>Rain.</p></aside>'
    )
    found = read(epub(page(text)), "b.epub")
    assert [block.text for block in found.blocks] == ["It rained."]
    assert list(found.asides) == [Aside("footnote", 0, 2, 2, "Rain.")]


def test_a_list_of_contents_is_styled_as_one() -> None:
    nav = page('<nav epub:type="toc"><ol><li><a href="1.xhtml">One</a></li></ol></nav>')
    assert read(epub(nav, ONE), "b.epub").blocks[0].look.style == "Contents"


def test_a_page_that_is_missing_is_told() -> None:
    kept = {name: text for name, text in parts(ONE, TWO).items() if name != "OPS/2.xhtml"}
    found = read(pack(kept), "b.epub")
    assert [block.text for block in found.blocks] == ["One", "It rained."]
    assert found.notices == ("One page that the e-book names is not in the file. What is there was read.",)


def test_addresses_that_lead_out_of_the_book_name_nothing() -> None:
    for href in ("../../etc/passwd", "/etc/passwd", "file:///etc/passwd", "http://example.org/1.xhtml", "//[x"):
        found = read(pack(parts(ONE, TWO, hrefs={2: href})), "b.epub")
        assert [block.text for block in found.blocks] == ["One", "It rained."]


@pytest.mark.parametrize("way", ["http://www.idpf.org/2008/embedding", "http://ns.adobe.com/pdf/enc#RC"])
def test_hidden_fonts_are_no_hindrance(way: str) -> None:
    """EPUB 3.3 §4.3 (font obfuscation); the other way is from memory."""
    assert read(epub(ONE, more={"META-INF/encryption.xml": encryption(way)}), "b.epub").blocks


def test_protection_against_copying_is_told() -> None:
    way = "http://www.w3.org/2001/04/xmlenc#aes128-cbc"
    with pytest.raises(ProtectedFile, match=r"protected against copying.*Nothing was changed"):
        read(epub(ONE, more={"META-INF/encryption.xml": encryption(way)}), "b.epub")


@pytest.mark.parametrize(
    ("data", "error", "match"),
    [
        (b"", DamagedFile, "it is empty"),
        (b"\x89PNG\r\n\x1a\n" + bytes(50), DamagedFile, "it is not an e-book"),
        (epub(ONE)[:-30], DamagedFile, "cut short or damaged"),
        (epub(page("")), EmptyManuscript, "holds no text"),
        (pack({"content.xml": "<x/>"}), DamagedFile, r"give it the ending \.odt"),
        (pack({"mimetype": "application/epub+zip"}), DamagedFile, "not a whole e-book"),
        (pack({"META-INF/container.xml": "<container/>"}), DamagedFile, "which of its parts is the book"),
        (epub(ONE, more={"../evil.xhtml": "x"}), DamagedFile, "lead out of it"),
        (epub(ONE, more={"OPS/big.xhtml": " " * 30_000_000}), TooLarge, "unpack to"),
        (epub(ONE, more={"META-INF/container.xml": "<!DOCTYPE a [<!ENTITY b 'c'>]><a>&b;</a>"}), DamagedFile, "declar"),
    ],
)
def test_what_is_no_e_book_is_refused_in_words(data: bytes, error: type[Exception], match: str) -> None:
    with pytest.raises(error, match=f"{match}.*Nothing was changed"):
        read(data, "draft.epub")


def test_an_entry_with_a_password_is_told() -> None:
    data = bytearray(epub(ONE))
    data[data.rindex(b"PK\x01\x02") + 8] |= 1
    with pytest.raises(LockedFile, match="password"):
        read(bytes(data), "b.epub")
