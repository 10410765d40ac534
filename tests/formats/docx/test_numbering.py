"""Automatic numbers as printed (ECMA-376 part 1, §17.9)."""

import pytest

from afterdraft.formats.docx.read import read
from afterdraft.formats.numerals import numeral
from tests.specimens.docx import docx, p, style, styled


def level(at: int, text: str, format: str = "decimal", more: str = "", start: int | None = 1) -> str:
    begins = "" if start is None else f'<w:start w:val="{start}"/>'
    return f'<w:lvl w:ilvl="{at}">{begins}<w:numFmt w:val="{format}"/>{more}<w:lvlText w:val="{text}"/></w:lvl>'


def abstract(id: int, *levels: str) -> str:
    return f'<w:abstractNum w:abstractNumId="{id}">{"".join(levels)}</w:abstractNum>'


def number(id: int, of: int, overrides: str = "") -> str:
    return f'<w:num w:numId="{id}"><w:abstractNumId w:val="{of}"/>{overrides}</w:num>'


def item(num: int, at: int = 0, text: str = "x") -> str:
    return p(text, f'<w:numPr><w:ilvl w:val="{at}"/><w:numId w:val="{num}"/></w:numPr>')


def labels(*body: str, numbering: str, styles: str = "") -> list[str]:
    return [block.look.label for block in read(docx(*body, numbering=numbering, styles=styles), "n.docx").blocks]


OUTLINE = abstract(0, level(0, "Part %1", "upperRoman"), level(1, "%1.%2"), level(2, "(%3)", "lowerLetter"))


def test_levels_count_and_restart() -> None:
    steps = [(0, "Part I"), (1, "I.1"), (2, "(a)"), (2, "(b)"), (1, "I.2"), (2, "(a)"), (0, "Part II"), (1, "II.1")]
    body = [item(1, at) for at, _ in steps]
    assert labels(*body, numbering=OUTLINE + number(1, 0)) == [label for _, label in steps]


def test_a_deeper_level_first_shows_the_start_of_those_above() -> None:
    assert labels(item(1, 1), item(1, 0), numbering=OUTLINE + number(1, 0)) == ["I.1", "Part I"]


def test_paragraphs_without_number_between_do_not_matter() -> None:
    body = item(1), p("x"), item(1)
    assert labels(*body, numbering=abstract(0, level(0, "Chapter %1")) + number(1, 0)) == ["Chapter 1", "", "Chapter 2"]


def test_two_lists_of_one_definition_go_on_unless_told_to_start_anew() -> None:
    anew = '<w:lvlOverride w:ilvl="0"><w:startOverride w:val="5"/></w:lvlOverride>'
    numbering = abstract(0, level(0, "%1.")) + number(1, 0) + number(2, 0) + number(3, 0, anew)
    assert labels(item(1), item(2), item(3), item(3), item(1), numbering=numbering) == ["1.", "2.", "5.", "6.", "7."]


def test_start_restart_and_override_of_a_level() -> None:
    never = abstract(0, level(0, "%1", start=3), level(1, "%2", more='<w:lvlRestart w:val="0"/>'))
    body = item(1, 0), item(1, 1), item(1, 0), item(1, 1)
    assert labels(*body, numbering=never + number(1, 0)) == ["3", "1", "4", "2"]
    other = f'<w:lvlOverride w:ilvl="0">{level(0, "No. %1", "cardinalText")}</w:lvlOverride>'
    assert labels(item(1), numbering=abstract(0, level(0, "%1")) + number(1, 0, other)) == ["No. One"]
    assert labels(item(1), numbering=abstract(0, level(0, "%1", start=None)) + number(1, 0)) == ["0"]


def test_legal_numbers_are_all_figures() -> None:
    legal = abstract(0, level(0, "%1", "upperRoman"), level(1, "%1.%2", "lowerLetter", "<w:isLgl/>"))
    assert labels(item(1, 0), item(1, 1), numbering=legal + number(1, 0)) == ["I", "1.1"]


def test_bullets_have_no_label_and_text_without_number_is_one() -> None:
    numbering = abstract(0, level(0, "•", "bullet")) + abstract(1, level(0, "Prologue", "none"))
    assert labels(item(1), item(2), numbering=numbering + number(1, 0) + number(2, 1)) == ["", "Prologue"]


