"""One relation of somebody under two names."""

import re
from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.questions.whose import NAMED, Whose
from afterdraft.reading import lexicon
from afterdraft.whole.nicknames import same_given

SURE = 0.75  # of whose relation it is
ONE = frozenset({"wife", "husband", "mother", "father"})  # of which nobody has two at once


_OWN = r"(?:his|her|my)"
_KIN = rf"(?P<kin>{'|'.join(sorted(ONE))}|old woman)"
_NAME = r"(?P<name>[A-Z][\w’-]+(?: (?:[A-Z][\w’-]+))*)"
_PATTERNS = tuple(
    re.compile(pattern)
    for pattern in (
        rf"\b{_NAME}, (?P<own>{_OWN}) {_KIN}\b(?! [A-Z])",
        rf"\b(?P<own>[A-Z][\w-]+)’s {_KIN} (?:was|is) (?:called|named) {_NAME}",
        rf"\b(?P<own>{_OWN}) {_KIN} (?:was|is) (?:called|named) {_NAME}",
        rf"\b(?P<own>{_OWN}) {_KIN}(?:’s name (?:was|is)|, whose name (?:was|is)|, called|, named) {_NAME}",
        rf"\b{_NAME}(?:—|, )for so (?P<own>[A-Z][\w-]+)’s {_KIN} was called",
    )
)  # besides ‘his wife Ada’, which is read off every scene


@dataclass(frozen=True, slots=True)
class _Told:
    person: str
    relation: str
    given: tuple[str, ...]  # words of the name that are not titles
    name: str
    span: Span


def find(seen: Seen) -> Iterator[Finding]:
    by: defaultdict[tuple[str, str], list[_Told]] = defaultdict(list)
    for one in sorted([*_read(seen), *_written(seen)], key=lambda one: one.span):
        by[one.person, one.relation].append(one)
    for first, *others in by.values():
        differing: list[_Told] = []
        for one in others:
            if all(_is_another(seen, known, one) for known in (first, *differing)):
                differing.append(one)
        if differing:
            yield _finding(seen, first, differing)


def _read(seen: Seen) -> Iterator[_Told]:
    for one in seen.traits:
        relation, _, name = one.value.partition(": ")
        if one.trait == "kin" and relation in ONE and (given := _given(name)) and one.sure >= SURE:
            yield _Told(
                one.person, relation, given, name.title(), _sentence(seen, one.scene, one.paragraph, one.start, one.end)
            )


def _written(seen: Seen) -> Iterator[_Told]:
    whose = Whose(seen)
    for number, scene in enumerate(seen.texts):
        for place, text in enumerate(scene):
            for match in (match for pattern in _PATTERNS for match in pattern.finditer(text)):
                owner = whose.last(number, place, *match.span("own")) or _named(seen, match["own"])
                given = _given(match["name"])
                if owner and owner[1] >= SURE and given:
                    relation = "wife" if match["kin"] == "old woman" else match["kin"]
                    yield _Told(owner[0], relation, given, match["name"], _sentence(seen, number, place, *match.span()))


def _named(seen: Seen, name: str) -> tuple[str, float] | None:
    person = seen.book.cast.by_form.get(name.lower())
    return (person, NAMED) if person else None


def _given(name: str) -> tuple[str, ...]:
    """The words of a name, where no title makes it a surname's."""
    words = tuple(name.lower().split())
    return () if words[:1] and words[0].rstrip(".") in lexicon.TITLES else words


def _is_another(seen: Seen, one: _Told, other: _Told) -> bool:
    """Whether the names are two, and the book has them not for one person."""
    people = seen.book.cast.by_form
    known, also = (people.get(" ".join(each.given)) or people.get(each.given[0]) for each in (one, other))
    same = one.given[0] == other.given[0] or same_given(one.given[0], [other.given[0]])
    return not same and (known is None or known != also)


def _finding(seen: Seen, one: _Told, others: Sequence[_Told]) -> Finding:
    name = seen.name(one.person)
    return Finding(
        evidence=(one.span, *(other.span for other in others)),
        strength=0.8,
        subject=f"{one.relation} of {name.lower()}",
        words={"name": name, "relation": one.relation, "first": one.name, "other": others[0].name},
        people=(one.person,),
    )


def _sentence(seen: Seen, number: int, paragraph: int, start: int, end: int) -> Span:
    return seen.span(number, paragraph, *sentence(seen.texts[number][paragraph], start, end))


CHECK = Check(
    id="relation",
    name="One relation with two names",
    family="continuity",
    looks_at="A wife, husband, mother or father of one person who is named in two ways.",
    method="‘His wife Ada’, ‘Ada, his wife’, ‘his wife is called Ada’ and the like, where it is known well enough "
    "whose wife; given names that are no short "
    "forms of each other, and that the book does not have for one person. The rule is our own.",
    blind="Second marriages are asked about. Relations that are told in other words.",
    reads=("words", "cast"),
    find=find,
    recipe=2,
)
