"""Two drafts of scenes side by side: every paragraph once, moved ones as moved, pieces in one row."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.comparison.changes import changed_words
from afterdraft.comparison.compare import compare
from afterdraft.comparison.side_by_side import SideRow, rows_of, text_of
from afterdraft.comparison.told import Told
from tests.comparison.test_compare import NEW, A, B, C, draft, edited, paragraph

LONG = paragraph(7, 40)
PIECES = LONG[: LONG.index(" ", 120)], LONG[LONG.index(" ", 120) + 1 :]


def shape(rows: tuple[SideRow, ...]) -> list[tuple[str, tuple[int, ...], tuple[int, ...]]]:
    return [(row.kind, row.old, row.new) for row in rows]


def test_what_was_kept_changed_cut_and_put_in() -> None:
    touched = A[2].replace(A[2].split()[3], "ferry")
    found = compare(draft(A), draft([A[0], touched, *A[3:5], NEW[0], A[5]]))
    rows = rows_of(found, (0,), (0,))
    assert shape(rows) == [
        ("same", (0,), (0,)),
        ("cut", (1,), ()),
        ("changed", (2,), (1,)),
        ("same", (3,), (2,)),
        ("same", (4,), (3,)),
        ("new", (), (4,)),
        ("same", (5,), (5,)),
    ]
    assert [row.words_changed for row in rows] == [0, 24, 1, 0, 0, 24, 0]
    assert [A[2][slice(*change.old)].split() for change in rows[2].changes if change.kind == "replaced"] == [
        A[2].split()[3:4]
    ]


def test_a_moved_paragraph_stands_in_full_here_and_is_named_there() -> None:
    touched = A[2].replace(A[2].split()[3], "ferry")
    found = compare(draft(A, B, C), draft([*A[:2], *A[3:]], B, [*C[:3], touched, *C[3:]]))
    away = next(row for row in rows_of(found, (0,), (0,)) if row.kind != "same")
    assert away == SideRow("moved away", (2,), (), 1, (), 2, (14,))
    here = next(row for row in rows_of(found, (2,), (2,)) if row.kind != "same")
    assert here == SideRow("moved here", (), (14,), 1, (), 0, (2,))


def test_within_a_scene_too() -> None:
    found = compare(draft(A), draft([*A[1:5], A[0], A[5]]))
    rows = rows_of(found, (0,), (0,))
    assert shape(rows)[0] == ("moved away", (0,), ())
    assert shape(rows)[5] == ("moved here", (), (4,))
    assert (rows[5].elsewhere, rows[5].partners) == (0, (0,))


@pytest.mark.parametrize("turned", [False, True])
def test_pieces_of_a_paragraph_stand_in_one_row(turned: bool) -> None:
    whole, parted = draft([*A[:2], LONG, *A[2:]]), draft([*A[:2], *PIECES, *A[2:]])
    rows = rows_of(compare(parted, whole) if turned else compare(whole, parted), (0,), (0,))
    row = next(row for row in rows if row.kind == "changed")
    assert (row.old, row.new)[:: -1 if turned else 1] == ((2,), (2, 3))
    assert row.words_changed == 0
    assert [change.kind for change in row.changes] == ["kept"]


def test_pieces_that_moved_stand_in_one_row_and_a_piece_alone_counts_alone() -> None:
    whole = draft([LONG, *A], B, C)
    both = compare(whole, draft(A, B, [*C, *PIECES]))
    assert rows_of(both, (2,), (2,))[-1] == SideRow("moved here", (), (18, 19), 0, (), 0, (0,))
    assert rows_of(both, (0,), (0,))[0] == SideRow("moved away", (0,), (), 0, (), 2, (18, 19))
    one = compare(draft([*PIECES, *A], B), draft([*A[:3], LONG, *A[3:]], B))
    assert {row.words_changed for row in rows_of(one, (0,), (0,))} == {0}


def test_a_scene_that_was_cut_is_all_on_the_left() -> None:
    found = compare(draft(A, B), draft(A))
    assert shape(rows_of(found, (1,), ())) == [("cut", (at,), ()) for at in range(6, 12)]


def test_a_joined_scene_has_both_its_forerunners_in_order() -> None:
    found = compare(draft(A, B), draft([*A, *edited(B, 0.1)]))
    rows = rows_of(found, (0, 1), (0,))
    assert [row.old for row in rows] == [row.new for row in rows] == [(at,) for at in range(12)]


pieces = st.lists(
    st.lists(st.lists(st.integers(0, 9), min_size=1, max_size=3), min_size=1, max_size=3), min_size=1, max_size=3
)


def pieced(scenes: list[list[list[int]]]) -> Told:
    """Paragraphs of one to three pieces, so that the same ones are split and joined."""
    return draft(*[[" ".join(paragraph(one, 9) for one in many) for many in scene] for scene in scenes])


@given(pieces, pieces, st.data())
def test_every_paragraph_of_both_stands_once_and_in_order(
    one: list[list[list[int]]], other: list[list[list[int]]], data: st.DataObject
) -> None:
    old, new = pieced(one), pieced(other)
    found = compare(old, new)
    fates = [(fate.old, fate.new) for fate in found.scenes]
    olds, news = data.draw(st.sampled_from([*fates, (tuple(range(len(one))), tuple(range(len(other))))]))
    rows = rows_of(found, olds, news)
    assert [at for row in rows for at in row.old] == [
        at for scene in olds for at in range(old.scenes[scene].start, old.scenes[scene].end)
    ]
    assert [at for row in rows for at in row.new] == [
        at for scene in news for at in range(new.scenes[scene].start, new.scenes[scene].end)
    ]
    with_partner = {pair.old for pair in found.pairs}, {pair.new for pair in found.pairs}
    for row in rows:
        left, right = text_of(old, row.old), text_of(new, row.new)
        match row.kind:
            case "same":
                assert left.split() == right.split()
            case "changed":
                assert "".join(left[slice(*change.old)] for change in row.changes) == left
                assert "".join(right[slice(*change.new)] for change in row.changes) == right
            case "cut" | "new":
                assert not with_partner[0].intersection(row.old)
                assert not with_partner[1].intersection(row.new)
            case _:
                told, home = (new, row.old) if row.old else (old, row.new)
                assert home
                assert {told.scene_at()[at] for at in row.partners} == {row.elsewhere}


words = st.lists(st.sampled_from(["ferry", "Ferry,", "lock", "lock.", "—", "door"]), max_size=9).map(" ".join)


@pytest.mark.parametrize(
    ("old", "new", "expected"),
    [
        ("He went home.", "He went home!", 0),
        ("He went — home.", "he went home", 0),
        ("He went home.", "", 3),
        ("The cat sat down.", "The old dog sat down.", 2),
        ("The cat sat down.", "The dog sat up there.", 3),
    ],
)
def test_words_changed(old: str, new: str, expected: int) -> None:
    assert changed_words(old, new) == changed_words(new, old) == expected


@given(words, words)
def test_words_changed_are_no_more_than_the_longer_has_and_no_fewer_than_it_is_longer(old: str, new: str) -> None:
    sizes = [sum(any(map(str.isalnum, one)) for one in text.split()) for text in (old, new)]
    assert abs(sizes[0] - sizes[1]) <= changed_words(old, new) <= max(sizes)
    assert changed_words(old, old) == 0


def test_words_changed_of_a_paragraph_without_end_are_told_in_time() -> None:
    old = " ".join(map(str, range(50_000)))
    assert changed_words(old, old.replace(" 7000 ", " x y ").replace(" 27000 ", " z ")) == 20_002
