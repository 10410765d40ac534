"""Words of a scene, typed or pasted, are found where they stand."""

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from afterdraft.desk.anchor import Passage
from afterdraft.errors import Missing, NotPossible
from afterdraft.store.book import BookFile
from afterdraft.work.notes.find_passage import find_passage
from tests.store.sample import TEXTS


@pytest.fixture
def scenes(book: BookFile, draft: str) -> list[str]:
    return [scene.id for scene in book.division(draft).scenes]


@pytest.mark.parametrize(
    ("words", "passages"),
    [
        ("ferry", [Passage(3, 4, 9)]),
        ("  wasn't late ", [Passage(3, 10, 21)]),  # a straight apostrophe for the curly one
        ('"Door,"', [Passage(4, 0, 7)]),
        ("against it.\n“Door,” said", [Passage(3, 64, 75), Passage(4, 0, 12)]),  # over two paragraphs
        ("The ferry\n\n\n", [Passage(3, 0, 9)]),
        ("against it.\r\n\r\n“Door,”", [Passage(3, 64, 75), Passage(4, 0, 7)]),
    ],
)
def test_where_words_stand(book: BookFile, scenes: list[str], words: str, passages: list[Passage]) -> None:
    assert find_passage(book, scenes[0], words) == tuple(passages)
    texts = [TEXTS[one.paragraph][one.start : one.end] for one in passages]
    assert [text.strip() for text in texts] == texts


@pytest.mark.parametrize("words", ["pier", "THE SLUICE-KEEPER", "ferry\nDoor", "1. The ferry", "\n\n"])
def test_words_that_stand_elsewhere_are_refused(book: BookFile, scenes: list[str], words: str) -> None:
    with pytest.raises(NotPossible):
        find_passage(book, scenes[0], words)


def test_a_scene_that_is_gone(book: BookFile) -> None:
    with pytest.raises(Missing):
        find_passage(book, "sc0", "ferry")


@given(st.data())
@settings(deadline=None, max_examples=40, suppress_health_check=[HealthCheck.function_scoped_fixture])
def test_any_stretch_of_a_paragraph_is_found(book: BookFile, scenes: list[str], data: st.DataObject) -> None:
    paragraph = data.draw(st.sampled_from([3, 4]))
    text = TEXTS[paragraph]
    start = data.draw(st.integers(0, len(text) - 1))
    words = text[start : data.draw(st.integers(start + 1, len(text)))].strip()
    if not words:
        return
    (found,) = find_passage(book, scenes[0], words)
    straight = str.maketrans("‘’“”", "''\"\"")
    assert TEXTS[found.paragraph][found.start : found.end].translate(straight) == words.translate(straight)
