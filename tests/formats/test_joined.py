"""Several files as one draft: in the writer's order, each paragraph with its file."""

import hashlib
import random

import pytest

from afterdraft.errors import EmptyManuscript
from afterdraft.formats.joined import is_manuscript, joined, order
from afterdraft.manuscript.blocks import Aside, Block, Blocks, Gap, Source


@pytest.mark.parametrize(
    "names",
    [
        ["Chapter 1.docx", "Chapter 2.docx", "Chapter 10.docx", "Chapter 11.docx"],
        ["1 Morning.txt", "2 Noon.txt", "10 Night.txt"],
        ["ch01.md", "ch02.md", "ch10.md"],
        [
            "title page.txt",
            "Dedication.txt",
            "Prologue.txt",
            "Chapter 1.txt",
            "Chapter 2.txt",
            "Epilogue.txt",
            "notes.txt",
        ],
        ["chapter one.docx", "chapter two.docx", "chapter three.docx", "chapter ten.docx", "chapter twenty-one.docx"],
        ["Chapter I.txt", "Chapter II.txt", "Chapter IV.txt", "Chapter IX.txt", "Chapter XII.txt"],
        ["1-2 b.txt", "1-10 a.txt", "2-1 c.txt"],
        ["00 Prologue.txt", "01 Ferry.txt", "02 Epilogue at sea.txt", "03 Home.txt"],
        ["Alone.txt", "Before.txt", "Civil.txt"],
        ["Part 1 Chapter 2.txt", "Part 1 Chapter 10.txt", "Part 2 Chapter 1.txt"],
    ],
)
def test_files_are_put_in_the_order_a_writer_means(names: list[str]) -> None:
    shuffled = names.copy()
    random.Random(7).shuffle(shuffled)  # noqa: S311 nothing secret
    assert order(shuffled) == names


@pytest.mark.parametrize("name", ["a.docx", "A.DOCX", "chapter 1.txt", "notes.md"])
def test_manuscripts_in_a_folder(name: str) -> None:
    assert is_manuscript(name)


@pytest.mark.parametrize(
    "name", ["~$a.docx", ".a.txt", "._a.docx", "picture.png", "a.docx.bak", "book.afterdraft", "docx"]
)
def test_what_else_lies_in_a_folder(name: str) -> None:
    assert not is_manuscript(name)


def made(name: str, *texts: str, **more: str) -> Blocks:
    blocks = tuple(Block(text, source=Source(ordinal=i)) for i, text in enumerate(texts))
    asides = (Aside("comment", 1, 0, 3, "Why?", author="Bo"),)
    digest = hashlib.sha256("".join(texts).encode()).hexdigest()
    return Blocks(name, "docx", digest, 10, blocks, asides, notices=("A picture was left out.",), **more)


def test_paragraphs_know_their_file_and_asides_their_paragraph() -> None:
    whole = joined([made("1.docx", "One", "Two"), made("2.docx", "Three", "Four", "Five")])
    assert [(block.text, block.source.file, block.source.ordinal) for block in whole.blocks] == [
        ("One", 0, 0), ("Two", 0, 1), ("Three", 1, 0), ("Four", 1, 1), ("Five", 1, 2),
    ]  # fmt: skip
    assert [block.gap for block in whole.blocks] == [Gap(), Gap(), Gap(file=True), Gap(), Gap()]
    assert [whole.blocks[aside.block].text for aside in whole.asides] == ["Two", "Four"]
    assert (whole.name, whole.format, whole.size) == ("1.docx", "docx", 20)
    assert whole.notices == ("1.docx: A picture was left out.", "2.docx: A picture was left out.")


def test_the_first_file_that_names_the_author_is_believed() -> None:
    whole = joined([made("1", "a", "b"), made("2", "c", "d", author="Nora Quill", title="The Ferry", language="en-GB")])
    assert (whole.title, whole.author, whole.language) == ("The Ferry", "Nora Quill", "en-GB")


def test_the_digest_is_of_all_files_in_their_order() -> None:
    one, two = made("1", "a", "b"), made("2", "c", "d")
    digests = {joined(files).sha256 for files in ([one], [two], [one, two], [two, one])}
    assert len(digests) == 4
    assert joined([one]) is one


def test_no_file_is_no_draft() -> None:
    with pytest.raises(EmptyManuscript):
        joined([])
