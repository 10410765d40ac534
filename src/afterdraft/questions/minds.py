"""Where the telling, outside speech, says what somebody thinks, feels or perceives, and how plainly."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from afterdraft.questions.question import Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.reading.facts import Mention
from afterdraft.reading.lexicon import words_of
from afterdraft.whole.book import genders
from afterdraft.whole.tellers import told_in
from afterdraft.whole.traits_pronouns import antecedents
from afterdraft.whole.turns import meant

SHORT, SHORTEST = 5, 4  # words of a sentence below which it is a pause in talk: 'She thought.'; and of a deep one
_DEEP = words_of(
    """
    wondered wondering wished wishing remembered dreaded longed longing regretted hoped hoping doubted feared knew
    suspected despised envied
    """
)  # nobody sees these done
_THINKS = _DEEP | words_of(
    """
    thought thinking believed believe think know supposed realised realized decided guessed imagined recalled understood
    """
)
_VERB = re.compile(
    r"\s+(?:(?:had|could|would|did|never|not|was|were|\w+ly|still|only|also|been|even|now|always|just|long|again|then)"
    r"\s+){0,3}(\w+)"
)
_FELT = re.compile(
    r"\s+(?:had\s|\w+ly\s|never\s)?felt\s(?:a|an|no|nothing|that|himself|herself|suddenly|very|so|sorry|sure|ashamed"
    r"|proud|guilty|angry|happy|sad|tired|uneasy|relieved|sick|how)\b"
)
_INWARD = re.compile(
    r"\b(?:inwardly|secretly|privately|in (?:his|her) (?:own )?(?:heart|soul|mind)|at heart)\b", re.IGNORECASE
)
_SEEMED = re.compile(r"\b(?:seemed|appeared|occurred)\sto\s$")
_SHOWN = re.compile(
    r"\b(?:as if|as though|like|seem(?!ed to)\w*|evident\w*|appear\w*|look\w*|perhaps|must have|no doubt|plain\w*"
    r"|clear\w*|if|said|says|told|tells|asked|replied|answered|explained|admitted|confessed|because|how|whether"
    r"|so that)\b"
)
_ASKED = re.compile(r"\b(?:wondered|wondering|knew|doubted)\s(?:how|whether|if|why)\b")
_TOUCHED = re.compile(r"\s(?:had\s)?thought\sit\sover\b")
_WITHIN = re.compile(
    r"(?i:\b(?:that|whether|if|who|whom|whose|what|how|why|because|than|wherever)\b)"
    r"|^(?:Did|Does|Do|Had|Has|Was|Were|Would|Could)\b"
)  # before the thought in its sentence: it lies within another's thought, a question, or what somebody does about it
_GUESSED = re.compile(r"\b(?:knew|despised|envied)\b")  # by an I, of others: one sees as much
_TELLER = re.compile(r"\b(?:I|me|my|we|us|our)\b")


@dataclass(frozen=True, slots=True)
class Thought:
    person: str
    mention: Mention
    inward: bool  # thought or felt, and not only seen or heard
    deep: bool  # what nobody could have seen
    sure: float  # of who


def thoughts(seen: Seen, number: int) -> Iterator[Thought]:
    """Of a scene, in order, where it is known well enough whose they are."""
    scene, cast = seen.facts[number], seen.book.cast
    people = meant(scene, told_in(scene, cast))
    guesses = antecedents(scene, people, seen.book.spoken[number], genders(cast.people))
    for one, person, guess in zip(scene.mentions, people, guesses, strict=True):
        if one.spoken or one.kind == "role" or not (person or guess):
            continue
        deep, inward = _how(seen, number, one)
        who, sure = (person, 1.0) if person else guess or ("", 0.0)
        if inward or one.feels:
            yield Thought(who, one, inward, deep, sure)


def _how(seen: Seen, number: int, one: Mention) -> tuple[bool, bool]:
    """Whether it is deep, and whether it is inward at all."""
    text = seen.texts[number][one.paragraph]
    if _SEEMED.search(text[: one.start]):
        return True, True
    match = _VERB.match(text, one.end) if one.subject else None
    if match is None:
        return False, False
    verb = match[1]
    start, end = sentence(text, one.start, one.end)
    deep = verb in _DEEP or bool(_FELT.match(text, one.end)) or bool(_INWARD.search(text, start, end))
    return deep, deep or verb in _THINKS


def is_known(seen: Seen, number: int, one: Thought, *, told_by_i: bool) -> bool:
    """Whether the thought is told as known, and not as shown, guessed or heard: who tells as I says most so."""
    span = told(seen, number, one.mention)
    said = span.quote
    if _WITHIN.search(said[: one.mention.start - span.start]) or said.endswith("?"):
        return False
    short = len(said.split()) < (SHORTEST if one.deep else SHORT)
    if short or said.startswith("If ") or _TOUCHED.match(seen.texts[number][one.mention.paragraph], one.mention.end):
        return False
    if not told_by_i:
        return not said.startswith(("“", "‘", '"'))
    return one.deep and not any((is_shown(said), _TELLER.search(said), _GUESSED.search(said)))


def is_shown(said: str) -> bool:
    """Whether words of the sentence say that it was seen or heard."""
    return bool(_SHOWN.search(_ASKED.sub("", said)))


def told(seen: Seen, number: int, one: Mention) -> Span:
    """The sentence that tells it."""
    return seen.span(number, one.paragraph, *sentence(seen.texts[number][one.paragraph], one.start, one.end))
