"""Notes: all of them by ink or by what they are on, with a box for a new one."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from urllib.parse import urlencode

from starlette.datastructures import FormData
from starlette.requests import Request
from starlette.responses import Response

from afterdraft.desk.ink import COLOURS, Colour
from afterdraft.desk.note import NOTE_STATES, About, Note, NoteState
from afterdraft.desk.offer import Offer
from afterdraft.errors import NotPossible
from afterdraft.web.body import form, text
from afterdraft.web.noted import InkView, NoteView, note_views, with_keys
from afterdraft.web.passages import passages
from afterdraft.web.render import back, book_of, frame, go, number, render
from afterdraft.web.view import BookView, chapter_title, view, view_then
from afterdraft.work.notes.change_note import fasten_note, place_note, rewrite_note, set_note_ink, set_note_state
from afterdraft.work.notes.write_note import write_note, write_note_on_passage
from afterdraft.work.ports import Book

PLAIN = "plain"  # stands for plain pencil where an ink is named
ALL = "all"  # notes of every state


@dataclass(frozen=True, slots=True)
class Group:
    """Notes on one thing."""

    name: str
    code: str  # of the scene; "" for anything else
    notes: tuple[NoteView, ...]
    draft: int = 0  # number of the older draft that it is of; 0 for the newest


@dataclass(frozen=True, slots=True)
class Way:
    """A way to look at the notes: a plain link."""

    label: str
    query: str
    count: int
    here: bool
    ink: InkView | None = None


@dataclass(frozen=True, slots=True)
class NotesPage:
    view: BookView
    inks: tuple[InkView, ...]
    colours: tuple[Colour, ...]
    by_ink: tuple[Way, ...]
    by_state: tuple[Way, ...]
    groups: tuple[Group, ...]
    abouts: tuple[tuple[str, str], ...]  # what a new note can be on: value and name
    offers: tuple[tuple[Offer, str, str], ...]  # with code and name of their scenes
    total: int
    chosen: str  # the ink that is looked at: what a new note is written in
    query: str  # of the address that shows these notes
    opened: str  # id of the note that is unfolded; "" for none

    @property
    def way_back(self) -> str:
        """The address that shows these notes, nothing unfolded."""
        return f"/books/{self.view.facts.id}/notes{self.query}"


def notes(request: Request) -> Response:
    """`/books/{book}/notes`, with `?ink=` an id or "plain", `?state=` (open, done, dropped, all), `&open=` a note."""
    seen, asked = view(book_of(request)), request.query_params
    page = notes_page(seen, asked.get("ink", ""), asked.get("state", "open"), asked.get("open", ""))
    return render(request, "notes.html", page, frame(request, "Notes", "notes", book=seen))


def notes_page(seen: BookView, ink: str = "", state: str = "open", opened: str = "") -> NotesPage:
    book = seen.book
    inks = with_keys(book.inks())
    known = book.notes()
    shown = [note for note in known if _is_in(note, ink) and state in (ALL, note.state)]
    return NotesPage(
        view=seen,
        inks=inks,
        colours=COLOURS,
        by_ink=tuple(_by_ink(known, inks, ink, state)),
        by_state=tuple(_by_state(known, ink, state)),
        groups=tuple(_groups(seen, note_views(shown, [one.ink for one in inks]))),
        abouts=(
            ("", "Loose"),
            ("book", "The book"),
            *((f"chapter {one.chapter.id}", chapter_title(one)) for one in seen.outline.chapters),
        ),
        offers=tuple(_offers(seen)),
        total=len(known),
        chosen=ink if any(one.ink.id == ink for one in inks) else "",
        query="?" + urlencode({"ink": ink, "state": state} if ink else {"state": state}),
        opened=opened,
    )


def _is_in(note: Note, ink: str) -> bool:
    return not ink or (note.ink or PLAIN) == ink


def _by_ink(known: tuple[Note, ...], inks: tuple[InkView, ...], ink: str, state: str) -> Iterator[Way]:
    of_state = [note for note in known if state in (ALL, note.state)]
    yield Way("All inks", f"?state={state}", len(of_state), not ink)
    for one in inks:
        count = sum(note.ink == one.ink.id for note in of_state)
        yield Way(one.ink.name, f"?ink={one.ink.id}&state={state}", count, ink == one.ink.id, one)
    if plain := sum(note.ink is None for note in of_state):
        yield Way("Plain", f"?ink={PLAIN}&state={state}", plain, ink == PLAIN)


def _by_state(known: tuple[Note, ...], ink: str, state: str) -> Iterator[Way]:
    of_ink = [note for note in known if _is_in(note, ink)]
    query = f"&ink={ink}" if ink else ""
    for one in (*NOTE_STATES, ALL):
        count = sum(one in (ALL, note.state) for note in of_ink)
        yield Way(one.capitalize(), f"?state={one}{query}", count, state == one)


def _groups(seen: BookView, notes: tuple[NoteView, ...]) -> Iterator[Group]:
    """The loose ones, those on the book, then by chapter and scene in telling order, then those on planned cards; and
    what stayed on older drafts, the youngest first."""
    yield from _group("Loose", "", [one for one in notes if one.note.loose])
    yield from _group("The book", "", [one for one in notes if one.note.about_book])
    yield from _told(seen, notes)
    yield from _group("Planned cards", "", [one for one in notes if one.note.laid])
    placed = {one.id for one in seen.division.chapters} | {one.id for one in seen.division.scenes}
    stayed = tuple(one for one in notes if not placed.issuperset(_on(one.note)))
    for draft in reversed(seen.book.drafts()[:-1]):
        if stayed:
            yield from _told(view_then(seen.book, draft.number), stayed, draft.number)


def _on(note: Note) -> tuple[str, ...]:
    return tuple(unit for unit in (note.chapter, note.scene) if unit)


def _told(seen: BookView, notes: tuple[NoteView, ...], draft: int = 0) -> Iterator[Group]:
    for chapter in seen.outline.chapters:
        on_it = [one for one in notes if one.note.chapter == chapter.chapter.id]
        yield from _group(chapter_title(chapter), "", on_it, draft)
        for scene in chapter.scenes:
            on_scene = [one for one in notes if one.note.scene == scene.scene.id]
            yield from _group(seen.name(scene), scene.scene.code, on_scene, draft)


def _group(name: str, code: str, notes: list[NoteView], draft: int = 0) -> Iterator[Group]:
    if notes:
        yield Group(name, code, tuple(notes), draft)


def _offers(seen: BookView) -> Iterator[tuple[Offer, str, str]]:
    for offer in seen.book.offers(seen.draft.id, 0, len(seen.division.roles)):
        scene = next((one for one in seen.outline.scenes if one.start <= offer.comment.block < one.end), None)
        yield offer, scene.scene.code if scene else "", seen.name(scene) if scene else ""


def add(request: Request) -> Response:
    """`POST /books/{book}/notes` with text and ink; the scene's code, its passage or words; or what it is `about`."""
    book, posted = book_of(request), form(request)
    seen = view(book)
    ink = _ink(posted)
    code = text(posted, "scene")
    scene = seen.by_code(code).scene.id if code else None
    if scene and (on := passages(book, scene, posted)):
        write_note_on_passage(book, text(posted, "text"), draft=seen.draft.id, passages=on, ink=ink)
    else:
        write_note(book, text(posted, "text"), about=About(scene) if scene else _about(posted), ink=ink)
    loose = not code and not text(posted, "about")
    return go(back(posted, f"/books/{book.id}/notes"), said=f"The note is kept{', under Notes' if loose else ''}.")


