"""How much says that a paragraph in the present, where all around it is told in the past, tells what somebody does
there and then: an essay, a custom or a writer's aside does not.

The signs and their points are our own: chosen on 32 novels, on some 600 paragraphs put into the present and 260 that
their authors wrote so, after a regression on them whose novels were left out in turn.
"""

import re
from collections.abc import Sequence

from afterdraft.questions.deeds import DOING, deeds, mine, of_others, others_act, somebody_acts
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentences
from afterdraft.reading.counted import Counted
from afterdraft.reading.facts import SceneFacts
from afterdraft.whole.evidence import told_by_i

ENOUGH, WHERE_NOBODY_ACTS = 4.5, 0.5  # points, and how many more
FEW = 4  # verbs in the present of such a paragraph where somebody acts, for each in the past
TELLERS_FEW = 8  # likewise where an I tells
LEAST = 2  # verbs there
PLENTY = 3  # where nobody acts but an I, who may speak of the time of telling
ROUND, CLOSE = 8, 3  # paragraphs on either side, and before it where the nearest verbs are looked for
AROUND = 2  # verbs in the past on either side for each in the present
MANY, LONG = 4, 120  # verbs in the present, words
MOST = 3  # signs of one kind that count
HEADING = 12  # words of the date over a letter, with its place; a paragraph of more goes on with the story
SIGNED = 2  # paragraphs from the words of a letter to its date and its signature
DIARY = 0.1  # share of a book's scenes that are headed by a date
NONE_PAST, NEAR_PAST, ALL_PAST = 2.0, 1.5, 1.5  # points: no verb in the past, the one before is in it, all around are
BEFORE_IS_PAST, AROUND_IS_PAST, ONLY_IS = 0.75, 0.9, 0.6  # shares of verbs
_NOT_TOLD = re.compile(
    r"\b(?:as\sI\swrite|thought\s(?:I|he|she)|I(?:[’']m|\sam|\sam\snow)\swriting|I\s(?:now\s)?write\s(?:this|these|of|now|down|it|that)|I\snow\sknow|have\sI|(?:the|present)\swriter|(?:the|my|dear|gentle)\s(?:\w+\s)?readers?(?![’'])|readers"
    r"|it\sis\s(?:well|needless|worth|necessary|proper|only\sfair|to\sbe)|there\s(?:is|are)\s(?:an?\s)?(?:kind|sort)s?\sof|shall|let\s(?:us|me|it)|thee|thou|hath|doth"
    r"|your|yourself|ye|please|[a-z]{2,}(?<!b)(?<!te)(?<!ti)(?<!n)eth)\b|(?:^|[.;!?]\s)Let\b",
    re.IGNORECASE,
)  # the teller speaks, or what is to be is spoken of, or a sermon
_YOU = re.compile(r"(?<!\bas\sif\s)(?<!\bthe\sway\s)(?<!\bthe\sway\sthat\s)\b(?:you|yourself)\b", re.IGNORECASE)
_YOU_DO = re.compile(r"(?:^|[.;!?—]\s*)(?:\w+,?\s){0,2}you\b", re.IGNORECASE)  # 'If you let a boat lie'
_WE_TURN = re.compile(r"\bwe\s(?:now\s)?(?:come|turn|return|pass|leave|follow)\b", re.IGNORECASE)  # with the reader
_PAST = re.compile(r"\b(?:was|were|had|did)\b")
_SET_IN = re.compile(r"^\s*[*_\[(‘“'\"—]|,\s*$")
_NOW = re.compile(r"\b(?:now|here|yet|just|to-?day|to-?night|at\spresent|already)\b", re.IGNORECASE)
_SOMEBODY = re.compile(r"\b(?:he|him|his|himself|she|her|herself)\b", re.IGNORECASE)
_ANYONE_THERE = re.compile(r"\b(?:I|me|my|we|us|our|they|them|their|he|him|his|she|her)\b", re.IGNORECASE)
_CUSTOM = re.compile(r"[?!]|\b(?:each(?!\sother)|every|always|sometimes|for\s(?:example|instance))\b", re.IGNORECASE)
_TO_BE = re.compile(r"\b(?:will|must|ought|should|would|let)\b")
_AGAINST = (
    re.compile(r"\b(?:I|you|we|it|that|there|what|who|here|let)[’'](?:s|ll|re|ve|m|d)\b", re.IGNORECASE),  # a voice
    re.compile(r"[?!]"),
    _TO_BE,
    re.compile(r"\b(?:kind|sort)s?\sof\s(?:an?\s)?(?:man|men|woman|women|people|person)\b", re.IGNORECASE),
    re.compile(
        r"(?:^|[.;!?—:]\s+)(?:(?:But|And|For|Yet|Now|Then|Thus|When|If|As|Besides)[, ]+)?(?:an?|every|any|no|those|such"
        r"|few|many|most|some|all|men|women|people|one(?!\sof)|whatever|whoever|anybody)\b"
        r"|(?<!\blike\s)(?<!\bthan\s)\b(?:an?|every|any|each)\s(?:[\w-]+\s)?[\w-]+[’']s\b",
        re.IGNORECASE,
    ),  # of anybody, or of none in particular
)
_ANYBODY = re.compile(
    r"\b(?:mankind|humanity|human|nature|world|(?:the|an?|every)\smind|species|(?<!-)one\s(?:can|may|must|might|is|has|does|never|always|\w+s)"
    r"|(?:(?:of|that|as|for|most|all|some|many|few|by|to|with|than|like|between)\s)(?:men|women|people|persons?)"
    r"|sometimes|often|oftener|usually|as\sa\srule|in\sgeneral"
    r"|(?:an?|any|every|no)\s(?:[\w-]+\s)?(?:man|woman|lady|gentleman|girl|boy|author|traveller|lover|sailor|house))\b",
    re.IGNORECASE,
)


