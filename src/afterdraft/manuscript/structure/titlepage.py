"""Title and author of a draft: from the title page, else the file's properties, else the file's name."""

import re
from collections.abc import Sequence

from afterdraft.manuscript.blocks import Blocks
from afterdraft.manuscript.structure.lines import Line

BY = re.compile(r"(?:a (?:novel|novella|story|romance|memoir)\s+)?(?:written )?by[:\s]+(?P<who>\S.*)", re.IGNORECASE)
BY_ALONE = re.compile(r"(a (novel|novella|story|romance|memoir)\s+)?(written )?by:?", re.IGNORECASE)
NO_NAME = re.compile(
    r".*(\d|@|http|www\.|copyright|©|words?\b|draft|all rights|manuscript|agent|street|road|avenue|\btel\b|phone).*",
    re.IGNORECASE,
)
KIND = re.compile(r"a (novel|novella|story|romance|memoir|tale|thriller|mystery)( in \w+ parts)?\.?", re.IGNORECASE)
YEAR = re.compile(r"\s*\(\d{4}\)$")  # "Ilse Tovik (1911)"
NAME_WORDS = 6
TITLE_WORDS = 20
UNTITLED = re.compile(r"(document|dokument|untitled|unbenannt|microsoft word.*|book|novel|draft)\s*\d*", re.IGNORECASE)
VERSION = re.compile(
    r"[\s_\-–(\[]*\b((first|second|third|final|rough|new)\s+)?(draft|version|ver|v|rev|revised|final|copy|ms|manuscript)"
    r"[\s_.\-]*\d*[)\]]*$",
    re.IGNORECASE,
)


def title_and_author(source: Blocks, page: Sequence[Line]) -> tuple[str, str]:
    """The title and the author's name, "" where nothing tells; `page` are the lines of the title page."""
    lines = [YEAR.sub("", " ".join(row.split())) for line in page for row in line.text.split("\n") if row.strip()]
    author_at, author = _author(lines)
    title = _title(lines if author_at is None else lines[:author_at], page)
    if not author and author_at is None and title:
        author = _name_after(lines, title)
    return (
        _as_written(title, source) or _property(source.title) or from_file_name(source.name),
        author or source.author.strip(),
    )


def from_file_name(name: str) -> str:
    """`the_salt-road draft 2.docx` → "the salt-road"."""
    stem = name.rsplit(".", 1)[0] if "." in name else name
    words = re.sub(r"[_\s]+", " ", stem).strip()
    return VERSION.sub("", words).strip(" -–_") or words


def _as_written(title: str, source: Blocks) -> str:
    """A title page often has the title in capitals; the file's properties or name may say how it is written."""
    for written in (_property(source.title), from_file_name(source.name)):
        if title.isupper() and written.casefold() == title.casefold() and not written.islower():
            return written
    return title


def _property(title: str) -> str:
    title = title.strip()
    return "" if UNTITLED.fullmatch(title) else title


def _author(lines: Sequence[str]) -> tuple[int | None, str]:
    """Where the line with "by" stands, and whom it names."""
    for place, text in enumerate(lines):
        if BY_ALONE.fullmatch(text):
            following = lines[place + 1] if place + 1 < len(lines) else ""
            return place, following
        named = BY.fullmatch(text)
        if named and len(named["who"].split()) <= NAME_WORDS:
            return place, named["who"]
    return None, ""


def _title(lines: Sequence[str], page: Sequence[Line]) -> str:
    """The line with the most look, else the first that could be a title; "" where there is none."""
    weights = {" ".join(line.text.split()): _prominence(line) for line in page}
    loud = [text for text in lines if weights.get(text, 0.0) >= 1 and len(text.split()) <= TITLE_WORDS]
    fit = loud or [text for text in lines if _fits(text)]
    return max(fit, key=lambda text: weights.get(text, 0.0), default="").strip("#*_ ")


def _prominence(line: Line) -> float:
    return line.weight + 2.0 * line.shape.big + 2.0 * line.shape.style.startswith("title")


def _fits(text: str) -> bool:
    return len(text.split()) <= TITLE_WORDS and not NO_NAME.fullmatch(text) and not KIND.fullmatch(text)


def _name_after(lines: Sequence[str], title: str) -> str:
    """Without a "by": the short line under the title that could be a name."""
    rows = [row.strip("*_ ") for row in lines]
    for text in rows[rows.index(title) + 1 :] if title in rows else ():
        words = text.split()
        if 1 < len(words) <= NAME_WORDS and _fits(text) and text[:1].isupper() and words[-1][:1].isupper():
            return text
    return ""
