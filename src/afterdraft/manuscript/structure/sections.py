"""Headed sections within chapters: numbers that begin anew in each chapter, and titles in a look of their own."""

import re
from bisect import bisect_right
from collections import defaultdict
from collections.abc import Iterator, Sequence, Set

from afterdraft.manuscript.structure.lines import Line, ends_sentence, is_speech, title_case, uncapped
from afterdraft.manuscript.structure.rank import GOOD, MOST, NUMBERS, Book, Heading, stops, titular
from afterdraft.manuscript.structure.sequence import Chain
from afterdraft.manuscript.structure.sureness import LONE_TITLE, NUMBERED, TITLED

SEVERAL = 3  # titles without any look that make a habit
SLUG = re.compile(r"\d|(mon|tues|wednes|thurs|fri|satur|sun)day|, |\b(morning|noon|evening|night)\b", re.IGNORECASE)
APART = 120  # words: sections are at least so long, in the median


def sections(book: Book, headings: Sequence[Heading]) -> list[Heading]:
    """First lines of sections below the parts and chapters `headings`, which are in order."""
    numbered = _numbered(book, headings)
    return numbered + _titled(book, [*headings, *numbered])


def nested(outer: Sequence[int], inner: Chain) -> bool:
    """The numbers of `inner` begin anew with one after each of the places `outer` that they follow."""
    firsts: dict[int, int] = {}
    for one in inner.found:
        firsts.setdefault(bisect_right(outer, one.line.index), one.number)
    inside = [number for after, number in firsts.items() if after]
    return len(inside) >= 1 and sum(number == 1 for number in inside) >= MOST * len(inside)


def _numbered(book: Book, headings: Sequence[Heading]) -> list[Heading]:
    above = [heading.at for heading in headings]
    found: list[Heading] = []
    for family, chain in book.chains(above, without=frozenset(above)).items():
        if family in NUMBERS and chain.score >= GOOD and len(chain.found) > 1 and nested(above, chain):
            places = [*chain.places, *_between(book, above, family, chain)]
            found.extend(Heading(place, "section", sure=NUMBERED) for place in places)
    return found


def _between(book: Book, above: Sequence[int], family: str, chain: Chain) -> Iterator[int]:
    """Numbers that the run leaves out because they stand close to the one before, if they look like the others."""
    looks = {uncapped(one.line) for one in chain.found}
    known = set(chain.places)
    before = (-1, 0)  # chapter, number
    for one in book.families(above, without=frozenset(above)).get(family, ()):
        here = (bisect_right(above, one.line.index), one.number)
        follows = here == (before[0], before[1] + 1) or here == (here[0], 1)
        if one.line.index in known or (follows and uncapped(one.line) in looks and one.worth > 0):
            before = here
            if one.line.index not in known:
                yield one.line.index


def _titled(book: Book, headings: Sequence[Heading]) -> list[Heading]:
    groups: defaultdict[object, list[Line]] = defaultdict(list)
    for line in _titles(book, {heading.at for heading in headings}):
        groups[line.shape._replace(caps=False)].append(line)
    return [
        Heading(line.index, "section", sure=TITLED if len(group) >= SEVERAL else LONE_TITLE)
        for group in groups.values()
        if _sound(book, group)
        for line in group
    ]


def _titles(book: Book, known: Set[int]) -> Iterator[Line]:
    """Lines set apart, that stand alone between paragraphs and read like titles."""
    first = min(known, default=0)
    for line in book.lines[first + 1 : -1]:
        if line.index in known or line.index in book.skip or not titular(line) or not _apart(line):
            continue
        before, after = book.lines[line.index - 1], book.lines[line.index + 1]
        if before.index in known or after.index in known or line.shape.right or is_speech(line.text):
            continue
        told = ends_sentence(before.text) or not before.plain or before.text.endswith((";", ":", "—"))
        if (
            told
            and _is_title(line.text)
            and "\n" not in after.text
            and not after.wide > line.wide
            and (line.weight < 1 or after.shape != line.shape)
        ):
            yield line


def _is_title(text: str) -> bool:
    """With a title's capitals, and no small word at the end: "From Gray, that" leads on to a quotation."""
    return title_case(text) and not text.split()[-1].islower()


def _apart(line: Line) -> bool:
    """By space above, by weight, capitals or the middle, or as a place or date in italics. Size alone strays: a line
    was pasted in from elsewhere."""
    if line.wide or line.turn:
        return True
    loud = line.weight >= 1 and (line.shape.bold or line.shape.caps or line.shape.centred)
    return loud or (line.shape.italic and line.weight > 0 and bool(SLUG.search(line.text)))


def _sound(book: Book, group: Sequence[Line]) -> bool:
    """A look of its own; or, for lines that look like any other, several of them well apart."""
    if group[0].weight >= 1 and all(line.wide or line.turn for line in group):
        return True
    ends = stops([line.index for line in group], len(book.lines))
    words = sorted(book.words(line.index, end) for line, end in zip(group, ends, strict=True))
    return len(group) >= SEVERAL and words[len(words) // 2] >= APART
