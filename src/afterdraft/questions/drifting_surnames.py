"""Somebody called by the given name, who has another surname once; or one in full alone, who has another that begins
or looks alike, later: a maiden name stands before."""

import re
from collections import defaultdict
from collections.abc import Iterator, Sequence

from rapidfuzz.distance import Jaro

from afterdraft.questions.drifting import Drift, is_brought_in, is_kin_or_hers, is_of_a_wife
from afterdraft.questions.genders_of_names import genders
from afterdraft.questions.names_written import TWO, Names
from afterdraft.questions.question import Span

FULL = 2  # times that the full name stands at least; chosen on the tuning half
RARE = 2  # times that the other surname stands at most, likewise
SHAPE = 0.7  # how alike two are at least that do not begin with one letter, by Jaro (1989): 0 to 1; chosen by hand
_IS_A_THING = re.compile(r"\b(?:[Tt]he|[Aa]n?)\s$")
_COMPARED = re.compile(r"\b(?:look of|like|as|resembl\w+|remind\w* \w+ of|image of|such as)\s$")
_SURNAME = re.compile(r"\.? [A-Z]")


def surnames(names: Names) -> Iterator[Drift]:
    """Of a given name with two surnames in the book, where the bare given name stands in the scenes of either."""
    found: defaultdict[str, defaultdict[str, list[Span]]] = defaultdict(lambda: defaultdict(list))
    for number, place, match in names.found(TWO):
        if _IS_A_THING.search(match.string[: match.start()]):
            continue  # 'the Lauben Rifles'
        if names.is_name(match["frame"]) and names.is_name(match["name"]):
            found[match["frame"]][match["name"]].append(names.seen.span(number, place, *match.span()))
    for given, by_surname in found.items():
        if len(by_surname) != 2 or _is_one_with_ending(*by_surname):
            continue
        (known, usual), (other, places) = sorted(by_surname.items(), key=lambda one: (-len(one[1]), one[1]))
        rare = len(names.stands[other]) <= RARE and not names.are_beside(known, other)
        called = len(usual) >= FULL and all(_is_called(names, given, spans) for spans in (usual, places))
        if rare and (called or (usual[0] < places[0] and _may_be_one(names, given, known, other))):
            explained = is_brought_in(names, places[0]) or is_kin_or_hers(names, places[0], other)
            compared = _COMPARED.search(names.seen.texts[places[0].scene][places[0].paragraph][: places[0].start])
            if not explained and not compared and not any(is_of_a_wife(names, surname) for surname in (known, other)):
                near = max((one for one in usual if one < places[0]), default=usual[0])
                yield Drift(near, tuple(places), (len(names.stands[known]), len(names.stands[other])), tied=True)


def _is_one_with_ending(surname: str, other: str) -> bool:
    return surname.startswith(other) or other.startswith(surname)  # 'the Karl Yundts of this world'


def _may_be_one(names: Names, given: str, surname: str, other: str) -> bool:
    """Whether they begin with one letter or look alike, of somebody by that given name, and stand in no scene both."""
    alike = surname[0] == other[0] or Jaro.similarity(surname, other) >= SHAPE
    somebody = bool(genders(given)) or given in names.framed.get("", ())
    return alike and somebody and not set(names.scenes(surname)) & set(names.scenes(other))


def _is_called(names: Names, given: str, full: Sequence[Span]) -> bool:
    """Whether the given name stands by itself in one of the scenes too."""
    scenes = {one.scene for one in full}
    here = (one for one in names.stands[given] if one.scene in scenes)
    return any(not _SURNAME.match(names.seen.texts[one.scene][one.paragraph], one.end) for one in here)
