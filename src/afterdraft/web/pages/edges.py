"""First and last lines: how every chapter, or every scene, begins and ends, side by side."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Literal

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.manuscript.blocks import Block
from afterdraft.manuscript.excerpt import first_sentence, last_sentence
from afterdraft.manuscript.outline import ChapterView, SceneView
from afterdraft.web.render import book_of, frame, render
from afterdraft.web.view import BookView, chapter_title, view

By = Literal["chapter", "scene"]
Shown = Literal["sentence", "paragraph"]


@dataclass(frozen=True, slots=True)
class Line:
    """A first or last line, and where it stands."""

    code: str  # of its scene
    paragraph: int
    block: Block


@dataclass(frozen=True, slots=True)
class Edge:
    """One chapter or scene."""

    name: str
    code: str  # of a scene; "" for a chapter
    chapter: str  # name of the chapter that begins with this scene; "" otherwise
    part: str  # title of the part that begins here; "" otherwise
    first: Line | None  # None where there is no story text
    last: Line | None  # None too where one line is both


@dataclass(frozen=True, slots=True)
class EdgesPage:
    view: BookView
    by: By
    show: Shown
    edges: tuple[Edge, ...]


def edges(request: Request) -> Response:
    """`/books/{book}/edges`, with `?by=scene` for every scene, `?show=paragraph` for whole paragraphs."""
    seen = view(book_of(request))
    by: By = "scene" if request.query_params.get("by") == "scene" else "chapter"
    show: Shown = "paragraph" if request.query_params.get("show") == "paragraph" else "sentence"
    context = EdgesPage(seen, by, show, edges_of(seen, by, show))
    return render(request, "edges.html", context, frame(request, "First and last lines", "edges", book=seen))


def edges_of(seen: BookView, by: By, show: Shown) -> tuple[Edge, ...]:
    """Only the paragraphs shown are read, two for each chapter or scene."""
    units = [(chapter, scenes) for chapter in seen.outline.chapters for scenes in _groups(chapter, by)]
    wanted = [n for _, scenes in units for n in _ends(scenes)]
    blocks = seen.book.blocks_at(seen.draft.id, wanted)
    parts = {part.chapters[0].chapter.id: part.part.title for part in seen.outline.parts if part.chapters}
    return tuple(
        _edge(seen, chapter, scenes, by, show, blocks, parts.get(chapter.chapter.id, "")) for chapter, scenes in units
    )


def _groups(chapter: ChapterView, by: By) -> Iterator[tuple[SceneView, ...]]:
    if by == "chapter":
        yield chapter.scenes
    else:
        yield from ((scene,) for scene in chapter.scenes)


def _ends(scenes: tuple[SceneView, ...]) -> tuple[int, ...]:
    """Numbers of the first and the last story paragraph; none where there is no story text."""
    told = [scene.story for scene in scenes if scene.story]
    return (told[0][0], told[-1][-1]) if told else ()


def _edge(
    seen: BookView,
    chapter: ChapterView,
    scenes: tuple[SceneView, ...],
    by: By,
    show: Shown,
    blocks: Mapping[int, Block],
    part: str,
) -> Edge:
    opens = scenes[0] is chapter.scenes[0]
    first, last = _lines(seen, scenes, show, blocks)
    return Edge(
        name=scenes[0].scene.title if by == "scene" else chapter_title(chapter),
        code=scenes[0].scene.code if by == "scene" else "",
        chapter=chapter_title(chapter) if opens and by == "scene" else "",
        part=part if opens else "",
        first=first,
        last=last if last != first else None,
    )


def _lines(
    seen: BookView, scenes: tuple[SceneView, ...], show: Shown, blocks: Mapping[int, Block]
) -> tuple[Line | None, Line | None]:
    ends = _ends(scenes)
    if not ends:
        return None, None
    told = [scene.scene.code for scene in scenes if scene.story]
    first, last = (blocks[n] for n in ends)
    if show == "sentence":
        first, last = first_sentence(first), last_sentence(last)
    return Line(told[0], ends[0], first), Line(told[-1], ends[1], last)
