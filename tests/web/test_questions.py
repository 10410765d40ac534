"""The Questions screen: seven at a time, passages side by side, answers that hold, checks turned down and off."""

import re
from collections.abc import Iterator, Sequence
from html import unescape
from pathlib import Path
from time import monotonic, sleep

import pytest
from starlette.testclient import TestClient

from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen
from afterdraft.web.asking import Asking
from afterdraft.web.reading import Reading
from afterdraft.web.told import NOTHING, Told
from afterdraft.work.notes.mix_ink import mix_ink
from afterdraft.work.ports import Book
from afterdraft.work.questions.let_ask import let_ask
from afterdraft.work.questions.turn_check import turn_check
from tests.web.asked import found_here, low_boat, read
from tests.web.opened import opened
from tests.web.test_reading import Child

WAIT = 10.0  # seconds until a thread has surely done what it does in hundredths
NONE_FOUND = "Nothing to ask"


@pytest.fixture
def shown(tmp_path: Path) -> Iterator[tuple[TestClient, Book]]:
    with opened(low_boat(tmp_path), asking=Asking(find=found_here)) as (client, book):
        yield client, book


def page(shown: tuple[TestClient, Book], path: str = "") -> str:
    """As it is when nothing is looked for any more."""
    client, book = shown
    address = f"/books/{book.id}/questions"
    end = monotonic() + WAIT
    while True:
        answer = client.get(address + path)
        assert answer.status_code == 200, answer.text
        if "being looked over" not in answer.text and not client.get(f"{address}/state").json()["running"]:
            return client.get(address + path).text
        assert monotonic() < end
        sleep(0.01)


def asks(html: str) -> list[str]:
    """The questions that wait for an answer."""
    return [unescape(one) for one in re.findall(r'<h2 id="asks-[0-9a-f]+">(.*?)</h2>', html)]


def fingerprints(html: str) -> list[str]:
    return list(dict.fromkeys(re.findall(r'name="question" value="([0-9a-f]{64})"', html)))


def do(shown: tuple[TestClient, Book], act: str, question: str, **more: str) -> str:
    """Where it leads."""
    client, book = shown
    answer = client.post(
        f"/books/{book.id}/questions", data={"do": act, "question": question, **more}, follow_redirects=False
    )
    assert answer.status_code == 303, answer.text
    return answer.headers["location"]


def test_seven_at_first_the_sharpest_first_and_no_total(shown: tuple[TestClient, Book]) -> None:
    html = page(shown)
    assert len(asks(html)) == 7
    assert asks(html)[0].startswith("“The lamp over the lock swung…” and what follows")
    main = html.partition('<main id="main"')[2].partition("</main>")[0]
    assert not re.search(r"\b(?:9|nine) (?:questions|in all)|of 9|2 more", re.sub(r"<[^>]*>", " ", main))


def test_a_passage_leads_to_its_place_and_says_where_it_is(shown: tuple[TestClient, Book]) -> None:
    client, book = shown
    html = page(shown)
    links = re.findall(r'<a href="(/books/[^"]*/scenes/(\w+)#p(\d+))" class="passage-scene">', html)
    codes = [one.code for one in book.division(book.drafts()[0].id).scenes]
    assert {code for _, code, _ in links} <= set(codes)
    path, _, paragraph = links[0]
    assert f'id="p{paragraph}"' in client.get(path.partition("#")[0]).text
    assert "Chapter 1" in html


def test_what_stands_is_not_asked_again_and_is_found_among_the_answers(shown: tuple[TestClient, Book]) -> None:
    first = fingerprints(page(shown))[0]
    do(shown, "stand", first, why="Two lamps.")
    assert first not in fingerprints(page(shown))
    answered = page(shown, "/answered")
    assert "Two lamps." in answered
    assert "words are not in this draft" not in answered
    do(shown, "again", first)
    assert fingerprints(page(shown))[0] == first


def test_the_seven_stay_together_until_they_are_answered_then_come_the_next(shown: tuple[TestClient, Book]) -> None:
    html = page(shown)
    these = re.search(r"\?these=([0-9a-f,]+)", html)
    assert these
    query = f"?these={these[1]}"
    for left, one in zip(range(6, -1, -1), fingerprints(html), strict=True):
        do(shown, "stand", one)
        html = page(shown, query)
        assert len(asks(html)) == left
        assert html.count('class="question answered"') == 7 - left
        assert ("The next 2" in html) == (left == 0)
    last = fingerprints(page(shown))
    assert len(last) == 2
    for one in last:
        do(shown, "stand", one)
    assert "Every question is answered" in page(shown)