def change(request: Request) -> Response:
    """`POST /books/{book}/notes/{note}` with one act: `state`, `ink`, `loosen`, or `fasten` to a scene's words."""
    book, posted = book_of(request), form(request)
    note = request.path_params["note"]
    act = next((name for name in ACTS if name in posted), None)
    if act is None:
        raise NotPossible("Nothing was chosen for this note.")
    ACTS[act](book, note, posted)
    return go(back(posted, f"/books/{book.id}/notes"))


def reword(request: Request) -> Response:
    """`POST /books/{book}/notes/{note}/words` with text and the revision that the window knows."""
    book, posted = book_of(request), form(request)
    request.state.yours = text(posted, "text")
    rewrite_note(book, request.path_params["note"], request.state.yours, revision=number(posted, "revision"))
    return go(back(posted, f"/books/{book.id}/notes"))


def _fasten(book: Book, note: str, posted: FormData) -> None:
    seen = view(book)
    scene = seen.by_code(text(posted, "fasten").strip())
    on = passages(book, scene.scene.id, posted)
    if on:
        fasten_note(book, note, draft=seen.draft.id, passages=on)
    else:
        place_note(book, note, About(scene.scene.id))


ACTS: Mapping[str, Callable[[Book, str, FormData], object]] = {
    "state": lambda book, note, posted: set_note_state(book, note, _state(text(posted, "state"))),
    "ink": lambda book, note, posted: set_note_ink(book, note, _ink(posted)),
    "loosen": lambda book, note, posted: place_note(book, note, About()),
    "fasten": _fasten,
}


def _about(posted: FormData) -> About:
    kind, _, what = text(posted, "about").partition(" ")
    if kind == "chapter":
        return About(chapter=what)
    return About(laid=what) if kind == "card" else About(book=kind == "book")


def _ink(posted: FormData) -> str | None:
    ink = text(posted, "ink")
    return ink if ink and ink != PLAIN else None


def _state(name: str) -> NoteState:
    for state in NOTE_STATES:
        if state == name:
            return state
    raise NotPossible("A note is open, done or dropped.")
