"""The published JSON form `read/1` of a draft: what scripts and measurements read.

Indices count from 0 in telling order; offsets are code points into the story text (`outline.story_text`).
"""

from collections.abc import Mapping, Sequence
from typing import Any

from afterdraft.manuscript.division import Doubt
from afterdraft.manuscript.draft import Draft, Suggestion
from afterdraft.manuscript.outline import (
    ChapterView,
    MatterView,
    Outline,
    SceneView,
    outline,
    paragraph_offsets,
    story_text,
)
from afterdraft.manuscript.words import count

Form = dict[str, Any]  # JSON: strings, numbers, lists, objects


def read_form(draft: Draft, *, version: str, text: bool) -> Form:
    """The form as plain data, ready for `json.dumps`; `text` adds each scene's paragraphs."""
    texts = [block.text for block in draft.source.blocks]
    told = texts if text else None
    book = outline(draft.division, [count(paragraph) for paragraph in texts])
    spans = story_text(draft.division, texts).spans
    offsets = paragraph_offsets(draft.division, texts)
    places = _places(book)
    return {
        "afterdraft": version,
        "form": "read/1",
        **read_head(draft, words=book.words),
        "front": [_matter(view) for view in book.front],
        "back": [_matter(view) for view in book.back],
        "parts": [{"index": view.index, "title": view.part.title} for view in book.parts],
        "chapters": [_chapter(view, places) for view in book.chapters],
        "scenes": [_scene(view, span, places, told) for view, span in zip(book.scenes, spans, strict=True)],
        "suggested_breaks": [_suggestion(one, offsets) for one in draft.suggestions],
        "unsure": [_doubt(one, offsets) for one in draft.doubts],
    }


def read_head(draft: Draft, *, words: int) -> Form:
    """The first keys of the form: which file, and what book it says it is. `words` of the story."""
    source = draft.source
    return {
        "file": {"name": source.name, "format": source.format, "sha256": source.sha256, "bytes": source.size},
        "title": draft.title,
        "author": draft.author,
        "language": draft.language,
        "words": words,
    }


def _places(book: Outline) -> dict[str, int]:
    """Index of each part and chapter by id."""
    return {view.part.id: view.index for view in book.parts} | {view.chapter.id: view.index for view in book.chapters}


def _matter(view: MatterView) -> Form:
    return {"kind": view.matter.kind, "paragraphs": view.end - view.start}


def _chapter(view: ChapterView, places: Mapping[str, int]) -> Form:
    return {
        "index": view.index,
        "part": places[view.part] if view.part else None,
        "kind": view.chapter.kind,
        "number": view.chapter.number,
        "title": view.chapter.title,
        "head": list(view.chapter.head),
        "words": view.words,
        "scenes": [scene.index for scene in view.scenes],
    }


def _scene(view: SceneView, span: tuple[int, int], places: Mapping[str, int], texts: Sequence[str] | None) -> Form:
    form: Form = {
        "index": view.index,
        "chapter": places[view.chapter],
        "start": span[0],
        "end": span[1],
        "words": view.words,
        "break": view.scene.began,
        "sure": view.scene.sure,
        "title": view.scene.title or None,
    }
    if texts is not None:
        form["paragraphs"] = [texts[index] for index in view.story]
    return form


def _suggestion(one: Suggestion, offsets: Mapping[int, int]) -> Form:
    return {"at": offsets[one.paragraph], "strength": one.strength, "why": list(one.why)}


def _doubt(one: Doubt, offsets: Mapping[int, int]) -> Form:
    return {
        "what": one.what,
        "paragraph": one.paragraph,
        "at": offsets.get(one.paragraph),
        "chosen": one.chosen,
        "other": one.other,
    }
