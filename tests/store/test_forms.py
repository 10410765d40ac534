"""Paragraphs survive their stored form, whatever they are."""

import string
from typing import Any, get_args

from hypothesis import given
from hypothesis import strategies as st

from afterdraft.manuscript.blocks import Align, Aside, AsideKind, Block, Break, Emphasis, Gap, Look, Run, Source
from afterdraft.store.forms import aside_form, aside_of, block_form, block_of

number = st.integers(0, 10_000)
points = st.floats(-100, 100)


def literal(kind: Any) -> st.SearchStrategy[Any]:
    return st.sampled_from(get_args(kind))


blocks = st.builds(
    Block,
    text=st.text(),
    runs=st.lists(st.builds(Run, number, number, literal(Emphasis))).map(tuple),
    look=st.builds(
        Look,
        style=st.text(),
        level=st.none() | st.integers(1, 9),
        align=literal(Align),
        bold=st.booleans(),
        italic=st.booleans(),
        caps=st.booleans(),
        size=st.none() | points,
        indent=points,
        left=points,
        space_before=points,
        space_after=points,
        label=st.text(),
    ),
    gap=st.builds(Gap, number, literal(Break), st.booleans(), st.booleans()),
    source=st.builds(Source, number, st.text(string.ascii_letters + "/."), number, number),
)
asides = st.builds(Aside, literal(AsideKind), number, number, number, st.text(), st.text(), st.text())


@given(blocks)
def test_a_block_comes_back(block: Block) -> None:
    assert block_of(block.text, block_form(block)) == block


@given(asides)
def test_an_aside_comes_back(aside: Aside) -> None:
    assert aside_of(aside_form(aside)) == aside


def test_an_ordinary_paragraph_takes_next_to_nothing() -> None:
    assert block_form(Block("Told.", source=Source(ordinal=7))) == '{"source":{"ordinal":7}}'
