"""Somebody who has no brother, wife or child, and has one."""

import pytest

from afterdraft.questions.each.no_kin import CHECK
from afterdraft.questions.kin_denied import denials
from afterdraft.questions.wording import worded
from tests.questions.asked import found_in
from tests.questions.people import ILSE, MARTA, NIGHT


@pytest.mark.parametrize(
    ("said", "kind"),
    [
        ("She had no brothers or sisters.", "siblings"),
        ("I’m an only child, you see.", "siblings"),
        ("There were no sisters, no brothers, and the house was large.", "siblings"),
        ("He was the miller’s only son.", "siblings"),
        ("She’d never had a brother.", "siblings"),
        ("He had neither brother nor sister.", "siblings"),
        ("I haven’t any brothers or sisters.", "siblings"),
        ("He had never married.", "spouse"),
        ("She’s never been married, and says so.", "spouse"),
        ("My uncle was a confirmed bachelor.", "spouse"),
        ("He never took a wife.", "spouse"),
        ("I have no children of my own.", "children"),
        ("They were childless.", "children"),
        ("She has never had any children.", "children"),
        ("He had no family living.", "family"),
        ("I haven’t a relation in the world.", "family"),
    ],
)
def test_reads_what_somebody_has_none_of(said: str, kind: str) -> None:
    assert {one.kind for one in denials(said)} == {kind}


@pytest.mark.parametrize(
    "said",
    [
        "If she had no brothers or sisters, she would come.",
        "You have no sisters?",
        "He had told them that he had never married.",
        "She has no brothers left.",
        "There were no brothers in the chapel.",
        "He had never married her.",
        "It was a bachelor flat.",
        "He had no children with him that day.",
        "There was only a child in the lane.",
        "It was like being an only child.",
        "She wished that she had no children.",
        "He had no people to lunch.",
        "There was no sister ship.",
    ],
)
def test_reads_no_more_than_is_said(said: str) -> None:
    assert not list(denials(said))


ASKED = [
    ("Ilse was an only child.", "It was about then that Ilse’s brother wrote from Halifax."),
    ("Ilse had no brothers or sisters.", "“Ilse’s sister has the other key,” said Marta."),
    ("“I’m an only child,” said Ilse.", "Ilse had two sisters, and they were both in trade."),
    ("“I’ve no brothers or sisters,” said Ilse.", "“My brother has a boat like that,” said Ilse."),
    ("Ilse had never had a brother.", "Marta asked after Ilse’s late brother, and Ilse told her."),
    ("Ilse was the only daughter of a cooper.", "Ilse’s younger sister was at the gate, with the cooper."),
    ("Ilse, an only child, disliked noise.", "Ilse was the youngest of five children."),
    ("Tobias had never married.", "Tobias’s late wife had made the curtains."),
    ("Tobias was a bachelor.", "Tobias stopped. His first wife had been fond of ferries."),
    ("Tobias had no children.", "Tobias’s daughter taught school in the next valley."),
    ("“Tobias has no children,” said Marta.", "“Tobias’s eldest son is a dentist,” said Marta."),
    ("Tobias was childless.", "“My daughter sends me these,” said Tobias."),
    ("Tobias had no living relatives.", "Tobias’s nephew brought the coal."),
]
pytestmark = pytest.mark.slow


@pytest.mark.parametrize(("claim", "other"), ASKED)
def test_asks_where_somebody_has_none_and_has_one(claim: str, other: str) -> None:
    (one,) = found_in(CHECK, [*ILSE, claim], MARTA, [*NIGHT, other])
    assert one.words["name"] in claim
    assert [span.scene for span in one.evidence] == [0, 2]


@pytest.mark.parametrize(("claim", "other"), [ASKED[0], ASKED[7], ASKED[9]])
def test_asks_whichever_is_told_first(claim: str, other: str) -> None:
    assert found_in(CHECK, [*ILSE, other], MARTA, [*NIGHT, claim])


@pytest.mark.parametrize(
    ("claim", "other"),
    [
        ("Ilse was an only child.", "Marta’s brother wrote from Halifax."),
        ("Ilse had no brothers.", "Ilse’s sister wrote from Halifax."),
        ("Ilse was an only child.", "Ilse’s brother-in-law wrote from Halifax."),
        ("Ilse was an only child.", "Ilse’s half-brother wrote from Halifax."),
        ("Ilse was an only child.", "Tobias was like Ilse’s brother by then."),
        ("Ilse was an only child.", "Ilse had always wished that Ilse’s brother had been born."),
        ("Ilse had no brothers or sisters.", "Ilse’s late brother had mended the pole."),
        ("Ilse was an only child.", "“You told me that you were an only child,” said Tobias. “Ilse’s brother came.”"),
        ("Tobias had never married.", "Tobias and Marta were married in May. Tobias’s wife kept the box."),
        ("Tobias had no children.", "The baby came in May. Tobias’s son was called Ben."),
        ("Tobias was a bachelor.", "Marta’s husband kept the box."),
        ("Tobias had no children.", "“My son will see to it,” said Marta."),
        ("Tobias had never married.", "Tobias was good to the pilot’s wife."),
    ],
)
def test_is_silent_about_others_and_what_has_come(claim: str, other: str) -> None:
    assert not found_in(CHECK, [*ILSE, claim], MARTA, [*NIGHT, other])


def test_says_what_is_told() -> None:
    (one,) = found_in(CHECK, [*ILSE, ASKED[0][0]], MARTA, [*NIGHT, ASKED[0][1]])
    assert "Ilse" in worded(CHECK.id, one, ["One", "Two", "Three"])
    assert "brother" in worded(CHECK.id, one, ["One", "Two", "Three"])
