"""Novels with some of their breaks removed: what is left to look in, and where the breaks were. Imports nothing of
the program."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from bench import corpus
from bench.structure.halves import Half, half

Kind = Literal["hr", "section"]  # typed breaks, also inside quoted documents; or headed sections within chapters
HABIT = 10_000  # words: a novel with a break in as many or fewer marks its scenes as a habit


@dataclass(frozen=True, slots=True)
class Stretch:
    """What stands between two beginnings that stay: a chapter, or what lies between its other breaks."""

    texts: tuple[str, ...]  # its paragraphs
    breaks: tuple[int, ...]  # paragraphs at which a scene began; never 0


@dataclass(frozen=True, slots=True)
class Blind:
    """A novel whose breaks of one kind are removed."""

    slug: str
    half: Half
    stretches: tuple[Stretch, ...]

    @property
    def breaks(self) -> int:
        return sum(len(one.breaks) for one in self.stretches)

    @property
    def words(self) -> int:
        return sum(len(text.split()) for one in self.stretches for text in one.texts)

    @property
    def by_habit(self) -> bool:
        return self.breaks * HABIT >= self.words


def novels(kind: Kind, side: Half) -> list[Blind]:
    """Those of a half that have a break of this kind."""
    found = (blind(corpus.novel(path), kind) for path in corpus.paths())
    return [one for one in found if one.half == side and one.breaks]


def blind(novel: corpus.Novel, kind: Kind) -> Blind:
    stretches = [one for chapter in novel.chapters for one in _stretches(chapter, kind)]
    return Blind(novel.slug, half(novel.title), tuple(stretches))


def _stretches(chapter: corpus.Chapter, kind: Kind) -> Iterator[Stretch]:
    texts: list[str] = []
    breaks: list[int] = []
    for scene, began in zip(chapter.scenes, chapter.breaks, strict=True):
        if texts and began.kind.startswith(kind):
            breaks.append(len(texts))
        elif texts:
            yield Stretch(tuple(texts), tuple(breaks))
            texts, breaks = [], []
        texts += [text.replace("*", "") for text in scene]
    if texts:
        yield Stretch(tuple(texts), tuple(breaks))
