"""One thing that is counted or measured in two ways."""

import re
from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import combinations

from afterdraft.questions.amounts import Amount, amounts
from afterdraft.questions.beside import OWNER, RARE, Beside
from afterdraft.questions.check import Check
from afterdraft.questions.numbers_written import is_exact, is_near_double, rounds, significant
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.tallies import Tally, tallies
from afterdraft.reading.lexicon import words_of

NEAR = 1.25  # how much more one figure may be than the other; chosen by hand, as all here
AS_NEAR = 1.5  # likewise of counts, which are smaller
COUNTED = 3  # things from which they are counted
MEASURED, LARGE = 100, 1000  # from the one a number is a figure, which somebody took down, if it is exact; to the other
THREE = 3  # digits before its noughts from which a figure stands out by itself
FEW = 20  # times a noun stands in the book up to which 'the four' are all there are
COMMON = 60  # times a noun stands in the book from which it is of too many things
_YEARS = range(1500, 2100)  # in words without a unit, a year
_OF_ANYTHING = words_of("mile league kilometre kilometer man woman people person thing word")  # ways: from where one is
_MONEY = words_of("pound dollar euro franc crown shilling")
_LENGTHS = words_of("yard foot metre meter mile inch fathom kilometre kilometer")
_UNITS = _MONEY | _LENGTHS | words_of("acre ton tonne gallon litre")
AGAIN = 0.01  # how far apart two measurings of one length may be
_PEOPLE = words_of("man woman people person child boy girl")  # of whom there are others everywhere
_BROUGHT_IN = frozenset({"there", "had"})
_MORE = (
    r"\b(?:more|another|new|extra|sold|sell|bought|buy|lost|lose|killed|stolen?|broken?|added|burn(?:ed|t)|removed|built"
    r"|missing)\s(?:\w+\s){0,2}"
)
_GONE = r"\s(?:\w+\s){0,2}(?:sold|lost|killed|died|dead|stolen|broken|burn(?:ed|t)|removed|missing|added|joined)\b"


@dataclass(frozen=True, slots=True)
class _Said:
    amount: Amount
    span: Span


def find(seen: Seen) -> Iterator[Finding]:
    said = [
        _Said(one, seen.span(number, place, one.start, one.end))
        for number, scene in enumerate(seen.texts)
        for place, text in enumerate(scene)
        for one in amounts(text)
    ]
    yield from _of_nouns(seen, said)
    yield from _without_unit(seen, said)
    yield from _votes(seen)


def _of_nouns(seen: Seen, said: Sequence[_Said]) -> Iterator[Finding]:
    """Of each noun the first two that are of one thing."""
    beside, by_noun = Beside(seen), defaultdict(list)
    for one in said:
        by_noun[one.amount.noun].append(one)
    for noun, some in by_noun.items():
        values = {one.amount.value for one in some}
        pairs = (it for it in _apart(some) if noun and _may_be_one(values, *it))
        pair = next((it for it in pairs if _is_told_figure(beside, *it) or _is_count(seen, beside, *it)), None)
        if pair:
            yield _differ(seen, noun, *pair)


def _apart(said: Sequence[_Said]) -> Iterator[tuple[_Said, _Said]]:
    """Pairs of what is surely said in two scenes, and not the same: within one they reckon, count up and bargain."""
    for one, other in combinations([one for one in said if one.amount.sure], 2):
        if one.span.scene != other.span.scene and one.amount.value != other.amount.value:
            yield one, other


def _values(one: _Said, other: _Said) -> tuple[int, int]:
    return min(one.amount.value, other.amount.value), max(one.amount.value, other.amount.value)


def _may_be_one(values: set[int], one: _Said, other: _Said) -> bool:
    """Whether neither is what people say for the other, and no third number of these things is as near; but for those
    that nobody confuses, as a digit only is another."""
    low, high = _values(one, other)
    if rounds(low, high) or rounds(high, low):
        return False
    if _stands_out(low, high):
        return True
    near = NEAR if _is_figure(one, other) else AS_NEAR
    others = (it for it in values - {low, high} if low / near <= it <= high * near)
    return high <= near * low and all(rounds(low, it) or rounds(high, it) for it in others)


def _is_figure(one: _Said, other: _Said) -> bool:
    low, high = _values(one, other)
    return low >= MEASURED and is_exact(low, high)


def _is_told_figure(beside: Beside, one: _Said, other: _Said) -> bool:
    """A figure; of money only where it is plainly of one thing, and no length measured again."""
    if not _is_figure(one, other):
        return False
    low, high = _values(one, other)
    if one.amount.noun in _LENGTHS and high - low <= AGAIN * high:
        return False
    if one.amount.noun not in _MONEY or _stands_out(low, high):
        return True
    return beside.share_owner(one.span, other.span, one.amount.noun) or beside.share(
        one.span, other.span, one.amount.noun
    )


def _stands_out(low: int, high: int) -> bool:
    return low >= MEASURED and min(significant(low), significant(high)) >= THREE and is_near_double(low, high)


