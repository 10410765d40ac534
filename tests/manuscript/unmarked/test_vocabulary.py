"""Openings that say when or where, and openings that do not."""

import pytest

from afterdraft.manuscript.unmarked.vocabulary import ENTRY, LEAP, SITE, WHEN

LEAPS = (
    "The next morning she rowed out.",
    "Three days later the rope came back.",
    "By noon the quay was dry.",
    "That night nobody slept.",
    "On Tuesday the letter came.",
    "In October the ferry was sold.",
    "One evening Brenn knocked.",
    "A week passed.",
    "It was past midnight.",
    "Meanwhile Marit counted spoons.",
)
NO_LEAPS = (
    "The morning coat hung on its nail.",
    "She did not answer.",
    "One of them laughed.",
    "The ferry was late.",
    "Brenn knew the night by its smell.",
    "Three men stood at the rail.",
)


@pytest.mark.parametrize("text", LEAPS)
def test_a_leap_of_time_is_seen(text: str) -> None:
    assert LEAP.match(text)


@pytest.mark.parametrize("text", NO_LEAPS)
def test_what_is_no_leap_of_time_is_not(text: str) -> None:
    assert not LEAP.match(text)


@pytest.mark.parametrize(
    "text", ["Later.—It rained.", "11 p.m.—All asleep.", "4 May.—No wind.", "Same day, noon.—Wind."]
)
def test_an_entry_of_a_diary_is_seen(text: str) -> None:
    assert ENTRY.match(text)


@pytest.mark.parametrize("text", ["Later she wept.", "Night had no end.", "4 men came—and went."])
def test_a_sentence_is_no_entry(text: str) -> None:
    assert not ENTRY.match(text)


def test_clauses_of_time_and_places_people_can_be() -> None:
    assert WHEN.match("When the tide turned, they left.")
    assert not WHEN.match("Whenever it rains.")
    assert SITE.search("She waited in the old kitchen.")
    assert not SITE.search("She waited in vain.")
