"""What the old draft had and the new one has not: no sentence of hers is lost."""

from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass

from afterdraft.comparison.changes import changes
from afterdraft.comparison.comparison import Comparison
from afterdraft.comparison.lexicon import Lexicon
from afterdraft.manuscript.words import count

FEWEST = 4  # words of an offcut inside a paragraph that lives on: less is a word changed


@dataclass(frozen=True, slots=True)
class Offcut:
    """A passage of the old draft that has no place in the new one."""

    scene: int  # of the old draft
    paragraph: int  # story paragraph
    start: int  # half-open, characters
    end: int


def offcuts(comparison: Comparison) -> tuple[Offcut, ...]:
    """In the old draft's order: whole paragraphs, and passages of those that live on.

    What stands word for word somewhere else in the new draft is none.
    """
    old, new = comparison.old, comparison.new
    partners: defaultdict[int, list[int]] = defaultdict(list)
    for pair in comparison.pairs:
        if pair.similarity < 1 or pair.old in partners:
            partners[pair.old].append(pair.new)
    whole = {pair.old for pair in comparison.pairs}
    lexicon = Lexicon()
    there = "\n".join(map(lexicon.words, new.paragraphs))
    scenes = old.scene_at()
    found = []
    for paragraph, text in enumerate(old.paragraphs):
        beside = "\n".join(new.paragraphs[one] for one in partners[paragraph]) if paragraph in partners else ""
        places = _gone(text, beside) if beside else ([] if paragraph in whole else [(0, len(text))])
        found += [
            Offcut(scenes[paragraph], paragraph, start, end)
            for start, end in places
            if (words := lexicon.words(text[start:end])) and words not in there
        ]
    return tuple(found)


def _gone(text: str, beside: str) -> Iterator[tuple[int, int]]:
    """Passages of `text` that were cut or replaced, of a few words and more, without white space at their ends."""
    for change in changes(text, beside):
        start, end = change.old
        piece = text[start:end]
        if change.kind in ("cut", "replaced") and count(piece) >= FEWEST:
            yield start + len(piece) - len(piece.lstrip()), end - (len(piece) - len(piece.rstrip()))
