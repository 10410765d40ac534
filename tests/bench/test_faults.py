"""Kinds of fault, and characters that stand twice."""

import pytest

from afterdraft.whole.cast import find_cast
from afterdraft.whole.speaking import concerned, heard
from bench.reading.faults import Case, fault
from bench.reading.novels import Character, Novel, Quotation
from bench.reading.same import SAME, joined
from tests.reading.hand import scene


def case(*paragraphs: str, kind: str, speaker: str | None, said: str | None, number: int) -> Case:
    facts = scene(*paragraphs)
    seen = heard(facts, concerned(facts, find_cast([facts]), {}))
    chain = [said] * len(seen.turns)
    return Case(kind, False, False, False, speaker, said, facts, seen, number, chain, [True] * len(chain))


def test_kinds_of_fault_follow_the_program_s_steps() -> None:
    talk = ("“Sit,” said Miss Lamb.", "“No,” said Mr. Pike.", "“Why?” he asked.", "“So.”")
    lamb, pike = "read:miss lamb", "read:mr pike"
    kinds = [
        fault(case(*talk, kind="Explicit", speaker=lamb, said=pike, number=0)),
        fault(case(*talk, kind="Anaphoric", speaker=lamb, said=pike, number=2)),
        fault(case(*talk, kind="Implicit", speaker=lamb, said=pike, number=3)),
        fault(case(*talk, kind="Implicit", speaker=None, said=pike, number=3)),
        fault(None),
    ]
    assert len(set(kinds)) == len(kinds)
    assert kinds[1] == "pronoun of a tag: the speaker's gender taken for the other"
    assert kinds[3:] == ["speaker not in the cast", "words not found as speech"]


def novel(*, speaker: int) -> Novel:
    people = (Character(0, "Bounder", ("Bounder",), "X", "minor"), Character(1, "Joe Bounder", ("Joe",), "M", "major"))
    return Novel("own", "Own", (), people, (Quotation(((0, 1),), speaker, ""),))


def test_characters_that_stand_twice_are_one(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(SAME, "own", {"Bounder": "Joe Bounder"})
    (one,) = joined(novel(speaker=1)).characters
    assert (one.id, one.aliases) == (1, ("Joe", "Bounder"))


def test_a_character_that_speaks_is_not_made_another(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(SAME, "own", {"Bounder": "Joe Bounder"})
    with pytest.raises(ValueError, match="speak"):
        joined(novel(speaker=0))
