"""Candidates for headings, sorted into families that number their members in one way."""

from bisect import bisect_left
from collections import defaultdict
from collections.abc import Mapping, Sequence, Set
from itertools import accumulate

from afterdraft.manuscript.structure.lines import Line, ends_sentence, speaks
from afterdraft.manuscript.structure.sequence import Candidate

LABELLED: dict[str, float] = {"part": 2.0, "chapter": 2.0, "letter": 1.0}
BARE = -1.0  # a number without a label has to earn its place by look and sequence
UNDER = 1.0  # a one directly under a heading begins the numbers of its sections
UNDER_WORDS = 30  # a title and a line or two may stand between
LOOK = 3.0  # most that the look can add
TITLE_WORDS = 12

Families = Mapping[str, Sequence[Candidate]]


def families(lines: Sequence[Line], *, skip: Set[int], above: Sequence[int] = ()) -> Families:
    """Numbered lines by family: "part", "chapter", "letter", "figures", "roman", "words".

    Lines in `skip` are none; `above` are the places of headings of a higher rank, at which numbers may restart.
    """
    found: defaultdict[str, list[Candidate]] = defaultdict(list)
    told = [0, *accumulate(line.words for line in lines)]
    for line in lines:
        number = line.name.number
        if number is None or line.index in skip:
            continue
        inside = bisect_left(above, line.index + 1)
        under = inside > 0 and told[line.index] - told[above[inside - 1] + 1] <= UNDER_WORDS
        family = line.name.kind if line.name.kind in LABELLED else (line.name.form or "figures")
        last = found[family][-1] if found[family] else None
        if last and last.number == number and last.line.index == line.index - 1:
            continue  # a title under its number that names the number again: "Fourth Chapter"
        worth = _worth(lines, line, LABELLED.get(family, BARE), under=under)
        found[family].append(Candidate(line, number, worth, told[line.index], inside))
    return found


def _worth(lines: Sequence[Line], line: Line, base: float, *, under: bool) -> float:
    worth = base + min(LOOK, line.weight) + 2.0 * line.turn + 0.75 * (line.wide > 0) + bool(line.label)
    if base == BARE:
        worth += UNDER if under and line.name.number == 1 else -_bare_doubts(lines, line)
    if len(line.name.title.split()) > TITLE_WORDS:
        worth -= 1.0
    return worth


def _bare_doubts(lines: Sequence[Line], line: Line) -> float:
    """What speaks against a number without a label being a heading."""
    doubt = 0.0
    set_apart = line.weight > 0 or line.turn or line.wide > 0
    before = lines[line.index - 1] if line.index else None
    if before and not before.short and not ends_sentence(before.text):
        doubt += 1.5  # a page number typed into the text
    if line.name.title:
        told = line.name.form == "words" or line.name.title.endswith((".", ","))
        doubt += 0.0 if set_apart else 1.0 + 2.0 * told
        doubt += 2.0 * speaks(line.text)
    if line.name.form == "roman" and line.text.strip("(). ").islower():
        doubt += 0.5
    if line.text.strip(".") == "I" and not set_apart:
        doubt += 1.0  # the commonest word that looks like a number
    return doubt