def _is_count(seen: Seen, beside: Beside, one: _Said, other: _Said) -> bool:
    low, _ = _values(one, other)
    if low < COUNTED or beside.times(one.amount.noun) > COMMON:
        return False
    return _are_same(beside, one, other) and not _has_changed(seen, beside, one, other)


def _are_same(beside: Beside, one: _Said, other: _Said) -> bool:
    """Whether both sentences tell of the same thing; or, of what is no large sum and no unit of everything, whether the
    one brings them in and the other has them as known ('there are', 'all', 'the'), or rare words stand beside both."""
    if one.amount.noun in _PEOPLE:
        return False
    noun, frames = one.amount.noun, {one.amount.frame, other.amount.frame}
    if beside.share_owner(one.span, other.span, noun) and (noun in _UNITS or frames != {""}):
        return True
    if noun in _OF_ANYTHING or _values(one, other)[0] >= LARGE:
        return False
    if frames & _BROUGHT_IN and (frames & {"all"} or (frames & {"the"} and beside.times(noun) <= FEW)):
        return True
    return frames != {""} and beside.share(one.span, other.span, noun)


def _has_changed(seen: Seen, beside: Beside, one: _Said, other: _Said) -> bool:
    """Whether one is gone, or what is told from the one passage to the other says that there are more or fewer."""
    if other.amount.value == one.amount.value - 1:
        return True
    first, last = ((it.span.scene, it.span.paragraph) for it in (one, other))
    words = "|".join(map(re.escape, beside.forms(one.amount.noun)))
    change = re.compile(rf"{_MORE}(?:{words})\b|\b(?:{words}){_GONE}", re.IGNORECASE)
    return any(
        change.search(text)
        for number in range(first[0], last[0] + 1)
        for place, text in enumerate(seen.texts[number])
        if first <= (number, place) <= last
    )


def _without_unit(seen: Seen, said: Sequence[_Said]) -> Iterator[Finding]:
    """A figure that stands alone: 'the height of the pass, two thousand two hundred and eighty'."""
    large = [one for one in said if one.amount.value >= LARGE and (one.amount.noun or one.amount.value not in _YEARS)]
    for pair in _apart(large):
        if "" in {one.amount.noun for one in pair} != {""} and _stands_out(*_values(*pair)):
            yield _differ(seen, "figure", *pair)
            return


def _votes(seen: Seen) -> Iterator[Finding]:
    told = [
        (one, seen.span(number, place, one.start, one.end))
        for number, scene in enumerate(seen.texts)
        for place, text in enumerate(scene)
        for one in tallies(text)
    ]
    for (one, span), (other, later) in combinations(told, 2):
        if span.scene != later.scene and _of_one_vote(one, other):
            first, second = (f"{it.won} to {it.lost}" for it in (one, other))
            yield _finding(seen, "vote", (span, later), {"vote": "vote", "first": first, "other": second})
            return


def _of_one_vote(one: Tally, other: Tally) -> bool:
    """Whether one side has the same votes and the other has not, or both are ties."""
    sides = {one.won, one.lost}, {other.won, other.lost}
    if any(len(side) == 1 for side in sides):
        return sides[0] != sides[1] and all(len(side) == 1 for side in sides)
    return len(sides[0] & sides[1]) == 1


def _differ(seen: Seen, what: str, first: _Said, other: _Said) -> Finding:
    one, two = (" ".join(it.span.quote.split()) for it in (first, other))
    return _finding(seen, what, (first.span, other.span), {"first": f"“{one}”", "other": f"“{two}”"})


def _finding(seen: Seen, what: str, spans: tuple[Span, Span], words: Mapping[str, str]) -> Finding:
    first, other = map(seen.sentence, spans)
    return Finding(evidence=(first, other), strength=0.8, subject=f"count: {what}", words=words)


CHECK = Check(
    id="count",
    name="One thing counted in two ways",
    family="continuity",
    looks_at="A number of things, a sum, a measure or a vote that is told once so and once otherwise, in two scenes: "
    "a farm of 212 acres and of 240, twenty beds and all eighteen beds.",
    method="Numbers in words and figures with what they count or measure. Figures from a hundred that are no round "
    f"ones are held against each other where they are of the same unit, at most {NEAR - 1:.0%} apart and no third one "
    "is as near, or where one digit differs or two have changed places. Counts are where no third is within "
    f"{AS_NEAR - 1:.0%} and the one brings them in (‘there are twenty’, ‘had twenty’) and the other has them as known "
    f"(‘all eighteen’; ‘the four’, of a noun that stands in the book up to {FEW} times), or both sentences name the "
    f"same, up to {OWNER} times in the book, or stand beside the same word, up to {RARE} times. Votes are where one "
    "side has the same number twice, or both are ties. Common practice of copy editors.",
    blind="Numbers without what they count (‘That’s seven,’ he said), numbers of doors, floors and rooms, times, and "
    "what is only one fewer later. Guesses, ranges, rates and round numbers are let be, and things of which some are "
    "told to be sold, lost or added between. Money that is spent little by little is asked about.",
    reads=("words",),
    find=find,
    recipe=4,
)
