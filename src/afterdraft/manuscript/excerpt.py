"""The first and the last sentence of a paragraph, with their emphasis.

A sentence ends as in the Unicode standard's annex on text segmentation (UAX #29, sentence boundaries; from memory),
made simple: at a full stop, question or exclamation mark or ellipsis, closing quotation marks and brackets with it,
where white space follows and then no small letter. A line of verse ends one too. A stop after a short title or an
initial ("Mr.", "J.") does not: common practice.
"""

import re
from dataclasses import replace

from afterdraft.manuscript.blocks import Block

_CLOSING = "\"'”’»›)\\]"
_OPENING = "\"'“‘«‹(\\[„‚—–\\-"
_END = re.compile(rf"[.!?…]+(?:[^\S\n][»›])?[{_CLOSING}]*(?=\s+[{_OPENING}]*[^\s{_OPENING}.!?…])|\n+")
_NEXT = re.compile(rf"\s+[{_OPENING}]*")
_TITLES = frozenset(("mr", "mrs", "ms", "mx", "dr", "st", "prof", "rev", "capt", "col", "lt", "sgt", "gen", "mme"))
_LONGEST = 8  # characters in which a title, what parts it from the word before, and its stop have room
_LAST_WORD = re.compile(r"(?:^|[^\w’'])([^\W\d_]+)\.$")


def first_sentence(block: Block) -> Block:
    """A paragraph with only its first sentence; all of it where it has but one."""
    ends = _ends(block.text)
    return _piece(block, 0, ends[0] if ends else len(block.text))


def last_sentence(block: Block) -> Block:
    """A paragraph with only its last sentence; all of it where it has but one."""
    ends = _ends(block.text)
    return _piece(block, ends[-1] if ends else 0, len(block.text))


def _ends(text: str) -> list[int]:
    """Where sentences end inside the text, its own end left out."""
    start, whole = len(text) - len(text.lstrip()), len(text.rstrip())
    return [match.end() for match in _END.finditer(text) if start < match.end() < whole and _is_end(text, match)]


def _is_end(text: str, match: re.Match[str]) -> bool:
    if "\n" in match.group():
        return True
    after = _NEXT.match(text, match.end())
    follows = text[after.end()] if after else ""
    return not follows.islower() and not _shortened(text[max(match.end() - _LONGEST, 0) : match.end()])


def _shortened(before: str) -> bool:
    """Whether the stop belongs to a title or an initial; "I." is a word of its own."""
    word = _LAST_WORD.search(before)
    if word is None:
        return False
    letters = word.group(1)
    return letters.lower() in _TITLES or (len(letters) == 1 and letters.isupper() and letters != "I")


def _piece(block: Block, start: int, end: int) -> Block:
    """Code points `start…end` of a paragraph, white space at both ends left out, its runs cut to fit."""
    cut = block.text[start:end]
    start += len(cut) - len(cut.lstrip())
    end = start + len(cut.strip())
    if (start, end) == (0, len(block.text)):
        return block
    runs = tuple(
        replace(run, start=max(run.start, start) - start, end=min(run.end, end) - start)
        for run in block.runs
        if run.start < end and run.end > start
    )
    return replace(block, text=block.text[start:end], runs=runs)
