"""Which lines are headings, and of what rank: the one decision taken over the whole file.

Where the author used heading styles, their levels are the ranks (`styled`). Otherwise the families of
numbered lines compete (`patterned`): the best sequence is the chapters, what numbers parts lies above it,
what restarts within it are sections; lines that look just like its members are headings without a
number. Where nothing is numbered, the best group of short lines in one look heads the chapters (`named`).
"""

from collections.abc import Iterator, Sequence, Set
from dataclasses import replace
from itertools import zip_longest

from afterdraft.manuscript.structure.lines import Line
from afterdraft.manuscript.structure.named import named
from afterdraft.manuscript.structure.patterned import patterned
from afterdraft.manuscript.structure.rank import Book, Heading, book_of, heads
from afterdraft.manuscript.structure.styled import styled
from afterdraft.manuscript.structure.sureness import FILED
from afterdraft.manuscript.structure.vocabulary import back_kind, ends_book, front_kind
from afterdraft.manuscript.structure.wording import ALONE

GAP = 2  # blanks above a name that nothing else sets apart
SEVERAL = 3  # chapters beside which one can be told to be none
TOLD_WORDS = 100  # more than lines under a part's heading hold: an epigraph, an argument


def rank_headings(lines: Sequence[Line], skip: Set[int]) -> tuple[Heading, ...]:
    """First lines of headings in order; `skip` are lines of contents pages."""
    book = book_of(lines, skip)
    headings = styled(book) or patterned(book) or named(book)
    files = _of_files(book, headings)
    places = {heading.at for heading in files}
    headings = [*files, *(heading for heading in headings if heading.at not in places)]
    headings.sort(key=lambda heading: heading.at)
    headings = _without_verse(book, headings)
    headings += _firsts_below(book, headings)
    headings.sort(key=lambda heading: heading.at)
    return tuple(_childless_told(book, _parents_raised(book, headings)))


def _of_files(book: Book, headings: Sequence[Heading]) -> list[Heading]:
    """Where chapters begin at the beginnings of files and nowhere else, so do those whose heading has another look, and
    seemed to be a section's."""
    starts = {line.index for line in book.lines if line.file} - book.skip
    chapters = {heading.at for heading in headings if heading.rank == "chapter"}
    known = {heading.at for heading in headings if heading.rank != "section"}
    if len(chapters) < 2 or not chapters <= starts | {0}:
        return []
    unknown = (book.lines[at] for at in starts - known)
    return [Heading(line.index, "chapter", sure=FILED) for line in unknown if heads(line) and not _is_matter(line)]


def _without_verse(book: Book, headings: list[Heading]) -> list[Heading]:
    """Without a name at the head of several chapters under which nothing stands but verse, or lines set as such."""
    upper = [heading for heading in headings if heading.rank != "section"]
    if len(upper) <= SEVERAL or upper[0].rank != "chapter":
        return headings
    line, under = book.lines[upper[0].at], book.lines[upper[0].at + 1 : upper[1].at]
    named = line.name.kind == "none" and line.name.number is None
    if named and under and all("\n" in one.text for one in under):
        return [heading for heading in headings if heading.at >= upper[1].at]
    return headings


def _firsts_below(book: Book, headings: Sequence[Heading]) -> list[Heading]:
    """The first of several chapters that an epilogue holds: right under "Epilogue: The Lamp", which has its title, and
    in the look of the chapter after it; that is another look, or those chapters are named where others are numbered."""
    found = []
    numbered = any(book.lines[one.at].name.number is not None for one in headings if one.rank == "chapter")
    for heading, after in _with_next([one for one in headings if one.rank != "section"]):
        if after is None or not heading.rank == after.rank == "chapter" or after.at == heading.at + 1:
            continue
        line, under, next_one = (book.lines[at] for at in (heading.at, heading.at + 1, after.at))
        if line.name.kind not in ALONE or not line.name.title or under.shape != next_one.shape:
            continue
        named = numbered and line.name.kind == "epilogue" and next_one.name.kind == "none"
        apart = under.weight > 0 or (named and under.wide >= max(GAP, next_one.wide))
        if (line.shape != under.shape or named) and heads(under) and apart:
            found.append(Heading(under.index, "chapter", sure=after.sure))
    return found


def _is_matter(line: Line) -> bool:
    return bool(front_kind(line.text) or back_kind(line.text) or ends_book(line.text))


def _parents_raised(book: Book, headings: Sequence[Heading]) -> list[Heading]:
    """A prologue or epilogue that chapters stand in, and no text of its own, is a part."""
    return [
        replace(heading, rank="part") if after and _holds_chapters(book, heading, after) else heading
        for heading, after in _with_next(headings)
    ]


def _holds_chapters(book: Book, heading: Heading, after: Heading) -> bool:
    """A chapter numbered 1 follows with no text between, or one by name that is no title to go with the heading."""
    first, second = book.lines[heading.at], book.lines[after.at]
    if not heading.rank == after.rank == "chapter" or first.name.kind not in ALONE:
        return False
    if second.name.number == 1:
        return book.words(heading.at + 1, after.at) < TOLD_WORDS
    own = bool(first.name.title) or second.turn
    return own and after.at == heading.at + 1 and second.name.kind == "none"


def _childless_told(book: Book, headings: Sequence[Heading]) -> Iterator[Heading]:
    """A part's heading that text follows, and no chapter, heads a chapter itself."""
    upper = [heading for heading in headings if heading.rank != "section"]
    after = dict(_with_next(upper))
    for heading in headings:
        following = after.get(heading)
        end = following.at if following else len(book.lines)
        childless = heading.rank == "part" and (following is None or following.rank == "part")
        if childless and book.words(heading.at + 1, end) >= TOLD_WORDS:
            yield replace(heading, rank="chapter")
        else:
            yield heading


def _with_next(headings: Sequence[Heading]) -> Iterator[tuple[Heading, Heading | None]]:
    yield from zip_longest(headings, headings[1:])
