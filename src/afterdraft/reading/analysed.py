"""A paragraph with its words analysed, as plain values: what a language pipeline gives, whichever it is.

Positions count code points from the paragraph's beginning; heads and sentences count tokens and sentences of the
paragraph. Parts of speech are the universal ones (`VERB`, `PROPN`), dependencies ClearNLP's (`nsubj`, `conj`).
"""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Analysed:
    """One paragraph. All tuples but `text` run beside one another, one entry a token; white space is no token."""

    text: str
    words: tuple[str, ...] = ()
    starts: tuple[int, ...] = ()
    pos: tuple[str, ...] = ()  # part of speech
    deps: tuple[str, ...] = ()  # relation to the head
    heads: tuple[int, ...] = ()  # token it depends on, itself for a root
    sentences: tuple[int, ...] = ()  # number of its sentence, from 0
    kinds: tuple[str, ...] = ()  # of the named entity it lies in (`PERSON`, `GPE`, …), "" where in none

    def end(self, token: int) -> int:
        """Where the token ends, exclusive."""
        return self.starts[token] + len(self.words[token])


Analyse = Callable[[Sequence[str]], Iterable[Analysed]]  # paragraphs in, one value each out, in order
