"""Answers to questions: what stands and what was noted is not asked again until the words it rests on change."""

import pytest

from afterdraft.desk.answer import TURNS, Turned
from afterdraft.desk.ground import Ground
from afterdraft.errors import Missing, NotPossible
from afterdraft.questions.at_first import AT_FIRST
from afterdraft.questions.catalogue import BY_ID, CHECKS
from afterdraft.questions.question import Question, Span
from afterdraft.store.book import BookFile
from afterdraft.work.notes.mix_ink import mix_ink
from afterdraft.work.questions.let_stand import let_stand
from afterdraft.work.questions.note_question import note_question, plan_question
from afterdraft.work.questions.set_ground import set_ground
from afterdraft.work.questions.take_answer_back import take_answer_back
from afterdraft.work.questions.to_answer import STRONG, waiting
from afterdraft.work.questions.turn_check import turn_check
from afterdraft.work.split.join_scenes import join_scenes
from tests.store.sample import TEXTS, desk_dump, redo, undo

OTTLA = Span(0, 0, 23, 34, "Ottla Brenn")  # in the first paragraph of the first scene
STEP = Span(2, 0, 31, 36, "third")
ASKS = "Ottla Brenn comes early in “The ferry”. Is the third step meant?"


def question(*evidence: Span, strength: float = 0.7, check: str = "trait", subject: str = "ottla") -> Question:
    scenes = tuple(sorted({one.scene for one in evidence}))
    return Question(check, ASKS, scenes, (), strength, {}, evidence, subject)


TWO = question(OTTLA, STEP)


def test_the_sample_holds_the_evidence() -> None:
    assert TEXTS[3][OTTLA.start : OTTLA.end] == OTTLA.quote
    assert TEXTS[9][STEP.start : STEP.end] == STEP.quote


def test_what_stands_is_not_asked_again_and_is_taken_back(book: BookFile) -> None:
    before = desk_dump(book)
    let_stand(book, TWO, why="  She was\r\nnever late. ")
    (answer,) = book.answers()
    assert (answer.answer, answer.check, answer.asks, answer.why) == ("stands", "trait", ASKS, "She was\nnever late.")
    assert answer.made
    assert waiting([TWO], book.answers(), {}) == ()
    assert undo(book) == "Let it stand: “Ottla Brenn comes early in ‘The ferry’. Is the…”"
    assert desk_dump(book) == before
    redo(book)
    take_answer_back(book, TWO.fingerprint)
    assert waiting([TWO], book.answers(), {}) == (TWO,)
    with pytest.raises(Missing):
        take_answer_back(book, TWO.fingerprint)


def test_the_same_words_elsewhere_are_the_same_question_and_other_words_are_not(book: BookFile) -> None:
    let_stand(book, TWO)
    moved = question(Span(1, 1, 5, 16, "Ottla  Brenn"), Span(0, 0, 0, 5, "third"))
    other = question(OTTLA, Span(2, 0, 31, 36, "fourth"))
    assert waiting([moved, other], book.answers(), {}) == (other,)


def test_a_note_lies_on_the_passages_in_its_ink(book: BookFile, draft: str) -> None:
    ink = mix_ink(book, "Continuity")
    before = desk_dump(book)
    made = note_question(book, draft, TWO, ink=ink)
    note = book.note(made)
    assert (note.text, note.ink, note.scene) == (ASKS, ink, book.division(draft).scenes[0].id)
    assert [(one.paragraph, one.quote) for one in note.anchors] == [(3, "Ottla Brenn"), (9, "third")]
    assert [(one.answer, one.note) for one in book.answers()] == [("noted", made)]
    undo(book)
    assert desk_dump(book) == before  # the note and the answer are one edit


def test_a_note_has_her_words_and_lies_on_the_scene_where_there_are_no_passages(book: BookFile, draft: str) -> None:
    bare = Question("thread open", ASKS, (1,), (), 0.7, {}, (), "the keeper")
    note = book.note(note_question(book, draft, bare, text="Close it."))
    assert (note.text, note.scene, note.anchors) == ("Close it.", book.division(draft).scenes[1].id, ())
    nowhere = Question("thread open", ASKS, (), (), 0.7, {}, (), "the rain")
    assert book.note(note_question(book, draft, nowhere)).about_book


