"""Ranks of headings from heading styles and outline levels, where the author used them."""

from collections.abc import Iterator, Sequence, Set
from itertools import pairwise

from afterdraft.manuscript.structure.lines import Line
from afterdraft.manuscript.structure.rank import LONGEST_CHAPTER, MOST, PART_WORDS, Book, Heading, parts, stops
from afterdraft.manuscript.structure.sections import sections
from afterdraft.manuscript.structure.sequence import Chain
from afterdraft.manuscript.structure.sureness import UNSTYLED
from afterdraft.manuscript.structure.vocabulary import back_kind, front_kind
from afterdraft.manuscript.structure.wording import ALONE

OWN_WORDS = 50  # words of its own from which a heading is taken to head text, not further headings
NUMBERED_KINDS = ("chapter", "letter")


def styled(book: Book) -> list[Heading]:
    """Ranks by level; empty where styles are missing, or most chapters were typed without them."""
    marked = [line for line in book.lines if line.shape.level and line.short and line.index not in book.skip]
    chain = book.chains().get("chapter", Chain())
    unmarked = [place for place in chain.places if not book.lines[place].shape.level]
    if not marked or (len(chain.found) > 2 and len(unmarked) > len(chain.found) / 2):
        return []
    marked = list(_without_continuations(_without_book_title(book, marked)))
    if not marked:
        return []
    level = _chapter_level(book, marked)
    headings = list(_ranked(book, _without_matter(marked, level), level))
    if not any(heading.rank == "chapter" for heading in headings):
        return []
    headings += [Heading(place, "chapter", sure=UNSTYLED) for place in unmarked]
    headings += [part for part in parts(book) if not book.lines[part.at].shape.level]
    headings.sort(key=lambda heading: heading.at)
    if any(heading.rank == "section" for heading in headings):
        return headings
    return headings + sections(book, headings)


def _without_book_title(book: Book, marked: Sequence[Line]) -> Sequence[Line]:
    """Without the file's first line, where it alone has the highest level, and no number: it names the book.

    So does the only heading of a file that is longer than chapters are.
    """
    first, *rest = marked
    if first.index or first.name.kind != "none" or first.name.number is not None:
        return marked
    above = len(rest) > 1 and all(line.shape.level > first.shape.level for line in rest)
    only = not rest and book.words(0, len(book.lines)) > LONGEST_CHAPTER
    return rest if above or only else marked


def _without_continuations(marked: Sequence[Line]) -> Iterator[Line]:
    """Headings of several styled lines, each once: the line with the number, not the title under it."""
    titles = _title_levels(marked)
    before: Line | None = None
    for line in marked:
        under = before is not None and before.index == line.index - 1 and _wants_title(before)
        same = before is not None and before.shape.level == line.shape.level
        if not (under and not line.turn and line.name.number is None and (same or line.shape.level in titles)):
            yield line
        before = line


def _wants_title(line: Line) -> bool:
    return not line.name.title and (line.name.number is not None or line.name.kind in ALONE)


def _title_levels(marked: Sequence[Line]) -> Set[int]:
    """Levels that are only used for the title under a numbered line."""
    under = {
        second.index
        for first, second in pairwise(marked)
        if first.index == second.index - 1 and _wants_title(first) and first.shape.level < second.shape.level
    }
    levels = {line.shape.level for line in marked}
    return {
        level
        for level in levels
        if all(line.index in under and line.name.number is None for line in marked if line.shape.level == level)
    }


def _chapter_level(book: Book, marked: Sequence[Line]) -> int:
    """The level whose headings are chapters: by their wording, or else by what stands under them."""
    levels = sorted({line.shape.level for line in marked})
    by_word = {level: _count(marked, level, NUMBERED_KINDS) for level in levels}
    best = max(levels, key=lambda level: by_word[level])
    if by_word[best]:
        return best
    for level, deeper in pairwise(levels):
        if _count(marked, level, ("part",)):
            return deeper
    return _by_text(book, marked, levels)


def _count(marked: Sequence[Line], level: int, kinds: Sequence[str]) -> int:
    return sum(line.shape.level == level and line.name.kind in kinds for line in marked)


def _by_text(book: Book, marked: Sequence[Line], levels: Sequence[int]) -> int:
    """Without a telling word: the first level with text of its own, or whose members are as long as chapters."""
    own = _own_words(book, marked)
    for level, deeper in pairwise(levels):
        heads = [line for line in marked if line.shape.level == level]
        below = [line for line in marked if line.shape.level == deeper]
        bare = [line for line in heads if own[line.index] < OWN_WORDS]
        long = book.words(below[0].index, len(book.lines)) / len(below) >= PART_WORDS
        if len(bare) < MOST * len(heads) or not long or len(below) <= len(heads):
            return level
    return levels[-1]


def _own_words(book: Book, marked: Sequence[Line]) -> dict[int, int]:
    """Words between each heading and the next of any level."""
    ends = stops([line.index for line in marked], len(book.lines))
    return {line.index: book.words(line.index + 1, end) for line, end in zip(marked, ends, strict=True)}


def _without_matter(marked: Sequence[Line], level: int) -> list[Line]:
    """Without the headings of front and back matter."""
    upper = [line for line in marked if line.shape.level <= level]
    counted = [line.index for line in upper if line.name.number is not None or line.name.kind in ALONE]
    numbered = len(counted) * 2 >= len(upper)
    first = _with_part(marked, counted[0], level) if numbered and counted else -1
    last = counted[-1] if counted else -1
    return [
        line
        for line in marked
        if line.index >= first
        and (line.name.number is not None or not (front_kind(line.text) and line.index <= _first(upper)))
        and not (line.index > last and back_kind(line.text))
    ]


def _with_part(marked: Sequence[Line], first: int, level: int) -> int:
    """The first numbered heading, or the heading above it that has the level of later parts, with no text between."""
    mine = next(line.shape.level for line in marked if line.index == first)
    later = {line.shape.level for line in marked if line.index > first and line.shape.level < min(mine, level + 1)}
    above = [line for line in marked if line.index == first - 1 and line.shape.level in later]
    return first - 1 if above and not front_kind(above[0].text) else first


def _first(upper: Sequence[Line]) -> int:
    """The first heading that is not one of front matter."""
    return next((line.index for line in upper if not front_kind(line.text)), upper[-1].index)


def _ranked(book: Book, marked: Sequence[Line], level: int) -> Iterator[Heading]:
    own = _own_words(book, marked)
    for place, line in enumerate(marked):
        if line.shape.level > level:
            yield Heading(line.index, "section")
        elif line.name.kind == "part" or (line.shape.level < level and _heads_chapters(marked, place, level, own)):
            yield Heading(line.index, "part")
        else:
            yield Heading(line.index, "chapter")


def _heads_chapters(marked: Sequence[Line], place: int, level: int, own: dict[int, int]) -> bool:
    """A heading above the chapters' level heads a part, unless it has text and no chapter of its own."""
    line = marked[place]
    if line.name.kind in (*ALONE, *NUMBERED_KINDS):
        return False
    following = marked[place + 1] if place + 1 < len(marked) else None
    has_chapters = following is not None and following.shape.level > line.shape.level
    return has_chapters or own[line.index] < OWN_WORDS