def is_told_now(seen: Seen, number: int, place: int) -> bool:
    """Whether the paragraph, which holds no speech, tells of somebody in the present where the scene is in the past."""
    text, scene = seen.texts[number][place], seen.facts[number]
    one = scene.counted[place]
    acting = others_act(scene, place, text) or mine(scene, place, text) >= LEAST
    verbs = max(one.present, deeds(scene, place, text))  # some of which the pipeline takes for nouns
    if not (place or goes_on(seen, number)) or (verbs < LEAST if acting else one.present < PLENTY):
        return False
    if FEW * one.past > verbs or _is_the_tellers(scene, text, acting=acting):
        return False
    if one.past and (
        (told_by_i(scene) and TELLERS_FEW * one.past > verbs) or _PAST.search(text[slice(*sentences(text)[0])])
    ):
        return False
    if not place and not _is_anyone_there(scene, place, text):
        return False  # it sets the scene
    if place and seen.texts[number][place - 1].rstrip().endswith((":", ":—")):
        return False
    past, present = _sums([one for side in beside(seen, number, place) for one in side])
    if past < max(1, AROUND * present):
        return False
    nobody = not somebody_acts(scene, place, text)
    if text.count("!") > 1 or (nobody and (_TO_BE.search(text) or _CUSTOM.search(text))):
        return False
    diary = is_diary(seen)
    found = points(seen, number, place)
    more = diary + WHERE_NOBODY_ACTS * nobody
    return not (diary and _NOW.search(text)) and found >= ENOUGH + more


def _is_the_tellers(scene: SceneFacts, text: str, *, acting: bool) -> bool:
    """Whether the teller speaks there; where somebody acts, one 'you' may be anybody: 'as far as you can throw it'."""
    said = _NOT_TOLD.search(text) or _SET_IN.search(text) or _YOU_DO.search(text)
    return bool(said) or len(_YOU.findall(text)) > acting or bool(_WE_TURN.search(text) and not told_by_i(scene))


