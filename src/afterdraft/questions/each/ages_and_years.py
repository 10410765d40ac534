"""Ages that do not go with the years told beside them: a year of birth, a year, or how many years ago."""

import re
from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import combinations

from afterdraft.questions.ages_told import ages_told, is_certain, is_now
from afterdraft.questions.births import births
from afterdraft.questions.check import Check
from afterdraft.questions.dead_words import AGO, Years, years_of
from afterdraft.questions.people_in import people_in
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.questions.years_between import EVER, years_between
from afterdraft.reading.trait_words import number
from afterdraft.whole.owners import BY_NAME
from afterdraft.whole.story_time import SceneTime
from afterdraft.whole.traits import PersonTrait

UNSAID = 0.5  # years that may pass between two scenes of which nothing tells; chosen by hand
SPREAD = 1  # years within which the story's own is known
MOST = 0.6  # share of the scenes whose years are known, from which the others are of those years; chosen by hand
ROUGH = 1.0  # years by which 'thirty years ago' may be out, likewise
_YEAR = re.compile(
    r"\b(?:in|of|during|January|February|March|April|May|June|July|August|September|October|November"
    r"|December|spring|summer|autumn|fall|winter|Christmas|Easter),?\s(?P<year>1[6-9]\d\d|20\d\d)\b"
)
_WAS = re.compile(
    r"\b(?P<who>[A-Z][a-z]+|he|she)\s(?:was|had\sbeen|turned|had\sturned)\s(?:only\s|just\s)?(?P<age>\d\d|[a-z]+(?:-[a-z]+)?)"
    r"(?=[,.;:!?—”’]|$|\s(?:and|when|then|in|years\sold|at\sthe\stime)\b)"
)
_DIGITS = 4
YOUNG = 4  # 'she was one in a hundred' is no age


@dataclass(frozen=True, slots=True)
class _Claim:
    """How old somebody is at the time of the scene, or when they were born, as far as one passage tells."""

    scene: int
    span: Span
    now: bool  # it is said of the time that is told
    age: Years | None  # at the time of the scene
    born: tuple[int, int] | None  # first and last year
    said: str


def find(seen: Seen) -> Iterator[Finding]:
    by: defaultdict[str, list[_Claim]] = defaultdict(list)
    for person, claim in (*_of_ages(seen), *_births(seen)):
        by[person].append(claim)
    for person, claims in by.items():
        for one, other in combinations(sorted(claims, key=lambda it: it.span), 2):
            if one.now and other.now:
                continue  # another check's
            if (would := _would_be(seen, one, other)) is not None:
                yield _finding(seen, person, one, other, would)
                break


def _of_ages(seen: Seen) -> Iterator[tuple[str, _Claim]]:
    read = ages_told(seen)
    taken = {(one.scene, one.paragraph, one.value) for one in read}
    more = [one for one in _beside_years(seen) if (one.scene, one.paragraph, one.value) not in taken]
    for one in filter(lambda it: is_certain(seen, it), (*read, *more)):
        text = seen.texts[one.scene][one.paragraph]
        begins, ends = sentence(text, one.start, one.end)
        span = seen.span(one.scene, one.paragraph, begins, ends)
        years = list(_YEAR.finditer(text, begins, ends))
        ago = AGO.search(text, begins, ends)
        age, said = int(one.value), one.value
        if len(years) == 1:
            year = int(years[0]["year"])
            yield one.person, _Claim(one.scene, span, False, None, (year - age - 1, year - age), said)
        elif ago and not years and (since := years_of(ago["count"], ago["unit"], ago["vague"] or ago["odd"])):
            then = age + since[0] - ROUGH, age + since[1] + ROUGH
            yield one.person, _Claim(one.scene, span, False, then, _born(seen, one.scene, then), said)
        elif not years and is_now(seen, one):
            here = float(age), float(age)
            yield one.person, _Claim(one.scene, span, True, here, _born(seen, one.scene, here), said)


