"""Any run of edits, undo, redo and reopening, against a plain model: a list of states and a place in it."""

import tempfile
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, precondition, rule

from afterdraft.desk.anchor import Passage
from afterdraft.desk.answer import TURNS, Turned
from afterdraft.desk.card import CARD_FIELDS, CardField
from afterdraft.desk.cast import PRESENCES, Presence
from afterdraft.desk.lines import DOES, Does
from afterdraft.desk.note import About
from afterdraft.errors import EditRefused
from afterdraft.manuscript.division import Scene
from afterdraft.questions.question import Question, Span
from afterdraft.store.book import BookFile
from afterdraft.store.opening import open_book
from afterdraft.work.cast.carry import carry
from afterdraft.work.cast.found import Found
from afterdraft.work.cast.join_known import join_known
from afterdraft.work.cast.mark_presence import mark_presence
from afterdraft.work.cast.refuse_name import refuse_name
from afterdraft.work.cast.say_present import say_present
from afterdraft.work.cast.say_speaker import say_speaker
from afterdraft.work.cast.set_scene_time import set_scene_time
from afterdraft.work.lines.link_scenes import link_scenes
from afterdraft.work.lines.mark_point import mark_point
from afterdraft.work.lines.put_in_strand import put_in_strand
from afterdraft.work.lines.remove_line import remove_line
from afterdraft.work.notes.guard_passage import guard_passage, let_go
from afterdraft.work.notes.mix_ink import mix_ink, remove_ink
from afterdraft.work.notes.write_note import write_note, write_note_on_passage
from afterdraft.work.questions.let_stand import let_stand
from afterdraft.work.questions.note_question import note_question
from afterdraft.work.questions.set_ground import set_ground
from afterdraft.work.questions.take_answer_back import take_answer_back
from afterdraft.work.questions.turn_check import turn_check
from afterdraft.work.split.join_scenes import join_scenes
from afterdraft.work.split.make_chapter import make_chapter, unmake_chapter
from afterdraft.work.split.mark_matter import mark_matter, unmark_matter
from afterdraft.work.split.retitle import retitle_scene
from afterdraft.work.split.split_scene import split_scene
from afterdraft.work.write_field import write_field
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

    @rule(paragraph=paragraphs, text=texts, inked=st.booleans())
    def note_on_words(self, paragraph: int, text: str, inked: bool) -> None:
        on = [Passage(paragraph, 0, 2), Passage(paragraph + 1, 0, 3)]
        ink = self.book.inks()[-1].id if inked and self.book.inks() else None
        self.try_to(write_note_on_passage, self.book, text, draft=self.draft, passages=on, ink=ink)
        self.try_to(guard_passage, self.book, self.draft, on[:1], why=text)

    @rule(which=st.integers(0, 9), on_book=st.booleans())
    def note_on_a_chapter(self, which: int, on_book: bool) -> None:
        chapters = self.book.division(self.draft).chapters
        about = About(book=True) if on_book or not chapters else About(chapter=chapters[which % len(chapters)].id)
        self.try_to(write_note, self.book, "Too soon?", about=about)

    @rule(name=st.sampled_from(["Motive", "Pace", "Mood"]))
    def ink(self, name: str) -> None:
        known = {one.name: one.id for one in self.book.inks()}
        if name in known:
            self.try_to(remove_ink, self.book, known[name])
        else:
            self.try_to(mix_ink, self.book, name)

    @rule()
    def let_it_go(self) -> None:
        for one in self.book.guarded(self.draft)[:1]:
            self.try_to(let_go, self.book, self.draft, one.id)

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

    @rule(which=st.integers(0, 9), name=st.sampled_from("AB"), does=st.sampled_from(DOES["setup"]), whole=st.booleans())
    def mark(self, which: int, name: str, does: Does, whole: bool) -> None:
        scene = self.scene(which)
        passages = () if whole else (Passage(scene.at, 0, 2), Passage(scene.at + 1, 0, 3))
        self.try_to(mark_point, self.book, "setup", name, does, scenes=[scene.id], passages=passages)

    @rule(about=st.sampled_from("PQ"), noted=st.booleans(), turned=st.sampled_from(TURNS))
    def answer(self, about: str, noted: bool, turned: Turned) -> None:
        question = Question("trait", f"Is {about} meant?", (0,), (), 0.5, {}, (Span(0, 0, 0, 1, "T"),), about)
        if noted:
            self.try_to(note_question, self.book, self.draft, question)
        else:
            self.try_to(let_stand, self.book, question, why=turned)
        self.try_to(turn_check, self.book, "trait", turned)

    @rule(place=st.sampled_from(["52.6, 1.3", "-33, 18.5", ""]), year=st.sampled_from(["1912", ""]))
    def set_ground(self, place: str, year: str) -> None:
        self.try_to(set_ground, self.book, place, year)

    @precondition(lambda self: self.book.answers())
    @rule(which=st.integers(0, 9))
    def ask_again(self, which: int) -> None:
        answers = self.book.answers()
        self.try_to(take_answer_back, self.book, answers[which % len(answers)].fingerprint)

    @rule(which=st.integers(0, 9), who=st.sampled_from("PQ"), how=st.sampled_from(PRESENCES))
    def presence(self, which: int, who: str, how: Presence) -> None:
        self.try_to(mark_presence, self.book, [self.scene(which).id], who, how)
        self.try_to(carry, self.book, self.scene(which).id, who, comes_in=how, leaves="")

    @rule(which=st.integers(0, 9), other=st.integers(0, 9), name=st.sampled_from(["Then", "Now", ""]))
    def link(self, which: int, other: int, name: str) -> None:
        self.try_to(link_scenes, self.book, self.scene(which).id, source=self.scene(other).id, why=name)
        self.try_to(put_in_strand, self.book, [self.scene(which).id], name)

    @rule(which=paragraphs, name=texts, how=st.sampled_from([*PRESENCES, "not here"]))
    def correct(self, which: int, name: str, how: Presence) -> None:
        self.try_to(say_present, self.book, self.scene(which).id, Found(name, (f"{name}!",)), how)
        self.try_to(set_scene_time, self.book, self.scene(which).id, name)
        self.try_to(refuse_name, self.book, "person", Found(name))

    @rule(which=paragraphs, name=texts)
    def speak(self, which: int, name: str) -> None:
        self.try_to(say_speaker, self.book, self.draft, [Passage(which, 0, 3)], Found(name) if name else None)

    @rule()
    def join_people(self) -> None:
        people = [one.id for one in self.book.known("person")]
        if len(people) > 1:
            self.try_to(join_known, self.book, "person", into=people[0], of=people[1])

    @rule()
    def remove(self) -> None:
        for line in self.book.lines(self.draft)[:1]:
            self.try_to(remove_line, self.book, line.id)

    def scene(self, which: int) -> Scene:
        scenes = self.book.division(self.draft).scenes
        return scenes[which % len(scenes)]

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
