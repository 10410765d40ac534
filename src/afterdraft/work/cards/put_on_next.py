"""A passage, as an offcut is, goes on a card's Next side, after what shall happen there already."""

from afterdraft.desk.arrangement import Arrangement, Laid
from afterdraft.desk.arranging import by_code, everything
from afterdraft.errors import NotPossible
from afterdraft.manuscript.naming import scene_name, shortened
from afterdraft.manuscript.outline import outline
from afterdraft.work.called import quoted
from afterdraft.work.cards.arranging import begun, card_called, chosen, draft_id, seen
from afterdraft.work.plain import line, plain
from afterdraft.work.ports import Book, Desk

CLIENT = ""  # this save belongs to no window


def put_on_next(book: Book, card: str, words: str) -> str:
    """Append `words` to *what shall happen* on a card of the present arrangement, named by code, title or first words
    (or by how one of these begins, where only one does); returns its code. One edit, which makes the arrangement where
    there is none.

    Raises `NotPossible` for no words, and where no card, or more than one, is called so.
    """
    passage = plain(words).strip()
    if not passage:
        raise NotPossible("There are no words to put on the card.")
    draft, shown = draft_id(book), seen(book, "")
    meant = _meant(book, shown, line(card))

    def put(desk: Desk) -> None:
        known = desk.arrangements(draft)
        stands = chosen(known, "")
        if stands is None:
            stands = begun(desk, draft, known)
            desk.set_arrangement(stands)
        own = by_code(stands, meant.code)
        what = "\n\n".join(text for text in (own.next.what.rstrip(), passage) if text)
        desk.set_field("next", own.id, "what", what, client=CLIENT, sequence=0)

    book.edit(f"{quoted(passage)} on the Next side of {card_called(book, meant)}", put)
    return meant.code


def _meant(book: Book, arrangement: Arrangement, asked: str) -> Laid:
    if not asked:
        raise NotPossible("No card was named. Nothing was changed. Type its code or its name.")
    coded = next((card for card in everything(arrangement) if card.code == asked.upper()), None)
    if coded is not None:
        return coded
    names = _names(book, arrangement)
    wanted = asked.casefold()
    whole = [card for card, name in names if name == wanted]
    begun_so = [card for card, name in names if name.startswith(wanted)]
    if not whole and not begun_so:
        raise NotPossible(f"There is no card called {quoted(asked)}. Nothing was changed. Type its code.")
    if len(whole) > 1 or (not whole and len(begun_so) > 1):
        raise NotPossible(f"There are several cards called {quoted(asked)}. Nothing was changed. Type its code.")
    return (whole or begun_so)[0]


def _names(book: Book, arrangement: Arrangement) -> list[tuple[Laid, str]]:
    """Each card with its title, its scene's title or first words, or what shall happen, in small letters."""
    draft = draft_id(book)
    views = {view.scene.id: view for view in outline(book.division(draft), book.words(draft)).scenes}
    starts = {scene: view.story[0] if view.story else view.start for scene, view in views.items()}
    openings = book.first_words(draft, list(starts.values()))

    def name(card: Laid) -> str:
        scene = card.scenes[0] if card.scenes else ""
        if card.title or scene not in views:
            return card.title or shortened(card.next.what)
        return scene_name(views[scene].scene, openings.get(starts[scene], ""))

    return [(card, line(name(card)).casefold()) for card in everything(arrangement)]
