"""Ages of one person that do not fit the time between."""

import re
from collections import defaultdict
from collections.abc import Iterator
from itertools import combinations

from afterdraft.questions.ages_told import ages_told, is_now
from afterdraft.questions.check import Check
from afterdraft.questions.numbers_written import numbers
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.questions.story_days import goes_back
from afterdraft.questions.years_between import years_between
from afterdraft.whole.traits import PersonTrait

_YEAR = re.compile(r"\b(?:1[5-9]|20)\d\d\b")
NAMED = 0.8  # of one of the two
BACK, FORTH = 9, 20  # years by which ages may differ and still be of one time of life: more, and the telling has gone
# elsewhere; chosen on the demonstration book


def find(seen: Seen) -> Iterator[Finding]:
    by: defaultdict[str, list[PersonTrait]] = defaultdict(list)
    for one in ages_told(seen):
        if is_now(seen, one):
            by[one.person].append(one)
    for person, said in by.items():
        for one, other in combinations(said, 2):
            if one.scene == other.scene or max(one.sure, other.sure) < NAMED or not _in_order(seen, one, other):
                continue  # a scene that goes back says so in many ways
            if _is_dated(seen, one) or _is_dated(seen, other) or _is_put_right(seen, one, other):
                continue
            if not _fits(seen, one, other, between := _years(seen, one, other)):
                yield _finding(seen, person, one, other, between)
                break


def _is_dated(seen: Seen, one: PersonTrait) -> bool:
    """Whether the lines above or its own tell a year: the age is of that time."""
    texts = seen.texts[one.scene][max(0, one.paragraph - 1) : one.paragraph + 1]
    return any(_YEAR.search(text) for text in texts)


def _is_put_right(seen: Seen, one: PersonTrait, other: PersonTrait) -> bool:
    """Whether the later lines tell the earlier age as well: 'They had put forty-seven. He was forty-four.'"""
    text = seen.texts[other.scene][other.paragraph]
    return any(said.value == int(one.value) and said.end <= other.start for said in numbers(text))


def _in_order(seen: Seen, one: PersonTrait, other: PersonTrait) -> bool:
    """Whether they can be held against each other: the telling is where it was; or went back before both and did not
    come out again between, or only a frame lies ahead; or came out between, and yet the age runs back."""
    scenes = seen.story.scenes[one.scene : other.scene + 1]
    if scenes[-1].flashback:
        framed = not scenes[0].flashback and not goes_back(seen, other.scene, one.scene)
        return framed or all(scene.flashback for scene in scenes)
    return not scenes[0].flashback or int(other.value) < int(one.value)


def _years(seen: Seen, one: PersonTrait, other: PersonTrait) -> tuple[int, int]:
    """Fewest and most whole years that the one is older by the time of the other."""
    least, most = years_between(seen, one.scene, other.scene, unsaid=0.5)
    return int(least), int(most) + 1


def _fits(seen: Seen, one: PersonTrait, other: PersonTrait, between: tuple[int, int]) -> bool:
    """Some say 'in her fortieth year' of who is forty: then a year more is as good."""
    older = int(other.value) - int(one.value)
    least, most = older - _is_of_a_year(seen, one), older + _is_of_a_year(seen, other)
    return (least <= between[1] and between[0] <= most) or not -BACK <= older <= FORTH


def _is_of_a_year(seen: Seen, one: PersonTrait) -> bool:
    return seen.texts[one.scene][one.paragraph][: one.end].endswith(" year")


def _finding(seen: Seen, person: str, one: PersonTrait, other: PersonTrait, between: tuple[int, int]) -> Finding:
    name = seen.name(person)
    return Finding(
        evidence=(_span(seen, one), _span(seen, other)),
        strength=0.85 if int(other.value) < int(one.value) else 0.75,
        subject=f"age of {name.lower()}",
        words={"name": name, "first": one.value, "other": other.value},
        numbers={"least": between[0], "most": between[1]},
        people=(person,),
    )


def _span(seen: Seen, one: PersonTrait) -> Span:
    start, end = sentence(seen.texts[one.scene][one.paragraph], one.start, one.end)
    return seen.span(one.scene, one.paragraph, start, end)


CHECK = Check(
    id="age",
    name="Ages that do not fit",
    family="continuity",
    looks_at="Two ages of one person that are further apart than the story time between them, or run back.",
    method="Ages right beside a name, and others whose owner is sure to seven in ten, said of the time that is told "
    "and without ‘about’; who ‘will be fifteen in May’, or ‘not until May’, is fourteen; ‘I was nine’ is of the past. "
    "Years between come from story time; where that is not known, and nothing between speaks of years, a year at most "
    "is taken to pass.",
    blind="Most ages are told of ‘he’ or ‘she’ at a distance from the name.",
    reads=("words", "cast", "time"),
    find=find,
    recipe=13,
)
