"""Which thoughts of others stand within a scene, among those of the one whose scene it is."""

import re
from collections.abc import Mapping
from itertools import groupby
from operator import itemgetter

from afterdraft.questions.minds import SURE, Thought
from afterdraft.questions.minds_scene import OWN, MindScene
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.reading.facts import Gender, Mention
from afterdraft.reading.lexicon import ROLES, TITLES

AROUND, ALL_BUT = (
    3,
    1,
)  # thoughts before and behind another's; how many of them may be another's too; on the tuning half
BESIDE, FAR = 4, 12  # paragraphs that are not all speech, and at all, from a stray to the one whose scene it is
_INNER = re.compile(r"\b(?:would|could|might|should|must|had not)\b")
_OF: Mapping[Gender, re.Pattern[str]] = {
    "m": re.compile(r"\b(?:he|him|his)\b", re.IGNORECASE),
    "f": re.compile(r"\b(?:she|her|hers)\b", re.IGNORECASE),
    "": re.compile(r"\b(?:he|him|his|she|her|hers)\b", re.IGNORECASE),
}


def strays_in(scene: MindScene) -> list[Thought]:
    """Thoughts that surely are others', among thoughts of the one whose scene it is."""
    return [
        one
        for place, (one, its) in enumerate(scene.pairs())
        if its == "other"
        and one.is_bare
        and one.mention.kind != "self"
        and not one.mention.form.endswith("self")
        and (one.plain or not scene.tells)  # an I that is guessed at may be 'he' in a tale within the tale
        and (scene.marked or (_is_alone(scene, place) and not _is_passage(scene, place)))
    ]


def _is_alone(scene: MindScene, place: int) -> bool:
    """Whether nearly all thoughts around it are of the one whose scene it is; what it goes on to say is not counted."""
    here = scene.minds[place]
    sides = [
        (at, its)
        for at, (one, its) in enumerate(scene.pairs())
        if (its == "own" or one.known) and (one.person, one.mention.paragraph) != (here.person, here.mention.paragraph)
    ]
    before, behind = ([its for at, its in sides if at < place], [its for at, its in sides if at > place])
    around = [*before[-AROUND:], *behind[:AROUND]]
    return around.count("own") >= max(OWN, len(around) - ALL_BUT)


def _is_passage(scene: MindScene, place: int) -> bool:
    """Whether it is one of several with which a scene opens or closes: then it is not the one's yet, or no longer."""
    inner = [(at, its == "own") for at, (one, its) in enumerate(scene.pairs()) if one.inward or its == "own"]
    runs = [(own, [at for at, _ in run]) for own, run in groupby(inner, key=itemgetter(1))]
    return any(not own and len(run) > 1 and place in run for own, run in (runs[0], runs[-1]))


def is_within(seen: Seen, scene: MindScene, stray: Thought) -> bool:
    """Whether the one whose scene it is thinks before it, first of all, is named or meant right beside it and goes on
    behind it, and nothing behind it goes on with the other: else the telling has turned."""
    if scene.tells:
        return True
    owners = zip(seen.facts[scene.number].mentions, seen.owners(scene.number), strict=True)
    own = [one for one, owner in owners if owner and owner[0] == scene.viewpoint and owner[1] >= SURE]
    beside = any(_is_beside(seen, scene.number, stray.mention, one) for one in own)
    thinks = [_place(one) for one, its in scene.pairs() if its == "own"]
    goes_on = any(at > _place(stray) for at in (*thinks, *((one.paragraph, one.start) for one in own)))
    return beside and goes_on and _is_led(scene, stray) and not _goes_on(seen, scene.number, stray)


def _is_led(scene: MindScene, stray: Thought) -> bool:
    own = [_place(one) for one, its in scene.pairs() if its == "own"]
    other = [_place(one) for one in scene.minds if one.person == stray.person and one.plain]
    return bool(own) and own[0] < min([*other, _place(stray)])


def _place(thought: Thought) -> tuple[int, int]:
    return thought.mention.paragraph, thought.mention.start


def _is_beside(seen: Seen, number: int, stray: Mention, own: Mention) -> bool:
    """Whether the telling has the viewpoint a few paragraphs off, and not only in what the other thinks."""
    start, end = sentence(seen.texts[number][stray.paragraph], stray.start, stray.end)
    apart = own.paragraph != stray.paragraph or not start <= own.start < end
    first, last = sorted((own.paragraph, stray.paragraph))
    told = sum(one.words > one.spoken for one in seen.facts[number].counted[first + 1 : last])
    return apart and not own.spoken and (told < BESIDE and last - first <= FAR)


def _goes_on(seen: Seen, number: int, stray: Thought) -> bool:
    """Whether the sentence behind tells what the other would or had: 'He would not have liked it.'"""
    mind = stray.mention
    text = seen.texts[number][mind.paragraph]
    end = sentence(text, mind.start, mind.end)[1]
    behind = text[slice(*sentence(text, end + 1, end + 1))] if end + 1 < len(text) else ""
    return bool(_INNER.search(behind) and _OF[stray.gender].search(behind))


def is_namesake(seen: Seen, scene: MindScene, stray: Thought) -> bool:
    """Whether both go by one surname, and may be one man who is known by two names."""
    one, other = (set(seen.name(who).split()) for who in (scene.viewpoint, stray.person))
    return bool({word for word in one & other if word.lower().rstrip(".") not in TITLES | ROLES})
