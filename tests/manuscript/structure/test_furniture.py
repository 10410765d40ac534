"""Running heads and page numbers typed into the text. Pages of 250 to 300 words: common practice of typescripts."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.manuscript.blocks import Block, Blocks
from afterdraft.manuscript.structure import structure
from afterdraft.manuscript.structure.furniture import furniture
from tests.manuscript.build import HEADING, PAGE, heading, made, told

PARAGRAPHS = 7  # on a page: told() gives some 40 words each
FORMS = ("{n}", "- {n} -", "Page {n}", "TOVIK / THE WEIR / {n}", "The Weir    {n}")


def typed(form: str, chapters: int = 4, pages: int = 4) -> Blocks:
    """Chapters of some pages, each page ended by its line."""
    pieces: list[Block | list[Block]] = []
    for chapter in range(chapters):
        pieces.append(heading(f"Chapter {chapter + 1}", HEADING, PAGE))
        for page in range(pages):
            pieces += [told(PARAGRAPHS), Block(form.format(n=1 + chapter * pages + page))]
    return made(*pieces, told(1))


@pytest.mark.parametrize("form", FORMS)
def test_running_heads_are_neither_headings_nor_breaks(form: str) -> None:
    source = typed(form)
    found = structure(source)
    assert [chapter.number for chapter in found.division.chapters] == [1, 2, 3, 4]
    assert [scene.began for scene in found.division.scenes] == ["heading"] * 4
    assert len(furniture(source.blocks)) == 16
    assert len(found.division.roles) == len(source.blocks)
    assert found.source == source
    assert found.doubts == ()


def test_a_running_head_does_not_part_a_heading_from_its_title() -> None:
    pieces = typed("{n}").blocks
    at = next(index for index, block in enumerate(pieces) if block.text == "Chapter 3")
    title = Block("The Weir", look=HEADING)
    found = structure(made([*pieces[: at + 1], title, *pieces[at + 1 :]]))
    assert [chapter.title for chapter in found.division.chapters] == ["", "", "The Weir", ""]


@pytest.mark.parametrize(
    ("blocks", "why"),
    [
        (made(*[[Block(str(n)), *told(60)] for n in range(1, 9)]), "chapters are longer than pages"),
        (made(*[[Block(str(n)), *told(7 if n % 2 else 15)] for n in range(1, 20)]), "they are not alike in length"),
        (made(*[[heading(str(n)), *told(7)] for n in range(1, 20)]), "each begins a page"),
        (made(told(100), *[[Block(str(n)), *told(7)] for n in range(1, 9)]), "they stand in one part of the file"),
        (
            made(*[[Block(f"CHAPTER {n}"), *told(13)] for n in range(1, 20)]),
            "short chapters alike in length are chapters",
        ),
        (made(*[[Block("7"), *told(7)] for _ in range(12)]), "the number does not grow"),
    ],
    ids=lambda value: value if isinstance(value, str) else "",
)
def test_what_is_no_furniture(blocks: Blocks, why: str) -> None:
    assert furniture(blocks.blocks) == frozenset(), why


@given(st.lists(st.sampled_from(["1", "2", "3", "The ferry was late.", "- 4 -", "Page 5", ""]), max_size=40))
def test_any_file_has_a_role_for_each_of_its_paragraphs(texts: list[str]) -> None:
    source = made([Block(text) for text in texts])
    found = structure(source)
    assert len(found.division.roles) == len(texts)
    assert found.source == source
