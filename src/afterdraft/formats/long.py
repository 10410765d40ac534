"""Paragraphs longer than any writer's are cut, so that pages that show them stay quick."""

import re
from bisect import bisect_right
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from typing import Final

from afterdraft.manuscript.blocks import Aside, Block, Gap, Run

LONGEST: Final = 1_000_000  # characters in a paragraph; longer ones are cut at a sentence's end
_SENTENCE: Final = re.compile(r"[.!?…][”’\"')\]]*\s+")
_NOTICE: Final = "A paragraph of over a million characters was cut at sentence ends."


def shortened(
    blocks: Sequence[Block], asides: Iterable[Aside] = ()
) -> tuple[tuple[Block, ...], tuple[Aside, ...], tuple[str, ...]]:
    """The blocks, none longer than LONGEST; what was set apart, moved with them; a notice where any was cut."""
    if all(len(block.text) <= LONGEST for block in blocks):
        return tuple(blocks), tuple(asides), ()
    cut: list[Block] = []
    firsts: list[int] = []  # of each block, its first piece
    for block in blocks:
        firsts.append(len(cut))
        cut += _pieces(block) if len(block.text) > LONGEST else [block]
    ends = [*firsts[1:], len(cut)]
    return tuple(cut), tuple(_moved(aside, cut, firsts, ends) for aside in asides), (_NOTICE,)


def _moved(aside: Aside, cut: Sequence[Block], firsts: Sequence[int], ends: Sequence[int]) -> Aside:
    """To the piece where it begins; it ends there with the piece."""
    pieces = cut[firsts[aside.block] : ends[aside.block]]
    starts = [0]
    for piece in pieces[:-1]:
        starts.append(starts[-1] + len(piece.text))
    at = bisect_right(starts, aside.start) - 1
    start = aside.start - starts[at]
    end = min(aside.end - starts[at], len(pieces[at].text))
    return replace(aside, block=firsts[aside.block] + at, start=start, end=end)


def _pieces(block: Block) -> Iterator[Block]:
    """The block in pieces of at most LONGEST characters, cut after a sentence, or after a word, or anywhere."""
    start = piece = 0
    while start < len(block.text):
        end = _end(block.text, start)
        runs = tuple(
            Run(max(run.start, start) - start, min(run.end, end) - start, run.kind)
            for run in block.runs
            if run.start < end and run.end > start
        )
        yield replace(
            block,
            text=block.text[start:end],
            runs=runs,
            gap=block.gap if piece == 0 else Gap(),
            source=replace(block.source, piece=block.source.piece + piece),
        )
        start, piece = end, piece + 1


def _end(text: str, start: int) -> int:
    """Where the piece that begins at `start` ends."""
    limit = start + LONGEST
    if limit >= len(text):
        return len(text)
    ends = [match.end() for match in _SENTENCE.finditer(text, limit - LONGEST // 10, limit)]
    if ends:
        return ends[-1]
    space = text.rfind(" ", start, limit)
    return space + 1 if space > start else limit
