"""A round in counts, and what changed where it was planned, guarded, or neither."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.comparison.carrying import Carrier
from afterdraft.comparison.compare import compare
from afterdraft.comparison.passages import fate_of, followed, passage_changed, text_changed, unplanned
from afterdraft.comparison.round import RoundCounts, counts
from afterdraft.comparison.said import Said, overruled
from tests.comparison.test_compare import NEW, A, B, C, D, draft, drawn, edited, scene, texts

E = scene(8)
OLD = draft(A, B, C, D, E)
ANEW = edited(B, 0.1)
OTHERS = sum(
    one != other for old, new in zip(B, ANEW, strict=True) for one, other in zip(old.split(), new.split(), strict=True)
)
REVISED = draft(NEW, A[:3], A[3:], D, ANEW, E)  # B moved behind D, C cut


def test_a_round_is_told_in_counts() -> None:
    assert counts(compare(OLD, REVISED)) == RoundCounts(
        scenes_same=2,
        scenes_touched=3,
        revised=1,
        rewritten=0,
        split=1,
        joined=0,
        cut=1,
        moved=1,
        not_reached=0,
        new=1,
        words_kept=5 * 144 - 144 - OTHERS,
        words_cut=144 + OTHERS,
        words_not_reached=0,
        words_added=144 + OTHERS,
        words_moved=144 - OTHERS,
    )


def test_what_a_part_way_draft_has_not_come_to_is_not_counted_as_cut() -> None:
    told = counts(compare(OLD, draft(A, [*B, C[0]]), part_way=True))
    assert (told.scenes_same, told.scenes_touched, told.not_reached) == (1, 1, 3)
    assert (told.words_kept, told.words_cut, told.words_not_reached) == (2 * 144 + 24, 0, 3 * 144 - 24)


@given(texts, texts, st.booleans(), st.frozensets(st.integers(0, 4)))
def test_every_scene_and_word_is_counted_once(
    one: list[list[int]], other: list[list[int]], part_way: bool, unreached: frozenset[int]
) -> None:
    found = overruled(compare(drawn(one), drawn(other), part_way=part_way), Said(unreached=unreached))
    told = counts(found)
    assert told.scenes_same + told.scenes_touched + told.not_reached == len(one)
    done = (told.revised, told.rewritten, told.split, told.joined, told.cut)
    assert sum(done) <= told.scenes_touched <= sum(done) + told.moved
    assert told.words_kept + told.words_cut + told.words_not_reached == found.totals.old
    assert min(told.words_cut, told.words_not_reached) >= 0
    assert told.words_kept + told.words_added == found.totals.new


@pytest.mark.parametrize(("at", "changed"), [(0, True), (1, True), (2, True), (3, False), (4, False)])
def test_a_scene_changed_or_is_as_it_was(at: int, changed: bool) -> None:
    assert text_changed(compare(OLD, REVISED), at) is changed


def test_a_comma_is_a_change_and_white_space_is_none() -> None:
    new = draft([A[0].replace(" ", "\n", 1), *A[1:]], [B[0][:-1] + "!", *B[1:]])
    found = compare(draft(A, B), new)
    assert [fate.became for fate in found.scenes] == ["same", "same"]
    assert [text_changed(found, at) for at in (0, 1)] == [False, True]


def test_what_was_not_reached_did_neither() -> None:
    found = compare(OLD, draft(A, [*B, C[0]]), part_way=True)
    carrier = Carrier(found)
    whole = (0, len(C[0]))
    assert [text_changed(found, at) for at in range(5)] == [False, True, None, None, None]
    assert passage_changed(found, carrier, (12, *whole)) is False  # it stands elsewhere already
    assert passage_changed(found, carrier, (13, 0, 20)) is None
    assert followed(found, carrier, (13, 0, 20)) is None


def test_a_passage_changed_or_is_as_it_was() -> None:
    found = compare(draft(A, B), draft(A[1:], [B[0].replace(B[0].split()[4], "ferry"), *B[1:]]))
    carrier = Carrier(found)
    told = [passage_changed(found, carrier, (at, 0, len(B[0]))) for at in (0, 1, 6, 7)]
    assert told == [True, False, True, False]


def test_what_was_not_planned() -> None:
    found = compare(OLD, REVISED)
    assert [(fate.old, fate.became) for fate in unplanned(found, frozenset())] == [
        ((), "new"),
        ((0,), "split"),
        ((1,), "revised"),
        ((2,), "cut"),
    ]
    assert [fate.became for fate in unplanned(found, {0, 1, 3})] == ["new", "cut"]


def test_what_only_moved_is_told_too_and_what_was_not_reached_is_not() -> None:
    found = compare(OLD, draft(A, D, C, B), part_way=True)
    assert {fate.old for fate in unplanned(found, {2})} == {(fate.old) for fate in found.scenes if fate.moved} - {(2,)}
    assert all(fate.became == "same" for fate in unplanned(found, set()))


def test_a_scene_that_is_not_there_has_no_fate() -> None:
    with pytest.raises(LookupError):
        fate_of(compare(draft(A), draft(A)), 1)
