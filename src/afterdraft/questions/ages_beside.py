"""Ages that stand right beside a name, or in the sentence behind it: there the words alone tell whose they are."""

import re
from collections.abc import Iterator, Mapping

from afterdraft.questions.seen import Seen
from afterdraft.reading.facts import Gender
from afterdraft.reading.lexicon import KIN, TITLES
from afterdraft.reading.trait_words import PEOPLE, number
from afterdraft.whole.cast import Cast
from afterdraft.whole.owners import BY_NAME
from afterdraft.whole.traits import PersonTrait
from afterdraft.whole.turns import resolve

HOURS = 12  # 'at ten' is an hour
_SOMEBODY = "|".join([*sorted(PEOPLE - {"figure"}), "spinster", "bachelor", "widow", "widower"])
_NOW = r"(?:now|only|but|just|already|still|turned|barely)"
_NAME = r"(?P<name>[A-Z]\w+\.?(?:\s[A-Z]\w+\.?)*)"
_AGE = r"(?P<age>[a-z]+(?:-[a-z]+)*|\d\d)"
_TOLD = rf"(?:^|[.!?]”?\s){_NAME}\s(?P<told>[a-z][^.!?“”A-Z]*)[.!?]\s"
_PATTERNS = (
    re.compile(
        rf"\b{_NAME}(?:[,.]\s(?:Aged|aged|AGED)\s|,\s(?:who\s(?:was|is)\s)?(?:(?:at|aged|{_NOW}|an?\s(?:{_SOMEBODY})\sof)\s)+"
        rf"|,\swho\s(?:was|is)\s|\sat\s|\s(?:was|is)\s(?:{_NOW}\s)*)"
        rf"{_AGE}(?=[,.;:!?—]|\s(?:and|was|years\s(?:old|of\sage))\b)"
    ),
    re.compile(rf"\b[Aa]t\s{_AGE},\s{_NAME}\s(?:was|is|had|has|still)\b"),
    re.compile(
        rf"{_TOLD}(?P<he>He|She)\s(?:was|is)\s(?:{_NOW}\s)*(?:an?\s(?:{_SOMEBODY})\sof\s)?"
        rf"{_AGE}(?=[,.;:!?—]|\s(?:and|that|years\s(?:old|of\sage))\b)"
    ),
    re.compile(rf"{_TOLD}At\s{_AGE},\s(?P<he>he|she)\b"),
    re.compile(
        rf"\b{_NAME}(?:,\s(?:who|now\sthat\s(?:he|she)))?(?:\s(?:had|has)|[’'](?:d|s))?\s(?:{_NOW}\s)*turned\s{_AGE}(?=[,.;:!?—]"
        r"|\s(?:and|at|in|on|that|this|last|a|the|yesterday|only|just)\b)"
    ),
)
_WHEN = r"(?=\s(?:in|on|at|next|this|tomorrow|before|by|come|a\sweek|after)\b|,\s(?:come|on|in)\b)"
_NEXT = re.compile(
    rf"\b{_NAME}(?:,\swho|\sand)?(?:\s(?:was|is)\s[a-z-]+\sand)?"
    rf"(?P<verb>\s(?:would|will)\sbe|[’'](?:d|ll)\sbe|\s(?:was|is)\s(?:going\sto\sbe|turning|rising))\s{_AGE}{_WHEN}"
)
_NEXT_ONLY = re.compile(
    rf"\b{_NAME}(?:,\swho)?(?P<verb>(?:\s(?:would|will))\snot\sbe|\s(?:wo|would)n[’']t\sbe)\s{_AGE}"
    r"\s(?:until|till)\s(?=[A-Z]|next\b|the\s(?:spring|summer|autumn|fall|winter|new\syear)\b)"
)
_PRONOUNS = {"m": "he", "f": "she"}
_OTHERS = PEOPLE | KIN


def ages_beside(seen: Seen) -> Iterator[PersonTrait]:
    """Of people of the cast: 'Ilse, at forty, …', 'Ilse, aged forty, …', 'Ilse was forty.', 'At forty, Ilse was …',
    'Ilse sat down. She was forty.', 'Ilse, who had turned forty at Easter', and 'Ilse would be forty in May', 'would
    not be forty until May', where she is a year less."""
    cast = seen.book.cast
    genders = {person.id: person.gender for person in cast.people}
    for scene, paragraphs in enumerate(seen.texts):
        for paragraph, text in enumerate(paragraphs):
            for match in (found for pattern in _PATTERNS for found in pattern.finditer(text)):
                person, age = _whose(cast, match["name"]), number(match["age"])
                if person and age and age > HOURS and _is_plain(match.groupdict(), genders[person]):
                    yield PersonTrait(person, "age", str(age), scene, paragraph, *match.span("age"), BY_NAME)
            for match in (found for pattern in (_NEXT, _NEXT_ONLY) for found in pattern.finditer(text)):
                person, age = _whose(cast, match["name"]), number(match["age"])
                if person and age and age > HOURS:
                    place = match.start("verb"), match.end("age")
                    yield PersonTrait(person, "age", str(age - 1), scene, paragraph, *place, BY_NAME)


def _whose(cast: Cast, name: str) -> str:
    person = resolve(name.lower().replace(".", ""), cast.by_form)
    return person if person and names_them(cast, person, name) else ""


def names_them(cast: Cast, person: str, name: str) -> bool:
    """Whether a name of several words is theirs, as far as their own is known: a brother has the surname in common."""
    *given, surname = name.lower().replace(".", "").split()
    forms = (form for one in cast.people if one.id == person for form in one.aliases)
    own = {word for form in forms for word in form.split()} - {surname} - TITLES
    return not given or not own or bool({*given} & (own | TITLES))


def _is_plain(words: Mapping[str, str], gender: Gender) -> bool:
    """Whether 'he' or 'she' in the sentence behind that of the name, if it is said so, can only be who bears it."""
    if "he" not in words:
        return True
    return words["he"].lower() == _PRONOUNS.get(gender) and not _OTHERS & {*re.findall(r"[a-z]+", words["told"])}
