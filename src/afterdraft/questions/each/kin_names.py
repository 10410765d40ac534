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
from afterdraft.whole.given_names import FEMALE, MALE
from afterdraft.whole.nicknames import same_given

SURE = 0.5  # of whose relation it is; chosen on the tuning half
ONE = frozenset({"wife", "husband", "mother", "father"})  # of which nobody has two at once


_KIN = rf"(?:(?:late|poor|dear|own|good|old|young) )?(?P<kin>{'|'.join(sorted(ONE))}|old woman)"
_NAME = r"(?P<name>[A-Z][\w-]+(?: [A-Z][\w-]+)*)"
_OWN = r"(?P<own>[Hh]is|[Hh]er|[Mm]y|(?:[A-Z][\w.]+ )*[A-Z][\w-]+(?=[’']s))(?:[’']s)?"
_CALLED = r"(?:[’']s name (?:was|is)|,? whose name (?:was|is)|,? called|,? named| (?:was|is) (?:called|named))"
_PATTERNS = tuple(
    re.compile(pattern)
    for pattern in (
        rf"\b{_OWN} {_KIN}(?:{_CALLED})? {_NAME}",
        rf"\b{_OWN} {_KIN}, {_NAME},",
        rf"\b{_NAME}, {_OWN} {_KIN}\b(?! [A-Z])",
        rf"\b{_NAME}(?:—|, )for so {_OWN} {_KIN} was called",
    )
)


@dataclass(frozen=True, slots=True)
class _Told:
    person: str
    relation: str
    given: tuple[str, ...]  # words of the name that are not titles
    name: str
    span: Span


def find(seen: Seen) -> Iterator[Finding]:
    by: defaultdict[tuple[str, str], list[_Told]] = defaultdict(list)
    for one in sorted(_told(seen), key=lambda one: one.span):
        by[one.person, one.relation].append(one)
    for first, *others in by.values():
        differing: list[_Told] = []
        for one in others:
            if all(_is_another(seen, known, one) for known in (first, *differing)):
                differing.append(one)
        if differing:
            yield _finding(seen, first, differing)


def _told(seen: Seen) -> Iterator[_Told]:
    whose = Whose(seen)
    for number, scene in enumerate(seen.texts):
        for place, text in enumerate(scene):
            for match in (match for pattern in _PATTERNS for match in pattern.finditer(text)):
                owner = whose.last(number, place, *match.span("own")) or _named(seen, match["own"])
                given = _given(seen, match["name"])
                if owner and owner[1] >= SURE and given:
                    relation = "wife" if match["kin"] == "old woman" else match["kin"]
                    yield _Told(owner[0], relation, given, match["name"], _sentence(seen, number, place, *match.span()))


def _named(seen: Seen, name: str) -> tuple[str, float] | None:
    person = seen.book.cast.by_form.get(name.lower())
    return (person, NAMED) if person else None


def _given(seen: Seen, name: str) -> tuple[str, ...]:
    """The words of a name that somebody bears as given: not behind a title, and not the name of a place or a feast."""
    words = tuple(name.lower().split())
    known = len(words) > 1 or words[0] in FEMALE | MALE or words[0] in seen.book.cast.by_form
    return words if known and words[0].rstrip(".") not in lexicon.TITLES else ()


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
    recipe=3,
)
