"""The novels of the corpus folder that carry marked dates, as the program reads their times."""

import json
from dataclasses import dataclass
from functools import cache
from typing import Any

from afterdraft.reading.facts import SceneFacts
from afterdraft.reading.quotations import quotations
from afterdraft.reading.times import times
from afterdraft.whole.story_time import StoryTime, story_time
from bench import corpus
from bench.reading.halves import Half, halves

DRACULA = "bram-stoker_dracula"


@dataclass(frozen=True, slots=True)
class Book:
    title: str
    texts: tuple[tuple[str, ...], ...]  # by scene, over all chapters
    places: dict[tuple[int, int], int]  # scene over all, by chapter and scene of the chapter
    scenes: tuple[SceneFacts, ...]
    story: StoryTime


def marked(name: str) -> Any:
    """One of the corpus folder's files of marked times."""
    return json.loads((corpus.CORPUS / "time" / f"{name}.json").read_text("utf-8"))


def parts() -> dict[str, Half]:
    """Half by title of the novels with marked times."""
    slugs = {*marked("mentions"), DRACULA}
    return halves(corpus.novel(path).title for path in corpus.paths() if corpus.slug(path) in slugs)


@cache
def book(slug: str) -> Book:
    """Times alone are read: no language pipeline is needed for them."""
    novel = next(corpus.novel(path) for path in corpus.paths() if corpus.slug(path) == slug)
    texts: list[tuple[str, ...]] = []
    places: dict[tuple[int, int], int] = {}
    heads: list[tuple[str, ...]] = []
    for number, chapter in enumerate(novel.chapters):
        for place, scene in enumerate(chapter.scenes):
            places[number, place] = len(texts)
            heads.append((chapter.title, chapter.subtitle, *chapter.head) if not place else ())
            texts.append(scene)
    scenes = tuple(map(_facts, texts))
    return Book(novel.title, tuple(texts), places, scenes, story_time(scenes, heads))


def _facts(paragraphs: tuple[str, ...]) -> SceneFacts:
    speech: dict[int, list[tuple[int, int]]] = {}
    for one in quotations(paragraphs):
        speech.setdefault(one.paragraph, []).append((one.start, one.end))
    found = (one for place, text in enumerate(paragraphs) for one in times(text, place, speech.get(place, ())))
    return SceneFacts(len(paragraphs), times=tuple(found))
