"""Ages that stand right beside a name: there the words alone tell whose they are."""

import re
from collections.abc import Iterator

from afterdraft.questions.seen import Seen
from afterdraft.reading.trait_words import PEOPLE, number
from afterdraft.whole.traits import BY_NAME, PersonTrait
from afterdraft.whole.turns import resolve

HOURS = 12  # 'at ten' is an hour
_SOMEBODY = "|".join([*sorted(PEOPLE - {"figure"}), "spinster", "bachelor", "widow", "widower"])
_NOW = r"(?:now|only|but|just|already|still|turned|barely)"
_NAME = r"(?P<name>[A-Z]\w+\.?(?:\s[A-Z]\w+\.?)*)"
_AGE = r"(?P<age>[a-z]+(?:-[a-z]+)*|\d\d)"
_BESIDE = (
    re.compile(
        rf"\b{_NAME}(?:,\s(?:who\s(?:was|is)\s)?(?:(?:at|aged|{_NOW}|an?\s(?:{_SOMEBODY})\sof)\s)+"
        rf"|,\swho\s(?:was|is)\s|\sat\s|\s(?:was|is)\s(?:{_NOW}\s)*)"
        rf"{_AGE}(?=[,.;:!?—]|\s(?:and|was|years\s(?:old|of\sage))\b)"
    ),
    re.compile(rf"\b[Aa]t\s{_AGE},\s{_NAME}\s(?:was|is|had|has|still)\b"),
)


def ages_beside(seen: Seen) -> Iterator[PersonTrait]:
    """'Ilse, at forty, …', 'Ilse, aged forty, …', 'Ilse was forty.', 'At forty, Ilse was …', of people of the cast."""
    for scene, paragraphs in enumerate(seen.texts):
        for paragraph, text in enumerate(paragraphs):
            for match in (found for pattern in _BESIDE for found in pattern.finditer(text)):
                age = number(match["age"])
                person = resolve(match["name"].lower().replace(".", ""), seen.book.cast.by_form)
                if person and age and age > HOURS:
                    yield PersonTrait(person, "age", str(age), scene, paragraph, *match.span("age"), BY_NAME)
