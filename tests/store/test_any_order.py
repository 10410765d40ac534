"""Any run of edits, undo, redo and reopening, against a plain model: a list of states and a place in it."""

import tempfile
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, precondition, rule

from afterdraft.desk.card import CARD_FIELDS, CardField
from afterdraft.errors import EditRefused
from afterdraft.store.book import BookFile
from afterdraft.store.opening import open_book
from afterdraft.work.join_scenes import join_scenes
from afterdraft.work.make_chapter import make_chapter, unmake_chapter
from afterdraft.work.mark_matter import mark_matter, unmark_matter
from afterdraft.work.retitle import retitle_scene
from afterdraft.work.split_scene import split_scene
from afterdraft.work.write_field import write_field
from afterdraft.work.write_note import write_note
from tests.store import sample
from tests.store.sample import desk_dump, redo, undo

State = dict[str, list[tuple[object, ...]]]
paragraphs = st.integers(0, len(sample.LINES))
texts = st.text(st.characters(exclude_categories=["Cs"]), max_size=12)


class AnyOrder(RuleBasedStateMachine):
    book: BookFile
    draft: str

    @initialize()
    def begin(self) -> None:
        self.folder = tempfile.TemporaryDirectory()
        self.book, self.draft = sample.begun(Path(self.folder.name))
        self.states: list[State] = [desk_dump(self.book)]
        self.place = 0
        self.sequence = 0

    def teardown(self) -> None:
        self.book.close()
        self.folder.cleanup()

    def done(self) -> None:
        """An edit was made, or refused, or changed nothing."""
        now = desk_dump(self.book)
        if now != self.states[self.place]:
            self.states[self.place + 1 :] = [now]
            self.place += 1

    @rule(which=st.integers(0, 9), field=st.sampled_from(CARD_FIELDS), text=texts)
    def write(self, which: int, field: CardField, text: str) -> None:
        cards = list(self.book.cards(self.draft).values())
        card = cards[which % len(cards)]
        self.sequence += 1
        write_field(
            self.book,
            "card",
            card.id,
            field,
            text,
            revision=card.revision,
            client="a",
            sequence=self.sequence,
            done=True,
        )
        assert getattr(self.book.card(card.id), field) == text.replace("\r", "\n").replace("\0", "")
        self.done()

    @rule(text=texts, which=st.none() | st.integers(0, 9))
    def note(self, text: str, which: int | None) -> None:
        scenes = self.book.division(self.draft).scenes
        self.try_to(write_note, self.book, text, scene=None if which is None else scenes[which % len(scenes)].id)

    @rule(paragraph=paragraphs)
    def split(self, paragraph: int) -> None:
        self.try_to(split_scene, self.book, self.draft, paragraph)

    @rule(which=st.integers(0, 9))
    def join(self, which: int) -> None:
        scenes = self.book.division(self.draft).scenes
        self.try_to(join_scenes, self.book, scenes[which % len(scenes)].id)

    @rule(which=st.integers(0, 9), title=texts)
    def retitle(self, which: int, title: str) -> None:
        scenes = self.book.division(self.draft).scenes
        self.try_to(retitle_scene, self.book, scenes[which % len(scenes)].id, title)

    @rule(paragraph=paragraphs)
    def chapter(self, paragraph: int) -> None:
        self.try_to(make_chapter, self.book, self.draft, paragraph)

    @rule(which=st.integers(0, 9))
    def no_chapter(self, which: int) -> None:
        chapters = self.book.division(self.draft).chapters
        self.try_to(unmake_chapter, self.book, self.draft, chapters[which % len(chapters)].id)

    @rule(start=paragraphs, length=st.integers(0, 5))
    def matter(self, start: int, length: int) -> None:
        self.try_to(mark_matter, self.book, self.draft, start, start + length, where="front")

    @rule(which=st.integers(0, 9))
    def no_matter(self, which: int) -> None:
        matter = self.book.division(self.draft).matter
        if matter:
            self.try_to(unmark_matter, self.book, self.draft, matter[which % len(matter)].id)

    @precondition(lambda self: self.place > 0)
    @rule()
    def take_back(self) -> None:
        undo(self.book)
        self.place -= 1

    @precondition(lambda self: self.place + 1 < len(self.states))
    @rule()
    def do_again(self) -> None:
        redo(self.book)
        self.place += 1

    @rule()
    def reopen(self) -> None:
        self.book.close()
        self.book = open_book(Path(self.book.path), backups=Path(self.folder.name) / "backups")

    def try_to(self, act: object, *given: object, **named: object) -> None:
        assert callable(act)
        before = desk_dump(self.book)
        try:
            act(*given, **named)
        except EditRefused:
            assert desk_dump(self.book) == before
        self.done()

    @invariant()
    def it_is_as_the_model_says(self) -> None:
        assert desk_dump(self.book) == self.states[self.place]
        edits = self.book.edits()
        assert (edits.redo is not None) == (self.place + 1 < len(self.states))
        assert (edits.undo is None) == (self.place == 0)
        assert self.book.check() == ()


TestAnyOrder = pytest.mark.slow(AnyOrder.TestCase)
TestAnyOrder.settings = settings(
    max_examples=12, stateful_step_count=25, deadline=None, suppress_health_check=list(HealthCheck)
)
