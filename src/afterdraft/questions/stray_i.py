"""Where an 'I' among 'he' and 'she' is the writer's slip: plain narration, with nothing near that it may be read out
of, remembered from, said or thought."""

import re
from collections.abc import Sequence

from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentences

RUN = 5  # words in a row that stand elsewhere too: then they are a line somebody remembers
LONG = 12  # words of a sentence with one I in it, behind another: shorter ones are lines that somebody remembers
_I = re.compile(r"(?<!\b[A-Z]\s)(?<![\w’'*_-])(?:I|me|my|myself)(?=[\s,.;!?—]|[’'](?:d|ll|ve|m)\b)(?!\.\w)")
_NUMBERED = re.compile(r"(?<=[\w,;:]\s)(?!(?:And|But|When|If|As|So|Then|That|What|Where|While|For|Or)\s)[A-Z]\w+\s$")
_WORD = re.compile(r"[^\W_]+(?:[’'][^\W_]+)?")
_NAME = re.compile(r"\b(?!I\b)[A-Z]\w+")
_READ = re.compile(
    r"\b(?:letters?|notes?|diar(?:y|ies)|journal|notebook|envelope|postcards?|telegram|email|message|memorandum|statement"
    r"|testament|will\sread|inscription|headstone|caption|handwriting|read(?:s|ing)?|wrote|writ(?:es|ing|ten)|typed|pages?"
    r"|transcript|deposition|confession|poem|verses?|songs?|sang|psalm|prayers?|prayed|recit\w+|quot\w+|rehears\w+|tape)\b",
    re.IGNORECASE,
)
_SAID = re.compile(
    r"\b(?:said|says|saying|told|tells|telling|asked|answered|explained|thought|wondered|remember(?:ed|s)?|recall(?:ed|s)?"
    r"|memory|dream\w*|imagin\w+|repeat\w*|words|sentence|line|phrase|heard)\b"
)
_SAID_BEHIND = re.compile(
    r"\b(?:had\s(?:said|told|written|thought|put\sit)|(?:was|were)\s(?:saying|telling|asking|explaining)|every\sword|word\sfor"
    r"\sword|(?:those|these|the|her|his)\s(?:very\s)?words|went\son:)\b",
    re.IGNORECASE,
)
_DASH = re.compile(r"\s*[—–-]")


def selves_in(text: str) -> int:
    """How often an I is meant, and no 'Part I' or 'Charles I'."""
    return sum(not _NUMBERED.search(text[: one.start()]) for one in _I.finditer(text))


def is_slip(seen: Seen, number: int, place: int, own: Sequence[tuple[int, int]]) -> bool:
    """Whether these sentences of a paragraph are narration, of several such words or of one that goes on
    from the sentence before, by a name or at length."""
    text, texts = seen.texts[number][place], seen.texts[number]
    before = [text[slice(*one)] for one in sentences(text) if one[1] <= own[0][0]]
    above = texts[place - 1] if place and not _talks(seen, number, place - 1) else ""
    if _DASH.match(text) or is_read_out(seen, number, place) or _SAID_BEHIND.search(text):
        return False
    last = [_last(above)] if not before else []
    if any(map(_SAID.search, [*before, *last])):
        return False
    said = [text[slice(*one)] for one in own]
    several = selves_in(text) > 1 or (bool(before) and (_goes_on(before[-1], said[0]) or len(said[0].split()) >= LONG))
    return several and not any(_is_remembered(seen, (number, place), one) for one in said)


def is_read_out(seen: Seen, number: int, place: int) -> bool:
    """Whether a paragraph, or the one before it where nobody speaks, tells of something that is read."""
    above = place > 0 and not _talks(seen, number, place - 1)
    return any(map(_READ.search, seen.texts[number][place - above : place + 1]))


def _last(text: str) -> str:
    """Its last sentence."""
    found = sentences(text)
    return text[slice(*found[-1])] if found else ""


def _talks(seen: Seen, number: int, place: int) -> bool:
    return any(one.paragraph == place for one in seen.facts[number].quotes)


def _goes_on(before: str, said: str) -> bool:
    """Whether it names somebody whom the sentence before names: 'Ada came. I knew that it was Ada.'"""
    return bool({*_NAME.findall(before)} & {*_NAME.findall(said)})


def _is_remembered(seen: Seen, at: tuple[int, int], said: str) -> bool:
    """Whether its words, or several in a row with an I among them, stand elsewhere in the book."""
    words = _WORD.findall(said.lower())
    runs = [words[first : first + RUN] for first in range(max(1, len(words) - RUN + 1))]
    looked = [" ".join(run) for run in runs if {"i", "me", "my"} & set(run)]
    return any(
        f" {run} " in f" {' '.join(_WORD.findall(text.lower()))} "
        for number, scene in enumerate(seen.texts)
        for place, text in enumerate(scene)
        if (number, place) != at
        for run in looked
    )
