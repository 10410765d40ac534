"""Sentences in the present within a scene told in the past, or the other way round."""

import re
from collections.abc import Iterator, Sequence

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentences
from afterdraft.reading.facts import Mention, SceneFacts
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.tense_forms import form

MOSTLY = 0.9  # share of a scene's verbs from which it is told in one tense; chosen on the tuning half
VERBS = 12  # of a scene at least
STILL = 0.65  # share of a scene's verbs in the past beside a whole paragraph in the present, likewise
HAPPENS, FEW = 2, 5  # verbs in the present of such a paragraph, and how many for each in the past, likewise
ROUND = 8  # paragraphs on either side, likewise
AROUND, LEAST_AROUND = 4, 3  # verbs in the past there for each in the present, and at all, likewise
SPECIFIC, OF_A_DIARY = 1.5, 2.5  # points, likewise; diaries stand in the present of their writing too
SOFT = 0.55  # strength where nobody does anything: mostly a custom, or an essay, on novels that nothing was mended on
_LEADS = (":", ":—")  # what is set in
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
_OF_ALL = re.compile(
    r"\b(?:you|your|readers?|nowadays|to\sthis\sday|generally|usually|human|mankind|humanity|whoever|whatever|any|shall|will"
    r"|must|ought|says|writes|tells)\b",
    re.IGNORECASE,
)
_OF_SOME = re.compile(r"\b(?:we|us|our|always|every|men|women|people|persons|often|sometimes|ones)\b", re.IGNORECASE)
_PAST = re.compile(r"\b(?:was|were|had|did|could|would|might|should|\w{3,}ed)\b")
_GOES_ON = re.compile(r"\b(?:is|are|has|have|there[’']s|it[’']s)\b")
_WORD = re.compile(r"[a-z]+")
_GENERAL = re.compile(
    r"\b(?:always|never|often|sometimes|usually|every|any|whoever|anyone|everyone|nobody|generally|nowadays|to\sthis\sday"
    r"|still|reader|I|you|we|one|man|men|people|says|writes|tells|seems|means|must|will|shall|may|can"
    r"|me|my|us|our|if|unless|whether|understands|knows|likes|loves|wants|needs|owes|owns|lives|belongs|contains|exists)\b"
)
_AND = re.compile(r"\band (?:then |now )?([a-z]+)\b")
_INSET = re.compile(r"^\s*[*_—>\[(]|[:!]\s*$|^\s*(?:That|This|Such)\s(?:is|are|lies|stands|comes|goes)\b")


def find(seen: Seen) -> Iterator[Finding]:
    for number, scene in enumerate(seen.facts):
        past, present = sum(one.past for one in scene.counted), sum(one.present for one in scene.counted)
        if past + present >= VERBS and past >= STILL * (past + present):
            yield from _in_scene(seen, number, scene, alone=past >= MOSTLY * (past + present))


def _in_scene(seen: Seen, number: int, scene: SceneFacts, *, alone: bool) -> Iterator[Finding]:
    """Runs of sentences in the present, each once, where sentences may stand `alone` in it; and whole paragraphs."""
    for place, text in enumerate(seen.texts[number]):
        subjects = [one for one in scene.mentions if one.paragraph == place and _tells(one)]
        speech = [(one.start, one.end) for one in scene.quotes if one.paragraph == place]
        runs: list[tuple[int, int]] = []
        for start, end in sentences(text):
            follows = bool(runs) and not text[runs[-1][1] : start].strip()
            if (
                alone
                and _is_free(text, start, end, speech)
                and (
                    any(start <= one.start < end and _acts(text, one) for one in subjects)
                    or (follows and _GOES_ON.search(text, start, end))
                )
            ):
                runs[-1:] = [(runs[-1][0], end)] if follows else [*runs[-1:], (start, end)]
        if not runs and not speech and _is_in_present(seen, number, scene, place):
            runs = [(0, len(text))]
        argument = not place and len(runs) == 1 and not text[: runs[0][0]].strip()  # as stands over chapters
        if runs and not argument and "\n" not in text:
            yield _finding(seen, number, place, runs)


