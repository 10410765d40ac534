"""The plan beside the draft: places measured and ticked, intents, guarded passages, what nobody planned."""

import re
from html import unescape

from afterdraft.web.plan_then import changes_of, guarded_of, intents_of, unplanned_of
from afterdraft.web.two_drafts import TwoDrafts
from afterdraft.work.cards.set_intent import set_intent
from afterdraft.work.drafts.compared import compared
from afterdraft.work.notes.find_passage import find_passage
from afterdraft.work.notes.guard_passage import guard_passage
from afterdraft.work.plan.change_places import add_places, add_words
from afterdraft.work.plan.plan_change import plan_change
from tests.web.two_drafts import REWORDED, Web, typed, web
from tests.work.test_next_draft import FERRY, HOUSE, LOCK, NEW, PIER

__all__ = ["web"]


def two(web: Web) -> TwoDrafts:
    known = web.book.drafts()
    found = compared(web.book, known[-2].id, known[-1].id, part_way=known[-1].part_way)
    said = web.book.said_of(known[-2].id, known[-1].id)
    return TwoDrafts(web.book, web.base, known, known[-2], known[-1], found, said)


def planned(web: Web, *places: int, wrong: str = "Slow.") -> str:
    """A change with a place in each of these scenes; its id."""
    made = plan_change(web.book, wrong)
    add_places(web.book, made, ", ".join(web.codes()[place] for place in places))
    return made


def test_a_place_says_whether_its_text_changed(web: Web) -> None:
    planned(web, 0, 1, 3)
    web.bring(typed([FERRY, REWORDED], [LOCK]))
    (change,) = changes_of(two(web), web.book, "")
    assert [(place.measured.says, place.measured.as_it_was) for place in change.places if place.measured] == [
        ("The text here is as it was.", True),
        ("The text here changed.", False),
        ("It was cut.", False),
    ]
    page = unescape(web.get("drafts/plan"))
    assert page.count("Planned; the text here is as it was.") == 1


def test_what_a_part_way_draft_has_not_reached_is_neither(web: Web) -> None:
    planned(web, 0, 3)
    web.bring(typed([REWORDED[:1], FERRY]), how="part-way")
    (change,) = changes_of(two(web), web.book, "")
    assert [place.measured.says for place in change.places if place.measured][1] == "Not reached yet."


def test_she_ticks_and_the_program_never_does(web: Web) -> None:
    change = planned(web, 1)
    web.bring(typed([FERRY, REWORDED], [LOCK, HOUSE]))
    (place,) = web.book.change(change).places
    shown = web.get("drafts/plan")
    assert re.findall(r'aria-checked="(\w+)"', shown) == ["false"]
    (path,) = re.findall(r'action="([^"]*/tick)"', shown)
    (old,) = re.findall(r'name="place" value="([^"]*)"', shown)
    assert old != place.id
    web.client.post(path, data={"place": old, "done": "1"}, follow_redirects=False)
    assert re.findall(r'aria-checked="(\w+)"', web.get("drafts/plan")) == ["true"]
    assert web.book.change(change).done


def test_words_stand_as_places_of_their_own_and_are_not_measured(web: Web) -> None:
    change = planned(web, 3)
    add_words(web.book, change, "every letter")
    web.bring(typed([FERRY, PIER], [LOCK]))
    (row,) = changes_of(two(web), web.book, "")
    assert [(place.measured is None, place.place.words) for place in row.places] == [
        (False, ""),
        (True, "every letter"),
    ]


def test_a_change_made_since_is_of_the_next_round(web: Web) -> None:
    planned(web, 0)
    web.bring(typed([FERRY, REWORDED], [LOCK, HOUSE]))
    planned(web, 2, wrong="Too dry.")
    assert [one.called for one in changes_of(two(web), web.book, "")] == ["Slow."]


def test_both_texts_are_opened_on_wish_with_the_words_that_changed(web: Web) -> None:
    planned(web, 1)
    web.bring(typed([FERRY, REWORDED], [LOCK, HOUSE]))
    place = changes_of(two(web), web.book, "")[0].places[0].place.id
    assert "<ins>" not in web.get("drafts/plan")
    assert re.findall(r"<(ins|del)>([^<]*)", web.get(f"drafts/plan?open={place}"))[:2] == [
        ("del", "fair"),
        ("ins", "regatta"),
    ]


def test_what_was_meant_for_a_card_stands_with_its_intent(web: Web) -> None:
    codes = web.codes()
    set_intent(web.book, "", [codes[1]], "rewrite")
    set_intent(web.book, "", [codes[0]], "keep")
    set_intent(web.book, "", [codes[3]], "cut")
    web.bring(typed([(FERRY[0], PIER[1]), REWORDED], [LOCK]))
    rows = intents_of(two(web), web.book, "")
    assert [(row.intent, [one.says for one in row.measured]) for row in rows] == [
        ("keep", ["The text here changed."]),
        ("rewrite", ["The text here changed."]),
        ("cut", ["It was cut."]),
    ]


def test_what_changed_without_being_planned_what_was_to_be_kept_among_it(web: Web) -> None:
    codes = web.codes()
    planned(web, 0)
    set_intent(web.book, "", [codes[1]], "keep")
    web.bring(typed([(*FERRY[:2], NEW[0]), REWORDED], [LOCK, HOUSE, NEW]))
    both = two(web)
    rows = unplanned_of(both, changes_of(both, web.book, ""), intents_of(both, web.book, ""))
    assert [row.became for row in rows] == ["revised", "new"]
    assert [one.code for one in rows[0].olds] == [codes[1]]


def test_guarded_passages_are_there_changed_or_gone_with_both_quotes_and_where_they_were(web: Web) -> None:
    first, scenes = web.book.drafts()[0].id, web.ids()
    for scene, words in (
        (scenes[0], "asleep on a coil of rope"),
        (scenes[1], "dried over a stove"),
        (scenes[3], "boots on, and dreamed of nothing"),
    ):
        guard_passage(web.book, first, find_passage(web.book, scene, words))
    gone = web.codes()[3]
    web.bring(typed([REWORDED, FERRY], [LOCK]))
    rows = guarded_of(two(web), web.book)
    assert [(row.state, row.guarded.quote, row.now) for row in rows] == [
        ("gone", "boots on, and dreamed of nothing", ""),
        ("changed", "dried over a stove", "dried beside a stove"),
        ("there", "asleep on a coil of rope", "asleep on a coil of rope"),
    ]
    page = web.get("drafts/plan")
    assert f"/drafts/1/scenes/{gone}#p" in page
    assert f"/drafts/offcuts?scene={gone}" in page
    assert "dried beside a stove" in page


def test_a_book_of_one_draft_leads_to_drafts_and_one_without_a_plan_says_so(web: Web) -> None:
    assert web.get("drafts/plan", 303) == "/drafts"
    web.bring(typed([FERRY, PIER], [LOCK]))
    page = web.get("drafts/plan")
    assert "No change was planned for this round." in page
    assert "Nothing was guarded in draft 1." in page
