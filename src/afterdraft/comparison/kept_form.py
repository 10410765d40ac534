"""A comparison as plain JSON data, without the texts: what a book keeps, so that no page waits for comparing."""

from collections.abc import Iterator, Sequence
from dataclasses import astuple
from hashlib import sha256
from json import dumps
from typing import Any

from afterdraft.comparison.comparison import Block, Comparison, Fate, Link, Pair, Totals
from afterdraft.comparison.told import Told

RECIPE = 1  # raised with every change after which the same two drafts may be told otherwise, or kept otherwise
Form = dict[str, Any]  # JSON: numbers, strings, lists
WIDTH = 5  # numbers of a pair, all pairs in one list: the steps of both paragraphs from the pair before, words kept,
# similarity, and 1 if it has moved


def key(old: Told, new: Told, *, part_way: bool) -> str:
    """SHA-256, in hexadecimal digits, over all that a comparison of these two is made from, and its recipe."""
    return sha256(dumps([RECIPE, part_way, _told(old), _told(new)]).encode("ascii")).hexdigest()


def to_form(found: Comparison) -> Form:
    """The comparison without `old` and `new`."""
    return {
        "pairs": list(_flat(found.pairs)),
        "blocks": [[*block.old, *block.new, block.kept] for block in found.blocks],
        "links": [[one.old, one.new, one.kept, int(one.moved), one.sure, list(one.why)] for one in found.links],
        "scenes": [_fate(fate) for fate in found.scenes],
        "chapters": [_fate(fate) for fate in found.chapters],
        "totals": list(astuple(found.totals)),
        "old_words": list(found.old_words),
        "new_words": list(found.new_words),
        "part_way": found.part_way,
    }


def from_form(form: Form, old: Told, new: Told) -> Comparison:
    """What `to_form` was given, told of the same two drafts: those whose `key` the form is kept by."""
    return Comparison(
        old=old,
        new=new,
        pairs=tuple(_pairs(form["pairs"])),
        blocks=tuple(Block((a, b), (c, d), kept) for a, b, c, d, kept in form["blocks"]),
        links=tuple(Link(a, b, kept, bool(moved), sure, tuple(why)) for a, b, kept, moved, sure, why in form["links"]),
        scenes=tuple(map(_fate_of, form["scenes"])),
        chapters=tuple(map(_fate_of, form["chapters"])),
        totals=Totals(*form["totals"]),
        old_words=tuple(form["old_words"]),
        new_words=tuple(form["new_words"]),
        part_way=form["part_way"],
    )


def _told(told: Told) -> list[Any]:
    scenes = [
        [scene.start, scene.end, scene.chapter, scene.bookmark, sorted(scene.cast), sorted(scene.places)]
        for scene in told.scenes
    ]
    return [told.paragraphs, scenes, told.chapters]


def _flat(pairs: Sequence[Pair]) -> Iterator[float]:
    old = new = 0
    for pair in pairs:
        yield from (pair.old - old, pair.new - new, pair.kept, pair.similarity, int(pair.moved))
        old, new = pair.old, pair.new


def _pairs(flat: Sequence[Any]) -> Iterator[Pair]:
    old = new = 0
    for at in range(0, len(flat), WIDTH):
        step, there, kept, similarity, moved = flat[at : at + WIDTH]
        old, new = old + step, new + there
        yield Pair(old, new, similarity, kept, bool(moved))


def _fate(fate: Fate) -> list[Any]:
    return [fate.old, fate.new, fate.became, int(fate.moved), fate.kept, fate.sure, fate.why]


def _fate_of(row: Sequence[Any]) -> Fate:
    old, new, became, moved, kept, sure, why = row
    return Fate(tuple(old), tuple(new), became, bool(moved), kept, sure, tuple(why))
