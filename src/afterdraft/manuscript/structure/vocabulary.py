"""Words that name what stands before and after a story. From the front and back matter of printed books
(common practice; the sequence of the Chicago Manual of Style, chapter 1)."""

import re

from afterdraft.manuscript.division import MatterKind

FRONT: tuple[tuple[str, MatterKind], ...] = (
    (r"(table of )?contents|list of (illustrations|maps|chapters)", "contents"),
    (r"dedication", "dedication"),
    (r"epigraphs?", "epigraph"),
    (r"(the )?(author[’']?s? |translator[’']?s |editor[’']?s |publisher[’']?s )?preface( to .+)?", "preface"),
    (r"fore ?word|introduction( to .+)?|introductory note|preliminary note", "preface"),
    (
        r"(an? )?(author|editor|translator|publisher)[’']?s?[’']? notes?|(a |prefatory )?note (on|to|from|by) .+",
        "preface",
    ),
    (r"copyright.*|all rights reserved.*|also by .+|by the same author|praise for .+|half[ -]title", "other"),
    (r"cast of characters|dramatis person(ae|æ)|(list of )?characters|maps?|family tree|chronology", "other"),
)
BACK: tuple[tuple[str, MatterKind], ...] = (
    (r"acknowledge?ments?( and thanks)?|with thanks|thanks", "other"),
    (r"about the (author|book|publisher|translator)|by the same author|also by .+", "other"),
    (
        r"(end|foot|author[’']?s?|editor[’']?s|historical|explanatory) ?notes?|notes|a note on .+|note on the .+",
        "other",
    ),
    (r"appendi(x|ces)( [a-z0-9]+)?|glossary|bibliography|sources|further reading|afterword|colophon|index", "other"),
    (r"(reading group|discussion|book club) (guide|questions).*|questions for discussion|permissions|credits", "other"),
    (r"licen[cs]e|uncopyright|copyright.*|transcriber[’']?s notes?", "other"),
)
END = re.compile(r"(the end|finis|end|fin|ende|end of (book|part|volume|the first book)( \w+)?)", re.IGNORECASE)

THIRTY = re.compile(r"[-–—#* ]*[-–—#*][ ]?30[ ]?[-–—#*][-–—#* ]*")  # a newspaper's sign for the end: "-30-"


def front_kind(text: str) -> MatterKind | None:
    """The kind of front matter that the heading `text` names."""
    return _kind(text, FRONT)


def back_kind(text: str) -> MatterKind | None:
    """The kind of back matter that the heading `text` names."""
    return _kind(text, BACK)


def ends_book(text: str) -> bool:
    """The line says that the story is over: "THE END"."""
    return bool(END.fullmatch(text.strip(" .*_-—–~#[]()\n")) or THIRTY.fullmatch(text.strip()))


def _kind(text: str, table: tuple[tuple[str, MatterKind], ...]) -> MatterKind | None:
    bare = " ".join(text.split()).strip(" .*_:—–-[]()").casefold()
    return next((kind for pattern, kind in table if re.fullmatch(pattern, bare)), None)
