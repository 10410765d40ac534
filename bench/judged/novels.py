"""Which novels' questions are judged: the rule of the README. Imports nothing of the program."""

from collections.abc import Iterator, Sequence
from hashlib import sha256

from bench import corpus
from bench.slips.section import SEEN
from bench.structure.halves import Half, half

SHORTEST, LONGEST = 50_000, 130_000  # words
EACH = 5  # of each half


def chosen(which: Half) -> list[corpus.Novel]:
    """Those of one half that are judged, in the order of the SHA-256 of their titles."""
    novels = (corpus.novel(path) for path in corpus.paths())
    titled = {one.title: one for one in novels if half(one.title) == which}
    return [titled[title] for title in first({title: _words(one) for title, one in titled.items()})]


def first(words: dict[str, int]) -> Sequence[str]:
    """Of titles with their words those that are taken."""
    fit = [title for title, long in words.items() if SHORTEST <= long <= LONGEST and title not in SEEN]
    return sorted(fit, key=lambda title: sha256(title.encode()).hexdigest())[:EACH]


def _words(novel: corpus.Novel) -> int:
    return sum(map(len, map(str.split, _paragraphs(novel))))


def _paragraphs(novel: corpus.Novel) -> Iterator[str]:
    return (text for chapter in novel.chapters for scene in chapter.scenes for text in scene)