def undo_top(book: Book, name: str) -> None:
    top = book.edits().undo
    assert top
    assert top.name == name
    book.undo(top.number)


def test_less_sure_checks_wait_until_they_are_let_ask_all_at_once(tmp_path: Path) -> None:
    def find(checks: Sequence[str], seen: Seen, facts: Sequence[str]) -> dict[str, tuple[Finding, ...]]:
        span = seen.span(3, 0, 0, 12)
        asked = Finding(evidence=(span,), strength=0.5, subject="boat", words={"charge": "keep it", "thing": "boat"})
        return {check: (asked,) if check == "charge" else () for check in checks}

    with opened(low_boat(tmp_path), asking=Asking(find=find)) as (client, book):
        html = page((client, book))
        assert not asks(html)
        assert "they would ask one thing." in html
        left = client.post(f"/books/{book.id}/questions/checks", data={"let": "all"}, follow_redirects=False)
        assert left.status_code == 303
        html = page((client, book))
        assert len(asks(html)) == 1
        assert "they would ask" not in html
        undo_top(book, "Let the less sure checks ask")
        turn_check(book, "charge", "off")
        let_ask(book)
        assert book.turned_checks()["charge"] == "off"  # as she turned it
        let_ask(book)
        undo_top(book, "Let the less sure checks ask")  # the same again is no edit
        assert "they would ask" not in page((client, book))


def test_those_left_for_now_make_room_for_others(shown: tuple[TestClient, Book]) -> None:
    html = page(shown)
    link = re.search(r'href="[^"]*/questions(\?past=[^"]*)"', html)
    assert link
    others = page(shown, link[1])
    assert len(asks(others)) == 2
    assert not set(asks(others)) & set(asks(html))
    assert "Back to those you left" in others
    assert len(asks(page(shown))) == 7  # they wait


def test_a_note_in_an_ink_lies_on_the_passages(shown: tuple[TestClient, Book]) -> None:
    client, book = shown
    ink = mix_ink(book, "Continuity")
    first = fingerprints(page(shown))[0]
    do(shown, "note", first, ink=ink)
    (note,) = book.notes()
    assert note.ink == ink
    assert len(note.anchors) == 2
    assert f"#note-{note.id}" in page(shown, "/answered")
    scene = next(one.code for one in book.division(book.drafts()[0].id).scenes if one.id == note.scene)
    assert 'class="noted"' in client.get(f"/books/{book.id}/scenes/{scene}").text


def test_a_change_has_the_scenes_as_places(shown: tuple[TestClient, Book]) -> None:
    _, book = shown
    first = fingerprints(page(shown))[0]
    do(shown, "plan", first)
    (change,) = book.changes()
    assert len(change.places) == 2
    assert f"plan#c-{change.id}" in page(shown, "/answered")


def test_a_check_is_turned_off_and_on_in_this_book(shown: tuple[TestClient, Book]) -> None:
    client, book = shown
    page(shown)
    for turned, count in (("off", 2), ("on", 7)):
        answer = client.post(
            f"/books/{book.id}/questions/checks",
            data={"check": "placeholder", "turned": turned},
            follow_redirects=False,
        )
        assert answer.status_code == 303
        assert len(asks(page(shown))) == count
    html = page(shown, "/checks")
    assert html.count('aria-pressed="true"') == html.count('class="how-found')
    assert "What it cannot see" in html


@pytest.mark.parametrize(
    ("path", "data", "status"),
    [
        ("", {"do": "stand", "question": "0" * 64}, 404),
        ("", {"do": "note", "question": ""}, 404),
        ("", {"do": "again", "question": "0" * 64}, 404),
        ("", {"do": "sing", "question": "0" * 64}, 422),
        ("/checks", {"check": "no such", "turned": "off"}, 404),
        ("/checks", {"check": "trait", "turned": "up"}, 422),
    ],
)
def test_what_is_not_there_is_refused_in_words(
    shown: tuple[TestClient, Book], path: str, data: dict[str, str], status: int
) -> None:
    client, book = shown
    answer = client.post(f"/books/{book.id}/questions{path}", data=data)
    assert answer.status_code == status
    assert book.answers() == ()


@pytest.mark.parametrize("these", ["zzz", "0,1,2", "," * 50, "'\"<b>"])
def test_an_address_of_questions_that_are_gone_shows_those_that_wait(
    shown: tuple[TestClient, Book], these: str
) -> None:
    page(shown)
    assert len(asks(page(shown, f"?these={these}&past={these}"))) == 7


