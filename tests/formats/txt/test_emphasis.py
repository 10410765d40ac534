"""Typed emphasis becomes runs only where it is emphasis."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.formats.txt.emphasis import Marks, emphasised, marks
from afterdraft.manuscript.blocks import Run

BOTH = Marks(("*", "_"), ("*", "_"))


@pytest.mark.parametrize(
    ("typed", "text", "emphasis"),
    [
        ("She _had_ known.", "She had known.", [("had", "italic")]),
        ("*All of it.*", "All of it.", [("All of it.", "italic")]),
        ("“_Never_,” he said.", "“Never,” he said.", [("Never", "italic")]),
        (
            "Very **loud** and ***both***",
            "Very loud and both",
            [("loud", "bold"), ("both", "bold"), ("both", "italic")],
        ),
        ("It was _un_likely, and re_new_ed.", "It was unlikely, and renewed.", [("un", "italic"), ("new", "italic")]),
        ("—_so_—and *so*", "—so—and so", [("so", "italic"), ("so", "italic")]),
        ("over\n_two\nlines_", "over\ntwo\nlines", [("two\nlines", "italic")]),
    ],
)
def test_marks_in_pairs_are_emphasis(typed: str, text: str, emphasis: list[tuple[str, str]]) -> None:
    got, runs = emphasised(typed, BOTH)
    assert got == text
    assert [(got[run.start : run.end], run.kind) for run in runs] == emphasis


@pytest.mark.parametrize(
    "typed",
    [
        "* * *",
        "***",
        "_______",
        "2 * 3 * 4 = 24",
        "a note* and the next word",
        "* The note itself.",
        "_ alone _ between spaces _",
        "5*4 is twenty, 4*5 too",
        "a _stray",
    ],
)
def test_what_is_not_in_pairs_stays(typed: str) -> None:
    assert emphasised(typed, Marks(("*", "_"))) == (typed, ())


@pytest.mark.parametrize(
    ("texts", "expected"),
    [
        (["She _had_ known.", "_He_ had not."], ("_",)),
        (["The sea* was calm.", "* That is, the bay.", "*See above", "one *two* three", "x* y*"], ()),
        (["* * *", "***"], ()),
        (["file_name_one and file_name_two"], ()),
    ],
)
def test_a_mark_counts_if_the_file_uses_it_in_pairs(texts: list[str], expected: tuple[str, ...]) -> None:
    assert marks(texts).marks == expected


def test_in_markdown_a_backslash_keeps_a_sign_a_sign() -> None:
    assert emphasised(r"\*not so\* but *so*", BOTH, markdown=True) == ("*not so* but so", (Run(13, 15, "italic"),))


@given(st.text(st.sampled_from("ab _*\n.’")))
def test_nothing_but_marks_leaves_the_text(typed: str) -> None:
    text, runs = emphasised(typed, BOTH)
    assert [c for c in text if c not in "_*"] == [c for c in typed if c not in "_*"]
    assert all(0 <= run.start < run.end <= len(text) for run in runs)
