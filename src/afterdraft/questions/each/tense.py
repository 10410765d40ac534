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
HAPPENS = 2  # verbs in the present, and events, of a paragraph that is wholly so, likewise
VERBS = 12  # of a scene at least
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
_PAST = re.compile(r"\b(?:was|were|had|did|could|would|might|should|\w{3,}ed)\b")
_GOES_ON = re.compile(r"\b(?:is|are|has|have|there[’']s|it[’']s)\b")
_WORD = re.compile(r"[a-z]+")
_GENERAL = re.compile(
    r"\b(?:always|never|often|sometimes|usually|every|any|whoever|anyone|everyone|nobody|generally|nowadays|to\sthis\sday"
    r"|still|reader|I|you|we|one|man|men|people|says|writes|tells|seems|means|must|will|shall|may|can"
    r"|me|my|us|our|if|unless|whether|understands|knows|likes|loves|wants|needs|owes|owns|lives|belongs|contains|exists)\b"
)
_INSET = re.compile(r"^\s*[*_—>\[(]|[:]\s*$")


def find(seen: Seen) -> Iterator[Finding]:
    for number, scene in enumerate(seen.facts):
        past, present = sum(one.past for one in scene.counted), sum(one.present for one in scene.counted)
        if past + present >= VERBS and past >= MOSTLY * (past + present):
            yield from _in_scene(seen, number, scene)


def _in_scene(seen: Seen, number: int, scene: SceneFacts) -> Iterator[Finding]:
    """Runs of sentences in the present, each once."""
    for place, text in enumerate(seen.texts[number]):
        subjects = [one for one in scene.mentions if one.paragraph == place and _tells(one)]
        speech = [(one.start, one.end) for one in scene.quotes if one.paragraph == place]
        runs: list[tuple[int, int]] = []
        for start, end in sentences(text):
            follows = bool(runs) and not text[runs[-1][1] : start].strip()
            if _is_free(text, start, end, speech) and (
                any(start <= one.start < end and _acts(text, one) for one in subjects)
                or (follows and _GOES_ON.search(text, start, end))
            ):
                runs[-1:] = [(runs[-1][0], end)] if follows else [*runs[-1:], (start, end)]
        if not runs and not speech and _happens_in_present(scene, place):
            runs = [(0, len(text))]
        argument = not place and len(runs) == 1 and not text[: runs[0][0]].strip()  # as stands over chapters
        if runs and not argument and "\n" not in text:
            yield _finding(seen, number, place, runs)


def _happens_in_present(scene: SceneFacts, place: int) -> bool:
    """Whether things happen in a paragraph, all of it in the present: then also of 'I' and 'they'."""
    one, events = scene.counted[place], sum(event.paragraph == place for event in scene.events)
    return one.past == 0 and events >= HAPPENS and one.present >= HAPPENS and 2 * events >= one.present


def _finding(seen: Seen, number: int, place: int, runs: Sequence[tuple[int, int]]) -> Finding:
    long = sum(len(sentences(seen.texts[number][place][start:end])) for start, end in runs)
    return Finding(
        evidence=tuple(seen.span(number, place, start, end) for start, end in runs),
        strength=0.85 if long > 1 else 0.7,
        subject="present",
        words={"tense": "present", "told": "past"},
        numbers={"sentences": long},
    )


def _tells(one: Mention) -> bool:
    return one.subject and not one.spoken and one.kind in ("name", "pronoun", "role")


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
    match = _NEXT.match(text, one.end)
    return bool(match) and match.group(1) not in _NO_VERB and form(match.group(1)) == "s"  # type: ignore[union-attr]


CHECK = Check(
    id="tense",
    name="The tense changes within a scene",
    family="viewpoint",
    looks_at="Sentences in which somebody does something in the present, in a scene that is told in the past.",
    method="In scenes nine tenths of whose verbs, outside speech, are in the past: whole sentences with a person and "
    "a verb in the present right behind (‘he goes’), and no verb in the past; and whole paragraphs in which "
    "things happen in the present. What is always so, questions, and letters set in are let be. The rule is "
    "our own.",
    blind="Single sentences in the present of ‘I’, ‘you’ and ‘they’, whose verbs have no ending; sentences in which "
    "both tenses stand; scenes told in the present.",
    reads=("words", "facts"),
    find=find,
)
