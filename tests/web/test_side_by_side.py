"""Scenes of both drafts side by side: changed words marked, what moved shown as moved, from scene to scene."""

import re

from hypothesis import given
from hypothesis import strategies as st

from afterdraft.comparison.changes import changes
from afterdraft.manuscript.blocks import Block, Run
from afterdraft.web.beside import marked
from tests.web.two_drafts import SECOND, Web, typed, web
from tests.work.test_next_draft import FERRY, HOUSE, LOCK, PIER

__all__ = ["web"]
words = st.text(alphabet="ab <&.\n", max_size=40)


@given(words, words)
def test_marked_text_is_the_text_and_what_is_unmarked_is_the_same_on_both_sides(old: str, new: str) -> None:
    found = changes(old, new)
    sides = [
        str(marked([Block(line) for line in text.split("\n")], found, old=side))
        for text, side in ((old, True), (new, False))
    ]
    bare = [re.sub("</?(?:del|ins)>", "", side) for side in sides]
    assert [one.replace("&lt;", "<").replace("&amp;", "&") for one in bare] == [old, new]
    unmarked = [re.sub("<(del|ins)>.*?</\\1>", "", side, flags=re.DOTALL) for side in sides]
    assert "".join(unmarked[0].split()) == "".join(unmarked[1].split())


def test_emphasis_is_kept_where_words_change() -> None:
    old, new = (Block(text, (Run(0, 9, "italic"),)) for text in ("The ferry was late.", "The barge was late."))
    found = changes(old.text, new.text)
    assert marked([old], found, old=True) == "<em>The </em><del><em>ferry</em></del> was late."
    assert marked([new], found, old=False) == "<em>The </em><ins><em>barge</em></ins> was late."


def test_changed_words_are_struck_and_underlined(web: Web) -> None:
    web.bring(SECOND)
    page = web.get(f"drafts/side/1-{web.codes(0)[1]}")
    assert "the week of the <del>fair</del> and" in page
    assert "the week of the <ins>regatta</ins> and" in page


def test_what_moved_says_where_it_was_and_is(web: Web) -> None:
    """The last paragraph of the first scene is told at the end of the last one, with one word changed."""
    went = FERRY[2].replace("luck", "trade")
    web.bring(typed([FERRY[:2], PIER], [LOCK, (*HOUSE, went)]))
    ferry, house = web.codes(0)[0], web.codes(0)[3]
    old = web.get(f"drafts/side/1-{ferry}")
    link = re.search(r'<a href="([^"]*)">Moved to Chapter 2, 1 word changed</a>', old)
    assert link
    assert f"/drafts/side/1-{house}" in link[1] or f"/drafts/side/1-{ferry}" in link[1]
    there = web.get(link[1].partition("#")[0].removeprefix(f"{web.base}/"))
    assert f'id="{link[1].partition("#")[2]}"' in there
    assert "Moved from Chapter 1, 1 word changed" in there
    assert "it was for <ins>trade.</ins>" in there


def test_what_is_not_reached_is_not_called_cut(web: Web) -> None:
    web.bring(typed([FERRY]), "part-way")
    page = web.get(f"drafts/side/1-{web.codes(0)[3]}")
    assert HOUSE[0] in page
    assert ">cut<" not in page
    assert "Not reached yet." in page


def test_from_one_to_the_next_and_by_any_code(web: Web) -> None:
    web.bring(SECOND)
    ferry, pier, lock, house = web.codes(0)
    first = web.get(f"drafts/side/1-{lock}")
    assert 'rel="prev"' not in first
    assert f'href="{web.base}/drafts/side/1-{house}" rel="next"' in first
    assert f'href="{web.base}/drafts/side/1-{ferry}" rel="next"' in web.get(f"drafts/side/1-{house}")
    assert PIER[1][:30] in web.get(f"drafts/side/{pier.lower()}")
    assert "It is not there." in web.get(f"drafts/side/{house}")
    assert web.get("drafts/side", 303) == f"/drafts/side/1-{house}"
    web.get("drafts/side/Z99", 404)
    web.book.undo(web.book.edits().undo.number)  # type: ignore[union-attr]  # the draft was brought in just now
    assert web.get(f"drafts/side/{house}", 303) == "/drafts"
