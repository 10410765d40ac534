"""The demonstration book's second draft beside its first: each change that its list names, found; and the command."""

import json
from pathlib import Path

import pytest

from afterdraft import demodata
from afterdraft.manuscript.draft import Draft
from afterdraft.manuscript.outline import outline
from afterdraft.wiring import compared, load, read
from tests.server import afterdraft

DATA = Path(demodata.__file__).parent
CHANGES = json.loads((Path(__file__).parents[2] / "demo" / "changes.json").read_text("utf-8"))
UNMARKED = {13, 14}  # of the first draft: no mark stands between them in the manuscript, so that they are read as one


@pytest.fixture(scope="module")
def drafts() -> tuple[Draft, Draft]:
    first, second = (read(load([DATA / name])) for name in ("manuscript.docx", "second.docx"))
    return first, second


def openings(draft: Draft) -> list[str]:
    texts = [block.text for block in draft.source.blocks]
    scenes = outline(draft.division, [0] * len(texts)).scenes
    return [" ".join(texts[scene.story[0]].split()) for scene in scenes]


def test_every_listed_change_of_a_scene_is_recognised(drafts: tuple[Draft, Draft]) -> None:
    first, second = drafts
    fates = compared(first, second).scenes
    was, now = openings(first), openings(second)
    missed = []
    for listed in CHANGES["scenes"]:
        at = next((n for n, text in enumerate(was) if text.startswith(listed["opens"])), None)
        if at is None or listed["first"] in UNMARKED:
            continue
        fate = next(fate for fate in fates if at in fate.old)
        if (fate.became, fate.moved and listed["moved"]) != (listed["became"], listed["moved"]):
            missed.append((listed, fate))
    assert missed == []
    for listed in CHANGES["new"]:
        at = next(n for n, text in enumerate(now) if text.startswith(listed["opens"]))
        assert next(fate for fate in fates if at in fate.new).became == "new"


def test_the_command_says_it_as_json_and_in_short(tmp_path: Path) -> None:
    files = [DATA / "manuscript.docx", DATA / "second.docx"]
    told = afterdraft("compare", *files, "--json", home=tmp_path)
    form = json.loads(told.stdout)
    assert (told.returncode, form["form"]) == (0, "compare/1")
    assert set(form["totals"]) == {"old_words", "new_words", "kept_words", "moved_words", "cut_words", "added_words"}
    indices = [row[0] for row in form["paragraphs"] if row[0] is not None]
    assert sorted(set(indices)) == list(range(max(indices) + 1))
    short = afterdraft("compare", *files, home=tmp_path)
    assert short.stdout.startswith(f"{form['totals']['kept_words']:,} of {form['totals']['old_words']:,} words kept")
    assert "cut" in short.stdout


def test_a_book_and_its_draft_are_named_by_number(tmp_path: Path) -> None:
    book = tmp_path / "Tare.afterdraft"
    assert afterdraft("begin", DATA / "manuscript.docx", "-o", book, home=tmp_path).returncode == 0
    told = afterdraft("compare", f"{book}#1", DATA / "second.docx", "--json", home=tmp_path)
    assert json.loads(told.stdout)["new"]["file"]["name"] == "second.docx"
    missing = afterdraft("compare", f"{book}#2", DATA / "second.docx", home=tmp_path)
    assert missing.returncode != 0
    assert "Draft 2" in missing.stderr
