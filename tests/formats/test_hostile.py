"""What no writing program makes, in every format: read, or refused in words, within ten seconds and a gigabyte."""

import io
import subprocess
import sys
import time
from collections.abc import Callable

import docx
import pytest

from afterdraft.errors import TooLarge, UnreadableManuscript
from afterdraft.formats.table import read
from afterdraft.manuscript.structure import structure
from tests.specimens import odt
from tests.specimens.docx import pack
from tests.specimens.epub import epub, page

SECONDS, MEGABYTES = 10, 1000
ENDINGS = ("docx", "odt", "rtf", "epub", "html", "txt", "md")
PNG = b"\x89PNG\r\n\x1a\n" + bytes(range(256)) * 20
SENTENCE = "It was a long day on the river and the ferry was late again. "


def _docx(lines: list[str], level: int) -> bytes:
    made, target = docx.Document(), io.BytesIO()
    for line in lines:
        made.add_paragraph(line, style=f"Heading {level}" if level else None)
    made.save(target)
    return target.getvalue()


def _rtf(lines: list[str], level: int) -> bytes:
    def coded(line: str) -> str:
        return "".join(c if c.isascii() else rf"\u{ord(c)}?" for c in line)

    look = rf"\outlinelevel{level - 1}" if level else ""
    return ("{\\rtf1\\ansi " + "".join(rf"\pard{look} {coded(line)}\par " for line in lines) + "}").encode()


def _html(lines: list[str], level: int) -> str:
    name = f"h{level}" if level else "p"
    return "".join(f"<{name}>{line}</{name}>" for line in lines)


# Each writes lines: headings of a level, or (0) plain paragraphs.
WRITERS: dict[str, Callable[[list[str], int], bytes]] = {
    "docx": _docx,
    "odt": lambda lines, level: odt.odt(*(odt.h(level, line) if level else odt.p(line) for line in lines)),
    "rtf": _rtf,
    "epub": lambda lines, level: epub(page(_html(lines, level))),
    "html": lambda lines, level: f"<html><body>{_html(lines, level)}</body></html>".encode(),
    "txt": lambda lines, _: "\n\n".join(lines).encode(),
    "md": lambda lines, level: "\n\n".join(f"{'#' * level} {line}" if level else line for line in lines).encode(),
}


@pytest.mark.parametrize("ending", ENDINGS)
@pytest.mark.parametrize("data", [b"", PNG, b"\0" * 5000, b"\0", b" \n"], ids=["empty", "png", "nuls", "nul", "blank"])
def test_what_is_no_manuscript_is_refused_in_words(ending: str, data: bytes) -> None:
    with pytest.raises(UnreadableManuscript, match="Nothing was changed"):
        read(data, f"draft.{ending}")


@pytest.mark.parametrize("ending", ENDINGS)
def test_a_manuscript_without_headings_is_one_story(ending: str) -> None:
    lines = [f"{SENTENCE * 3}Then {number}." for number in range(40)]
    found = read(WRITERS[ending](lines, 0), f"draft.{ending}")
    assert [block.text for block in found.blocks] == lines
    assert len(structure(found).division.chapters) <= 1


@pytest.mark.parametrize("ending", ENDINGS)
def test_a_thousand_headings(ending: str) -> None:
    lines = [f"Chapter {number}" for number in range(1, 1001)]
    start = time.process_time()
    found = read(WRITERS[ending](lines, 1), f"draft.{ending}")
    assert [block.text for block in found.blocks] == lines
    assert {block.look.level for block in found.blocks} == ({None} if ending == "txt" else {1})
    assert time.process_time() - start < SECONDS


@pytest.mark.parametrize("ending", ENDINGS)
def test_text_from_right_to_left_comes_in_its_own_order(ending: str) -> None:
    lines = ["الباب الأول", "خرجت سلمى من البيت قبل الفجر.", "פרק שני", "היא חזרה בערב."]
    assert [block.text for block in read(WRITERS[ending](lines, 0), f"draft.{ending}").blocks] == lines


# In a process of its own: how long it computes (s), the most memory it has (kB, or bytes on macOS), what came of it.
CHILD = """
import resource, sys, time
from afterdraft.errors import TooLarge
from afterdraft.formats.table import read
ending, begins, ends = sys.argv[1:]
sentence = "It was a long day on the river and the ferry was late again. "
data = (begins + sentence * (50_000_000 // len(sentence)) + ends).encode()
start = time.process_time()
try:
    lengths = [len(block.text) for block in read(data, "draft." + ending).blocks]
    outcome = f"{sum(lengths)} {max(lengths)}"
except TooLarge as refusal:
    outcome = str(refusal)
most = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
if sys.platform == "linux":  # there it counts what the one that began this process held
    most = next(line.split()[1] for line in open("/proc/self/status") if line.startswith("VmHWM"))
print(time.process_time() - start, most, outcome)
"""


@pytest.mark.slow
@pytest.mark.parametrize(
    ("ending", "begins", "ends"),
    [("txt", "", ""), ("md", "", ""), ("html", "<p>", "</p>"), ("rtf", "{\\rtf1 ", "\\par}")],
)
def test_fifty_megabytes_of_one_paragraph(ending: str, begins: str, ends: str) -> None:
    command = [sys.executable, "-c", CHILD, ending, begins, ends]
    done = subprocess.run(command, capture_output=True, check=True, text=True, encoding="utf-8")
    seconds, most, outcome = done.stdout.strip().split(" ", 2)
    assert float(seconds) < SECONDS
    assert float(most) / (1024**2 if sys.platform == "darwin" else 1024) < MEGABYTES
    if ending == "html":
        assert "larger than a manuscript can be" in outcome
    else:
        whole, longest = map(int, outcome.split())
        assert whole > 49_000_000 and longest <= 1_000_000


def test_an_odt_with_more_tags_than_can_be_read_in_good_time_is_refused() -> None:
    content = odt.parts(*[odt.p(f"{number}") for number in range(310_000)])
    with pytest.raises(TooLarge, match="signs of markup"):
        read(pack(content), "draft.odt")
