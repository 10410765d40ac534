"""Ranks of headings from numbering alone, where the author used no heading styles."""

from bisect import bisect_right
from collections import defaultdict
from collections.abc import Iterator, Sequence
from itertools import pairwise
from math import sqrt

from afterdraft.manuscript.structure.alike import alike
from afterdraft.manuscript.structure.families import Families
from afterdraft.manuscript.structure.lines import Line, uncapped
from afterdraft.manuscript.structure.named import groups
from afterdraft.manuscript.structure.rank import (
    GOOD,
    LONGEST_CHAPTER,
    MOST,
    NAME_LINES,
    NUMBERS,
    PART_WORDS,
    Book,
    Heading,
    believed,
    heads,
    parts,
)
from afterdraft.manuscript.structure.sections import nested, sections
from afterdraft.manuscript.structure.sequence import Candidate, Chain, best_chain
from afterdraft.manuscript.structure.sureness import NAMED, PART

LABELS = ("chapter", "letter")
WHOLE = 0.6  # share of the words over which headings reach that divide the whole book (common practice)
# Numbers within less than that, or that leave out more than that, are sections of a few chapters beside such names.
HALF = 0.5
TITLE_LINES = 2  # title and author at the head of a file
LONG_CHAPTER = 8000  # words: chapters are mostly shorter, in the mean of a book (common practice)


def patterned(book: Book) -> list[Heading]:
    """Parts, chapters and sections by their numbers; empty where no numbers make a sequence."""
    headings = parts(book)
    upper, chapters = _chapters(book, [heading.at for heading in headings])
    if not chapters:
        return []
    headings += [Heading(place, "part", sure=PART) for place in upper]
    headings += [Heading(at, "chapter", 1.0 if book.lines[at].name.number is not None else NAMED) for at in chapters]
    headings += alike(book, headings)
    headings.sort(key=lambda heading: heading.at)
    return headings + sections(book, headings)


def _chapters(book: Book, above: Sequence[int]) -> tuple[Sequence[int], Sequence[int]]:
    """Places of upper headings without a label of their own, and of chapters; `above` are those of parts."""
    found = book.families(above)
    labelled = {kind: chain for kind in LABELS if believed(chain := best_chain(found.get(kind, ())))}
    places = sorted(place for chain in labelled.values() for place in chain.places)
    if "chapter" in labelled:
        return _names_over_ones(book, labelled["chapter"], above), places
    upper, numbered = _by_numbers(book, found, above)
    return upper, sorted({*places, *numbered})


def _names_over_ones(book: Book, chapters: Chain, known: Sequence[int]) -> Sequence[int]:
    """Names of parts that do not say so: right above most of the chapters 1, where the numbers begin anew."""
    ones = [one.line.index for one in chapters.found if one.number == 1]
    above = [book.lines[at - 1] for at in ones if at > TITLE_LINES or (known and 0 <= known[0] < at - 1)]
    names = [line.index for line in above if line.index not in {*book.skip, *known} and _names_part(line)]
    return names if len(ones) > 1 and len(names) >= MOST * len(ones) else ()


def _names_part(line: Line) -> bool:
    return heads(line) and line.name.number is None and (line.weight >= 1 or line.turn)


def _by_numbers(book: Book, found: Families, above: Sequence[int]) -> tuple[Sequence[int], Sequence[int]]:
    """The same where chapters have no label: the best run of numbers, or what stands over it."""
    runs = [chain for chain in _runs(found) if len(chain.found) > 1 and chain.score >= GOOD]
    if not runs:
        return (), ()
    best = _steadiest(runs, max(runs, key=lambda chain: chain.score))
    over = _over_numbers(book, runs, best, in_parts=bool(above)) or _over_names(book, best, above)
    return over or ((), best.places)


def _over_numbers(
    book: Book, runs: Sequence[Chain], best: Chain, *, in_parts: bool
) -> tuple[Sequence[int], Sequence[int]] | None:
    """Numbers above the best run's: chapters whose sections those are, or parts of those chapters."""
    over = [one for one in runs if _lies_over(one, best)]
    if not over:
        return None
    outer = max(over, key=lambda chain: chain.score)
    if not in_parts and _are_parts(book, outer, best):
        return outer.places, best.places
    return (), outer.places


def _over_names(book: Book, best: Chain, above: Sequence[int]) -> tuple[Sequence[int], Sequence[int]] | None:
    """Names above numbers that begin anew directly under them, or that divide the whole book where the numbers stand
    in small parts of it; none where the numbers run on by themselves."""
    ones = [one.line.index for one in best.found if one.number == 1]
    for group in groups(book, frozenset((*above, *best.places))):
        places = [line.index for line in group]
        over = [place for place in places if any(place < one <= place + NAME_LINES for one in ones)]
        if len(ones) > 1 and len(over) >= MOST * len(ones) and len(over) > 1:
            if _name_parts(book, over, places, best):
                return over, sorted({*best.places, *places} - set(over))
            return (), places
        if _span(book, places) >= WHOLE and (_span(book, best.places) < HALF or _gapped(book, best.places)):
            return (), places
    return None


