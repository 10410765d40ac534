"""Contents pages: lists of headings, near the front or the back, that head nothing."""

import re
from collections.abc import Iterator, Sequence

from afterdraft.manuscript.structure.lines import Line

CONTENTS = re.compile(r"(table of )?contents|chapters|list of chapters", re.IGNORECASE)
PAGED = re.compile(r"\S.*?(\t|\.{3,}|(?:\. ){3,}|…{2,}|\s{3,}|_{3,})\s*(\d{1,4}|[ivxlc]{1,7})", re.IGNORECASE)
RUN = 3  # lines that make a list
REPEATED = 3  # lines: an entry met again with text so close under it is the heading itself
FRONT = 0.15  # share of the file's words within which a list without page numbers is looked for


def contents_lines(lines: Sequence[Line]) -> frozenset[int]:
    """Indices of the lines of contents pages, their heading included."""
    return frozenset(_styled(lines)) | frozenset(_paged(lines)) | frozenset(_headed(lines))


def _styled(lines: Sequence[Line]) -> Iterator[int]:
    for line in lines:
        if line.shape.style.startswith(("toc", "contents", "table of contents")):
            yield line.index


def _paged(lines: Sequence[Line]) -> Iterator[int]:
    """Runs of lines that end in a page number after leaders or a tab."""
    run: list[int] = []
    for line in lines:
        if line.short and PAGED.fullmatch(line.text):
            run.append(line.index)
            continue
        if len(run) >= RUN:
            yield from run
        run = []
    if len(run) >= RUN:
        yield from run


def _headed(lines: Sequence[Line]) -> Iterator[int]:
    """The list under a line that reads "Contents": up to the first line that repeats an entry, or a page's turn."""
    total = sum(line.words for line in lines)
    told = 0
    for line in lines:
        if told > FRONT * total:
            return
        told += line.words
        if line.short and CONTENTS.fullmatch(line.text.strip(" *_.:")):
            entries = list(_entries(lines, line.index + 1))
            if len(entries) >= RUN:
                yield line.index
                yield from entries
            return


def _entries(lines: Sequence[Line], start: int) -> Iterator[int]:
    first = ""
    usual = lines[start + 1].wide if start + 1 < len(lines) else 0
    for found, line in enumerate(lines[start:]):
        key = re.sub(r"\W+", "", line.text).casefold()
        headed = line.shape.level > lines[start].shape.level
        if not line.short or headed or (first and line.turn) or (found >= RUN and line.wide > usual):
            return
        if key == first and not all(after.short for after in lines[line.index + 1 : line.index + 1 + REPEATED]):
            return
        first = first or key
        yield line.index
