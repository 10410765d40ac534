"""An arrangement against the draft's own order: as few cards as possible count as moved; chapters lie on a level."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import combinations

from hypothesis import given
from hypothesis import strategies as st

from afterdraft.desk.arrangement import Arrangement, Laid, Row
from afterdraft.desk.arranging import everything
from afterdraft.desk.comparing import compared, levelled


def arranged(chapters: str, *, aside: str = "", id: str = "") -> Arrangement:
    """ "1:ABC 2:DE -:F": cards A, B, C in the row of chapter 1 … "-" is a new chapter. A small letter is a new card,
    "A+B" one card for both, "A'" a second card for A."""
    rows = []
    for n, word in enumerate(chapters.split()):
        chapter, _, cards = word.partition(":")
        row = f"{id}row{n}"
        laid = tuple(card(one, row, id) for one in _cards(cards))
        rows.append(Row(row, f"{n:03}", "", None if chapter == "-" else chapter, None, laid))
    return Arrangement(id, "d", id, rows=tuple(rows), aside=tuple(card(one, None, id) for one in _cards(aside)))


def _cards(text: str) -> list[str]:
    found: list[str] = []
    for sign in text:
        if sign in "+'" or (found and found[-1].endswith("+")):
            found[-1] += sign
        else:
            found.append(sign)
    return found


def card(text: str, row: str | None, id: str) -> Laid:
    scenes = () if text.islower() else tuple(text.rstrip("'").split("+"))
    return Laid(f"{id}{text}", text, scenes, row, "")


def said(own: str, other: str, *, aside: str = "") -> dict[str, str]:
    """What became of the cards that are not as they were, by code."""
    laid = arranged(other, aside=aside, id="x")
    found = compared(arranged(own), laid)
    return {
        one.code: " ".join(found[one.id].became) + (f" from {found[one.id].origin}" if found[one.id].origin else "")
        for one in everything(laid)
        if found[one.id].became
    }


def test_the_same_order_has_nothing_to_say() -> None:
    assert said("1:ABC 2:DE", "1:ABC 2:DE") == {}


def test_one_card_moved_is_the_only_one_moved() -> None:
    assert said("1:ABC 2:DE", "1:BC 2:DAE") == {"A": "moved from 1"}
    assert said("1:ABCDE", "1:EABCD") == {"E": "moved from 1"}


def test_a_card_in_order_but_in_another_chapter_is_moved() -> None:
    assert said("1:ABC 2:DE", "1:AB 2:CDE") == {"C": "moved from 1"}
    assert said("1:ABC 2:DE", "1:AB -:C 2:DE") == {"C": "moved from 1"}


def test_aside_new_joined_and_split() -> None:
    assert said("1:ABC 2:DE", "1:AnC 2:D+E", aside="B") == {
        "n": "new",
        "B": "set aside from 1",
        "D+E": "joined",
    }
    assert said("1:ABC", "1:AA'BC") == {"A": "split", "A'": "split"}
    assert said("1:AB 2:CD", "1:B 2:CD+A", aside="m") == {"D+A": "joined", "m": "new set aside"}
    assert said("1:ABC 2:DE", "1:BD+A 2:CE") == {"C": "moved from 1", "D+A": "moved joined from 2"}


def test_a_card_whose_scenes_are_gone_is_new() -> None:
    assert said("1:AB", "1:ABZ") == {"Z": "new"}


def levels(own: str, other: str) -> list[tuple[str | None, str]]:
    return [
        (level.chapter, " ".join(row.chapter or "-" for row in level.rows))
        for level in levelled(arranged(own), arranged(other, id="x"))
    ]


def test_chapters_lie_on_a_level_with_the_drafts_where_they_kept_their_place() -> None:
    own = "1:A 2:B 3:C 4:D"
    assert levels(own, own) == [(None, ""), ("1", "1"), ("2", "2"), ("3", "3"), ("4", "4")]
    assert levels(own, "1:A -:n 3:C 2:B 4:D") in (
        [(None, ""), ("1", "1 -"), ("2", ""), ("3", "3 2"), ("4", "4")],
        [(None, ""), ("1", "1 - 3"), ("2", "2"), ("3", ""), ("4", "4")],
    )
    assert levels(own, "-:n 1:A 2:B") == [(None, "-"), ("1", "1"), ("2", "2"), ("3", ""), ("4", "")]
    assert levels("", "-:n") == [(None, "-")]


def longest(numbers: Sequence[int]) -> int:
    """The slow obvious way: every choice of them is tried."""
    for length in range(len(numbers), 0, -1):
        for chosen in combinations(numbers, length):
            if list(chosen) == sorted(chosen):
                return length
    return 0


@given(st.permutations("ABCDEFG"))
def test_no_fewer_cards_could_count_as_moved(order: list[str]) -> None:
    own = arranged("1:ABCDEFG")
    laid = arranged("1:" + "".join(order), id="x")
    moved = [one for one in compared(own, laid).values() if one.became]
    assert len(moved) == len(order) - longest([ord(one) for one in order])


@given(st.permutations("ABCDEFG"), st.sets(st.integers(1, 6)), st.sets(st.sampled_from("ABCDEFG")))
def test_every_chapter_stands_once_and_every_card_is_told_of(order: list[str], cuts: set[int], gone: set[str]) -> None:
    text = "".join(f" {n}:" * (n in cuts) + one for n, one in enumerate(order) if one not in gone)
    other = arranged("-:" + text, aside="".join(sorted(gone)), id="x")
    own = replace(arranged("1:AB 2:CD 3:EFG"), id="")
    assert sorted(row.id for level in levelled(own, other) for row in level.rows) == sorted(
        row.id for row in other.rows
    )
    assert set(compared(own, other)) == {one.id for one in everything(other)}
