"""Sentences in the present within a scene told in the past, and paragraphs the other way round."""

import re
from collections.abc import Iterator, Sequence

from afterdraft.questions.check import Check
from afterdraft.questions.deeds import HAPPENS, acts, somebody_acts, tells
from afterdraft.questions.mixing import mixing
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentences
from afterdraft.questions.told_now import is_told_now, stands_alone
from afterdraft.questions.told_then import is_told_then
from afterdraft.reading.facts import Mention, SceneFacts
from afterdraft.reading.tense_forms import form

MOSTLY = 0.9  # share of a scene's verbs from which it is told in one tense; chosen on the tuning half
VERBS = 12  # of a scene at least
THEN = 0.7  # strength of a paragraph in the past
BY_TURNS = 2  # paragraphs in the past in a scene in the present, above which it is told by turns
SOFT = 0.55  # strength where nobody does anything there
_PAST = re.compile(r"\b(?:was|were|had|did|could|would|might|should|\w{3,}ed)\b")
_GOES_ON = re.compile(r"\b(?:is|are|has|have|there[’']s|it[’']s)\b")
_WORD = re.compile(r"[a-z]+")
_GENERAL = re.compile(
    r"\b(?:always|never|often|sometimes|usually|every|whoever|generally|nowadays|to\sthis\sday|reader|I|you|your|we|one|me"
    r"|my|us|our|man|men|people|says|writes|tells|must|will|shall|may|if|unless|whether|understands|knows|owns|lives"
    r"|belongs|contains|exists)\b"
)
_INSET = re.compile(r"^\s*[*_—>\[(]|[:!]\s*$|^\s*(?:That|This|Such)\s(?:is|are|lies|stands|comes|goes)\b")


_LIES = re.compile(
    r"\b(?:lies|rests|sleeps|is\sburied)\s(?:under|in|beside|by|near|at|on|there|with)\b"
)  # in a grave, still


def find(seen: Seen) -> Iterator[Finding]:
    mixed = mixing(seen)
    for number, scene in enumerate(seen.facts):
        past, present = sum(one.past for one in scene.counted), sum(one.present for one in scene.counted)
        if number not in mixed:
            alone = past + present >= VERBS and past >= MOSTLY * (past + present)
            yield from _in_scene(seen, number, scene, alone=alone)
        then = [place for place in range(scene.paragraphs) if is_told_then(seen, number, place)]
        for place in then if len(then) <= BY_TURNS else ():
            yield _finding(seen, number, place, [(0, len(seen.texts[number][place]))], "past", THEN)


def _in_scene(seen: Seen, number: int, scene: SceneFacts, *, alone: bool) -> Iterator[Finding]:
    """Whole paragraphs; and sentences beside others in the past, where they may stand `alone` in the scene."""
    for place, text in enumerate(seen.texts[number]):
        one = scene.counted[place]
        speech = [(it.start, it.end) for it in scene.quotes if it.paragraph == place]
        runs: list[tuple[int, int]] = []
        if alone and (one.past or speech or (place and one.present < HAPPENS)):
            runs = _runs(seen, scene, place, text, speech)
        if not runs and not speech and is_told_now(seen, number, place):
            runs = [(0, len(text))]
        runs = [one for one in runs if not seen.is_in_italics(number, place, *one)]
        if runs and "\n" not in text and (number, place) not in seen.set_in and stands_alone(seen, number, place):
            sharp = (0.85 if _long(text, runs) > 1 else 0.7) if somebody_acts(scene, place, text) else SOFT
            yield _finding(seen, number, place, runs, "present", sharp)


