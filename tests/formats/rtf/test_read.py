"""Rich text as writing programs make it (RTF 1.9.1)."""

import time

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.errors import DamagedFile, EmptyManuscript, TooLarge
from afterdraft.formats.rtf.read import read
from afterdraft.manuscript.blocks import Align, Aside, Block, Blocks, Gap, Run

HEAD = r"{\rtf1\ansi\ansicpg1252\deff0"


def whole(body: str, head: str = "") -> Blocks:
    return read((HEAD + head + body + "}").encode("latin-1"), "draft.rtf")


def blocks(body: str, head: str = "") -> tuple[Block, ...]:
    return whole(body, head).blocks


@pytest.mark.parametrize(
    ("body", "expected"),
    [
        (r"It rained.\par On.\par", ["It rained.", "On."]),
        ("It\r\n rained.\\par\n", ["It rained."]),
        (r"One\tab two\line three\par", ["One\ttwo\nthree"]),
        (r"a\~b\_c\-d\{e\}\\f\par", ["a\u00a0b\u2011cd{e}\\f"]),
        (r"\ldblquote a\rdblquote\emdash b\rquote s\par", ["“a”—b’s"]),
        (r"caf\'e9 \'93so\'94\par", ["café “so”"]),
        (r"\u8220?Hello\u8221? he said\par", ["“Hello” he said"]),
        (r"\u8220\'93Hello\u8221\'94\par", ["“Hello”"]),
        (r"\uc0\u8220 Hello\uc2\u321 ab\'41\par", ["“HelloŁA"]),
        (r"{\uc0\u8220 }\u321?x\par", ["“Łx"]),
        (r"\u-10179?\u-8704?\par", ["\U0001f600"]),
        (r"\u-4051?x\par", ["\uf02dx"]),
        ("TextEdit\\\nlines\\\n", ["TextEdit", "lines"]),
        (r"a{\*\unknown gone}b{\pict\pngblip 89504e47}c\par", ["abc"]),
        (r"a{\field{\*\fldinst HYPERLINK x}{\fldrslt there}} b\par", ["athere b"]),
        (r"{\header gone\par}{\footer gone}a\par", ["a"]),
        (r"a\bin3 }\{bc\par", ["abc"]),
        (r"{\upr{gone}{\*\ud kept}}\par", ["kept"]),
        (r"{\b bold {\i both} } plain\par", ["bold both  plain"]),
        ("last without a mark", ["last without a mark"]),
        (r"\u1575?\u1604?\u1576?\u1575?\u1576?\par", ["الباب"]),
    ],
)
def test_what_stands_in_a_file(body: str, expected: list[str]) -> None:
    assert [block.text for block in blocks(body)] == expected


FONTS = r"{\fonttbl{\f0\fnil\fcharset0 A;}{\f1\fcharset204 B;}{\f2\fcharset238 C;}{\f3\fcharset128 D;}{\f4\cpg1253 E;}}"


@pytest.mark.parametrize(
    ("body", "expected"),
    [
        (r"\f1\'cf\'e0\'f0\'ee\'ec\par", "Паром"),
        (r"\f2\'a3\'f3d\'9f\par", "Łódź"),
        (r"\f3\'83\'65\'83\'58\par", "テス"),
        (r"\f4\'e1\par", "α"),
        (r"\f0 a{\f1\'e0}b\par", "aаb"),
    ],
)
def test_code_pages_of_fonts(body: str, expected: str) -> None:
    """Bytes as Python's codecs have them."""
    assert blocks(body, FONTS)[0].text == expected


def test_the_code_page_of_the_file() -> None:
    assert read(rb"{\rtf1\ansi\ansicpg1251 \'cf\'e0\'f0\'ee\'ec\par}", "a.rtf").blocks[0].text == "Паром"
    assert read(rb"{\rtf1\mac \'8e\par}", "a.rtf").blocks[0].text == "é"


@pytest.mark.parametrize(
    ("said", "kind"),
    [("b", "bold"), ("i", "italic"), ("ul", "underline"), ("strike", "strike"), ("scaps", "small caps"),
     ("super", "superscript"), ("sub", "subscript"), ("up6", "superscript")],
)  # fmt: skip
def test_emphasis(said: str, kind: str) -> None:
    [block] = blocks(rf"a{{\{said} b}}c\par")
    assert [(run.start, run.end, run.kind) for run in block.runs] == [(1, 2, kind)]


