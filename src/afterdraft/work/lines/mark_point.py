"""Mark where a thread opens, is carried or closes; a setup, its returns and payoffs; who learns of a reveal."""

from collections.abc import Callable, Sequence

from afterdraft.desk.anchor import Passage
from afterdraft.desk.lines import DOES, Does, LineKind
from afterdraft.errors import NotPossible
from afterdraft.work.called import quoted, scenes_called
from afterdraft.work.finding import READER, WORDS, learner, line_called, named
from afterdraft.work.notes.fastening import fastened
from afterdraft.work.plain import line as one_line
from afterdraft.work.ports import Book, Desk


def mark_point(
    book: Book,
    kind: LineKind,
    name: str,
    does: Does,
    *,
    scenes: Sequence[str] = (),
    laid: Sequence[str] = (),
    who: str = "",
    passages: Sequence[Passage] = (),
) -> tuple[str, ...]:
    """Mark scenes, and planned cards without a scene (`laid`), as one edit; returns the points' ids.

    The line is found by its name, or added. `who` learns of a reveal: a name, found or added to the cast; none is the
    reader. `passages` fasten the point to words of its one scene. Raises `NotPossible`, `Missing`.
    """
    wanted = named(name, WORDS[kind])
    _refuse(kind, does, scenes, laid, passages)
    draft = book.draft_of(scenes[0]) if passages else ""

    def change(desk: Desk) -> tuple[str, ...]:
        line = line_called(desk, kind, wanted)
        person = learner(desk, who) if kind == "reveal" else None
        anchors = fastened(desk, draft, passages, scene=scenes[0] if passages else None)
        on_scenes = [desk.add_point(line, does, scene=one, person=person, anchors=anchors) for one in scenes]
        on_cards = [desk.add_point(line, does, scene=None, laid=one, person=person) for one in laid]
        return (*on_scenes, *on_cards)

    where = scenes_called(book, scenes, more=len(laid))
    return book.edit(f"{_told(does, wanted, who)} in {where}", change)


def unmark_point(book: Book, line: str, point: str) -> None:
    """Take a mark off. Raises `Missing`."""
    name = quoted(book.line(line).name)
    book.edit(f"Take off a mark of {name}", lambda desk: desk.remove_point(point))


def _refuse(
    kind: LineKind, does: Does, scenes: Sequence[str], laid: Sequence[str], passages: Sequence[Passage]
) -> None:
    if does not in DOES[kind]:
        raise NotPossible(f"{WORDS[kind]} is marked with one of: {', '.join(DOES[kind])}.")
    if not scenes and not laid:
        raise NotPossible("No scene was chosen.")
    if passages and (len(scenes) != 1 or laid):
        raise NotPossible("A passage belongs to one scene.")


def _told(does: Does, name: str, who: str) -> str:
    """How the edit is called: "“The gun” is paid"."""
    return _TOLD[does](quoted(name), one_line(who) or READER)


_TOLD: dict[Does, Callable[[str, str], str]] = {
    "opens": lambda name, _: f"{name} opens",
    "carries": lambda name, _: f"{name} is carried",
    "closes": lambda name, _: f"{name} closes",
    "setup": lambda name, _: f"Setup of {name}",
    "return": lambda name, _: f"Return of {name}",
    "payoff": lambda name, _: f"Payoff of {name}",
    "learns": lambda name, who: f"{who[:1].upper()}{who[1:]} learns {name}",
}
