"""Ages of one person that do not fit the time between."""

import re
from collections import defaultdict
from collections.abc import Iterator
from itertools import combinations

from afterdraft.questions.ages_beside import ages_beside, names_them
from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.questions.story_days import goes_back
from afterdraft.questions.years_between import years_between
from afterdraft.whole.traits import PersonTrait

SURE = 0.75  # of whose age it is
NAMED = 0.8  # of one of the two
BACK, FORTH = 9, 20  # years by which ages may differ and still be of one time of life: more, and the telling has gone
# elsewhere; chosen on the demonstration book
_THEN = re.compile(
    r"\b(?:when|since|until|till|at|by|before|after|had been|would be|will be|shall be|like|as if|as though|look\w*"
    r"|seem\w*|appear\w*|might|may|must|not|wasn[’']t|isn[’']t|nearly|almost|over|under|about|some|than|if|for|once|ago"
    r"|passed for|taken for)\b[^.;]*$",
    re.IGNORECASE,
)
_AT = re.compile(r"\bat\s$", re.IGNORECASE)
_HAD = re.compile(
    r"^,?(?:\s\w+\.?){0,5}\shad\b(?!\s(?:(?:long|already|quite|almost|only)\s)?(?:given\sup|learn(?:ed|t)|ceased|come\sto|grown|begun|lost"
    r"|never|no|not|nothing|little|a|an|the|his|her|still|always)\b)"
)  # but not 'had given up', 'had no money': that is so at the age
_WHO = re.compile(
    r"^.*,\swho(?=\s(?:had\s(?:\w+\s)?turned|has|is|(?:was|had)\s(?:now|already|just|only))\b)", re.DOTALL
)
_SPOKEN = re.compile(r"^.*[”\"»]", re.DOTALL)  # up to where speech ends before it
_FULL = re.compile(r"\b[A-Z][a-z]+\s[A-Z][a-z]+\b(?![’'])")
BEHIND = 12  # characters between a full name and the age of who bears it


def find(seen: Seen) -> Iterator[Finding]:
    by: defaultdict[str, list[PersonTrait]] = defaultdict(list)
    for one in _said(seen):
        by[one.person].append(one)
    for person, said in by.items():
        for one, other in combinations(said, 2):
            if one.scene == other.scene or max(one.sure, other.sure) < NAMED or not _in_order(seen, one, other):
                continue  # a scene that goes back says so in many ways
            if not _fits(seen, one, other, between := _years(seen, one, other)):
                yield _finding(seen, person, one, other, between)
                break


def _said(seen: Seen) -> list[PersonTrait]:
    """Ages of the time that is told, whose owner is sure enough, in the order of the text."""
    read = [one for one in seen.traits if one.trait == "age" and one.sure >= SURE and one.value.isdecimal()]
    read = [one for one in read if not _is_of_another(seen, one)]
    places = {(one.scene, one.paragraph, one.value) for one in read}
    more = [one for one in ages_beside(seen) if (one.scene, one.paragraph, one.value) not in places]
    both = sorted((*read, *more), key=lambda one: (one.scene, one.paragraph, one.start))
    return [one for one in both if _is_now(seen, one)]


def _is_of_another(seen: Seen, one: PersonTrait) -> bool:
    """Whether a full name stands right before it that shares no more than the surname."""
    text = seen.texts[one.scene][one.paragraph]
    return any(
        not names_them(seen.book.cast, one.person, match.group())
        for match in _FULL.finditer(text, *sentence(text, one.start, one.end))
        if match.end() <= one.start <= match.end() + BEHIND
    )


def _is_now(seen: Seen, one: PersonTrait) -> bool:
    """Whether it is said of the time that is told, and for certain."""
    text = seen.texts[one.scene][one.paragraph]
    begins, ends = sentence(text, one.start, one.end)
    before, behind = _SPOKEN.sub("", text[begins : one.start]), text[one.end : ends]
    then = _AT.search(before) if _AT.search(before) and not _HAD.search(behind) else None
    before = _WHO.sub("", before[: then.start()] if then else before)  # 'When Ilse, who had turned forty, came in'
    return not _THEN.search(before)


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
    method="Ages right beside a name, and others whose owner is surer than three in four, said of the time that is "
    "told and without ‘about’; who ‘will be fifteen in May’ is fourteen. Years between come from story time; where "
    "that is not known, and nothing between speaks of years, a year at most is taken to pass.",
    blind="Most ages are told of ‘he’ or ‘she’ at a distance from the name. Ages against years of birth.",
    reads=("words", "cast", "time"),
    find=find,
    recipe=7,
)
