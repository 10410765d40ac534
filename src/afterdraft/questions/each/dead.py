"""Somebody who is dead or gone for good, and later speaks."""

import re
from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import islice

from afterdraft.questions.check import Check
from afterdraft.questions.deaths import is_gone
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence, silenced
from afterdraft.questions.story_days import goes_back
from afterdraft.questions.whose import Whose
from afterdraft.reading.facts import SceneFacts
from afterdraft.reading.lexicon import KIN
from afterdraft.whole.pronoun_cautions import Owner
from afterdraft.whole.turns import meant, resolve

_BACK = re.compile(
    r"\b(?:had|would|used\sto|once|years?\s(?:ago|before)|remember\w*|dream\w*|ghost|as\sif|like"
    r"|seem\w*\sto|appear\w*\sto)\b",
    re.I,
)
_ALIVE = re.compile(
    r"\b(?:before|until|till|when)\s(?:he|she|[A-Z]\w+)\s(?:had\s)?(?:died|was\s(?:still\s)?(?:alive|living|dying|ill))\b"
    r"|\bin\s(?:his|her)\s(?:lifetime|last\s(?:days|weeks|months|years?|illness))\b"
    r"|\b(?:days?|weeks?|months?|years?)\s(?:before|earlier|ago)\b|\bthe\slast\s(?:time|thing|words?)\b"
)  # in what leads to it: it is remembered
_DREAMT = re.compile(r"\b(?:dream(?:ed|t|s|ing)?|nightmare)\b", re.IGNORECASE)
_SPEECH = tuple("“\"‘'«—")
_LEADS = 2  # paragraphs that begin with no speech, up to which what leads to some words is looked for; chosen by hand

_HEADS = re.compile(r"(?:^|[.!?]\s)(?P<name>[A-Z]\w+)(?=,?\s(?:[a-z]+\s){0,3}(?:was|had|lay|died|left|sailed)\b)")


@dataclass(frozen=True, slots=True)
class _Death:
    scene: int
    span: Span
    form: str  # by what name; "" where it is told of 'he'

    def is_of(self, form: str) -> bool:
        """Whether another name has a word of that one; 'Aunt Ada' is no other Ada."""
        mine, other = set(self.form.split()), set(form.split())
        return not mine or (bool(mine & other) and mine & KIN <= other)


def find(seen: Seen) -> Iterator[Finding]:
    for person, deaths in _deaths(seen).items():
        found = ((death, later) for death in deaths if (later := _acts(seen, person, death)))
        for death, later in islice(found, 1):
            name = seen.name(person)
            yield Finding(
                evidence=(death.span, later),
                strength=0.85,
                subject=f"death of {name.lower()}",
                words={"name": name},
                people=(person,),
            )


def _deaths(seen: Seen) -> Mapping[str, Sequence[_Death]]:
    """Of people who are told to be dead or gone, outside speech and for certain: where that is told."""
    found: defaultdict[str, list[_Death]] = defaultdict(list)
    whose = Whose(seen)
    for number, scene in enumerate(seen.facts):
        owners = whose.owners(number)
        for place, (one, owner) in enumerate(zip(scene.mentions, owners, strict=True)):
            if not owner or one.spoken:
                continue
            if one.kind != "name" and not _is_plain(scene, owners, place):
                continue
            text = seen.texts[number][one.paragraph]
            begins, ends = sentence(text, one.start, one.end)
            if is_gone(text[begins : one.start], text[one.end : ends]):
                form = one.form if one.kind == "name" else ""
                found[owner[0]].append(_Death(number, seen.span(number, one.paragraph, begins, ends), form))
        for person, death in _unread(seen, number):
            found[person].append(death)
    return found


