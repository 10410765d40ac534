"""Looks: inheritance and toggles as ECMA-376 part 1, §17.7.2 and §17.7.3."""

import pytest

from afterdraft.formats.docx.read import read
from afterdraft.manuscript.blocks import Look
from tests.specimens.docx import docx, p, r, style, styled

BASE = '<w:basedOn w:val="{}"/>'


def look(paragraph: str, styles: str = "", numbering: str = "") -> Look:
    return read(docx(paragraph, styles=styles, numbering=numbering), "specimen.docx").blocks[0].look


def rpr(inside: str) -> str:
    return f"<w:rPr>{inside}</w:rPr>"


def ppr(inside: str) -> str:
    return f"<w:pPr>{inside}</w:pPr>"


def test_alignment_is_inherited_through_the_chain_and_overridden_directly() -> None:
    sheet = style("A", "Base", ppr('<w:jc w:val="center"/>')) + style("B", "Child", BASE.format("A"))
    assert look(styled("B", "x"), sheet).align == "center"
    assert look(styled("B", "x", '<w:jc w:val="end"/>'), sheet).align == "right"
    assert look(styled("B", "x", '<w:jc w:val="both"/>'), sheet).align == "justify"
    assert look(p("x"), sheet).align == "left"


def test_the_default_style_applies_where_none_is_named() -> None:
    sheet = style("N", "Normal", ppr('<w:jc w:val="both"/>'), default=True)
    assert (look(p("x"), sheet).style, look(p("x"), sheet).align) == ("Normal", "justify")


def test_lengths_are_points_from_every_spelling() -> None:
    props = '<w:ind w:left="720" w:hanging="360"/><w:spacing w:before="240" w:after="6pt"/>'
    found = look(p("x", props))
    assert (found.left, found.indent, found.space_before, found.space_after) == (36.0, -18.0, 12.0, 6.0)
    assert look(p("x", '<w:ind w:start="1in" w:firstLine="0.5in"/>')).left == 72.0
    assert look(p("x", '<w:ind w:left="rubbish" w:firstLine="..."/>')).left == 0.0


def test_document_defaults_stand_below_all_styles() -> None:
    defaults = (
        '<w:docDefaults><w:rPrDefault><w:rPr><w:sz w:val="24"/><w:lang w:val="en-GB"/></w:rPr></w:rPrDefault>'
        '<w:pPrDefault><w:pPr><w:spacing w:after="160"/></w:pPr></w:pPrDefault></w:docDefaults>'
    )
    sheet = defaults + style("A", "Small", rpr('<w:sz w:val="18"/>') + ppr('<w:spacing w:after="0"/>'))
    assert (look(p("x"), sheet).size, look(p("x"), sheet).space_after) == (12.0, 8.0)
    assert (look(styled("A", "x"), sheet).size, look(styled("A", "x"), sheet).space_after) == (9.0, 0.0)
    assert read(docx(p("x"), styles=sheet), "d.docx").language == "en-GB"


STRONG = style("S", "Strong", rpr("<w:b/>"), kind="character")
TOGGLES = {  # paragraph style bold, character style bold, direct → bold
    "paragraph style alone": ("<w:b/>", "", "", True),
    "character style alone": ("", '<w:rStyle w:val="S"/>', "", True),
    "both cancel": ("<w:b/>", '<w:rStyle w:val="S"/>', "", False),
    "direct wins over both": ("<w:b/>", '<w:rStyle w:val="S"/>', "<w:b/>", True),
    "direct off wins": ("<w:b/>", "", '<w:b w:val="0"/>', False),
    "style says off": ('<w:b w:val="0"/>', '<w:rStyle w:val="S"/>', "", True),
}


@pytest.mark.parametrize(("paragraph", "character", "direct", "bold"), TOGGLES.values(), ids=TOGGLES)
def test_toggles_combine_by_exclusive_or(paragraph: str, character: str, direct: str, bold: bool) -> None:
    sheet = STRONG + style("A", "Base", rpr(paragraph))
    assert look(styled("A", r("word", character + direct)), sheet).bold is bold


def test_a_toggle_within_one_chain_is_inherited_not_combined() -> None:
    sheet = style("A", "Base", rpr("<w:b/>")) + style("B", "Child", BASE.format("A") + rpr("<w:b/>"))
    assert look(styled("B", "word"), sheet).bold


def test_a_toggle_of_the_document_defaults_is_true() -> None:
    defaults = "<w:docDefaults><w:rPrDefault><w:rPr><w:b/></w:rPr></w:rPrDefault></w:docDefaults>"
    assert look(styled("A", "word"), defaults + style("A", "Base", rpr("<w:b/>"))).bold
    assert not look(p(r("word", '<w:b w:val="0"/>')), defaults).bold


def test_flags_say_that_every_letter_is_so() -> None:
    bold = "<w:b/>"
    assert look(p(r("All", bold) + r(" — ") + r("bold", bold))).bold
    assert not look(p(r("Not", bold) + r(" all"))).bold
    assert look(p(r("caps", "<w:caps/>"))).caps
    assert look(p(r("* * *", bold))).bold
    assert look(p(r("lean", "<w:i/>"))).italic


def test_size_is_that_of_most_letters() -> None:
    assert look(p(r("O", '<w:sz w:val="72"/>') + r("nce upon a time", '<w:sz w:val="22"/>'))).size == 11.0


LEVELS = {
    "built-in name": (style("H", "heading 2"), "H", 2),
    "name as seen": (style("H", "Heading 3"), "H", 3),
    "German name": (style("H", "Überschrift 1"), "H", 1),
    "French name": (style("H", "Titre 2"), "H", 2),
    "Spanish name": (style("H", "Título 1"), "H", 1),
    "Chinese name": (style("H", "标题 1"), "H", 1),
    "level of the style": (style("H", "Chapter", ppr('<w:outlineLvl w:val="0"/>')), "H", 1),
    "inherited": (style("H", "heading 1") + style("C", "Chapter", BASE.format("H")), "C", 1),
    "own level before the inherited": (
        style("H", "heading 1") + style("C", "Sub", BASE.format("H") + ppr('<w:outlineLvl w:val="2"/>')),
        "C",
        3,
    ),
    "taken back": (
        style("H", "heading 1") + style("C", "Body", BASE.format("H") + ppr('<w:outlineLvl w:val="9"/>')),
        "C",
        None,
    ),
    "no sheet": ("", "Heading4", 4),
    "title is no heading": (style("T", "Title"), "T", None),
    "heading of a table": (style("T", "heading notes"), "T", None),
}


@pytest.mark.parametrize(("sheet", "id", "level"), LEVELS.values(), ids=LEVELS)
def test_outline_level(sheet: str, id: str, level: int | None) -> None:
    assert look(styled(id, "x"), sheet).level == level


def test_direct_level_wins() -> None:
    assert look(styled("H", "x", '<w:outlineLvl w:val="4"/>'), style("H", "heading 1")).level == 5
    assert look(p("x", '<w:outlineLvl w:val="0"/>')).level == 1


def test_styles_based_on_each_other_end() -> None:
    ring = style("A", "One", BASE.format("B") + rpr("<w:i/>")) + style("B", "Two", BASE.format("A"))
    assert look(styled("B", "x"), ring).italic
