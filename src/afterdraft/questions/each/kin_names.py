"""One relation of somebody under two names."""

from collections import defaultdict
from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.reading import lexicon
from afterdraft.whole.nicknames import same_given
from afterdraft.whole.traits import PersonTrait

SURE = 0.75  # of whose relation it is
ONE = frozenset({"wife", "husband", "mother", "father"})  # of which nobody has two at once


def find(seen: Seen) -> Iterator[Finding]:
    by: defaultdict[tuple[str, str], list[PersonTrait]] = defaultdict(list)
    for one in seen.traits:
        relation, _, name = one.value.partition(": ")
        if one.trait == "kin" and relation in ONE and _given(name) and one.sure >= SURE:
            by[one.person, relation].append(one)
    for (person, relation), said in by.items():
        first, known = said[0], _given(said[0].value.partition(": ")[2])
        for other in said[1:]:
            also = _given(other.value.partition(": ")[2])
            if known[0] != also[0] and not same_given(known[0], [also[0]]) and not _is_one(seen, known, also):
                yield _finding(seen, person, relation, first, other)
                break


def _given(name: str) -> list[str]:
    """The words of a name that are not titles; none where a title makes it a surname's."""
    words = name.lower().split()
    return [] if words[:1] and words[0].rstrip(".") in lexicon.TITLES else words


def _is_one(seen: Seen, name: list[str], also: list[str]) -> bool:
    """Whether the book has both names for one person."""
    people = seen.book.cast.by_form
    one, other = (people.get(" ".join(words)) or people.get(words[0]) for words in (name, also))
    return one is not None and one == other


def _finding(seen: Seen, person: str, relation: str, one: PersonTrait, other: PersonTrait) -> Finding:
    name = seen.name(person)
    names = [each.value.partition(": ")[2].title() for each in (one, other)]
    return Finding(
        evidence=(_span(seen, one), _span(seen, other)),
        strength=0.8,
        subject=f"{relation} of {name.lower()}",
        words={"name": name, "relation": relation, "first": names[0], "other": names[1]},
        people=(person,),
    )


def _span(seen: Seen, one: PersonTrait) -> Span:
    start, end = sentence(seen.texts[one.scene][one.paragraph], one.start, one.end)
    return seen.span(one.scene, one.paragraph, start, end)


CHECK = Check(
    id="relation",
    name="One relation with two names",
    family="continuity",
    looks_at="A wife, husband, mother or father of one person who is named in two ways.",
    method="‘His wife Ada’ and its like, where it is known well enough whose wife; given names that are no short "
    "forms of each other, and that the book does not have for one person. The rule is our own.",
    blind="Second marriages are asked about. Relations that are told in other words.",
    reads=("words", "cast"),
    find=find,
)
