"""Drafts on the web: a draft brought in, what became of each scene and what she says of it, older drafts read."""

from urllib.parse import unquote

import pytest
from httpx2 import Response

from afterdraft.work.notes.write_note import write_note
from afterdraft.work.write_field import write_once
from tests.web.two_drafts import PUNT, RETOLD, SECOND, Web, typed, web
from tests.work.test_next_draft import FERRY, HOUSE, LOCK, NEW, PIER

__all__ = ["web"]


def said(answer: Response) -> str:
    """The word that is carried to the next page."""
    return unquote(answer.cookies["afterdraft-said"])


# One draft


def test_with_one_draft_the_screen_says_what_it_is_for_and_takes_the_next(web: Web) -> None:
    page = web.get("drafts")
    assert "bring it in" in page
    assert 'aria-label="Ways to see the drafts"' not in page
    assert [how for how in ("next", "part-way", "again", "older") if f'value="{how}"' in page] == [
        "next",
        "part-way",
        "again",
        "older",
    ]
    assert web.get("drafts/side", 303) == "/drafts"
    assert f'href="{web.base}/drafts#bring"' in web.get("about")


# Bringing in


def test_the_next_draft_comes_in_by_the_form(web: Web) -> None:
    answer = web.bring(SECOND)
    assert answer.headers["location"] == f"{web.base}/drafts"
    assert said(answer) == "Draft 2 is in: 4 scenes, 169 words. Your notes and marks went along with their scenes."
    ferry, pier, lock, house = web.codes(0)
    new = web.codes()[2]
    assert web.fates() == {
        f"1-{lock}": "as it was, moved",
        f"1-{house}": "cut",
        f"1-{ferry}": "as it was",
        f"2-{new}": "new",
        f"1-{pier}": "revised",
    }


def test_a_part_of_the_next_draft_cuts_nothing(web: Web) -> None:
    answer = web.bring(typed([FERRY]), "part-way")
    assert said(answer).startswith("Draft 2 is in, as far as it goes: 1 scene")
    assert list(web.fates().values()) == ["as it was", "not reached yet", "not reached yet", "not reached yet"]
    assert web.get("drafts").count("the new draft has not come to it") == 3


def test_a_part_way_draft_gives_way_to_the_whole(web: Web) -> None:
    web.bring(typed([FERRY]), "part-way")
    assert "Draft 2 whole, now that it is done" in web.get("drafts")
    assert said(web.bring(SECOND)).startswith("Draft 2 is in: 4 scenes")
    assert len(web.book.drafts()) == 2
    assert "The next draft" in web.get("drafts")


def test_the_same_draft_again_is_no_new_round(web: Web) -> None:
    mended = (FERRY[0].replace("light", "day"), *FERRY[1:])
    answer = web.bring(typed([mended, PIER], [LOCK, HOUSE]), "again")
    assert said(answer).startswith("Draft 1 was brought in again")
    assert len(web.book.drafts()) == 1
    assert "Bring in the next draft" in web.get("drafts")


def test_an_older_draft_goes_in_behind(web: Web) -> None:
    before = web.ids()
    answer = web.bring(typed([FERRY, PUNT]), "older")
    assert answer.headers["location"] == f"{web.base}/drafts?old=1&new=2"
    assert web.ids() == before
    assert "as it was" in web.fates().values()


