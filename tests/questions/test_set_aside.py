"""Somebody met only in what is set aside. That a cut is followed through the book is common practice."""

import pytest

from afterdraft.questions.each.set_aside import CHECK
from afterdraft.questions.marks import Marks
from tests.questions.asked import quotes, read
from tests.questions.people import ILSE, MARTA, NIGHT

pytestmark = pytest.mark.slow


def test_asks_who_is_named_though_her_only_scene_lies_aside() -> None:
    found = list(CHECK.find(read([ILSE, MARTA, NIGHT], Marks(set_aside=frozenset({1})))))
    assert quotes(found) == [["“Marta wants to sell,” said Ilse."]]
    assert [(one.words["name"], one.all_scenes) for one in found] == [("Marta Kell", (1, 2))]


def test_is_silent_where_she_is_met_elsewhere_or_named_nowhere_or_nothing_lies_aside() -> None:
    assert not list(CHECK.find(read([ILSE, MARTA, NIGHT, MARTA], Marks(set_aside=frozenset({1})))))
    assert not list(CHECK.find(read([ILSE, MARTA], Marks(set_aside=frozenset({1})))))
    assert not list(CHECK.find(read([ILSE, MARTA, NIGHT])))
    both = Marks(set_aside=frozenset({1, 2}))
    assert not list(CHECK.find(read([ILSE, MARTA, NIGHT], both)))
