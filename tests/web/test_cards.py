"""The Cards screen's contexts, and its acts as forms: what they lead to, and what they refuse."""

import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

import pytest
from starlette.testclient import TestClient

from afterdraft.store.book import BookFile
from afterdraft.web.guard import cookie_name
from afterdraft.web.laid import Table, table
from afterdraft.web.marks import PROVIDERS, Mark, marks
from afterdraft.web.render import SAID
from afterdraft.web.view import BookView, view
from afterdraft.work.cards.add_card import add_card
from afterdraft.work.cards.arranging import DRAFT, Spot
from afterdraft.work.cards.change_rows import add_row
from afterdraft.work.cards.join_cards import join_cards
from afterdraft.work.cards.set_aside import set_aside
from afterdraft.work.cards.split_card import split_card
from afterdraft.work.cards.try_arrangement import give_up, try_arrangement
from afterdraft.work.ports import Book
from tests.store.sample import begun
from tests.web.opened import KEY, PORT, opened


@pytest.fixture
def book(tmp_path: Path) -> Iterator[BookFile]:
    book, _ = begun(tmp_path)
    yield book
    book.close()


def codes(book: Book) -> list[str]:
    return [scene.code for scene in view(book).division.scenes]


def lying(shown: Table) -> list[list[str]]:
    return [[sheet.code for sheet in row.sheets] for row in shown.rows] + [[sheet.code for sheet in shown.aside]]


def test_the_drafts_own_order_has_parts_chapters_names_and_words(book: BookFile) -> None:
    shown = table(view(book), "")
    assert (shown.id, shown.fixed, shown.query) == ("", False, "")
    assert [(row.part, row.name, row.words) for row in shown.rows] == [
        ("PART ONE", "Chapter 1: The ferry", 39),
        ("", "Chapter 2", 18),
    ]
    assert [(sheet.name, sheet.titled) for sheet in shown.sheets()] == [
        ("The ferry wasn’t late; Ottla Brenn was early…", False),
        ("It rained on the well-known pier at Côte-Vieille…", False),
        ("Third step", True),
    ]


def test_cards_say_what_they_stand_for(book: BookFile) -> None:
    one, two, three = codes(book)
    join_cards(book, "", [one, two])
    split_card(book, "", three)
    made = add_card(book, "", Spot(table(view(book), "").rows[0].row.id), what="She falls in.\nAnd out.")
    shown = table(view(book), "")
    whole, new, first, piece = shown.sheets()
    assert ([scene.scene.code for scene in whole.scenes], whole.words, whole.piece) == ([one, two], 39, False)
    assert (new.code, new.name, new.titled, new.scenes, new.words) == (
        made.code,
        "She falls in. And out.",
        False,
        (),
        0,
    )
    assert (first.code, first.words, first.piece, piece.words, piece.piece) == (three, 18, True, 0, True)
    assert sum(row.words for row in shown.rows) == 57


def test_only_arrangements_that_are_tried_can_be_changed(book: BookFile) -> None:
    made = try_arrangement(book, DRAFT, "Frost")
    seen = view(book)
    assert (table(seen, "").id, table(seen, "").fixed) == (made.id, False)
    assert (table(seen, DRAFT).fixed, table(seen, DRAFT).query) == (True, "?a=draft")
    give_up(book, made.id)
    seen = view(book)
    assert (table(seen, "").id, table(seen, "").fixed) == ("", False)
    assert (table(seen, made.id).fixed, table(seen, made.id).query) == (True, f"?a={made.id}")


def test_the_arrangement_last_looked_at_is_shown_again(book: BookFile) -> None:
    first, second = try_arrangement(book, DRAFT), try_arrangement(book, DRAFT)
    assert table(view(book), "").id == second.id
    before = book.edits()
    book.set_last_arrangement(first.id)
    assert (table(view(book), "").id, book.edits()) == (first.id, before)
    give_up(book, first.id)
    assert table(view(book), "").id == second.id


def test_marks_come_from_every_provider(book: BookFile, monkeypatch: pytest.MonkeyPatch) -> None:
    scene = view(book).division.scenes[0].id

    def motive(_: BookView) -> dict[str, tuple[Mark, ...]]:
        return {scene: (Mark("ink", "M", "Motive: 2 notes", "orange"),)}

    monkeypatch.setattr("afterdraft.web.marks.PROVIDERS", (motive, *PROVIDERS, motive))
    assert [mark.letter for mark in marks(view(book))[scene]] == ["M", "M"]
    assert [mark.name for mark in table(view(book), "").sheets()[0].marks] == ["Motive: 2 notes"] * 2


