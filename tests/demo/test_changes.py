"""What became of every scene and passage, as `demo/changes.json` tells it, is so in the two drafts as read back."""

from typing import Any

import pytest

from demo.build import DEMODATA
from demo.revise import stored
from tests.demo.reading import draft, paragraphs_of, scene_of, scenes_of

CHANGES: dict[str, Any] = stored("changes.json")
PLAN: dict[str, Any] = stored("plan.json")
FIRST, SECOND = DEMODATA / "manuscript.docx", DEMODATA / "second.docx"
BECAME = {"same", "revised", "rewritten", "split", "joined", "cut"}


def first_paragraphs(number: int) -> list[str]:
    return scene_of_paragraphs()[number - 1]


def scene_of_paragraphs() -> list[list[str]]:
    """The first draft's story paragraphs by the lists' own count, the forgotten break put in."""
    forgotten = next(scene["opens"] for scene in CHANGES["scenes"] if scene["first"] == 14)
    found: list[list[str]] = []
    for paragraphs in paragraphs_of(FIRST):
        at = next((at for at, text in enumerate(paragraphs) if text.startswith(forgotten)), None)
        found += [paragraphs] if at is None else [paragraphs[:at], paragraphs[at:]]
    return found


def test_every_scene_of_the_first_draft_has_its_fate() -> None:
    assert [scene["first"] for scene in CHANGES["scenes"]] == list(range(1, len(scene_of_paragraphs()) + 1))
    assert {scene["became"] for scene in CHANGES["scenes"]} == BECAME
    assert any(scene["moved"] for scene in CHANGES["scenes"])
    assert all(bool(scene["second"]) == (scene["became"] != "cut") for scene in CHANGES["scenes"])


def test_every_scene_of_the_second_draft_comes_from_somewhere_or_is_new() -> None:
    made = {at for scene in CHANGES["scenes"] for at in scene["second"]} | {new["scene"] for new in CHANGES["new"]}
    assert made == set(range(1, len(scenes_of(SECOND)) + 1))
    assert len(CHANGES["new"]) >= 2


@pytest.mark.parametrize("scene", CHANGES["scenes"], ids=lambda scene: f"{scene['first']} {scene['became']}")
def test_each_scene_became_what_the_list_says(scene: dict[str, Any]) -> None:
    old = "\n".join(first_paragraphs(scene["first"]))
    new = [scenes_of(SECOND)[at - 1] for at in scene["second"]]
    assert old.startswith(scene["opens"])
    kept = sum(text in "\n".join(scenes_of(SECOND)) for text in set(first_paragraphs(scene["first"])))
    if scene["became"] == "same":
        assert new == [old]
    elif scene["became"] in ("rewritten", "cut"):
        assert kept <= 3, "of a scene written anew or cut, hardly a paragraph is left"
    else:
        assert kept >= len(first_paragraphs(scene["first"])) / 2
        assert old not in "\n".join(scenes_of(SECOND)) or scene["became"] in ("joined", "split")
    if scene["became"] == "split":
        assert len(new) == 2
    if scene["became"] == "joined":
        assert sum(other["second"] == scene["second"] for other in CHANGES["scenes"]) == 2


def test_moved_scenes_stand_in_another_order() -> None:
    order = [scene["first"] for scene in sorted(CHANGES["scenes"], key=lambda s: s["second"]) if scene["second"]]
    still = [s["first"] for s in CHANGES["scenes"] if s["second"] and not s["moved"]]
    assert [number for number in order if number in still] == still
    assert order != sorted(order)


@pytest.mark.parametrize("became", ["kept", "reworded", "moved", "gone"])
def test_passages_went_where_the_list_says(became: str) -> None:
    listed = [passage for passage in CHANGES["passages"] if passage["became"] == became]
    everywhere = {text for paragraphs in paragraphs_of(SECOND) for text in paragraphs}
    assert listed
    for passage in listed:
        scene, at = passage["first"]
        old = first_paragraphs(scene)[at - 1]
        new = paragraphs_of(SECOND)[passage["second"][0] - 1][passage["second"][1] - 1] if "second" in passage else ""
        if became in ("kept", "moved"):
            assert new == old
        elif became == "reworded":
            assert new and new != old
        else:
            assert old not in everywhere or len(old.split()) < 8


def test_every_paragraph_of_the_first_draft_is_accounted_for() -> None:
    counted = [[scene, at] for scene, text in enumerate(scene_of_paragraphs(), 1) for at in range(1, len(text) + 1)]
    assert [passage["first"] for passage in CHANGES["passages"]] == counted


def test_moved_passages_came_from_another_scene() -> None:
    made = {scene["first"]: scene["second"] for scene in CHANGES["scenes"]}
    moved = [passage for passage in CHANGES["passages"] if passage["became"] == "moved"]
    assert [passage for passage in moved if passage["second"][0] in made[passage["first"][0]]] == []


def test_one_new_fault_was_made() -> None:
    fault = CHANGES["new_fault"]
    assert all(passage["words"] in scenes_of(SECOND)[passage["scene"] - 1] for passage in fault["passages"])
    assert fault["passages"][0]["words"] not in "\n".join(scenes_of(FIRST))


def test_one_guarded_passage_was_lost() -> None:
    lost = CHANGES["guarded_lost"]
    guarded = stored("work.json")["guarded"]
    gone = [each["words"] for each in guarded if each["words"] not in "\n".join(scenes_of(SECOND))]
    assert lost["words"] in scene_of(FIRST, lost["scene"])
    assert gone == [lost["words"]]


def test_the_second_draft_is_divided_as_it_was_planned() -> None:
    planned = [len(chapter["scenes"]) for chapter in PLAN["chapters"]]
    starts = [chapter.at for chapter in draft(SECOND).division.chapters]
    ats = [scene.at for scene in draft(SECOND).division.scenes]
    ends = [*starts[1:], len(draft(SECOND).source.blocks)]
    assert [sum(start <= at < end for at in ats) for start, end in zip(starts, ends, strict=True)] == planned
