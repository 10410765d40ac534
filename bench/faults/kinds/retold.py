"""A sentence or two of narration that are told again, reworded, in another scene."""

import re
from collections.abc import Iterator
from difflib import SequenceMatcher
from random import Random

from bench.faults.listed import listed
from bench.faults.planted import Edit, Fault, Scenes, Shown
from bench.faults.prose import ENDS, WORD

WORDS = range(18, 46)  # of what is told again
APART = 40  # paragraphs between the two
RUN = 13  # words without a change, at most
CHANGED = 4  # words at least
OTHERWISE = dict(
    one.split("/")
    for one in listed(
        """
    which/that upon/on began/started large/big little/small whilst/while towards/toward among/amongst very/most
    though/although because/since perhaps/maybe shut/closed glanced/looked replied/answered commenced/began also/too
    nearly/almost entirely/wholly quite/altogether great/big often/frequently afterwards/later before/until like/as
    every/each many/several was/had_been were/had_been seemed/appeared must/had_to could/was_able_to
    nothing/not_a_thing through/by into/in from/out_of beneath/under above/over beside/by across/over old/aged
    house/home road/way evening/night sea/water woman/lady man/fellow people/folk children/little_ones
    said/remarked walked/went turned/swung stood/was_standing sat/was_sitting lay/was_lying
    the/that a/some his/the her/the their/the its/the my/the our/the this/that these/those
        """
    )
)
OPENS = (
    "It was a fact that",
    "The truth is that",
    "Everybody knew that",
    "It must be said that",
    "One may say that",
    "It occurred to everybody there that",
)
_LOWER = frozenset(listed("The A An He She It They We His Her Their There This In At On For But And"))
_SPOKEN = re.compile(r"[“”‘\"\n*_—;:?!]")
_ASIDE = re.compile(r",\s[a-z][^,.]{8,60},")
_BACK = re.compile(r"\b(?:I|you|again|said|now|still|another|same|Chapter)\b")


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    places = [(number, at) for number, scene in enumerate(scenes) for at in range(len(scene))]
    for index in random.sample(range(len(places)), len(places)):
        number, at = places[index]
        told = _told(scenes[number][at])
        later = [place for place in places[index + APART :] if place[0] > number and _told(scenes[place[0]][place[1]])]
        again = _reworded(told, random) if told and later else ""
        if not again or sum(text.count(told) for text in scenes[number]) > 1:
            continue
        scene, paragraph = random.choice(later)
        becomes = f"{scenes[scene][paragraph]} {again}"
        yield Fault("retold", (Edit(scene, paragraph, (becomes,)),), (Shown(scene, again), Shown(number, told)))


def _told(text: str) -> str:
    """The first sentences of a paragraph that are long enough; "" where somebody speaks in it, or there are none."""
    if _SPOKEN.search(text):
        return ""
    for end in ENDS.finditer(text):
        told = text[: end.end()]
        if len(told.split()) in WORDS:
            return "" if _BACK.search(told) else told
    return ""


def _reworded(told: str, random: Random) -> str:
    """With some of its small words changed, an aside left out, and something before it."""
    aside = _ASIDE.search(told)
    said = told[: aside.start()] + told[aside.end() :] if aside and random.random() < 0.5 else told
    said = re.sub(r"\s\w+ly\b(?!,)", lambda one: "" if random.random() < 0.7 else one[0], said)
    said = WORD.sub(lambda one: _other(one[0], random), said)
    if said.split()[0] in _LOWER:
        said = f"{random.choice(OPENS)} {said[0].lower()}{said[1:]}"
    was, now = (WORD.findall(text.lower()) for text in (told, said))
    same = SequenceMatcher(None, was, now, autojunk=False).get_matching_blocks()
    kept = sum(block.size for block in same)
    fits = len(was) - kept >= CHANGED and max(block.size for block in same) <= RUN
    return said if fits else ""


def _other(word: str, random: Random) -> str:
    return OTHERWISE[word].replace("_", " ") if word in OTHERWISE and random.random() < 0.5 else word
