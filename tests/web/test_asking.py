"""Asking in the background: only checks that look at something else are run again, and nothing a page waits for."""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from pathlib import Path
from time import monotonic, sleep

import pytest

from afterdraft import apart
from afterdraft.errors import TooLarge
from afterdraft.questions.catalogue import CHECKS
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import READ, Seen
from afterdraft.store.book import BookFile
from afterdraft.web.asking import Asked, Asking
from afterdraft.work.cast.add_known import add_known
from afterdraft.work.lines.mark_point import mark_point
from afterdraft.work.questions.let_stand import let_stand
from afterdraft.work.questions.to_answer import waiting
from afterdraft.work.split.join_scenes import join_scenes
from tests.web.asked import SCENES, TEXT, begun, bring_text, found_here, read

WAIT = 5.0  # seconds until a thread has surely done what it does in hundredths
WORDS = {check.id for check in CHECKS if set(check.reads) == {"words"}}
MARKED = {check.id for check in CHECKS if "marks" in check.reads and not READ & set(check.reads)}
SLOW = {check.id for check in CHECKS} - MARKED


class Child:
    """Stands in for the child, and remembers what it was asked; facts are told of and not looked at."""

    def __init__(self) -> None:
        self.asked: list[tuple[set[str], int]] = []  # checks, and of how many scenes it had facts
        self.fails: Exception | None = None

    def __call__(self, checks: Sequence[str], seen: Seen, facts: Sequence[str]) -> dict[str, tuple[Finding, ...]]:
        self.asked.append((set(checks), len(facts)))
        if self.fails:
            raise self.fails
        return found_here(checks, seen, facts)


@pytest.fixture
def book(tmp_path: Path) -> Iterator[BookFile]:
    with begun(tmp_path) as book:
        yield book


@pytest.fixture
def child() -> Child:
    return Child()


def asked(asking: Asking, book: BookFile, *, done: bool = False) -> Asked:
    """As a page that is looked at until all is asked."""
    facts = book.facts()  # of the newest draft
    assert facts.draft is not None
    end = monotonic() + WAIT
    while True:
        found = asking.asked(book, facts.draft, (book.edits(), facts.changed), read=done, patience=0.2)
        if found and found.stamp == (book.edits(), facts.changed) and not (done and found.can_have_more):
            return found
        assert monotonic() < end
        sleep(0.005)


def test_what_needs_no_reading_is_asked_and_kept_with_the_book(book: BookFile, child: Child) -> None:
    found = asked(Asking(find=child), book)
    assert len(found.questions) == 9
    assert (found.lacking, found.trouble) == (True, False)
    assert child.asked == [(WORDS, 0)]
    again = asked(Asking(find=child), book)  # a program started anew
    assert again.questions == found.questions
    assert len(child.asked) == 1


def test_what_rests_on_facts_follows_when_they_are_read(book: BookFile, child: Child) -> None:
    asking = Asking(find=child)
    asked(asking, book)
    read(book)
    assert not asked(asking, book, done=True).lacking
    assert child.asked[1:] == [(SLOW - WORDS, 10)]


def test_an_edit_is_asked_about_as_far_as_it_touches(book: BookFile, child: Child) -> None:
    read(book)
    asking, draft = Asking(find=child), book.drafts()[0].id
    asked(asking, book)
    child.asked.clear()
    add_known(book, "place", "The weir")  # no check looks at places alone
    scene = book.division(draft).scenes[0].id
    mark_point(book, "thread", "The boat", "opens", scenes=[scene])
    found = asked(asking, book)
    assert [checks & WORDS for checks, _ in child.asked] == [set()] * len(child.asked)
    assert all(checks <= {c.id for c in CHECKS if {"marks", "cast"} & set(c.reads)} for checks, _ in child.asked)
    assert any(one.check == "thread open" for one in found.questions)  # asked without the child
    join_scenes(book, book.division(draft).scenes[1].id)
    child.asked.clear()
    read(book)
    asked(asking, book)
    assert set().union(*(checks for checks, _ in child.asked)) >= WORDS


def test_a_page_waits_for_nothing(book: BookFile) -> None:
    let_on: list[bool] = []

    def slow(checks: Sequence[str], seen: Seen, facts: Sequence[str]) -> dict[str, tuple[Finding, ...]]:
        while not let_on:
            sleep(0.005)
        return found_here(checks, seen, facts)

    asking, facts = Asking(find=slow), book.facts()
    assert facts.draft is not None
    stamp = (book.edits(), facts.changed)
    first = asking.asked(book, facts.draft, stamp, patience=0.01)
    assert first is None or first.stamp is None
    assert asking.busy(book, facts.draft.id)
    let_on.append(True)
    assert len(asked(asking, book).questions) == 9
    end = monotonic() + WAIT
    while asking.busy(book, facts.draft.id):
        assert monotonic() < end
        sleep(0.005)


@pytest.mark.parametrize("trouble", [TooLarge("The draft", "it took too long"), apart.ReadingFault()])
def test_where_the_child_fails_the_others_are_there_and_it_is_said(
    book: BookFile, child: Child, trouble: Exception
) -> None:
    mark_point(book, "thread", "The boat", "opens", scenes=[book.division(book.drafts()[0].id).scenes[0].id])
    child.fails = trouble
    found = asked(Asking(find=child), book)
    assert found.trouble
    assert {one.check for one in found.questions} <= MARKED
    assert found.questions


def test_an_answer_begins_nothing(book: BookFile, child: Child) -> None:
    asking = Asking(find=child)
    found, draft = asked(asking, book), book.drafts()[0]
    assert found.stamp
    let_stand(book, found.questions[0])
    after = (book.edits(), book.facts().changed)
    asking.still(book, draft, found.stamp, after)
    again = asking.asked(book, draft, after, patience=0.0)
    assert again
    assert again.stamp == after
    assert not asking.busy(book, draft.id)


def test_what_is_not_english_lacks_nothing(tmp_path: Path, book: BookFile, child: Child) -> None:
    (draft,) = book.drafts()
    asking = Asking(find=child)
    stamp = (book.edits(), book.facts().changed)
    end = monotonic() + WAIT
    while not (found := asking.asked(book, replace(draft, language="de"), stamp)) or found.stamp is None:
        assert monotonic() < end
    assert not found.lacking
    assert len(found.questions) == 9


def test_a_closed_book_is_forgotten(book: BookFile, child: Child) -> None:
    asking = Asking(find=child)
    asked(asking, book)
    (draft,) = book.drafts()
    assert asking.last(book, draft)
    asking.end(book.id)
    assert asking.last(book, draft) is None


def test_what_stands_in_one_draft_stands_in_the_next_until_its_words_change(book: BookFile, child: Child) -> None:
    asking = Asking(find=child)
    for one in asked(asking, book).questions:
        let_stand(book, one)
    later = TEXT.replace(SCENES[0], f"{SCENES[0]} Rain came over the water.\n\n***\n\nA scene that was not there.")
    bring_text(book, later.replace("and had no change", "and had no money left"))
    found = asked(asking, book).questions
    assert len(found) == 9
    (other,) = waiting(found, book.answers(), {})
    assert other.evidence[0].quote.endswith("and had no money left.")
    assert other.scenes == (8,)  # one further on than it was