def test_emphasis_ends_where_it_is_undone() -> None:
    assert blocks(r"\b a\b0 b\b c\plain d\par")[0].runs == (Run(0, 1, "bold"), Run(2, 3, "bold"))


@pytest.mark.parametrize(("word", "align"), [("ql", "left"), ("qc", "center"), ("qr", "right"), ("qj", "justify")])
def test_alignment_and_lengths(word: str, align: Align) -> None:
    look = blocks(rf"\pard\{word}\li720\fi-360\sb240\sa120\fs28 x\par")[0].look
    assert (look.align, look.left, look.indent, look.space_before, look.space_after, look.size) == (
        align, 36.0, -18.0, 12.0, 6.0, 14.0
    )  # fmt: skip


STYLES = r"{\stylesheet{\s0 Normal;}{\s1\outlinelevel0\b heading 1;}{\s2\pagebb Chapter;}{\*\cs10 Strong;}}"


def test_styles_levels_and_bold_headings() -> None:
    found = blocks(
        r"\pard\s1 One\par\pard\s2 Two\par\pard\outlinelevel2 Three\par\pard\qc\b FOUR\par\pard\s9\plain x\par", STYLES
    )
    assert [(block.look.style, block.look.level, block.look.bold, block.gap.turn) for block in found] == [
        ("Heading 1", 1, False, "none"),
        ("Chapter", None, False, "page"),
        ("Normal", 3, False, "none"),
        ("Normal", None, True, "none"),
        ("", None, False, "none"),
    ]


def test_gaps() -> None:
    found = blocks(
        r"a\par\par\pard\par b\par\page c\par\pard\pagebb d\par\pard e\page f\par"
        r"\sect\sectd\sbknone g\par\sect\sectd h\par\pard\brdrb\brdrs\par\pard i\par\pard\box\brdrs\par\pard j\par"
    )
    assert {block.text: block.gap for block in found if block.gap != Gap()} == {
        "b": Gap(blanks=2),
        "c": Gap(turn="page"),
        "d": Gap(turn="page"),
        "f": Gap(turn="page"),
        "h": Gap(turn="section"),
        "i": Gap(rule=True),
        "j": Gap(blanks=1),
    }


def test_printed_numbers_are_labels() -> None:
    found = blocks(
        r"\pard{\listtext\pard\plain Chapter 1\tab}\ls1 Low Water\par\pard{\pntext\'b7\tab}salt\par\pard x\par"
    )
    assert [(block.text, block.look.label) for block in found] == [("Low Water", "Chapter 1"), ("salt", ""), ("x", "")]


def test_what_is_set_apart() -> None:
    found = whole(
        r"It{\super\chftn{\footnote\pard\plain\chftn Rain.\par More.}} {\*\atrfstart 1}rained{\*\atrfend 1}"
        r"{\*\atnid A}{\*\atnauthor Ann}\chatn{\*\annotation{\*\atnref 1}Why?} on{\footnote\ftnalt So said.}."
        r"{\shp{\*\shpinst{\sp{\sn x}{\sv 1}}{\shptxt Notice\par board\par}}}\par"
        r"{\deleted\revauthdel1\revdttmdel1742938438 Old }{\revised\revauth1 New} day.\par",
        r"{\*\revtbl{Unknown;}{Bo;}}",
    )
    assert [block.text for block in found.blocks] == ["It rained on.", "New day."]
    assert list(found.asides) == [
        Aside("footnote", 0, 2, 2, "Rain.\nMore."),
        Aside("comment", 0, 3, 9, "Why?", "Ann"),
        Aside("endnote", 0, 12, 12, "So said."),
        Aside("text box", 0, 13, 13, "Notice\nboard"),
        Aside("deleted", 1, 0, 0, "Old ", "Bo", "2026-03-04T05:06:00"),
        Aside("inserted", 1, 0, 3, "New", "Bo"),
    ]


def test_a_deleted_paragraph_mark_joins_paragraphs() -> None:
    found = whole(r"One {\deleted two\par}three\par")
    assert [block.text for block in found.blocks] == ["One three"]
    assert [(aside.kind, aside.text) for aside in found.asides] == [("deleted", "two\n")]


