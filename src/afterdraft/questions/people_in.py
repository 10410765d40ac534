"""Who is named in a paragraph, and whom ‘he’ and ‘she’ mean there, from its words and the cast alone: talk, letters and
the dead, whom reading seldom knows, with it."""

import re
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass

from afterdraft.questions.ages_beside import names_them
from afterdraft.questions.seen import Seen
from afterdraft.reading.lexicon import TITLES, words_of
from afterdraft.whole.turns import resolve

_KIN = {
    "father": ("father", "m"),
    "dad": ("father", "m"),
    "papa": ("father", "m"),
    "mother": ("mother", "f"),
    "mum": ("mother", "f"),
    "mom": ("mother", "f"),
    "mam": ("mother", "f"),
    "husband": ("husband", "m"),
    "wife": ("wife", "f"),
}  # of whom everybody has one
_NAME = re.compile(
    rf"\b(?P<whose>[Mm]y|[Oo]ur|[Hh]is|[Hh]er|[A-Z][a-z]+[’']s)\s(?:(?:late|poor|dear|own)\s)?(?P<kin>{'|'.join(_KIN)})\b(?![’'-])"
    r"|\b(?P<he>[Hh]e|[Ss]he)\b|\b(?P<name>[A-Z][a-z]+(?:\s[A-Z][a-z]+)?)\b(?![’']s\b(?!\s(?:dead|been|gone|in|death|funeral)\b))"
)
_NO_NAMES = words_of(
    """
    the a an and but or if so as at in on of it he she they we you i his her their our my your this that these those
    there then when where who what why how yes no not now well oh ah three four five six seven eight nine ten twenty
    thirty forty fifty monday tuesday wednesday thursday friday saturday sunday january february march april may
    june july august september october november december christmas easter god lord heaven
    """
)
_SMALL = re.compile(r"\b[a-z]+\b")


@dataclass(frozen=True, slots=True)
class Somebody:
    key: str  # id in the cast, or the first name in small letters; "" for a pronoun that means nobody named
    name: str  # as it stands there
    gender: str  # "m", "f" or ""
    start: int
    end: int


def small_words(seen: Seen) -> frozenset[str]:
    """All that the book writes small: what is among them is no name where it stands alone."""
    return frozenset(word for scene in seen.texts for text in scene for word in _SMALL.findall(text))


def people_in(
    seen: Seen, text: str, small: frozenset[str] = frozenset(), me: Callable[[int], str] = lambda _: ""
) -> Iterator[Somebody]:
    """Names, ‘my father’ and the like, and the pronouns that mean the last one of their gender, in order; `me` tells
    who says ‘my’ at a place of the text, or whom ‘her’ means there, where the text names nobody before."""
    last: dict[str, Somebody] = {}
    for match in _NAME.finditer(text):
        if match["kin"]:
            if one := _kin(seen, match, last, me):
                last[one.gender] = one
                yield one
        elif match["he"]:
            gender = "m" if match["he"].lower() == "he" else "f"
            before = last.get(gender) or last.get("")
            yield Somebody(before.key if before else "", before.name if before else "", gender, *match.span())
        elif one := _named(seen, match, small):
            if one.key != one.name.lower():  # a name alone that nobody of the cast bears may be a town's
                last[one.gender] = one
            yield one


def _kin(seen: Seen, match: re.Match[str], last: Mapping[str, Somebody], me: Callable[[int], str]) -> Somebody | None:
    """‘Her husband’, of whoever of the cast is meant by ‘her’."""
    whose, (kin, gender) = match["whose"], _KIN[match["kin"]]
    if whose.lower() in ("my", "our"):
        owner = me(match.start())
    elif whose.lower() in ("his", "her"):
        before = last.get("m" if whose.lower() == "his" else "f")
        owner = before.key if before else me(match.start())
    else:
        owner = _of_the_cast(seen, whose[:-2])
    name = seen.name(owner) if owner else ""
    return Somebody(f"{kin} of {owner}", f"{name}’s {kin}", gender, *match.span()) if name else None


def _named(seen: Seen, match: re.Match[str], small: frozenset[str]) -> Somebody | None:
    first, *more = match["name"].split()
    start, name = match.start(), match["name"]
    if first.lower() in _NO_NAMES:
        if not more or more[0].lower() in _NO_NAMES:
            return None
        name, start = more[0], match.end() - len(more[0])
    person = _of_the_cast(seen, name)
    gender = next((str(it.gender) for it in seen.book.cast.people if it.id == person), "")
    plain = len(name.split()) > 1 or bool(person) or name.lower() not in small
    return Somebody(person or name.split()[0].lower(), name, gender, start, match.end()) if plain else None


def _of_the_cast(seen: Seen, name: str) -> str:
    """Who bears it, by more than the surname."""
    form = " ".join(word for word in name.lower().split() if word not in TITLES)
    person = resolve(form, seen.book.cast.by_form)
    return person if person and names_them(seen.book.cast, person, name) else ""
