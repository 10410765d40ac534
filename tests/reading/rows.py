"""Analysed text with its grammar written beside each word: `word/POS/relation/head`, heads counted from 0."""

from itertools import accumulate

from afterdraft.reading.analysed import Analysed
from afterdraft.reading.grammar import Grammar, Spans, grammar


def parsed(*rows: str, speech: Spans = ()) -> Grammar:
    """One paragraph, a row of words for each sentence; heads count over the whole paragraph."""
    return grammar(analysed(*rows), speech)


def analysed(*rows: str) -> Analysed:
    """Words stand one space apart, so that places are easily counted."""
    sentences = tuple(number for number, row in enumerate(rows) for _ in row.split())
    words, pos, deps, heads = zip(*(word.rsplit("/", 3) for row in rows for word in row.split()), strict=True)
    starts = accumulate((len(word) + 1 for word in words[:-1]), initial=0)
    return Analysed(
        text=" ".join(words),
        words=words,
        starts=tuple(starts),
        pos=pos,
        deps=deps,
        heads=tuple(map(int, heads)),
        sentences=sentences,
        kinds=("",) * len(words),
    )