def test_where_the_split_is_not_sure_it_is_looked_at_first(web: Web, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(type(web.book), "doubts", lambda _, draft: ("one",))
    answer = web.bring(SECOND)
    assert answer.headers["location"] == f"{web.base}/split"
    assert "1 place in its split is not sure" in said(answer)


@pytest.mark.parametrize(
    ("how", "manuscript", "name", "words"),
    [
        ("next", typed([FERRY, PIER], [LOCK, HOUSE]), "draft.txt", "word for word"),
        ("again", typed([FERRY, PIER], [LOCK, HOUSE]), "draft.txt", "word for word"),
        ("next", b"\x00\x01\x02\x03", "draft.docx", "cannot be read"),
        ("sideways", SECOND, "draft.txt", "This way to bring a draft in"),
    ],
)
def test_what_cannot_come_in_says_why_and_changes_nothing(
    web: Web, how: str, manuscript: bytes, name: str, words: str
) -> None:
    answer = web.bring(manuscript, how, name=name, status=404 if how == "sideways" else 422)
    assert words in answer.text
    assert len(web.book.drafts()) == 1


def test_without_a_file_nothing_happens(web: Web) -> None:
    answer = web.client.post(f"{web.base}/drafts/bring", data={"how": "next"})
    assert answer.status_code == 422
    assert "No file was chosen" in answer.text


# What she says


def test_what_is_not_sure_is_asked_until_she_has_said(web: Web) -> None:
    """A scene told anew in the same place is found by its place alone."""
    web.bring(typed([FERRY, RETOLD], [LOCK, HOUSE]))
    pier = web.codes(0)[1]
    page = web.get("drafts")
    assert "Not sure of 1 scene" in page
    assert web.fates()[f"1-{pier}"] == "rewritten"
    told = web.say("as-found", scene=web.ids(0)[1])
    assert told == "/drafts"
    assert web.book.edits().undo.name == "What became of “It rained on the pier all through the week of…”: as found"  # type: ignore[union-attr]  # it was said just now
    page = web.get("drafts")
    assert "Not sure of" not in page
    assert "confirmed" in page
    web.book.undo(web.book.edits().undo.number)  # type: ignore[union-attr]  # it was said just now
    assert "Not sure of 1 scene" in web.get("drafts")


def test_a_scene_lives_on_where_she_says_and_her_notes_go_there(web: Web) -> None:
    note = write_note(web.book, "Too many rooms.", scene=web.ids()[3])
    web.bring(SECOND)
    house, new = web.codes(0)[3], web.codes()[2]
    assert web.say("lives-on", old=house, new=new.lower(), back=f"{web.base}/drafts#f-1-{house}") == (
        f"/drafts#f-1-{house}"
    )
    assert web.fates()[f"1-{house}"] == "rewritten, moved"
    assert web.book.note(note.id).scene == web.ids()[2]
    assert "you said so" in web.get("drafts")
    web.say("apart", old=house, new=new)
    assert web.fates()[f"1-{house}"] == "cut"
    assert web.book.note(note.id).scene == web.ids(0)[3]


def test_a_scene_was_cut_or_is_not_reached(web: Web) -> None:
    web.bring(typed([FERRY, NEW]), "part-way")
    pier = web.codes(0)[1]
    web.say("cut", old=pier)
    assert web.fates()[f"1-{pier}"] == "cut"
    web.say("not-reached", old=pier)
    assert web.fates()[f"1-{pier}"] == "not reached yet"


def test_a_code_that_no_scene_has_is_told(web: Web) -> None:
    web.bring(SECOND)
    house = web.codes(0)[3]
    assert "There is no scene Q99 in draft 2" in web.say("lives-on", 422, old=house, new="q99")
    assert "No scene of draft 2 was named" in web.say("lives-on", 422, old=house, new=" ")
    web.say("burnt", 404, old=house)


def test_a_line_is_opened_to_say_otherwise(web: Web) -> None:
    web.bring(SECOND)
    ferry = web.codes(0)[0]
    assert "It was cut: " not in web.get("drafts")
    assert "It was cut: Ottla came down" in web.get(f"drafts?open=1-{ferry}")


# Any two drafts, and levels


def test_any_two_drafts_are_held_against_each_other(web: Web) -> None:
    web.bring(SECOND)
    web.bring(typed([LOCK, FERRY], [NEW]))
    house = web.codes(0)[3]
    assert f"1-{house}" not in web.fates()
    assert f"1-{house}" in web.fates("drafts?old=1&new=3")
    assert web.fates("drafts?old=3&new=1") == web.fates("drafts?old=1&new=3")
    assert f'href="{web.base}/drafts/offcuts?old=1&amp;new=3"' in web.get("drafts?old=1&new=3")
    web.get("drafts?old=1&new=7", 404)


def test_by_chapters_and_the_book_in_numbers(web: Web) -> None:
    web.bring(typed([FERRY, PIER], [LOCK]))
    assert web.fates("drafts?by=chapters") == {"1-ch1": "as it was", "1-ch2": "rewritten"}
    words = {scene: len(" ".join(scene).split()) for scene in (FERRY, PIER, LOCK, HOUSE)}
    kept = words[FERRY] + words[PIER] + words[LOCK]
    book = web.get("drafts?by=book")
    for what, old, new in (("All", kept + words[HOUSE], kept), ("Kept", kept, kept)):
        assert f'<th scope="row">{what}</th><td>{old}</td><td>{new}</td>' in book
    assert f'<th scope="row">Cut</th><td>{words[HOUSE]}</td>' in book
    assert web.fates("drafts?by=book") == {}


def test_words_that_are_not_reached_are_not_counted_as_cut(web: Web) -> None:
    web.bring(typed([FERRY[:2]]), "part-way")
    book = web.get("drafts?by=book")
    beyond = sum(len(" ".join(scene).split()) for scene in (PIER, LOCK, HOUSE))
    assert f'<th scope="row">Cut</th><td>{len(FERRY[2].split())}</td>' in book
    assert f'<th scope="row">Not reached yet</th><td>{beyond}</td>' in book


# An older draft


def test_an_older_draft_is_read_as_it_was(web: Web) -> None:
    house = web.ids()[3]
    card = web.book.cards(web.book.drafts()[0].id)[house]
    write_once(web.book, "card", card.id, "summary", "She sleeps in the eleventh room.")
    write_note(web.book, "Cut the vinegar.", scene=house)
    web.bring(SECOND)
    code = web.codes(0)[3]
    outline = web.get("drafts/1")
    assert "She sleeps in the eleventh room." in outline
    assert f'href="{web.base}/drafts/1/scenes/{code}"' in outline
    assert "<textarea" not in outline.partition("<main")[2].partition("</main>")[0]
    scene = web.get(f"drafts/1/scenes/{code.lower()}")
    assert HOUSE[0] in scene
    for words in ("She sleeps in the eleventh room.", "Cut the vinegar.", "<p>Cut"):
        assert words in scene
    assert web.get("drafts/2", 303) == "/outline"
    assert web.get(f"drafts/2/scenes/{web.codes()[0]}", 303) == f"/scenes/{web.codes()[0]}"
    web.get("drafts/5", 404)
    web.get("drafts/1/scenes/Z99", 404)


def test_a_code_that_only_an_older_draft_has_is_found_there(web: Web) -> None:
    web.bring(SECOND)
    house, ferry = web.codes(0)[3], web.codes(0)[0]
    assert web.get(f"search?q={house.lower()}", 303) == f"/drafts/1/scenes/{house}"
    assert web.get(f"search?q={ferry}", 303) == f"/scenes/{ferry}"


def test_notes_on_a_scene_that_did_not_come_along_are_shown(web: Web) -> None:
    write_note(web.book, "Cut the vinegar.", scene=web.ids()[3])
    web.bring(SECOND)
    page = web.get("notes")
    assert "Notes that stayed with draft 1" in page
    assert "Cut the vinegar." in page
    assert f'href="{web.base}/drafts/1/scenes/{web.codes(0)[3]}"' in page
