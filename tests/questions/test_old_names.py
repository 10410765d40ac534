"""Earlier names that still stand. That a renaming is checked through is common practice of copy editors."""

import pytest

from afterdraft.questions.each.old_names import CHECK
from afterdraft.questions.marks import Marks, Renamed
from tests.questions.asked import book, quotes

KIT = Marks(renamed=(Renamed("Kit Ockley", ("Colin",), ("Kit",)),))
BEFORE = ["Kit Ockley took the oar.", "“Not yet,” said Kit. Kit slept."]


def asked(marks: Marks, *scenes: list[str]) -> list[list[str]]:
    return quotes(list(CHECK.find(book(scenes, marks=marks))))


def test_asks_where_an_earlier_name_still_stands_once_a_scene() -> None:
    late = ["It was ten to six.", "“It was just a word,” said Colin. “Colin’s word.”"]
    assert asked(KIT, BEFORE, late, ["Nobody met Colin."]) == [
        ["“It was just a word,” said Colin.", "“Colin’s word.”"],
        ["Nobody met Colin."],
    ]


@pytest.mark.parametrize(
    ("former", "text"),
    [
        ("Mrs Orde", "In the kitchen Mrs Orde was asleep."),
        ("Alan", "The Miss Alans were still out."),
        ("O'Dare", "Nobody asked O’Dare."),
        ("St. Anne's", "They went by St. Anne’s again."),
    ],
)
def test_names_of_several_words_and_either_apostrophe(former: str, text: str) -> None:
    assert asked(Marks(renamed=(Renamed("Ada", (former,)),)), ["Ada slept.", text]) == [[text]]


def test_is_silent_about_other_words_and_longer_names_that_are_still_in_use() -> None:
    marks = Marks(renamed=(Renamed("Rose Hill", ("Rose",)), Renamed("Colm", ("Col",)), Renamed("Una", ("Ros",))))
    assert asked(marks, ["Rose Hill slept. Colm rose, cold, Ross, and Columba, in the colic of Cole."]) == []
    assert asked(marks, ["Rose Hill slept. Colm rose.", "Rose rose."]) == [["Rose rose."]]


def test_is_silent_while_the_renaming_is_still_ahead() -> None:
    assert asked(KIT, ["Colin took the oar.", "“Not yet,” said Colin."]) == []
    assert asked(KIT, ["Colin took the oar.", "“Not yet,” said Colin.", "Kit waited."]) == []


def test_is_silent_where_the_earlier_name_is_somebody_elses_now() -> None:
    marks = Marks(renamed=(Renamed("Kit", ("Colin",)), Renamed("Colin", ("Alan",))))
    assert asked(marks, ["Kit and Colin took the oars. Kit slept."]) == []
