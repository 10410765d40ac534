"""The fore-edge: every scene has its width, chapters stand apart, nothing sticks out."""

import itertools
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.desk.card import Card
from afterdraft.manuscript.division import Chapter, Division, Role, Scene
from afterdraft.manuscript.outline import outline
from afterdraft.web.foreedge import CHAPTER_GAP, GAP, LEAST, WIDTH, fore_edge
from afterdraft.web.view import BookView, view
from afterdraft.work.ports import BookFacts, DraftFacts, Edits
from tests.store.sample import begun


def seen(chapters: list[list[int]], written: frozenset[int] = frozenset()) -> BookView:
    """A view of a book with so many words in each scene of each chapter; no file behind it."""
    words = [count for chapter in chapters for count in chapter]
    starts = [sum(len(chapter) for chapter in chapters[:n]) for n in range(len(chapters))]
    roles: list[Role] = ["story" for _ in words]
    division = Division(
        chapters=tuple(Chapter(f"c{n}", at, None, "chapter", n + 1, "") for n, at in enumerate(starts)),
        scenes=tuple(Scene(f"s{n}", n, code=f"F{n}") for n in range(len(words))),
        roles=tuple(roles),
    )
    draft = DraftFacts("d", 1, "Weir", "", "en", (), sum(words), len(words), len(written), "")
    return BookView(
        book=None,  # type: ignore[arg-type]  # the strip never reads it
        facts=BookFacts("b", "Weir", "", "", draft, ""),
        draft=draft,
        division=division,
        outline=outline(division, words),
        cards={f"s{n}": Card(f"k{n}", f"s{n}", summary="Told." if n in written else "") for n in range(len(words))},
        openings={n: f"Scene {n} opens" for n in range(len(words))},
        edits=Edits(None, None),
    )


def test_widths_follow_the_words_and_chapters_stand_apart() -> None:
    edge = fore_edge(seen([[100, 300], [600]], frozenset({0})), here="F1")
    first, second, third = edge.leaves
    assert second.width == pytest.approx(3 * first.width, abs=0.02)
    assert second.x - first.x - first.width == pytest.approx(GAP, abs=0.02)
    assert third.x - second.x - second.width == pytest.approx(CHAPTER_GAP, abs=0.02)
    assert [leaf.kind for leaf in edge.leaves] == ["written", "here", ""]
    assert edge.label == "Chapter 1 · Scene 1 opens · 300 words"
    assert edge.progress == "1 of 3 scenes outlined"


@given(st.lists(st.lists(st.integers(0, 20_000), min_size=1, max_size=8), min_size=1, max_size=20))
def test_every_scene_can_be_seen_and_none_sticks_out(chapters: list[list[int]]) -> None:
    leaves = fore_edge(seen(chapters)).leaves
    assert len(leaves) == sum(map(len, chapters))
    assert all(leaf.width >= LEAST - 0.01 for leaf in leaves)
    assert all(after.x >= before.x + before.width - 0.02 for before, after in itertools.pairwise(leaves))
    assert leaves[-1].x + leaves[-1].width <= WIDTH + 1


def test_a_real_book_has_its_strip(tmp_path: Path) -> None:
    book, _ = begun(tmp_path)
    with book:
        edge = fore_edge(view(book))
    assert next(leaf.label for leaf in edge.leaves).startswith("Chapter 1: The ferry · The ferry wasn’t late")
    assert len({leaf.code for leaf in edge.leaves}) == len(edge.leaves) == 3
