"""Answer a doubt with the other reading: the line becomes what the program nearly took it for."""

from afterdraft.errors import Missing, NotPossible
from afterdraft.manuscript.division import Division, Doubt, Where
from afterdraft.manuscript.outline import leaves
from afterdraft.work.ports import Book
from afterdraft.work.split.join_scenes import join_scenes
from afterdraft.work.split.make_chapter import make_chapter, unmake_chapter
from afterdraft.work.split.mark_break import mark_break, unmark_break
from afterdraft.work.split.mark_matter import mark_matter, unmark_matter
from afterdraft.work.split.split_scene import split_scene


def take_other(book: Book, draft: str, paragraph: int) -> None:
    """Make the line at `paragraph` what its doubt's `other` says, as one edit. Raises `Missing`, `NotPossible`."""
    doubt = next((one for one in book.doubts(draft) if one.paragraph == paragraph), None)
    if doubt is None:
        raise Missing("This doubt")
    division = book.division(draft)
    if doubt.other in ("front matter", "back matter"):
        _set_apart(book, draft, division, doubt)
    elif doubt.chosen in ("front matter", "back matter"):
        unmark_matter(book, draft, _matter_at(division, paragraph))
    elif doubt.other == "chapter":
        make_chapter(book, draft, paragraph)
    elif doubt.other == "mark":
        mark_break(book, draft, paragraph)
    elif doubt.other == "scene":
        _begin_scene(book, draft, division, doubt)
    else:
        _make_text(book, draft, division, paragraph)


def _begin_scene(book: Book, draft: str, division: Division, doubt: Doubt) -> None:
    chapter = next((one.id for one in division.chapters if one.at == doubt.paragraph), None)
    if chapter:
        unmake_chapter(book, draft, chapter)
    else:
        split_scene(book, draft, doubt.paragraph)


def _make_text(book: Book, draft: str, division: Division, paragraph: int) -> None:
    """A mark becomes text; a scene or chapter that began here goes to the one before."""
    if division.roles[paragraph] == "mark":
        unmark_break(book, draft, paragraph)
        return
    scene = next((one.id for one in division.scenes if one.at == paragraph), None)
    if scene is None:
        raise NotPossible("This line is text already.")
    join_scenes(book, scene)


def _set_apart(book: Book, draft: str, division: Division, doubt: Doubt) -> None:
    where: Where = "front" if doubt.other == "front matter" else "back"
    start, end = next((start, end) for _, start, end in leaves(division) if start <= doubt.paragraph < end)
    mark_matter(book, draft, start, end, where=where)


def _matter_at(division: Division, paragraph: int) -> str:
    """Id of the matter that holds the line; "" where none does any more."""
    holder = next((unit for unit in reversed(division.matter) if unit.at <= paragraph), None)
    return holder.id if holder else ""
