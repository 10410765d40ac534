"""A later round on the web: cards anew or carried, scenes joined, split and new, chapters and the book, the outline."""

from collections.abc import Iterator
from html import unescape
from pathlib import Path

import pytest

from afterdraft import wiring
from afterdraft.home import BooksFolder
from afterdraft.platform import folders
from afterdraft.web.anew import of_the_words, share_changed
from afterdraft.work.cards.write_unit import write_unit
from afterdraft.work.drafts.compared import compared
from afterdraft.work.write_field import write_once
from tests.web.opened import opened
from tests.web.two_drafts import Web, typed
from tests.work.test_next_draft import FERRY, HOUSE, LOCK, NEW, PIER, Scenes

KEPT_BACK = "kept back until you have written this one"
WORDS = ("She counts the lamps.", "She buys a lantern.", "The gates sing.", "She sleeps in the eleventh room.")


@pytest.fixture
def web(tmp_path: Path) -> Iterator[Web]:
    """A book whose first draft is outlined, each scene in one line."""
    first = typed([FERRY, PIER], [LOCK, HOUSE])
    path = wiring.begin(
        [("a.txt", first)], folder=BooksFolder(folders()), path=tmp_path / "Ferry.afterdraft", title="F"
    )
    with opened(path) as (client, book):
        shown = Web(client, book)
        for scene, words in zip(shown.ids(), WORDS, strict=True):
            write_once(book, "card", book.cards(book.drafts()[0].id)[scene].id, "summary", words)
        yield shown


def bring(web: Web, *chapters: Scenes) -> list[str]:
    """Codes of the next draft."""
    web.bring(typed(*chapters))
    return web.codes()


def write(web: Web, place: int, words: str) -> None:
    cards = web.book.cards(web.book.drafts()[-1].id)
    write_once(web.book, "card", cards[web.ids()[place]].id, "summary", words)


def carry(web: Web, what: str, status: int = 303) -> str:
    answer = web.client.post(f"{web.base}/anew/{what}", follow_redirects=False)
    assert answer.status_code == status, answer.text
    return str(answer.headers.get("location", ""))


def test_the_old_card_is_kept_back_until_the_new_one_is_written(web: Web) -> None:
    ferry, *_ = bring(web, [FERRY, PIER], [LOCK, NEW])
    for page in (f"scenes/{ferry}", f"cards/{ferry}"):
        assert KEPT_BACK in web.get(page)
        assert WORDS[0] not in web.get(page)
        wished = web.get(f"{page}?old=shown")
        assert WORDS[0] in wished
        assert KEPT_BACK not in wished
    write(web, 0, "Lamps, and a number.")
    for page in (f"scenes/{ferry}", f"cards/{ferry}"):
        shown = web.get(page)
        assert "What you wrote of draft 1" in shown
        assert WORDS[0] in shown
        assert "No word changed since you wrote this card." in shown


def test_a_card_is_carried_over_and_says_how_much_changed_since(web: Web) -> None:
    lamps = tuple(text.replace("She counted the lamps along", "He counted all lamps up") for text in FERRY)
    ferry, *_ = bring(web, [lamps, PIER], [LOCK, HOUSE])
    assert carry(web, f"scene/{ferry}") == f"{web.base}/scenes/{ferry}"
    shown = web.get(f"scenes/{ferry}")
    assert "Carried over from draft 1. About a twentieth of the words changed since you wrote this card." in shown
    assert "What you wrote of draft 1</h3>" not in shown
    assert web.book.cards(web.book.drafts()[-1].id)[web.ids()[0]].summary == WORDS[0]
    carry(web, f"scene/{ferry}", 422)


def test_carried_twice_it_says_since_which_draft(web: Web) -> None:
    ferry, *_ = bring(web, [FERRY, PIER], [LOCK, NEW])
    carry(web, f"scene/{ferry}")
    bring(web, [FERRY, PIER], [NEW])
    carry(web, f"scene/{ferry}")
    assert "No word changed since draft 2." in web.get(f"scenes/{ferry}")


def test_all_whose_scenes_are_as_they_were_are_carried_at_once(web: Web) -> None:
    bring(web, [FERRY, PIER], [(LOCK[0], NEW[0]), HOUSE])
    write(web, 1, "A lantern, wet.")
    assert "Carry the cards of the 2 scenes that are as they were" in unescape(web.get("drafts"))
    carry(web, "all")
    cards = web.book.cards(web.book.drafts()[-1].id)
    assert [cards[scene].summary for scene in web.ids()] == [WORDS[0], "A lantern, wet.", "", WORDS[3]]
    assert "that are as they were" not in web.get("drafts")
    carry(web, "all", 422)


