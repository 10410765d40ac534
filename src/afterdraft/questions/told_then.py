"""How much says that a paragraph in the past, where all around it is told in the present, tells what happens there and
then: what was before is rightly told in the past.

The signs and their points are our own, chosen on scenes of 32 novels that were put into the present but for one
paragraph, and what they tell of before from 'had gone' into 'went'.
"""

import re
from collections.abc import Sequence

from afterdraft.questions.deeds import acts
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentences
from afterdraft.reading.counted import Counted
from afterdraft.reading.facts import Mention, SceneFacts
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.tense_forms import form
from afterdraft.whole.turns import meant

ENOUGH = 4.0  # points
FEW = 6  # times as many verbs in the past of such a paragraph as in the present
LEAST = 3  # verbs in the past of such a paragraph; of a scene in the present
MOSTLY = 0.75  # share of a scene's other verbs in the present, from which it is told so
NEAR = 0.75  # share of those of the paragraphs right before and behind
CLOSE = 3  # paragraphs on either side in which the nearest verbs are looked for
LONG = 170  # words
MOST = 3  # signs of one kind that count
_BEFORE = re.compile(
    r"\b(?:ago|yesterday|last\s(?:\w+\s)?(?:night|week|month|year|time|spring|summer|autumn|fall|winter|\w+day)|used\sto|would"
    r"|earlier|(?<!at\s)once|before(?!\s(?:me|him|her|us|them|the)\b)|back\sthen|in\s(?:those|the\sold)\sdays|(?:that|the)\s(?:\w+\s)?(?:day|night|morning|evening"
    r"|afternoon|summer|winter|spring|autumn|fall|year|week|time|weekend)\b|this\s(?:morning|afternoon|week|year|spring"
    r"|summer|autumn|fall|winter)|(?:one|another|every|each|some)\s(?:\w+\s)?(?:day|night|morning|evening|summer|winter|time)"
    r"|when\s(?:I|we|he|she|they|my|his|her|\w+)\s(?:was|were)\s(?:a|an|\w+teen|\w+ty|\w+|still|little|young)\b"
    r"|as\sa\s(?:child|boy|girl)|years?|months|since|until\snow|so\sfar|till\snow|in\s(?:\d{4}|January|February"
    r"|March|April|May|June|July|August|September|October|November|December)|first\stime|always|never|often|sometimes"
    r"|usually|whenever|already|remember\w*|recall\w*|born|died|married|childhood|formerly|originally|at\sfirst|later"
    r"|afterwards?|after\sthat|on\s(?:the\s\w+\sof|\w+day)|(?:two|three|four|five|six|seven|ten|several|few)\s(?:days|weeks)"
    r"|told\s(?:me|him|her|us|them)|said\sthat|the\snext)\b",
    re.IGNORECASE,
)  # what was, or used to be
_HAD = re.compile(r"(?:\bhad|\w[’']d)\s(?:\w+ly\s|not\s|never\s|just\s|been\s|also\s|only\s)?(\w+)")
_CONDITION = re.compile(r"(?<!\bas\s)\b(?:if|could\shave|might\shave|should\shave|wish(?:es|ed)?)\b", re.IGNORECASE)
_RECALLS = re.compile(
    r"[:—]\s*$|\b(?:remember|recall|think|thinks|dream|know|knows|tells?|story|memor\w+|reminds?|recalls|remembers|used"
    r"|because|why|how)\b",
    re.IGNORECASE,
)  # last sentence before it
_BACK = re.compile(r"^\W*(?:But\s|And\s)?(?:Now|Today|Tonight|Since\sthen|These\sdays|That\swas|Still|So\snow)\b")
_SET_IN = re.compile(r"^\s*[*_\[(‘“'\"—>]")
_AT_ONCE = re.compile(
    r"\b(?:at\sonce|suddenly|all\sat\sonce|then|for\sa\s(?:moment|while|second|minute)|after\sa\s(?:moment|while|minute)"
    r"|a\smoment\slater|slowly|at\slast|finally|presently|in\sa\smoment|just\sthen|again|quietly|at\snoon"
    r"|at\s(?:half|ten|a\squarter|twenty|five))\b",
    re.IGNORECASE,
)
_MOVES = words_of(
    """
    came went got sat stood rose turned looked nodded shook leaned leant reached picked put took opened closed shut
    walked crossed smiled laughed sighed stared glanced stepped stopped pulled pushed lifted lowered held set threw drew
    raised dropped knelt bent bowed ran lay slid pressed wiped lit watched listened waited waved pointed touched kissed
    gazed started began cried whispered hesitated trembled shrugged frowned hurried rushed leapt leaped sprang fell
    struck knocked entered seized caught grasped gave handed poured drank ate swallowed moved
    """
)
_OF_LIVES = re.compile(
    r"\b(?:taught|lived|worked|grew\sup|learned|learnt|belonged|drowned|studied|served|owned|built|moved\sto|bought|sold"
    r"|met(?!\s(?:his|her|my|their)\b)|went\sto\s(?:school|sea|war|college))\b"
)
_MESSAGE = re.compile(r"[A-Z][\w’'. -]{0,20}:\s")  # a script, or messages that somebody sends
MESSAGES = 3  # of a scene, from which its present may be theirs
_WORD = re.compile(r"[a-z]+")
_THE = re.compile(r"\b(?:the|his|her|my|their|its)\s(?:[a-z]+\s)?([a-z]{3,})\b")
_NEXT = re.compile(r"\s+(?:(?:\w+ly|then|now|still|just|only|also|even|never|at\s(?:once|last))\s+)?([a-z]+)\b(?![’'])")


