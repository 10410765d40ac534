"""'He' for the I that tells a scene: sentences without an I, full of a 'he' whom nobody near may be."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby, product
from typing import Literal

from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence, sentences
from afterdraft.questions.stray_i import is_read_out
from afterdraft.reading.facts import Gender, Mention
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.trait_words import KINSHIP, PEOPLE, TRADES
from afterdraft.whole.book import genders
from afterdraft.whole.turns import GENDERS, meant

MANY = 3  # times that 'he', 'him' or 'his' stands there at least
NEAR = 6  # paragraphs before, in which somebody stands who may be meant
AROUND = 2  # paragraphs on either side, one of which says I, where an I tells
_MINE = re.compile(r"\b(?:I|me|my|mine|myself|we|us|our|ours)\b", re.IGNORECASE)
_SOMEBODY = PEOPLE | TRADES | KINSHIP | words_of("one other others another first second third fourth fifth sixth last")
_WORD = re.compile(r"\w+")
_NOUN = re.compile(r"\b(?:the|a|an|this|that|some|any)\s(?:\w+\s)?\w+(?:man|woman|body|boy|girl|ist)\b", re.IGNORECASE)
_How = Literal["he", "acts", "named", "said"]


@dataclass(frozen=True, slots=True)
class Run:
    """Sentences of a paragraph, from the first 'he' to the last."""

    paragraph: int
    start: int
    end: int
    said: str  # the first of them: he, his
    times: int


@dataclass(frozen=True, slots=True)
class _Met:
    """Somebody in a paragraph; `gender` is "" where it may be either."""

    paragraph: int
    start: int
    gender: Gender
    how: _How


def he_for_i(seen: Seen, number: int) -> Iterator[Run]:
    """Of a scene that an I tells; 'she' where that may be her."""
    scene = seen.facts[number]
    narrator = seen.book.told[number].narrator
    own = narrator.gender if narrator else ""
    met = list(_met(seen, number))
    talked = {quote.paragraph for quote in scene.quotes}
    for place, text in enumerate(seen.texts[number]):
        silent = not place or place in talked or (number, place) in seen.set_in or is_read_out(seen, number, place)
        runs = () if silent or not _is_mine(seen.texts[number], place) else _without_i(text)
        for run, gender in product(runs, (own,) if own in GENDERS else GENDERS):
            his = [
                one
                for one in scene.mentions
                if (one.paragraph, one.kind, one.gender) == (place, "pronoun", gender) and one.start in run
            ]
            asks = bool(his) and "?" in text[his[0].start : run.stop]  # who wonders about somebody means somebody else
            if len(his) >= MANY and not asks and not _is_met(seen, number, his[MANY - 1], run, met):
                yield Run(place, *sentence(text, his[0].start, his[-1].end), his[0].form, len(his))


def _is_mine(texts: Sequence[str], place: int) -> bool:
    """Whether paragraphs before it and behind say I."""
    before, behind = texts[max(0, place - AROUND) : place], texts[place + 1 : place + 1 + AROUND]
    return all(any(map(_MINE.search, side)) for side in (before, behind))


def _without_i(text: str) -> Iterator[range]:
    """Sentences that follow each other, none with an I or a we in it."""
    for without, run in groupby(sentences(text), key=lambda one: not _MINE.search(text, *one)):
        if without:
            told = list(run)
            yield range(told[0][0], told[-1][1])


def _met(seen: Seen, number: int) -> Iterator[_Met]:
    """Who is named, called 'he', or speaks in a scene, but for the I that tells."""
    scene, cast = seen.facts[number], seen.book.told[number]
    known = genders(cast.people)
    narrator = cast.narrator
    for one, person in zip(scene.mentions, meant(scene, cast), strict=True):
        if one.kind != "self":
            how: _How = "he" if one.kind == "pronoun" else "acts" if one.subject and not one.spoken else "named"
            yield _Met(one.paragraph, one.start, known.get(person or "", "") or one.gender, how)
    for said in seen.book.spoken[number]:
        if not narrator or said.speaker != narrator.id:
            quote = scene.quotes[said.quote]
            yield _Met(quote.paragraph, quote.start, known.get(said.speaker or "", ""), "said")


def _is_met(seen: Seen, number: int, he: Mention, run: range, met: Sequence[_Met]) -> bool:
    """Whether somebody may be this 'he' of a run: of the cast, or a man, the second, the policeman; or whether it is
    told in the present, as of what is always so."""
    text, verbs = seen.texts[number][he.paragraph], seen.facts[number].counted[he.paragraph]
    somebody = not _SOMEBODY.isdisjoint(_WORD.findall(text[: he.start].lower())) or _NOUN.search(text, 0, he.start)
    if somebody or verbs.past <= verbs.present:
        return True
    before = range(run.start, he.start)
    return any(_may_be(one, he.paragraph, before) for one in met if one.gender in ("", he.gender))


def _may_be(one: _Met, place: int, before: range) -> bool:
    """Whether somebody was met in that paragraph before its run, or named at its beginning, or met in those before."""
    if one.paragraph == place:
        return one.start < before.start or (one.how in ("acts", "named") and one.start < before.stop)
    return place - NEAR <= one.paragraph < place
