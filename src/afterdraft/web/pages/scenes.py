"""Scenes: a scene's text and its card, one scene a page."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.desk.card import Card
from afterdraft.manuscript.blocks import Aside, Block
from afterdraft.manuscript.outline import ChapterView, SceneView
from afterdraft.web.anew import Anew, anew, before
from afterdraft.web.facts_here import FactsHere, facts_here, highlights, read_of
from afterdraft.web.noted import NotesHere, notes_here, stretches
from afterdraft.web.prose import Stretch
from afterdraft.web.questions import QuestionView, asked_here, by_paragraph, words_asked
from afterdraft.web.render import book_of, frame, go, render
from afterdraft.web.scene_lines import SceneLines, scene_lines, with_lines
from afterdraft.web.suggesting import Perhaps, perhaps
from afterdraft.web.view import BookView, chapter_title, view

SECTION = 40  # paragraphs in one section of a long scene; sections out of sight are not laid out
SHOWN = frozenset({"people", "speech", "times"})
LONG = 300  # paragraphs from which a scene counts as long


@dataclass(frozen=True, slots=True)
class Neighbour:
    code: str
    name: str


@dataclass(frozen=True, slots=True)
class Line:
    """A paragraph of the scene and what it is."""

    number: int  # over the whole file
    block: Block
    kind: str  # class of the paragraph: "", "lines", "mark"
    marked: tuple[Stretch, ...] = ()  # passages that notes are on, or that are guarded


@dataclass(frozen=True, slots=True)
class ScenePage:
    view: BookView
    scene: SceneView
    name: str
    chapter: ChapterView
    chapter_title: str
    part_title: str
    opens_chapter: bool
    sections: tuple[tuple[Line, ...], ...]
    card: Card
    notes: NotesHere
    asides: tuple[Aside, ...]
    lines: SceneLines
    before: Neighbour | None
    after: Neighbour | None
    next_unwritten: Neighbour | None
    facts: FactsHere
    anew: Anew | None = None  # what the card has from the draft before; None in a book of one draft
    show: frozenset[str] = frozenset()  # what of the facts is shown in the text: "people", "speech", "times"
    perhaps: Mapping[int, Perhaps] = field(default_factory=dict)  # where a scene may begin unmarked, by paragraph
    asked: Mapping[int, Sequence[QuestionView]] = field(default_factory=dict)  # questions that rest on a paragraph

    @property
    def keep(self) -> str:
        """What an address carries on to the next scene."""
        return f"?show={'+'.join(sorted(self.show))}" if self.show else ""


def first(request: Request) -> Response:
    """`/books/{book}/scenes`: on to the scene last looked at, else the first."""
    book = book_of(request)
    seen = view(book)
    codes = [scene.scene.code for scene in seen.outline.scenes]
    if not codes:
        return go(f"/books/{book.id}/split", said="There is no scene yet. Make one here first.")
    last = book.last_place()
    return go(f"/books/{book.id}/scenes/{last if last in codes else codes[0]}")


def scene(request: Request) -> Response:
    """`/books/{book}/scenes/{code}`, with `?old=shown` where the card of the draft before is wished for."""
    book = book_of(request)
    seen = view(book)
    shown = seen.by_code(request.path_params["code"])
    book.set_last_place(shown.scene.code)
    places = {one.paragraph: one for one in perhaps(request, seen) or () if one.code == shown.scene.code}
    told, show = read_of(request, seen), frozenset(request.query_params.get("show", "").split()) & SHOWN
    facts = facts_here(request, seen, shown)
    shows = highlights(seen, told, shown, show)
    then = before(seen, request.app.state.comparing.beside_the_last(book))
    card = anew(then, shown, seen.cards[shown.scene.id], show=request.query_params.get("old") == "shown")
    asked = by_paragraph(seen, shown, asked_here(request, seen))
    words = words_asked(shown, (row for rows in asked.values() for row in rows))
    shows = {paragraph: (*shows.get(paragraph, ()), *words.get(paragraph, ())) for paragraph in {*shows, *words}}
    context = replace(scene_page(seen, shown, facts, shows), anew=card, perhaps=places, show=show, asked=asked)
    return render(
        request, "scene.html", context, frame(request, context.name, "scenes", book=seen, here=shown.scene.code)
    )


def scene_page(
    seen: BookView, shown: SceneView, facts: FactsHere, highlights: Mapping[int, tuple[Stretch, ...]]
) -> ScenePage:
    book, draft = seen.book, seen.draft.id
    chapter = seen.chapter(shown)
    notes = notes_here(seen, shown)
    lines = scene_lines(seen, shown)
    marked = with_lines(stretches(notes, draft), lines.marks, draft)
    marked = {n: (*highlights.get(n, ()), *marked.get(n, ())) for n in {*marked, *highlights}}
    part = next((view.part for view in seen.outline.parts if view.part.id == chapter.part), None)
    return ScenePage(
        view=seen,
        scene=shown,
        name=seen.name(shown),
        chapter=chapter,
        chapter_title=chapter_title(chapter),
        part_title=part.title if part else "",
        opens_chapter=chapter.scenes[0] is shown,
        sections=_sections(_lines(seen, shown, book.blocks(draft, shown.start, shown.end), marked)),
        card=seen.cards[shown.scene.id],
        notes=notes,
        asides=book.asides(draft, shown.start, shown.end),
        lines=lines,
        facts=facts,
        before=_neighbour(seen, shown.index - 1),
        after=_neighbour(seen, shown.index + 1),
        next_unwritten=_next_unwritten(seen, shown.index),
    )


def _lines(
    seen: BookView, shown: SceneView, blocks: tuple[Block, ...], marked: Mapping[int, tuple[Stretch, ...]]
) -> tuple[Line, ...]:
    """Story paragraphs, and marks inside the scene; its own opening mark and the headings stand in the page's head."""
    opening = shown.story[0] if shown.story else shown.end
    lines = []
    for number, block in enumerate(blocks, shown.start):
        role = seen.division.roles[number]
        if role == "story":
            lines.append(Line(number, block, "lines" if "\n" in block.text else "", marked.get(number, ())))
        elif role == "mark" and number > opening:
            lines.append(Line(number, block, "mark"))
    return tuple(lines)


def _sections(lines: tuple[Line, ...]) -> tuple[tuple[Line, ...], ...]:
    if len(lines) <= LONG:
        return (lines,)
    return tuple(lines[start : start + SECTION] for start in range(0, len(lines), SECTION))


def _neighbour(seen: BookView, index: int) -> Neighbour | None:
    if not 0 <= index < len(seen.outline.scenes):
        return None
    found = seen.outline.scenes[index]
    return Neighbour(found.scene.code, seen.name(found))


def _next_unwritten(seen: BookView, index: int) -> Neighbour | None:
    """The next scene without a summary, going round from the end to the beginning; never the scene itself."""
    scenes = seen.outline.scenes
    round_trip = [*scenes[index + 1 :], *scenes[:index]]
    found = next((scene for scene in round_trip if not seen.written(scene)), None)
    return _neighbour(seen, found.index) if found else None
