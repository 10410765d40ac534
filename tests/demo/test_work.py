"""The part of the writer's work that waits for its use cases points at scenes and words that are there."""

from collections import Counter
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from afterdraft import platform, wiring
from afterdraft.desk.intent import INTENTS
from afterdraft.home import BooksFolder
from demo.build import HERE
from demo.revise import stored
from demo.source import parts, plain, scene_texts

WHOLE: dict[str, Any] = stored("work.json")
SCENES = ["\n".join(map(plain, parts(text))) for text in scene_texts(HERE / "first")]
OPENS = [
    " ".join(text.split("\n")[0].split()[:8]) for text in SCENES
]  # as the program finds a scene: by its first paragraph
TEXTS = dict(zip(OPENS, SCENES, strict=True))


def pointing(found: Any) -> Iterator[dict[str, Any]]:
    """Everything that names a scene, however deep."""
    if isinstance(found, dict):
        yield from [found] if found.get("opens") else []
        for inner in found.values():
            yield from pointing(inner)
    elif isinstance(found, list):
        for inner in found:
            yield from pointing(inner)


def test_all_kinds_of_work_are_there() -> None:
    assert set(WHOLE) == {
        "summaries", "inks", "notes", "guarded", "cast", "places", "presence", "strands", "threads", "setups",
        "reveals", "follows_from", "arrangements", "next", "new", "changes", "units",
    }  # fmt: skip
    assert all(WHOLE.values())


def test_every_scene_named_is_a_scene() -> None:
    named = [each["opens"] for each in pointing(WHOLE)] + [o for strand in WHOLE["strands"] for o in strand["scenes"]]
    assert [opens for opens in named if sum(first.startswith(opens) for first in OPENS) != 1] == []


def test_every_passage_named_stands_in_its_scene() -> None:
    quoting = [each for each in pointing(WHOLE) if "words" in each]
    assert quoting
    assert [each["words"] for each in quoting if TEXTS[each["opens"]].count(each["words"]) != 1] == []


def test_every_note_has_an_ink_that_is_mixed() -> None:
    inks = {ink["name"] for ink in WHOLE["inks"]}
    assert {note["ink"] for note in WHOLE["notes"]} <= inks


def test_threads_are_opened_before_they_are_closed() -> None:
    for thread in WHOLE["threads"]:
        does = [each["does"] for each in thread["scenes"]]
        assert (does[0], does[-1]) == ("opens", "closes")
        assert [OPENS.index(each["opens"]) for each in thread["scenes"]] == sorted(
            OPENS.index(each["opens"]) for each in thread["scenes"]
        )


def test_a_scene_follows_from_earlier_ones() -> None:
    for link in WHOLE["follows_from"]:
        assert all(OPENS.index(cause) < OPENS.index(link["opens"]) for cause in link["from"])


@pytest.mark.parametrize("fault", ["nothing-birds", "nothing-photograph"])
def test_nothing_follows_from_the_scenes_from_which_nothing_should(fault: str) -> None:
    listed = next(entry for entry in stored("faults.json")["faults"] if entry["id"] == fault)
    causes = {cause for link in WHOLE["follows_from"] for cause in link["from"]}
    assert not causes & {scene["opens"] for scene in listed["scenes"]}


def test_an_arrangement_was_tried_and_given_up() -> None:
    (tried,) = WHOLE["arrangements"]
    assert tried["given_up"] and tried["why"]
    assert Counter(tried["order"]) == Counter(OPENS)
    assert tried["order"] != OPENS


def test_intents_are_ones_that_a_scene_can_have() -> None:
    assert {each["intent"] for each in WHOLE["next"]} <= set(INTENTS)
    assert {each["when"] for each in WHOLE["changes"]} == {"must", "if time", "later"}


def test_the_program_opens_the_book_with_all_of_the_work_that_it_can_load(tmp_path: Path) -> None:
    path = wiring.demonstration(BooksFolder(platform.folders()), path=tmp_path / "demo.afterdraft")
    book = wiring.open_book(path)
    (draft,) = book.drafts()
    cards = [card for card in book.cards(draft.id).values() if card.summary]
    assert {card.summary for card in cards} == {entry["summary"] for entry in WHOLE["summaries"]}
    assert len(cards) == len(WHOLE["summaries"])
    assert Counter(note.text for note in book.notes()) == Counter(entry["text"] for entry in WHOLE["notes"])
    book.close()


def test_the_desk_holds_what_the_list_says(tmp_path: Path) -> None:
    path = wiring.demonstration(BooksFolder(platform.folders()), path=tmp_path / "demo.afterdraft")
    with_book = wiring.open_book(path)
    (draft,) = with_book.drafts()
    lines = with_book.lines(draft.id)
    counted = Counter(line.kind for line in lines for _ in line.points)
    assert counted["thread"] == sum(len(thread["scenes"]) for thread in WHOLE["threads"])
    assert counted["setup"] == sum(len(setup["points"]) for setup in WHOLE["setups"])
    assert counted["reveal"] == sum(len(reveal["points"]) for reveal in WHOLE["reveals"])
    assert all(point.anchors for line in lines if line.kind == "setup" for point in line.points)
    assert len(with_book.follows(draft.id)) == sum(len(link["from"]) for link in WHOLE["follows_from"])
    assert {person.name for person in with_book.known("person")} == {person["name"] for person in WHOLE["cast"]}
    tried, present = with_book.arrangements(draft.id)
    assert (tried.name, tried.given_up, tried.why) == ("Frost first", True, WHOLE["arrangements"][0]["why"])
    assert not tried.aside
    assert len(present.cards()) == draft.scenes + len(WHOLE["new"])
    assert Counter(card.intent for card in present.cards() if card.intent) == Counter(
        [entry["intent"] for entry in WHOLE["next"]] + ["new"] * len(WHOLE["new"])
    )
    units = with_book.unit_cards(draft.id)
    assert [(card.kind, card.summary, card.whose) for card in units] == [
        ("chapter" if entry["opens"] else "book", entry["summary"], entry.get("whose", "")) for entry in WHOLE["units"]
    ]
    inks = {ink.id: ink.name for ink in with_book.inks()}
    written = [inks.get(note.ink or "") for note in with_book.notes()]
    assert written == [note["ink"] for note in WHOLE["notes"]]
    assert [one.quote for one in with_book.guarded(draft.id)] == [one["words"] for one in WHOLE["guarded"]]
    planned = [(change.wrong, change.decide, change.when, len(change.places)) for change in with_book.changes()]
    assert planned == [(e["wrong"], e["decide"], e["when"], len(e["places"])) for e in WHOLE["changes"]]
    with_book.close()
