"""Two names behind one title, of which one person is meant: told of in the same words, or holding an office of one."""

import re
from collections import Counter, defaultdict
from collections.abc import Iterator, Sequence

from afterdraft.questions.drifting import SELDOM, Drift, is_brought_in, is_kin_or_hers
from afterdraft.questions.names_written import FEW, TITLES, TWO, ByName, Names
from afterdraft.questions.question import Span
from afterdraft.questions.shared_words import SharedWords
from afterdraft.reading.lexicon import words_of

KNOWN = 3  # times that an office stands by itself, ‘the Prior’, where the book has one of it; chosen by hand
RARE = 2  # times that the other name stands at most beside it, likewise
_OFFICES = words_of(
    """
    prior prioress abbot abbess bishop archbishop rector vicar canon dean provost mayor mayoress sheriff headmaster
    headmistress principal matron coroner governor commissioner superintendent prefect chancellor ambassador consul
    president warden bailiff steward marshal baron baroness count countess duke duchess judge commandant
    """
)
_BY_ITSELF = re.compile(r"\b[Tt]he (?P<office>[A-Z][a-z]+)\b(?! [A-Z])")


def titled(names: Names) -> Iterator[Drift]:
    """Of names that begin with one letter, where nobody else of the title does; and of offices."""
    words = SharedWords(names)
    for title, by_name in names.framed.items():
        for other, places in by_name.items() if title in TITLES else ():
            usual = _begins_like(names, by_name, other)
            if not usual or _is_explained(names, places[0], other):
                continue
            if words.tell_of_one(names.stands[usual], names.stands[other]):
                yield _drift(names, words.closest(by_name[usual], places), usual, other, places)
    yield from _officers(names)


def _begins_like(names: Names, by_name: ByName, other: str) -> str:
    """The one of that title who begins with the same letter, stands before, seldom, and never in the same scene."""
    if len(names.stands[other]) > FEW or not names.is_for_a_while(other):
        return ""
    like = [name for name in by_name if name != other and name[0] == other[0]]
    return like[0] if len(like) == 1 and _may_be_one(names, like[0], other) else ""


def _may_be_one(names: Names, usual: str, other: str) -> bool:
    known, here = names.scenes(usual), names.scenes(other)
    return len(known) <= SELDOM and known[0] < here[0] and not set(known) & set(here)


def _officers(names: Names) -> Iterator[Drift]:
    """Where the book has ‘the Prior’ by itself, in several scenes, and two names for him."""
    by_office: defaultdict[str, defaultdict[str, list[Span]]] = defaultdict(lambda: defaultdict(list))
    for number, place, match in names.found(TWO):
        if match["frame"].lower() in _OFFICES and names.is_name(match["name"]):
            by_office[match["frame"]][match["name"]].append(names.seen.span(number, place, *match.span()))
    alone = Counter(match["office"] for _, _, match in names.found(_BY_ITSELF))
    for office, by_name in by_office.items():
        if alone[office] < KNOWN or len(by_name) != 2:
            continue
        usual, other = sorted(by_name, key=lambda name: (-len(by_name[name]), by_name[name]))
        rare = len(names.stands[other]) <= RARE and _may_be_one(names, usual, other)
        if rare and not _is_explained(names, by_name[other][0], other):
            yield _drift(names, by_name[usual][0], usual, other, by_name[other])


def _is_explained(names: Names, first: Span, other: str) -> bool:
    return is_brought_in(names, first) or is_kin_or_hers(names, first, other)


def _drift(names: Names, known: Span, usual: str, other: str, places: Sequence[Span]) -> Drift:
    return Drift(known, tuple(places), (len(names.stands[usual]), len(names.stands[other])), tied=True)