def _beside_years(seen: Seen) -> Iterator[PersonTrait]:
    """'When she was nineteen' and the like, in sentences that name a year or tell how many years ago that was."""
    people = {one.id for one in seen.book.cast.people}
    for scene, paragraphs in enumerate(seen.texts):
        for paragraph, text in enumerate(paragraphs):
            if not (_YEAR.search(text) or AGO.search(text)):
                continue
            named = {one.start: one.key for one in people_in(seen, text)}
            for match in _WAS.finditer(text):
                begins, ends = sentence(text, *match.span())
                age, person = number(match["age"]), named.get(match.start("who"), "")
                told = _YEAR.search(text, begins, ends) or AGO.search(text, begins, ends)
                if age and told and age > YOUNG and person in people:
                    yield PersonTrait(person, "age", str(age), scene, paragraph, *match.span("age"), BY_NAME)


def _births(seen: Seen) -> Iterator[tuple[str, _Claim]]:
    for one in births(seen):
        born = one.year, one.year
        yield one.person, _Claim(one.scene, one.span, False, None, born, f"born {one.year}")


def _born(seen: Seen, scene: int, age: Years) -> tuple[int, int] | None:
    """In which years, where the scene's own year is told."""
    one = seen.story.scenes[scene]
    known = _years(one) or (None if one.flashback else _of_all(seen))
    if not known or known[1] - known[0] > SPREAD:
        return None
    return known[0] - int(age[1]) - 1, known[1] - int(age[0])


def _years(one: SceneTime) -> tuple[int, int] | None:
    first, last = one.earliest[:_DIGITS], one.latest[:_DIGITS]
    return (int(first), int(last)) if first.isdecimal() and last.isdecimal() else None


def _of_all(seen: Seen) -> tuple[int, int] | None:
    """Of the first and the last of the scenes that do not go back, where those of most are known."""
    scenes = [one for one in seen.story.scenes if not one.flashback]
    known = [it for one in scenes if (it := _years(one))]
    if not known or len(known) < MOST * len(scenes):
        return None
    return min(first for first, _ in known), max(last for _, last in known)


def _would_be(seen: Seen, one: _Claim, other: _Claim) -> int | None:
    """By how many years the two are out; None where they agree, or nothing brings them together."""
    if one.born and other.born:
        gap = max(one.born[0] - other.born[1], other.born[0] - one.born[1])
        return gap if gap > 0 else None
    if not (one.age and other.age):
        return None
    scenes = seen.story.scenes
    least, most = years_between(seen, one.scene, other.scene, unsaid=UNSAID)
    if scenes[one.scene].flashback != scenes[other.scene].flashback or most >= EVER:
        return None
    over = max(one.age[0] + least - 1 - other.age[1], other.age[0] - one.age[1] - most - 1)
    return int(over) + 1 if over > 0 else None


def _finding(seen: Seen, person: str, one: _Claim, other: _Claim, gap: int) -> Finding:
    name = seen.name(person)
    return Finding(
        evidence=(one.span, other.span),
        strength=0.75,
        subject=f"years of {name.lower()}",
        words={"name": name, "first": one.said, "other": other.said},
        numbers={"years": gap},
        people=(person,),
    )


CHECK = Check(
    id="age and year",
    name="Ages and years",
    family="continuity",
    looks_at="An age, and a year of birth, a year in which somebody was so old, or ‘thirty years ago’: two of them "
    "that make no sum.",
    method="Ages whose owner is sure enough and the only year of their sentence, or how many years ago that was; ages "
    "of the time that is told, where story time knows the year, or those of most scenes; and ‘born in’ a year behind "
    "the only person of the sentence, or on a stone or a sheet below their name. Rounded years are given "
    "room. The rules are our own.",
    blind="Years that stand in another sentence than the age, and ages told at a distance from the name.",
    reads=("words", "cast", "time"),
    find=find,
    recipe=3,
)
