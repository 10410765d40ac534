"""How much says that a paragraph in the present, where all around it is told in the past, tells what somebody does
there and then: an essay, a custom or a writer's aside does not.

The signs and their points are our own: chosen on 32 novels, on some 600 paragraphs put into the present and 260 that
their authors wrote so, after a regression on them whose novels were left out in turn.
"""

import re
from collections.abc import Sequence

from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentences
from afterdraft.reading.counted import Counted
from afterdraft.reading.facts import Mention, SceneFacts
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.tense_forms import form
from afterdraft.whole.evidence import told_by_i

ENOUGH, WHERE_NOBODY_ACTS = 4.5, 0.5  # points, and how many more
HAPPENS, FEW = 3, 4  # verbs in the present of such a paragraph where somebody acts, and how many for each in the past
TELLERS_FEW = 8  # likewise where an I tells
LEAST, SURE = 2, 6.5  # verbs there, points from which so few will do
PLENTY = 4  # where nobody acts but an I, who may speak of the time of telling
TOLD = 0.6  # share of a scene's verbs in the past beside it
ROUND, CLOSE = 8, 3  # paragraphs on either side, and before it where the nearest verbs are looked for
AROUND, LEAST_AROUND = 2, 3  # verbs in the past on either side for each in the present, and at all
MANY, LONG = 4, 120  # verbs in the present, words
MOST = 3  # signs of one kind that count
HEADING = 12  # words of the date over a letter, with its place; a paragraph of more goes on with the story
SIGNED = 2  # paragraphs from the words of a letter to its date and its signature
MIXED = 0.1  # share of such a teller's paragraphs in the past that have a deed in the present too; novels have 0.05
NEAR_BY, LEAST_TOLD = 2, 20  # scenes on either side in which that is so, and paragraphs below which it is chance
DIARY = 0.1  # share of a book's scenes that are headed by a date
AT_THE_START = 1  # points more for the first paragraph behind a break, which may set the scene
NONE_PAST, NEAR_PAST, ALL_PAST = 2.0, 1.5, 1.5  # points: no verb in the past, the one before is in it, all around are
BEFORE_IS_PAST, AROUND_IS_PAST, ONLY_IS = 0.75, 0.9, 0.6  # shares of verbs
_NEXT = re.compile(
    r"\s+(?:(?:\w+ly|then|now|still|just|only|also|even|at\s(?:once|last)|all\sat\sonce|soon|again)\s+)?([a-z]+)\b(?![’'])"
)
_NO_VERB = words_of(
    """
    always perhaps else besides sometimes afterwards towards upwards downwards backwards forwards outwards inwards
    ours yours his hers its theirs this thus us yes less across unless alas nevertheless nonetheless likewise
    was is has does 's
    """
)
_THINKS = words_of(
    """
    think know believe suppose confess remember write say hope wish fear doubt mean own understand find see want feel do
    have am need seem like love hate trust assure fancy imagine recollect add quote give tell repeat call admit allow
    grant guess are venture forget were dare
    """
) | {""}  # after an I, of the time of telling
_NOT_TOLD = re.compile(
    r"\b(?:as\sI\swrite|thought\s(?:I|he|she)|I(?:[’']m|\sam|\sam\snow)\swriting|I\s(?:now\s)?write\s(?:this|these|of|now|down|it|that)|I\snow\sknow|have\sI|(?:the|present)\swriter|readers?"
    r"|it\sis\s(?:well|needless|worth|necessary|proper|only\sfair|to\sbe)|there\s(?:is|are)\s(?:an?\s)?(?:kind|sort)s?\sof|shall|let\s(?:us|me|it)|thee|thou|hath|doth"
    r"|(?<!as\sif\s)(?<!the\sway\s)(?<!the\sway\sthat\s)you|your|yourself|ye|please|[a-z]{2,}(?<!b)(?<!te)(?<!ti)(?<!n)eth)\b|(?:^|[.;!?]\s)Let\b",
    re.IGNORECASE,
)  # the teller speaks, or what is to be is spoken of, or a sermon
_PAST = re.compile(r"\b(?:was|were|had|did)\b")
_SET_IN = re.compile(r"^\s*[*_\[(‘“'\"—]|,\s*$")
_NOW = re.compile(r"\b(?:now|here|yet|just|to-?day|to-?night|at\spresent|already)\b", re.IGNORECASE)
_AND = re.compile(r"\band (?:then |now )?([a-z]+)\b")
_THEY = re.compile(r"\b[Tt]hey\s(?:(?:\w+ly|then|now|still|just|only|also|even|both|all)\s)?([a-z]+)\b(?![’'])")
_THING = re.compile(
    r"\b(?:(?:[Tt]he|[Aa]n?|[Hh]is|[Hh]er|[Tt]heir|[Ii]ts|[Mm]y|[Oo]ur)\s(?:[a-z]+\s){1,2}?|(?:[Ii]t|[Ss]omebody|[Nn]obody)\s)([a-z]+s)"
    r"(?=[.,;]|\s(?:up|down|out|off|in|on|at|away|back|over|under|through|into|to|from|by|across|along|round|past|behind"
    r"|against|between|with|an?|the|his|her|their|its|it|him|them|me|us|like|\w+ly|and)\b)"
)  # 'the foremast goes', 'a gull sits on': what follows a verb, and seldom a plural
_SOMEBODY = re.compile(r"\b(?:he|him|his|himself|she|her|herself)\b", re.IGNORECASE)
_ANYONE_THERE = re.compile(r"\b(?:I|me|my|we|us|our|they|them|their|he|him|his|she|her)\b", re.IGNORECASE)
_CUSTOM = re.compile(r"[?!]|\b(?:each|every|always|sometimes|for\s(?:example|instance))\b", re.IGNORECASE)
_TO_BE = re.compile(r"\b(?:will|must|ought|should|would|let)\b")
_AGAINST = (
    re.compile(r"\b(?:I|you|we|it|that|there|what|who|here|let)[’'](?:s|ll|re|ve|m|d)\b", re.IGNORECASE),  # a voice
    re.compile(r"[?!]"),
    _TO_BE,
    re.compile(r"\b(?:kind|sort)s?\sof\s(?:an?\s)?(?:man|men|woman|women|people|person)\b", re.IGNORECASE),
    re.compile(
        r"(?:^|[.;!?—:]\s+)(?:(?:But|And|For|Yet|Now|Then|Thus|When|If|As|Besides)[, ]+)?(?:an?|every|any|no|those|such"
        r"|few|many|most|some|all|men|women|people|one(?!\sof)|whatever|whoever|anybody)\b"
        r"|\b(?:an?|every|any|each)\s(?:[\w-]+\s)?[\w-]+[’']s\b",
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
    acting = _others_act(scene, place, text)
    verbs = max(one.present, _deeds(scene, place, text))  # some of which the pipeline takes for nouns
    if not (place or goes_on(seen, number)) or (verbs < LEAST if acting else one.present < PLENTY):
        return False
    if FEW * one.past > one.present or _NOT_TOLD.search(text) or _SET_IN.search(text):
        return False
    if one.past and (
        (told_by_i(scene) and TELLERS_FEW * one.past > one.present) or _PAST.search(text[slice(*sentences(text)[0])])
    ):
        return False
    if not place and not _is_anyone_there(scene, place, text):
        return False  # it sets the scene
    if place and seen.texts[number][place - 1].rstrip().endswith((":", ":—")):
        return False
    past, present = _sums([one for side in beside(seen, number, place) for one in side])
    others = [it for at, it in enumerate(scene.counted) if at != place]
    if past < max(LEAST_AROUND, AROUND * present) or _share(others) < TOLD:
        return False
    nobody = not somebody_acts(scene, place, text)
    if text.count("!") > 1 or (nobody and (_TO_BE.search(text) or _CUSTOM.search(text))):
        return False
    diary = is_diary(seen)
    found = points(seen, number, place)
    if verbs < HAPPENS and found < SURE:
        return False
    more = diary + WHERE_NOBODY_ACTS * nobody + AT_THE_START * (not place)
    return not (diary and _NOW.search(text)) and found >= ENOUGH + more


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


def mixing(seen: Seen) -> frozenset[int]:
    """Scenes whose teller, there and in those around, goes from one tense to the other all along where the past is
    told: 'He come in and says'."""
    counted = [_mixed(texts, scene) for texts, scene in zip(seen.texts, seen.facts, strict=True)]
    around = [counted[max(0, number - NEAR_BY) : number + NEAR_BY + 1] for number in range(len(counted))]
    return frozenset(
        number
        for number, some in enumerate(around)
        if sum(both for both, _ in some) > MIXED * max(sum(told for _, told in some), LEAST_TOLD)
    )


def _mixed(texts: Sequence[str], scene: SceneFacts) -> tuple[int, int]:
    """Of a scene that tells the past, how many of its paragraphs tell a deed in the present too, and how many there
    are."""
    if _share(scene.counted) < TOLD:
        return 0, 0
    told = [place for place in range(len(texts)) if scene.counted[place].past]
    deeds = {one.paragraph for one in scene.mentions if tells(one) and acts(texts[one.paragraph], one)}
    return len(deeds & {*told}), len(told)


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
    here = [it for it in scene.mentions if it.paragraph == place and not it.spoken]
    before, behind = beside(seen, number, place)
    last = next((it for it in before[-CLOSE:][::-1] if it.past + it.present), None)
    mine = sum(it.kind == "self" and acts_myself(text, it) for it in here)
    others = sum(tells(it) and (acts(text, it) or _many_act(text, it)) for it in here) + _nameless(text)
    only_is = len(re.findall(r"\b(?:is|are)\b", text)) >= ONLY_IS * one.present
    return (
        NONE_PAST * (one.past == 0)
        + NEAR_PAST * (last is None or _share([last]) >= BEFORE_IS_PAST)
        + ALL_PAST * (_share([*before, *behind]) >= AROUND_IS_PAST)
        + (one.present >= MANY)
        + min(mine, MOST)
        + min(others, MOST) / 2
        + min(len(_SOMEBODY.findall(text)), MOST) / 2
        - sum(bool(sign.search(text)) for sign in _AGAINST)
        - bool(_ANYBODY.search(text)) / 2
        - only_is
        - (not _is_anyone_there(scene, place, text))
        - (one.words > LONG)
    )


def _is_anyone_there(scene: SceneFacts, place: int, text: str) -> bool:
    named = any(it.kind == "name" for it in scene.mentions if it.paragraph == place and not it.spoken)
    return named or bool(_ANYONE_THERE.search(text))


def somebody_acts(scene: SceneFacts, place: int, text: str) -> bool:
    """Whether somebody does something there: what only is so is an essay's, or a custom."""
    here = [one for one in scene.mentions if one.paragraph == place and not one.spoken]
    if sum(one.kind == "self" and acts_myself(text, one) for one in here) + _nameless(text) >= HAPPENS:
        return True
    goes_on = any(form(word) == "s" and word not in _NO_VERB for word in _AND.findall(text))
    return any(goes_on or acts(text, one) or _many_act(text, one) for one in here if tells(one))


def _others_act(scene: SceneFacts, place: int, text: str) -> bool:
    """Whether somebody but an I does something there, or things do."""
    here = [one for one in scene.mentions if one.paragraph == place and not one.spoken]
    return _nameless(text) >= LEAST or any(tells(one) and (acts(text, one) or _many_act(text, one)) for one in here)


def _deeds(scene: SceneFacts, place: int, text: str) -> int:
    """Verbs of the present right behind somebody, or behind an 'and'; the pipeline takes some of them for nouns."""
    here = [one for one in scene.mentions if one.paragraph == place and not one.spoken and tells(one)]
    after_and = sum(form(word) == "s" and word not in _NO_VERB for word in _AND.findall(text))
    return after_and + _nameless(text) + sum(acts(text, one) or _many_act(text, one) for one in here)


def _many_act(text: str, one: Mention) -> bool:
    """Whether several do something, whose verbs have no ending: 'the men run'."""
    several = one.kind == "role" and bool(re.search(r"(?:s|men|people)$", text[: one.end]))
    return several and acts_myself(text, one)


def _nameless(text: str) -> int:
    """Deeds of those whom reading does not note: 'they take', 'the boat goes'."""
    they = sum(form(word) == "base" and word not in _NO_VERB | _THINKS for word in _THEY.findall(text))
    return they + sum(word not in _NO_VERB for word in _THING.findall(text))


def tells(one: Mention) -> bool:
    """Whether it is somebody who is the subject of a verb that is told."""
    somebody = one.kind in ("pronoun", "role") or (one.kind == "name" and one.entity in ("person", ""))
    return one.subject and not one.spoken and somebody


def acts(text: str, one: Mention) -> bool:
    """Whether a verb of the present stands right behind: 'he goes'."""
    word = _next(text, one)
    return word not in _NO_VERB and form(word) == "s"


def acts_myself(text: str, one: Mention) -> bool:
    """Of I and they, whose verbs have no ending: no thought, and nothing that is said."""
    word = _next(text, one)
    return one.subject and word not in _NO_VERB | _THINKS and form(word) == "base"


def _next(text: str, one: Mention) -> str:
    match = _NEXT.match(text, one.end)
    return match.group(1) if match else ""


def _share(counted: Sequence[Counted]) -> float:
    """Of verbs those in the past."""
    past, present = _sums(counted)
    return past / max(1, past + present)


def _sums(counted: Sequence[Counted]) -> tuple[int, int]:
    return sum(it.past for it in counted), sum(it.present for it in counted)
