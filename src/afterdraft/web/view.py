"""What most screens of a book need to know, read once for each page."""

from dataclasses import dataclass

from afterdraft.desk.card import Card
from afterdraft.errors import Missing
from afterdraft.manuscript.division import Division
from afterdraft.manuscript.naming import chapter_name, scene_name
from afterdraft.manuscript.outline import ChapterView, Outline, SceneView, outline
from afterdraft.work.ports import Book, BookFacts, DraftFacts, Edits


@dataclass(frozen=True, slots=True)
class BookView:
    """An open book at its newest draft; at an older one where `view_then` made it."""

    book: Book
    facts: BookFacts
    draft: DraftFacts
    division: Division
    outline: Outline
    cards: dict[str, Card]  # by scene id
    openings: dict[int, str]  # first words, by paragraph
    edits: Edits

    def name(self, scene: SceneView) -> str:
        return scene_name(scene.scene, self.first_words(scene))

    def first_words(self, scene: SceneView) -> str:
        return self.openings.get(opening(scene), "")

    def chapter(self, scene: SceneView) -> ChapterView:
        return next(view for view in self.outline.chapters if view.chapter.id == scene.chapter)

    def by_code(self, code: str) -> SceneView:
        for view in self.outline.scenes:
            if view.scene.code == code.upper():
                return view
        raise Missing(f"The scene {code}")

    def by_id(self, id: str) -> SceneView | None:
        return next((view for view in self.outline.scenes if view.scene.id == id), None)

    def written(self, scene: SceneView) -> bool:
        card = self.cards.get(scene.scene.id)
        return card is not None and card.written

    @property
    def progress(self) -> int:
        """Scenes whose card says what happens."""
        return sum(1 for scene in self.outline.scenes if self.written(scene))


def opening(scene: SceneView) -> int:
    """The paragraph whose first words stand for the scene."""
    return scene.story[0] if scene.story else scene.start


def view(book: Book) -> BookView:
    """Read the newest draft of an open book. Raises `Missing` where its only draft has been taken back."""
    facts = book.facts()
    if facts.draft is None:
        raise Missing("The draft")
    return _at(book, facts, facts.draft)


def view_then(book: Book, number: int) -> BookView:
    """The same at the draft of this number, to be read only. Raises `Missing`."""
    for draft in book.drafts():
        if draft.number == number:
            return _at(book, book.facts(), draft)
    raise Missing(f"Draft {number}")


def _at(book: Book, facts: BookFacts, draft: DraftFacts) -> BookView:
    division = book.division(draft.id)
    laid_out = outline(division, book.words(draft.id))
    starts = [opening(scene) for scene in laid_out.scenes]
    return BookView(
        book=book,
        facts=facts,
        draft=draft,
        division=division,
        outline=laid_out,
        cards=book.cards(draft.id),
        openings=book.first_words(draft.id, starts),
        edits=book.edits(),
    )


def chapter_title(chapter: ChapterView) -> str:
    return chapter_name(chapter.chapter)
