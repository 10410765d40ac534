"""What speaks for a scene to begin at a paragraph, as numbers: one row for every gap between paragraphs."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, fields
from itertools import accumulate

from afterdraft.manuscript.unmarked.cohesion import cohesion
from afterdraft.manuscript.unmarked.passages import Passage
from afterdraft.manuscript.unmarked.vocabulary import ENTRY, LEAP, SITE, TITLED, WHEN

# All of these were chosen on the tune half of the corpus folder (bench/unmarked).
BLOCK = 120  # words of content on either side that are compared
NEAR = 3  # paragraphs on either side in which names and speech are looked for
FAR = 10  # paragraphs before, for how much talk the passage had
REACH = 6  # gaps on either side with which a dip is compared
LONG = 100  # words that count as 1 on the scale of `long`
LONGEST = 2.0  # at most, on that scale


@dataclass(frozen=True, slots=True)
class Gap:
    """What a gap shows of the paragraph after it; 0…1 unless a field says otherwise."""

    # time
    leap: float  # it begins by saying how much later it is, or what time of what day
    when: float  # it begins with a clause of time
    entry: float  # it begins as an entry of a diary does
    # place
    site: float  # a place after a preposition, in its opening
    new_place: float  # it names a place that the paragraphs before do not
    # cast
    name_opens: float  # its very first word is a name or a title
    name_first: float  # a name among its first words
    new_people: float  # share of the people after the gap who are not before it
    # words
    apart: float  # how little the words before are the words after
    dip: float  # how much more apart than at the gaps around; −1…1
    # how it is told: no reason by itself
    speech_before: float  # share of speech in the paragraph before
    talk_after: float  # in the paragraph and those after it
    talk_long_before: float  # in the ten paragraphs before
    trails: float  # the paragraph before trails off: "…", "—"
    long: float  # words of the paragraph; 100 are 1, at most 2


NAMES = tuple(field.name for field in fields(Gap))
_FIRST = 6  # words of a paragraph that count as its first
_ON_EDGES = ",.;:!?’'s"  # what a name may wear


def gaps(told: Sequence[Passage]) -> list[Gap]:
    """A scene's gaps: the first before its second paragraph."""
    apart = [1 - value for value in cohesion([passage.content for passage in told], BLOCK)]
    spoken = [0.0, *accumulate(passage.speech for passage in told)]

    def talk(start: int, end: int) -> float:
        start, end = max(0, start), min(len(told), end)
        return (spoken[end] - spoken[start]) / (end - start)

    return [_gap(told, at, apart[at - 1], dip, talk) for at, dip in enumerate(_dips(apart), start=1)]


def _gap(told: Sequence[Passage], at: int, apart: float, dip: float, talk: Callable[[int, int], float]) -> Gap:
    here, last = told[at], told[at - 1]
    before, after = told[max(0, at - NEAR) : at], told[at : at + NEAR]
    opening = "" if here.begins_spoken else here.opening  # what is said there tells nothing of where the scene is
    known, cast = people(before), people(after)
    return Gap(
        leap=float(bool(LEAP.match(opening))),
        when=float(bool(WHEN.match(opening))),
        entry=float(bool(ENTRY.match(opening))),
        site=float(bool(SITE.search(opening))),
        new_place=float(bool(here.places - places(before))),
        name_opens=float(here.first in here.people or here.first in TITLED),
        name_first=float(any(word.strip(_ON_EDGES) in here.people for word in opening.split()[:_FIRST])),
        new_people=len(cast - known) / len(cast) if cast else 0.0,
        apart=apart,
        dip=dip,
        speech_before=last.speech,
        talk_after=talk(at, at + NEAR),
        talk_long_before=talk(at - FAR, at),
        trails=float(last.text.rstrip(" ”’\"'").endswith(("…", "—", "..."))),
        long=min(LONGEST, here.words / LONG),
    )


def people(told: Sequence[Passage]) -> frozenset[str]:
    """Everyone named there."""
    return frozenset().union(*(passage.people for passage in told))


def places(told: Sequence[Passage]) -> frozenset[str]:
    """Every place named there."""
    return frozenset().union(*(passage.places for passage in told))


def _dips(apart: Sequence[float]) -> list[float]:
    """Each value less the mean of those around it, itself included."""
    sums = [0.0, *accumulate(apart)]
    ranges = [(max(0, at - REACH), min(len(apart), at + REACH + 1)) for at in range(len(apart))]
    return [
        value - (sums[end] - sums[start]) / (end - start) for value, (start, end) in zip(apart, ranges, strict=True)
    ]
