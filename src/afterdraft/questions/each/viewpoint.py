"""Thoughts of somebody else within a scene that keeps to one person's."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.reading.facts import Mention
from afterdraft.reading.lexicon import words_of
from afterdraft.whole.book import genders
from afterdraft.whole.tellers import told_in
from afterdraft.whole.traits_pronouns import antecedents
from afterdraft.whole.turns import meant

SURE = 0.75  # of who thinks
OWN = 3  # thoughts and perceptions of the viewpoint's own that a scene has at least; chosen on the tuning half
SHORT = 5  # words of a sentence below which it is a pause in talk: 'She thought.'
STRAYS = 0.12  # share of scenes with one more mind in them from which that is the manner of the book, likewise
FEW = 2  # thoughts of others in a scene whose viewpoint she marked; chosen on the demonstration book
LEAD = 4  # times as many as all others', likewise
CLEAN = (
    0.65  # share of scenes with anybody's mind in them that keep to one, below which the telling knows all, likewise
)
_THINKS = words_of(
    """
    thought thinking wondered wondering wished wishing remembered hoped hoping feared believed supposed realised
    realized decided guessed doubted regretted imagined dreaded longed longing recalled suspected
    """
)
_VERB = re.compile(
    r"\s+(?:(?:had|could|would|did|never|not|was|were|\w+ly|still|only|also|been|even|now|always|just)\s+){0,3}(\w+)"
)
_DEEP = words_of(
    "wondered wondering wished wishing remembered dreaded longed longing regretted hoped hoping doubted feared"
)
_SHOWN = re.compile(
    r"\b(?:as if|as though|like|seem\w*|evident\w*|appear\w*|look\w*|perhaps|must have|no doubt|plain\w*|clear\w*|if"
    r"|said|says|told|tells|asked|replied|answered|explained|admitted|confessed|because|how|whether|so that)\b"
)
_TOUCHED = re.compile(r"\s(?:had\s)?thought\sit\sover\b")
_TELLER = re.compile(r"\b(?:I|me|my|we|us|our)\b")


@dataclass(frozen=True, slots=True)
class _Thought:
    person: str
    mention: Mention
    inward: bool  # thought, and not only seen or heard
    sure: float  # of who


def find(seen: Seen) -> Iterator[Finding]:
    read, hers = _viewpoints(seen)
    narrator = seen.book.cast.narrator
    keeps: dict[int, list[_Thought]] = {}
    minded = 0  # scenes that tell of somebody's mind
    for number in seen.scenes:
        thoughts = list(_thoughts(seen, number))
        viewpoint = hers.get(number) or read.get(number)
        minded += len(thoughts) >= OWN
        own = sum(one.person == viewpoint for one in thoughts)
        told_by_i = narrator is not None and viewpoint == narrator.id
        others = [
            one
            for one in thoughts
            if one.person != viewpoint
            and one.inward
            and one.sure >= SURE
            and _is_known(seen, number, one, told_by_i=told_by_i)
        ]
        if viewpoint and own >= max(OWN, LEAD * len(others)):
            keeps[number] = others
        elif number in hers:
            keeps[number] = [one for one in others if _is_another(seen, number, one, viewpoint)][:FEW]
    strays = sum(bool(others) for number, others in keeps.items() if number not in hers)
    mostly = len(keeps) >= CLEAN * minded and strays <= max(1, STRAYS * len(keeps))
    for number, others in keeps.items():
        first = {one.person: one for one in reversed(others)}
        for one in first.values() if mostly or number in hers else ():
            yield _finding(seen, number, hers.get(number) or read[number], one)


def _viewpoints(seen: Seen) -> tuple[Mapping[int, str], Mapping[int, str]]:
    """By scene whose it is: as reading found, and as she says."""
    read = {one.scene: one.person for one in seen.book.appearances if one.presence == "point of view"}
    return read, {scene: person for (scene, person), how in seen.marks.present.items() if how == "viewpoint"}


def _thoughts(seen: Seen, number: int) -> Iterator[_Thought]:
    """Outside speech, where it is known well enough whose they are."""
    scene, cast = seen.facts[number], seen.book.cast
    people = meant(scene, told_in(scene, cast))
    guesses = antecedents(scene, people, seen.book.spoken[number], genders(cast.people))
    for one, person, guess in zip(scene.mentions, people, guesses, strict=True):
        if one.spoken or not one.subject or one.kind == "role":
            continue
        match = _VERB.match(seen.texts[number][one.paragraph], one.end)
        inward = match is not None and match.group(1) in _THINKS
        who, sure = (person, 1.0) if person else guess or ("", 0.0)
        if (inward or one.feels) and who:
            yield _Thought(who, one, inward, sure)


def _is_another(seen: Seen, number: int, one: _Thought, viewpoint: str | None) -> bool:
    """Whether a word tells that it is not the viewpoint's own: a name, 'he' where that is a 'she', or the viewpoint's
    name behind it in the sentence."""
    gender = genders(seen.book.cast.people).get(viewpoint or "", "")
    if one.mention.kind == "name" or (gender and one.mention.gender and gender != one.mention.gender):
        return True
    told = seen.texts[number][one.mention.paragraph]
    behind = told[one.mention.end : sentence(told, one.mention.start, one.mention.end)[1]]
    return any(name in behind for name in seen.name(viewpoint or "").split())


def _is_known(seen: Seen, number: int, one: _Thought, *, told_by_i: bool) -> bool:
    """Whether the thought is told as known, and not as shown, guessed or heard: who tells as I says most so."""
    told = _sentence(seen, number, one.mention).quote
    if len(told.split()) < SHORT or _TOUCHED.match(seen.texts[number][one.mention.paragraph], one.mention.end):
        return False
    match = _VERB.match(seen.texts[number][one.mention.paragraph], one.mention.end)
    if not told_by_i:
        return not told.startswith(("“", "‘", '"'))
    return match is not None and match.group(1) in _DEEP and not _SHOWN.search(told) and not _TELLER.search(told)


def _finding(seen: Seen, number: int, viewpoint: str, one: _Thought) -> Finding:
    mention = one.mention
    span = _sentence(seen, number, mention)
    shown = _SHOWN.search(span.quote)
    return Finding(
        evidence=(span,),
        strength=0.5 if shown else 0.65,
        subject="viewpoint",
        words={"viewpoint": seen.name(viewpoint), "other": seen.name(one.person)},
        people=(viewpoint, one.person),
    )


def _sentence(seen: Seen, number: int, one: Mention) -> Span:
    return seen.span(number, one.paragraph, *sentence(seen.texts[number][one.paragraph], one.start, one.end))


CHECK = Check(
    id="viewpoint",
    name="Thoughts of somebody else",
    family="viewpoint",
    looks_at="A sentence that tells what somebody thinks or feels, in a scene that keeps to another's thoughts.",
    method="Whose scene it is comes from your marks, else from who thinks and perceives most. Verbs of thought "
    "outside speech are given to whoever is named or most likely meant. Only in books that mostly keep one "
    "viewpoint a scene, and only where others' thoughts are few against its own. The rule is our own.",
    blind="Thoughts without a verb of thought. What one person can see that another thinks. Books whose telling "
    "knows everybody's mind are not asked about.",
    reads=("words", "cast", "marks"),
    find=find,
)
