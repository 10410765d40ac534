"""The places of a planned change: add scenes, planned cards or words; tick one off; take one out."""

from collections.abc import Callable, Iterator
from itertools import chain

from afterdraft.desk.change import Change, ChangePlace
from afterdraft.errors import Missing, NotPossible
from afterdraft.manuscript.naming import scene_name
from afterdraft.manuscript.outline import outline
from afterdraft.work.called import quoted, scene_called
from afterdraft.work.cards.arranging import card_called, draft_id, seen
from afterdraft.work.plain import line
from afterdraft.work.ports import Book, Desk

Meant = tuple[str | None, str | None]  # ids of a scene, or else of a planned card
_PARTS = "\n;,"  # between places that are typed in one line


def add_places(book: Book, change: str, typed: str) -> None:
    """Scenes by code, title or first words, several parted by commas; planned cards without a scene by their codes.
    One that is a place of the change already stays as it is.

    Raises `NotPossible` where one is not found, `Missing`.
    """
    found = tuple(_meant(book, typed))
    if not found:
        raise NotPossible("No scene was named.")

    def add(desk: Desk) -> None:
        has = {(place.scene, place.laid) for place in _called(desk, change).places}
        for scene, laid in dict.fromkeys(found):
            if (scene, laid) not in has:
                desk.add_change_place(change, scene=scene, laid=laid)

    places = "A place" if len(found) == 1 else f"{len(found)} places"
    book.edit(f"{places} for {change_called(book.change(change))}", add)


def add_words(book: Book, change: str, typed: str) -> None:
    """A place that only words say: "every letter". Raises `NotPossible` for none, `Missing`."""
    words = line(typed)
    if not words:
        raise NotPossible("A place needs some words.")
    name = f"A place for {change_called(book.change(change))}"
    book.edit(name, lambda desk: desk.add_change_place(change, scene=None, words=words))


def tick_place(book: Book, change: str, place: str, *, done: bool) -> Change:
    """A place in any draft; it is ticked in all that it goes through. Returns the change as it is now. Raises
    `Missing`."""
    where = place_called(book, _in_any_draft(book, change, place))

    def tick(desk: Desk) -> Change:
        desk.tick(place, done=done)
        return _called(desk, change)

    return book.edit(f"Tick off {where}" if done else f"Take the tick off {where}", tick)


def remove_place(book: Book, change: str, place: str) -> None:
    """Raises `Missing`."""
    where = place_called(book, _place(book.change(change), place))
    book.edit(f"Take out {where}, a place of a change", lambda desk: desk.remove_change_place(place))


def change_called(change: Change) -> str:
    """What is wrong, else what she decides, in quotation marks."""
    return quoted(change.wrong.strip() or change.decide.strip() or "a change")


def place_called(book: Book, place: ChangePlace) -> str:
    """Its scene's or card's name, else its words, in quotation marks."""
    if place.scene is not None:
        return scene_called(book, place.scene)
    return quoted(place.words.strip() or "a place")


def _called(desk: Desk, change: str) -> Change:
    found = next((one for one in desk.changes() if one.id == change), None)
    if found is None:
        raise Missing("This change")
    return found


def _place(change: Change, place: str) -> ChangePlace:
    found = next((one for one in change.places if one.id == place), None)
    if found is None:
        raise Missing("This place")
    return found


def _in_any_draft(book: Book, change: str, place: str) -> ChangePlace:
    every = (one for draft in reversed(book.drafts()) for one in book.changes(draft=draft.id) if one.id == change)
    found = next((there for one in every for there in one.places if there.id == place), None)
    if found is None:
        raise Missing("This place")
    return found


def _meant(book: Book, typed: str) -> Iterator[Meant]:
    """A title may hold commas: the whole is tried first, and longer pieces before shorter ones."""
    find = _finder(book)
    pieces = [piece for piece in map(line, _parted(typed)) if piece]
    while pieces:
        size, found = next(
            ((size, found) for size in range(len(pieces), 0, -1) if (found := find(", ".join(pieces[:size])))),
            (0, None),
        )
        if found is None:
            raise NotPossible(f"There is no scene called {quoted(pieces[0])}.")
        yield found
        del pieces[:size]


def _parted(typed: str) -> list[str]:
    for sign in _PARTS[1:]:
        typed = typed.replace(sign, _PARTS[0])
    return typed.split(_PARTS[0])


def _finder(book: Book) -> Callable[[str], Meant | None]:
    """By code; else by title or first words, whole; else by how one of these begins, where only one does."""
    codes, names = _known(book)

    def find(asked: str) -> Meant | None:
        wanted = asked.casefold()
        if asked.upper() in codes:
            return codes[asked.upper()]
        whole = [meant for name, meant in names if name == wanted]
        begun = [meant for name, meant in names if name.startswith(wanted)]
        if whole:
            return whole[0]
        return begun[0] if len(set(begun)) == 1 else None

    return find


def _known(book: Book) -> tuple[dict[str, Meant], list[tuple[str, Meant]]]:
    """All scenes, and planned cards without one: by code, and by name in small letters."""
    draft = draft_id(book)
    views = outline(book.division(draft), book.words(draft)).scenes
    openings = book.first_words(draft, [view.story[0] if view.story else view.start for view in views])
    codes: dict[str, Meant] = {}
    names: list[tuple[str, Meant]] = []
    for view in views:
        first = openings.get(view.story[0] if view.story else view.start, "")
        codes[view.scene.code] = (view.scene.id, None)
        names += [(line(name).casefold(), (view.scene.id, None)) for name in (scene_name(view.scene, first), first)]
    arrangement = seen(book, "")
    for card in chain(arrangement.cards(), arrangement.aside):
        if not card.scenes and arrangement.id:
            codes[card.code] = (None, card.id)
            names.append((card_called(book, card).strip("“”").casefold(), (None, card.id)))
    return codes, names
