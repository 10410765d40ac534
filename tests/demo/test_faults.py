"""Every planted fault and every trap stands in the built first draft where `demo/faults.json` says.

Taken back, none stands there. The drafts are read back by the program; the lists are the author's.
"""

from collections import Counter
from typing import Any

import pytest

from demo.build import DEMODATA
from demo.revise import consistent, second, stored
from demo.source import parts, plain
from tests.demo.reading import scene_of, scenes_of

FAULTS: list[dict[str, Any]] = stored("faults.json")["faults"]
TRAPS: list[dict[str, Any]] = stored("faults.json")["traps"]
FAMILIES = {
    "trait", "weekday", "interval", "two places", "gone", "late", "names", "left over", "setup without payoff",
    "payoff without setup", "not yet learned", "silent", "nothing follows", "viewpoint", "tense", "twice", "TK",
    "feeling",
}  # fmt: skip
TIN = ("biscuit tin", "her father’s", "Veal")
FIRST = DEMODATA / "manuscript.docx"


def named(entry: dict[str, Any]) -> str:
    return str(entry["id"])


def test_each_family_is_planted_at_least_twice() -> None:
    kinds = Counter(fault["kind"] for fault in FAULTS)
    assert set(kinds) == FAMILIES
    assert min(kinds.values()) >= 2


def test_there_are_at_least_ten_traps() -> None:
    assert len(TRAPS) >= 10
    assert all(trap["why_not"].endswith(".") for trap in TRAPS)


def test_every_name_is_given_once() -> None:
    names = [named(entry) for entry in FAULTS + TRAPS]
    assert len(names) == len(set(names))


@pytest.mark.parametrize("entry", FAULTS + TRAPS, ids=named)
def test_the_passages_stand_in_the_scenes_named(entry: dict[str, Any]) -> None:
    for passage in entry["passages"]:
        assert passage["words"] in scene_of(FIRST, passage["scene"])
    for scene in entry["scenes"]:
        assert scene["opens"] in " ".join(scene_of(FIRST, scene["index"]).split())


@pytest.mark.parametrize("fault", FAULTS, ids=named)
def test_each_fault_asks_a_question(fault: dict[str, Any]) -> None:
    assert fault["question"].endswith("?")


@pytest.mark.parametrize("fault", [fault for fault in FAULTS if fault["kind"] == "silent"], ids=named)
def test_a_silence_lasts_for_a_third_of_the_book(fault: dict[str, Any]) -> None:
    silent = [len(scene_of(FIRST, scene["index"]).split()) for scene in fault["scenes"]]
    whole = sum(len(text.split()) for text in scenes_of(FIRST))
    assert sum(silent) >= whole / 3


@pytest.mark.parametrize(
    ("fault", "words"),
    [("silent-maud", ("Maud’s ear", "deaf", "doorbell", "trowel")), ("silent-tin", TIN)],
)
def test_nothing_is_said_in_a_silence(fault: str, words: tuple[str, ...]) -> None:
    listed = next(entry for entry in FAULTS if entry["id"] == fault)
    for scene in listed["scenes"]:
        assert [word for word in words if word in scene_of(FIRST, scene["index"])] == [], scene


def test_without_the_faults_no_wrong_word_is_left() -> None:
    """Taken back, every edit leaves a book in which what was planted does not stand."""
    whole = "\n".join(plain(part) for scene in consistent() for part in parts(scene))
    planted = [edit for edit in stored("edits.json")["words"] if edit["fault"] and edit["first"] not in edit["true"]]
    assert [edit["fault"] for edit in planted if plain(edit["first"]) in whole] == []
    assert len(consistent()) == len(scenes_of(FIRST))  # one scene the fewer, and one break that was forgotten


@pytest.mark.parametrize(
    "fault", [fault for fault in FAULTS if fault["mended"] is None and fault["kind"] != "silent"], ids=named
)
def test_what_is_not_mended_stands_in_the_second_draft(fault: dict[str, Any]) -> None:
    whole = "\n".join(scenes_of(DEMODATA / "second.docx"))
    assert [passage["words"] for passage in fault["passages"] if passage["words"] not in whole] == []


def test_the_tin_is_away_as_long_in_the_second_draft() -> None:
    texts = scenes_of(DEMODATA / "second.docx")
    silent = texts[texts.index(next(text for text in texts if "biscuit tin" in text)) + 1 :]
    silent = silent[: next(at for at, text in enumerate(silent) if "her father’s tin" in text)]
    assert [word for word in TIN if word in "".join(silent)] == []
    assert len(" ".join(silent).split()) >= len(" ".join(texts).split()) / 3


@pytest.mark.parametrize(
    "fault", [fault for fault in FAULTS if fault["mended"] and "mended_by" not in fault], ids=named
)
def test_what_is_mended_is_gone(fault: dict[str, Any]) -> None:
    whole = "\n".join(scenes_of(DEMODATA / "second.docx"))
    if fault["kind"] == "twice":
        assert whole.count(fault["passages"][0]["words"]) == 1
    else:
        assert any(passage["words"] not in whole for passage in fault["passages"])


@pytest.mark.parametrize("fault", [fault for fault in FAULTS if "mended_by" in fault], ids=named)
def test_a_new_scene_comes_where_the_fault_left_a_hole(fault: dict[str, Any]) -> None:
    """Between the first and the last of its passages; before it, where a payoff lacked its setup."""
    new = next(scene.text for scene in second() if scene.entry.get("text") == fault["mended_by"])
    texts = scenes_of(DEMODATA / "second.docx")
    standing = [at for at, text in enumerate(texts) if any(passage["words"] in text for passage in fault["passages"])]
    at = next(at for at, text in enumerate(texts) if text.startswith(plain(parts(new)[0])))
    if fault["kind"] == "payoff without setup":
        assert at < min(standing)
    else:
        assert min(standing) < at
