"""`places`: the places that a paragraph names, by what the pipeline takes for one and by what stands before it."""

from collections.abc import Iterator, Sequence

from afterdraft.reading.analysed import Analysed
from afterdraft.reading.grammar import Spans, inside
from afterdraft.reading.mentions import bare
from afterdraft.reading.place import Place, Sign
from afterdraft.reading.place_words import DETERMINERS, KINDS, SIGNS
from afterdraft.reading.time import Time

TAKEN = frozenset({"GPE", "LOC", "FAC"})  # the pipeline's kinds of places
NEVER = frozenset(
    {"DATE", "TIME", "NORP", "LANGUAGE", "MONEY", "ORDINAL", "CARDINAL", "QUANTITY", "PERCENT", "EVENT"} | {"PERSON"}
)
BEFORE = 4  # words before a kind of place in which its preposition stands: 'in the old stone'


def places(analysed: Analysed, paragraph: int, speech: Spans, dated: Sequence[Time] = ()) -> tuple[Place, ...]:
    """In order; `dated` are the paragraph's times: a name beside a dateline is where that was written."""
    spoken = inside(analysed.starts, speech)
    heads = [one for one in dated if one.dateline]
    found = []
    for first, last, name, taken in _spans(analysed):
        start, end = analysed.starts[first], analysed.end(last)
        headed = any(end <= one.end + BESIDE and one.start <= end + BESIDE for one in heads)
        sign: Sign = "heads" if headed and name else _sign(analysed, first)
        form = " ".join(bare(word) for word in analysed.words[first : last + 1])
        found.append(Place(paragraph, start, end, form, name, taken, spoken[first], sign))
    return tuple(found)


BESIDE = 24  # characters between a dateline's date and its place


def _spans(analysed: Analysed) -> Iterator[tuple[int, int, bool, bool]]:
    """First and last token, whether it is a name, whether the pipeline takes it for a place."""
    token = 0
    while token < len(analysed.words):
        last = _named(analysed, token)
        if last is not None:
            yield token, last, True, analysed.kinds[token] in TAKEN
            token = last
        elif (last := _kind(analysed, token)) is not None:
            yield token, last, analysed.words[last][0].isupper(), analysed.kinds[last] in TAKEN
            token = last
        token += 1


def _named(analysed: Analysed, token: int) -> int | None:
    """The last token of a name that begins here."""
    kind = analysed.kinds[token]
    if not _large(analysed, token) or kind in NEVER or (not kind and analysed.pos[token] != "PROPN"):
        return None
    last = token
    while last + 1 < len(analysed.words) and _goes_on(analysed, last + 1, kind):
        last += 1
    return last if len(analysed.words[token]) > 1 else None


def _goes_on(analysed: Analysed, token: int, kind: str) -> bool:
    if _large(analysed, token):
        return analysed.kinds[token] == kind or not kind
    small = analysed.words[token] in ("of", "the", "-", "’s") and token + 1 < len(analysed.words)
    return small and analysed.kinds[token] == kind != "" and analysed.kinds[token + 1] == kind


def _large(analysed: Analysed, token: int) -> bool:
    return analysed.words[token][0].isupper() and analysed.pos[token] in ("PROPN", "NOUN", "ADJ")


def _kind(analysed: Analysed, token: int) -> int | None:
    """The last token of a kind of place with what tells it from others: 'ferry house'."""
    if bare(analysed.words[token]) in DETERMINERS or analysed.pos[token] not in ("NOUN", "PROPN", "ADJ"):
        return None
    last = token
    while last + 1 < len(analysed.words) and analysed.pos[last + 1] in ("NOUN", "PROPN"):
        last += 1
    if bare(analysed.words[last]) not in KINDS or token == 0 or last - token > 2:
        return None
    before = bare(analysed.words[token - 1])
    return last if before in DETERMINERS and analysed.pos[token] != "ADJ" else None


def _sign(analysed: Analysed, token: int) -> Sign:
    for place in range(token - 1, max(-1, token - 1 - BEFORE), -1):
        word = bare(analysed.words[place])
        if word in SIGNS:
            return SIGNS[word]
        if word not in DETERMINERS and analysed.pos[place] not in ("ADJ", "PROPN"):
            break
    return ""
