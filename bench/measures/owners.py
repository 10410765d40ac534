"""Whose eyes, hair and beards are: seven novels of the corpus folder, labelled by hand (`owners.json`).

Every place where a word of colour stands near 'eyes', 'hair', 'beard' and the like was looked at: chapter, scene,
paragraph, start and end in it, and whom a reader would name, by any of some words of their names; "" for nobody whom
the book names, and for what is no colour of somebody's.
"""

import json
import re
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from afterdraft.reading.scene import scene_facts
from afterdraft.whole.book import BookRead, read_book
from afterdraft.whole.traits import PersonTrait, find_traits
from bench import corpus
from bench.reading.kept import analysed

LABELS = Path(__file__).with_name("owners.json")
KINDS = ("eyes", "hair", "beard")


@dataclass(frozen=True, slots=True)
class Answer:
    """One labelled place; `sure` is None where nothing was found there."""

    slug: str
    named: bool  # somebody of the book is meant
    right: bool
    sure: float | None


def answers() -> Iterator[Answer]:
    labels: dict[str, list[tuple[int, int, int, int, int, str]]] = json.loads(LABELS.read_text("utf-8"))
    for path in corpus.paths():
        if corpus.slug(path) in labels:
            yield from _novel(corpus.novel(path), labels[corpus.slug(path)])


def _novel(novel: corpus.Novel, labels: list[tuple[int, int, int, int, int, str]]) -> Iterator[Answer]:
    places = [(number, scene) for number, chapter in enumerate(novel.chapters) for scene in range(len(chapter.scenes))]
    facts = [
        scene_facts(analysed([text.replace("*", "") for text in scene]))
        for chapter in novel.chapters
        for scene in chapter.scenes
    ]
    book = read_book(facts)
    found = [one for one in find_traits(book, facts) if one.trait in KINDS]
    for chapter, scene, paragraph, start, end, owner in labels:
        at = places.index((chapter, scene))
        hit = next(
            (o for o in found if (o.scene, o.paragraph) == (at, paragraph) and o.start < end and o.end > start), None
        )
        right = bool(hit and owner and re.search(owner, _names(book, hit)))
        yield Answer(novel.slug, bool(owner), right, hit.sure if hit else None)


def _names(book: BookRead, one: PersonTrait) -> str:
    return next(" / ".join((who.name, *who.aliases)) for who in book.cast.people if who.id == one.person)
