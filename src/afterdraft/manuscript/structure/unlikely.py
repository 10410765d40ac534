"""What makes a division unlikely as a whole: doubts to which no line by itself gives rise.

A long book with hardly a chapter, one chapter that holds most of it, sections as long as chapters, a number that is
missing where a page turns: each is asked about at the places that could put it right.
"""

import re
from bisect import bisect_right
from collections import Counter
from collections.abc import Iterator, Sequence
from itertools import accumulate, pairwise
from statistics import mean, median

from afterdraft.manuscript.division import Chapter, Division, Doubt, Scene
from afterdraft.manuscript.structure.build import Found
from afterdraft.manuscript.structure.lines import Line, quoted, speaks, title_case, uncapped
from afterdraft.manuscript.structure.rank import LONGEST_CHAPTER, PART_WORDS, heads
from afterdraft.manuscript.structure.titles import Titled
from afterdraft.manuscript.structure.wording import ALONE

EARLY = 3000  # words of front matter and story within which the story begins (common practice)
STARTS = 3  # pages that may be its first
SHARE = 0.4  # of the book's words in one chapter: the others can hardly be chapters
TINY = 0.1  # times the middle chapter: as short as a dedication or a notice
SEVERAL = 3  # chapters beside which one can be called short; lines alike that make a habit
OVER = 6  # words of a date or a name that stands over a passage
APART = 500  # words between two such lines, in the middle
MONTH = r"(january|february|march|april|may|june|july|august|september|october|november|december)"
DATE = re.compile(
    rf"(.*\b(mon|tues|wednes|thurs|fri|satur|sun)day\b.*|.*\b{MONTH}\b.*\d.*|.*\d.*\b{MONTH}\b.*)", re.IGNORECASE
)


def beginnings(found: Found, division: Division) -> Iterator[Doubt]:
    """No heading stands over the story: on which page it begins is a guess."""
    if not division.chapters or any(one.rank != "section" for one in found.headings):
        return
    first = division.chapters[0].at
    told = list(accumulate(line.words for line in found.lines[first : found.end]))
    early = found.lines[first + 1 : first + 1 + bisect_right(told, EARLY)]
    later = [line for line in early if (line.turn or line.wide > 1) and not line.file]
    if later or any(not piece.headed and piece.kind not in ("title page", "contents") for piece in found.front):
        what = "No heading shows where the story begins; it was taken to begin here."
        yield Doubt(what, first, "chapter", "text")
    scenes = {scene.at for scene in division.scenes}
    for line in later[:STARTS]:
        what = f"No heading shows where the story begins; it may begin only at {quoted(line)}."
        yield Doubt(what, line.index, "scene" if line.index in scenes else "text", "chapter")


def spaced_names(found: Found) -> Iterator[Doubt]:
    """Names that nothing but the space above them tells from text."""
    for heading in _names(found):
        line = found.lines[heading.at]
        if line.weight < 1 and not line.turn:
            what = "Taken for a chapter's heading because of the space above it."
            yield Doubt(what, heading.at, "chapter", "scene")


def uneven(found: Found, division: Division) -> Iterator[Doubt]:
    """Chapters known by their look alone that divide a book very unequally."""
    words = _chapter_words(found, division)
    long = sum(words) > LONGEST_CHAPTER
    if long and (max(words) > SHARE * sum(words) or sum(words) > LONGEST_CHAPTER * len(words)):
        for heading in _names(found):
            what = "Taken for a chapter's heading by its look; the chapters are of very unequal length."
            yield Doubt(what, heading.at, "chapter", "text")


def short_ends(found: Found, division: Division) -> Iterator[Doubt]:
    """A name before or after the chapters with hardly a page under it: front or back matter."""
    words, names = _chapter_words(found, division), {heading.at for heading in _named(found)}
    if len(words) <= SEVERAL:
        return
    few = TINY * median(words)
    for chapter, count, where in ((0, words[0], "front matter"), (-1, words[-1], "back matter")):
        at = division.chapters[chapter].at
        if at in names and count < few:
            what = f"{quoted(found.lines[at])} has little text under it; it may be {where}."
            yield Doubt(what, at, "chapter", "front matter" if where == "front matter" else "back matter")