def _runs(
    seen: Seen, scene: SceneFacts, place: int, text: str, speech: Sequence[tuple[int, int]]
) -> list[tuple[int, int]]:
    """Sentences in the present in which somebody of the cast does something, with those behind that go on so."""
    known = seen.book.cast.by_form
    subjects = [
        one
        for one in scene.mentions
        if one.paragraph == place and tells(one) and (one.form in known or _is_told_of(one)) and acts(text, one)
    ]
    runs: list[tuple[int, int]] = []
    for start, end in sentences(text):
        follows = bool(runs) and not text[runs[-1][1] : start].strip()
        goes_on = follows and _GOES_ON.search(text, start, end)
        if _is_free(text, start, end, speech) and (goes_on or any(start <= one.start < end for one in subjects)):
            runs[-1:] = [(runs[-1][0], end)] if follows else [*runs[-1:], (start, end)]
    return runs


def _is_told_of(one: Mention) -> bool:
    """Whether it needs no cast to be somebody: 'the Rectory' stands, and is nobody."""
    return one.kind == "pronoun" or (one.kind == "role" and (bool(one.gender) or one.owned))


def _finding(
    seen: Seen, number: int, place: int, runs: Sequence[tuple[int, int]], tense: str, strength: float
) -> Finding:
    return Finding(
        evidence=tuple(seen.span(number, place, start, end) for start, end in runs),
        strength=strength,
        subject=tense,
        words={"tense": tense, "told": "past" if tense == "present" else "present"},
        numbers={
            "sentences": _long(seen.texts[number][place], runs),
            "whole": runs == [(0, len(seen.texts[number][place]))],
        },
    )


def _long(text: str, runs: Sequence[tuple[int, int]]) -> int:
    """How many sentences."""
    return sum(len(sentences(text[start:end])) for start, end in runs)


def _is_free(text: str, start: int, end: int, speech: Sequence[tuple[int, int]]) -> bool:
    """Whether the sentence is told, of something that is not always so, without a verb in the past."""
    told = text[start:end]
    return not (
        any(begun < end and start < done for begun, done in speech)
        or any(pattern.search(told) for pattern in (_PAST, _GENERAL, _INSET, _LIES))
        or any(form(word) in ("past", "both") for word in _WORD.findall(told))
        or "?" in told
    )


CHECK = Check(
    id="tense",
    name="The tense changes within a scene",
    family="viewpoint",
    looks_at="Sentences in which somebody does something in the present, in a scene that is told in the past; and "
    "paragraphs in the past in a scene that is told in the present.",
    method="Whole paragraphs without speech in the present, where what stands round them is told in the past. Points "
    "count for somebody who does something (‘he goes’, ‘I take’, ‘they run’, ‘she is sitting’, ‘the boat drifts’, "
    "‘the riders drag it’; ‘we wait’ where an I tells), for no verb in the past, and for the past right before it and "
    "all round; points are lost by what is said of men and women as such, in questions and cries, by what is to be, "
    "and by what only is so. A chapter’s first paragraph is let be. And whole sentences with somebody of the cast and "
    "a verb in the present right behind, beside others in the past, in scenes nine tenths of whose verbs are in the "
    "past. What is said to ‘you’, letters set in, what a teller says of the telling, what a diary says of now, "
    "several paragraphs in a row, and tellers who go from one tense to the other all along are let be. Where three "
    "quarters of a scene’s verbs are in the present, whole paragraphs without speech in the past, right between "
    "others in the present: points count for what is done and moves there, by those who act beside it, for the same "
    "things, and for ‘then’ and ‘at once’. What says that it was before (‘had gone’, ‘last night’, ‘when he was "
    "nine’, ‘her father taught her’, a memory in front, ‘now’ behind) is let be. The rules are our own.",
    blind="Single sentences in the present of ‘I’, ‘you’ and ‘they’, whose verbs have no ending; paragraphs in which "
    "both tenses stand by turns; tellers who mix both; a slip of several paragraphs. In scenes told in the present: "
    "single sentences in the past, paragraphs with speech, and several in a row; what was before may be asked about "
    "where nothing says so.",
    reads=("words", "facts", "cast"),
    find=find,
    recipe=24,
)
