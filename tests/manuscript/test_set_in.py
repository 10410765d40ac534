"""Letters and reports that stand in from the other paragraphs."""

import pytest

from afterdraft import wiring
from afterdraft.manuscript.blocks import Block, Look, Run
from afterdraft.manuscript.set_in import in_italics, set_in
from afterdraft.questions.of_draft import seen_of

TEXT = Block("It rained all day, and nobody came.", look=Look(indent=18.0))


def block(**look: object) -> Block:
    return Block("Dear Ada, it rains.", look=Look(**look))  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("one", "stands_in"),
    [
        (block(left=36.0), True),
        (block(left=36.0, indent=-18.0), True),
        (block(italic=True), True),
        (block(indent=36.0), False),  # a first line
        (block(left=4.0), False),
        (block(left=36.0, align="center"), False),
        (block(left=36.0, level=1), False),
    ],
)
def test_what_is_set_in(one: Block, *, stands_in: bool) -> None:
    assert set_in([TEXT, TEXT, one, TEXT]) == (frozenset({2}) if stands_in else frozenset())


def test_a_wide_margin_is_the_text_s_own() -> None:
    wide = Block("It rained.", look=Look(left=72.0))
    assert set_in([wide, wide, block(left=72.0), block(left=108.0), wide]) == frozenset({3})


def test_nothing_is_set_in_where_half_of_it_is() -> None:
    assert not set_in([TEXT, block(left=36.0)])


def test_checks_know_of_it_by_scene() -> None:
    text = "# One\n\nIt rained.\n\nShe sat.\n\n> Dear Ada, it rains.\n\nShe rose.\n\n# Two\n\nHe sat.\n\nIt was.\n"
    seen = seen_of(wiring.read([("book.md", text.encode())]), lambda texts: [])
    ((scene, paragraph),) = seen.set_in
    assert seen.texts[scene][paragraph] == "Dear Ada, it rains."


def test_what_stands_in_italics_within_a_paragraph() -> None:
    letter = Block("She read it again. I was here.", (Run(19, 30, "italic"), Run(0, 3, "bold")))
    assert in_italics([TEXT, letter, block(italic=True), TEXT, TEXT]) == {1: ((19, 30),), 2: ((0, 19),)}
    assert not in_italics([letter])  # so much of it is no exception


def test_italics_reach_the_checks() -> None:
    draft = f"# One\n\n{TEXT.text}\n\nShe read it again. *I was here.* It had no name to it, and no date either.\n"
    seen = seen_of(wiring.read([("one.md", draft.encode())]), lambda _: [])
    assert seen.italics == {(0, 1): ((19, 30),)}
    assert seen.is_in_italics(0, 1, 19, 30)
    assert seen.is_in_italics(0, 1, 15, 30)
    assert not seen.is_in_italics(0, 1, 0, 30)
    assert not seen.is_in_italics(0, 0, 0, 30)
