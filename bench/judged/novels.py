"""Which novels' questions are judged: the rule of the README. Imports nothing of the program."""

import re
from collections.abc import Iterator, Mapping, Sequence
from hashlib import sha256

from bench import corpus
from bench.faults.novels import novels
from bench.reading.halves import halves
from bench.reading.novels import novel as of_dialogue
from bench.reading.novels import titles
from bench.slips.section import SEEN
from bench.structure.halves import Half, half

SHORTEST, LONGEST = 50_000, 130_000  # words
EACH = 5  # of a group
FITTING: Mapping[str, tuple[Half, int]] = {
    "tune": ("tune", 0),
    "report": ("report", 0),
    "report, second": ("report", 1),
}
THIRD = "report, third"
REST, OTHERS = "tune, the rest", "tune, other corpora"  # read through and used for tuning
GROUPS = ("tune", REST, OTHERS, "report", "report, second", THIRD)
ASKED = ("Emma", "Hard Times", "The Gambler", "Where Angels Fear to Tread", "The Mysterious Affair At Styles")


def chosen(group: str) -> list[corpus.Novel]:
    """Those of one group that are judged, in the order of the SHA-256 of their titles."""
    if group == THIRD:
        return sorted([*_longer(), *_of_dialogue()], key=lambda one: _hashed(one.title))
    if group in (REST, OTHERS):
        return sorted(_the_rest() if group == REST else _of_other_corpora(), key=lambda one: _hashed(one.title))
    which, number = FITTING[group]
    titled = {one.title: one for one in _half(which)}
    return [titled[title] for title in taken({title: _words(one) for title, one in titled.items()}, number)]


def taken(words: dict[str, int], number: int) -> Sequence[str]:
    """Of titles with their words those of the first five, the second …, from 0."""
    fit = [title for title, long in words.items() if SHORTEST <= long <= LONGEST and title not in SEEN]
    return sorted(fit, key=_hashed)[EACH * number : EACH * (number + 1)]


def named(title: str) -> corpus.Novel | None:
    """By its title, or by how its file is called; None where there is none."""
    known = (*map(corpus.novel, corpus.paths()), *_of_dialogue(), *_of_other_corpora())
    return next((one for one in known if title in (one.title, one.slug)), None)


def _half(which: Half) -> Iterator[corpus.Novel]:
    return (one for one in map(corpus.novel, corpus.paths()) if half(one.title) == which)


def _the_rest() -> Iterator[corpus.Novel]:
    first = {one.title for one in chosen("tune")}
    return (one for one in _half("tune") if one.title not in first)


def _of_other_corpora() -> Iterator[corpus.Novel]:
    """Those that `bench.faults` plants into besides the structure corpus."""
    return (_novel(re.sub(r"\W+", "-", title.lower()), title, scenes) for title, scenes in novels("others"))


def _longer() -> Iterator[corpus.Novel]:
    return (one for one in _half("report") if one.title not in SEEN and _words(one) > LONGEST)


def _of_dialogue() -> Iterator[corpus.Novel]:
    """Of the dialogue corpus's report half those that were never asked about; their chapters are scenes."""
    known = titles()
    halved = halves(known.values())
    for slug, title in known.items():
        if halved[title] == "report" and title not in ASKED:
            yield _novel(slug, title, [[one.text for one in chapter] for chapter in of_dialogue(slug).chapters])


def _novel(slug: str, title: str, scenes: Sequence[Sequence[str]]) -> corpus.Novel:
    return corpus.Novel(
        slug=slug,
        title=title,
        author="",
        front=(),
        parts=(),
        chapters=tuple(_chapter(tuple(scene)) for scene in scenes),
    )


def _chapter(paragraphs: tuple[str, ...]) -> corpus.Chapter:
    return corpus.Chapter(
        number=None,
        title="",
        subtitle="",
        label="",
        kind="chapter",
        head=(),
        part=None,
        scenes=(paragraphs,),
        breaks=(corpus.Break("start", ""),),
    )


def _hashed(title: str) -> str:
    return sha256(title.encode()).hexdigest()


def _words(novel: corpus.Novel) -> int:
    return sum(map(len, map(str.split, _paragraphs(novel))))


def _paragraphs(novel: corpus.Novel) -> Iterator[str]:
    return (text for chapter in novel.chapters for scene in chapter.scenes for text in scene)
