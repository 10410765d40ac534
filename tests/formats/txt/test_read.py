"""Plain text manuscripts of every layout, read into the same paragraphs."""

import contextlib
import textwrap
import time

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.errors import EmptyManuscript, TooLarge, UnknownFormat
from afterdraft.formats import long
from afterdraft.formats.txt import read as reader
from afterdraft.formats.txt.read import PITCH, SET_IN, read
from afterdraft.manuscript.blocks import Block, Gap, Run

PROSE = [
    "The ferry was late that morning, and Tilda Marrow stood on the jetty with her bag between her feet and counted "
    "the gulls on the rail. There were eleven. There had been eleven the day before too, which she put down to habit.",
    "“You’ll be cold,” said the man from the ticket hut.",
    "“I am cold,” said Tilda. “I was cold before I came. I expect that I shall be cold on the other side, and I have "
    "not come here to be told so by somebody with a stove.”",
    "He went in again. She heard him put wood on the stove, and then, after a moment in which he must have thought "
    "about it, she heard him put on some more.",
    "The lamp on the far side went out. It was day.",
]
CHAPTER = [PROSE[0], PROSE[1], PROSE[2], "* * *", PROSE[3], PROSE[4]] * 4


def wrapped(paragraphs: list[str], *, between: str, first: str = "", width: int = 60) -> str:
    made = (textwrap.fill(text, width, initial_indent=first) for text in paragraphs)
    return between.join(made) + "\n"


def texts(text: str, name: str = "draft.txt") -> list[str]:
    return [block.text for block in read(text.encode(), name).blocks]


LAYOUTS = {
    "a line a paragraph": "\n".join(CHAPTER),
    "a line a paragraph, a blank line between": "\n\n".join(CHAPTER),
    "a line a paragraph, tabs": "\n".join("\t" + text for text in CHAPTER),
    "wrapped, blank lines": wrapped(CHAPTER, between="\n\n"),
    "wrapped, two blank lines": wrapped(CHAPTER, between="\n\n\n"),
    "wrapped, indents": wrapped(CHAPTER, between="\n", first="   "),
    "wrapped, indents and blank lines": wrapped(CHAPTER, between="\n\n", first="   "),
    "wrapped, short last lines": wrapped(CHAPTER, between="\n"),
    "wrapped, wide": wrapped(CHAPTER, between="\n\n", width=100),
    "wrapped, narrow": wrapped(CHAPTER, between="\n\n", width=40),
    "wrapped, old line ends": wrapped(CHAPTER, between="\n\n").replace("\n", "\r"),
    "wrapped and double spaced": wrapped(CHAPTER, between="\n\n").replace("\n", "\n\n"),
}


@pytest.mark.parametrize("layout", LAYOUTS.values(), ids=LAYOUTS.keys())
def test_the_paragraphs_are_the_same_in_every_layout(layout: str) -> None:
    assert texts(layout) == CHAPTER


@pytest.mark.parametrize("layout", LAYOUTS.values(), ids=LAYOUTS.keys())
def test_no_paragraph_has_blank_space_before_it_where_all_have(layout: str) -> None:
    assert {block.gap.blanks for block in read(layout.encode(), "draft.txt").blocks} == {0}


words = st.text(st.sampled_from("abcdefghijklmnopqrstuvwxyzABC’,-.—"), min_size=1, max_size=12)
prose = st.lists(st.lists(words, min_size=1, max_size=60).map(" ".join), min_size=1, max_size=20)


@given(paragraphs=prose, width=st.integers(30, 120), between=st.sampled_from(["\n", "\n\n"]), indent=st.integers(0, 8))
def test_text_is_kept_to_the_letter_however_it_is_laid_out(
    paragraphs: list[str], width: int, between: str, indent: int
) -> None:
    layout = wrapped(paragraphs, between=between, first=" " * indent, width=width)
    assert "".join("".join(texts(layout)).split()) == "".join("".join(paragraphs).split())


def test_extra_blank_lines_are_counted_beyond_the_usual_one() -> None:
    blocks = read(wrapped(PROSE, between="\n\n").replace("The lamp", "\n\nThe lamp").encode(), "draft.txt").blocks
    assert [block.gap.blanks for block in blocks] == [0, 0, 0, 0, 2]


