import pytest

from afterdraft.manuscript.division import Chapter, Scene
from afterdraft.manuscript.naming import chapter_name, scene_name, shortened


@pytest.mark.parametrize(
    ("text", "limit", "expected"),
    [
        ("Short.", 48, "Short."),
        ("The kiln had been\ncold", 48, "The kiln had been cold"),
        ("The kiln had been cold since Tuesday", 20, "The kiln had been…"),
        ("The kiln, cold, stood", 10, "The kiln…"),
        ("Unbrokenwordwithoutspaces", 10, "Unbrokenwo…"),
        ("", 48, ""),
    ],
)
def test_a_long_opening_is_cut_at_a_word(text: str, limit: int, expected: str) -> None:
    assert shortened(text, limit) == expected


def test_a_scene_is_called_by_its_title_then_its_first_words_then_its_code() -> None:
    assert scene_name(Scene("s", 0, code="F47", title="The weir"), "She came") == "The weir"
    assert scene_name(Scene("s", 0, code="F47"), "She came") == "She came"
    assert scene_name(Scene("s", 0, code="F47"), "") == "F47"


@pytest.mark.parametrize(
    ("chapter", "expected"),
    [
        (Chapter("c", 0, None, "chapter", 3, "The Mill"), "Chapter 3: The Mill"),
        (Chapter("c", 0, None, "chapter", 3, ""), "Chapter 3"),
        (Chapter("c", 0, None, "chapter", None, "The Mill"), "The Mill"),
        (Chapter("c", 0, None, "prologue", None, ""), "Prologue"),
        (Chapter("c", 0, None, "prologue", None, "Prologue"), "Prologue"),
        (Chapter("c", 0, None, "epilogue", None, "Ash"), "Epilogue: Ash"),
        (Chapter("c", 0, None, "letter", 2, ""), "Letter 2"),
        (Chapter("c", 0, None, "chapter", None, ""), "Unnamed chapter"),
    ],
)
def test_a_chapter_is_called_as_a_person_says_it(chapter: Chapter, expected: str) -> None:
    assert chapter_name(chapter) == expected
