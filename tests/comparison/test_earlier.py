"""Offcuts of several drafts: each passage once, of the youngest draft that had it; and words found in them."""

from unicodedata import combining, normalize

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.comparison.compare import compare
from afterdraft.comparison.comparison import Comparison
from afterdraft.comparison.earlier import Earlier, offcuts_of_all, search
from afterdraft.comparison.lexicon import Lexicon
from afterdraft.comparison.offcuts import offcuts
from afterdraft.comparison.standing import Standing
from afterdraft.comparison.told import Told
from tests.comparison.test_carrying import BELL, FERRY, GATE, MILL
from tests.comparison.test_compare import A, B, draft, drawn, edited, texts


def all_of(*drafts: Told) -> tuple[Earlier[int], ...]:
    """Of all but the last, which is the present one; keys count from 1."""
    return offcuts_of_all([(number, compare(one, drafts[-1])) for number, one in enumerate(drafts[:-1], 1)])


def test_a_passage_is_told_of_the_youngest_draft_that_had_it() -> None:
    found = all_of(draft([MILL, FERRY, BELL]), draft([MILL, FERRY]), draft([MILL]))
    assert [(one.draft, one.paragraph, one.text) for one in found] == [(1, 2, BELL), (2, 1, FERRY)]


def test_what_came_back_is_no_offcut() -> None:
    assert all_of(draft([MILL, FERRY]), draft([MILL]), draft([MILL, FERRY])) == ()


def test_what_a_longer_paragraph_of_a_younger_draft_has_is_not_told_again() -> None:
    found = all_of(draft([MILL, FERRY]), draft([MILL, FERRY.upper() + " " + BELL]), draft([MILL]))
    assert [(one.draft, one.text) for one in found] == [(2, FERRY.upper() + " " + BELL)]


def test_the_same_words_cut_twice_are_told_once() -> None:
    found = all_of(draft([FERRY, MILL], [FERRY, GATE]), draft([MILL], [GATE]))
    assert [(one.scene, one.paragraph) for one in found] == [(0, 0)]


def test_an_older_wording_is_told_beside_the_younger() -> None:
    first, second = draft([*A, MILL]), draft([*A, edited([MILL], 0.3)[0]])
    found = all_of(first, second, draft(A))
    assert [(one.draft, one.text) for one in found] == [(1, MILL), (2, second.paragraphs[-1])]


def test_no_drafts_have_none() -> None:
    assert offcuts_of_all(list[tuple[str, Comparison]]()) == ()


@given(st.lists(texts, min_size=2, max_size=4))
def test_nothing_is_lost_and_nothing_told_twice(many: list[list[list[int]]]) -> None:
    drafts = [drawn(one) for one in many]
    found = all_of(*drafts)
    lexicon = Lexicon()
    told = [(one.draft, lexicon.words(one.text)) for one in found]
    for place, (number, words) in enumerate(told):
        assert not any(words in other for after, other in told if after > number)
        assert not any(words in other for after, other in told[:place] if after == number)
    for one in found:
        own = drafts[one.draft - 1]
        assert one.text == own.paragraphs[one.paragraph][one.start : one.end]
        assert one.scene == own.scene_at()[one.paragraph]
        assert not any(lexicon.words(one.text) in lexicon.words(text) for text in drafts[-1].paragraphs)
    for number, own in enumerate(drafts[:-1], 1):
        younger = {text for one in drafts[number:-1] for text in one.paragraphs}
        for cut in offcuts(compare(own, drafts[-1])):
            text = own.paragraphs[cut.paragraph]
            words = lexicon.words(text[cut.start : cut.end])
            assert text in younger or any(words in other for after, other in told if after >= number)


words = st.lists(st.sampled_from(["ferry", "Ferry,", "lock", "—", "door"]), max_size=6).map(" ".join)


@given(st.lists(words, max_size=5), words)
def test_what_stands_is_found_by_words(many: list[str], passage: str) -> None:
    lexicon = Lexicon()
    assert Standing(many).has(passage) == (
        not lexicon.words(passage) or any(lexicon.words(passage) in lexicon.words(text) for text in many)
    )


SHELF = (
    "The Café at the corner, where naïve Zoë’s brother sat.",
    "the corner café; Ænea, “never mind,” said the brother",
    "The river Ærø, and the caf\N{LATIN SMALL LETTER E}\N{COMBINING ACUTE ACCENT}.",
)


@pytest.mark.parametrize(
    ("asked", "places"),
    [
        ("cafe", [0, 1, 2]),
        ("CAFÉ corner", [0, 1]),
        ('"the corner"', [0, 1]),
        ("“the corner cafe”", [1]),
        ("»corner, where«", [0]),
        ("corner where the", [0]),
        ("zoe's", [0]),
        ("broth", [0, 1]),  # the last word may be unfinished …
        ("broth cafe", []),  # … and no other
        ("other", []),
        ('mind "never', [1]),
        ("", [0, 1, 2]),
        ("— “”", [0, 1, 2]),
        ("mill", []),
    ],
)
def test_words_are_found_whatever_their_capitals_and_accents(asked: str, places: list[int]) -> None:
    offered = tuple(Earlier(1, 0, at, 0, len(text), text) for at, text in enumerate(SHELF))
    assert [one.paragraph for one in search(offered, asked)] == places


def plain(text: str) -> list[str]:
    """Words letter by letter, without what combines with a letter."""
    letters = (one for one in normalize("NFKD", text) if not combining(one))
    return "".join(one.casefold() if one.isalnum() else " " for one in letters).split()


spelled = st.lists(
    st.sampled_from(["cafe", "Café,", "“the", "the—", "THÉ", "caf\u0065\u0301", "naïve", "…"]), max_size=5
)


@given(st.lists(spelled.map(" ".join), max_size=4), spelled)
def test_all_words_are_asked_for_and_only_the_last_may_be_unfinished(many: list[str], asked: list[str]) -> None:
    offered = tuple(Earlier(1, 0, at, 0, len(text), text) for at, text in enumerate(many))
    words = plain(" ".join(asked))
    wanted = [
        one
        for one in offered
        if all(word in plain(one.text) for word in words[:-1])
        and (not words or any(word.startswith(words[-1]) for word in plain(one.text)))
    ]
    assert list(search(offered, " ".join(asked).replace("“", "").replace("—", " "))) == wanted


def test_a_draft_with_nothing_gone_has_none_of_its_own() -> None:
    assert {one.draft for one in all_of(draft(A, B), draft(A), draft(A))} == {1}
