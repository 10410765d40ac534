"""Places where a scene may begin that the author did not mark: found, and answered."""

from collections.abc import Iterable

from afterdraft.manuscript.division import Division
from afterdraft.manuscript.draft import Search, Suggestion
from afterdraft.manuscript.outline import outline
from afterdraft.work.called import line_called
from afterdraft.work.ports import Book

NOT_A_BREAK = "not-a-break"  # the kind of correction by which a suggestion is declined


def suggest_breaks(book: Book, draft: str, *, search: Search | None = None) -> tuple[Suggestion, ...]:
    """Every place in the draft as it is divided now, answered ones too. Reads the whole text: some tenths of a second
    for a long novel, nearly all of them in `search` where that is given. Raises `Missing`, and what `search` raises."""
    from afterdraft.manuscript.unmarked import found_in  # late: seldom wanted

    return found_in(book.division(draft), [block.text for block in book.blocks(draft)], search=search)


def unanswered(book: Book, draft: str, division: Division, found: Iterable[Suggestion]) -> tuple[Suggestion, ...]:
    """Those of `found` that still lie within a scene, and that were not declined in this draft or another."""
    scenes = outline(division, [0] * len(division.roles)).scenes
    inside = {paragraph for scene in scenes for paragraph in scene.story[1:]} - {scene.start for scene in scenes}
    left = [one for one in found if one.paragraph in inside]
    declined = book.said(NOT_A_BREAK, draft, [one.paragraph for one in left])
    return tuple(one for one in left if one.paragraph not in declined)


def decline_break(book: Book, draft: str, paragraph: int) -> None:
    """No scene begins at `paragraph`: it is not suggested again, in the next draft neither. Raises `Missing`."""
    name = f"No scene begins at {line_called(book, draft, paragraph)}"
    book.edit(name, lambda desk: desk.record_correction(draft, NOT_A_BREAK, paragraph, {}))
