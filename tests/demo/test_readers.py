"""The readers' copies hold the remarks and changes that `demo/readers.json` lists, at the words it names."""

from typing import Any

import pytest

from afterdraft.manuscript.blocks import Aside
from demo.build import DEMODATA
from demo.revise import stored
from tests.demo.reading import draft, scene_of

READERS: list[dict[str, Any]] = stored("readers.json")["readers"]
REMARKS: list[dict[str, Any]] = stored("readers.json")["remarks"]
COPIES = [reader for reader in READERS if reader["file"].endswith(".docx")]
FIRST = DEMODATA / "manuscript.docx"


def by(reader: dict[str, Any], *, change: bool) -> list[dict[str, Any]]:
    return [
        remark for remark in REMARKS if remark["reader"] == reader["name"] and (remark["kind"] == "change") == change
    ]


def asides(reader: dict[str, Any], kind: str) -> list[Aside]:
    found = draft(DEMODATA / "readers" / reader["file"]).source.asides
    return [aside for aside in found if aside.kind == kind]


def held(reader: dict[str, Any], aside: Aside) -> str:
    text = draft(DEMODATA / "readers" / reader["file"]).source.blocks[aside.block].text
    return text[aside.start : aside.end]


def test_there_are_three_copies_and_a_letter() -> None:
    assert len(COPIES) == 3
    assert [reader["file"] for reader in READERS if reader not in COPIES] == ["morag-tully.txt"]


@pytest.mark.parametrize("reader", COPIES, ids=lambda reader: reader["name"])
def test_every_remark_is_a_comment_on_its_words(reader: dict[str, Any]) -> None:
    listed = [(remark["words"], remark["remark"]) for remark in by(reader, change=False)]
    found = [(held(reader, aside), aside.text) for aside in asides(reader, "comment")]
    assert sorted(found) == sorted(listed)
    assert {aside.author for aside in asides(reader, "comment")} == {reader["name"]}


@pytest.mark.parametrize("reader", COPIES, ids=lambda reader: reader["name"])
def test_every_change_is_tracked(reader: dict[str, Any]) -> None:
    listed = by(reader, change=True)
    assert 2 <= len(listed) <= 5
    assert sorted(aside.text for aside in asides(reader, "deleted")) == sorted(each["words"] for each in listed)
    inserted = sorted(aside.text for aside in asides(reader, "inserted"))
    assert inserted == sorted(each["instead"] for each in listed if each["instead"])


@pytest.mark.parametrize("remark", REMARKS, ids=lambda remark: remark["id"])
def test_the_words_remarked_on_stand_once_in_the_scene_named(remark: dict[str, Any]) -> None:
    assert scene_of(FIRST, remark["scene"]).count(remark["words"]) == 1


def test_readers_agree_and_disagree_about_the_same_scene() -> None:
    scenes = {remark["id"]: remark["scene"] for remark in REMARKS}
    readers = {remark["id"]: remark["reader"] for remark in REMARKS}
    for field in ("agrees_with", "disputes"):
        pairs = [(remark["id"], other) for remark in REMARKS for other in remark[field]]
        assert len(pairs) >= 3
        assert all(readers[one] != readers[other] for one, other in pairs)
        assert all(scenes[one] == scenes[other] for one, other in pairs)


def test_somebody_stopped_reading_and_everybody_praised() -> None:
    assert any(remark["kind"] == "stopped" for remark in REMARKS)
    assert {remark["reader"] for remark in REMARKS if remark["kind"] == "praise"} == {r["name"] for r in READERS}


def test_the_letter_says_what_is_listed_of_it() -> None:
    letter = (DEMODATA / "readers" / "morag-tully.txt").read_text(encoding="utf-8")
    listed = [remark["remark"] for remark in REMARKS if remark["reader"] == "Morag Tully"]
    assert [remark for remark in listed if remark.rstrip(".").lower() not in letter.lower()] == []
