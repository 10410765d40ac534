"""Kinds of book that the tune half does not hold, made of its novels. Imports nothing of the program."""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import replace
from itertools import cycle

from bench.corpus import Break, Chapter, Novel, Part

TELLERS = ("Hester Orme", "Mr. Josias Pell", "Anne", "Dr. Quill", "Captain Ferris", "Miss Dray", "Tobias Lund")
MONTHS = ("January", "March", "April", "June", "September", "November")
NOUNS = ("Weir", "Lamp", "Orchard", "Ferry", "Letter", "Quarry", "Bell", "Attic", "Causeway", "Ledger", "Rope", "Mill")
FORMS = ("The {}", "Incident of the {}", "{} Is Found", "Of Mr. {} and the Door", "Remarkable {}")
DOCUMENTS = (
    "Prologue: The Lamp (1799)",
    "The Story",
    "The Narrative of Anne",
    "Dr. Quill’s Journal",
    "Told by the Mate",
)
SIZES = (3, 4, 2, 6, 3)  # chapters of a document, by turns
MIXED = (4, 1, 3, 1, 1)  # the same, some of one chapter
LOST = 5  # every fifth chapter has lost its heading
FEWEST = 12  # chapters from which a novel is parted into documents


def whole(novel: Novel) -> Novel:
    """One long story without chapters; the breaks are those that a habit adds."""
    text = tuple(text for chapter in novel.chapters for scene in chapter.scenes for text in scene)
    return _of(novel, [_plain(novel.chapters[0], "", scenes=(text,), breaks=(Break("start", ""),))])


def diary(novel: Novel) -> Novel:
    """A date over each chapter."""
    dated = (f"{1 + n * 11 % 28} {MONTHS[n // 3 % len(MONTHS)]}" for n in range(len(novel.chapters)))
    return _of(novel, [_plain(chapter, date) for chapter, date in zip(novel.chapters, dated, strict=True)])


def tellers(novel: Novel) -> Novel:
    """The name of who tells it over each chapter, three by turns."""
    return _of(novel, [_plain(chapter, TELLERS[n % 3]) for n, chapter in enumerate(novel.chapters)])


def titled(novel: Novel) -> Novel:
    """Titles without numbers, of as many chapters as there are nouns."""
    names = [FORMS[n % len(FORMS)].format(noun) for n, noun in enumerate(NOUNS)]
    return _of(novel, [_plain(chapter, name) for chapter, name in zip(novel.chapters, names, strict=False)])


def lost(novel: Novel) -> Novel:
    """Some chapters have lost their headings."""
    chapters = (_plain(c, "", part=c.part) if n % LOST == LOST - 2 else c for n, c in enumerate(novel.chapters))
    return replace(novel, chapters=tuple(chapters))


def documents(novel: Novel) -> Novel:
    """Documents with chapters numbered anew in each; the last holds statements with names of their own."""
    if len(novel.chapters) < FEWEST:
        return novel
    groups = list(_groups(novel.chapters))
    names = [*DOCUMENTS, *(f"The Narrative of {name}" for name in TELLERS)]
    parts = [Part(name, "", (), None) for name in [*names[: len(groups) - 1], "Epilogue: The Lamp Again"]]
    chapters = [
        _plain(chapter, f"The Statement of {TELLERS[n % len(TELLERS)]}", part=place)
        if place == len(groups) - 1
        else _plain(chapter, "", number=n + 1, part=place)
        for place, group in enumerate(groups)
        for n, chapter in enumerate(group)
    ]
    return replace(novel, parts=tuple(parts), chapters=tuple(chapters))


def collected(novel: Novel) -> Novel:
    """Two parts, with documents in each; those of one chapter are chapters by name."""
    if len(novel.chapters) < FEWEST:
        return novel
    names = (f"The Narrative of {TELLERS[n % len(TELLERS)]}" for n in range(len(novel.chapters)))
    parts = [Part("First Part", "", (), None), Part("Second Part", "", (), None)]
    chapters: list[Chapter] = []
    for group in _in_turns(novel.chapters, MIXED):
        above = int(len(chapters) * 2 >= len(novel.chapters))
        if len(group) == 1:
            chapters.append(_plain(group[0], next(names), part=above))
            continue
        parts.append(Part(next(names), "", (), above))
        inside = len(parts) - 1
        chapters += [_plain(chapter, "", number=n, part=inside) for n, chapter in enumerate(group, start=1)]
    return replace(novel, parts=tuple(parts), chapters=tuple(chapters))


KINDS: Mapping[str, Callable[[Novel], Novel]] = {
    one.__name__: one for one in (whole, diary, tellers, titled, lost, documents, collected)
}


def _groups(chapters: Sequence[Chapter]) -> Iterator[Sequence[Chapter]]:
    """In runs of `SIZES`; as many as there are names, and the rest in the last."""
    at = 0
    for turn in range(len(DOCUMENTS) + len(TELLERS)):
        size = SIZES[turn % len(SIZES)]
        if len(chapters) - at - size < 2:
            break
        yield chapters[at : at + size]
        at += size
    yield chapters[at:]


def _in_turns(chapters: Sequence[Chapter], sizes: Sequence[int]) -> Iterator[Sequence[Chapter]]:
    at = 0
    for size in cycle(sizes):
        if at >= len(chapters):
            return
        yield chapters[at : at + size]
        at += size


def _plain(
    chapter: Chapter,
    title: str,
    *,
    number: int | None = None,
    part: int | None = None,
    scenes: tuple[tuple[str, ...], ...] = (),
    breaks: tuple[Break, ...] = (),
) -> Chapter:
    """Without the novel's own heading and sections."""
    own = tuple(replace(b, kind="hr", heading="") if b.kind == "section" else b for b in chapter.breaks)
    return Chapter(number, title, "", "", "chapter", (), part, scenes or chapter.scenes, breaks or own)


def _of(novel: Novel, chapters: Sequence[Chapter]) -> Novel:
    return replace(novel, parts=(), chapters=tuple(chapters))
