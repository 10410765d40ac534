"""Two drafts compared: hand-made changes, and what holds of any two drafts."""

import os
import random
import subprocess
import sys
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.comparison.compare import compare
from afterdraft.comparison.comparison import Comparison
from afterdraft.comparison.told import Told, ToldScene

SYLLABLES = "ba de fi go lu ma ne pi ro su ta ve wi zo ka le mo nu sha tri".split()  # noqa: SIM905 — easier to read


def word(chosen: random.Random) -> str:
    """One of eight thousand, so that paragraphs share few by chance, as told ones do."""
    return "".join(chosen.choice(SYLLABLES) for _ in range(3))


def paragraph(seed: int, words: int = 24) -> str:
    """Words that no other paragraph has in this order."""
    chosen = random.Random(seed)  # noqa: S311 — the same words each time
    return " ".join(word(chosen) for _ in range(words)).capitalize() + "."


def draft(*scenes: list[str]) -> Told:
    """One chapter of these scenes."""
    told, at, paragraphs = [], 0, [text for scene in scenes for text in scene]
    for scene in scenes:
        told.append(ToldScene(at, at + len(scene), 0))
        at += len(scene)
    return Told(tuple(paragraphs), tuple(told), 1)


def scene(first: int, paragraphs: int = 6) -> list[str]:
    return [paragraph(100 * first + number) for number in range(paragraphs)]


A, B, C, D, NEW = (scene(number) for number in range(5))


def became(found: Comparison) -> list[tuple[tuple[int, ...], tuple[int, ...], str, bool]]:
    return [(fate.old, fate.new, fate.became, fate.moved) for fate in found.scenes]


def edited(told: list[str], share: float) -> list[str]:
    """That share of the words replaced."""
    chosen = random.Random(7)  # noqa: S311 — the same words each time
    return [" ".join(word(chosen) if chosen.random() < share else one for one in text.split()) for text in told]


@pytest.mark.parametrize(
    ("old", "new", "expected"),
    [
        ((A, B), (A, B), [((0,), (0,), "same", False), ((1,), (1,), "same", False)]),
        ((A, B, C), (A, C), [((0,), (0,), "same", False), ((1,), (), "cut", False), ((2,), (1,), "same", False)]),
        ((A, B), (A, NEW, B), [((0,), (0,), "same", False), ((), (1,), "new", False), ((1,), (2,), "same", False)]),
        (
            (A, B, C, D),
            (A, C, D, B),
            [
                ((0,), (0,), "same", False),
                ((2,), (1,), "same", False),
                ((3,), (2,), "same", False),
                ((1,), (3,), "same", True),
            ],
        ),
        ((A, B), ([*A[:3]], [*A[3:]], B), [((0,), (0, 1), "split", False), ((1,), (2,), "same", False)]),
        ((A, B, C), ([*A, *B], C), [((0, 1), (0,), "joined", False), ((2,), (1,), "same", False)]),
        ((A, B), (edited(A, 0.08), B), [((0,), (0,), "revised", False), ((1,), (1,), "same", False)]),
        ((A, B), (edited(A, 0.5), B), [((0,), (0,), "rewritten", False), ((1,), (1,), "same", False)]),
    ],
)
def test_what_became_of_every_scene(
    old: tuple[list[str], ...],
    new: tuple[list[str], ...],
    expected: list[tuple[tuple[int, ...], tuple[int, ...], str, bool]],
) -> None:
    assert became(compare(draft(*old), draft(*new))) == expected


def test_pieces_of_a_split_or_joined_paragraph_have_not_moved() -> None:
    whole = paragraph(7, 40)
    pieces = [whole[: whole.index(" ", 100)], whole[whole.index(" ", 100) + 1 :]]
    one, two = draft([*A[:2], whole, *A[2:]], B), draft([*A[:2], *pieces, *A[2:]], B)
    for found in (compare(one, two), compare(two, one)):
        assert len(found.pairs) == 14
        assert not any(pair.moved for pair in found.pairs)
        assert (found.blocks, found.totals.moved) == ((), 0)


def test_a_split_paragraph_that_has_moved_is_one_block() -> None:
    whole = paragraph(7, 40)
    pieces = [whole[: whole.index(" ", 100)], whole[whole.index(" ", 100) + 1 :]]
    found = compare(draft([whole, *A], B), draft(A, [*B, *pieces]))
    assert [(block.old, block.new, block.kept) for block in found.blocks] == [((0, 1), (12, 14), 40)]


def test_scenes_joined_in_one_paragraph_have_not_moved() -> None:
    found = compare(draft([A[0]], [B[0]]), draft([f"{A[0]} {B[0]}"]))
    assert became(found) == [((0, 1), (0,), "joined", False)]


def test_what_a_part_way_draft_has_not_come_to_is_not_cut() -> None:
    whole, begun = draft(A, B, C, D), draft(A, edited(B, 0.1))
    assert [one[2] for one in became(compare(whole, begun))] == ["same", "revised", "cut", "cut"]
    found = compare(whole, begun, part_way=True)
    assert [one[2] for one in became(found)] == ["same", "revised", "not reached", "not reached"]