def test_verse_and_addresses_keep_their_lines() -> None:
    verse = "    The tide comes in,\n    The tide goes out,\n    And nobody knows\n    What the sea’s about."
    letter = "Yours in haste,\nTilda Marrow"
    found = texts(
        wrapped(PROSE, between="\n\n") + "\n" + verse + "\n\n" + letter + "\n\n" + wrapped(PROSE, between="\n\n")
    )
    assert found[5:7] == ["The tide comes in,\nThe tide goes out,\nAnd nobody knows\nWhat the sea’s about.", letter]


def test_a_line_left_short_by_an_edit_is_no_paragraph_end() -> None:
    layout = wrapped(CHAPTER, between="\n\n").replace("with her bag\n", "with\nher bag\n")
    assert texts(layout) == CHAPTER


@pytest.mark.parametrize(
    ("typed", "expected"),
    [
        ("with a long-\nhandled net", "with a long-handled net"),
        ("she said—\nand then", "she said—and then"),
        ("she said—and left—\nand then", "she said—and left—and then"),
        ("one — two —\nthree", "one — two — three"),
        ("old Mrs. D⸺\nsaid", "old Mrs. D⸺ said"),
    ],
)
def test_hyphens_and_dashes_at_a_wrap_stay_as_they_are(typed: str, expected: str) -> None:
    head, tail = typed.rsplit("\n", 1)
    line = "And so it came about at last that " + head
    filled = f"{line}\n{tail.ljust(len(line) - 3, 'o')}\nended there."
    document = wrapped([p for p in PROSE if "—" not in p], between="\n\n", width=len(line))
    found = texts(document + "\n" + filled + "\n\n" + document)
    assert any(expected in text for text in found), found


def test_centred_lines_are_centred() -> None:
    title = "\n".join(line.center(60).rstrip() for line in ("THE FERRY", "", "by Nora Quill"))
    blocks = read((title + "\n\n\n\n" + wrapped(CHAPTER, between="\n\n")).encode(), "draft.txt").blocks
    assert [(block.text, block.look.align) for block in blocks[:3]] == [
        ("THE FERRY", "center"),
        ("by Nora Quill", "center"),
        (PROSE[0], "left"),
    ]


def test_a_first_line_indent_is_in_points() -> None:
    # Ten characters an inch (pica type), 72 points an inch: five columns are half an inch.
    blocks = read(wrapped(PROSE * 3, between="\n", first="     ").encode(), "draft.txt").blocks
    assert {block.look.indent for block in blocks} == {36.0}


def test_the_first_line_of_each_paragraph_is_remembered() -> None:
    blocks = read(b"One.\n\nTwo.\nThree.\n\n\nFour.\n", "draft.txt").blocks
    assert [(block.text, block.source.ordinal) for block in blocks] == [
        ("One.", 0), ("Two.", 2), ("Three.", 3), ("Four.", 6),
    ]  # fmt: skip


def test_markdown_headings_breaks_and_emphasis() -> None:
    typed = (
        "# The Ferry\n\n## Morning ##\n\nShe *had*\nknown.\n\n---\n\n"
        "It was **day**.  \nIt was cold.\n\nNight\n-----\n\nDark.\n"
    )
    blocks = read(typed.encode(), "draft.md").blocks
    assert [(block.text, block.look.level) for block in blocks] == [
        ("The Ferry", 1),
        ("Morning", 2),
        ("She had known.", None),
        ("---", None),
        ("It was day.\nIt was cold.", None),
        ("Night", 2),
        ("Dark.", None),
    ]
    assert [run for block in blocks for run in block.runs] == [Run(4, 7, "italic"), Run(7, 10, "bold")]


