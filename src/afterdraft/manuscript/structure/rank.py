"""What the deciders of heading ranks share."""

import re
from collections.abc import Sequence, Set
from dataclasses import dataclass
from itertools import accumulate
from typing import Literal

from afterdraft.manuscript.structure.families import Families, families
from afterdraft.manuscript.structure.lines import SHORT_WORDS, Line, title_case
from afterdraft.manuscript.structure.sequence import Chain, best_chain

Rank = Literal["part", "chapter", "section"]
NUMBERS = ("figures", "roman", "words")
GOOD = 2.0  # score from which a chain is believed; two plain numbered lines reach 1
SURE_SINGLE = 3.5  # worth from which one labelled line is believed without a sequence
OPENING = 500  # words of front matter that may stand before the first heading of a part of a book
MOST = 0.7  # share of the members that show a habit, from which it is one
NAME_LINES = 3  # a name, a title, a line under it: so far above what it heads a name may stand
PART_WORDS = 1200  # words: sections within chapters are mostly shorter, chapters longer (common practice)
LONGEST_CHAPTER = 20_000  # words (common practice)
ABBREVIATED = re.compile(
    r"\b(Ltd|Co|Inc|Bros|Esq|Jr|Sr|M\.?D|Ph\.?D)\.$"
)  # a stop that ends no sentence (common practice)
TITLE_WORDS = 14  # longest line that is taken for a heading by its look alone


@dataclass(frozen=True, slots=True)
class Heading:
    at: int
    rank: Rank
    sure: float = 1.0


@dataclass(frozen=True, slots=True)
class Book:
    """The lines of a file with the words told before each; lines in `skip` are out of play."""

    lines: Sequence[Line]
    told: Sequence[int]
    skip: Set[int]

    def words(self, start: int, end: int) -> int:
        """Words of the lines `start` to `end`."""
        return self.told[end] - self.told[start]

    def families(self, above: Sequence[int] = (), *, without: Set[int] = frozenset()) -> Families:
        """Numbered lines by family; numbers may restart at `above`."""
        return families(self.lines, skip=self.skip | without, above=above)

    def chains(self, above: Sequence[int] = (), *, without: Set[int] = frozenset()) -> dict[str, Chain]:
        """The best run of each family."""
        return {family: best_chain(members) for family, members in self.families(above, without=without).items()}


def book_of(lines: Sequence[Line], skip: Set[int]) -> Book:
    return Book(lines, (0, *accumulate(line.words for line in lines)), skip)


def stops(places: Sequence[int], end: int) -> list[int]:
    """Where each stretch ends that begins at one of `places`: at the next one, the last at `end`."""
    return [*places[1:], end] if places else []


def runs_on(lines: Sequence[Line], line: Line) -> bool:
    """The next line goes on in lower case: this one is an inscription within a sentence."""
    return line.index + 1 < len(lines) and lines[line.index + 1].text[:1].islower()


def titular(line: Line) -> bool:
    """The line could be a title: short, no ornament, not a told sentence."""
    if not _title_length(line) or line.mark:
        return False
    return not line.text.endswith((".", ",", ";", ":", "-", "–", "—")) or bool(ABBREVIATED.search(line.text))


def heads(line: Line) -> bool:
    """A line that is set apart could be a heading: also one that ends in a full stop, if it has a title's capitals."""
    return titular(line) or (
        _title_length(line) and line.words > 1 and line.text.endswith(".") and title_case(line.text)
    )


def _title_length(line: Line) -> bool:
    """A line of more than `SHORT_WORDS` is short only by its style, its label or its capitals."""
    return line.short and line.words > 0 and not TITLE_WORDS < line.words <= SHORT_WORDS


def parts(book: Book) -> list[Heading]:
    """Headings with the word for a part and a number, where they make a sequence."""
    chain = book.chains().get("part", Chain())
    good = believed(chain) or _stands_over_first(book, chain)
    return [Heading(place, "part") for place in chain.places] if good else []


def _stands_over_first(book: Book, chain: Chain) -> bool:
    """One heading "Part I" right above "Chapter 1": the other parts lie in further files, or are not written yet."""
    if len(chain.found) != 1 or chain.score < GOOD or chain.found[0].number != 1:
        return False
    after = book.lines[chain.places[0] + 1 :][:1]
    return bool(after) and after[0].name.kind == "chapter" and after[0].name.number == 1


def believed(chain: Chain) -> bool:
    """A labelled run is good enough; a single line needs a look of its own, and to be a first."""
    if len(chain.found) > 1:
        return chain.score >= GOOD
    return chain.score >= SURE_SINGLE and (chain.found[0].number == 1 or chain.found[0].told < OPENING)
