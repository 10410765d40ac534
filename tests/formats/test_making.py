"""Gaps between paragraphs and pieces within them."""

import pytest

from afterdraft.formats.docx.read import read
from afterdraft.formats.line import cut
from afterdraft.manuscript.blocks import Gap
from tests.specimens.docx import br, docx, p, r, section, style, styled

PAGE = br("page")
TURN = Gap(turn="page")
HR = '<w:r><w:pict><v:rect style="height:1.5pt" o:hr="t"/></w:pict></w:r>'
RECTANGLE = '<w:r><w:drawing><wp:extent cx="9" cy="{}"/><a:prstGeom prst="rect"/></w:drawing></w:r>'
RULED = '<w:pBdr><w:bottom w:val="single"/></w:pBdr>'


def found(*body: str, **parts: str) -> list[tuple[str, Gap]]:
    return [(block.text, block.gap) for block in read(docx(*body, **parts), "gaps.docx").blocks]


BETWEEN = {  # what stands between two paragraphs → the gap before the second
    "nothing": ("", Gap()),
    "empty paragraphs": (p() + p(r("  \u00a0")), Gap(blanks=2)),
    "soft returns alone": (p(br() + br()), Gap(blanks=3)),
    "page break of its own": (p(PAGE), TURN),
    "page break among blanks": (p() + p(PAGE) + p(), Gap(blanks=2, turn="page")),
    "empty paragraph that begins a page": (p("", "<w:pageBreakBefore/>"), TURN),
    "new section on a new page": (p("", section()), Gap(turn="section")),
    "drawn rule": (p(HR), Gap(rule=True)),
    "ruled empty paragraph": (p("", RULED), Gap(rule=True)),
    "two alike ruled as one": (p("", RULED) + p("", RULED), Gap(rule=True)),
    "a box is no rule": (p("", RULED.replace("<w:bottom", '<w:left w:val="single"/><w:bottom')), Gap(blanks=1)),
    "no border": (p("", RULED.replace("single", "nil")), Gap(blanks=1)),
    "drawn line": (p('<w:r><w:drawing><a:prstGeom prst="line"/></w:drawing></w:r>'), Gap(rule=True)),
    "flat rectangle": (p(RECTANGLE.format(19_050)), Gap(rule=True)),
    "rectangle with a height": (p(RECTANGLE.format(300_000)), Gap(blanks=1)),
    "low picture": (p('<w:r><w:drawing><wp:extent cx="9" cy="300000"/><a:blip/></w:drawing></w:r>'), Gap(rule=True)),
    "high picture": (p('<w:r><w:drawing><wp:extent cx="9" cy="3000000"/><a:blip/></w:drawing></w:r>'), Gap()),
}


@pytest.mark.parametrize(("between", "gap"), BETWEEN.values(), ids=BETWEEN)
def test_what_stands_between(between: str, gap: Gap) -> None:
    assert found(p("One."), between, p("Two."))[1] == ("Two.", gap)


def test_a_break_at_an_edge_of_a_paragraph_goes_to_the_gap() -> None:
    assert found(p("One."), p(PAGE + r("Two.")), p("Three.")) == [("One.", Gap()), ("Two.", TURN), ("Three.", Gap())]
    assert found(p(r("One.") + PAGE), p("Two.")) == [("One.", Gap()), ("Two.", TURN)]
    assert found(p(r("One.") + PAGE), p(), p("Two."))[1] == ("Two.", Gap(blanks=1, turn="page"))


def test_a_break_within_a_paragraph_cuts_it() -> None:
    blocks = read(docx(p("One."), p(r("Two, ", "<w:i/>") + PAGE + r("three.", "<w:i/>"))), "cut.docx").blocks
    assert [(block.text, block.gap, block.source.ordinal, block.source.piece) for block in blocks[1:]] == [
        ("Two, ", Gap(), 1, 0),
        ("three.", TURN, 1, 1),
    ]
    assert [[(run.start, run.end) for run in block.runs] for block in blocks[1:]] == [[(0, 5)], [(0, 6)]]
    assert all(block.look.italic for block in blocks[1:])


def test_a_page_begun_by_style_and_by_the_paragraph() -> None:
    sheet = style("H", "heading 1", "<w:pPr><w:pageBreakBefore/></w:pPr>")
    off = styled("H", "Three", '<w:pageBreakBefore w:val="0"/>')
    gaps = found(p("One"), styled("H", "Two"), off, p("Four", "<w:pageBreakBefore/>"), styles=sheet)
    assert [gap.turn for _, gap in gaps] == ["none", "page", "none", "page"]


