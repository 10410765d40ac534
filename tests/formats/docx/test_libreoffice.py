"""Documents that LibreOffice wrote from specimens/libreoffice-*.fodt say what their sources say."""

from functools import cache
from pathlib import Path

from afterdraft.formats.docx.read import read
from afterdraft.manuscript.blocks import Align, Aside, Block, Blocks, Gap

SPECIMENS = Path(__file__).parents[2] / "specimens"


@cache
def whole(name: str) -> Blocks:
    file = SPECIMENS / f"libreoffice-{name}.docx"
    return read(file.read_bytes(), file.name)


def headings() -> tuple[Block, ...]:
    return whole("headings").blocks


def typed() -> tuple[Block, ...]:
    return whole("typed").blocks


def emphasis(blocks: tuple[Block, ...]) -> list[tuple[str, str]]:
    return [(run.kind, block.text[run.start : run.end]) for block in blocks for run in block.runs]


def test_the_text_and_the_outline_are_those_of_the_source() -> None:
    assert [(block.look.level, block.look.label, block.text) for block in headings()] == [
        (None, "", "The Salt Stair"),
        (None, "", "Brona Aske"),
        (None, "", "Contents"),
        (None, "", "Chapter 1 Low Water\t2"),
        (None, "", "Chapter 2 The Warden’s Key\t4"),
        (1, "Chapter 1", "Low Water"),
        (
            None,
            "",
            "Veska counted the steps down, not up, and never aloud. The fortyth was loose; the Warden had said so.",
        ),
        (None, "", "“It is twelve o’clock,” said Jörg. “The tide turns.” He did not move."),
        (None, "", "* * *"),
        (None, "", "«Żółta łódź», powiedziała Świętosława; „später“, sagte Jörg, „größer und müßig“."),
        (None, "", "They took the narrow boat. Only later did anyone ask."),
        (None, "", "No\u00a0one slept."),
        (None, "", "The lamp burned 10\u00a0hours."),
        (None, "", "Morning came up grey over Hallin."),
        (1, "Chapter 2", "The Warden’s Key"),
        (2, "I.", "What was found"),
        (None, "", "Dear Veska, the key is under the ninth step."),
        (None, "", "Yours, M."),
        (2, "II.", "What was not"),
        (None, "", "She read it twice and put it in the stove."),
        (1, "Chapter 3", ""),
        (None, "", "The third chapter has no name."),
    ]


def test_styles_go_by_their_names_and_hand_on_their_looks() -> None:
    looks = {block.text: block.look for block in headings()}
    title, chapter, section = looks["The Salt Stair"], looks["Low Water"], looks["What was found"]
    assert (title.style, title.align, title.bold, title.size) == ("Title", "center", True, 28.0)
    assert (chapter.style, chapter.align, chapter.bold, chapter.size) == ("Heading 1", "center", True, 16.0)
    assert (section.style, section.align, section.italic, section.size) == ("Heading 2", "left", True, 14.0)
    assert looks["Contents"].style == "TOC Heading"
    assert looks["Chapter 1 Low Water\t2"].style == "TOC 1"
    assert {look.space_before for look in (title, chapter, section)} == {12.25}  # 0.17 in, in twentieths of a point
    scene = looks["Morning came up grey over Hallin."]
    assert (scene.style, scene.indent, scene.size) == ("Scene on a new page", 36.0, 12.0)


def test_gaps_are_those_of_the_source_and_a_section_within_the_page_is_none() -> None:
    assert {block.text: block.gap for block in headings() if block.gap != Gap()} == {
        "Contents": Gap(turn="section"),  # the title page has a page style of its own
        "Low Water": Gap(turn="page"),
        "They took the narrow boat. Only later did anyone ask.": Gap(blanks=1),
        "No\u00a0one slept.": Gap(blanks=2),
        "Morning came up grey over Hallin.": Gap(turn="page"),
        "The Warden’s Key": Gap(turn="page"),
        "": Gap(turn="page"),
    }


def test_emphasis_is_that_of_the_source() -> None:
    assert emphasis(tuple(block for block in headings() if block.look.style == "Body Text")) == [
        ("italic", "down"),
        ("bold", "up"),
        ("bold", "never"),
        ("italic", "never"),
        ("italic", "forty"),
        ("superscript", "th"),
        ("underline", "loose"),
        ("small caps", "Warden"),
    ]


