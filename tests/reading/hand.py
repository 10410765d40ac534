"""Analysed text by hand: grammar enough for the sentences of these tests, and no model.

A capital in the middle of a sentence, or a name given beside the text, is a name; words of `VERBS` are verbs; a
name, noun or pronoun right before a verb, or right after one of speech, is its subject.
"""

import re
from collections.abc import Iterable

from afterdraft.reading.analysed import Analysed
from afterdraft.reading.facts import SceneFacts
from afterdraft.reading.lexicon import FEELING, ROLES, SPEECH
from afterdraft.reading.scene import scene_facts
from afterdraft.reading.speech_words import RARER

VERBS = (
    SPEECH
    | RARER
    | FEELING
    | {"came", "went", "turned", "looked", "sat", "stood", "is", "was", "smiled", "nodded", "rose"}
)
WORD = re.compile(r"\w+(?:[-]\w+)*\.(?=\s[A-Z])|\w+(?:[’']\w+)?|[^\w\s]")
POINTED = {"Mr.", "Mrs.", "Dr.", "Rev."}
NOMINATIVE = {"he", "she", "i"}


def analysed(text: str) -> Analysed:
    """One paragraph."""
    words, starts = [], []
    for match in WORD.finditer(text):
        word = match.group()
        if word.endswith(".") and len(word) > 1 and word not in POINTED:
            word = word[:-1]
        words.append(word)
        starts.append(match.start())
        if word != match.group():
            words.append(".")
            starts.append(match.end() - 1)
    pos = [_pos(word) for word in words]
    deps, heads = _subjects(words, pos)
    sentences, number = [], 0
    for word in words:
        sentences.append(number)
        number += word in ".!?"
    return Analysed(
        text, tuple(words), tuple(starts), tuple(pos), tuple(deps), tuple(heads), tuple(sentences), ("",) * len(words)
    )


def scene(*paragraphs: str) -> SceneFacts:
    """The facts of a scene of these paragraphs."""
    return scene_facts(analysed(text) for text in paragraphs)


def scenes(texts: Iterable[Iterable[str]]) -> list[SceneFacts]:
    return [scene(*paragraphs) for paragraphs in texts]


def _pos(word: str) -> str:
    small = word.lower()
    if small in VERBS and word[0].islower():
        return "VERB"
    if small in ROLES:
        return "NOUN"
    if small in NOMINATIVE or small in ("him", "her", "his", "my", "me"):
        return "PRON"
    if word[0].isupper():
        return "PROPN"
    return "ADJ" if word.isalpha() and small not in ("the", "a", "an", "and") else "PUNCT"


def _subjects(words: list[str], pos: list[str]) -> tuple[list[str], list[int]]:
    deps, heads = ["dep"] * len(words), list(range(len(words)))
    for verb in (place for place, tag in enumerate(pos) if tag == "VERB"):
        before, after = verb - 1, verb + 1
        if before >= 0 and pos[before] in ("PROPN", "NOUN", "PRON"):
            deps[before], heads[before] = "nsubj", verb
        elif words[verb] in SPEECH:
            while after < len(words) and words[after].lower() in ("the", "old", "young", "poor"):
                after += 1
            while after + 1 < len(words) and pos[after] == pos[after + 1] == "PROPN":
                heads[after], after = after + 1, after + 1
            if after < len(words) and pos[after] in ("PROPN", "NOUN", "PRON"):
                deps[after], heads[after] = "nsubj", verb
    return deps, heads
