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
YOUNG = 2  # 'Ilse, one, two'
_SOMEBODY = "|".join([*sorted(PEOPLE - {"figure"}), "spinster", "bachelor", "widow", "widower"])
_NOW = r"(?:now|only|but|just|already|still|turned|barely)"
NAME = r"(?P<name>(?:(?:Mr|Mrs|Ms|Dr|St|Capt|Col|Sgt|Rev|Prof)\.\s)?[A-Z]\w+(?:\s(?:[A-Z]\.|[A-Z]\w+))*)"
AGE = r"(?P<age>[a-z]+(?:-[a-z]+)*|\d\d)"
ANY_AGE = r"(?P<age>[A-Za-z]+(?:-[a-z]+)??|\d\d?)"
_TOLD = rf"(?:^|[.!?]”?\s){NAME}\s(?P<told>[a-z][^.!?“”A-Z]*)[.!?]\s"
_PATTERNS = (
    re.compile(
        rf"\b{NAME}(?:[,.]\s(?:Aged|aged|AGED)\s|,\s(?:who\s(?:was|is)\s)?(?:(?:at|aged|{_NOW}|an?\s(?:{_SOMEBODY})\sof)\s)+"
        rf"|,\swho\s(?:was|is)\s|\sat\s|\s(?:was|is)\s(?:{_NOW}\s)*)"
        rf"{AGE}(?=[,.;:!?—]|\s(?:and|was|years\s(?:old|of\sage))\b)"
    ),
    re.compile(rf"\b[Aa]t\s{AGE},?\s{NAME}\s(?:was|is|had|has|still)\b"),
    re.compile(rf"\b{NAME}[’']s\s(?:{_NOW}\s)*{AGE}(?=[,.;:!?—]|\snow\b)"),
    re.compile(
        rf"{_TOLD}(?P<he>He|She)\s(?:was|is)\s(?:{_NOW}\s)*(?:an?\s(?:{_SOMEBODY})\sof\s)?"
        rf"{AGE}(?=[,.;:!?—]|\s(?:and|that|years\s(?:old|of\sage))\b)"
    ),
    re.compile(rf"{_TOLD}At\s{AGE},\s(?P<he>he|she)\b"),
    re.compile(
        rf"\b{NAME}(?:,\s(?:who|now\sthat\s(?:he|she)))?(?:\s(?:had|has)|[’'](?:d|s))?\s(?:{_NOW}\s)*turned\s{AGE}(?=[,.;:!?—]"
        r"|\s(?:and|at|in|on|that|this|last|a|the|yesterday|only|just)\b)"
    ),
)
_KIN = "|".join(sorted(KIN | {"little", "young"}))
_COUNTED = (
    r"\d|\w+teen\b|\w+ty\b|(?:\w+ty-)?(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)\b"  # of a list
)
_PLAIN = tuple(
    re.compile(pattern)
    for pattern in (
        rf"\b{NAME},\s(?:{_NOW}\s)?{AGE}(?:\syears\sold)?(?:\sand\s[a-z-]+)?,\s(?!{_COUNTED})",
        rf"(?:^|[.!?]”?\s){ANY_AGE}\syears\sold(?:\sand\s[a-z-]+)?,\s{NAME}\b(?![’'])",
        rf"\b{ANY_AGE}-year-old\s(?:(?:{_KIN})\s){{0,2}}{NAME}\b(?![’'])",
        rf"\b{NAME},\s(?:an?|the|his|her|their|my)\s(?:\w+\s)?{ANY_AGE}-year-old\b",
        rf"\b{NAME}\s\((?:aged\s)?{AGE}\)",
    )
)  # there no hour is meant
_PRONOUNS = {"m": "he", "f": "she"}
_OTHERS = PEOPLE | KIN


def ages_beside(seen: Seen) -> Iterator[PersonTrait]:
    """Of people of the cast: 'Ilse, at forty, …', 'Ilse, aged forty, …', 'Ilse was forty.', 'At forty, Ilse was …',
    'Ilse sat down. She was forty.', 'Ilse, who had turned forty at Easter', 'Ilse, forty, …', 'forty-year-old Ilse'."""
    cast = seen.book.cast
    genders = {person.id: person.gender for person in cast.people}
    for scene, paragraphs in enumerate(seen.texts):
        for paragraph, text in enumerate(paragraphs):
            for pattern in (*_PATTERNS, *_PLAIN):
                for match in pattern.finditer(text):
                    person, age = whose(cast, match["name"]), number(match["age"].lower())
                    grown = age and age > (YOUNG if pattern in _PLAIN else HOURS)
                    if person and grown and _is_plain(match.groupdict(), genders[person]):
                        yield PersonTrait(person, "age", str(age), scene, paragraph, *match.span("age"), BY_NAME)


def whose(cast: Cast, name: str) -> str:
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
