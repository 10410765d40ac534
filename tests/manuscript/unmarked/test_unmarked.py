"""Places where a scene may begin: with reasons, few, the same every time, and the division left as it was."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.manuscript.blocks import Block
from afterdraft.manuscript.unmarked import suggested, with_suggestions
from afterdraft.manuscript.unmarked.weights import APART, WORDS_EACH
from tests.manuscript.build import draft, heading

QUAY = (
    "“The rope is gone,” said Ottla, and she looked at the ring on the quay. “Somebody has taken it since the tide.”",
    "“Nobody takes a rope,” Brenn answered. “It slips, and the ferry goes after it, and the ferryman after the ferry.”",
)
INN = (
    "Three weeks later Marit Solberg sat in the kitchen of the inn at Skarv and counted spoons. The cook had left with "
    "the silver, the maids had left with the cook, and the soup had been left on the stove until it was a kind of tar. "
    "She had never in her life made soup. She tied an apron over her travelling dress and read the labels of the jars, "
    "pepper and mace and caraway, as if one of them must say in small letters what a cook does first of all.",
    "Snow lay against the panes of the kitchen. Marit fed the stove, scraped the kettle, and peeled turnips into it.",
)
BOOK = [[*QUAY * 12, *INN, *QUAY * 12]]
CHANGE = len(QUAY) * 12


def test_a_change_of_time_place_and_cast_is_suggested_with_what_it_rests_on() -> None:
    ((scene, found),) = suggested(BOOK)
    assert (scene, found.paragraph) == (0, CHANGE)
    assert found.why[0] == "time"
    told = dict(zip(found.why, found.evidence, strict=True))
    assert told["time"] == "Three weeks later"
    assert told["place"] == "in the kitchen"
    assert 0 < found.strength < 1


def test_talk_that_runs_on_is_no_place_for_a_break() -> None:
    assert suggested([list(QUAY * 40)]) == []


@pytest.mark.parametrize("scenes", [[], [[]], [["One paragraph only."]], [[""] * 50], [["…"] * 50, []]])
def test_where_there_is_nothing_to_divide_nothing_is_suggested(scenes: list[list[str]]) -> None:
    assert suggested(scenes) == []


def test_a_text_that_is_not_english_is_let_be() -> None:
    german = (
        "Drei Wochen später saß Marit Solberg in der Küche des Gasthofs und zählte Löffel; die Köchin war mit dem "
        "Silber fortgegangen, und niemand wusste, wohin die Mägde gelaufen waren, obwohl überall Schnee lag."
    )
    assert suggested([[german] * 60]) == []


def test_places_are_few_and_apart_and_keep_from_the_ends_of_the_scene() -> None:
    scene = list((QUAY * 2 + INN) * 40)
    ends = [0]
    for text in scene:
        ends.append(ends[-1] + len(text.split()))
    places = [ends[one.paragraph] for _, one in suggested([scene])]
    assert 0 < len(places) <= ends[-1] // WORDS_EACH
    assert all(later - earlier >= APART for earlier, later in zip([0, *places], [*places, ends[-1]], strict=True))


def test_the_division_stays_and_paragraphs_count_over_the_whole_file() -> None:
    told = [Block(text) for text in BOOK[0]]
    before = draft(Block("A Ferry"), heading("Chapter One"), told[:10], heading("Chapter Two"), told)
    after = with_suggestions(before)
    assert replace(after, suggestions=()) == before
    (found,) = after.suggestions
    assert before.source.blocks[found.paragraph].text == INN[0]


PARAGRAPH = st.sampled_from([*QUAY, *INN]) | st.text(max_size=300)


@given(st.lists(st.lists(PARAGRAPH, max_size=30), max_size=4))
def test_any_text_is_taken_and_gives_the_same_each_time(scenes: list[list[str]]) -> None:
    found = suggested(scenes)
    assert found == suggested(scenes)
    assert found == sorted(found, key=lambda one: (one[0], one[1].paragraph))
    for scene, one in found:
        assert 0 < one.paragraph < len(scenes[scene])
        assert 0 <= one.strength <= 1
        assert one.why
        assert set(one.why) <= {"place", "time", "cast", "words"}
        assert len(one.evidence) == len(one.why)
