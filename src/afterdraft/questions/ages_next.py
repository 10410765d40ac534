"""Ages that somebody is to have soon, who is a year less now: 'Ilse would be forty in May', “I’ll be forty in May”."""

import re
from collections.abc import Iterator

from afterdraft.questions.ages_beside import AGE, HOURS, NAME, whose
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.reading.time_words import DAYS, MONTHS
from afterdraft.reading.trait_words import number
from afterdraft.whole.owners import BY_NAME
from afterdraft.whole.pronoun_cautions import Owner
from afterdraft.whole.traits import PersonTrait

SURE = 0.7  # of whom a pronoun means
_WHEN = (
    r"(?=\s(?:in|on|at|next(?!\syear)|this|tomorrow|before|by|come|a\sweek|after)\b(?!\s(?:a\sfew\s|some\s|\w+\s)?years\b)"
    r"|,\s(?:come|on|in)\b)"
)
_DAY = "|".join(word.capitalize() for word in (*MONTHS, *DAYS))
_SOON = (
    rf"(?=,?\s(?:come\s)?(?:(?:in|on|at|this|next|by)\s)?(?:the\s)?(?:{_DAY}|Christmas|Easter|spring|summer|autumn|fall"
    r"|winter|week|month)\b|\stomorrow\b)"
)
_BE = (
    r"(?:\s(?:would|will|shall)\s(?:be|turn)|[’'](?:d|ll)\s(?:be|turn)"
    r"|\s(?:was|is|am)\s(?:going\sto\sbe|to\sbe|turning|rising))"
)
_PATTERNS = tuple(
    re.compile(pattern)
    for pattern in (
        rf"\b{NAME}(?:,\swho|\sand)?(?:\s(?:was|is)\s[a-z-]+\sand)?(?P<verb>{_BE})\s{AGE}{_WHEN}",
        rf"\b{NAME}(?:,\swho)?(?P<verb>\s(?:would|will)\snot\sbe|\s(?:wo|would)n[’']t\sbe)\s{AGE}\s(?:until|till)\b{_SOON}",
        rf"\b(?P<he>I|[Hh]e|[Ss]he)(?P<verb>{_BE})\s{AGE}{_SOON}",
        rf"\b(?P<he>I|[Hh]e|[Ss]he)(?P<verb>\s(?:would|will|shall)\snot\sbe|\s(?:wo|would|sha)n[’']t\sbe)\s{AGE}\s(?:until|till)\b{_SOON}",
    )
)
_UNREAL = re.compile(r"\b(?:if|lived|alive|dead|died)\b")  # of who would be so and is not


def ages_next(seen: Seen) -> Iterator[PersonTrait]:
    """Of people of the cast, each as the age of now."""
    for scene, paragraphs in enumerate(seen.texts):
        for paragraph, text in enumerate(paragraphs):
            for match in (found for pattern in _PATTERNS for found in pattern.finditer(text)):
                begins, ends = sentence(text, *match.span())
                age = number(match["age"])
                if not age or age <= HOURS or _UNREAL.search(text, begins, ends):
                    continue
                owner = _owner(seen, scene, paragraph, match)
                if owner and owner[1] >= SURE:
                    place = match.start("verb"), match.end("age")
                    yield PersonTrait(owner[0], "age", str(age - 1), scene, paragraph, *place, owner[1])


def _owner(seen: Seen, scene: int, paragraph: int, match: re.Match[str]) -> Owner | None:
    if "he" not in match.re.groupindex:
        person = whose(seen.book.cast, match["name"])
        return (person, BY_NAME) if person else None
    at = paragraph, match.start("he")
    mentions = zip(seen.facts[scene].mentions, seen.owners(scene), strict=True)
    return next((owner for one, owner in mentions if (one.paragraph, one.start) == at), None)
