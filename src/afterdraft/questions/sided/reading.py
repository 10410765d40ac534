"""Marks of a body that are on one side of it, as words tell them: the deaf ear, the hand short of two fingers."""

import re
from collections.abc import Callable, Iterable, Iterator

from afterdraft.questions.sentences import sentences
from afterdraft.questions.sided.acted import acted
from afterdraft.questions.sided.hurts import hurts
from afterdraft.questions.sided.kinds import by_kind
from afterdraft.questions.sided.loosely import loosely
from afterdraft.questions.sided.marks import marked
from afterdraft.questions.sided.said import Sided, moved

ROUND = 30  # characters behind the words, in which doubt is cast on them
AHEAD = 40  # the same, before them
MOST = 3  # sentences read as one, where each leans on the one before
_LEANS = re.compile(  # how a sentence begins or what it has, that says more of what the one before told of
    r"[“‘\"'(—]*(?:It(?: was|[’']s| had)|That(?: one| was|[’']s)|The other|(?:The|His|Her|My) (?:left|right)(?: one)?"
    r"(?=[,;:.]| (?:was|is|had|hung|lay)\b))|[^.]{0,30}\b(?:on|in|of|with) (?:the other|it|that (?:side|one))[.,]"
)
_DOUBTFUL = re.compile(
    r"\b(?:mirror|(?:faced|in|into) the glass|reflect\w*|looking-glass|photograph|portrait|as if|as though"
    r"|pretend\w*|feign\w*|sham\w*|disguise\w*|wrong (?:leg|foot|eye|ear|one)|changed sides|swapped"
    r"|no longer|either|both|neither"
    r"|(?:he|she|I|they) (?:faced|looked at)|facing|used to|or (?:the |his |her |my )?(?:left|right)"
    r"|not (?:the |his |her |my )?(?:left|right)|dreamt|dream)\b"
)
_IF = re.compile(r"\b[Ii]f\b")  # it casts doubt on what is behind it


def sided(text: str) -> Iterator[Sided]:
    """What a paragraph tells of marks and sides, in the order of its sentences.

    >>> [(one.kind, one.side, one.good) for one in sided("He was deaf in the left ear. She found his good left ear.")]
    [('deaf ear', 'left', False), ('deaf ear', 'right', True)]
    """
    return _read(text, lambda said: (*by_kind(said), *marked(said), *hurts(said)))


def acted_in(text: str) -> Iterator[Sided]:
    """What is only done or felt on a side."""
    return _read(text, lambda said: (*acted(said), *loosely(said)))


def _read(text: str, reads: Callable[[str], Iterable[Sided]]) -> Iterator[Sided]:
    for start, end in _passages(text) if "left" in text or "right" in text else ():
        said = text[start:end]
        if not re.search(r"\b(?:left|right)\b", said):
            continue
        for one in dict.fromkeys(reads(said)):
            before = said[max(0, one.start - AHEAD) : one.start]
            if not _DOUBTFUL.search(before + said[one.start : one.end + ROUND]) and not _IF.search(before):
                yield moved(one, start)


def _passages(text: str) -> Iterator[tuple[int, int]]:
    """Sentences, and several as one where they lean on each other: 'He gave her his left hand. It had no thumb.'"""
    held: list[tuple[int, int]] = []
    for start, end in sentences(text):
        if held and (len(held) == MOST or not _LEANS.match(text, start)):
            yield held[0][0], held[-1][1]
            held = []
        held.append((start, end))
    if held:
        yield held[0][0], held[-1][1]
