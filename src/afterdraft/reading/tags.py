"""Who the words beside a quotation name as its speaker: 'said Lucy', 'he went on', 'She turned: …'.

A tag must touch the quotation, as computation in published systems has it (Muzny et al. 2017 call them sieves:
a quotation, a verb of speech and a mention, in any order, and nothing else between).
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass

from afterdraft.reading import lexicon, speech_words
from afterdraft.reading.analysed import Analysed
from afterdraft.reading.facts import Mention
from afterdraft.reading.lexicon import words_of

CLAUSE_END = re.compile(r"[.;!?]")
MARKS = "“”‘’\"'«»„"
INVERTED = 4  # characters' worth of small words apart that a verb and its speaker may stand: 'said old Mr. X'
ADVERBS = 1  # words between a speaker and a rarer verb: 'she softly jerked'
LONG_CLAUSE = 160  # characters beyond which a verb has little to do with the words beside the quotation
OBJECTS = words_of(
    """
    him her them me us himself herself myself his hers their my our your
    """
)


@dataclass(frozen=True, slots=True)
class Tag:
    mention: int  # of the paragraph's
    plain: bool  # with a verb of speech


def after(analysed: Analysed, start: int, end: int, mentions: Sequence[Mention]) -> Tag | None:
    """The tag that follows a quotation: the words from `start` to `end` up to the first full stop."""
    stop = _clause_end(analysed.text, start, end)
    verbs = _verbs(analysed, start, stop)
    inside = _speakers(mentions, start, stop)
    if not verbs or verbs[0] - start > LONG_CLAUSE:
        told = _told(analysed, start, stop, mentions)
        return Tag(told, plain=True) if told is not None else _act(analysed, start, end, mentions)
    verb = verbs[0]
    behind = [place for place in inside if mentions[place].start > verb]
    ahead = [place for place in inside if mentions[place].start < verb]
    if behind and not ahead and _near(analysed.text, verb, mentions[behind[0]].start):
        return Tag(behind[0], plain=True)
    subjects = [place for place in ahead if mentions[place].subject] or ahead
    return Tag(subjects[0], plain=True) if subjects else None


def before(analysed: Analysed, start: int, end: int, mentions: Sequence[Mention]) -> Tag | None:
    """The tag that leads up to a quotation which begins at `end`: the sentence before it, from `start` on."""
    told = analysed.text[start:end].rstrip(MARKS + " \n")
    if not told or told[-1] in ".!?;":
        return None
    begin = start + max((match.end() for match in _stops(told)), default=0)
    verbs = _verbs(analysed, begin, end)
    inside = _speakers(mentions, begin, end)
    if verbs:
        verb = verbs[-1]
        ahead = [place for place in inside if mentions[place].start < verb]
        subjects = [place for place in ahead if mentions[place].subject]
        if subjects or ahead:
            return Tag((subjects or ahead)[-1], plain=True)
        return Tag(inside[0], plain=True) if inside else None
    if told[-1] in ":,—-" and (subjects := [place for place in inside if mentions[place].subject]):
        return Tag(subjects[0], plain=told[-1] == ":")
    return None


def _told(analysed: Analysed, start: int, stop: int, mentions: Sequence[Mention]) -> int | None:
    """Who tells the words in the clause right behind them by a rarer verb: '“Yes,” he jerked out'.

    A clause that goes on from a comma, or that begins small, may have any verb.
    """
    inside = _speakers(mentions, start, stop)
    if not inside:
        return None
    first = mentions[inside[0]]
    goes_on = analysed.text[:start].rstrip(MARKS).endswith(",") or analysed.text[first.start].islower()
    lead = analysed.text[start : first.start].strip(MARKS + " —-")
    for place, word, pos in zip(analysed.starts, analysed.words, analysed.pos, strict=True):
        if start <= place < stop and pos in ("VERB", "AUX"):
            told = word.lower() in speech_words.RARER or (goes_on and pos == "VERB")
            if place < first.start:
                touches = analysed.text[start:place].strip(MARKS + " ") == "" and _near(
                    analysed.text, place, first.start
                )
            else:
                between = analysed.text[first.end : place]
                touches = not lead and "," not in between and len(between.split()) <= ADVERBS
            return inside[0] if told and touches else None
    return None


def _act(analysed: Analysed, start: int, end: int, mentions: Sequence[Mention]) -> Tag | None:
    """Somebody's act right behind the words: '"Ah." Lucy turned away.'"""
    first = next((place for place in _speakers(mentions, start, end)), None)
    if first is None or not mentions[first].subject:
        return None
    told = analysed.text[start : mentions[first].start].strip(MARKS + " —-,.")
    return Tag(first, plain=False) if not told or told.lower() in ("and", "but", "the", "then") else None


def _stops(told: str) -> list[re.Match[str]]:
    return [match for match in re.finditer(r"[.!?;](?=[\s”\"’'])", told) if not _abbreviated(told, match.start())]


def _clause_end(text: str, start: int, end: int) -> int:
    for match in CLAUSE_END.finditer(text, start, end):
        if not _abbreviated(text, match.start()):
            return match.start()
    return end


def _abbreviated(text: str, point: int) -> bool:
    """Whether the point belongs to a title or an initial: 'Mr.', 'J.'"""
    word = re.search(r"(\w+)$", text[max(0, point - 12) : point])
    return text[point] == "." and word is not None and (len(word[1]) == 1 or word[1].lower() in lexicon.TITLES)


def _verbs(analysed: Analysed, start: int, end: int) -> list[int]:
    """Where verbs of speech begin."""
    return [
        place
        for place, word, pos in zip(analysed.starts, analysed.words, analysed.pos, strict=True)
        if start <= place < end
        and word.lower() in lexicon.SPEECH
        and pos in ("VERB", "AUX", "NOUN", "PROPN", "ADJ", "X")
    ]


def _speakers(mentions: Sequence[Mention], start: int, end: int) -> list[int]:
    return [
        place
        for place, mention in enumerate(mentions)
        if start <= mention.start < end and not mention.spoken and mention.form not in OBJECTS
    ]


def _near(text: str, verb: int, mention: int) -> bool:
    """'said old Mr. X' and not 'said, looking at Mr. X'."""
    between = text[verb:mention]
    return (
        "," not in between and len(between.split()) <= INVERTED and not re.search(r"\b(to|at|with|of|from)\b", between)
    )
