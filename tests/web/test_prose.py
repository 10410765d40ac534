"""Emphasis as elements, whatever the runs; the words themselves untouched."""

import re
from html import unescape

import pytest
from hypothesis import given
from hypothesis import strategies as st
from lxml import html

from afterdraft.manuscript.blocks import Block, Emphasis, Run
from afterdraft.web.prose import TAGS, Stretch, prose


@pytest.mark.parametrize(
    ("text", "runs", "expected"),
    [
        ("A plain line.", (), "A plain line."),
        ("Rain & <mud>", (), "Rain &amp; &lt;mud&gt;"),
        ("She said never.", (Run(9, 14, "italic"),), "She said <em>never</em>."),
        ("ab", (Run(0, 2, "italic"), Run(1, 2, "bold")), "<em>a</em><strong><em>b</em></strong>"),
        ("H2O", (Run(1, 2, "subscript"),), "H<sub>2</sub>O"),
        ("", (), ""),
    ],
)
def test_runs_become_elements(text: str, runs: tuple[Run, ...], expected: str) -> None:
    assert str(prose(Block(text, runs))) == expected


kinds: st.SearchStrategy[Emphasis] = st.sampled_from(list(TAGS))


@st.composite
def blocks(draw: st.DrawFn) -> Block:
    text = draw(st.text(alphabet=st.characters(exclude_categories=("Cs", "Cc")), min_size=1, max_size=40))
    ends = st.integers(0, len(text))
    made = draw(st.lists(st.tuples(ends, ends, kinds), max_size=6))
    return Block(text, tuple(Run(min(a, b), max(a, b), kind) for a, b, kind in made))


@given(blocks())
def test_the_words_are_kept_and_the_elements_nest(block: Block) -> None:
    made = str(prose(block))
    assert unescape(re.sub(r"<[^>]*>", "", made)) == block.text
    # lxml's parser is the outside reader: what it writes back has the same words in as many elements
    parsed = html.fragment_fromstring(made, create_parent="div")
    assert len(list(parsed.iterdescendants())) == made.count("</")


@pytest.mark.parametrize(
    ("marked", "expected"),
    [
        ((Stretch(4, 7, "person"),), 'so, <span class="read-person">Ida</span> &lt;went&gt;'),
        ((Stretch(8, 14, "time"),), 'so, Ida <span class="read-time">&lt;went&gt;</span>'),
        (
            (Stretch(0, 7, "said", who="Ida", says="Ida says this"), Stretch(4, 7, "person")),
            '<span class="read-said">so, </span><span class="read-person"><span class="read-said">Ida</span></span>'
            '<span class="read-who" data-who="Ida" aria-label="Ida says this" role="note"></span> &lt;went&gt;',
        ),
    ],
)
def test_what_was_read_is_shown_without_any_words_of_its_own(marked: tuple[Stretch, ...], expected: str) -> None:
    assert str(prose(Block("so, Ida <went>"), marked)) == expected
