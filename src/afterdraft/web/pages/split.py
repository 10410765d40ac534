"""The split: how the manuscript was taken apart, and the acts that mend it."""

from dataclasses import dataclass, replace

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.manuscript.asked import questions
from afterdraft.manuscript.blocks import Block
from afterdraft.manuscript.division import Doubt, Role
from afterdraft.manuscript.outline import ChapterView, MatterView, PartView, SceneView
from afterdraft.web.render import book_of, frame, render
from afterdraft.web.suggesting import Perhaps, perhaps
from afterdraft.web.view import BookView, view

SHOWN = 6  # lines of one question that are seen at once; the others are a click away


@dataclass(frozen=True, slots=True)
class Opened:
    """A unit opened to its paragraphs, so that it can be split at one."""

    code: str
    lines: tuple[tuple[int, Block, Role], ...]  # number over the whole file, paragraph, what it is


@dataclass(frozen=True, slots=True)
class DoubtLine:
    doubt: Doubt
    words: str  # first words of the paragraph
    code: str  # of the scene it lies in, "" outside the story


@dataclass(frozen=True, slots=True)
class Asked:
    """One question, about one line or several alike."""

    lines: tuple[DoubtLine, ...]

    @property
    def shown(self) -> tuple[DoubtLine, ...]:
        return self.lines[:SHOWN]

    @property
    def more(self) -> tuple[DoubtLine, ...]:
        return self.lines[SHOWN:]


@dataclass(frozen=True, slots=True)
class Row:
    """One line of the list: a part, a chapter, a scene, or matter; the others are None."""

    part: PartView | None = None
    chapter: ChapterView | None = None
    scene: SceneView | None = None
    matter: MatterView | None = None
    joins: bool = False  # the scene can be joined to the one before: nothing stands between them


@dataclass(frozen=True, slots=True)
class SplitPage:
    view: BookView
    rows: tuple[Row, ...]
    doubts: tuple[Asked, ...]
    unsure: int  # lines that are asked about
    opened: Opened | None
    matter_words: dict[str, str]  # first words of front and back matter, by id
    notices: tuple[str, ...]  # what was met in the file and not read
    perhaps: tuple[Perhaps, ...] | None = None  # where a scene may begin unmarked; None while that is looked for
    perhaps_open: bool = False


def split(request: Request) -> Response:
    """`/books/{book}/split`, with `?open=CODE` to see a scene's paragraphs."""
    seen = view(book_of(request))
    asked = request.query_params
    context = replace(
        split_page(seen, asked.get("open", "")), perhaps=perhaps(request, seen), perhaps_open="perhaps" in asked
    )
    return render(request, "split.html", context, frame(request, "The split", "split", book=seen))


def split_page(seen: BookView, code: str) -> SplitPage:
    matter = (*seen.outline.front, *seen.outline.back)
    doubts = seen.book.doubts(seen.draft.id)
    wanted = [*(view.start for view in matter), *(doubt.paragraph for doubt in doubts)]
    words = seen.book.first_words(seen.draft.id, wanted)
    return SplitPage(
        view=seen,
        rows=_rows(seen),
        doubts=tuple(
            Asked(tuple(DoubtLine(one, words.get(one.paragraph, ""), _code_at(seen, one.paragraph)) for one in asked))
            for asked in questions(doubts)
        ),
        unsure=len(doubts),
        opened=_opened(seen, code),
        matter_words={view.matter.id: words.get(view.start, "") for view in matter},
        notices=seen.book.unread(seen.draft.id),
    )


def _rows(seen: BookView) -> tuple[Row, ...]:
    """Everything in the order of the file; a chapter stands before the scene it begins with."""
    ends = {scene.end for scene in seen.outline.scenes}
    ranked = [
        *((view.start, 0, Row(part=view)) for view in seen.outline.parts),
        *((view.start, 1, Row(chapter=view)) for view in seen.outline.chapters),
        *((view.start, 2, Row(scene=view, joins=view.start in ends)) for view in seen.outline.scenes),
        *((view.start, 0, Row(matter=view)) for view in (*seen.outline.front, *seen.outline.back)),
    ]
    return tuple(row for _, _, row in sorted(ranked, key=lambda entry: entry[:2]))


def _code_at(seen: BookView, paragraph: int) -> str:
    found = seen.outline.scene_of(paragraph)
    return found.scene.code if found else ""


def _opened(seen: BookView, code: str) -> Opened | None:
    unit: SceneView | MatterView | None = next((s for s in seen.outline.scenes if s.scene.code == code), None)
    unit = unit or next((m for m in (*seen.outline.front, *seen.outline.back) if m.matter.id == code), None)
    if unit is None:
        return None
    blocks = seen.book.blocks(seen.draft.id, unit.start, unit.end)
    return Opened(code, tuple((n, block, seen.division.roles[n]) for n, block in enumerate(blocks, unit.start)))
