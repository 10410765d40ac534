"""Two people whose names a reader will confuse."""

from collections import Counter
from collections.abc import Iterator
from itertools import combinations, pairwise

from rapidfuzz.distance import OSA, Jaro

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.reading import lexicon
from afterdraft.whole.cast import Person
from afterdraft.whole.nicknames import same_given
from afterdraft.whole.turns import meant

NAMED = 3  # times that each is named at least; chosen on the demonstration book
SCENES = 2  # and in how many scenes
NEXT = 2  # scenes apart in which they are met near each other; chosen on the demonstration book
BEGINS = 4  # letters that names of six letters and more share at their beginning
OFTEN = 20  # times that each of two is named who share a first letter alone; chosen on the tuning half
TOGETHER = 3  # scenes in which both of them are named, likewise
ALONE = 0.3  # share of them in which the name stands alone, likewise
SHAPE = 0.55  # how alike such names are at least, by Jaro (1989): 0 to 1; likewise


def find(seen: Seen) -> Iterator[Finding]:
    spans = _spans(seen)
    people = [
        (one, called)
        for one in seen.book.cast.people
        if len(spans.get(one.id, ())) >= (OFTEN if one.narrator else NAMED)
        and (called := _called(one))
        and not seen.name(one.id).startswith("the ")
        and called in seen.name(one.id).lower()  # else the question would name them otherwise than it means
    ]
    done: set[frozenset[str]] = set()
    for (one, name), (other, also) in combinations(people, 2):
        if frozenset((name, also)) in done or _same_family(one, other):
            continue
        met, also_met = spans[one.id], spans[other.id]
        if _title(met) != _title(also_met):
            continue
        looks = one.gender == other.gender != "" and _same_shape(name, also) and _often(met, also_met)
        if _alike(name, also) or (looks and _is_alone(met, name) and _is_alone(also_met, also)):
            done.add(frozenset((name, also)))
            first, second = _nearest(_so_called(met, name), _so_called(also_met, also))
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


def _same_shape(one: str, other: str) -> bool:
    """Begin with one letter, and are as long and much alike to the eye."""
    if one == other or one[:1] != other[:1] or same_given(one, [other]) or abs(len(one) - len(other)) > 1:
        return False
    return Jaro.similarity(one, other) >= SHAPE


def _often(one: list[Span], other: list[Span]) -> bool:
    together = {span.scene for span in one} & {span.scene for span in other}
    return min(len(one), len(other)) >= OFTEN and len(together) >= TOGETHER


def _is_alone(spans: list[Span], name: str) -> bool:
    """Whether they go by that name and nothing beside it, often enough for a reader to have only that to go by."""
    return sum(one.quote.lower() == name for one in spans) >= ALONE * len(spans)


def _title(spans: list[Span]) -> str:
    """What mostly stands before their name, "" for nothing: 'Mr. Garner' and 'Garnet' are told apart by it."""
    words = (span.quote.lower().split()[0].rstrip(".") for span in spans)
    kept = Counter(word if word in lexicon.TITLES or word in lexicon.ROLES else "" for word in words)
    return kept.most_common(1)[0][0]


def _same_family(one: Person, other: Person) -> bool:
    """Whether they share a name, so that the reader has the rest to go by."""
    words = [{word for form in person.aliases for word in form.split()} for person in (one, other)]
    return bool((words[0] & words[1]) - lexicon.TITLES - lexicon.ROLES)


def _so_called(spans: list[Span], name: str) -> list[Span]:
    """Those with that name in them."""
    return [one for one in spans if name in one.quote.lower()] or spans


def _nearest(one: list[Span], other: list[Span]) -> tuple[Span, Span]:
    """Of two people, where they are named next to each other."""
    first = set(one)
    neighbours = pairwise(sorted({*one, *other}))
    pairs = [
        pair if pair[0] in first else pair[::-1] for pair in neighbours if (pair[0] in first) != (pair[1] in first)
    ]
    return min(pairs, key=lambda pair: (*_apart(*pair), pair))


def _apart(one: Span, other: Span) -> tuple[int, int]:
    """Scenes, then paragraphs."""
    scenes = abs(one.scene - other.scene)
    return scenes, 0 if scenes else abs(one.paragraph - other.paragraph)


def _finding(seen: Seen, one: Person, other: Person, first: Span, second: Span) -> Finding:
    names = [seen.name(person.id) for person in (one, other)]
    return Finding(
        evidence=tuple(seen.sentence(span) for span in (first, second)),
        strength=0.5 + 0.1 * (first.scene == second.scene),
        subject=" and ".join(sorted(name.lower() for name in names)),
        words={"one": names[0], "other": names[1]},
        people=(one.id, other.id),
    )


CHECK = Check(
    id="names alike",
    name="Names a reader may confuse",
    family="cast",
    looks_at="Two people whose names begin alike and differ by little, met in one scene or in neighbouring ones; and "
    "two of one sex, much on the page together, whose names have the first letter and the look in common.",
    method="Names that people mostly go by are compared letter by letter: the same first letter, and one letter's "
    "difference, or the same four first letters in longer names. With the first letter alone in common: the same "
    "length but for one letter, a likeness of 0.55 by Jaro (1989), each named twenty times, both in three "
    "scenes. Who mostly goes by a title and who by none, or by another, are not compared. Common practice; the "
    "figures are our own.",
    blind="Knows letters and not sounds.",
    reads=("words", "cast"),
    find=find,
    recipe=4,
)