def _name_parts(book: Book, over: Sequence[int], names: Sequence[int], best: Chain) -> bool:
    """The names `over` numbers are those of parts: what lies between the numbers is as long as chapters, and they hold
    more than one chapter would, or the numbers begin pages. What most other `names` head, if those are many, is then
    as long as a chapter too."""
    end = len(book.lines)
    inner = book.words(best.places[0], end) / len(best.places)
    outer = book.words(over[0], end) / len(over)
    if len(over) <= HALF * len(names):
        inner, outer, other = _lengths(book, over, names, best)
        if other > sqrt(inner * outer):
            return False
    if sum(book.lines[place].turn for place in best.places) >= MOST * len(best.places):
        return inner >= PART_WORDS
    return inner >= PART_WORDS and outer >= LONG_CHAPTER


def _lengths(book: Book, over: Sequence[int], names: Sequence[int], best: Chain) -> tuple[float, float, float]:
    """Words under one number, under one of the names `over` numbers, and under one of the other names, in the mean."""
    words = {place: book.words(place, stop) for place, stop in pairwise((*names, len(book.lines)))}
    total = sum(words[place] for place in over)
    numbers = [at for at in best.places if names[max(0, bisect_right(names, at) - 1)] in over]
    others = [count for place, count in words.items() if place not in over]
    return total / max(1, len(numbers)), total / len(over), sum(others) / len(others)


def _gapped(book: Book, places: Sequence[int]) -> bool:
    """Most of the book lies in stretches without such a line that are longer than any chapter."""
    stretches = (book.words(start, end) for start, end in pairwise((0, *places, len(book.lines))))
    return sum(words for words in stretches if words > LONGEST_CHAPTER) >= HALF * book.told[-1]


def _span(book: Book, places: Sequence[int]) -> float:
    """Share of the book's words between the first of the lines and the last."""
    return book.words(places[0], places[-1]) / max(1, book.told[-1])


def _steadiest(runs: Sequence[Chain], best: Chain) -> Chain:
    """Most of the best run, if those share a look or a page's turn and no number is missing: the rest are sections,
    but for numbers that all stand before them."""
    within = set(best.places)
    steady = [
        one
        for one in runs
        if MOST * len(best.found) <= len(one.found) < len(best.found)
        and within.issuperset(one.places)
        and _is_whole(one)
        and max(within.difference(one.places)) > one.places[0]
    ]
    return max(steady, key=lambda chain: chain.score, default=best)


def _is_whole(chain: Chain) -> bool:
    """Every number is one, or one more than the number before."""
    numbers = [0, *(one.number for one in chain.found)]
    return all(after in (1, before + 1) for before, after in pairwise(numbers))


def _runs(found: Families) -> Iterator[Chain]:
    """Each number family as a whole, and those of its members that share a look, a page's turn, or space."""
    for family in NUMBERS:
        members = found.get(family, ())
        yield best_chain(members)
        for some in _looks(members):
            if 1 < len(some) < len(members):
                yield best_chain(some)


def _looks(members: Sequence[Candidate]) -> Iterator[list[Candidate]]:
    looks: defaultdict[object, list[Candidate]] = defaultdict(list)
    for one in members:
        looks[uncapped(one.line)].append(one)
        if one.line.turn:
            looks["turn"].append(one)
        if one.line.wide:
            looks["wide"].append(one)
    yield from looks.values()


def _lies_over(outer: Chain, inner: Chain) -> bool:
    own = set(outer.places)
    rest = [one for one in inner.found if one.line.index not in own]
    if len(outer.found) >= len(rest) or not rest:
        return False
    covered = {bisect_right(outer.places, one.line.index) for one in rest} - {0}
    return len(covered) >= MOST * len(outer.found) and nested(outer.places, Chain(tuple(rest)))


def _are_parts(book: Book, outer: Chain, inner: Chain) -> bool:
    """The outer run has no text of its own, and what lies between the inner headings is as long as chapters."""
    places = set(outer.places)
    rest = {place for place in inner.places if place not in places}
    words = book.words(min(rest), len(book.lines)) / len(rest)
    direct = [place for place in outer.places if not {place + 1, place + 2}.isdisjoint(rest)]
    return words >= PART_WORDS and len(direct) >= MOST * len(outer.found)