def stands_alone(seen: Seen, number: int, place: int) -> bool:
    """Whether what is told right before the paragraph and right behind it is not in the present as well: several in a
    row, or the end of a book, are told so on purpose."""
    before, behind = beside(seen, number, place)
    for side in (before[-CLOSE:][::-1], behind[:CLOSE]):
        near = next((one for one in side if one.past or one.present >= LEAST), None)
        if near and near.present > near.past:
            return False
    return not _is_of_a_letter(seen, number, place)


def _is_of_a_letter(seen: Seen, number: int, place: int) -> bool:
    """Whether a date or a name by itself stands over or under it."""
    texts = seen.texts[number]
    counted = seen.facts[number].counted
    heads = {one.paragraph for one in seen.facts[number].times if one.dateline}
    heads = {place for place in heads if counted[place].words <= HEADING}
    near = range(max(0, place - SIGNED), min(len(texts), place + SIGNED + 1))
    return any(one in heads or texts[one].isupper() for one in near if one != place)


def goes_on(seen: Seen, number: int) -> bool:
    """Whether the scene goes on with the chapter of the one before."""
    return 0 < number < len(seen.heads) and not seen.heads[number]


def beside(seen: Seen, number: int, place: int) -> tuple[list[Counted], list[Counted]]:
    """A few paragraphs before it and behind it, into the scenes before and behind where its own is short and they are
    of its chapter."""
    counted = seen.facts[number].counted
    before, behind = [*counted[max(0, place - ROUND) : place]], [*counted[place + 1 : place + 1 + ROUND]]
    if len(before) < ROUND and goes_on(seen, number):
        before = [*seen.facts[number - 1].counted[len(before) - ROUND :], *before]
    if len(behind) < ROUND and goes_on(seen, number + 1):
        behind += seen.facts[number + 1].counted[: ROUND - len(behind)]
    return before, behind


def is_diary(seen: Seen) -> bool:
    headed = sum(
        any(it.dateline and it.start <= 1 >= it.paragraph and not it.spoken for it in one.times) for one in seen.facts
    )
    return headed > DIARY * len(seen.facts)


def points(seen: Seen, number: int, place: int) -> float:
    scene, text = seen.facts[number], seen.texts[number][place]
    one = scene.counted[place]
    before, behind = beside(seen, number, place)
    last = next((it for it in before[-CLOSE:][::-1] if it.past + it.present), None)
    only_is = len(re.findall(r"\b(?:is|are)\b", DOING.sub("", text))) >= ONLY_IS * one.present
    return (
        NONE_PAST * (one.past == 0)
        + NEAR_PAST * (last is None or share([last]) >= BEFORE_IS_PAST)
        + ALL_PAST * (share([*before, *behind]) >= AROUND_IS_PAST)
        + (one.present >= MANY)
        + min(mine(scene, place, text), MOST)
        + min(of_others(scene, place, text), MOST) / 2
        + min(len(_SOMEBODY.findall(text)), MOST) / 2
        - sum(bool(sign.search(text)) for sign in _AGAINST)
        - bool(_YOU.search(text))
        - bool(_ANYBODY.search(text)) / 2
        - only_is
        - (not _is_anyone_there(scene, place, text))
        - (one.words > LONG)
    )


def _is_anyone_there(scene: SceneFacts, place: int, text: str) -> bool:
    named = any(it.kind == "name" for it in scene.mentions if it.paragraph == place and not it.spoken)
    return named or bool(_ANYONE_THERE.search(text))


def share(counted: Sequence[Counted]) -> float:
    """Of verbs those in the past."""
    past, present = _sums(counted)
    return past / max(1, past + present)


def _sums(counted: Sequence[Counted]) -> tuple[int, int]:
    return sum(it.past for it in counted), sum(it.present for it in counted)
