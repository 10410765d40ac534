"""How good or bad a sentence sounds: the rules of VADER, from its lexicon.

Hutto, C.J. & Gilbert, E.E. (2014). VADER: A Parsimonious Rule-based Model for Sentiment Analysis of Social Media Text.
The same figures as its reference implementation (vaderSentiment 3.3.2, MIT), oddities and all, but for emoji, which
that one spells out first. Words without value are passed over at once, so that a novel takes a second.
"""

from collections.abc import Sequence
from math import sqrt
from string import punctuation

from afterdraft.reading.lexicon import words_of
from afterdraft.reading.valence_lexicon import lexicon

# All figures are of the reference implementation, which found them by experiment.
BOOST = 0.293  # of a word of degree before
CAPITALS = 0.733  # of a word in capitals among others that are not
NEGATED = -0.74
FADING = (1.0, 0.95, 0.9)  # of words of degree one, two, three words before
NEVER_SO = 1.25
BUT = (0.5, 1.5)  # what stands before and after 'but'
EXCLAIMED, EXCLAIMED_MOST = 0.292, 4
ASKED, ASKED_MOST, ASKED_MANY = 0.18, 3, 0.96
ALPHA = 15  # of the curve that brings a sum between -1 and 1

_NEGATIONS = words_of(
    """
    aint arent cannot cant couldnt darent didnt doesnt dont hadnt hasnt havent isnt mightnt mustnt neither neednt
    never none nope nor not nothing nowhere oughtnt shant shouldnt uhuh uh-uh wasnt werent without wont wouldnt rarely
    seldom despite
    """
)  # and whatever holds "n't"
_MORE = words_of(
    """
    absolutely amazingly awfully completely considerable considerably decidedly deeply effing enormous enormously
    entirely especially exceptional exceptionally extreme extremely fabulously flipping flippin frackin fracking
    fricking frickin frigging friggin fully fuckin fucking fuggin fugging greatly hella highly hugely incredible
    incredibly intensely major majorly more most particularly purely quite really remarkably so substantially
    thoroughly total totally tremendous tremendously uber unbelievably unusually utter utterly very
    """
)
_LESS = words_of(
    """
    almost barely hardly kinda kindof kind-of less little marginal marginally occasional occasionally partly scarce
    scarcely slight slightly somewhat sorta sortof sort-of
    """
)
_DEGREES = dict.fromkeys(_MORE, BOOST) | dict.fromkeys(_LESS, -BOOST)
_DEGREE_PAIRS = dict.fromkeys(("just enough", "kind of", "sort of"), -BOOST)
_PHRASES = {
    "the shit": 3.0,
    "the bomb": 3.0,
    "bad ass": 1.5,
    "bus stop": 0.0,
    "yeah right": -2.0,
    "kiss of death": -1.5,
    "to die for": 3.0,
    "beating heart": 3.5,
}
_PLAIN = str.maketrans({"“": '"', "”": '"', "‘": "'", "’": "'", "—": " - ", "–": " - ", "…": "..."})


def plain(text: str) -> str:
    """Typographic marks as the lexicon's authors knew them: 'didn’t' is a negation too."""
    return text.translate(_PLAIN)


def valence(text: str) -> float:
    """Of a sentence: -1 to 1, to four places."""
    written = [_stripped(token) for token in text.split()]
    words = [word.lower() for word in written]
    values = lexicon()
    mixed = 0 < sum(map(str.isupper, written)) < len(written)
    felt = [
        (place, _value(words, written, place, mixed))
        for place, word in enumerate(words)
        if word in values and word not in _DEGREES and not (word == "kind" and words[place + 1 : place + 2] == ["of"])
    ]
    if "but" in words:
        felt = _weighed(felt, words.index("but"))
    total = sum(value for _, value in felt)
    emphasis = _emphasis(text)
    total += emphasis if total > 0 else -emphasis if total < 0 else 0.0
    return round(total / sqrt(total * total + ALPHA), 4)


def _stripped(token: str) -> str:
    """Without the marks round it, unless it is all marks, and so perhaps a face."""
    stripped = token.strip(punctuation)
    return stripped if len(stripped) > 2 else token


def _value(words: Sequence[str], written: Sequence[str], place: int, mixed: bool) -> float:
    """Of one word of the lexicon, by the words round it."""
    values = lexicon()
    value = _after_no(words, place)
    if mixed and written[place].isupper():
        value += CAPITALS if value > 0 else -CAPITALS
    for back in range(1, min(place, 3) + 1):
        if words[place - back] not in values:
            value += _degree(written[place - back], value, mixed) * FADING[back - 1]
            value = _negated(value, words, place, back)
            if back == 3:
                value = _idiom(value, words, place)
    if place and words[place - 1] == "least" and not (place > 1 and words[place - 2] in ("at", "very")):
        value *= NEGATED
    return value


def _after_no(words: Sequence[str], place: int) -> float:
    """'No' before a word turns it round, and has no value of its own there."""
    values = lexicon()
    value = values[words[place]]
    near, far = words[max(0, place - 2) : place], words[max(0, place - 3) : max(0, place - 2)]
    if "no" in near or ("no" in far and near[-1] in ("or", "nor")):
        return value * NEGATED
    return 0.0 if words[place] == "no" and place + 1 < len(words) and words[place + 1] in values else value


def _degree(word: str, value: float, mixed: bool) -> float:
    degree = _DEGREES.get(word.lower(), 0.0)
    if degree and value < 0:
        degree = -degree
    if degree and mixed and word.isupper():
        degree += CAPITALS if value > 0 else -CAPITALS
    return degree


def _negated(value: float, words: Sequence[str], place: int, back: int) -> float:
    word, between = words[place - back], words[place - back + 1 : place]
    if back == 2 and word == "never" and between[0] in ("so", "this"):
        return value * NEVER_SO
    if back == 3 and ((word == "never" and between[0] in ("so", "this")) or between[1] in ("so", "this")):
        return value * NEVER_SO
    if word == "without" and "doubt" in between:
        return value
    return value * NEGATED if word in _NEGATIONS or "n't" in word else value


def _idiom(value: float, words: Sequence[str], place: int) -> float:
    """Phrases that mean other than their words; called where three words stand before."""
    last = words[place - 3 : place + 1]
    spans = (last[2:], last[1:], last[1:3], last[:3], last[:2])
    found = [_PHRASES[phrase] for phrase in map(" ".join, spans) if phrase in _PHRASES]
    value = found[0] if found else value
    for ahead in (2, 3):
        if place + ahead <= len(words):
            value = _PHRASES.get(" ".join(words[place : place + ahead]), value)
    for pair in (last[:2], last[1:3]):
        value += _DEGREE_PAIRS.get(" ".join(pair), 0.0)
    return value


def _weighed(felt: Sequence[tuple[int, float]], but: int) -> list[tuple[int, float]]:
    """What follows 'but' counts more. Of equal values the first is changed, as in the reference implementation."""
    found = list(felt)
    for place in range(len(found)):
        value = found[place][1]
        first = next(number for number, (_, other) in enumerate(found) if other == value)
        at = found[first][0]
        found[first] = (at, value * BUT[at > but])
    return found


def _emphasis(text: str) -> float:
    asked = text.count("?")
    questions = (asked * ASKED if asked <= ASKED_MOST else ASKED_MANY) if asked > 1 else 0.0
    return min(text.count("!"), EXCLAIMED_MOST) * EXCLAIMED + questions