def is_told_then(seen: Seen, number: int, place: int) -> bool:
    """Whether the paragraph tells, without speech, of that moment in the past where the scene is in the present."""
    text, scene = seen.texts[number][place], seen.facts[number]
    if not _is_past_in_the_present(scene, place) or "\n" in text or any(it.paragraph == place for it in scene.quotes):
        return False
    if sum(bool(_MESSAGE.match(it)) for it in seen.texts[number]) >= MESSAGES:
        return False
    if _SET_IN.search(text) or _BEFORE.search(text) or _CONDITION.search(text) or _is_of_before(text):
        return False
    if _RECALLS.search(_last_sentence(seen.texts[number][place - 1])) or _goes_back(seen, number, place):
        return False
    return points(seen, number, place) >= ENOUGH


def _is_past_in_the_present(scene: SceneFacts, place: int) -> bool:
    """Whether it is in the past throughout, and what stands before it and behind, and the scene, in the present."""
    one = scene.counted[place]
    if not place or FEW * one.present > one.past or one.past < LEAST or one.words > LONG:
        return False
    others = [it for at, it in enumerate(scene.counted) if at != place]
    if sum(it.present for it in others) < LEAST or _present(others) < MOSTLY:
        return False
    sides = (scene.counted[max(0, place - CLOSE) : place][::-1], scene.counted[place + 1 : place + 1 + CLOSE])
    near = [next((it for it in side if it.past + it.present), None) for side in sides]
    return all(it is not None and _present([it]) >= NEAR for it in near)


def points(seen: Seen, number: int, place: int) -> float:
    scene, text = seen.facts[number], seen.texts[number][place]
    here = [it for it in scene.mentions if it.paragraph == place and not it.spoken and it.subject]
    deeds = [it for it in here if _did(text, it)]
    others = [it for it in deeds if it.kind != "self"]
    moves = sum(word in _MOVES for word in _WORD.findall(text))
    beside_it = (place - 1, place + 1)
    talk = any(it.paragraph in beside_it for it in scene.quotes)
    return (
        min(moves, MOST)
        + 1.0 * bool(others)
        + 1.0 * _is_on_stage(seen, number, place, others)
        + 0.5 * talk
        + 1.0 * bool(_AT_ONCE.search(text))
        + 0.5 * min(_shared(seen.texts[number], place), MOST)
        - 1.0 * (not deeds)
        - 2.0 * bool(_OF_LIVES.search(text))
        - 2.0 * _begins_with_absent(scene, place, here)
    )


def _did(text: str, one: Mention) -> bool:
    match = _NEXT.match(text, one.end)
    return match is not None and form(match[1]) in ("past", "both")


def _begins_with_absent(scene: SceneFacts, place: int, here: Sequence[Mention]) -> bool:
    """Whether it begins with 'her father', of whom nothing stands right before it or behind."""
    near = [one.form for one in scene.mentions if one.paragraph != place and abs(one.paragraph - place) <= CLOSE]
    return bool(here) and here[0].owned and here[0].form not in near


def _is_on_stage(seen: Seen, number: int, place: int, deeds: Sequence[Mention]) -> bool:
    """Whether one of those who did something there does something in the present right before it or behind."""
    scene = seen.facts[number]
    people = dict(zip(scene.mentions, meant(scene, seen.book.told[number]), strict=True))
    near = [
        one
        for one in scene.mentions
        if one.paragraph != place and abs(one.paragraph - place) <= CLOSE and not one.spoken and one.subject
        if acts(seen.texts[number][one.paragraph], one) or one.speaks
    ]
    return any(
        (people[it] and people[it] == people[one]) or it.form == one.form or (it.gender and it.gender == one.gender)
        for it in deeds
        for one in near
    )


def _shared(texts: Sequence[str], place: int) -> int:
    """How many things that it tells of by 'the' or 'her' stand in the scene besides."""
    here = set(_THE.findall(texts[place]))
    others = {word for at, text in enumerate(texts) if at != place for word in _THE.findall(text)}
    return len(here & others)


def _is_of_before(text: str) -> bool:
    return any(form(word) in ("part", "both") for word in _HAD.findall(text))


def _last_sentence(text: str) -> str:
    found = sentences(text)
    return text[slice(*found[-1])] if found else ""


def _goes_back(seen: Seen, number: int, place: int) -> bool:
    """Whether what follows says that it is now, and no longer then."""
    return any(_BACK.search(text) for text in seen.texts[number][place + 1 : place + 2])


def _present(counted: Sequence[Counted]) -> float:
    """Of verbs those in the present."""
    past, present = sum(it.past for it in counted), sum(it.present for it in counted)
    return present / max(1, past + present)
