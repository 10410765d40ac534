"""Offcuts on the web: of all earlier drafts, looked up, paged, as text, put on a card's Next side."""

import re
from html import unescape
from itertools import chain

import pytest

from afterdraft.errors import NotPossible
from afterdraft.web.comparing import Comparing
from afterdraft.web.gathering import Gathering, gathered
from afterdraft.web.pages import offcuts as page
from afterdraft.web.view import view
from afterdraft.work.cards.arranging import seen
from afterdraft.work.cards.put_on_next import put_on_next
from tests.store.sample import desk_dump, undo
from tests.web.two_drafts import REWORDED, Web, typed, web
from tests.work.test_next_draft import FERRY, HOUSE, LOCK, NEW, PIER

__all__ = ["web"]

TRIES = 200  # each waits a moment for what is being gathered


def cuts(web: Web, query: str = "") -> list[str]:
    """The passages on the page, once they are gathered."""
    tries = (web.get(f"drafts/offcuts{query}") for _ in range(TRIES))
    shown = next(one for one in tries if "data-gathering" not in one)
    return [unescape(text) for text in re.findall(r"<p class=\"text\"[^>]*>([^<]*)</p>", shown)]


def test_what_any_earlier_draft_had_is_there_the_newest_first(web: Web) -> None:
    web.bring(typed([FERRY, PIER], [LOCK]))
    assert cuts(web) == [*HOUSE]
    web.bring(typed([PIER], [LOCK, NEW]))
    assert cuts(web) == [*FERRY, *HOUSE]
    assert re.findall(r'<h2 class="offcut-draft">([^<]*)', web.get("drafts/offcuts")) == ["Draft 2", "Draft 1"]


def test_what_came_back_is_no_offcut(web: Web) -> None:
    web.bring(typed([FERRY, PIER], [LOCK]))
    web.bring(typed([FERRY, PIER], [LOCK, HOUSE]))
    assert cuts(web) == []
    assert "every word of the earlier drafts stands in this one" in web.get("drafts/offcuts")


def test_a_draft_that_gave_way_is_looked_through_too(web: Web) -> None:
    web.bring(typed([FERRY, PIER], [LOCK, HOUSE, NEW]))
    web.bring(typed([FERRY, PIER], [LOCK, HOUSE]), how="again")
    assert cuts(web) == [*NEW]
    assert "Draft 2 as it was before" in web.get("drafts/offcuts")


def test_they_are_looked_up_by_words_and_by_scene(web: Web) -> None:
    ferry, _, _, house = web.codes()
    web.bring(typed([PIER], [LOCK]))
    assert cuts(web, "?q=vinegar+rooms") == [HOUSE[0]]
    assert cuts(web, f"?scene={ferry.lower()}") == [*FERRY]
    assert cuts(web, f"?q=boots&scene={ferry}") == []
    assert cuts(web, f"?q=boots&scene={house}") == [HOUSE[1]]
    assert "No passage has all these words." in web.get("drafts/offcuts?q=nowhere")


def test_a_passage_leads_to_where_it_stood(web: Web) -> None:
    house = web.codes()[3]
    web.bring(typed([FERRY, PIER], [LOCK]))
    cuts(web)
    paths = re.findall(r'href="[^"]*(/drafts/1/scenes/\w+)(#p\d+)"', web.get("drafts/offcuts"))
    assert {path for path, _ in paths} == {f"/drafts/1/scenes/{house}"}
    shown = web.get(paths[0][0][1:])
    assert all(f'id="{place[1:]}"' in shown for _, place in paths)


def test_many_are_on_several_pages_each_once_in_their_order(web: Web, monkeypatch: pytest.MonkeyPatch) -> None:
    web.bring(typed([PIER], [LOCK]))
    every = cuts(web)
    monkeypatch.setattr(page, "PASSAGES", 2)
    pages = [cuts(web, f"?page={n}") for n in (1, 2, 3)]
    assert [len(one) for one in pages] == [2, 2, 1]
    assert [*chain(*pages)] == every
    assert cuts(web, "?page=99") == pages[-1]
    assert "Page 3 of 3" in web.get("drafts/offcuts?page=2")