def test_a_bookmark_outweighs_words() -> None:
    old, new = draft(A, B), draft(NEW, B)
    marked = Told(
        old.paragraphs, tuple(ToldScene(s.start, s.end, 0, "K22" if not n else "") for n, s in enumerate(old.scenes))
    )
    again = Told(
        new.paragraphs, tuple(ToldScene(s.start, s.end, 0, "K22" if not n else "") for n, s in enumerate(new.scenes))
    )
    assert became(compare(marked, again))[0] == ((0,), (0,), "rewritten", False)


texts = st.lists(st.lists(st.integers(0, 12), min_size=1, max_size=4), min_size=1, max_size=5)


def drawn(scenes: list[list[int]], shortest: int = 3) -> Told:
    return draft(*[[paragraph(number, shortest + 5 * (number % 4)) for number in one] for one in scenes])


@given(texts)
def test_a_draft_beside_itself_is_all_the_same(scenes: list[list[int]]) -> None:
    told = drawn(scenes)
    found = compare(told, told)
    assert {fate.became for fate in found.scenes} == {"same"}
    assert not any(fate.moved for fate in found.scenes)
    assert found.totals.cut == found.totals.added == found.totals.moved == 0


@given(texts, texts)
def test_every_word_and_every_scene_is_accounted_for_once(one: list[list[int]], other: list[list[int]]) -> None:
    old, new = drawn(one), drawn(other)
    found = compare(old, new)
    assert sorted(index for fate in found.scenes for index in fate.old) == list(range(len(old.scenes)))
    assert sorted(index for fate in found.scenes for index in fate.new) == list(range(len(new.scenes)))
    totals = found.totals
    assert totals.old == sum(len(text.split()) for text in old.paragraphs) == totals.kept + totals.cut
    assert totals.new == sum(len(text.split()) for text in new.paragraphs) == totals.kept + totals.added
    assert totals.moved <= totals.kept
    assert list(found.old_words) == [
        sum(len(text.split()) for text in old.paragraphs[one.start : one.end]) for one in old.scenes
    ]
    assert (sum(found.old_words), sum(found.new_words)) == (totals.old, totals.new)
    assert compare(old, new) == found


def test_a_book_of_short_lines_keeps_them_in_order() -> None:
    """No line is long enough to be known anywhere, and most stand many times."""
    chosen = random.Random(2)  # noqa: S311 — the same words each time
    few = [word(chosen) for _ in range(40)]
    lines = [" ".join(chosen.choice(few) for _ in range(3)) for _ in range(3000)]
    changed = [
        "A new first line.",
        *lines[:1000],
        *lines[1010:2200],
        "One put in.",
        *lines[2200:-1],
        "A new last line.",
    ]
    found = compare(draft(lines), draft(changed))
    kept = {(pair.old, pair.new) for pair in found.pairs if pair.similarity == 1}
    wanted = {(at, at + 1) for at in range(1000)} | {(at, at - 9) for at in range(1010, 2200)}
    assert len(kept & wanted) >= 0.99 * len(wanted)
    assert {fate.became for fate in compare(draft(lines), draft(lines)).scenes} == {"same"}


TWICE = """
import random
from afterdraft.comparison.compare import compare
from tests.comparison.test_compare import SYLLABLES, draft

chance = random.Random(5)
words = [first + last for first in SYLLABLES for last in SYLLABLES][:60]
line = lambda: " ".join(chance.choice(words) for _ in range(8))
old, new = ([[line() for _ in range(8)] for _ in range(60)] for _ in range(2))
found = compare(draft(*old), draft(*new))
print(len(found.pairs), found.pairs)
"""


def test_it_is_the_same_in_every_process() -> None:
    """Sets of words are walked in another order in each: drafts of few words, where much is alike by chance."""
    said = {
        subprocess.run(
            [sys.executable, "-c", TWICE],
            env={**os.environ, "PYTHONHASHSEED": seed, "PYTHONPATH": str(Path(__file__).parents[2])},
            capture_output=True,
            encoding="utf-8",
            check=True,
        ).stdout
        for seed in ("1", "2", "3")
    }
    assert len(said) == 1
    assert int(said.pop().split()[0]) > 10


@given(texts, texts)
def test_turned_round_what_was_cut_is_new(one: list[list[int]], other: list[list[int]]) -> None:
    old, new = drawn(one), drawn(other)
    there, back = compare(old, new), compare(new, old)
    assert {fate.old for fate in there.scenes if fate.became == "cut"} == {
        fate.new for fate in back.scenes if fate.became == "new"
    }
    assert {(pair.old, pair.new, pair.kept) for pair in there.pairs} == {
        (pair.new, pair.old, pair.kept) for pair in back.pairs
    }
    assert (there.totals.kept, there.totals.cut) == (back.totals.kept, back.totals.added)
