"""`afterdraft read FILE --json --facts`, with the real model."""

import json
from pathlib import Path

import pytest

from afterdraft import wiring
from afterdraft.cli.main import run
from afterdraft.manuscript.draft import Draft

STORY = """Chapter One

Ada Lamb came in. Mr. Pike rose from his chair by the stove.

“Sit down,” said Ada. “You look tired.”

“No,” said Mr. Pike.

“Why?” asked Ada Lamb.

“Because of the letter, Ada.”

Chapter Two

Ada waited. She saw the boat, and she thought of the letter, and knew what it said. She feared it, and wished for day.
"""


def no_program(*_: object, **__: object) -> int:
    raise AssertionError("reading a file opens nothing")


@pytest.mark.slow
def test_people_speech_and_presence_with_offsets_into_the_story_text(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file = tmp_path / "story.txt"
    file.write_text(STORY, encoding="utf-8")
    assert run(["read", str(file), "--json", "--text", "--facts"], serve=no_program) == 0
    form = json.loads(capsys.readouterr().out)
    story = "\n\n".join(paragraph for scene in form["scenes"] for paragraph in scene["paragraphs"])
    names = {one["id"]: one["name"] for one in form["people"]}
    assert set(names.values()) == {"Ada Lamb", "Mr. Pike"}
    assert [(story[one["start"] : one["end"]], names[one["speaker"]]) for one in form["speech"]] == [
        ("Sit down,", "Ada Lamb"),
        ("You look tired.", "Ada Lamb"),
        ("No,", "Mr. Pike"),
        ("Why?", "Ada Lamb"),
        ("Because of the letter, Ada.", "Mr. Pike"),
    ]
    assert {(one["scene"], names[one["person"]], one["as"]) for one in form["appearances"]} == {
        (0, "Ada Lamb", "on page"),
        (0, "Mr. Pike", "on page"),
        (1, "Ada Lamb", "point of view"),
    }
    assert [(one["scene"], one["words"], one["person"], one["tense"]) for one in form["measures"]] == [
        (0, 33, "third", "past"),
        (1, form["scenes"][1]["words"], "third", "past"),
    ]
    assert form["measures"][0]["speech_share"] == round(12 / 33, 4)
    assert all(story[one["at"] :].startswith(one["text"]) for one in form["times"])
    assert [one["scene"] for one in form["scene_times"]] == [0, 1]
    assert len(form["settings"]) == 2
    assert all(set(one["scenes"]) <= {0, 1} for one in form["places"])


def test_a_text_in_another_language_is_not_read_for_people() -> None:
    from afterdraft.manuscript.blocks import Blocks
    from afterdraft.manuscript.division import Division

    draft = Draft(Blocks(name="x.txt", format="txt", sha256="", size=0, blocks=()), Division(), language="fr")
    assert wiring.facts(draft) is None