def test_as_plain_text_they_are_all_there(web: Web) -> None:
    web.bring(typed([PIER], [LOCK]))
    cuts(web)
    told = web.get("drafts/offcuts.txt")
    assert all(text in told for text in (*FERRY, *HOUSE))
    assert FERRY[0] not in web.get("drafts/offcuts.txt?q=vinegar")


def test_a_book_of_one_draft_has_none_and_says_how_they_come(web: Web) -> None:
    assert "Bring the next draft in" in web.get("drafts/offcuts")


def test_a_page_does_not_wait_for_a_long_gathering(web: Web, monkeypatch: pytest.MonkeyPatch) -> None:
    web.bring(typed([PIER], [LOCK]))
    gathering, comparing = Gathering(), Comparing()
    monkeypatch.setattr("afterdraft.web.gathering.MOMENT", 0)
    shown = view(web.book)
    answers = (gathering.offcuts(shown, comparing) for _ in range(10**6))  # None until the thread is through
    found = next(one for one in answers if one is not None)
    assert [one.text for one in found.passages] == [*FERRY, *HOUSE]
    assert gathering.offcuts(shown, comparing) is found
    gathering.end(web.book.id)
    assert gathering.offcuts(shown, comparing) is not found


def test_they_are_those_of_the_comparison_over_all_drafts(web: Web) -> None:
    web.bring(typed([FERRY, REWORDED], [LOCK]))
    web.bring(typed([FERRY], [NEW]))
    drafts = web.book.drafts()
    found = gathered(web.book, [draft.id for draft in drafts[:-1]], drafts[-1], Comparing())
    assert [one.text for one in found.passages] == cuts(web)
    assert {one.draft.number for one in found.passages} == {1, 2}


# On a card's Next side


def test_a_passage_is_put_on_the_next_side_by_code_and_by_name_as_one_edit(web: Web) -> None:
    ferry, pier, *_ = web.codes()
    before = desk_dump(web.book)  # type: ignore[arg-type]
    assert put_on_next(web.book, ferry.lower(), f" {HOUSE[0]}\n") == ferry
    assert seen(web.book, "").cards()[0].next.what == HOUSE[0]
    assert undo(web.book).startswith("“The house in Larder Street")  # type: ignore[arg-type]
    assert desk_dump(web.book) == before  # type: ignore[arg-type]
    put_on_next(web.book, ferry, "First.")
    put_on_next(web.book, "Ottla came down", "Second.")
    assert seen(web.book, "").cards()[0].next.what == "First.\n\nSecond."
    assert put_on_next(web.book, "it rained on the pier", "Third.") == pier


def test_no_card_of_that_name_several_and_no_words_are_refused(web: Web) -> None:
    with pytest.raises(NotPossible, match="no card called"):
        put_on_next(web.book, "the ferryman", "Words.")
    with pytest.raises(NotPossible, match="No card was named"):
        put_on_next(web.book, " ", "Words.")
    with pytest.raises(NotPossible, match="no words"):
        put_on_next(web.book, web.codes()[0], "\n")
    web.bring(typed([PIER, (PIER[0], NEW[0])], [LOCK]))
    with pytest.raises(NotPossible, match="several cards"):
        put_on_next(web.book, "It rained", "Words.")


def test_the_form_puts_it_there_and_comes_back(web: Web) -> None:
    web.bring(typed([FERRY, PIER], [LOCK]))
    code = web.codes()[0]
    data = {"words": HOUSE[1], "card": code, "back": f"{web.base}/drafts/offcuts#o2"}
    answer = web.client.post(f"{web.base}/drafts/offcuts", data=data, follow_redirects=False)
    assert (answer.status_code, answer.headers["location"]) == (303, f"{web.base}/drafts/offcuts#o2")
    assert HOUSE[1] in unescape(web.get(f"cards/{code}"))
    refused = web.client.post(f"{web.base}/drafts/offcuts", data=data | {"card": "nobody"})
    assert refused.status_code == 422
    assert HOUSE[1] in unescape(refused.text)