def test_tables_are_read_in_order() -> None:
    long = "word " * 40
    found = whole(
        r"a\par\trowd\cellx1\cellx2\pard\intbl Ebb\cell {\i ten}\cell\row"
        rf"\pard\intbl {long}\cell b\par c\cell\row\pard d\par"
    )
    assert [block.text.strip() for block in found.blocks] == ["a", "Ebb\tten", long.strip(), "b", "c", "d"]
    assert list(found.asides) == [Aside("table", 1, 0, 7, "2 rows, 2 columns")]
    assert found.blocks[1].runs == (Run(4, 7, "italic"),)


def test_hidden_text_is_told_and_a_break_off_too() -> None:
    assert whole(r"a{\v gone}b\par").notices == (
        "Text formatted as hidden was left out in one place. It is still in your file.",
    )
    cut = read(rb"{\rtf1 It rained.\par And {\b then", "a.rtf")
    assert [block.text for block in cut.blocks] == ["It rained.", "And then"]
    assert cut.notices == ("The file breaks off before its end. What is there was read.",)


def test_the_heads_of_a_file() -> None:
    found = whole(r"{\info{\title The \'93Ferry\'94}{\author Ann}}\deflang2057 x\par")
    assert (found.format, found.title, found.author, found.language) == ("rtf", "The “Ferry”", "Ann", "en-GB")


@pytest.mark.parametrize(
    ("data", "error", "match"),
    [
        (b"", DamagedFile, "it is empty"),
        (b"\x89PNG\r\n", DamagedFile, "not a rich text file"),
        (rb"{\rtf1}", EmptyManuscript, "holds no text"),
        (rb"{\rtf1 \par\par}", EmptyManuscript, "holds no text"),
        (rb"{\rtf1" + b"{" * 5000, DamagedFile, "nested deeper"),
        (rb"{\rtf1" + rb"\b" * 1_200_001, TooLarge, "signs of formatting"),
        (rb"{\rtf1" + rb"\par" * 200_001, TooLarge, "paragraphs"),
    ],
)
def test_what_is_no_rich_text_is_refused_in_words(data: bytes, error: type[Exception], match: str) -> None:
    with pytest.raises(error, match=f"{match}.*Nothing was changed"):
        read(data, "draft.rtf")


@pytest.mark.parametrize("piece", [rb"\'e9", rb"\u233?", rb"{\b a}", rb"\par ", b"a\n", rb"{\footnote a}", rb"\page "])
def test_no_input_takes_long(piece: bytes) -> None:
    start = time.process_time()
    read(rb"{\rtf1 x" + piece * (300_000 // len(piece)) + b"}", "a.rtf")
    assert time.process_time() - start < 10


BITS = st.sampled_from(
    ["It rained. ", r"{\i on}", r"\par ", r"\line ", r"\page ", r"\u228?", r"{\footnote n}", r"{\*\x y}", r"\b ",
     "{", "}", r"\cell ", r"\row ", r"\intbl ", r"\pard ", r"{\revised a}", r"{\deleted b}",
     r"\'e4", r"{\shptxt z}", r"\sect "]
)  # fmt: skip


@given(st.lists(BITS, max_size=12))
def test_runs_and_asides_lie_within_their_blocks(bits: list[str]) -> None:
    found = whole("first" + "".join(bits))
    for block in found.blocks:
        assert all(0 <= run.start < run.end <= len(block.text) for run in block.runs)
    for aside in found.asides:
        assert 0 <= aside.start <= aside.end <= len(found.blocks[aside.block].text)


@given(st.text(st.characters(exclude_categories=["Cc", "Cs"], exclude_characters="\u00ad"), min_size=1, max_size=50))
def test_every_character_by_its_number_comes_through(text: str) -> None:
    """RTF 1.9.1, "Unicode RTF": UTF-16 units as signed 16-bit numbers."""
    units = text.encode("utf-16-le")
    numbers = [int.from_bytes(units[at : at + 2], "little", signed=True) for at in range(0, len(units), 2)]
    found = whole("|" + "".join(rf"\u{number}?" for number in numbers) + "|")
    assert "".join(block.text for block in found.blocks) == f"|{text}|"
