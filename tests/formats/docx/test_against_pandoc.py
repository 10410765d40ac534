"""A document that pandoc, a general-purpose converter, wrote from specimens/pandoc.md says what the source says."""

from pathlib import Path

from afterdraft.formats.docx.read import read
from afterdraft.manuscript.blocks import Aside, Blocks

SPECIMEN = Path(__file__).parents[2] / "specimens" / "pandoc.docx"


def whole() -> Blocks:
    return read(SPECIMEN.read_bytes(), SPECIMEN.name)


def test_the_text_is_that_of_the_source() -> None:
    assert [(block.look.level, block.look.label, block.text) for block in whole().blocks] == [
        (None, "", "The Weir"),
        (None, "", "Olla Trent"),
        (1, "", "The Sluice"),
        (
            None,
            "",
            "Perrin set the lamp on the wall. It was not the night for it, not at all, and he knew guessed as much.",
        ),
        (None, "", "“Shut it,” said Hanne. H2O, she called it; the 2nd gate."),
        (2, "", "By day"),
        (None, "", "A stone with a name on it:\nPerrin’s Weir,\nand no date."),
        (None, "", "She had never liked the sound of it."),
        (None, "1.", "Rope."),
        (None, "2.", "Oil."),
        (None, "", "tide\thour"),
        (None, "", "low\tfour"),
    ]


def test_emphasis_is_that_of_the_source() -> None:
    assert [(run.kind, block.text[run.start : run.end]) for block in whole().blocks for run in block.runs] == [
        ("italic", "not"),
        ("bold", "not at all"),
        ("strike", "knew"),
        ("small caps", "Hanne"),
        ("subscript", "2"),
        ("superscript", "nd"),
        ("italic", "Perrin’s Weir"),
    ]


def test_the_rule_stands_before_the_second_heading_only() -> None:
    assert [block.text for block in whole().blocks if block.gap.rule] == ["By day"]


def test_what_is_set_apart_is_that_of_the_source() -> None:
    assert list(whole().asides) == [
        Aside("footnote", 3, 102, 102, "Or said so later."),
        Aside("inserted", 7, 8, 13, "never", "Ida", "2026-02-03T04:05:06Z"),
        Aside("deleted", 7, 13, 13, "always", "Ida", "2026-02-03T04:05:06Z"),
        Aside("comment", 7, 20, 29, "Was she here before?", "Jem", "2026-02-04T04:05:06Z"),
        Aside("table", 10, 0, 9, "2 rows, 2 columns"),
    ]


def test_its_heads() -> None:
    assert (whole().title, whole().author, whole().language) == ("The Weir", "Olla Trent", "en-GB")