@pytest.mark.parametrize(
    ("typed", "texts", "left"),
    [
        (
            "He read it.\n\n> My dear Ada,\n>\n> it rains.\n\nHe sat.\n",
            ["He read it.", "My dear Ada,", "it rains.", "He sat."],
            [0, 1, 1, 0],
        ),
        ("> It rains,\n> and how.\n\nHe sat.\n\nShe sat.\n", ["It rains, and how.", "He sat.", "She sat."], [1, 0, 0]),
        (">It rains.\n> > She said so.\n", ["It rains.", "She said so."], [1, 2]),
        (
            "He read it.\n> It rains.\nHe sat.\n\nShe went.\n",
            ["He read it.", "It rains.", "He sat.", "She went."],
            [0, 1, 0, 0],
        ),
        ("He sat.\n\n>\n\nShe sat.\n", ["He sat.", ">", "She sat."], [0, 0, 0]),
        ("He sat.\n\n> * * *\n\nShe sat.\n", ["He sat.", "* * *", "She sat."], [0, 1, 0]),
        ("Ash > oak.\n\nShe sat.\n", ["Ash > oak.", "She sat."], [0, 0]),
    ],
)  # CommonMark specification 0.31, section 5.1
def test_markdown_sets_letters_in(typed: str, texts: list[str], left: list[int]) -> None:
    blocks = read(typed.encode(), "book.md").blocks
    assert [block.text for block in blocks] == texts
    assert [block.look.left for block in blocks] == [PITCH * SET_IN * depth for depth in left]


def test_in_a_text_file_the_sign_stays() -> None:
    assert [block.text for block in read(b"> It rains.\n\nHe sat.\n", "book.txt").blocks] == ["> It rains.", "He sat."]


def test_a_lone_hash_is_a_scene_break_and_not_a_heading() -> None:
    assert [(b.text, b.look.level) for b in read(b"One.\n\n#\n\nTwo.\n\n#\n\nThree.\n", "a.txt").blocks] == [
        ("One.", None), ("#", None), ("Two.", None), ("#", None), ("Three.", None),
    ]  # fmt: skip


def test_several_hashed_headings_are_headings_in_a_text_file_too() -> None:
    found = read(b"# One\n\nText.\n\n# Two\n\nText.\n", "a.txt").blocks
    assert [(b.text, b.look.level) for b in found] == [("One", 1), ("Text.", None), ("Two", 1), ("Text.", None)]


def test_a_form_feed_is_a_page_turn() -> None:
    blocks = read(b"One.\n\n\fTwo.\n", "a.txt").blocks
    assert blocks[1] == Block("Two.", gap=Gap(turn="page"), source=blocks[1].source)


@pytest.mark.parametrize("data", [b"", b"\n\n  \n", b"\xef\xbb\xbf", b"\xff\xfe"])
def test_a_file_without_text_says_so(data: bytes) -> None:
    with pytest.raises(EmptyManuscript):
        read(data, "empty.txt")


def test_bytes_that_are_no_text_are_refused() -> None:
    with pytest.raises(UnknownFormat, match=r"picture\.txt.*\.docx.*\.txt, \.md"):
        read(bytes(range(256)) * 20, "picture.txt")


def test_a_file_beyond_any_manuscript_is_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(reader, "LARGEST", 1000)
    with pytest.raises(TooLarge, match="Nothing was changed"):
        read(b"word " * 1000, "big.txt")


def test_a_paragraph_beyond_a_million_characters_is_cut_at_sentences(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(long, "LONGEST", 1000)
    text = "It was _late_ on the river again. " * 100
    found = read(text.encode(), "long.txt")
    assert "".join(block.text for block in found.blocks) == text.replace("_", "").strip()
    assert all(block.text.rstrip().endswith(".") and len(block.text) <= 1000 for block in found.blocks)
    assert [block.source.piece for block in found.blocks] == list(range(len(found.blocks)))
    assert all(block.text[run.start : run.end] == "late" for block in found.blocks for run in block.runs)
    assert found.notices == ("A paragraph of over a million characters was cut at sentence ends.",)


@pytest.mark.parametrize("piece", ["_a ", "*", "* ", "a_b", "\\", "# x\n", "-\n", "\f", "\x00a", "“’ ", " \n", "\t"])
def test_no_input_takes_long(piece: str) -> None:
    began = time.process_time()
    with contextlib.suppress(EmptyManuscript, UnknownFormat):
        read((piece * 200_000).encode(), "hostile.txt")
    assert time.process_time() - began < 10  # seconds of this process: the budget for hostile input


@given(st.binary(max_size=400))
def test_any_bytes_are_read_or_refused_in_words(data: bytes) -> None:
    try:
        blocks = read(data, "any.txt")
    except (EmptyManuscript, UnknownFormat) as refused:
        assert "Nothing was changed" in str(refused)
    else:
        assert blocks.blocks
        assert all(block.text for block in blocks.blocks)