def test_what_is_set_apart_is_that_of_the_source() -> None:
    day, next_day = "2026-03-04T05:06:{}Z", "2026-03-05T06:07:{}Z"
    assert list(whole("headings").asides) == [
        Aside("footnote", 6, 54, 54, "Forty-one, by the old survey."),
        Aside("comment", 7, 35, 52, "Too early for this?\nSee the tide.", "Pell Ames", next_day.format("08")),
        Aside("inserted", 10, 14, 21, "narrow ", "Ilka Moor", day.format("07")),
        Aside("deleted", 10, 21, 21, "rotten ", "Ilka Moor", day.format("08")),
        Aside("deleted", 10, 27, 27, "Then nothing.\n", "Ilka Moor", day.format("09")),
        Aside("inserted", 11, 13, 13, "\n", "Ilka Moor", day.format("10")),
        Aside("comment", 16, 23, 44, "Which key?", "Pell Ames", next_day.format("09"), done=True),
        Aside("endnote", 17, 6, 6, "Unsigned in the fair copy."),
        Aside("comment", 21, 30, 30, "Give it one.", "Pell Ames", next_day.format("10")),
    ]


def test_its_heads() -> None:
    found = whole("headings")
    assert (found.title, found.author, found.language, found.notices) == ("The Salt Stair", "Brona Aske", "en-GB", ())
    assert (whole("typed").language, whole("typed").notices) == ("de-DE", ())


def test_typed_headings_lists_and_lines_are_those_of_the_source() -> None:
    found: list[tuple[Align, str, str]] = [(block.look.align, block.look.label, block.text) for block in typed()]
    assert found == [
        ("center", "", "ERSTES KAPITEL"),
        ("center", "", "Die Schleuse"),
        ("justify", "", "»Ach«, sagte Grete Öhlmann, »die Brücke!« Sie las: H2O, bitter süß."),
        ("left", "", "Auf dem Stein stand:\nHier ruht\nder Fährmann."),  # its first letter is a drop cap
        ("left", "", "\tNach der Linie\tkam der Regen."),
        ("center", "", "❦"),
        ("left", "", "Sie nahm drei Dinge mit:"),
        ("left", "a)", "ein Seil,"),
        ("left", "b)", "eine Lampe,"),
        ("left", "", "die alte,"),
        ("left", "c)", "Salz."),
        ("left", "", "Und Brot."),
        ("center", "", "ZWEITES KAPITEL"),
        ("center", "", "Ebbe"),
        ("left", "", "An der Tür hing ein Zettel."),
        ("left", "", "Flut\tvier Uhr"),
        ("left", "", "Ebbe\tzehn Uhr"),
        ("left", "", "Dr.\u00a0Öhlmann las ihn\u202f– zweimal. Dann nichts\u2011sagend fort, Kartoffel."),
        ("left", "", "Nach ihm kam Name fehlt noch, der Neue."),  # a place kept for a name: the writer's own words
    ]


def test_typed_looks() -> None:
    assert [block.text for block in typed() if block.look.bold] == ["ERSTES KAPITEL", "Die Schleuse", "ZWEITES KAPITEL"]
    assert [block.text for block in typed() if block.look.caps] == ["Ebbe"]
    assert {(block.look.level, block.look.size) for block in typed()} == {(None, 11.0)}
    set_in, item = typed()[2].look, typed()[7].look
    assert (set_in.indent, set_in.left, set_in.space_before, set_in.space_after) == (18.0, 36.0, 6.0, 12.0)
    assert (item.indent, item.left) == (-18.0, 36.0)
    assert emphasis(typed()[2:12]) == [("subscript", "2"), ("strike", "bitter")]


def test_typed_gaps() -> None:
    assert {index: block.gap for index, block in enumerate(typed()) if block.gap != Gap()} == {
        2: Gap(blanks=1),
        4: Gap(rule=True),
        7: Gap(turn="page"),  # a break behind the paragraph before it
        12: Gap(turn="page"),
        18: Gap(rule=True),  # drawn: a rectangle 1.5 pt high
    }


def test_a_frame_and_a_table_are_set_apart() -> None:
    assert list(whole("typed").asides) == [
        Aside("text box", 14, 27, 27, "Betreten verboten.\nDer Vogt"),
        Aside("table", 15, 0, 13, "2 rows, 2 columns"),
    ]


def test_the_text_is_what_libreoffice_itself_writes_as_plain_text() -> None:
    """White space aside.

    It prints deletions, the marks of notes, bullets and brackets around places kept for a word; it leaves out frames.
    """
    for name in ("headings", "typed"):
        outside = (SPECIMENS / f"libreoffice-{name}.txt").read_text(encoding="utf-8-sig")
        outside = outside.translate(dict.fromkeys(map(ord, "\u00ad•<>")))
        assert "".join(printed(whole(name)).split()) == "".join(outside.split())


def printed(blocks: Blocks) -> str:
    """The text with automatic numbers, deletions and the marks of notes where they stand."""
    texts = [block.text for block in blocks.blocks]
    marks = {"footnote": "1", "endnote": "i"}
    for aside in reversed(blocks.asides):
        shown = marks.get(aside.kind, aside.text if aside.kind == "deleted" else "")
        texts[aside.block] = texts[aside.block][: aside.end] + shown + texts[aside.block][aside.end :]
    return "\n".join(f"{block.look.label} {text}" for block, text in zip(blocks.blocks, texts, strict=True))
