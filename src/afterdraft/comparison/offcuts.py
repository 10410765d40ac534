"""What the old draft had and the new one has not: no sentence of hers is lost."""

from collections import defaultdict
from collections.abc import Iterator, Sequence
from collections.abc import Set as AbstractSet
from dataclasses import dataclass

from afterdraft.comparison.changes import changes
from afterdraft.comparison.comparison import Comparison, Pair
from afterdraft.comparison.standing import Standing
from afterdraft.manuscript.words import count

FEWEST = 4  # words of an offcut inside a paragraph that lives on: less is a word changed


@dataclass(frozen=True, slots=True)
class Offcut:
    """A passage of the old draft that has no place in the new one."""

    scene: int  # of the old draft
    paragraph: int  # story paragraph
    start: int  # half-open, characters
    end: int


def offcuts(
    comparison: Comparison, *, there: Standing | None = None, told: AbstractSet[str] = frozenset()
) -> tuple[Offcut, ...]:
    """In the old draft's order: whole paragraphs, and passages of those that live on.

    What stands word for word somewhere else in the new draft is none. For several drafts: `there` has the paragraphs of
    the new one, and `told` those that are passed over, as they stand in a draft that was told before.
    """
    old, new = comparison.old, comparison.new
    there = there or Standing(new.paragraphs)
    partners: defaultdict[int, list[Pair]] = defaultdict(list)
    for pair in comparison.pairs:
        partners[pair.old].append(pair)
    scenes = old.scene_at()
    return tuple(
        Offcut(scenes[paragraph], paragraph, start, end)
        for paragraph, text in enumerate(old.paragraphs)
        if text not in told
        for start, end in _without_place(text, partners.get(paragraph, ()), new.paragraphs)
        if not there.has(text[start:end])
    )


def _without_place(text: str, partners: Sequence[Pair], new: Sequence[str]) -> Iterator[tuple[int, int]]:
    """The whole paragraph, or what was cut from it; a single partner may have kept all but too little."""
    if not partners:
        yield 0, len(text)
    elif len(partners) > 1 or (partners[0].similarity < 1 and count(text) - partners[0].kept >= FEWEST):
        yield from _gone(text, "\n".join(new[pair.new] for pair in partners))


def _gone(text: str, beside: str) -> Iterator[tuple[int, int]]:
    """Passages of `text` that were cut or replaced, of a few words and more, without white space at their ends."""
    for change in changes(text, beside):
        start, end = change.old
        piece = text[start:end]
        if change.kind in ("cut", "replaced") and count(piece) >= FEWEST:
            yield start + len(piece) - len(piece.lstrip()), end - (len(piece) - len(piece.rstrip()))