def test_a_style_numbers_its_paragraphs_and_its_level_is_that_tied_to_it() -> None:
    tied = abstract(
        0,
        level(0, "Chapter %1", "cardinalText", '<w:pStyle w:val="H1"/>'),
        level(1, "%1.%2", more='<w:pStyle w:val="H2"/>'),
    )
    props = '<w:pPr><w:numPr><w:numId w:val="1"/></w:numPr></w:pPr>'
    sheet = style("H1", "heading 1", props) + style("H2", "heading 2", '<w:basedOn w:val="H1"/>' + props)
    off = styled("H1", "x", '<w:numPr><w:numId w:val="0"/></w:numPr>')
    body = styled("H1", "x"), styled("H2", "x"), off, styled("H1", "x")
    assert labels(*body, numbering=tied + number(1, 0), styles=sheet) == ["Chapter One", "One.1", "", "Chapter Two"]


def test_a_definition_that_only_names_a_list_style_takes_its_levels() -> None:
    link = abstract(0, '<w:numStyleLink w:val="L"/>') + abstract(1, '<w:styleLink w:val="L"/>', level(0, "%1)"))
    assert labels(item(1), numbering=link + number(1, 0)) == ["1)"]


def test_a_heading_that_is_only_its_number_is_a_paragraph() -> None:
    blocks = read(docx(item(1, text=""), p("It rained."), numbering=OUTLINE + number(1, 0)), "n.docx").blocks
    assert [(block.text, block.look.label) for block in blocks] == [("", "Part I"), ("It rained.", "")]


def test_the_indent_of_the_level_gives_way_to_direct_and_yields_to_none_of_a_style_it_numbers() -> None:
    numbering = abstract(0, level(0, "%1.", more='<w:pPr><w:ind w:left="720" w:hanging="360"/></w:pPr>')) + number(1, 0)
    listed = '<w:numPr><w:ilvl w:val="0"/><w:numId w:val="1"/></w:numPr>'
    sheet = style("A", "Body", '<w:pPr><w:ind w:left="200"/></w:pPr>')
    numbered = style("B", "List", '<w:pPr><w:numPr><w:numId w:val="1"/></w:numPr><w:ind w:left="400"/></w:pPr>')
    body = styled("A", "x", listed), styled("A", "x", listed + '<w:ind w:left="100"/>'), styled("B", "x")
    blocks = read(docx(*body, numbering=numbering, styles=sheet + numbered), "n.docx").blocks
    assert [block.look.left for block in blocks] == [36.0, 5.0, 20.0]


def test_numbers_are_spelled_out_in_english_only() -> None:
    german = '<w:docDefaults><w:rPrDefault><w:rPr><w:lang w:val="de-DE"/></w:rPr></w:rPrDefault></w:docDefaults>'
    numbering = abstract(0, level(0, "Kapitel %1", "cardinalText")) + number(1, 0)
    assert labels(item(1), numbering=numbering, styles=german) == ["Kapitel 1"]


def test_deleted_paragraphs_are_not_counted() -> None:
    gone = item(1, text='<w:del w:id="1" w:author="A"><w:r><w:delText>x</w:delText></w:r></w:del>').replace(
        "</w:numPr>", '</w:numPr><w:rPr><w:del w:id="2" w:author="A"/></w:rPr>'
    )
    numbering = abstract(0, level(0, "%1.")) + number(1, 0)
    assert labels(item(1), gone, item(1), numbering=numbering) == ["1.", "2."]


@pytest.mark.parametrize(
    ("number", "format", "printed"),
    [
        (4, "decimal", "4"), (4, "decimalZero", "04"), (1994, "upperRoman", "MCMXCIV"), (49, "lowerRoman", "xlix"),
        (26, "upperLetter", "Z"), (28, "lowerLetter", "bb"), (12, "ordinal", "12th"), (23, "ordinal", "23rd"),
        (111, "ordinal", "111th"), (1, "cardinalText", "One"), (21, "cardinalText", "Twenty-one"),
        (342, "cardinalText", "Three hundred forty-two"), (3, "ordinalText", "Third"), (20, "ordinalText", "Twentieth"),
        (45, "ordinalText", "Forty-fifth"), (7, "numberInDash", "- 7 -"), (7, "none", ""), (7, "ganada", "7"),
        (0, "upperRoman", "0"), (0, "lowerLetter", "0"),
    ],
)  # fmt: skip
def test_number_formats(number: int, format: str, printed: str) -> None:
    assert numeral(number, format) == printed