def test_scenes_joined_have_both_old_cards_and_of_a_split_one_each_has_a_part(web: Web) -> None:
    both, lock, rest, _ = bring(web, [[*FERRY, *PIER]], [LOCK[:1], LOCK[1:], HOUSE])
    joined = web.get(f"scenes/{both}?old=shown")
    assert WORDS[0] in joined
    assert WORDS[1] in joined
    assert "Your cards of draft 1 are kept back" in web.get(f"scenes/{both}")
    for code, other in ((lock, rest), (rest, lock)):
        part = web.get(f"scenes/{code}?old=shown")
        assert WORDS[2] in part
        assert f"which lives on in {other} too." in part


def test_a_new_scene_says_so_and_one_that_was_never_written_on_says_nothing(web: Web) -> None:
    write_once(web.book, "card", web.book.cards(web.book.drafts()[0].id)[web.ids()[1]].id, "summary", "")
    codes = bring(web, [FERRY, PIER, NEW], [LOCK, HOUSE])
    assert "This scene is new in this draft." in web.get(f"scenes/{codes[2]}")
    for words in (KEPT_BACK, "This scene is new", "What you wrote of draft 1</h3>"):
        assert words not in web.get(f"scenes/{codes[1]}")


def test_a_book_of_one_draft_has_nothing_of_this(web: Web) -> None:
    code = web.codes()[0]
    for page in (f"scenes/{code}", f"cards/{code}", "whole", "outline"):
        assert "draft 1" not in web.get(page).replace("Draft 1</span>", "").partition("<main")[2]
    carry(web, f"scene/{code}", 404)


def test_cards_of_a_chapter_and_of_the_book_are_blank_shown_on_wish_and_carried(web: Web) -> None:
    for kind, unit, words in (
        ("book", None, "A crossing."),
        ("chapter", web.book.division(web.book.drafts()[0].id).chapters[1].id, "Gates and rooms."),
    ):
        write_unit(web.book, kind, unit, "summary", words, revision=0, client="", sequence=1, done=True)  # type: ignore[arg-type]
    bring(web, [NEW], [FERRY, PIER], [LOCK, HOUSE])
    draft = web.book.drafts()[-1].id
    assert web.book.unit_cards(draft) == ()
    page = web.get("whole")
    assert page.count("What you wrote of draft 1") == 2
    assert "Gates and rooms." in page
    chapter = web.book.division(draft).chapters[2].id
    carry(web, f"chapter/{chapter}")
    carry(web, "book/-")
    assert {(card.kind, card.unit, card.summary) for card in web.book.unit_cards(draft)} == {
        ("chapter", chapter, "Gates and rooms."),
        ("book", None, "A crossing."),
    }
    assert "What you wrote of draft 1" not in web.get("whole")
    carry(web, "book/-", 422)
    carry(web, f"chapter/{web.book.division(draft).chapters[0].id}", 404)


def test_the_outline_has_old_summaries_beside_those_that_are_written_anew_alone(web: Web) -> None:
    bring(web, [FERRY, PIER], [LOCK, NEW])
    write(web, 0, "Lamps, and a number.")
    assert WORDS[0] not in web.get("outline")
    beside = web.get("outline?beside=1")
    assert WORDS[0] in beside
    assert WORDS[1] not in beside


def test_the_share_of_words_that_changed_is_that_of_the_comparison(web: Web) -> None:
    bring(web, [FERRY, PIER], [(LOCK[0], NEW[0]), HOUSE])
    first, second = web.book.drafts()
    found = compared(web.book, first.id, second.id, part_way=False).found
    lock, other, new = (len(text.split()) for text in (LOCK[0], LOCK[1], NEW[0]))
    shared = len({*LOCK[1].lower().split()} & {*NEW[0].lower().split()})  # what little both have may count as kept
    share = share_changed(found, 2, [2])
    most = 1 - 2 * lock / (2 * lock + other + new)
    assert most - 2 * shared / (2 * lock + other + new) <= share <= most
    assert share_changed(found, 0, [0]) == 0


def test_shares_are_told_as_a_person_tells_them() -> None:
    assert [of_the_words(share) for share in (0, 0.01, 0.3, 0.36, 0.7, 0.98, 1)] == [
        "No word",
        "A few words",
        "About a third of the words",
        "About a third of the words",
        "About two thirds of the words",
        "Nearly all of the words",
        "Nearly all of the words",
    ]


def test_a_form_of_an_older_card_is_refused_and_gives_the_words_back(web: Web) -> None:
    card = web.book.cards(web.book.drafts()[0].id)[web.ids()[0]]
    bring(web, [FERRY, PIER], [LOCK, NEW])
    data = {"summary": "Words & more.", "revision": str(card.revision)}
    answer = web.client.post(f"{web.base}/fields/card/{card.id}", data=data)
    assert answer.status_code == 422
    assert "Words &amp; more." in answer.text
    assert web.book.card(card.id).summary == WORDS[0]
