"""The reverse outline: every scene's summary in order, and the plain reading view beside it."""

from collections.abc import Mapping
from dataclasses import dataclass

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.manuscript.blocks import Block
from afterdraft.manuscript.division import Role
from afterdraft.manuscript.outline import ChapterView
from afterdraft.web.anew import Anew, anew, before
from afterdraft.web.lines import Mark, marks
from afterdraft.web.marks import Mark as Tick
from afterdraft.web.marks import ticks
from afterdraft.web.render import book_of, frame, number_of, render
from afterdraft.web.scene_lines import Carries, carries
from afterdraft.web.view import BookView, view

PIECE = 40_000  # words of plain reading on one page, so that the longest novel still opens at once


@dataclass(frozen=True, slots=True)
class OutlinePage:
    view: BookView
    marks: Mapping[str, tuple[Mark, ...]]  # by scene id
    ticks: Mapping[str, tuple[Tick, ...]]  # by scene id: inks of open notes, guarded passages
    carries: Mapping[str, tuple[Carries, ...]]  # by scene id: what people come in and leave with
    then: int  # number of the draft before; 0 in a book of one
    olds: Mapping[str, Anew] | None  # where its summaries are wished for beside the new ones: by scene id


@dataclass(frozen=True, slots=True)
class Told:
    """A scene as it is read: its code for the margin, its paragraphs."""

    code: str
    name: str
    lines: tuple[tuple[int, Block, Role], ...]


@dataclass(frozen=True, slots=True)
class ChapterTold:
    chapter: ChapterView
    part_title: str  # "" unless a part begins with this chapter
    scenes: tuple[Told, ...]


@dataclass(frozen=True, slots=True)
class ReadingPage:
    view: BookView
    chapters: tuple[ChapterTold, ...]
    before: int | None  # chapter from which the piece before this one begins
    after: int | None


def outline(request: Request) -> Response:
    """`/books/{book}/outline`, with `?beside=1` where the summaries of the draft before are wished for."""
    seen = view(book_of(request))
    then = before(seen, request.app.state.comparing.beside_the_last(seen.book))
    olds = None
    if then and request.query_params.get("beside") == "1":
        cards = ((scene, seen.cards[scene.scene.id]) for scene in seen.outline.scenes)
        olds = {scene.scene.id: old for scene, card in cards if (old := anew(then, scene, card))}
    number = then.draft.number if then else 0
    context = OutlinePage(seen, marks(seen.book, seen.draft.id), ticks(seen), carries(seen), number, olds)
    return render(request, "outline.html", context, frame(request, "Reverse outline", "outline", book=seen))


def reading(request: Request) -> Response:
    """`/books/{book}/reading`, with `?from=` the chapter (from 1) where this piece begins."""
    seen = view(book_of(request))
    pieces = _pieces(seen.outline.chapters)
    wanted = number_of(request.query_params.get("from", "1"), 1) - 1
    at = max((n for n, start in enumerate(pieces) if start <= wanted), default=0)
    context = reading_page(seen, pieces, at)
    return render(request, "reading.html", context, frame(request, "Plain reading", "reading", book=seen))


def _pieces(chapters: tuple[ChapterView, ...]) -> tuple[int, ...]:
    """Chapters with which a page of reading begins."""
    starts = [0]
    words = 0
    for index, chapter in enumerate(chapters):
        if words and words + chapter.words > PIECE:
            starts.append(index)
            words = 0
        words += chapter.words
    return tuple(starts)


def reading_page(seen: BookView, pieces: tuple[int, ...], at: int) -> ReadingPage:
    end = pieces[at + 1] if at + 1 < len(pieces) else len(seen.outline.chapters)
    chapters = seen.outline.chapters[pieces[at] : end]
    first = chapters[0].start if chapters else 0
    blocks = seen.book.blocks(seen.draft.id, first, chapters[-1].end if chapters else 0)
    return ReadingPage(
        view=seen,
        chapters=tuple(_told(seen, chapter, blocks, first) for chapter in chapters),
        before=pieces[at - 1] + 1 if at else None,
        after=end + 1 if end < len(seen.outline.chapters) else None,
    )


def _told(seen: BookView, chapter: ChapterView, blocks: tuple[Block, ...], first: int) -> ChapterTold:
    part = next((p.part.title for p in seen.outline.parts if p.chapters and p.chapters[0] is chapter), "")
    return ChapterTold(
        chapter=chapter,
        part_title=part,
        scenes=tuple(
            Told(
                scene.scene.code,
                scene.scene.title,
                tuple((n, blocks[n - first], seen.division.roles[n]) for n in scene.story),
            )
            for scene in chapter.scenes
        ),
    )
