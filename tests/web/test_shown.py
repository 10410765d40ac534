"""Shown, never asked: figures of scenes beside the book's own, what repeats, who is out of sight."""

from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path
from typing import Any

import pytest

from afterdraft.store.book import BookFile
from afterdraft.web.shown import shown
from afterdraft.web.told import InScene, ReadPerson, ReadScene, Told
from afterdraft.web.view import BookView, view
from tests.web.asked import SCENES, TEXT, begun

LONG = 4  # the scene that is far longer than the others
QUIET = 6  # from here on the scenes have much speech


@pytest.fixture
def seen(tmp_path: Path) -> Iterator[BookView]:
    text = TEXT.replace("The skipper’s name", "In the morning the skipper’s name").replace(
        "At the bridge", "In the morning"
    )
    book: BookFile
    with begun(tmp_path, text) as book:
        yield view(book)


def figures(number: int) -> dict[str, Any]:
    return {
        "words": 900 if number == LONG else 100,
        "speech_share": 0.9 if number >= QUIET else 0.1,
        "events_per_100": 5.0,
        "words_per_sentence": 12.0,
        "valence": 0.1,
        "mode": "telling" if number < QUIET else "talk",
    }


def told(seen: BookView, people: Mapping[str, Sequence[int]]) -> Told:
    scenes = {}
    for one in seen.outline.scenes:
        here = tuple(InScene(one.scene.id, who, "on page", 1, 0) for who, some in people.items() if one.index in some)
        scenes[one.scene.id] = ReadScene(people=here, measures=figures(one.index))
    return Told({who: ReadPerson(who, who, (), "", False, 1, 0) for who in people}, scenes)


def test_a_length_far_from_the_books_own_and_a_change_of_level(seen: BookView) -> None:
    rows = shown(seen, told(seen, {})).rows
    assert len(rows) == len(SCENES)
    assert [row.scene.index for row in rows if row.far] == [LONG]
    assert rows[LONG].times == 9.0
    assert [row.scene.index for row in rows if "speech" in row.levels] == [QUIET]


def test_runs_of_one_mode_and_openings_that_are_alike(seen: BookView) -> None:
    found = shown(seen, told(seen, {}))
    assert [(group.what, len(group.scenes)) for group in found.runs] == [("telling", 6), ("talk", 4)]
    assert [(group.what, len(group.scenes)) for group in found.openings] == [("in the", 3)]
    assert found.closings == ()


def test_who_is_never_apart_and_who_is_out_of_sight(seen: BookView) -> None:
    people = {"Odile": (0, 1, 2, 3), "Bram": (0, 1, 2, 3), "Hester": (0, 1, 9), "The skipper": (0, 1)}
    found = shown(seen, told(seen, people))
    assert [group.what for group in found.together] == ["Bram and Odile"]
    assert [(group.what, len(group.scenes)) for group in found.out_of_sight] == [("Bram", 1), ("Odile", 1)]


def test_nothing_is_shown_of_what_was_not_read(seen: BookView) -> None:
    assert shown(seen, Told({}, {})).rows == ()
