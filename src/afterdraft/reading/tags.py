"""Who the words beside a quotation name as its speaker: 'said Lucy', 'he went on', 'She turned: …'.

A tag must touch the quotation, as computation in published systems has it (Muzny et al. 2017 call them sieves:
a quotation, a verb of speech and a mention, in any order, and nothing else between). Whose the verb is, the parse
says first; where it says nothing, the words' order.
"""

import re
from dataclasses import dataclass

from afterdraft.reading import lexicon, speech_words
from afterdraft.reading.analysed import Analysed
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.tag_subjects import Told, aside, denied, subject

CLAUSE_END = re.compile(r"[.;!?]")
MARKS = "“”‘’\"'«»„"
INVERTED = 4  # characters' worth of small words apart that a verb and its speaker may stand: 'said old Mr. X'
ADVERBS = 1  # words between a speaker and a rarer verb: 'she softly jerked'
ADJOINING = 2  # words between a speaker and a verb of speech where a sentence of its own follows the words
SHORT = 14  # words of a sentence that says no more than that somebody speaks
LONG_CLAUSE = 160  # characters beyond which a verb has little to do with the words beside the quotation
OBJECTS = words_of(
    """
    him her them me us himself herself myself his hers their my our your
    """
)
SPOKEN_TAGS = frozenset({"VERB", "AUX", "NOUN", "PROPN", "ADJ", "X"})


@dataclass(frozen=True, slots=True)
class Tag:
    mention: int  # of the paragraph's
    plain: bool  # with a verb of speech


def after(within: Told, start: int, end: int) -> Tag | None:
    """The tag that follows a quotation: the words from `start` to `end` up to the first full stop."""
    of = within.grammar.of
    if not _goes_on(of.text, start, end):
        return _sentence(within, start, end)
    stop = _clause_end(of.text, start, end)
    verbs = _verbs(of, start, stop)
    if not verbs or of.starts[verbs[0]] - start > LONG_CLAUSE:
        told = _told(within, start, stop)
        return Tag(told, plain=True) if told is not None else _act(within, start, end)
    if (known := subject(within, verbs[0])) is not None and start <= within.mentions[known].start < stop:
        return Tag(known, plain=True)
    verb = of.starts[verbs[0]]
    inside = _speakers(within, start, stop)
    behind = [place for place in inside if within.mentions[place].start > verb]
    ahead = [place for place in inside if within.mentions[place].start < verb]
    if behind and not ahead and _near(of.text, verb, within.mentions[behind[0]].start):
        return Tag(behind[0], plain=True)
    subjects = [place for place in ahead if within.mentions[place].subject] or ahead
    return Tag(subjects[0], plain=True) if subjects else None


def before(within: Told, start: int, end: int) -> Tag | None:
    """The tag that leads up to a quotation which begins at `end`: the sentence before it, from `start` on."""
    of = within.grammar.of
    told = of.text[start:end].rstrip(MARKS + " \n")
    if not told or told[-1] in ".!?;":
        return None
    begin = start + max((match.end() for match in _stops(told)), default=0)
    inside = _speakers(within, begin, end)
    said = _verbs(of, begin, end, lexicon.SPEECH | speech_words.RARER)
    if verbs := [verb for verb in said if not aside(within, verb)]:
        known = subject(within, verbs[-1])
        if known is not None and begin <= within.mentions[known].start < end:
            return Tag(known, plain=True)
        ahead = [place for place in inside if within.mentions[place].start < of.starts[verbs[-1]]]
        subjects = [place for place in ahead if within.mentions[place].subject]
        if subjects or ahead:
            return Tag((subjects or ahead)[-1], plain=True)
        return Tag(inside[0], plain=True) if inside else None
    if told[-1] in ":,—-" and (subjects := [place for place in inside if within.mentions[place].subject]):
        return Tag(subjects[0], plain=told[-1] == ":")
    return None


def run_on(text: str, start: int, end: int) -> bool:
    """Whether the words between two stretches of speech belong to both: '“Go,” said Ada, “or stay.”'"""
    return bool(text[start:end].strip(MARKS + " ")) and _clause_end(text, start, end) == end