@dataclass
class Screen:
    """The screen as a browser without scripts has it."""

    client: TestClient
    book: Book

    @property
    def base(self) -> str:
        return f"/books/{self.book.id}/cards"

    def post(self, act: str, *card: str, **sent: str) -> str:
        """Where it leads, in the book."""
        answer = self.client.post(f"{self.base}/{act}", data={**sent, "card": list(card)}, follow_redirects=False)
        assert answer.status_code == 303, answer.text
        return str(answer.headers["location"]).removeprefix(f"/books/{self.book.id}")

    def refused(self, act: str, status: int, *card: str, **sent: str) -> str:
        answer = self.client.post(
            f"{self.base}/{act}", data={**sent, "card": list(card)}, headers={"Accept": "application/json"}
        )
        assert answer.status_code == status
        return str(answer.json()["error"])

    def lying(self) -> list[list[str]]:
        return lying(table(view(self.book), ""))


@pytest.fixture
def screen(tmp_path: Path) -> Iterator[Screen]:
    book, _ = begun(tmp_path)
    book.close()
    with opened(Path(book.path)) as (client, shown):
        yield Screen(client, shown)


def test_moves_by_the_plain_form(screen: Screen) -> None:
    one, two, three = codes(screen.book)
    rows = [row.row.id for row in table(view(screen.book), "").rows]
    assert screen.post("move", one, a="", to=f"{rows[1]}|{three}", side="after") == f"/cards#c-{one}"
    assert screen.lying() == [[two], [three, one], []]
    screen.post("move", two, a="", to=f"{rows[1]}|{three}", side="before")
    assert screen.lying() == [[], [two, three, one], []]
    screen.post("move", one, a="", to=f"{rows[1]}|", side="before")  # a chapter's beginning has no other side
    assert screen.lying() == [[], [one, two, three], []]
    screen.post("move", three, two, a="", row=rows[0])
    assert screen.lying() == [[two, three], [one], []]


def test_every_act_leads_back_to_what_it_was_about(screen: Screen) -> None:
    one, two, three = codes(screen.book)
    assert screen.post("set-aside", one, a="") == f"/cards#c-{one}"
    assert screen.post("bring-back", one, a="") == f"/cards#c-{one}"
    assert screen.post("join", one, two, a="") == f"/cards#c-{one}"
    assert screen.post("apart", one, a="") == f"/cards#c-{one}"
    assert screen.post("split", three, a="") == f"/cards#c-{three}"
    assert screen.post("intent", two, a="", intent="cut", back=f"{screen.base}/{two}") == f"/cards/{two}#c-{two}"
    assert table(view(screen.book), "").by_code(two).laid.intent == "cut"
    screen.post("intent", two, a="", intent="none")
    assert table(view(screen.book), "").by_code(two).laid.intent is None
    made = re.fullmatch(r"/cards/([A-Z]\d+)#next-title", screen.post("new", a="", row=_rows(screen)[0], after=one))
    assert made
    assert screen.lying()[0] == [one, made[1], two]


def _rows(screen: Screen) -> list[str]:
    return [row.row.id for row in table(view(screen.book), "").rows]


def test_chapters_by_forms(screen: Screen) -> None:
    assert re.fullmatch(r"/cards#r-rw\w+", screen.post("new-chapter", a="", title="Frost", before=_rows(screen)[1]))
    frost = _rows(screen)[1]
    screen.post("move-chapter", a="", row=frost, before="")
    assert [row.name for row in table(view(screen.book), "").rows][-1] == "Frost"
    assert screen.post("title-chapter", a="", row=frost, title="Ice") == f"/cards#r-{frost}"
    assert screen.post("remove-chapter", a="", row=frost) == "/cards"
    assert "There are cards in this chapter" in screen.refused("remove-chapter", 422, a="", row=_rows(screen)[0])


def test_arrangements_by_forms(screen: Screen) -> None:
    assert screen.post("try", a="", name="Frost").startswith("/cards?a=ar")
    frost = table(view(screen.book), "").id
    assert screen.post("rename", a=frost, name="Ice") == "/cards"
    screen.post("give-up", a=frost, why="Too cold.")
    assert table(view(screen.book), "").id == ""
    page = screen.client.get(f"{screen.base}?a={frost}").text
    assert "Too cold." in page
    assert "data-table" not in page
    assert "was given up" in screen.refused("set-aside", 422, codes(screen.book)[0], a=frost)
    screen.post("take-up", a=frost)
    assert table(view(screen.book), "").id == frost


def test_what_makes_no_sense_is_refused_and_changes_nothing(screen: Screen) -> None:
    one = codes(screen.book)[0]
    before = screen.book.edits()
    assert "No card was chosen" in screen.refused("set-aside", 422, a="")
    assert "No card was chosen" in screen.refused("split", 422, a="")
    assert "two cards or more" in screen.refused("join", 422, one, a="")
    assert "no such intent" in screen.refused("intent", 422, one, a="", intent="burn")
    assert "The card Z11 is not there" in screen.refused("move", 404, "Z11", a="", row=_rows(screen)[0])
    assert "This chapter is not there" in screen.refused("move", 404, one, a="", row="rw0000000000")
    assert "This arrangement is not there" in screen.refused("move", 404, one, a="ar0000000000", row="x")
    assert "This act is not there" in screen.refused("burn", 404, one, a="")
    assert screen.book.edits() == before


