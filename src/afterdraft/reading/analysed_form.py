"""Analysed paragraphs as text, short enough to be kept beside the facts: where the division of a book changes, or some
words of a scene, all other paragraphs need no language pipeline.

A line a column, a character a token: its code is the number meant, from `ZERO` on. Labels are numbered by `LABELS`.
"""

import json
from collections.abc import Iterable
from hashlib import sha256
from itertools import accumulate

from afterdraft.reading.analysed import Analysed

FORM = 1  # part of every key: another form is another key
LONGEST = 20_000  # characters of a paragraph that is kept: beyond, numbers are no characters any more
ZERO = ord("0")
_NAMED = """
ADJ ADP ADV AUX CCONJ CONJ DET INTJ NOUN NUM PART PRON PROPN PUNCT SCONJ SYM VERB X
ROOT acl acomp advcl advmod agent amod appos attr aux auxpass case cc ccomp compound conj csubj csubjpass dative dep det
dobj expl intj mark meta neg nmod npadvmod nsubj nsubjpass nummod oprd parataxis pcomp pobj poss preconj predet prep prt
punct quantmod relcl xcomp
CARDINAL DATE EVENT FAC GPE LANGUAGE LAW LOC MONEY NORP ORDINAL ORG PERCENT PERSON PRODUCT QUANTITY TIME WORK_OF_ART
"""  # parts of speech (Universal Dependencies), dependencies (ClearNLP), entities (OntoNotes 5)
LABELS = ("", *_NAMED.split())
NUMBERS = {label: number for number, label in enumerate(LABELS)}


def key(text: str, *, model: str) -> str:
    """Of a paragraph's analysis: the same words analysed by the same model have the same."""
    return sha256(json.dumps([FORM, model, text]).encode()).hexdigest()[:32]


def packed(one: Analysed) -> str:
    """`unpacked` gives the same back; "" where it cannot be kept: it is too long, or has labels of its own."""
    if len(one.text) > LONGEST or not NUMBERS.keys() >= {*one.pos, *one.deps, *one.kinds}:
        return ""
    ends = [0, *(start + len(word) for start, word in zip(one.starts, one.words, strict=True))]
    columns = (
        (start - end for start, end in zip(one.starts, ends, strict=False)),
        map(len, one.words),
        map(NUMBERS.__getitem__, one.pos),
        map(NUMBERS.__getitem__, one.deps),
        (_folded(head - token) for token, head in enumerate(one.heads)),
        one.sentences,
        map(NUMBERS.__getitem__, one.kinds),
    )
    found = _words(one.text, one.starts, map(len, one.words))
    other = {token: word for token, (word, here) in enumerate(zip(one.words, found, strict=True)) if word != here}
    return "\n".join((*map(_line, columns), json.dumps(other) if other else ""))


def unpacked(text: str, form: str) -> Analysed:
    """What `packed` wrote of the paragraph of this text."""
    *lines, other = form.split("\n")
    gaps, lengths, pos, deps, heads, sentences, kinds = ([ord(one) - ZERO for one in line] for line in lines)
    ends = accumulate(gap + length for gap, length in zip(gaps, lengths, strict=True))
    starts = tuple(end - length for end, length in zip(ends, lengths, strict=True))
    words = _words(text, starts, lengths)
    for token, word in json.loads(other or "{}").items():
        words[int(token)] = word
    return Analysed(
        text=text,
        words=tuple(words),
        starts=starts,
        pos=tuple(LABELS[one] for one in pos),
        deps=tuple(LABELS[one] for one in deps),
        heads=tuple(token + _unfolded(head) for token, head in enumerate(heads)),
        sentences=tuple(sentences),
        kinds=tuple(LABELS[one] for one in kinds),
    )


def _line(numbers: Iterable[int]) -> str:
    return "".join(chr(ZERO + number) for number in numbers)


def _words(text: str, starts: Iterable[int], lengths: Iterable[int]) -> list[str]:
    """As they stand in the text."""
    return [text[start : start + length] for start, length in zip(starts, lengths, strict=True)]


def _folded(step: int) -> int:
    """Steps back as odd numbers, forward as even ones."""
    return 2 * step if step >= 0 else -2 * step - 1


def _unfolded(number: int) -> int:
    return -(number + 1) // 2 if number % 2 else number // 2
