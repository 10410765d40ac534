"""Set cards of an arrangement aside, and bring them back."""

from collections.abc import Sequence

from afterdraft.desk.arrangement import Arrangement, Laid, Row
from afterdraft.desk.arranging import add_row, put
from afterdraft.manuscript.division import Division
from afterdraft.work.cards.arranging import arrange, cards_called, ids, seen
from afterdraft.work.ports import Book, Desk


def set_aside(book: Book, arrangement: str, codes: Sequence[str]) -> Arrangement:
    """Raises `Missing`, `NotPossible`."""

    def act(_: Desk, stands: Arrangement) -> Arrangement:
        lying = [card for card in ids(stands, codes) if card not in {one.id for one in stands.aside}]
        return put(stands, lying, row=None) if lying else stands

    return arrange(book, arrangement, f"Set {cards_called(book, seen(book, arrangement), codes)} aside", act)


def bring_back(book: Book, arrangement: str, codes: Sequence[str]) -> Arrangement:
    """Each to its scene's place among the scenes of its chapter; a new card, or one whose chapter is gone, to the end.

    Raises `Missing`, `NotPossible`.
    """

    def act(desk: Desk, stands: Arrangement) -> Arrangement:
        division = desk.division(stands.draft)
        for card in ids(stands, codes):
            aside = next((one for one in stands.aside if one.id == card), None)
            if aside is not None:
                stands = _brought_back(_with_a_row(desk, stands), aside, division)
        return stands

    return arrange(book, arrangement, f"Bring {cards_called(book, seen(book, arrangement), codes)} back", act)


def _brought_back(stands: Arrangement, card: Laid, division: Division) -> Arrangement:
    order = {scene.id: n for n, scene in enumerate(division.scenes)}
    if not card.scenes:
        return put(stands, [card.id], row=stands.rows[-1].id)
    own = order[card.scenes[0]]
    at = division.scenes[own].at
    chapter = next((one.id for one in reversed(division.chapters) if one.at <= at), None)
    row = next((row for row in stands.rows if row.chapter == chapter), stands.rows[-1])
    later = (one.id for one in row.cards if one.scenes and order[one.scenes[0]] > own)
    return put(stands, [card.id], row=row.id, before=next(later, None))


def _with_a_row(desk: Desk, stands: Arrangement) -> Arrangement:
    return stands if stands.rows else add_row(stands, Row(desk.new_id("row"), "", "", None, None))
