"""What the book says that its people are like, each with where it says so. Guesses: whose grey eyes are 'hers'?"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import combinations

from afterdraft.reading import lexicon
from afterdraft.reading.facts import SceneFacts
from afterdraft.whole.book import BookRead, genders
from afterdraft.whole.speakers import Spoken
from afterdraft.whole.traits_pronouns import antecedents
from afterdraft.whole.turns import meant

BY_NAME = 0.9  # chosen by hand


@dataclass(frozen=True, slots=True)
class PersonTrait:
    """Code points `start` to `end` of the scene's paragraph say it; `sure` is of whose it is."""

    person: str
    trait: str  # eyes, hair, beard, age, height, hand, scar, limp, kin, trade, origin, title
    value: str
    scene: int
    paragraph: int
    start: int
    end: int
    sure: float


def find_traits(book: BookRead, scenes: Sequence[SceneFacts]) -> tuple[PersonTrait, ...]:
    """In the order of the text; what has no owner in the cast is left out."""
    found = [one for number in range(len(scenes)) for one in _in_scene(book, number, scenes[number])]
    return tuple(sorted(found, key=lambda one: (one.scene, one.paragraph, one.start)))


def _in_scene(book: BookRead, number: int, scene: SceneFacts) -> Iterator[PersonTrait]:
    owners = _owners(book, number, scene)
    for one in scene.traits:
        if owner := owners[one.owner]:
            person, sure = owner
            yield PersonTrait(person, one.kind, one.value, number, one.paragraph, one.start, one.end, sure)
    for mention, owner in zip(scene.mentions, owners, strict=True):
        title = mention.form.split(" ", 1)[0]
        if owner and mention.kind == "name" and " " in mention.form and title in lexicon.TITLES:
            yield PersonTrait(owner[0], "title", title, number, mention.paragraph, mention.start, mention.end, owner[1])


def _owners(book: BookRead, number: int, scene: SceneFacts) -> list[tuple[str, float] | None]:
    """Beside each mention, whom it means, and how sure that is."""
    people = meant(scene, book.told[number])
    guesses = antecedents(scene, people, book.spoken[number], genders(book.cast.people))
    found: list[tuple[str, float] | None] = []
    for mention, person, guess in zip(scene.mentions, people, guesses, strict=True):
        if person:
            found.append((person, BY_NAME))
        elif guess:
            found.append(guess)
        elif mention.kind == "self" and mention.spoken:
            found.append(_speaker(book.spoken[number], scene, mention.paragraph, mention.start))
        else:
            found.append(None)
    return found


def _speaker(spoken: Sequence[Spoken], scene: SceneFacts, paragraph: int, place: int) -> tuple[str, float] | None:
    """Who says 'I' there."""
    for one in spoken:
        quote = scene.quotes[one.quote]
        if quote.paragraph == paragraph and quote.start <= place < quote.end and one.speaker:
            return one.speaker, round(one.sure * BY_NAME, 2)
    return None


def can_both_be(trait: str, one: str, other: str) -> bool:
    """Whether one person can be said to be both: shades go with colours, and hair turns grey.

    A scar or a lame leg is on one side. Ages are not judged here: they need story time. Kin, trade, title and
    origin can be several.
    """
    if trait in ("scar", "limp"):
        (side, part), (of, where) = one.split(), other.split()
        return side == of or part != where
    if one == other or trait not in _APART:
        return True
    return not any(one in some and other in others for pair in _APART[trait] for some, others in (pair, pair[::-1]))


_SHAPES = (frozenset({"curly"}), frozenset({"straight"}))
_HAIR = (_SHAPES, *combinations((frozenset({"fair"}), frozenset({"red"}), frozenset({"black", "dark"})), 2))
_APART: Mapping[str, Sequence[tuple[frozenset[str], frozenset[str]]]] = {
    "eyes": (
        (frozenset({"dark", "black", "brown"}), frozenset({"blue", "grey", "green", "violet", "light", "amber"})),
        (frozenset({"green"}), frozenset({"blue", "grey", "violet", "amber"})),
        (frozenset({"hazel"}), frozenset({"blue", "grey", "violet", "black"})),
        (frozenset({"blue"}), frozenset({"violet", "amber"})),
    ),
    "hair": _HAIR,
    "beard": _HAIR,
    "height": ((frozenset({"tall"}), frozenset({"short"})),),
    "hand": ((frozenset({"left"}), frozenset({"right"})),),
}