def _is_in_present(seen: Seen, number: int, scene: SceneFacts, place: int) -> bool:
    """Whether a paragraph tells, all of it in the present, of people we know or what happens, where all around it is in
    the past: then also of 'I' and 'they', and of what only is so."""
    text, one = seen.texts[number][place], scene.counted[place]
    if (
        not place
        or seen.texts[number][place - 1].rstrip().endswith(_LEADS)
        or one.present < HAPPENS
        or FEW * one.past > one.present
        or _OF_ALL.search(text)
    ):
        return False
    around = [*scene.counted[max(0, place - ROUND) : place], *scene.counted[place + 1 : place + 1 + ROUND]]
    past, present = sum(it.past for it in around), sum(it.present for it in around)
    others = [it for at, it in enumerate(scene.counted) if at != place]
    told, untold = sum(it.past for it in others), sum(it.present for it in others)
    if past < AROUND * present or past < LEAST_AROUND or told < STILL * (told + untold):
        return False
    diary = any(it.dateline for it in scene.times)
    return _specific(scene, place, text) >= (OF_A_DIARY if diary else SPECIFIC)


def _somebody_acts(scene: SceneFacts, place: int, text: str) -> bool:
    """Whether somebody does something there: what only is so is an essay's, or a custom."""
    here = [one for one in scene.mentions if one.paragraph == place and not one.spoken]
    if sum(one.kind == "self" and _acts_myself(text, one) for one in here) >= HAPPENS:
        return True
    goes_on = any(form(word) == "s" and word not in _NO_VERB for word in _AND.findall(text))
    told = [one for one in here if _tells(one) and _acts_or_is(text, one)]
    return any(goes_on or _acts(text, one) for one in told)


def _specific(scene: SceneFacts, place: int, text: str) -> float:
    """How much says that a paragraph tells of somebody there and then: a point for each who does something or is
    something, half a one for what happens, an I that acts, nothing in the past, many verbs; less for 'we', 'men'."""
    here = [one for one in scene.mentions if one.paragraph == place and not one.spoken]
    others = sum(_tells(one) and _acts_or_is(text, one) for one in here)
    mine = sum(one.kind == "self" and _acts_myself(text, one) for one in here)
    events = sum(event.paragraph == place for event in scene.events)
    verbs = scene.counted[place]
    halves = min(events, 3) + min(mine, 3) + (verbs.past == 0) + (verbs.past == 0 and verbs.present >= 4)
    return others + halves / 2 - bool(_OF_SOME.search(text))


def _finding(seen: Seen, number: int, place: int, runs: Sequence[tuple[int, int]]) -> Finding:
    text = seen.texts[number][place]
    long = sum(len(sentences(text[start:end])) for start, end in runs)
    sharp = (0.85 if long > 1 else 0.7) if _somebody_acts(seen.facts[number], place, text) else SOFT
    return Finding(
        evidence=tuple(seen.span(number, place, start, end) for start, end in runs),
        strength=sharp,
        subject="present",
        words={"tense": "present", "told": "past"},
        numbers={"sentences": long},
    )


def _tells(one: Mention) -> bool:
    somebody = one.kind in ("pronoun", "role") or (one.kind == "name" and one.entity in ("person", ""))
    return one.subject and not one.spoken and somebody


def _is_free(text: str, start: int, end: int, speech: Sequence[tuple[int, int]]) -> bool:
    """Whether the sentence is told, of something that is not always so, without a verb in the past."""
    told = text[start:end]
    return not (
        any(begun < end and start < done for begun, done in speech)
        or any(pattern.search(told) for pattern in (_PAST, _GENERAL, _INSET))
        or any(form(word) in ("past", "both") for word in _WORD.findall(told))
        or "?" in told
    )


def _acts(text: str, one: Mention) -> bool:
    word = _next(text, one)
    return word not in _NO_VERB and form(word) == "s"


def _acts_or_is(text: str, one: Mention) -> bool:
    if one.form == "they":
        return _acts_myself(text, one)
    return _next(text, one) in ("is", "has") or _acts(text, one)


def _acts_myself(text: str, one: Mention) -> bool:
    """Of I and they, whose verbs have no ending: no thought, and nothing that is said."""
    word = _next(text, one)
    return one.subject and word not in _NO_VERB | _THINKS and form(word) == "base"


def _next(text: str, one: Mention) -> str:
    match = _NEXT.match(text, one.end)
    return match.group(1) if match else ""


CHECK = Check(
    id="tense",
    name="The tense changes within a scene",
    family="viewpoint",
    looks_at="Sentences in which somebody does something in the present, in a scene that is told in the past.",
    method="In scenes nine tenths of whose verbs, outside speech, are in the past: whole sentences with a person and "
    "a verb in the present right behind (‘he goes’), and no verb in the past; and whole paragraphs in the present "
    "that tell of somebody there and then, where all around is in the past. What is always so, questions, and letters "
    "set in are let be. The rule is our own.",
    blind="Single sentences in the present of ‘I’, ‘you’ and ‘they’, whose verbs have no ending; sentences in which "
    "both tenses stand; scenes told in the present.",
    reads=("words", "facts"),
    find=find,
    recipe=3,
)
