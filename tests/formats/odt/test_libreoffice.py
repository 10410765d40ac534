"""Documents that LibreOffice wrote from specimens/libreoffice-*.fodt say what their sources say, as odt and as docx."""

from dataclasses import replace
from functools import cache
from pathlib import Path

import pytest

from afterdraft.formats.table import read
from afterdraft.manuscript.blocks import Aside, Block, Blocks

SPECIMENS = Path(__file__).parents[2] / "specimens"
# What the two files are known to say differently: LibreOffice shows a place kept for a word in brackets, and its
# docx keeps the word alone; built-in styles go by other names; and a frame is anchored before its paragraph's text.
STYLES = {
    "Standard": "Normal",
    "Text body": "Body Text",
    "Contents Heading": "TOC Heading",
    "Contents 1": "TOC 1",
    "Table Contents": "Normal",
}
KEPT_PLACE = "<Name fehlt noch>", "Name fehlt noch"


@cache
def whole(name: str) -> Blocks:
    file = SPECIMENS / name
    return read(file.read_bytes(), file.name)


def lines(name: str) -> list[tuple[object, ...]]:
    def line(block: Block) -> tuple[object, ...]:
        text = block.text.replace(*KEPT_PLACE)
        look = block.look
        style = STYLES.get(look.style, look.style)
        return text, block.runs, look.level, look.label, look.align, look.bold, look.italic, look.caps, style

    return [line(block) for block in whole(name).blocks]


@pytest.mark.parametrize("name", ["headings", "typed"])
def test_text_emphasis_outline_numbers_and_looks_are_those_of_its_docx(name: str) -> None:
    assert lines(f"libreoffice-{name}.odt") == lines(f"libreoffice-{name}.docx")


@pytest.mark.parametrize("name", ["headings", "typed"])
def test_gaps_are_those_of_its_docx(name: str) -> None:
    odt, docx = (whole(f"libreoffice-{name}.{ending}") for ending in ("odt", "docx"))
    assert [block.gap for block in odt.blocks] == [block.gap for block in docx.blocks]


@pytest.mark.parametrize("name", ["headings", "typed"])
def test_lengths_are_those_of_its_docx(name: str) -> None:
    """docx rounds to twentieths of a point, odt to ten-thousandths of an inch."""
    for odt, docx in zip(
        whole(f"libreoffice-{name}.odt").blocks, whole(f"libreoffice-{name}.docx").blocks, strict=True
    ):
        for of in ("indent", "left", "space_before", "space_after", "size"):
            assert getattr(odt.look, of) == pytest.approx(getattr(docx.look, of), abs=0.05), (of, odt.text)


@pytest.mark.parametrize("name", ["headings", "typed"])
def test_what_is_set_apart_is_that_of_its_docx(name: str) -> None:
    def apart(file: Blocks) -> list[Aside]:
        here = [replace(aside, when=aside.when.rstrip("Z")) for aside in file.asides]
        return [replace(each, start=0, end=0) if each.kind == "text box" else each for each in here]

    assert apart(whole(f"libreoffice-{name}.odt")) == apart(whole(f"libreoffice-{name}.docx"))


def test_its_heads() -> None:
    found = whole("libreoffice-headings.odt")
    assert (found.format, found.title, found.author, found.language, found.notices) == (
        "odt",
        "The Salt Stair",
        "Brona Aske",
        "en-GB",
        (),
    )


def test_paragraphs_are_found_again_by_their_ordinal() -> None:
    assert [block.source.ordinal for block in whole("libreoffice-headings.odt").blocks][:3] == [3, 4, 5]
    assert {block.source.part for block in whole("libreoffice-headings.odt").blocks} == {"content.xml"}
