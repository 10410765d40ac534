"""What became of scenes told paragraph by paragraph, for reading both drafts side by side."""

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import groupby
from typing import Literal

from afterdraft.comparison.chain import heaviest
from afterdraft.comparison.changes import Change, changed_words, changes
from afterdraft.comparison.comparison import Comparison
from afterdraft.comparison.told import Told
from afterdraft.manuscript.words import count

RowKind = Literal["same", "changed", "cut", "new", "moved here", "moved away"]
JOIN = "\n"
Paragraphs = tuple[int, ...]
Partners = Mapping[int, Mapping[int, int]]  # words kept, by a paragraph and one of the other side


@dataclass(frozen=True, slots=True)
class SideRow:
    """One row of two columns, in story paragraphs. Several stand in one only where a paragraph was split or joined."""

    kind: RowKind
    old: Paragraphs  # empty where the left column is
    new: Paragraphs
    words_changed: int  # of what was cut or is new, all its words
    changes: tuple[Change, ...] = ()  # of what changed: from `text_of` the old ones to `text_of` the new ones
    elsewhere: int | None = None  # of what moved: the scene on the other side …
    partners: Paragraphs = ()  # … and its paragraphs there


def rows_of(found: Comparison, olds: Sequence[int], news: Sequence[int]) -> tuple[SideRow, ...]:
    """Scenes of the old draft beside scenes of the new one: every paragraph of both once, each side in its order."""
    return tuple(_Rows(found, sorted(olds), sorted(news)).told())


def text_of(told: Told, paragraphs: Sequence[int]) -> str:
    """What the changes of a row count characters in: a paragraph a line."""
    return JOIN.join(told.paragraphs[one] for one in paragraphs)


class _Rows:
    def __init__(self, found: Comparison, olds: Sequence[int], news: Sequence[int]) -> None:
        self._old, self._new = found.old, found.new
        self._olds, self._news = _paragraphs(found.old, olds), _paragraphs(found.new, news)
        self._scenes = found.old.scene_at(), found.new.scene_at()
        self._there: defaultdict[int, dict[int, int]] = defaultdict(dict)
        self._back: defaultdict[int, dict[int, int]] = defaultdict(dict)
        for pair in found.pairs:
            self._there[pair.old][pair.new] = self._back[pair.new][pair.old] = pair.kept

    def told(self) -> Iterator[SideRow]:
        at = there = 0
        for start, end, first, last in self._beside():
            yield from self._left(self._olds[at:start])
            yield from self._right(self._news[there:first])
            yield self._paired(self._olds[start : end + 1], self._news[first : last + 1])
            at, there = end + 1, last + 1
        yield from self._left(self._olds[at:])
        yield from self._right(self._news[there:])

    def _beside(self) -> list[tuple[int, int, int, int]]:
        """Of each row that has both sides: its first and last place among the old paragraphs, then the new ones."""
        places = {paragraph: place for place, paragraph in enumerate(self._news)}
        cells = {
            (at, places[new]): kept + 0.01
            for at, old in enumerate(self._olds)
            for new, kept in self._there[old].items()
            if new in places
        }
        pairs = sorted(cells)
        rows: list[tuple[int, int, int, int]] = []
        for place in heaviest(pairs, [cells[pair] for pair in pairs], shared=True):
            at, there = pairs[place]
            if rows and (rows[-1][1] == at or rows[-1][3] == there):
                rows[-1] = (rows[-1][0], at, rows[-1][2], there)
            else:
                rows.append((at, at, there, there))
        return rows

    def _paired(self, olds: Paragraphs, news: Paragraphs) -> SideRow:
        old, new = text_of(self._old, olds), text_of(self._new, news)
        if len(olds) == len(news) == 1 and old.split() == new.split():
            return SideRow("same", olds, news, 0)
        return SideRow("changed", olds, news, changed_words(old, new), changes(old, new))

    def _left(self, olds: Paragraphs) -> Iterator[SideRow]:
        for one, scene, partners in _sent(olds, self._there, self._scenes[1]):
            if scene is None:
                yield SideRow("cut", one, (), count(text_of(self._old, one)))
            else:
                yield SideRow("moved away", one, (), self._differing(one, partners), (), scene, partners)

    def _right(self, news: Paragraphs) -> Iterator[SideRow]:
        for one, scene, partners in _sent(news, self._back, self._scenes[0]):
            if scene is None:
                yield SideRow("new", (), one, count(text_of(self._new, one)))
            else:
                yield SideRow("moved here", (), one, self._differing(partners, one), (), scene, partners)

    def _differing(self, olds: Paragraphs, news: Paragraphs) -> int:
        """Words changed in what moved; where pieces of it went another way, in the piece, which is the shorter side."""
        old, new = text_of(self._old, olds), text_of(self._new, news)
        if {n for o in olds for n in self._there[o]} <= {*news} and {o for n in news for o in self._back[n]} <= {*olds}:
            return changed_words(old, new)
        kept = sum(self._there[o].get(n, 0) for o in olds for n in news)
        return max(0, min(count(old), count(new)) - kept)


def _sent(
    paragraphs: Paragraphs, partners: Partners, scenes: Sequence[int]
) -> Iterator[tuple[Paragraphs, int | None, Paragraphs]]:
    """Paragraphs alone in their column, with the scene and paragraphs of the other side that they went to or are from.

    Neighbours of one row are pieces of the same paragraphs.
    """
    for (scene, there), run in groupby(paragraphs, key=lambda one: _home(partners.get(one, {}), scenes)):
        if there:
            yield tuple(run), scene, there
        else:
            yield from (((one,), None, ()) for one in run)


def _home(partners: Mapping[int, int], scenes: Sequence[int]) -> tuple[int | None, Paragraphs]:
    """The scene that has most of a paragraph's words, and its partners there."""
    if not partners:
        return None, ()
    scene = scenes[max(sorted(partners), key=partners.__getitem__)]
    return scene, tuple(one for one in sorted(partners) if scenes[one] == scene)


def _paragraphs(told: Told, scenes: Sequence[int]) -> Paragraphs:
    return tuple(at for scene in scenes for at in range(told.scenes[scene].start, told.scenes[scene].end))
