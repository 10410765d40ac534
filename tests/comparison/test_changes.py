"""Word by word: what was kept, replaced, cut, added between two texts of one passage."""

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.comparison.changes import changes

Told = list[tuple[str, str, str]]


def told(old: str, new: str) -> Told:
    return [(one.kind, old[slice(*one.old)], new[slice(*one.new)]) for one in changes(old, new)]


@pytest.mark.parametrize(
    ("old", "new", "expected"),
    [
        ("He went home.", "He went home.", [("kept", "He went home.", "He went home.")]),
        ("He went home.", "", [("cut", "He went home.", "")]),
        ("", "He went home.", [("added", "", "He went home.")]),
        (
            "The cat sat down.",
            "The old dog sat down.",
            [("kept", "The", "The"), ("replaced", " cat", " old dog"), ("kept", " sat down.", " sat down.")],
        ),
        (
            "“No, I will,” he said.",
            "“No, I will!” he said.",
            [("kept", "“No, I will", "“No, I will"), ("replaced", ",", "!"), ("kept", "” he said.", "” he said.")],
        ),
        ("She ran on", "She ran", [("kept", "She ran", "She ran"), ("cut", " on", "")]),
        ("she ran", "She ran", [("replaced", "s", "S"), ("kept", "he ran", "he ran")]),
    ],
)
def test_what_changed_is_told_word_by_word_and_signs_by_themselves(old: str, new: str, expected: Told) -> None:
    assert told(old, new) == expected


sentences = st.lists(st.sampled_from(["ferry", "Ferry", "ferry,", "lock", "lock.", "—", "door", "door\n"]), max_size=12)


@given(sentences, sentences, st.sampled_from(["", " "]))
def test_both_texts_are_covered_once_and_in_order(old: list[str], new: list[str], edge: str) -> None:
    before, after = edge + " ".join(old), " ".join(new) + edge
    found = changes(before, after)
    assert "".join(before[slice(*one.old)] for one in found) == before
    assert "".join(after[slice(*one.new)] for one in found) == after
    assert all(before[slice(*one.old)].split() == after[slice(*one.new)].split() for one in found if one.kind == "kept")
    assert all((one.kind == "kept") != (other.kind == "kept") for one, other in pairwise(found))
