"""The demonstration typescript, read by the program, gives what its sources hold (`demo/scenes.json`).

The expected structure is counted from the sources by the builder, which imports nothing of the program.
"""

import json
from functools import cache
from typing import Any

from afterdraft.formats.table import read
from afterdraft.manuscript.division import Role
from afterdraft.manuscript.draft import Draft
from afterdraft.manuscript.structure import structure
from demo.build import DEMODATA, HERE

CHAPTERS: list[dict[str, Any]] = json.loads((HERE / "scenes.json").read_text(encoding="utf-8"))["chapters"]
TYPED: list[dict[str, Any]] = [
    scene for chapter in CHAPTERS for scene in chapter["scenes"] if scene["began"] != "missing"
]
BEGAN = {"heading": "heading", "#": "mark", "***": "mark"}


@cache
def draft() -> Draft:
    name = "manuscript.docx"
    return structure(read((DEMODATA / name).read_bytes(), name))


def texts(role: Role, start: int, end: int) -> list[str]:
    blocks, roles = draft().source.blocks, draft().division.roles
    return [blocks[at].text.strip() for at in range(start, end) if roles[at] == role]


def stories() -> list[list[str]]:
    """The story paragraphs of each scene."""
    ats = [scene.at for scene in draft().division.scenes]
    ends = [*ats[1:], len(draft().source.blocks)]
    return [texts("story", start, end) for start, end in zip(ats, ends, strict=True)]


def test_every_chapter_is_found_under_its_own_heading() -> None:
    found = [(chapter.kind, chapter.number, chapter.title) for chapter in draft().division.chapters]
    assert found == [("chapter", number, chapter["title"]) for number, chapter in enumerate(CHAPTERS, 1)]


def test_every_typed_scene_is_found_and_opens_as_it_was_written() -> None:
    assert [" ".join(story).startswith(scene["opens"]) for story, scene in zip(stories(), TYPED, strict=True)] == [
        True
    ] * len(TYPED)


def test_every_scene_says_how_it_began() -> None:
    assert [scene.began for scene in draft().division.scenes] == [BEGAN[scene["began"]] for scene in TYPED]


def test_the_forgotten_break_stands_inside_the_scene_before_it() -> None:
    forgotten = next(scene for chapter in CHAPTERS for scene in chapter["scenes"] if scene["began"] == "missing")
    holders = [story for story in stories() if any(text.startswith(forgotten["opens"]) for text in story)]
    assert len(holders) == 1
    assert not holders[0][0].startswith(forgotten["opens"])


def test_no_word_of_the_story_is_lost_or_added() -> None:
    expected = sum(scene["words"] for chapter in CHAPTERS for scene in chapter["scenes"])
    words = [word for story in stories() for text in story for word in text.split()]
    assert sum(any(map(str.isalnum, word)) for word in words) == expected


def test_the_author_s_own_comments_are_set_apart() -> None:
    comments = [aside for aside in draft().source.asides if aside.kind == "comment"]
    assert len(comments) == 2
    assert all(aside.author == "Ursula Tennick" for aside in comments)
    assert not any(aside.text in text for aside in comments for story in stories() for text in story)


def test_italics_are_kept() -> None:
    slanted = {
        block.text[run.start : run.end] for block in draft().source.blocks for run in block.runs if run.kind == "italic"
    }
    assert {"unknown", "Condenser, sugar", "Leave it. G.’s slide rule."} <= slanted


def test_the_front_matter_is_understood() -> None:
    assert (draft().title.casefold(), draft().author) == ("tare", "Ursula Tennick")
    assert [matter.kind for matter in draft().division.matter if matter.where == "front"] == [
        "title page",
        "dedication",
    ]
