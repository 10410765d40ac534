"""Offcuts: what earlier drafts had and this one has not, by scene and by search; as text; on a card's Next side."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby
from urllib.parse import urlencode

from starlette.requests import Request
from starlette.responses import PlainTextResponse, Response

from afterdraft.comparison.earlier import Earlier, search
from afterdraft.manuscript.words import count
from afterdraft.web.body import form, text
from afterdraft.web.gathering import Offcuts, Source
from afterdraft.web.laid import Table, table
from afterdraft.web.render import back, book_of, frame, go, number_of, render
from afterdraft.web.view import BookView, view
from afterdraft.work.cards.arranging import DRAFT
from afterdraft.work.cards.arranging import seen as arrangement_seen
from afterdraft.work.cards.put_on_next import put_on_next

PASSAGES, CHARACTERS = 50, 24_000  # at most on one page
Found = Sequence[Earlier[Source]]


@dataclass(frozen=True, slots=True)
class Passage:
    """An offcut as it is listed."""

    key: str  # names it on the page
    text: str
    path: str  # where it is read in its draft; "" for a draft that gave way


@dataclass(frozen=True, slots=True)
class SceneCuts:
    draft: str  # "Draft 2"; "Draft 2 as it was before it was brought in again"
    code: str
    name: str
    chapter: str
    path: str
    passages: tuple[Passage, ...]


@dataclass(frozen=True, slots=True)
class OffcutsPage:
    view: BookView
    gathering: bool  # they are not all there yet
    first: bool  # a book of one draft has none
    total: int  # passages of all earlier drafts
    found: int  # those asked for
    words: int  # of those
    scenes: tuple[SceneCuts, ...]  # on this page
    asked: str
    code: str  # of the scene asked for; "" for all
    page: int  # from 1
    pages: int
    cards: tuple[tuple[str, str], ...]  # code and name, to choose from

    def query(self, page: int) -> str:
        """The same passages, another page of them."""
        asked = {"q": self.asked, "scene": self.code, "page": str(page) if page > 1 else ""}
        told = urlencode({name: value for name, value in asked.items() if value})
        return f"?{told}" if told else ""


def offcuts(request: Request) -> Response:
    """`/books/{book}/drafts/offcuts`, with `?q=` words, `&scene=` a code, `&page=` from 1."""
    seen = view(book_of(request))
    first = len(seen.book.all_drafts()) < 2
    gathered = _gathered(request, seen)
    asked, code = _asked(request)
    found = _found(gathered, asked, code)
    pages = tuple(_pages(found))
    page = min(max(number_of(request.query_params.get("page", ""), 1), 1), len(pages))
    start, end = pages[page - 1]
    context = OffcutsPage(
        view=seen,
        gathering=gathered is None,
        first=first,
        total=len(gathered.passages) if gathered else 0,
        found=len(found),
        words=sum(count(one.text) for one in found) if asked or code else gathered.words if gathered else 0,
        scenes=tuple(_scenes(seen, found[start:end], start)),
        asked=asked,
        code=code,
        page=page,
        pages=len(pages),
        cards=tuple((sheet.code, sheet.name) for sheet in _table(seen).sheets()) if found else (),
    )
    return render(request, "offcuts.html", context, frame(request, "Offcuts", "offcuts", book=seen))


def download(request: Request) -> Response:
    """`/books/{book}/drafts/offcuts.txt`, as the page is asked: all that is found, as plain text."""
    seen = view(book_of(request))
    gathered = _gathered(request, seen)
    if gathered is None:
        return go(
            f"/books/{seen.facts.id}/drafts/offcuts", said="They are still being gathered. Try again in a moment."
        )
    scenes = _scenes(seen, _found(gathered, *_asked(request)), 0)
    told = ("\n\n".join((_headed(scene), *(one.text for one in scene.passages))) for scene in scenes)
    headers = {"Content-Disposition": 'attachment; filename="offcuts.txt"'}
    return PlainTextResponse("\n\n\n".join(told) + "\n", headers=headers)


def put(request: Request) -> Response:
    """`POST /books/{book}/drafts/offcuts` with `words` and `card`, a code or a name: they go on its Next side."""
    book, posted = book_of(request), form(request)
    request.state.yours = text(posted, "words")
    code = put_on_next(book, text(posted, "card"), request.state.yours)
    return go(
        back(posted, f"/books/{book.id}/drafts/offcuts"), said=f"It stands on the Next side of the card {code} now."
    )


def _table(seen: BookView) -> Table:
    """The arrangement that passages are put into."""
    return table(seen, arrangement_seen(seen.book, "").id or DRAFT)


def _gathered(request: Request, seen: BookView) -> Offcuts | None:
    found: Offcuts | None = request.app.state.gathering.offcuts(seen, request.app.state.comparing)
    return found


def _asked(request: Request) -> tuple[str, str]:
    asked = request.query_params
    return asked.get("q", "").strip(), asked.get("scene", "").strip().upper()


def _found(gathered: Offcuts | None, asked: str, code: str) -> Found:
    every = gathered.passages if gathered else ()
    return [one for one in search(every, asked) if not code or one.draft.scenes[one.scene][0] == code]


def _pages(found: Found) -> Iterator[tuple[int, int]]:
    """Where each page begins and ends; one that is empty where nothing was found."""
    start, characters = 0, 0
    for place, one in enumerate(found):
        if place > start and (place - start == PASSAGES or characters + len(one.text) > CHARACTERS):
            yield start, place
            start, characters = place, 0
        characters += len(one.text)
    yield start, len(found)


def _scenes(seen: BookView, found: Found, start: int) -> Iterator[SceneCuts]:
    base = f"/books/{seen.facts.id}/drafts"
    numbered = enumerate(found, start + 1)
    for (draft, scene), some in groupby(numbered, key=lambda one: (one[1].draft, one[1].scene)):
        code, name, chapter = draft.scenes[scene]
        path = f"{base}/{draft.number}/scenes/{code}" if draft.number else ""
        passages = (
            Passage(f"o{n}", one.text, f"{path}#p{draft.paragraphs[one.paragraph]}" if path else "") for n, one in some
        )
        yield SceneCuts(_called(seen, draft), code, name, chapter, path, tuple(passages))


def _headed(scene: SceneCuts) -> str:
    """ "Draft 1, Chapter 2, The ferry (F29)"."""
    return f"{scene.draft}, {scene.chapter}, {scene.name} ({scene.code})" if scene.code else scene.draft


def _called(seen: BookView, draft: Source) -> str:
    if draft.number is not None:
        return f"Draft {draft.number}"
    drafts = seen.book.all_drafts()
    states = {one.id: one for one in drafts}
    heir = states[draft.id]
    while heir.number is None and heir.gave_way in states:
        heir = states[heir.gave_way]
    return f"Draft {heir.number} as it was before" if heir.number else "An earlier draft"
