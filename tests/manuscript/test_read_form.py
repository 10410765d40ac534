"""The published form `read/1`, whole, for one small invented manuscript."""

import json
from dataclasses import replace

from afterdraft.manuscript.blocks import Block, Gap, Look
from afterdraft.manuscript.division import Doubt
from afterdraft.manuscript.draft import Draft, Suggestion
from afterdraft.manuscript.read_form import read_form
from afterdraft.manuscript.structure import structure
from tests.manuscript.build import CENTRED, HEADING, PAGE, made

# 21 words, 98 letters and signs
LINE = "Nobody on the quay would say why the ferry was late, or who had taken the rope from its iron ring."
BLOCKS = [
    Block("The Salt Road", look=HEADING),
    Block("by Ilse Maren Tovik", look=CENTRED),
    Block("PART ONE: The Crossing", look=HEADING, gap=PAGE),
    Block("Chapter 1", look=HEADING),
    Block("The Ferry", look=HEADING),
    Block("In which nobody comes", look=Look(align="center", italic=True)),
    Block(LINE),
    Block("* * *", look=CENTRED),
    Block("“Later,” said Mara—and slept."),
    Block("Chapter 2", look=HEADING, gap=PAGE),
    Block(LINE),
    Block(LINE),
    Block("Acknowledgements", look=HEADING, gap=PAGE),
    Block("To the ferryman."),
]

EXPECTED = {
    "afterdraft": "0.1.0",
    "form": "read/1",
    "file": {"name": "draft.docx", "format": "docx", "sha256": "0" * 64, "bytes": 1},
    "title": "The Salt Road",
    "author": "Ilse Maren Tovik",
    "language": "",
    "words": 67,
    "front": [{"kind": "title page", "paragraphs": 2}],
    "back": [{"kind": "other", "paragraphs": 2}],
    "parts": [{"index": 0, "title": "PART ONE: The Crossing"}],
    "chapters": [
        {
            "index": 0,
            "part": 0,
            "kind": "chapter",
            "number": 1,
            "title": "The Ferry",
            "head": ["In which nobody comes"],
            "words": 25,
            "scenes": [0, 1],
        },
        {"index": 1, "part": 0, "kind": "chapter", "number": 2, "title": "", "head": [], "words": 42, "scenes": [2]},
    ],
    "scenes": [
        {
            "index": 0,
            "chapter": 0,
            "start": 0,
            "end": 98,
            "words": 21,
            "break": "heading",
            "sure": 1.0,
            "title": None,
            "paragraphs": [LINE],
        },
        {
            "index": 1,
            "chapter": 0,
            "start": 100,
            "end": 129,
            "words": 4,
            "break": "mark",
            "sure": 1.0,
            "title": None,
            "paragraphs": ["“Later,” said Mara—and slept."],
        },
        {
            "index": 2,
            "chapter": 1,
            "start": 131,
            "end": 329,
            "words": 42,
            "break": "heading",
            "sure": 1.0,
            "title": None,
            "paragraphs": [LINE, LINE],
        },
    ],
    "suggested_breaks": [{"at": 231, "strength": 0.5, "why": ["place"]}],
    "unsure": [
        {"what": "This may be front matter.", "paragraph": 2, "at": None, "chosen": "chapter", "other": "front matter"},
        {"what": "This may be a heading.", "paragraph": 8, "at": 100, "chosen": "text", "other": "chapter"},
    ],
}


def small() -> Draft:
    found = structure(made(BLOCKS))
    assert found.doubts == ()
    return replace(
        found,
        doubts=(
            Doubt("This may be front matter.", 2, "chapter", "front matter"),
            Doubt("This may be a heading.", 8, "text", "chapter"),
        ),
        suggestions=(Suggestion(11, 0.5, ("place",)),),
    )


def test_the_whole_form() -> None:
    form = read_form(small(), version="0.1.0", text=True)
    assert json.loads(json.dumps(form)) == EXPECTED


def test_paragraphs_only_when_asked_for() -> None:
    form = read_form(small(), version="0.1.0", text=False)
    assert all("paragraphs" not in scene for scene in form["scenes"])


def test_offsets_count_code_points() -> None:
    """A sign outside the basic plane is one code point (the Unicode standard, section 2.4), not two."""
    found = structure(made([Block("🜄 salt.", gap=Gap()), Block("Two.")]))
    form = read_form(found, version="0.1.0", text=True)
    assert (form["scenes"][0]["start"], form["scenes"][0]["end"]) == (0, 13)