def leading(within: Told, start: int) -> Tag | None:
    """Who is told to speak by the last sentence of a paragraph from `start` on: 'After a while Ada spoke.'"""
    of = within.grammar.of
    told = of.text[start:].rstrip()
    begin = start + max((match.end() for match in _stops(told[:-1] + " ")), default=0)
    if not told.endswith(".") or len(of.text[begin:].split()) > SHORT:
        return None
    for verb in reversed(_verbs(of, begin, len(of.text), speech_words.OPENING)):
        known = subject(within, verb)
        if known is not None and within.mentions[known].start >= begin and not denied(within, verb):
            return Tag(known, plain=False)
    return None


def _goes_on(text: str, start: int, end: int) -> bool:
    """Whether the sentence of the quotation runs on behind it: from a comma, or in small letters."""
    said = text[:start].rstrip(MARKS + " ")
    first = next((sign for sign in text[start:end] if sign.isalpha()), "")
    return said.endswith((",", "—", "-", "–")) or not first.isupper()


def _sentence(within: Told, start: int, end: int) -> Tag | None:
    """A sentence of its own behind the words: '“Why?” Ada asked.', or somebody's act: '“Ah.” Ada turned.'"""
    of = within.grammar.of
    stop = _clause_end(of.text, start, end)
    first = next(iter(_speakers(within, start, stop)), None)
    if first is None or of.text[start : within.mentions[first].start].strip(MARKS + " —-"):
        return _act(within, start, end)
    closed = of.text[:start].rstrip(MARKS + " ").endswith(".")
    for verb in _verbs(of, start, stop, lexicon.SPEECH | speech_words.RARER):
        between = of.text[within.mentions[first].end : of.starts[verb]]
        if denied(within, verb):
            return None
        if of.starts[verb] > within.mentions[first].start and "," not in between and len(between.split()) <= ADJOINING:
            return Tag(first, plain=not closed and not of.text[start:end].rstrip(MARKS + " ").endswith(":"))
    return _act(within, start, end)


def _told(within: Told, start: int, stop: int) -> int | None:
    """Who tells the words in the clause right behind them by a rarer verb: '“Yes,” he jerked out'.

    A clause that goes on from a comma, or that begins small, may have any verb.
    """
    of = within.grammar.of
    inside = _speakers(within, start, stop)
    if not inside:
        return None
    first = within.mentions[inside[0]]
    goes_on = of.text[:start].rstrip(MARKS).endswith(",") or of.text[first.start].islower()
    lead = of.text[start : first.start].strip(MARKS + " —-")
    for place, word, pos in zip(of.starts, of.words, of.pos, strict=True):
        if start <= place < stop and pos in ("VERB", "AUX"):
            told = word.lower() in speech_words.RARER or (goes_on and pos == "VERB")
            if place < first.start:
                touches = of.text[start:place].strip(MARKS + " ") == "" and _near(of.text, place, first.start)
            else:
                between = of.text[first.end : place]
                touches = not lead and "," not in between and len(between.split()) <= ADVERBS
            return inside[0] if told and touches else None
    return None


def _act(within: Told, start: int, end: int) -> Tag | None:
    """Somebody's act right behind the words: '"Ah." Lucy turned away.'"""
    first = next((place for place in _speakers(within, start, end)), None)
    if first is None or not within.mentions[first].subject:
        return None
    told = within.grammar.of.text[start : within.mentions[first].start].strip(MARKS + " —-,.")
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


def _verbs(of: Analysed, start: int, end: int, known: frozenset[str] = lexicon.SPEECH) -> list[int]:
    """The tokens that are verbs of speech."""
    return [
        token
        for token, (place, word, pos) in enumerate(zip(of.starts, of.words, of.pos, strict=True))
        if start <= place < end and word.lower() in known and pos in SPOKEN_TAGS
    ]


def _speakers(within: Told, start: int, end: int) -> list[int]:
    return [
        place
        for place, mention in enumerate(within.mentions)
        if start <= mention.start < end and not mention.spoken and mention.form not in OBJECTS
    ]


def _near(text: str, verb: int, mention: int) -> bool:
    """'said old Mr. X' and not 'said, looking at Mr. X'."""
    between = text[verb:mention]
    return (
        "," not in between and len(between.split()) <= INVERTED and not re.search(r"\b(to|at|with|of|from)\b", between)
    )
