"""She says what became of a scene: as it was found, or otherwise; at any time."""

from collections.abc import Sequence

from afterdraft.desk.draft import Became
from afterdraft.errors import NotPossible
from afterdraft.work.called import scene_called
from afterdraft.work.drafts.compared import compared_now
from afterdraft.work.drafts.placing import placing
from afterdraft.work.ports import Book, Desk


def confirm_fates(book: Book, scenes: Sequence[str]) -> None:
    """It is as it was found, for these scenes (ids, of either draft). Raises `Missing`, `NotPossible` for none."""
    if not scenes:
        raise NotPossible("No scene was chosen.")
    name = scene_called(book, scenes[0]) if len(scenes) == 1 else f"{len(scenes)} scenes"

    def change(desk: Desk) -> None:
        for scene in scenes:
            desk.say_became(scene, "")

    book.edit(f"What became of {name}: as found", change)


def say_gone(book: Book, scene: str, became: Became, *, new: str) -> None:
    """A scene of an old draft lives on nowhere in draft `new`: it was "cut", or is "not reached" yet. Raises
    `Missing`."""
    name = f"{scene_called(book, scene)}: {became}"

    def change(desk: Desk) -> None:
        for piece in _pieces(desk, scene, new):
            _apart(desk, scene, piece)
        desk.say_became(scene, became)

    book.edit(f"What became of {name}", change)


def say_lives_on(book: Book, old: str, new: str) -> None:
    """Scene `old` lives on in scene `new`, beside wherever else it does; its notes and marks go along. Raises
    `Missing`, `NotPossible` for two scenes of one draft."""
    drafts = book.draft_of(old), book.draft_of(new)
    if drafts[0] == drafts[1]:
        raise NotPossible("Both scenes are of one draft. Choose one of the old draft and one of the new.")

    def change(desk: Desk) -> None:
        desk.say_lives_on(old, new, so=True)
        for scene in (old, new):
            desk.say_became(scene, "")
        found = compared_now(desk, *drafts, part_way=False, said=desk.said_of(*drafts))
        desk.carry_over(*drafts, {old: [new]}, chapters={}, place=placing(found))

    book.edit(f"{scene_called(book, old)} lives on in {scene_called(book, new)}", change)


def say_apart(book: Book, old: str, new: str) -> None:
    """Scene `old` does not live on in scene `new`: what went over with it goes back. Raises `Missing`."""
    name = f"{scene_called(book, old)} does not live on in {scene_called(book, new)}"
    book.edit(name, lambda desk: _apart(desk, old, new))


def _apart(desk: Desk, old: str, new: str) -> None:
    desk.say_lives_on(old, new, so=False)
    desk.take_back(old, new)
    for scene in (old, new):
        desk.say_became(scene, "")


def _pieces(desk: Desk, scene: str, new: str) -> Sequence[str]:
    old = desk.draft_of(scene)
    found = compared_now(desk, old, new, part_way=False, said=desk.said_of(old, new))
    return found.pieces.get(scene, ())
