"""What can be counted in a paragraph without knowing who anybody is."""

from collections.abc import Iterator
from itertools import pairwise

from afterdraft.manuscript.words import count
from afterdraft.reading.counted import Counted
from afterdraft.reading.grammar import Grammar
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.tense import tensed
from afterdraft.reading.valence import plain, valence

FIRST = words_of("i me my mine myself we us our ours ourselves")
SECOND = words_of("you your yours yourself yourselves")
THIRD = words_of("he him his himself she her hers herself they them their theirs themselves")


def counted(grammar: Grammar) -> Counted:
    """One paragraph's counts; where it was too long to be analysed, only those of its words."""
    text = grammar.of.text
    past, present = tensed(grammar)
    told = [word for word, spoken in zip(grammar.small, grammar.spoken, strict=True) if not spoken]
    sentences = [(count(one), valence(one)) for one in map(plain, _sentences(grammar))]
    felt = sum(words * value for words, value in sentences)
    words = sum(words for words, _ in sentences)
    return Counted(
        words=count(text),
        sentences=sum(words > 0 for words, _ in sentences),
        spoken=sum(count(text[start:end]) for start, end in grammar.speech),
        first=sum(word in FIRST for word in told),
        second=sum(word in SECOND for word in told),
        third=sum(word in THIRD for word in told),
        past=past,
        present=present,
        valence=round(felt / words, 4) if words else 0.0,
    )


def _sentences(grammar: Grammar) -> Iterator[str]:
    """As the pipeline parts them."""
    of = grammar.of
    starts = [place for place, number in zip(of.starts, _new(of.sentences), strict=True) if number]
    for start, end in pairwise([*starts, len(of.text)]):
        yield of.text[start:end]


def _new(sentences: tuple[int, ...]) -> Iterator[bool]:
    before = -1
    for number in sentences:
        yield number != before
        before = number