def test_a_mark_in_the_margin_where_a_question_rests(shown: tuple[TestClient, Book]) -> None:
    client, book = shown
    scenes = book.division(book.drafts()[0].id).scenes
    before = client.get(f"/books/{book.id}/scenes/{scenes[0].code}").text
    assert "asked-here" not in before  # Scenes begin no asking of their own while nothing is read
    page(shown)
    here = client.get(f"/books/{book.id}/scenes/{scenes[1].code}").text
    assert here.count('<details class="asked-here">') == 1
    assert "A question is asked here" in here
    assert re.search(r'<span class="asked">The lamp over the lock swung twice[^<]*at all\.</span>', here)
    question = fingerprints(here)[0]
    do(shown, "stand", question)
    page(shown)
    assert "asked-here" not in client.get(f"/books/{book.id}/scenes/{scenes[1].code}").text


def test_scenes_begin_asking_by_themselves_when_the_draft_is_read(tmp_path: Path) -> None:
    class Tells(Reading):
        """Nothing of what it has read."""

        def told(self, book: Book, draft: str) -> Told:
            return NOTHING

    reading = Tells(on=True, reader=Child(), rest=0.0)  # type: ignore[arg-type]  # as far as it is asked, it is one
    with opened(low_boat(tmp_path), asking=Asking(find=found_here), reading=reading) as (client, book):
        scene = book.division(book.drafts()[0].id).scenes[1].code
        end = monotonic() + WAIT
        while "A question is asked here" not in client.get(f"/books/{book.id}/scenes/{scene}").text:
            assert monotonic() < end
            sleep(0.01)


def test_what_waits_for_reading_is_said(shown: tuple[TestClient, Book]) -> None:
    assert "is asked when the draft is read to its end" in page(shown)


def test_while_the_draft_is_read_it_says_so_and_shows_what_can_be_asked_already(tmp_path: Path) -> None:
    child = Child()
    child.most = 0  # it does not come further for now
    reading = Reading(on=True, reader=child, rest=0.0)  # type: ignore[arg-type]  # as far as it is asked, it is one
    with opened(low_boat(tmp_path), asking=Asking(find=found_here), reading=reading) as (client, book):
        address = f"/books/{book.id}/questions"
        end = monotonic() + WAIT
        while len(asks(html := client.get(address).text)) < 7 or "Reading the draft: 0 of 10 scenes" not in html:
            assert monotonic() < end
            sleep(0.01)
        assert "What needs no reading is asked already" in html
        child.most = 99


def test_in_another_language_it_says_what_is_not_asked(tmp_path: Path) -> None:
    reading = Reading(on=True)
    path = low_boat(tmp_path, language="de-DE")
    with opened(path, asking=Asking(find=found_here), reading=reading) as shown:
        html = page(shown)
        assert len(asks(html)) == 7
        assert "what would rest on people, speech and times is not asked" in html
        assert "These are all" not in html
        for one in fingerprints(html):
            do(shown, "stand", one)
        assert "These are all that is asked of the draft as it stands" in page(shown)


def test_a_book_of_which_nothing_is_asked(tmp_path: Path) -> None:
    text = "THE LOW BOAT\n\nby Perrin Vane\n\n\nCHAPTER ONE\n\nOdile came down before it was light.\n"
    with opened(low_boat(tmp_path, text), asking=Asking(find=found_here)) as shown:
        html = page(shown)
        assert NONE_FOUND in html
        assert "no more" in html


def test_tables_wait_for_reading_too(shown: tuple[TestClient, Book]) -> None:
    assert "none are there yet" in page(shown, "/shown")


def test_checks_are_reached_by_kind(shown: tuple[TestClient, Book]) -> None:
    html = page(shown, "/checks")
    links = re.findall(r'<a href="#(f-\d+)">([^<]+)</a>', html)
    assert links == re.findall(r'<h2 id="(f-\d+)">([^<]+)</h2>', html)
    assert len(links) > 3


def test_an_edit_does_not_say_that_the_draft_is_read_again(shown: tuple[TestClient, Book]) -> None:
    client, book = shown
    read(book)
    assert "is asked when the draft is read" not in page(shown)
    do(shown, "stand", fingerprints(page(shown))[0])
    html = client.get(f"/books/{book.id}/questions").text
    assert len(asks(html)) == 7
    assert "reading-state" not in html
