"""Two people whose names a reader will confuse."""

from collections.abc import Iterator
from itertools import combinations

from rapidfuzz.distance import OSA

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.reading import lexicon
from afterdraft.whole.cast import Person
from afterdraft.whole.nicknames import same_given
from afterdraft.whole.turns import meant

NAMED = 3  # times that each is named at least; chosen on the demonstration book
SCENES = 2  # and in how many scenes
NEXT = 2  # scenes apart in which they are met near each other; chosen on the demonstration book
BEGINS = 4  # letters that names of six letters and more share at their beginning


def find(seen: Seen) -> Iterator[Finding]:
    spans = _spans(seen)
    people = [
        (one, called)
        for one in seen.book.cast.people
        if len(spans.get(one.id, ())) >= NAMED and (called := _called(one)) and not one.narrator
    ]
    done: set[frozenset[str]] = set()
    for (one, name), (other, also) in combinations(people, 2):
        if _alike(name, also) and not _same_family(one, other) and frozenset((name, also)) not in done:
            done.add(frozenset((name, also)))
            first, second = _nearest(_so_called(spans[one.id], name), _so_called(spans[other.id], also))
            if abs(first.scene - second.scene) <= NEXT:
                yield _finding(seen, one, other, first, second)


def _spans(seen: Seen) -> dict[str, list[Span]]:
    """Where people are named by name, of those who are named in several scenes."""
    found: dict[str, list[Span]] = {}
    for number, scene in enumerate(seen.facts):
        for mention, person in zip(scene.mentions, meant(scene, seen.book.cast), strict=True):
            if person and mention.kind == "name":
                span = seen.span(number, mention.paragraph, mention.start, mention.end)
                found.setdefault(person, []).append(span)
    return {person: spans for person, spans in found.items() if len({one.scene for one in spans}) >= SCENES}


def _called(person: Person) -> str:
    """The name they mostly go by, without titles; "" for a role."""
    for form in person.aliases:
        words = [word for word in form.split() if word not in lexicon.TITLES and word not in lexicon.ROLES]
        if words:
            return words[0] if len(words) > 1 and words[0] != form.split()[-1] else words[-1]
    return ""


def _alike(one: str, other: str) -> bool:
    """Begin and sound alike; not short forms of one name, which are a family's own affair."""
    if one == other or one[:1] != other[:1] or same_given(one, [other]):
        return False
    short, long = sorted((one, other), key=len)
    if len(long) - len(short) > 1 or len(short) < 3:
        return False
    if len(long) >= 6 and one[:BEGINS] == other[:BEGINS]:
        return OSA.distance(one, other) <= 3
    return OSA.distance(one, other) <= 1


def _same_family(one: Person, other: Person) -> bool:
    """Whether they share a name, so that the reader has the rest to go by."""
    words = [{word for form in person.aliases for word in form.split()} for person in (one, other)]
    return bool((words[0] & words[1]) - lexicon.TITLES - lexicon.ROLES)


def _so_called(spans: list[Span], name: str) -> list[Span]:
    """Those with that name in them."""
    return [one for one in spans if name in one.quote.lower()] or spans


def _nearest(one: list[Span], other: list[Span]) -> tuple[Span, Span]:
    pairs = ((first, second) for first in one for second in other)
    return min(pairs, key=lambda pair: (abs(pair[0].scene - pair[1].scene), pair))


def _finding(seen: Seen, one: Person, other: Person, first: Span, second: Span) -> Finding:
    names = [seen.name(person.id) for person in (one, other)]
    return Finding(
        evidence=tuple(_sentence(seen, span) for span in (first, second)),
        strength=0.5 + 0.1 * (first.scene == second.scene),
        subject=" and ".join(sorted(name.lower() for name in names)),
        words={"one": names[0], "other": names[1]},
        people=(one.id, other.id),
    )


def _sentence(seen: Seen, one: Span) -> Span:
    return seen.span(one.scene, one.paragraph, *sentence(seen.texts[one.scene][one.paragraph], one.start, one.end))


CHECK = Check(
    id="names alike",
    name="Names a reader may confuse",
    family="cast",
    looks_at="Two people whose names begin alike and differ by little, met in one scene or in neighbouring ones.",
    method="Names that people mostly go by are compared letter by letter: the same first letter, and one letter's "
    "difference, or the same four first letters in longer names. Common practice.",
    blind="Knows letters and not sounds. Says nothing of names that share only a first letter.",
    reads=("words", "cast"),
    find=find,
)