def _unread(seen: Seen, number: int) -> Iterator[tuple[str, _Death]]:
    """Of names that are words besides, and were read as such where they begin a sentence: 'Silver was dead.'"""
    scene, cast = seen.facts[number], seen.book.cast
    taken = {(one.paragraph, one.start) for one in scene.mentions}
    for paragraph, text in enumerate(seen.texts[number]):
        speech = [(one.start, one.end) for one in scene.quotes if one.paragraph == paragraph]
        for match in _HEADS.finditer(text):
            start, end = match.span("name")
            person = resolve(form := match["name"].lower(), cast.by_form)
            begins, ends = sentence(text, start, end)
            heads = not any(map(str.isalnum, text[begins:start]))  # the point of 'Mrs. Kerr' ends no sentence
            spoken = any(one <= start < last for one, last in speech)
            told = person and heads and not spoken and (paragraph, start) not in taken
            if person and told and is_gone(text[begins:start], text[end:ends]):
                yield person, _Death(number, seen.span(number, paragraph, begins, ends), form)


def _is_plain(scene: SceneFacts, owners: Sequence[Owner | None], place: int) -> bool:
    """Whether it is 'he' or 'she' right behind what that person, by name, did or was."""
    one, before = scene.mentions[place], scene.mentions[place - 1]
    return (
        place > 0
        and one.form in ("he", "she")
        and (before.kind, before.paragraph, before.subject, before.spoken) == ("name", one.paragraph, True, False)
        and (owner := owners[place - 1]) is not None
        and owners[place] is not None
        and (owners[place] or owner)[0] == owner[0]
    )


def _acts(seen: Seen, person: str, death: _Death) -> Span | None:
    """Where they speak by that name in a scene after, that does not go back, in words that do not."""
    for number in range(death.scene + 1, len(seen.facts)):
        scene = seen.facts[number]
        if goes_back(seen, number, death.scene):
            continue
        people = meant(scene, seen.book.cast)
        for quote in scene.quotes:
            if quote.tag is None or not quote.plain or people[quote.tag] != person:
                continue
            tag = scene.mentions[quote.tag]
            text = seen.texts[number][tag.paragraph]
            begins, ends = sentence(text, tag.start, tag.end)
            named = tag.kind == "name" and death.is_of(tag.form)
            now = named and not tag.spoken and not _BACK.search(text[begins:ends])
            if now and not _is_remembered(seen, number, tag.paragraph, tag.form):
                return seen.span(number, tag.paragraph, begins, ends)
    return None


def _is_remembered(seen: Seen, number: int, paragraph: int, form: str) -> bool:
    """Whether the telling above, up to where their talk begins, or beside it looks back on them: 'Ada had called her
    in', 'before she died'."""
    had = re.compile(
        rf"\b{re.escape(form)}(?:\shad|[’']d)\s(?!(?:died|drowned|gone|left|been\s(?:dead|killed|buried))\b)", re.I
    )
    leads = 0
    for place in range(paragraph, -1, -1):
        text = seen.texts[number][place]
        told = silenced(text, seen.facts[number].quotes, place)
        if _ALIVE.search(told) or _DREAMT.search(told) or had.search(told):
            return True
        leads += not text.startswith(_SPEECH)
        if leads == _LEADS:
            return False
    return False


CHECK = Check(
    id="dead",
    name="Somebody dead or gone who speaks",
    family="continuity",
    looks_at="Somebody who is told to be dead, or to have left for good, and who speaks in a later scene "
    "that does not go back in time.",
    method="Looks outside speech for a name, or for ‘he’ or ‘she’ where it is plain who is meant, with ‘died’, ‘was "
    "killed’, ‘they buried’, ‘left, and never came back’ and the like, said for certain, and for the same person "
    "beside words of speech later on. Deaths that are guessed (‘doubtless’) are none. Scenes that story time puts "
    "earlier, sentences that look back, and talk that is led to by what they ‘had’ done, or ‘before she died’, are let "
    "be. The rule is our own.",
    blind="A death that is only shown, or told in talk. Somebody who was wrongly held for dead is asked about; so are "
    "two people of one name. Flashbacks whose time nothing says.",
    reads=("words", "cast", "time"),
    find=find,
    recipe=10,
)
