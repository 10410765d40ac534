"""What the writer says of fates outweighs what was found."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.comparison.compare import compare
from afterdraft.comparison.comparison import Comparison
from afterdraft.comparison.said import Said, overruled
from tests.comparison.test_compare import NEW, A, B, C, D, became, draft, drawn, edited, scene, texts

OTHER = scene(9)
pairs = st.frozensets(st.tuples(st.integers(0, 4), st.integers(0, 4)), max_size=3)
some = st.frozensets(st.integers(0, 4), max_size=2)


def test_a_link_she_denies_is_gone() -> None:
    found = compare(draft(A, B), draft(A, edited(B, 0.1)))
    said = overruled(found, Said(apart=frozenset({(1, 1)})))
    assert became(said) == [((0,), (0,), "same", False), ((1,), (), "cut", False), ((), (1,), "new", False)]
    assert [(fate.sure, fate.why) for fate in said.scenes[1:]] == [(1.0, ("said",))] * 2


def test_a_link_she_makes_is_there_with_the_words_it_keeps() -> None:
    stray = B[0]  # a paragraph saved from a scene that was cut does not make it live on
    found = compare(draft(A, [*B, *D], C), draft(A, C, [*NEW, *OTHER, stray]))
    assert became(found)[1:] == [((1,), (), "cut", False), ((2,), (1,), "same", False), ((), (2,), "new", False)]
    said = overruled(found, Said(linked=frozenset({(1, 2)})))
    assert became(said)[1:] == [((2,), (1,), "same", False), ((1,), (2,), "rewritten", True)]
    assert (said.scenes[2].sure, said.scenes[2].why) == (1.0, ("said",))
    assert next(link.kept for link in said.links if link.old == 1) == len(stray.split())


def test_one_more_link_makes_a_join() -> None:
    found = compare(draft(A, B, C), draft(A, C))
    said = overruled(found, Said(linked=frozenset({(1, 1)})))
    assert became(said) == [((0,), (0,), "same", False), ((1, 2), (1,), "joined", False)]


@pytest.mark.parametrize(
    ("linked", "moved"),
    [({(1, 3)}, set()), ({(1, 5)}, {(1, 5)}), ({(1, 0)}, {(1, 0)}), ({(1, 3), (1, 5)}, {(1, 5)}), ({(1, 2)}, set())],
)
def test_a_link_without_words_has_moved_where_it_crosses_the_rest(
    linked: set[tuple[int, int]], moved: set[tuple[int, int]]
) -> None:
    found = compare(draft(A, B, C), draft(NEW, OTHER, A, D, C, scene(10)))
    told = overruled(found, Said(linked=frozenset(linked), apart=frozenset({(1, 3)}) - linked))
    assert {(link.old, link.new) for link in told.links if link.moved} == moved


def test_what_moved_follows_what_she_says() -> None:
    longer = [*B, *D]
    found = compare(draft(A, longer, C), draft(longer, A, C))
    assert [(block.old, block.new) for block in found.blocks] == [((0, 6), (12, 18))]
    said = overruled(found, Said(apart=frozenset({(1, 0)})))
    assert [(link.old, link.new, link.moved) for link in said.links] == [(0, 1, False), (2, 2, False)]
    assert [(block.old, block.new) for block in said.blocks] == [((6, 18), (0, 12))]
    assert {pair.old for pair in said.pairs if pair.moved} == set(range(6, 18))


def test_in_a_part_way_draft_what_she_says_was_reached_was_cut() -> None:
    found = compare(draft(A, B, C, D), draft(A, edited(B, 0.1)), part_way=True)
    assert [one[2] for one in became(found)] == ["same", "revised", "not reached", "not reached"]
    said = overruled(found, Said(reached=frozenset({2})))
    assert [one[2] for one in became(said)] == ["same", "revised", "cut", "not reached"]
    assert [one[2] for one in became(overruled(found, Said(apart=frozenset({(1, 1)}))))] == [
        "same",
        "not reached",
        "not reached",
        "not reached",
        "new",
    ]


def test_what_she_says_was_not_reached_was_not_cut() -> None:
    found = compare(draft(A, B, C), draft(A, C))
    said = overruled(found, Said(unreached=frozenset({0, 1})))
    assert [one[2] for one in became(said)] == ["same", "not reached", "same"]


def told(one: list[list[int]], other: list[list[int]], *, part_way: bool = False) -> Comparison:
    return compare(drawn(one), drawn(other), part_way=part_way)


@given(texts, texts, st.booleans())
def test_nothing_said_changes_nothing(one: list[list[int]], other: list[list[int]], part_way: bool) -> None:
    found = told(one, other, part_way=part_way)
    assert overruled(found, Said()) == found
    assert overruled(found, Said(apart=frozenset({(99, 99)}))) == found


@given(texts, texts)
def test_what_she_confirms_is_only_surer(one: list[list[int]], other: list[list[int]]) -> None:
    found = told(one, other)
    worded = [link for link in found.links if "position" not in link.why]
    said = overruled(found, Said(linked=frozenset((link.old, link.new) for link in worded)))
    assert [replace(link, sure=0.0, why=()) for link in said.links] == [
        replace(link, sure=0.0, why=()) for link in found.links
    ]
    assert became(said) == became(found)
    assert (said.pairs, said.blocks, said.totals) == (found.pairs, found.blocks, found.totals)


@given(texts, texts, pairs, pairs, some, some, st.booleans())
def test_every_scene_is_in_one_fate_and_every_link_as_she_says(
    one: list[list[int]],
    other: list[list[int]],
    linked: frozenset[tuple[int, int]],
    apart: frozenset[tuple[int, int]],
    unreached: frozenset[int],
    reached: frozenset[int],
    part_way: bool,
) -> None:
    found = told(one, other, part_way=part_way)
    linked = frozenset(pair for pair in linked if pair[0] < len(one) and pair[1] < len(other))
    said = Said(linked, apart, unreached, reached)
    made = overruled(found, said)
    assert sorted(index for fate in made.scenes for index in fate.old) == list(range(len(one)))
    assert sorted(index for fate in made.scenes for index in fate.new) == list(range(len(other)))
    links = {(link.old, link.new) for link in made.links}
    assert linked <= links
    assert not links & (apart - linked)
    assert links - linked == {(link.old, link.new) for link in found.links} - apart - linked
    assert made.totals.moved == sum(pair.kept for pair in made.pairs if pair.moved)
    assert overruled(made, said) == made
    for fate in made.scenes:
        if not fate.new and fate.old[0] in unreached:
            assert fate.became == "not reached"