def nameless_parts(found: Found, division: Division) -> Iterator[Doubt]:
    """Parts that do not say so: what stands under them for chapters may be sections."""
    last = division.chapters[-1].at if division.chapters else 0
    for part in found.headings:
        if part.rank == "part" and part.sure < 1 and part.at < last:
            what = "Taken for a part that holds chapters; it may be a chapter, and these its sections."
            yield Doubt(what, part.at, "part", "chapter")


def long_sections(found: Found, division: Division) -> Iterator[Doubt]:
    """Sections as long as chapters; without a number and in a chapter's look, half as long is enough."""
    chapters = {chapter.at for chapter in division.chapters}
    scenes = {scene.at for scene in division.scenes} - chapters
    sections = [one.at for one in found.headings if one.rank == "section" and one.at in scenes]
    looks = {uncapped(found.lines[one.at]) for one in found.headings if one.rank == "chapter"}
    ends = sorted((*sections, *chapters, found.end))
    words = {at: _words(found, at, ends[bisect_right(ends, at)]) for at in sections}
    named = [at for at in sections if _is_name(found.lines[at]) and uncapped(found.lines[at]) in looks]
    for group, least in ((named, PART_WORDS), (sections, 2 * PART_WORDS)):
        if group and mean(words[at] for at in group) >= least:
            for at in group:
                what = "Taken for the heading of a section; it may be a chapter's."
                yield Doubt(what, at, "scene", "chapter")
            return


def missing_numbers(division: Division) -> Iterator[Doubt]:
    """A number is left out, and a page or a gap begins a scene in between."""
    numbered = [chapter for chapter in division.chapters if chapter.number is not None]
    for before, after in pairwise(numbered):
        for scene in between(division.scenes, before, after):
            what = f"Chapter {(before.number or 0) + 1} is missing; it may begin here, where its heading was left out."
            yield Doubt(what, scene.at, "scene", "chapter")


def between(scenes: Sequence[Scene], before: Chapter, after: Chapter) -> list[Scene]:
    """Scenes that a page or a gap begins, between two chapters whose numbers leave others out."""
    if before.kind != after.kind or (after.number or 0) <= (before.number or 0) + 1:
        return []
    return [one for one in scenes if before.at < one.at < after.at and one.began in ("page", "space")]


def lines_over_passages(found: Found, division: Division) -> Iterator[Doubt]:
    """Dates, or lines that come again and again, left in the text of a book with few chapters for its length."""
    words = _chapter_words(found, division)
    if sum(words) <= LONGEST_CHAPTER * len(words):
        return
    story = [line for line in found.lines if division.roles[line.index] == "story" and _stands_over(line)]
    times = Counter(line.text for line in story)
    over = [line for line in story if DATE.fullmatch(line.text) or times[line.text] >= SEVERAL]
    starts = {scene.at for scene in division.scenes}
    chapters = {chapter.at for chapter in division.chapters}
    apart = [_words(found, first.index, second.index) for first, second in pairwise(over)]
    if len(over) >= SEVERAL and median(apart) >= APART:
        for line in (line for line in over if line.index not in chapters):
            what = "Perhaps the heading of a chapter, as others like it; it was left in the text."
            yield Doubt(what, line.index, "scene" if line.index in starts else "text", "chapter")


def _stands_over(line: Line) -> bool:
    """A short line with a title's capitals or a date; "Nobody spoke." and "Oh!" come again and again as well."""
    if not line.short or line.mark or line.words > OVER or speaks(line.text):
        return False
    return bool(DATE.fullmatch(line.text)) or (title_case(line.text) and heads(line) and line.text[-1] not in "!?…")


def _names(found: Found) -> list[Titled]:
    """Chapters' headings known by their look, without a number or such a word as "Prologue"."""
    return [one for one in _named(found) if one.sure < 1]


def _named(found: Found) -> list[Titled]:
    """The same, also those that a style says to be headings."""
    return [one for one in found.headings if one.rank == "chapter" and _is_name(found.lines[one.at])]


def _is_name(line: Line) -> bool:
    return line.name.number is None and line.name.kind not in ALONE


def _chapter_words(found: Found, division: Division) -> list[int]:
    starts = [chapter.at for chapter in division.chapters]
    return [_words(found, start, end) for start, end in pairwise((*starts, found.end))]


def _words(found: Found, start: int, end: int) -> int:
    return sum(line.words for line in found.lines[start:end])
