"""The walk: which w:p become blocks, which are joined, and where each stands in the original."""

from afterdraft.formats.docx.read import read
from afterdraft.manuscript.blocks import Block
from tests.formats.docx.test_inline import CHOICE
from tests.specimens.docx import deleted, docx, p, r, style, styled, table

GONE = '<w:rPr><w:{} w:id="5" w:author="Ann"/></w:rPr>'


def blocks(*body: str, **parts: str) -> tuple[Block, ...]:
    return read(docx(*body, **parts), "walk.docx").blocks


def texts(*body: str) -> list[str]:
    return [block.text for block in blocks(*body)]


def test_a_deleted_paragraph_mark_joins_with_the_next_which_gives_the_look() -> None:
    sheet = style("A", "First") + style("B", "Second")
    body = styled("A", "One ", GONE.format("del")), styled("B", "two."), p("Three.")
    found = blocks(*body, styles=sheet)
    assert [(block.text, block.look.style, block.source.ordinal) for block in found] == [
        ("One two.", "Second", 0),
        ("Three.", "", 2),
    ]


def test_several_deleted_marks_in_a_row_join_all() -> None:
    assert texts(p("One ", GONE.format("del")), p("two ", GONE.format("moveFrom")), p("three.")) == ["One two three."]


def test_a_deleted_last_mark_loses_nothing() -> None:
    assert texts(p("One."), p("Two.", GONE.format("del"))) == ["One.", "Two."]
    assert texts(p("One.", GONE.format("del")), table([p("a"), p("b")])) == ["One.", "a\tb"]


def test_a_paragraph_deleted_whole_leaves_no_blank_line() -> None:
    gone = p(deleted("Nobody came."), GONE.format("del"))
    found = blocks(p("One."), gone, p("Two."))
    assert [(block.text, block.gap.blanks, block.source.ordinal) for block in found] == [("One.", 0, 0), ("Two.", 0, 2)]


def test_nor_before_a_table() -> None:
    gone = p(deleted("Nobody came."), GONE.format("del"))
    whole = read(docx(p("One."), gone, table([p("a"), p("b")])), "walk.docx")
    assert [(block.text, block.gap.blanks) for block in whole.blocks] == [("One.", 0), ("a\tb", 0)]
    assert [(aside.block, aside.text) for aside in whole.asides if aside.kind == "deleted"] == [
        (0, "Nobody came."),
        (0, "\n"),
    ]


def test_an_inserted_mark_parts_paragraphs() -> None:
    assert texts(p("One.", GONE.format("ins")), p("Two.")) == ["One.", "Two."]


def test_a_moved_paragraph_is_read_where_it_went() -> None:
    away = p(f"<w:moveFrom w:id='1' w:author='A'>{r('Moved.')}</w:moveFrom>", GONE.format("moveFrom"))
    here = p(f"<w:moveTo w:id='2' w:author='A'>{r('Moved.')}</w:moveTo>", GONE.format("moveTo"))
    assert texts(away, p("One."), here, p("Two.")) == ["One.", "Moved.", "Two."]


def test_a_drop_cap_is_the_first_letter_of_its_paragraph() -> None:
    cap = p(r("T", '<w:sz w:val="90"/>'), '<w:framePr w:dropCap="drop" w:lines="3"/>')
    found = blocks(cap, p(r("he ferry was late.", '<w:sz w:val="24"/>')))
    assert [(block.text, block.look.size, block.source.ordinal) for block in found] == [
        ("The ferry was late.", 12.0, 0)
    ]


def test_content_controls_choices_and_custom_elements_between_paragraphs() -> None:
    inner = f"<w:sdt><w:sdtContent>{p('Two.')}</w:sdtContent></w:sdt>"
    body = (
        f"<w:sdt><w:sdtPr><w:alias w:val='x'/></w:sdtPr><w:sdtContent>{p('One.')}{inner}</w:sdtContent></w:sdt>",
        CHOICE.format("w14", p("Three."), p("Not this.")),
        f"<w:customXml w:element='x'>{p('Four.')}</w:customXml>",
        f"<w:sdt><w:sdtPr><w:showingPlcHdr/></w:sdtPr><w:sdtContent>{p('Type here.')}</w:sdtContent></w:sdt>",
    )
    assert texts(*body) == ["One.", "Two.", "Three.", "Four."]


def test_a_row_of_short_cells_is_one_block() -> None:
    found = blocks(p("Before"), table([p("1 May"), p(), p(r("rain", "<w:i/>"))], [p("2 May"), p("sun"), p("wind")]))
    assert [(block.text, block.source.ordinal) for block in found] == [
        ("Before", 0),
        ("1 May\t\train", 1),
        ("2 May\tsun\twind", 4),
    ]
    assert [(run.start, run.end, run.kind) for run in found[1].runs] == [(7, 11, "italic")]


def test_other_rows_give_each_paragraph() -> None:
    long = "It rained all the way to the landing stage. " * 5
    inner = table([p("in"), p("side")])
    body = table([p("Dear Ann,") + p("come soon.")], [p(long), p("Short.")], [inner + p(), p("beside")])
    assert texts(body) == ["Dear Ann,", "come soon.", long, "Short.", "in\tside", "beside"]


def test_text_that_stands_outside_paragraphs_of_a_row_is_borne() -> None:
    stray = f"<w:tbl><w:tr><w:tc>{r('a')}</w:tc><w:tc>{r('b')}</w:tc></w:tr></w:tbl>"
    assert texts(p("One."), stray, p("Two.")) == ["One.", "Two."]


def test_rows_and_cells_in_wrappers_are_found() -> None:
    row = f"<w:tr><w:sdt><w:sdtContent><w:tc>{p('a')}</w:tc></w:sdtContent></w:sdt><w:tc>{p('b')}</w:tc></w:tr>"
    assert texts(f"<w:tbl><w:sdt><w:sdtContent>{row}</w:sdtContent></w:sdt></w:tbl>") == ["a\tb"]


def test_ordinals_count_every_paragraph_of_the_part() -> None:
    box = "<w:r><w:pict><v:textbox><w:txbxContent><w:p/><w:p/></w:txbxContent></v:textbox></w:pict></w:r>"
    body = p(r("One.") + box), p(deleted("x"), GONE.format("del")), table([p("a"), p("b")]), p(), p("Last.")
    assert [block.source.ordinal for block in blocks(*body)] == [0, 4, 7]
    assert {block.source.part for block in blocks(*body)} == {"word/document.xml"}