def test_a_note_is_refused_where_the_text_is_divided_otherwise_by_now(book: BookFile, draft: str) -> None:
    gone = (Span(0, 0, 23, 900, "Ottla Brenn"), Span(0, 9, 0, 5, "Ottla"), Span(9, 0, 0, 5, "Ottla"))
    for one in gone:
        with pytest.raises(NotPossible):
            note_question(book, draft, question(one))
    for one in gone[1:]:
        with pytest.raises(NotPossible):
            plan_question(book, draft, question(one))
    assert book.changes() == ()
    assert book.answers() == ()


def test_a_change_has_the_scenes_as_its_places(book: BookFile, draft: str) -> None:
    made = plan_question(book, draft, TWO)
    (change,) = book.changes()
    scenes = book.division(draft).scenes
    assert (change.id, change.wrong) == (made, ASKS)
    assert [place.scene for place in change.places] == [scenes[0].id, scenes[2].id]
    assert [(one.answer, one.change) for one in book.answers()] == [("noted", made)]
    undo(book)
    assert (book.changes(), book.answers()) == ((), ())


def test_another_answer_takes_the_place_of_the_first(book: BookFile, draft: str) -> None:
    let_stand(book, TWO)
    note_question(book, draft, TWO)
    assert [one.answer for one in book.answers()] == ["noted"]


@pytest.mark.parametrize(("turned", "asked"), [("on", 2), ("down", 1), ("off", 0)])
def test_a_check_asks_less_or_not_at_all(book: BookFile, turned: Turned, asked: int) -> None:
    turn_check(book, "trait", turned)
    weak, strong = question(OTTLA), question(STEP, strength=STRONG)
    other = question(STEP, check="weekday")
    found = waiting([weak, strong, other], book.answers(), book.turned_checks())
    assert len(found) == asked + 1
    assert other in found


def test_turning_is_an_edit_and_the_same_again_is_none(book: BookFile) -> None:
    for turned in TURNS:
        turn_check(book, "trait", turned)
    turn_check(book, "trait", "off")
    assert book.turned_checks() == {"trait": "off"}
    assert undo(book) == "Do not ask about “Looks that differ”"
    assert undo(book) == "Ask less about “Looks that differ”"
    assert book.turned_checks() == {}
    with pytest.raises(Missing):
        turn_check(book, "no such", "off")


def test_a_check_that_does_not_ask_at_once_asks_when_it_is_turned_on(book: BookFile) -> None:
    one = question(OTTLA, check="said twice")
    assert waiting([one], (), book.turned_checks()) == ()
    turn_check(book, "said twice", "on")
    assert waiting([one], (), book.turned_checks()) == (one,)
    undo(book)
    assert waiting([one], (), book.turned_checks()) == ()
    assert set(AT_FIRST) <= set(BY_ID)


def test_every_check_can_be_turned(book: BookFile) -> None:
    for check in CHECKS:
        turn_check(book, check.id, "off")
    assert set(book.turned_checks().values()) == {"off"}


def test_answers_outlive_a_mended_split(book: BookFile, draft: str) -> None:
    let_stand(book, TWO)
    join_scenes(book, book.division(draft).scenes[1].id)
    assert [one.fingerprint for one in book.answers()] == [TWO.fingerprint]


def test_findings_are_kept_and_are_no_edit(book: BookFile, draft: str) -> None:
    edits = book.edits()
    assert book.kept_findings(draft) == ""
    for form in ("{}", '{"a": []}'):
        book.keep_findings(draft, form)
        assert book.kept_findings(draft) == form
    assert book.edits() == edits
    book.drop_read()
    assert book.kept_findings(draft) == ""


def test_the_place_and_year_are_an_edit_and_the_same_again_is_none(book: BookFile) -> None:
    assert book.ground() is None
    for place, year in (("london", "1912"), ("London, England", "1912"), ("52.6, 1.3", "")):
        set_ground(book, place, year)
    assert book.ground() == Ground("52.6, 1.3", 52.6, 1.3)
    set_ground(book, "", "")
    assert book.ground() is None
    assert [undo(book) for _ in range(3)] == [
        "The book has no real place",
        "The book is set in 52.6, 1.3",
        "The book is set in London, England, 1912",
    ]
    assert book.ground() is None


@pytest.mark.parametrize(("place", "year"), [("Ashwater", ""), ("London", "MCM"), ("London", "12"), ("95, 10", "")])
def test_a_place_or_year_that_is_none_is_refused(book: BookFile, place: str, year: str) -> None:
    with pytest.raises(NotPossible):
        set_ground(book, place, year)
    assert book.ground() is None
