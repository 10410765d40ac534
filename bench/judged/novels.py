"""Which novels' questions are judged: the rule of the README. Imports nothing of the program."""

from collections.abc import Iterator, Mapping, Sequence
from hashlib import sha256

from bench import corpus
from bench.slips.section import SEEN
from bench.structure.halves import Half, half

SHORTEST, LONGEST = 50_000, 130_000  # words
EACH = 5  # of a group
GROUPS: Mapping[str, tuple[Half, int]] = {"tune": ("tune", 0), "report": ("report", 0), "report, second": ("report", 1)}


def chosen(group: str) -> list[corpus.Novel]:
    """Those of one group that are judged, in the order of the SHA-256 of their titles."""
    which, number = GROUPS[group]
    novels = (corpus.novel(path) for path in corpus.paths())
    titled = {one.title: one for one in novels if half(one.title) == which}
    return [titled[title] for title in taken({title: _words(one) for title, one in titled.items()}, number)]


def taken(words: dict[str, int], number: int) -> Sequence[str]:
    """Of titles with their words those of the first five, the second …, from 0."""
    fit = [title for title, long in words.items() if SHORTEST <= long <= LONGEST and title not in SEEN]
    return sorted(fit, key=lambda title: sha256(title.encode()).hexdigest())[EACH * number : EACH * (number + 1)]


def _words(novel: corpus.Novel) -> int:
    return sum(map(len, map(str.split, _paragraphs(novel))))


def _paragraphs(novel: corpus.Novel) -> Iterator[str]:
    return (text for chapter in novel.chapters for scene in chapter.scenes for text in scene)
