"""Somebody we have met who is brought in as if we had not."""

import re
from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.questions.speech import speech
from afterdraft.reading.mentions import form

_WHO = (
    r"(?:man|woman|girl|boy|fellow|person|lady|gentleman|youth|lad|chap|widow|child|stranger|servant|maid|nurse|doctor"
    r"|lawyer|solicitor|teacher|clerk|sergeant|constable|soldier|sailor|farmer|neighbou?r|colleague|student|pupil)"
)
_NAME = r"(?:(?:Mr|Mrs|Miss|Ms|Dr|Captain|Father|Sister|Pastor)\.?\s)?[A-Z][a-zé’']+(?:\s[A-Z][a-zé’']+)?"
_BROUGHT_IN = re.compile(
    rf"\b(?:was|is|came|met|saw|found|stood|sat|had|hired|by|with|there)\s(?:\w+\s)?an?\s"
    rf"(?:(?!for\b|of\b|that\b|every\b|to\b)[\w-]+,?\s){{0,4}}?{_WHO}\s(?:named|called|by\sthe\sname\sof)\s(?P<name>{_NAME})"
    rf"|\b[Aa]n?\s(?:[\w-]+,?\s){{1,7}}?by\sthe\sname\sof\s(?P<known>{_NAME})"
    rf"|\b(?:This|He|She|It)\swas\san?\s(?P<titled>(?:Mr|Mrs|Miss|Ms|Dr|Captain|Father|Sister|Pastor|Major|Colonel)\.?\s[A-Z]\w+),\swho\b"
)
_FULL = re.compile(r"[A-Z][a-zé’']+\s[A-Z][a-zé’']+")
_TO_SOMEBODY = re.compile(r"\b(?:you|your|yours)\b", re.IGNORECASE)  # a letter's reader may not know them


def find(seen: Seen) -> Iterator[Finding]:
    met = {(one.scene, one.person) for one in seen.book.appearances if one.presence != "mentioned"}
    for number in seen.scenes:
        for place, match in _brought_in(seen, number):
            name = match["name"] or match["known"] or match["titled"]
            person = seen.book.cast.by_form.get(form(name), "")
            known = _named_before(seen, number, name if not match["titled"] else name.split()[-1])
            named_so = " " in name or ((known and known.scene, person) in met and _is_all(seen, name))
            if known and named_so:
                yield _finding(seen, name, known, seen.span(number, place, *match.span()))
    yield from _with_an_age(seen)


def _with_an_age(seen: Seen) -> Iterator[Finding]:
    """Somebody whose full name and age are told together, outside speech, in two scenes."""
    told: dict[tuple[str, str, str], Span] = {}
    for one in seen.traits:
        if one.trait != "age":
            continue
        span = seen.sentence(seen.span(one.scene, one.paragraph, one.start, one.end))
        names = {found.group() for found in _FULL.finditer(span.quote)} & _forms(seen, one.person)
        if not names or speech(seen.texts[one.scene])(one.paragraph, one.start):
            continue
        known = told.setdefault((one.person, one.value, min(names)), span)
        if known.scene < span.scene:
            yield _finding(seen, min(names), known, span)
            told[one.person, one.value, min(names)] = span


def _forms(seen: Seen, person: str) -> frozenset[str]:
    """The names of one of the cast, as the book writes them."""
    found = (each.aliases for each in seen.book.cast.people if each.id == person)
    return frozenset(seen.spelled.get(alias, alias) for aliases in found for alias in aliases)


def _is_all(seen: Seen, name: str) -> bool:
    """Whether nobody has a surname behind it: 'a man called Ray' is then no Ray Pask."""
    longer = re.compile(rf"\b{re.escape(name)}\s[A-Z][a-z]")
    return not any(longer.search(text) for scene in seen.texts for text in scene)


def _brought_in(seen: Seen, number: int) -> Iterator[tuple[int, re.Match[str]]]:
    """Outside speech and what is set in."""
    spoken = speech(seen.texts[number])
    for place, text in enumerate(seen.texts[number]):
        if (number, place) not in seen.set_in and "\n" not in text:
            for match in _BROUGHT_IN.finditer(text):
                told = text[slice(*sentence(text, *match.span()))]
                if not _TO_SOMEBODY.search(told) and not spoken(place, match.start()):
                    yield place, match


def _named_before(seen: Seen, number: int, name: str) -> Span | None:
    """Where an earlier scene has the name first, outside speech."""
    stands = re.compile(rf"\b{re.escape(name)}\b")
    for earlier in range(number):
        if not any(name in text for text in seen.texts[earlier]):
            continue
        spoken = speech(seen.texts[earlier])
        for place, text in enumerate(seen.texts[earlier]):
            for match in stands.finditer(text):
                if not spoken(place, match.start()):
                    return seen.span(earlier, place, *match.span())
    return None


def _finding(seen: Seen, name: str, known: Span, again: Span) -> Finding:
    return Finding(
        evidence=(seen.sentence(known), seen.sentence(again)),
        strength=0.7,
        subject=f"introduced: {name.lower()}",
        words={"name": name},
    )


CHECK = Check(
    id="introduced",
    name="Somebody brought in twice",
    family="cast",
    looks_at="‘A woman named …’, ‘a vet by the name of …’, ‘this was a Mr …, who’, of somebody who was met by that "
    "name in an earlier scene; and somebody whose full name and age are told together twice.",
    method="Words that bring somebody in, outside speech and letters, with a full name that an earlier scene has "
    "outside speech, or another name of the cast who was on the page there. Common practice of copy editors.",
    blind="People brought in anew in other words. Somebody who is new to the one whose scene it is, and not to "
    "readers, is asked about.",
    reads=("words", "cast"),
    find=find,
    recipe=3,
)
