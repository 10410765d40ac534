"""Outlines are worked out from a division; offsets follow the rule of the published forms."""

from afterdraft.manuscript.division import Chapter, Division, Matter, Part, Scene
from afterdraft.manuscript.outline import outline, story_text
from afterdraft.manuscript.words import count

TEXTS = ("The Salt Road", "PART ONE", "1", "A bell.", "Two bells.", "***", "Later, rain.", "2", "Notes — none")
BOOK = Division(
    parts=(Part("p1", 1, "PART ONE"),),
    chapters=(Chapter("c1", 2, "p1", "chapter", 1, ""), Chapter("c2", 7, "p1", "chapter", 2, "")),
    scenes=(Scene("s1", 2, began="heading"), Scene("s2", 5, began="mark"), Scene("s3", 7, began="heading")),
    matter=(Matter("m1", 0, "front", "title page"), Matter("m2", 8, "back", "other")),
    roles=("matter", "heading", "heading", "story", "story", "mark", "story", "heading", "matter"),
)
WORDS = [count(text) for text in TEXTS]


def test_words_hold_a_letter_or_a_digit() -> None:
    assert WORDS == [3, 2, 1, 2, 2, 0, 2, 1, 2]


def test_scenes_chapters_and_parts_add_up() -> None:
    book = outline(BOOK, WORDS)
    assert [(view.start, view.end, view.story, view.words, view.chapter) for view in book.scenes] == [
        (2, 5, (3, 4), 4, "c1"),
        (5, 7, (6,), 2, "c1"),
        (7, 8, (), 0, "c2"),
    ]
    assert [(view.number, view.start, view.end, view.words, len(view.scenes)) for view in book.chapters] == [
        (1, 2, 7, 6, 2),
        (2, 7, 8, 0, 1),
    ]
    assert [(view.start, view.end, view.words, len(view.chapters)) for view in book.parts] == [(1, 2, 6, 2)]
    assert (book.words, [view.words for view in book.front], [view.words for view in book.back]) == (6, [3], [2])


def test_a_paragraph_finds_its_scene() -> None:
    book = outline(BOOK, WORDS)
    found = [book.scene_of(paragraph) for paragraph in range(len(TEXTS))]
    assert [view and view.scene.id for view in found] == [None, None, "s1", "s1", "s1", "s2", "s2", "s3", None]


def test_story_text_and_offsets() -> None:
    story = story_text(BOOK, TEXTS)
    assert story.text == "A bell.\n\nTwo bells.\n\nLater, rain."
    assert [story.text[start:end] for start, end in story.spans] == ["A bell.\n\nTwo bells.", "Later, rain.", ""]
