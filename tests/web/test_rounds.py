"""Rounds: one row for each, in counts."""

import json
import re

from afterdraft.comparison.standings import Asked, Went, asked, went
from afterdraft.work.notes.change_note import set_note_state
from afterdraft.work.notes.write_note import write_note
from afterdraft.work.plan.change_places import add_places, tick_place
from afterdraft.work.plan.order_changes import remove_change
from afterdraft.work.plan.plan_change import plan_change
from tests.web.two_drafts import REWORDED, Web, typed, web
from tests.work.test_next_draft import FERRY, HOUSE, LOCK, NEW, PIER

__all__ = ["web"]


TRIES = 200  # each waits a moment for what is being counted


def rows(web: Web) -> list[tuple[str, list[str]]]:
    """The name of each round, and its cells."""
    tries = (web.get("drafts/rounds") for _ in range(TRIES))
    body = next(one for one in tries if "data-gathering" not in one).partition("<tbody>")[2].partition("</tbody>")[0]
    parts = [re.findall(r"<t[hd][^>]*>(.*?)</t[hd]>", row) for row in body.split("</tr>")[:-1]]
    told = [[" ".join(re.sub(r"<[^>]*>", "", cell).split()) for cell in cells] for cells in parts]
    return [(cells[0], cells[1:]) for cells in told]


def test_each_round_is_a_row_of_counts(web: Web) -> None:
    done = write_note(web.book, "Settled.", scene=web.ids()[0])
    dropped = write_note(web.book, "No.", scene=web.ids()[1])
    write_note(web.book, "Still to do.", scene=web.ids()[2])
    set_note_state(web.book, done.id, "done")
    set_note_state(web.book, dropped.id, "dropped")
    change = plan_change(web.book, "Slow.")
    add_places(web.book, change, web.codes()[1])
    web.bring(typed([LOCK, FERRY], [NEW, REWORDED]))
    (place,) = web.book.change(change).places
    tick_place(web.book, change, place.id, done=True)
    remove_change(web.book, plan_change(web.book, "Never mind."))
    web.bring(typed([LOCK, FERRY], [NEW, REWORDED, HOUSE]))
    first, second, now = rows(web)
    assert [row[0] for row in (first, second, now)] == ["Draft 1 to 2", "Draft 2 to 3", "Since draft 3"]
    words = [sum(len(text.split()) for text in scene) for scene in (FERRY, PIER, LOCK, HOUSE, NEW)]
    assert first[1][:8] == [
        "1",
        "1",
        "0",
        "0",
        "0",
        "1",
        "1",
        "1",
    ]  # one as it was; one moved; PIER reworded; HOUSE cut
    assert first[1][8] == str(sum(words[:3]) - 2)
    assert first[1][10:12] == [str(words[3] + 2), str(words[4] + 2)]
    assert first[1][12:20] == ["3", "1", "1", "1", "1", "0", "0", "1"]
    assert second[1][:8] == ["4", "0", "0", "0", "0", "0", "0", "1"]
    assert second[1][12:20] == ["0", "0", "0", "1", "0", "1", "0", "0"]
    assert now[1][:12] == [""] * 12
    assert now[1][12:20] == ["0", "0", "0", "1", "0", "0", "0", "0"]


def test_what_is_taken_away_is_dropped_and_what_is_opened_again_is_carried() -> None:
    before = {"a": "open", "b": "done", "c": "open", "d": "dropped"}
    after = {"a": "done", "b": "open", "d": "dropped", "e": "open", "f": "dropped"}
    assert went(before, after) == Went(opened=2, done=1, dropped=2, carried=2)
    assert went({}, {}) == Went(0, 0, 0, 0)


def test_a_part_way_draft_counts_what_it_has_not_reached(web: Web) -> None:
    web.bring(typed([FERRY]), how="part-way")
    first, _ = rows(web)
    assert first[0] == "Draft 1 to 2 so far"
    assert first[1][8] == "3"
    assert first[1][5] == "0"


def test_a_book_of_one_draft_leads_to_drafts(web: Web) -> None:
    assert web.get("drafts/rounds", 303) == "/drafts"


def test_questions_of_both_drafts_are_counted_once_both_were_looked_over(web: Web) -> None:
    web.bring(typed([LOCK, FERRY], [NEW, REWORDED]))
    first, second = (draft.id for draft in web.book.drafts())
    assert asked({"a", "b"}, {"b", "c", "d"}) == Asked(new=2, standing=1, gone=1)
    web.book.keep_findings(first, json.dumps({"found": {}, "asked": ["a", "b"]}))
    assert rows(web)[0][1][20:] == ["–", "–", "–"]
    web.book.keep_findings(second, json.dumps({"found": {}, "asked": ["b", "c", "d"]}))
    assert rows(web)[0][1][20:] == ["2", "1", "1"]
    assert rows(web)[1][1][20:] == ["", "", ""]
