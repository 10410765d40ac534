"""Bring a draft into a book: the next one, the same one again, a part of the next, or an older one."""

from collections.abc import Sequence
from typing import Literal

from afterdraft.desk.draft import SaidOfScenes
from afterdraft.errors import NotPossible
from afterdraft.manuscript.draft import Draft
from afterdraft.work.drafts.compared import Compared, compared_now
from afterdraft.work.drafts.placing import placing
from afterdraft.work.drafts.rounds import standing
from afterdraft.work.ports import Book, Desk
from afterdraft.work.split.replay import replay

How = Literal["next", "part-way", "again", "older"]
SAME = "This is the draft that is there already, word for word."


def bring_draft(book: Book, draft: Draft, originals: Sequence[tuple[str, bytes]], how: How = "next") -> str:
    """Take `draft` in with its files (name, bytes); returns its id.

    - `next`: a round ends. What is on the scenes goes on in those they became; cards are blank.
    - `part-way`: the same, but scenes that it does not come to are not reached, and none is cut.
    - `again`: the newest draft with typing mistakes mended: it takes that one's place, and everything stays on it.
    - `older`: one from before those that are there; it is only for comparing and looking things up.

    A part-way draft gives way to whatever comes next of the same round. A book that has a draft already is backed up
    first, and what was corrected in the split is corrected in this one too. Raises `NotPossible` for `again` where the
    words are the same, or where there is no draft.
    """
    known = book.drafts()
    current = known[-1] if known else None
    if current is not None:
        if how == "again":
            refuse_the_same(book, draft)
        book.back_up(why=f"before draft {len(known) + 1}")
    elif how != "next":
        raise NotPossible("There is no draft yet to bring this one in beside. Bring it in as the first.")
    takes_over = current is not None and (how == "again" or (current.part_way and how != "older"))
    base = known[-2].id if takes_over and len(known) > 1 else None

    def bring(desk: Desk) -> str:
        with desk.unlogged():
            made = desk.add_draft(draft, originals)
            replay(desk, made)
            desk.settle_again(made)
        if current is None:
            desk.show_draft(made)
        elif how == "older":
            _put_in_behind(desk, made, known[0].id)
        elif takes_over:
            part_way = how == "part-way" or (how == "again" and current.part_way)
            _take_over(desk, current.id, made, base, part_way=part_way)
        else:
            _go_on(desk, current.id, made, part_way=how == "part-way")
        return made

    return book.edit(_called(len(known), how, takes_over=takes_over), bring)


def _go_on(desk: Desk, old: str, new: str, *, part_way: bool) -> None:
    """A round ends, and the next begins."""
    found = compared_now(desk, old, new, part_way=part_way, said=SaidOfScenes())
    with desk.unlogged():
        desk.recode(new, _codes(found))
    form = standing(desk, old)
    desk.show_draft(new, part_way=part_way)
    desk.carry_over(old, new, found.pieces, chapters=found.chapters, place=placing(found))
    desk.begin_round(new, form)


def _take_over(desk: Desk, old: str, new: str, base: str | None, *, part_way: bool) -> None:
    """The draft stays the same one. What comes for the first time, in a part-way draft that went on, comes from the
    draft before."""
    found = compared_now(desk, old, new, part_way=False, said=SaidOfScenes())
    desk.show_draft(new, part_way=part_way)
    desk.take_over(old, new, found.mains, chapters=found.chapters, place=placing(found))
    if base is None:
        return
    round_ = compared_now(desk, base, new, part_way=part_way, said=desk.said_of(base, new))
    kept = set(found.mains)
    fresh = {
        scene: tuple(piece for piece in pieces if piece not in kept)
        for scene, pieces in round_.pieces.items()
        if not kept.intersection(pieces)
    }
    taken = {scene.code for scene in round_.new.scenes if scene.id in kept}
    desk.recode(new, {piece: code for piece, code in _codes(round_).items() if piece not in kept and code not in taken})
    desk.carry_over(base, new, fresh, chapters={}, place=placing(round_))


def _put_in_behind(desk: Desk, made: str, first: str) -> None:
    """Nothing is carried: the desk has gone on from the draft that comes after it."""
    found = compared_now(desk, made, first, part_way=False, said=SaidOfScenes())
    codes = {scene.id: scene.code for scene in found.new.scenes}
    with desk.unlogged():
        desk.recode(made, {old: codes[new] for old, new in found.mains.items()})
    desk.show_draft(made, before=first)


def _codes(found: Compared) -> dict[str, str]:
    """A scene that lives on keeps its code."""
    codes = {scene.id: scene.code for scene in found.old.scenes}
    return {new: codes[old] for old, new in found.mains.items()}


def refuse_the_same(book: Book, draft: Draft) -> None:
    """Raises `NotPossible` where `draft` is the newest of the book, word for word: most likely the wrong file."""
    known = book.drafts()
    if known and tuple(block.text for block in draft.source.blocks) == book.texts(known[-1].id):
        raise NotPossible(SAME)


def _called(known: int, how: How, *, takes_over: bool) -> str:
    if how == "older":
        return "Put an older draft in behind"
    if takes_over:
        return f"Bring draft {known} in again"
    return f"Bring in draft {known + 1}" + (", part-way" if how == "part-way" else "")
