"""Two drafts of a book that a page holds against each other, and what their scenes are called there."""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

from starlette.requests import Request

from afterdraft.desk.draft import SaidOfScenes
from afterdraft.errors import Missing
from afterdraft.manuscript.blocks import Block
from afterdraft.manuscript.naming import chapter_name, scene_name
from afterdraft.web.view import BookView
from afterdraft.work.drafts.compared import Compared, Side
from afterdraft.work.ports import Book, DraftFacts


@dataclass(frozen=True, slots=True)
class Named:
    """A scene, or a chapter, of either draft as a list names it."""

    id: str
    index: int
    code: str  # a chapter's: "ch3", for addresses
    name: str
    at: int  # index of its chapter
    chapter: str  # its name
    words: int
    path: str  # where it is read


@dataclass(frozen=True)
class TwoDrafts:
    book: Book
    base: str  # address of the book
    known: tuple[DraftFacts, ...]
    old: DraftFacts
    new: DraftFacts
    compared: Compared
    said: SaidOfScenes  # by the writer, of these two

    @property
    def query(self) -> str:
        """What an address says of them: nothing for the last two, else "?old=1&new=3"."""
        last = (self.old, self.new) == self.known[-2:]
        return "" if last else f"?old={self.old.number}&new={self.new.number}"

    @cached_property
    def olds(self) -> tuple[Named, ...]:
        return _named(self.compared.old, self.compared.found.old_words, self._path(self.old))

    @cached_property
    def news(self) -> tuple[Named, ...]:
        return _named(self.compared.new, self.compared.found.new_words, self._path(self.new))

    @cached_property
    def linked(self) -> frozenset[tuple[int, int]]:
        """Old and new scenes of which the one lives on in the other."""
        return frozenset((link.old, link.new) for link in self.compared.found.links)

    @cached_property
    def old_chapters(self) -> tuple[Named, ...]:
        return _chapters(self.compared.old, self.olds)

    @cached_property
    def new_chapters(self) -> tuple[Named, ...]:
        return _chapters(self.compared.new, self.news)

    def blocks(self, side: Side, scenes: Sequence[int]) -> dict[int, Block]:
        """Story paragraphs of scenes of either draft, by their index."""
        found: dict[int, Block] = {}
        for scene in scenes:
            place = side.told.scenes[scene]
            numbers = side.paragraphs[place.start : place.end]
            if numbers:
                blocks = self.book.blocks(side.draft, numbers[0], numbers[-1] + 1)
                found |= {n: blocks[number - numbers[0]] for n, number in enumerate(numbers, place.start)}
        return found

    def _path(self, draft: DraftFacts) -> str:
        return self.base if draft is self.known[-1] else f"{self.base}/drafts/{draft.number}"


def two_drafts(request: Request, seen: BookView) -> TwoDrafts | None:
    """The two that `?old=` and `?new=` name by number, else the last two; None in a book of one draft.

    Raises `Missing` for a number that no draft has.
    """
    known = seen.book.drafts()
    if len(known) < 2:
        return None
    chosen = [_chosen(known, request.query_params.get(name, ""), last) for name, last in (("old", -2), ("new", -1))]
    old, new = sorted(chosen, key=lambda draft: draft.number)
    if old is new:  # a draft beside itself tells nothing: then beside the one before it, or after
        old, new = known[max(0, old.number - 2)], known[max(1, old.number - 1)]
    return _beside(request, seen, known, old, new)


def beside_newest(request: Request, seen: BookView, old: DraftFacts) -> TwoDrafts:
    """An older draft and the newest."""
    known = seen.book.drafts()
    return _beside(request, seen, known, old, known[-1])


def _beside(
    request: Request, seen: BookView, known: tuple[DraftFacts, ...], old: DraftFacts, new: DraftFacts
) -> TwoDrafts:
    found = request.app.state.comparing.compared(seen.book, old.id, new)
    return TwoDrafts(seen.book, f"/books/{seen.facts.id}", known, old, new, found, seen.book.said_of(old.id, new.id))


def _chosen(known: tuple[DraftFacts, ...], number: str, last: int) -> DraftFacts:
    if not number:
        return known[last]
    for draft in known:
        if str(draft.number) == number:
            return draft
    raise Missing(f"Draft {number}")


def _named(side: Side, words: tuple[int, ...], path: str) -> tuple[Named, ...]:
    chapters = [chapter_name(chapter) for chapter in side.division.chapters]
    told = side.told
    return tuple(
        Named(
            scene.id,
            n,
            scene.code,
            scene_name(scene, told.paragraphs[place.start] if place.start < place.end else ""),
            place.chapter,
            chapters[place.chapter],
            words[n],
            f"{path}/scenes/{scene.code}",
        )
        for n, (scene, place) in enumerate(zip(side.scenes, told.scenes, strict=True))
    )


def _chapters(side: Side, scenes: Sequence[Named]) -> tuple[Named, ...]:
    """Each leads to its first scene."""
    own = [[one for one in scenes if one.at == n] for n in range(len(side.chapters))]
    return tuple(
        Named(chapter, n, f"ch{n + 1}", some[0].chapter, n, "", sum(one.words for one in some), some[0].path)
        for n, (chapter, some) in enumerate(zip(side.chapters, own, strict=True))
    )
