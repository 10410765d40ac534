"""What the book says that its people are like, each with where it says so. Guesses: whose grey eyes are 'hers'?"""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import combinations

from afterdraft.reading import lexicon
from afterdraft.reading.facts import SceneFacts
from afterdraft.whole.book import BookRead
from afterdraft.whole.owners import Owners, owners_in


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


def find_traits(
    book: BookRead, scenes: Sequence[SceneFacts], owners: Callable[[int], Owners] | None = None
) -> tuple[PersonTrait, ...]:
    """In the order of the text; what has no owner in the cast is left out. `owners` gives a scene's, where known."""
    whose = owners or (lambda number: owners_in(book, number, scenes[number]))
    found = [one for number, scene in enumerate(scenes) for one in _in_scene(number, scene, whose(number))]
    return tuple(sorted(found, key=lambda one: (one.scene, one.paragraph, one.start)))


def _in_scene(number: int, scene: SceneFacts, owners: Owners) -> Iterator[PersonTrait]:
    for one in scene.traits:
        if owner := owners[one.owner]:
            person, sure = owner
            yield PersonTrait(person, one.kind, one.value, number, one.paragraph, one.start, one.end, sure)
    for mention, owner in zip(scene.mentions, owners, strict=True):
        title = mention.form.split(" ", 1)[0]
        if owner and mention.kind == "name" and " " in mention.form and title in lexicon.TITLES:
            yield PersonTrait(owner[0], "title", title, number, mention.paragraph, mention.start, mention.end, owner[1])


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
