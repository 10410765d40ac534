"""What is written on a scene and its passages, and what is guarded in it, as pages show it."""

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from afterdraft.desk.anchor import Anchor
from afterdraft.desk.guarded import Guarded
from afterdraft.desk.ink import Ink
from afterdraft.desk.note import Note
from afterdraft.desk.offer import Offer
from afterdraft.manuscript.naming import shortened
from afterdraft.manuscript.outline import SceneView
from afterdraft.web.prose import Stretch
from afterdraft.web.view import BookView

KEYS = 9  # the first nine inks have a key


@dataclass(frozen=True, slots=True)
class InkView:
    """An ink with its key: "1" to "9", or ""."""

    ink: Ink
    key: str


@dataclass(frozen=True, slots=True)
class NoteView:
    note: Note
    ink: Ink | None
    quote: str  # the words it is on; over several paragraphs their beginning and their end
    at: int | None  # paragraph of those words

    @property
    def before(self) -> str:
        """The words it was on in the draft before, where they changed or are gone; else ""."""
        if self.note.passage not in ("changed", "gone"):
            return ""
        last = self.note.then[-1].draft
        return quote_of([anchor for anchor in self.note.then if anchor.draft == last])


@dataclass(frozen=True, slots=True)
class NotesHere:
    """For the side of a scene's card."""

    inks: tuple[InkView, ...]
    notes: tuple[NoteView, ...]
    guarded: tuple[Guarded, ...]
    offers: tuple[Offer, ...]

    @property
    def count(self) -> int:
        return len(self.notes) + len(self.guarded)


def notes_here(seen: BookView, shown: SceneView) -> NotesHere:
    book, draft = seen.book, seen.draft.id
    inks = book.inks()
    return NotesHere(
        inks=with_keys(inks),
        notes=note_views(book.notes(scene=shown.scene.id), inks),
        guarded=tuple(one for one in book.guarded(draft) if shown.start <= one.anchors[0].paragraph < shown.end),
        offers=book.offers(draft, shown.start, shown.end),
    )


def with_keys(inks: Iterable[Ink]) -> tuple[InkView, ...]:
    return tuple(InkView(ink, str(n) if n <= KEYS else "") for n, ink in enumerate(inks, 1))


def note_views(notes: Iterable[Note], inks: Iterable[Ink]) -> tuple[NoteView, ...]:
    by_id = {ink.id: ink for ink in inks}
    return tuple(
        NoteView(
            note, by_id.get(note.ink or ""), quote_of(note.anchors), note.anchor.paragraph if note.anchor else None
        )
        for note in notes
    )


def quote_of(anchors: Sequence[Anchor]) -> str:
    quotes = [anchor.quote for anchor in anchors]
    return " … ".join([quotes[0], quotes[-1]] if len(quotes) > 1 else quotes)


def stretches(here: NotesHere, draft: str) -> dict[int, tuple[Stretch, ...]]:
    """By paragraph: where open notes and guarded passages lie in the text."""
    found: dict[int, list[Stretch]] = {}
    for paragraph, stretch in [*_of_notes(here.notes, draft), *_of_guarded(here.guarded, draft)]:
        found.setdefault(paragraph, []).append(stretch)
    return {paragraph: tuple(several) for paragraph, several in found.items()}


def _of_notes(notes: Iterable[NoteView], draft: str) -> Iterator[tuple[int, Stretch]]:
    for one in notes:
        if one.note.state != "open":
            continue
        colour, letter = (one.ink.colour, one.ink.letter) if one.ink else ("", "·")
        says = f"Note{f', {one.ink.name}' if one.ink else ''}: {shortened(one.note.text)}"
        yield from _laid("noted", one.note.anchors, draft, f"note-{one.note.id}", says, ink=colour, letter=letter)


def _of_guarded(guarded: Iterable[Guarded], draft: str) -> Iterator[tuple[int, Stretch]]:
    for one in guarded:
        yield from _laid("guarded", one.anchors, draft, f"guarded-{one.id}", "Guarded", letter="g")


def _laid(
    kind: str, anchors: Sequence[Anchor], draft: str, leads_to: str, says: str, *, ink: str = "", letter: str
) -> Iterator[tuple[int, Stretch]]:
    own = [anchor for anchor in anchors if anchor.draft == draft]
    for anchor in own:
        last = anchor is own[-1]
        yield anchor.paragraph, Stretch(anchor.start, anchor.end, kind, ink, letter, leads_to, says, ticked=last)


def ink_ticks(view: BookView) -> dict[str, tuple[tuple[Ink | None, int], ...]]:
    """How many open notes in each ink a scene, or a planned card, has; by its id, in the order of the inks."""
    inks: list[Ink | None] = [*view.book.inks(), None]
    counted: dict[str, Counter[str | None]] = {}
    for note in view.book.notes():
        place = note.scene or note.laid
        if place and note.state == "open":
            counted.setdefault(place, Counter())[note.ink] += 1
    return {
        place: tuple((ink, count) for ink in inks if (count := own[ink.id if ink else None]))
        for place, own in counted.items()
    }


def guarded_scenes(view: BookView) -> dict[str, int]:
    """How many guarded passages a scene has, by its id."""
    places = [one.anchors[0].paragraph for one in view.book.guarded(view.draft.id)]
    counts = Counter(
        scene.scene.id for place in places for scene in view.outline.scenes if scene.start <= place < scene.end
    )
    return dict(counts)
