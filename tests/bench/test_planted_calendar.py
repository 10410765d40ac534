"""Planted faults of calendar and drafting: they stand in the book, apart, the same for the same seed."""

import ast
from pathlib import Path

from bench.faults.kinds import KINDS
from bench.faults.planted import Scenes, plant
from bench.faults.verbs import in_the_present

HERE = Path(__file__).parents[2] / "bench" / "faults"
MINE = ("leftover", "weekday", "date", "interval", "name", "tense")
TOLD = (
    "The door opened slowly and Hannah came into the room with the lamp in her hand.",
    "“No,” said Hannah. “The bridge is down, and the ferry is on the other side.”",
    "She stood by the window and looked out, and she was tired. She took the lamp from its hook and went down.",
    "The boat lay under the bank, and Hannah pushed it off with the long pole that hung there.",
)
BOOK: Scenes = tuple(TOLD * 8 for _ in range(4))


def test_faults_stand_in_the_book_once_each_and_apart() -> None:
    planted, faults = plant(BOOK, [KINDS[kind] for kind in MINE if kind != "leftover"], "a seed")
    assert {one.kind for one in faults} >= {"weekday", "date", "interval"}
    edits = [(edit.scene, edit.paragraph) for one in faults for edit in one.edits]
    assert len(edits) == len(set(edits))
    for fault in faults:
        assert all(any(one.words in text for text in planted[one.scene]) for one in fault.shown)


def test_the_same_seed_plants_the_same() -> None:
    kinds = [KINDS[kind] for kind in MINE]
    assert plant(BOOK, kinds, "a seed") == plant(BOOK, kinds, "a seed")
    assert plant(BOOK, kinds, "a seed") != plant(BOOK, kinds, "another")


def test_a_paragraph_is_put_into_the_present() -> None:
    told = "She stood by the window and looked out, and she was tired. She took the lamp from the hook. He went down."
    assert in_the_present(told, ["Hannah"], {"look": 3}) == (
        "She stands by the window and looks out, and she is tired. She takes the lamp from the hook. He goes down."
    )


def test_planters_import_nothing_of_the_program() -> None:
    beside = ("planted.py", "novels.py", "prose.py", "days.py", "verbs.py", "listed.py")
    files = [*HERE.glob("kinds/*.py"), *(HERE / name for name in beside)]
    for file in files:
        for node in ast.walk(ast.parse(file.read_text())):
            names = [node.module or ""] if isinstance(node, ast.ImportFrom) else []
            names += [one.name for one in node.names] if isinstance(node, ast.Import) else []
            assert not any(name.split(".")[0] == "afterdraft" for name in names), file
