"""Saves from several windows: nothing is overwritten unseen, nothing is taken in twice, nobody is in their own way."""

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from afterdraft.desk.card import CARD_FIELDS, CardField
from afterdraft.errors import Missing, Stale
from afterdraft.store.book import BookFile
from afterdraft.work.split.join_scenes import join_scenes
from afterdraft.work.split.retitle import retitle_scene
from afterdraft.work.write_field import write_field
from tests.store.sample import undo


class Window:
    """What a window does: it sends the revision it knows, counts its saves, and learns the new revision."""

    def __init__(self, book: BookFile, card: str, name: str) -> None:
        self.book, self.card, self.name = book, card, name
        self.revision = book.card(card).revision
        self.sequence = 0

    def send(self, text: str, field: CardField = "summary", *, sequence: int | None = None, done: bool = True) -> int:
        """Send a save without waiting for what was answered to those before."""
        self.sequence += 1
        return write_field(
            self.book,
            "card",
            self.card,
            field,
            text,
            revision=self.revision,
            client=self.name,
            sequence=self.sequence if sequence is None else sequence,
            done=done,
        ).revision

    def save(self, text: str, field: CardField = "summary") -> None:
        self.revision = self.send(text, field)


@pytest.fixture
def card(book: BookFile, draft: str) -> str:
    return next(iter(book.cards(draft).values())).id


@pytest.fixture
def one(book: BookFile, card: str) -> Window:
    return Window(book, card, "one")


@pytest.fixture
def two(book: BookFile, card: str) -> Window:
    return Window(book, card, "two")


def test_a_save_is_taken_in(book: BookFile, card: str, one: Window) -> None:
    one.save("Ottla is early.\r\nVery.")
    assert book.card(card).summary == "Ottla is early.\nVery."
    assert one.revision == book.card(card).revision


def test_a_window_that_did_not_see_the_change_is_told_both_texts(
    book: BookFile, card: str, one: Window, two: Window
) -> None:
    one.save("One's words.")
    with pytest.raises(Stale, match="“The ferry wasn’t late; Ottla Brenn was early…” was changed") as told:
        two.save("Two's words.")
    assert (told.value.stands, told.value.revision) == ("One's words.", book.card(card).revision)
    assert book.card(card).summary == "One's words."
    two.revision = told.value.revision  # she chooses hers
    two.save("Two's words.")
    assert book.card(card).summary == "Two's words."
    with pytest.raises(Stale):
        one.save("One again.")


def test_saves_queued_before_the_first_answer_are_not_in_each_others_way(
    book: BookFile, card: str, one: Window
) -> None:
    for field in CARD_FIELDS:
        one.send(f"{field} a", field)
        one.send(f"{field} ab", field)
    assert [getattr(book.card(card), field) for field in CARD_FIELDS] == [f"{field} ab" for field in CARD_FIELDS]


def test_a_save_sent_twice_is_taken_in_once(book: BookFile, card: str, one: Window) -> None:
    before = one.revision
    one.save("Words.")
    after, edits = book.card(card), book.edits()
    one.revision = before  # the answer was lost on its way
    assert one.send("Words.", sequence=1) == after.revision
    assert (book.card(card), book.edits()) == (after, edits)


def test_a_save_overtaken_by_a_later_one_changes_nothing(book: BookFile, card: str, one: Window) -> None:
    one.send("Later words.", sequence=2)
    one.send("Earlier", sequence=1)
    assert book.card(card).summary == "Later words."
    one.send("Other field, sent before", "leaves", sequence=1)
    assert book.card(card).leaves == "Other field, sent before"


def test_windows_in_different_fields_are_not_in_each_others_way(
    book: BookFile, card: str, one: Window, two: Window
) -> None:
    one.save("Summary by one.")
    two.save("Left by two.", "leaves")
    assert (book.card(card).summary, book.card(card).leaves) == ("Summary by one.", "Left by two.")


def test_a_change_in_another_field_that_was_not_seen_is_noticed_later(
    book: BookFile, card: str, one: Window, two: Window
) -> None:
    two.save("Left by two.", "leaves")
    one.save("Summary by one.")  # its window still shows an empty "leaves with"
    one.save("Summary by one, longer.")
    with pytest.raises(Stale):
        one.save("Left by one.", "leaves")
    assert book.card(card).leaves == "Left by two."


def test_the_same_words_twice_are_no_quarrel_and_no_edit(book: BookFile, one: Window, two: Window) -> None:
    one.save("Same.")
    edits = book.edits()
    two.save("Same.")
    assert book.edits() == edits


def test_undo_counts_as_a_change_by_someone_else(book: BookFile, card: str, one: Window) -> None:
    one.save("First.")
    one.save("Second.")
    undo(book)
    with pytest.raises(Stale) as told:
        one.save("Second, longer.")
    assert told.value.stands == "First." == book.card(card).summary


def test_a_plain_form_has_no_client_and_is_always_taken_at_its_word(book: BookFile, card: str) -> None:
    form = Window(book, card, "")
    assert form.send("First.", sequence=1)
    again = Window(book, card, "")
    again.send("Second.", sequence=1)
    assert book.card(card).summary == "Second."
    with pytest.raises(Stale):
        form.send("Third.", sequence=1)
    undo(book)
    with pytest.raises(Stale):
        again.send("Third.", sequence=2)
    assert book.card(card).summary == "First."


def test_a_card_that_went_with_a_join_is_missing(book: BookFile, draft: str) -> None:
    scene = book.division(draft).scenes[1].id
    window = Window(book, book.cards(draft)[scene].id, "one")
    join_scenes(book, scene)
    with pytest.raises(Missing):
        window.save("Too late.")


@pytest.mark.parametrize(
    ("field", "name"),
    [
        ("summary", "Summary of “The ferry”"),
        ("comes_in", "“Comes in with” of “The ferry”"),
        ("leaves", "“Leaves with” of “The ferry”"),
        ("needed_for", "“Needed for” of “The ferry”"),
    ],
)
def test_the_undo_button_names_the_field_and_the_scene(book: BookFile, draft: str, field: CardField, name: str) -> None:
    scene = book.division(draft).scenes[0].id
    retitle_scene(book, scene, "The ferry")
    Window(book, book.cards(draft)[scene].id, "one").save("Words.", field)
    top = book.edits().undo
    assert top and top.name == name


@given(st.text())
@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], deadline=None, max_examples=40)
def test_any_text_is_kept_and_undone(book: BookFile, card: str, text: str) -> None:
    before = book.card(card).summary
    Window(book, card, "w").send("start " + text, sequence=book.card(card).revision + 1)
    kept = book.card(card).summary
    assert kept == "start " + text.replace("\r\n", "\n").replace("\r", "\n").replace("\0", "")
    undo(book)
    assert book.card(card).summary == before
