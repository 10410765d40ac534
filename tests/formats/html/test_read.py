"""Web pages as writing programs make them (WHATWG HTML; CSS 2.2)."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.errors import DamagedFile, EmptyManuscript, TooLarge, UnreadableManuscript
from afterdraft.formats.html.read import read
from afterdraft.manuscript.blocks import Align, Aside, Block, Blocks, Gap, Run


def whole(body: str, head: str = "") -> Blocks:
    return read(f"<!DOCTYPE html><html><head>{head}</head><body>{body}</body></html>".encode(), "draft.html")


def blocks(body: str, head: str = "") -> tuple[Block, ...]:
    return whole(body, head).blocks


@pytest.mark.parametrize(
    ("body", "expected"),
    [
        ("<p>It\n  rained. </p>", ["It rained."]),
        ("<p>It <i>rained </i> <b>on</b>.</p>", ["It rained on."]),
        ("<p>One<br>two<br/>three<br></p>", ["One\ntwo\nthree"]),
        ("<p>One<br><br>two</p>", ["One", "two"]),
        ("<p>One<p>two", ["One", "two"]),
        ("<div>One<div>two</div>three</div>", ["One", "two", "three"]),
        ("One<hr>two", ["One", "two"]),
        ("<p>a<script>b()</script><style>c{}</style><!-- d -->e</p>", ["ae"]),
        ("<p>a&nbsp;b&mdash;c&#8212;d&amp;e</p>", ["a\u00a0b—c—d&e"]),
        ("<pre>\nOne\n  two\n\nthree</pre>", ["One\n  two", "three"]),
        ("<p><ruby>base<rp>(</rp><rt>above</rt><rp>)</rp></ruby></p>", ["base"]),
        ("<p>soft&shy;hyphen</p>", ["softhyphen"]),
        ('<p dir="rtl">الباب الأول</p>', ["الباب الأول"]),
        ("<p>a</p></body></html><p>b</p>", ["a", "b"]),
        ('<p>One <span class="pagenum">[12]</span>two</p>', ["One two"]),
        ("<table><tr><td>Ebb<td>ten</table>", ["Ebb\tten"]),
        ("<table><tr><td><p>One</p><p>two</p></td></tr></table>", ["One", "two"]),
        ("<p>a\x00b</p>", ["ab"]),
    ],
)
def test_what_stands_on_a_page(body: str, expected: list[str]) -> None:
    assert [block.text for block in blocks(body)] == expected


def test_headings_have_levels_and_paragraphs_their_classes() -> None:
    found = blocks('<h1 class="title">A</h1><h3>b</h3><p class="first  scene">c</p><div class="d">e</div>')
    assert [(block.look.level, block.look.style) for block in found] == [
        (1, "title"),
        (3, ""),
        (None, "first scene"),
        (None, "d"),
    ]
    assert [block.look.bold for block in found] == [True, True, False, False]


def test_emphasis() -> None:
    [block] = blocks("<p><em>a</em><strong>b</strong><u>c</u><s>d</s><sup>e</sup><sub>f</sub>g</p>")
    assert [(block.text[run.start : run.end], run.kind) for run in block.runs] == [
        ("a", "italic"),
        ("b", "bold"),
        ("c", "underline"),
        ("d", "strike"),
        ("e", "superscript"),
        ("f", "subscript"),
    ]


@pytest.mark.parametrize(
    "body",
    [
        '<p align="center">x</p>',
        '<h6 align="center">x</h6>',  # though a style sheet says otherwise
        '<p style="text-align: Center">x</p>',
        '<p class="c">x</p>',
        "<p id=i>x</p>",
        "<center>x</center>",
        '<div class="c"><p>x</p></div>',
    ],
)
def test_centred_by_whatever_says_so(body: str) -> None:
    [block] = blocks(body, "<style>h6 {text-align: left} /* c */ p.d, .c, #i { text-align: center !important }</style>")
    assert block.look.align == "center"


@pytest.mark.parametrize(
    ("said", "align"), [("right", "right"), ("justify", "justify"), ("left", "left"), ("x", "left")]
)
def test_alignment(said: str, align: Align) -> None:
    assert blocks(f'<p style="text-align:{said}">x</p>')[0].look.align == align


def test_style_sheets() -> None:
    head = (
        "<style>p {margin: 1em 0 0 2em; text-indent: 12pt} .i {font-style: italic} .n {font-style: normal}"
        " .k {font-variant: small-caps} .u {text-transform: uppercase} .b {font-weight: 700} .l {font-size: 150%}"
        " .h {display: none} @media print { .r {text-align: right} }</style>"
    )
    found = blocks(
        '<p>a</p><p class="i">b<span class="n">c</span></p><p class="b u l">d</p><p><span class="k">e</span>f</p>'
        '<p class="h">gone</p><p class="r" style="text-indent:0">g</p><blockquote><p>h</p></blockquote>',
        head,
    )
    looks = [block.look for block in found]
    assert (looks[0].space_before, looks[0].left, looks[0].indent, looks[0].size) == (12.0, 24.0, 12.0, 12.0)
    assert found[1].runs == (Run(0, 1, "italic"),)
    assert (looks[2].bold, looks[2].caps, looks[2].size) == (True, True, 18.0)
    assert found[3].runs == (Run(0, 1, "small caps"),)
    assert (found[4].text, looks[4].align, looks[4].indent) == ("g", "right", 0.0)
    assert looks[5].left == 54.0


def test_gaps() -> None:
    found = blocks(
        "<p>a</p><p>&nbsp;</p><p></p><p>b</p><p><br><br></p><hr><p>c</p><div><br></div><p>d</p><br><p>e</p><div></div><p>f</p>"
        '<p style="page-break-before: always">g</p><p style="page-break-after: always">h</p><p>i</p>'
        '<p style="break-before:page">&nbsp;</p><p>j</p><p><img src="x" height="20"></p><p>k</p>'
        '<p style="border-bottom: 1px solid">&nbsp;</p><p>l</p><p>m<br><br></p><p>n</p><p>o<br><br><br>p</p>'
    )
    assert {block.text: block.gap for block in found if block.gap != Gap()} == {
        "b": Gap(blanks=2),
        "c": Gap(blanks=1, rule=True),
        "d": Gap(blanks=1),
        "e": Gap(blanks=1),
        "g": Gap(turn="page"),
        "i": Gap(turn="page"),
        "j": Gap(turn="page"),
        "k": Gap(rule=True),
        "l": Gap(rule=True),
        "n": Gap(blanks=1),
        "p": Gap(blanks=1),
    }


def test_numbers_of_lists() -> None:
    found = blocks(
        '<ol><li>a<li><p>b</p><p>c</p><ol type="A"><li>d</ol><li value="7">e</ol><ul><li>f</ul><ol start="3"><li>g</ol>'
    )
    assert [(block.text, block.look.label) for block in found] == [
        ("a", "1."),
        ("b", "2."),
        ("c", ""),
        ("d", "A."),
        ("e", "7."),
        ("f", ""),
        ("g", "3."),
    ]


def test_what_is_set_apart() -> None:
    found = whole(
        '<p>It<a role="doc-noteref" href="#n"><sup>1</sup></a> rained <del>hard</del><ins>on</ins>.</p>'
        '<p>b<img src="http://example.org/x.png" alt="A ferry">c</p><table><tr><td>d<td>e</table>'
        '<section role="doc-endnotes"><ol><li id="n"><p>Rain.<a role="doc-backlink" href="#x">back</a></p></ol>'
        "</section>"
    )
    assert [block.text for block in found.blocks] == ["It rained on.", "bc", "d\te"]
    assert list(found.asides) == [
        Aside("footnote", 0, 2, 2, "Rain."),
        Aside("deleted", 0, 9, 9, "hard"),
        Aside("inserted", 0, 10, 12, "on"),
        Aside("picture", 1, 1, 1, "A ferry"),
        Aside("table", 2, 0, 3, "1 row, 2 columns"),
    ]


def test_the_heads_of_a_page() -> None:
    data = '<html lang="de"><head><title> Die  Fähre </title><meta name="author" content="Ann"></head><p hidden>x<p>a'
    found = read(data.encode(), "f.htm")
    assert (found.format, found.title, found.author, found.language) == ("html", "Die Fähre", "Ann", "de")
    assert found.notices == ("Text that is not shown was left out in one place. It is still in your file.",)


@pytest.mark.parametrize(
    ("text", "encoding", "declared"),
    [
        ("Fähre – “so”", "utf-8", ""),
        ("Fähre – “so”", "utf-8", '<meta charset="utf-8">'),
        ("Fähre – “so”", "windows-1252", ""),
        ("Fähre – “so”", "windows-1252", '<meta charset="iso-8859-1">'),
        ("Łódź", "iso8859-2", '<meta http-equiv="Content-Type" content="text/html; charset=ISO-8859-2">'),
        ("Паром", "koi8-r", "<meta charset=koi8-r>"),
        ("Fähre", "utf-8-sig", ""),
        ("Fähre – “so”", "utf-16", ""),
        ("Fähre", "utf-8", '<meta charset="no-such">'),
    ],
)
def test_encodings(text: str, encoding: str, declared: str) -> None:
    data = f"<html><head>{declared}</head><body><p>{text}</p></body></html>".encode(encoding)
    assert read(data, "f.html").blocks[0].text == text


def test_xhtml_is_read_as_what_it_is() -> None:
    page = '<?xml version="1.0"?><html xmlns="http://www.w3.org/1999/xhtml"><head><title/></head><body><p/><p>a&nbsp;b<a id="x"/>c</p></body></html>'  # noqa: E501
    assert [(block.text, block.gap.blanks) for block in read(page.encode(), "f.xhtml").blocks] == [("a\u00a0bc", 1)]


BOMB = '<!DOCTYPE html [<!ENTITY a "haha"><!ENTITY b "&a;&a;&a;"><!ENTITY f SYSTEM "file:///etc/passwd">]>'


@pytest.mark.parametrize("prologue", ["", '<?xml version="1.0"?>'])
def test_entities_are_neither_followed_nor_multiplied(prologue: str) -> None:
    page = f'{prologue}{BOMB}<html xmlns="http://www.w3.org/1999/xhtml"><body><p>x&b;y&f;z</p></body></html>'
    text = " ".join(block.text for block in read(page.encode(), "bomb.html").blocks)
    assert "haha" not in text and "root:" not in text


@pytest.mark.parametrize(
    ("data", "error"),
    [
        (b"", DamagedFile),
        (b"<html></html>", EmptyManuscript),
        (b"<p>&nbsp;</p>", EmptyManuscript),
        (b"<html>" + bytes(range(256)) * 10, DamagedFile),
        (b"<html>" + b"<div>" * 20_000 + b"x", DamagedFile),
    ],
)
def test_what_is_no_page_is_refused_in_words(data: bytes, error: type[Exception]) -> None:
    with pytest.raises(error, match="Nothing was changed"):
        read(data, "draft.html")


TAGS = st.sampled_from(
    ["<p>", "</p>", "<i>", "</i>", "<b>", "<br>", "<div>", "</div>", "<h2>", "</h2>", "<hr>", "<ol><li>", "</ol>",
     "<pre>", "</pre>", "<table><tr><td>", "<td>", "</table>", "<blockquote>", "<a href=#x>", "<img alt=x>"]
)  # fmt: skip
WORDS = st.text("ab ß\n\u00a0.", min_size=1, max_size=8)


@given(st.lists(st.one_of(TAGS, WORDS), max_size=20))
def test_no_letter_is_lost_whatever_the_tags(bits: list[str]) -> None:
    page = "".join(bits)
    letters = "".join("".join(bit for bit in bits if not bit.startswith("<")).split())
    try:
        found = read(page.encode(), "f.html")
    except UnreadableManuscript:
        assert not letters
        return
    assert "".join("".join(block.text for block in found.blocks).split()) == letters
    for block in found.blocks:
        assert all(0 <= run.start < run.end <= len(block.text) for run in block.runs)
        assert not block.text.startswith("\n") and not block.text.endswith("\n")
    for aside in found.asides:
        assert 0 <= aside.start <= aside.end <= len(found.blocks[aside.block].text)


@pytest.mark.parametrize("data", [b"<p>" + b"word " * 7_000_000, b"<p>" + b"a<br>" * 900_000])
def test_a_page_beyond_any_manuscript_is_refused(data: bytes) -> None:
    with pytest.raises(TooLarge, match="Nothing was changed"):
        read(data, "big.html")