def test_the_next_side_is_saved_before_there_is_an_arrangement(screen: Screen) -> None:
    one = codes(screen.book)[0]
    sent = {"text": "It snows.", "revision": "0", "client": "w", "sequence": "1", "done": "1"}
    answer = screen.client.post(f"{screen.base}/{one}/next/what", data=sent)
    assert (answer.status_code, answer.headers["afterdraft-revision"]) == (204, "2")
    assert "of “The ferry" in answer.headers["afterdraft-edits"].encode().decode("unicode-escape")
    assert table(view(screen.book), "").by_code(one).laid.next.what == "It snows."
    stale = screen.client.post(
        f"{screen.base}/{one}/next/what",
        data=sent | {"text": "It rains.", "client": "x"},
        headers={"Accept": "application/json"},
    )
    assert (stale.status_code, stale.json()["stands"]) == (409, "It snows.")


def test_a_whole_next_side_is_saved_without_scripts(screen: Screen) -> None:
    one = codes(screen.book)[0]
    back = f"{screen.base}/{one}"
    answer = screen.client.post(
        f"{back}/next",
        data={"revision": "0", "what": "It snows.", "people": "Ottla", "length": "900", "back": back},
        follow_redirects=False,
    )
    assert (answer.status_code, answer.headers["location"]) == (303, back)
    written = table(view(screen.book), "").by_code(one).laid.next
    assert (written.what, written.people, written.length) == ("It snows.", "Ottla", "900")


Change = Callable[[Book, str], object]


@pytest.mark.parametrize(
    ("change", "says"),
    [
        (lambda book, one: set_aside(book, "", [one]), "Set aside <span"),
        (lambda book, one: add_row(book, "", title="Frost & ice"), "Frost &amp; ice"),
        (lambda book, one: split_card(book, "", one), "Of scene"),
        (lambda book, one: join_cards(book, "", [one, codes(book)[1]]), "in one"),
    ],
)
def test_every_state_has_its_page(screen: Screen, change: Change, says: str) -> None:
    change(screen.book, codes(screen.book)[0])
    shown = table(view(screen.book), "")
    assert says in screen.client.get(screen.base).text
    for sheet in shown.sheets():
        assert sheet.code in screen.client.get(f"{screen.base}/{sheet.code}").text
        assert f'value="{sheet.code}"' in screen.client.get(f"{screen.base}/move?card={sheet.code}").text


def test_a_card_found_by_its_id_or_code(screen: Screen) -> None:
    made = add_card(screen.book, "", Spot(_rows(screen)[0]), title="The weir", what="She falls in.")
    arrangement = table(view(screen.book), "").id
    leads = screen.client.get(f"{screen.base}/{made.id}", follow_redirects=False).headers["location"]
    assert leads == f"{screen.base}/{made.code}?a={arrangement}"
    by_code = screen.client.get(f"/books/{screen.book.id}/search?q={made.code.lower()}", follow_redirects=False)
    assert by_code.headers["location"] == f"{screen.base}/{made.code}"
    assert f"/cards/{made.id}" in screen.client.get(f"/books/{screen.book.id}/search?q=falls").text
    give_up(screen.book, arrangement)
    assert f"/cards/{made.id}" not in screen.client.get(f"/books/{screen.book.id}/search?q=falls").text


def test_taking_a_new_card_back_from_its_own_page_leads_to_the_cards(screen: Screen) -> None:
    page = screen.post("new", a="", row=_rows(screen)[0]).partition("#")[0]
    top = screen.book.edits().undo
    assert top
    base, shown = f"/books/{screen.book.id}", table(view(screen.book), "").id
    screen.client.post(f"{base}/undo", data={"number": str(top.number)})
    let_in = f"{cookie_name(PORT)}={KEY}"
    for address in (base + page, f"{screen.base}?a={shown}"):
        back = screen.client.get(address, headers={"Cookie": f"{let_in}; {SAID}=Taken"}, follow_redirects=False)
        assert (back.status_code, back.headers.get("location")) == (303, screen.base)
        assert screen.client.get(address, headers={"Cookie": let_in}).status_code == 404


@pytest.mark.parametrize(
    ("query", "cookie", "zoom"), [("", "", 3), ("?zoom=5", "2", 5), ("", "2", 2), ("?zoom=9", "", 3), ("", "x", 3)]
)
def test_how_near(screen: Screen, query: str, cookie: str, zoom: int) -> None:
    cookies = f"{cookie_name(PORT)}={KEY}; afterdraft-zoom={cookie}"
    page = screen.client.get(screen.base + query, headers={"Cookie": cookies}).text
    assert f'data-zoom="{zoom}"' in page
