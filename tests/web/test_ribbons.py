"""The picture of two drafts: heights by words, ribbons within their scenes, nothing on top of another; and its size."""

import itertools
import re
from collections.abc import Sequence
from dataclasses import replace
from types import SimpleNamespace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.comparison.comparison import Fate, Link
from afterdraft.web.render import environment
from afterdraft.web.ribbons import GAP, HEAD, LEAST, NEW, OLD, Bar, Column, Picture, picture


def fate(olds: Sequence[int], news: Sequence[int], *, moved: bool = False) -> Fate:
    became = "cut" if not news else "new" if not olds else "revised"
    return Fate(tuple(olds), tuple(news), became, moved, 0.9, 1.0, ("words",))  # type: ignore[arg-type]  # all are known


@st.composite
def drafts(draw: st.DrawFn) -> tuple[Column, Column, list[Fate], list[Link]]:
    """Two drafts of scenes that are joined one to one in any order, some not at all; one fate has all the rest."""
    old, new = (draw(st.lists(st.integers(0, 5_000), min_size=1, max_size=30)) for _ in range(2))
    heads = [{n: f"Chapter {n}" for n in draw(st.sets(st.integers(0, len(side) - 1)))} for side in (old, new)]
    order = draw(st.permutations(range(len(new))))
    links = [
        Link(n, other, draw(st.integers(0, min(old[n], new[other]))), False, 1.0, ("words",))
        for n, other in zip(range(len(old)), order, strict=False)
        if draw(st.booleans())
    ]
    fates = [fate([link.old], [link.new]) for link in links]
    fates += [fate([n], []) for n in range(len(old)) if n not in {link.old for link in links}]
    fates += [fate([], [n]) for n in range(len(new)) if n not in {link.new for link in links}]
    return Column(old, heads[0]), Column(new, heads[1]), fates, links


def bars(drawing: Picture, side: str) -> list[Bar]:
    found = [bar for one in drawing.drawn for bar in (one.olds if side == "old" else one.news)]
    return sorted(found, key=lambda bar: bar.index)


def ends(path: str) -> tuple[tuple[float, float], tuple[float, float]]:
    """Top and foot of a ribbon on the left and on the right."""
    numbers = [float(one) for one in re.findall(r"-?[\d.]+", path)]
    _, a, _, _, _, _, _, c, d, *_, b = numbers
    return (a, b), (c, d)


@given(drafts())
def test_every_scene_is_there_in_order_and_none_lies_on_another(
    two: tuple[Column, Column, list[Fate], list[Link]],
) -> None:
    old, new, fates, links = two
    drawing = picture(old, new, fates, links)
    for side, column in (("old", old), ("new", new)):
        drawn = bars(drawing, side)
        assert [bar.index for bar in drawn] == list(range(len(column.words)))
        assert all(bar.height >= LEAST for bar in drawn)
        for before, after in itertools.pairwise(drawn):
            least = HEAD if after.index in column.heads else GAP
            assert after.y - before.y - before.height >= least - 0.11
        assert drawn[-1].y + drawn[-1].height <= drawing.height


@given(drafts())
def test_ribbons_begin_and_end_within_their_scenes(two: tuple[Column, Column, list[Fate], list[Link]]) -> None:
    drawing = picture(*two)
    assert sum(len(one.ribbons) for one in drawing.drawn) == len(two[3])
    for one in drawing.drawn:
        for path in one.ribbons:
            for (top, foot), bar in zip(ends(path), (one.olds[0], one.news[0]), strict=True):
                assert bar.y - 0.11 <= top <= foot <= bar.y + bar.height + 0.11


def test_heights_and_breadths_go_by_words() -> None:
    drawing = picture(
        Column([100, 300], {}),
        Column([300, 100], {}),
        [fate([0], [0]), fate([1], [1])],
        [link(0, 0, 50), link(1, 1, 100)],
    )
    short, long = bars(drawing, "old")
    assert long.height == pytest.approx(3 * short.height, abs=0.2)
    (top, foot), (there_top, there_foot) = ends(drawing.drawn[0].ribbons[0])
    assert foot - top == pytest.approx(short.height / 2, abs=0.2)
    assert there_foot - there_top == pytest.approx(long.height / 6, abs=0.2)


def test_of_a_scene_that_was_split_each_ribbon_has_its_own_place() -> None:
    drawing = picture(
        Column([200], {}), Column([100, 100], {}), [fate([0], [0, 1])], [link(0, 0, 100), link(0, 1, 100)]
    )
    first, second = (ends(path)[0] for path in drawing.drawn[0].ribbons)
    assert first[1] == pytest.approx(second[0], abs=0.11)


def test_what_was_cut_stands_out_on_the_left_and_what_is_new_on_the_right() -> None:
    drawing = picture(
        Column([10, 10], {}), Column([10, 10], {}), [fate([0], [0]), fate([1], []), fate([], [1])], [link(0, 0, 9)]
    )
    kept, cut = bars(drawing, "old")
    same, new = bars(drawing, "new")
    assert (kept.x, same.x) == (OLD, NEW)
    assert cut.x < OLD
    assert new.x > NEW


def test_what_is_not_reached_stays_in_its_column() -> None:
    unreached = replace(fate([0], []), became="not reached")
    assert bars(picture(Column([10], {}), Column([], {}), [unreached], []), "old")[0].x == OLD


def test_without_any_scene_there_is_still_a_picture() -> None:
    assert picture(Column([], {}), Column([], {}), [], []).drawn == ()


def test_a_hundred_scenes_take_less_than_150_kilobytes() -> None:
    """Of drawing, with titles of the length that fits; every fate leads to its scenes side by side."""
    count = 100
    words = [900 + 37 * (n % 11) for n in range(count)]
    heads = {n: f"Chapter {n // 4}: The Year the River Came Up" for n in range(0, count, 4)}
    fates = [fate([n], [count - 1 - n], moved=True) for n in range(count)]
    drawing = picture(
        Column(words, heads), Column(words, heads), fates, [link(n, count - 1 - n, 800) for n in range(count)]
    )
    label = SimpleNamespace(code="Q64", short="The Year the River Came Up as Far as…")
    line = SimpleNamespace(
        path="/books/bk6ll63sr4d4/drafts/side/1-Q64", says="The Year the River Came Up: revised, moved"
    )
    macro = environment().get_template("drafts_ribbons.html").module.picture  # type: ignore[attr-defined]  # a macro
    page = str(macro(drawing, [line] * count, [label] * count, [label] * count, 1, 2, "Scenes"))
    assert page.count("<path d=") == count + 2  # and two patterns
    assert len(page.encode()) < 150_000


def link(old: int, new: int, kept: int) -> Link:
    return Link(old, new, kept, False, 1.0, ("words",))
