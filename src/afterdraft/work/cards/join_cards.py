"""Join cards of an arrangement, or take a joined card apart: what the next draft shall do with the scenes."""

from collections.abc import Sequence
from dataclasses import replace

from afterdraft.desk.arrangement import Arrangement
from afterdraft.desk.arranging import apart, by_code, change, everything, joined
from afterdraft.work.cards.arranging import arrange, card_called, cards_called, ids, seen
from afterdraft.work.ports import Book, Desk


def join_cards(book: Book, arrangement: str, codes: Sequence[str]) -> Arrangement:
    """The first of the cards stands for the scenes of all, with all texts, one under the other.

    Raises `Missing`, `NotPossible` for fewer than two cards.
    """

    def act(desk: Desk, stands: Arrangement) -> Arrangement:
        several = ids(stands, codes)
        whole = joined(stands, several)
        for gone in several[1:]:
            desk.follow_laid(into=several[0], of=gone)
        return _own_code(desk, whole, several[0])

    return arrange(book, arrangement, f"Join {cards_called(book, seen(book, arrangement), codes)}", act)


def take_apart(book: Book, arrangement: str, code: str) -> Arrangement:
    """A card of several scenes becomes one card a scene; the first keeps its texts. Raises `Missing`, `NotPossible`."""

    def act(desk: Desk, stands: Arrangement) -> Arrangement:
        codes = {scene.id: scene.code for scene in desk.division(stands.draft).scenes}
        return apart(stands, by_code(stands, code).id, codes=codes, new_id=desk.new_id)

    called = card_called(book, by_code(seen(book, arrangement), code))
    return arrange(book, arrangement, f"Take {called} apart again", act)


def _own_code(desk: Desk, arrangement: Arrangement, card: str) -> Arrangement:
    """The pieces of one scene, joined again, have the scene's own code."""
    whole = next(one for one in everything(arrangement) if one.id == card)
    if len(whole.scenes) != 1:
        return arrangement
    code = next(one.code for one in desk.division(arrangement.draft).scenes if one.id == whole.scenes[0])
    if any(one.code == code for one in everything(arrangement)):
        return arrangement
    return change(arrangement, [card], lambda one: replace(one, code=code))
