"""Somebody called by the given name, who has another surname once."""

import re
from collections import defaultdict
from collections.abc import Iterator, Sequence

from afterdraft.questions.drifting import Drift, is_brought_in, is_kin_or_hers, is_of_a_wife
from afterdraft.questions.names_written import TWO, Names
from afterdraft.questions.question import Span

FULL = 2  # times that the full name stands at least; chosen on the tuning half
RARE = 2  # times that the other surname stands at most, likewise
_SURNAME = re.compile(r"\.? [A-Z]")


def surnames(names: Names) -> Iterator[Drift]:
    """Of a given name with two surnames in the book, where the bare given name stands in the scenes of either."""
    found: defaultdict[str, defaultdict[str, list[Span]]] = defaultdict(lambda: defaultdict(list))
    for number, place, match in names.found(TWO):
        if names.is_name(match["frame"]) and names.is_name(match["name"]):
            found[match["frame"]][match["name"]].append(names.seen.span(number, place, *match.span()))
    for given, by_surname in found.items():
        if len(by_surname) != 2 or _is_one_with_ending(*by_surname):
            continue
        (known, usual), (other, places) = sorted(by_surname.items(), key=lambda one: (-len(one[1]), one[1]))
        rare = len(usual) >= FULL and len(names.stands[other]) <= RARE and not names.are_beside(known, other)
        if rare and all(_is_called(names, given, spans) for spans in (usual, places)):
            explained = is_brought_in(names, places[0]) or is_kin_or_hers(names, places[0], other)
            if not explained and not any(is_of_a_wife(names, surname) for surname in (known, other)):
                near = max((one for one in usual if one < places[0]), default=usual[0])
                yield Drift(near, tuple(places), (len(names.stands[known]), len(names.stands[other])), tied=True)


def _is_one_with_ending(surname: str, other: str) -> bool:
    return surname.startswith(other) or other.startswith(surname)  # 'the Karl Yundts of this world'


def _is_called(names: Names, given: str, full: Sequence[Span]) -> bool:
    """Whether the given name stands by itself in one of the scenes too."""
    scenes = {one.scene for one in full}
    here = (one for one in names.stands[given] if one.scene in scenes)
    return any(not _SURNAME.match(names.seen.texts[one.scene][one.paragraph], one.end) for one in here)