@pytest.mark.parametrize(
    ("kind", "turn"),
    [("", "section"), ("nextPage", "section"), ("oddPage", "section"), ("evenPage", "section"), ("continuous", "none")],
)
def test_how_a_section_begins_is_said_by_its_own_properties(kind: str, turn: str) -> None:
    body = p("One", section("evenPage" if kind == "continuous" else "continuous")), p("Two"), section(kind)
    assert found(*body)[1] == ("Two", Gap(turn=turn))  # type: ignore[arg-type]  # one of the three


def test_a_tracked_change_of_section_properties_is_no_section() -> None:
    changed = "<w:sectPr><w:sectPrChange w:id='1' w:author='A'><w:sectPr/></w:sectPrChange></w:sectPr>"
    gaps = found(p("One", changed), p("Two", section("continuous")), p("Three"), section("nextPage"))
    assert [gap.turn for _, gap in gaps] == ["none", "none", "section"]


def test_a_section_break_that_is_deleted_is_none() -> None:
    gone = '<w:rPr><w:del w:id="1" w:author="A"/></w:rPr>' + section("continuous")
    body = p("One "), p("", gone), p("two.", section("continuous")), p("Three."), section("oddPage")
    assert found(*body) == [("One ", Gap()), ("two.", Gap()), ("Three.", Gap(turn="section"))]


def test_a_rule_under_or_over_text() -> None:
    assert [gap.rule for _, gap in found(p("One", RULED), p("Two"))] == [False, True]
    assert [gap.rule for _, gap in found(p("One"), p("Two", RULED.replace("bottom", "top")))] == [False, True]
    assert [gap.rule for _, gap in found(p("One", RULED), p("Two", RULED), p("Three"))] == [False, False, True]


def test_a_line_under_a_heading_belongs_to_it() -> None:
    assert not found(styled("H", "One", RULED), p("Two"), styles=style("H", "heading 1"))[1][1].rule


@pytest.mark.parametrize("ornament", ["***", "* * *", "#", "⁂", "~~~", "———"])
def test_an_ornament_among_soft_returns_cuts_the_paragraph(ornament: str) -> None:
    body = p(r("One.") + br() + r(ornament) + br() + r("Two,") + br() + r("and on."))
    assert [text for text, _ in found(body)] == ["One.", ornament, "Two,\nand on."]
    pieces = [block.source.piece for block in read(docx(body), "pieces.docx").blocks]
    assert pieces == [0, 1, 2]


def test_blank_lines_at_the_edges_of_a_piece_are_blanks() -> None:
    body = p("Before"), p(br() + r("One.") + br() + br() + r("***") + br() + br() + r("Two.") + br()), p("After")
    assert found(*body) == [
        ("Before", Gap()),
        ("One.", Gap(blanks=1)),
        ("***", Gap(blanks=1)),
        ("Two.", Gap(blanks=1)),
        ("After", Gap(blanks=1)),
    ]


def test_verse_keeps_its_lines_and_stanzas() -> None:
    assert [text for text, _ in found(p(r("One") + br() + r("two") + br() + br() + r("three")))] == [
        "One\ntwo\n\nthree"
    ]


def test_prose_parted_by_soft_returns_alone_is_cut_at_each() -> None:
    long = "The ferry came in late and nobody said a word about it to anyone. " * 8
    lines = [long, "“Late,” he said.", "", long, "#", "“Yes.”"]
    blocks = read(docx(p(br().join(r(line) for line in lines))), "pasted.docx").blocks
    assert [(block.text, block.gap.blanks, block.source.piece) for block in blocks] == [
        (long, 0, 0),
        ("“Late,” he said.", 0, 1),
        (long, 1, 2),
        ("#", 0, 3),
        ("“Yes.”", 0, 4),
    ]


@pytest.mark.parametrize("text", ["one", "one\n***\ntwo", "\n\none\n", "***\n***", "one\n\n***", "", "\n"])
def test_pieces_hold_all_letters_in_order(text: str) -> None:
    *pieces, rest = cut(text, [])
    assert "".join("".join(text[piece.start : piece.end] for piece in pieces).split()) == "".join(text.split())
    assert rest.start == rest.end == len(text)
