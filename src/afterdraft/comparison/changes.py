"""What changed between two texts of one passage, word by word, and letter by letter where only signs did."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Literal

from rapidfuzz.distance import Indel, Levenshtein

from afterdraft.comparison.lexicon import Lexicon

Kind = Literal["kept", "replaced", "cut", "added"]
TOKEN = re.compile(r"\S+")
MANY = 20_000  # words of both texts together: beyond them the middle is told as replaced, for time's sake


@dataclass(frozen=True, slots=True)
class Change:
    """A stretch of both texts: half-open ranges of characters. They follow on one another and cover both texts."""

    kind: Kind
    old: tuple[int, int]
    new: tuple[int, int]


def changes(old: str, new: str) -> tuple[Change, ...]:
    """In order. A kept word whose punctuation or capitals differ is told as replaced, sign by sign."""
    first, second = _tokens(old), _tokens(new)
    lexicon = Lexicon()
    words = [[lexicon[token] or lexicon.character(f"\0{token}") for token, _, _ in side] for side in (first, second)]
    found = [change for stretch in _stretches(words[0], words[1]) for change in _told(stretch, first, second)]
    return tuple(_merged(_covering(found, len(old), len(new))))


def changed_words(old: str, new: str) -> int:
    """How many words to replace, cut or put in to come from one to the other; punctuation does not count.

    Method: edit distance over words (Levenshtein 1966).
    """
    lexicon = Lexicon()
    first, second = lexicon.words(old), lexicon.words(new)
    front = _shared(first, second)
    back = _shared(first[front:][::-1], second[front:][::-1])
    first, second = first[front : len(first) - back], second[front : len(second) - back]
    many = len(first) + len(second) > MANY
    return max(len(first), len(second)) if many else Levenshtein.distance(first, second)


Token = tuple[str, int, int]  # itself, start, end
Stretch = tuple[bool, int, int, int, int]  # kept; tokens of old, of new, half-open


def _tokens(text: str) -> list[Token]:
    return [(match.group(), match.start(), match.end()) for match in TOKEN.finditer(text)]


def _stretches(old: Sequence[str], new: Sequence[str]) -> Iterator[Stretch]:
    """Alternately kept and not. What is the same at both ends is set apart first: most passages changed little."""
    front = _shared(old, new)
    back = _shared(old[front:][::-1], new[front:][::-1])
    ends = len(old) - back, len(new) - back
    yield True, 0, front, 0, front
    if sum(ends) - 2 * front > MANY:
        yield False, front, ends[0], front, ends[1]
    else:
        middle = Indel.opcodes("".join(old[front : ends[0]]), "".join(new[front : ends[1]]))
        for op in middle:
            at = front + op.src_start, front + op.src_end, front + op.dest_start, front + op.dest_end
            yield op.tag == "equal", *at
    yield True, ends[0], len(old), ends[1], len(new)


def _shared(old: Sequence[str], new: Sequence[str]) -> int:
    """How many tokens are the same from the beginning."""
    return next((at for at, (a, b) in enumerate(zip(old, new, strict=False)) if a != b), min(len(old), len(new)))


def _told(stretch: Stretch, first: Sequence[Token], second: Sequence[Token]) -> Iterator[Change]:
    """The stretch in characters; a kept one token by token where their signs differ."""
    kept, start, end, there, until = stretch
    if not kept:
        yield Change("replaced", _range(first, start, end), _range(second, there, until))
        return
    for (token, at, _), (other, place, _) in zip(first[start:end], second[there:until], strict=True):
        if token == other:
            yield Change("kept", (at, at + len(token)), (place, place + len(other)))
            continue
        for op in Indel.opcodes(token, other):
            kind: Kind = "kept" if op.tag == "equal" else "replaced"
            yield Change(kind, (at + op.src_start, at + op.src_end), (place + op.dest_start, place + op.dest_end))


def _range(tokens: Sequence[Token], start: int, end: int) -> tuple[int, int]:
    """Of characters; empty, at the right place, for no tokens."""
    if start < end:
        return tokens[start][1], tokens[end - 1][2]
    at = tokens[start - 1][2] if start else 0
    return at, at


def _covering(found: Sequence[Change], old: int, new: int) -> Iterator[Change]:
    """With the white space between: it belongs to what follows it, and at the end to what stands before."""
    at, there = 0, 0
    for place, change in enumerate(found):
        last = place == len(found) - 1
        ends = (old, new) if last else (max(at, change.old[1]), max(there, change.new[1]))
        yield Change(change.kind, (at, ends[0]), (there, ends[1]))
        at, there = ends
    if not found and (old or new):
        yield Change("replaced", (0, old), (0, new))


def _merged(found: Iterator[Change]) -> Iterator[Change]:
    """Neighbours of one kind are one; what is only on one side is cut, or added."""
    open_one: Change | None = None
    for change in found:
        if change.old[0] == change.old[1] and change.new[0] == change.new[1]:
            continue
        if open_one is not None and (open_one.kind == "kept") == (change.kind == "kept"):
            open_one = Change(open_one.kind, (open_one.old[0], change.old[1]), (open_one.new[0], change.new[1]))
            continue
        if open_one is not None:
            yield _named(open_one)
        open_one = change
    if open_one is not None:
        yield _named(open_one)


def _named(change: Change) -> Change:
    if change.kind == "kept":
        return change
    kind: Kind = "replaced"
    if change.old[0] == change.old[1]:
        kind = "added"
    elif change.new[0] == change.new[1]:
        kind = "cut"
    return Change(kind, change.old, change.new)
