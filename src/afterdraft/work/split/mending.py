"""What all corrections of the split have in common."""

from collections.abc import Callable, Mapping

from afterdraft.manuscript.division import Division, Scene
from afterdraft.manuscript.validity import leaf_at
from afterdraft.work.ports import Book, Desk

Act = Callable[[Desk, Division], Division]


def mend(
    book: Book,
    draft: str,
    name: str,
    act: Act,
    *,
    kind: str,
    paragraph: int,
    detail: Mapping[str, object] | None = None,
) -> Division:
    """Change the division by `act` as one edit called `name`; returns what it is now.

    Cards of scenes that go are joined to the scene that now holds their beginning; where none does they become loose
    notes. A doubt about `paragraph` is settled by it, and the correction (`kind`, `detail`) is kept for the next draft.
    """

    def change(desk: Desk) -> Division:
        old = desk.division(draft)
        new = act(desk, old)
        if new != old:
            keep_cards(desk, old, new)
            desk.set_division(draft, new)
            desk.follow_anchors(draft)
            desk.close_doubt(draft, paragraph)
            desk.record_correction(draft, kind, paragraph, detail or {})
        return desk.division(draft)

    return book.edit(name, change)


def keep_cards(desk: Desk, old: Division, new: Division) -> None:
    known = {scene.id for scene in old.scenes}
    left = {scene.id for scene in new.scenes}
    for scene in old.scenes:
        if scene.id in left:
            continue
        holder = leaf_at(new, scene.at)
        if holder and isinstance(holder[0], Scene) and holder[0].id in known:
            desk.join_cards(into=holder[0].id, of=scene.id)
        else:
            desk.loosen_card(scene.id)
