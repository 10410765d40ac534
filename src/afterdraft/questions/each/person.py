"""'I' in the telling of a scene about 'he' and 'she', or 'he' for the one who tells."""

import re
from collections.abc import Iterator, Sequence

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence, sentences
from afterdraft.reading.counted import Counted
from afterdraft.reading.facts import Mention
from afterdraft.whole.book import genders
from afterdraft.whole.evidence import told_by_i
from afterdraft.whole.turns import meant

PRONOUNS = 8  # outside speech, of a scene at least
MOSTLY = 0.97  # share of them that are 'he', 'she', 'they' in a scene told so; chosen on the tuning half
OWN = 0.1  # share of scenes told of others, outside speech an 'I' in them, from which a teller's asides are the manner
_I = re.compile(r"(?<!\b[A-Z]\s)(?<![\w’'*_])(?:I|me|my|myself)(?=[\s,.;!?—]|[’'](?:d|ll|ve|m)\b)(?!\.\w)")
_TELLER = re.compile(
    r"\bI\s(?:\w+ly\s)?(?:know|think|have|am|suppose|believe|say|confess|remember|shall|will|must|may|cannot|do|fear"
    r"|trust|hope|mean|can|dare|need|should|would)\b|\bme\ssay\b|\bmy\s(?:reader|readers|story|tale|hero|heroine)\b"
)
_THOUGHT = re.compile(r"[*_“”‘\"]|\b(?:thought|wondered|said|asked|wrote|read)\b|^[^\w]*[A-Z][\w ,.]*:|\?|!")
_NOUN = re.compile(
    r"\b(?:the|a|an|my|our|this|that|his|her)\s(?:\w+\s)?\w+(?:man|woman|boy|girl|er|or|ist|ian|fellow|lad|maid|lord|king|guard)s?\b"
)
FEW = 2  # of them in a sentence or two


MANY = 3  # of them in a paragraph, from which a teller's asides elsewhere do not explain them
NEAR = 3  # paragraphs before 'he' in which somebody stands who may be meant


def find(seen: Seen) -> Iterator[Finding]:
    found = [one for number in seen.scenes for one in _selves(seen, number)]
    told = sum(_is_told_of_others(seen.facts[number].counted) for number in seen.scenes)
    for some in (found, [one for one in found if one.numbers["times"] >= MANY]):
        if len({one.all_scenes for one in some}) <= OWN * max(told, 1 / OWN):
            yield from some
            break
    orphans = [one for number in seen.scenes if told_by_i(seen.facts[number]) for one in _orphans(seen, number)]
    if len(orphans) <= max(1, OWN * sum(map(told_by_i, seen.facts))):
        yield from orphans


def _is_told_of_others(paragraphs: Sequence[Counted]) -> bool:
    first, third = sum(one.first for one in paragraphs), sum(one.third for one in paragraphs)
    return first + third >= PRONOUNS and third >= MOSTLY * (first + third)


def _selves(seen: Seen, number: int) -> Iterator[Finding]:
    """Paragraphs with an 'I' that is neither spoken nor thought, in a scene that is told of others for the rest."""
    scene = seen.facts[number]
    for place, text in enumerate(seen.texts[number]):
        if scene.counted[place].first == 0 or any(one.paragraph == place for one in scene.quotes):
            continue
        if "\n" in text or not _is_told_of_others([*scene.counted[:place], *scene.counted[place + 1 :]]):
            continue  # verse, or a scene of its own
        own = [(start, end) for start, end in sentences(text) if _I.search(text, start, end)]
        plain = [one for one in own if not any(sign.search(text[slice(*one)]) for sign in (_THOUGHT, _TELLER))]
        count = sum(len(_I.findall(text[slice(*one)])) for one in plain)
        if plain and (plain == own or count >= MANY):
            yield Finding(
                evidence=(seen.span(number, place, plain[0][0], plain[-1][1]),),
                strength=0.8 if count >= FEW else 0.65,
                subject="person",
                numbers={"times": count},
            )


def _orphans(seen: Seen, number: int) -> Iterator[Finding]:
    """In a scene that an I tells: 'he' again and again where nobody stands near who may be meant."""
    scene, cast = seen.facts[number], seen.book.cast
    known = genders(cast.people)
    met: dict[str, int] = {}  # paragraph in which one of that gender stood last
    for one, person in zip(scene.mentions, meant(scene, cast), strict=True):
        gender = one.gender or known.get(person or "", "")
        orphan = one.kind == "pronoun" and one.subject and not one.spoken and one.paragraph > NEAR
        if orphan and met.get(gender, 0) < one.paragraph - NEAR:
            again = [
                other
                for other in scene.mentions
                if (other.paragraph, other.kind, other.gender) == (one.paragraph, "pronoun", gender)
            ]
            if len(again) >= MANY and not _NOUN.search(_before(seen, number, one)):
                yield Finding(
                    evidence=(seen.span(number, one.paragraph, *_sentences_of(seen, number, one, again[-1])),),
                    strength=0.6,
                    subject="person: he",
                    words={"said": one.form},
                    numbers={"times": len(again)},
                )
        if one.kind != "self":
            met |= dict.fromkeys((gender,) if gender else ("m", "f"), one.paragraph)


def _before(seen: Seen, number: int, one: Mention) -> str:
    """What stands right before, in its own paragraph and the one before."""
    texts = seen.texts[number]
    return f"{texts[one.paragraph - 1]} {texts[one.paragraph][: one.start]}"


def _sentences_of(seen: Seen, number: int, first: Mention, last: Mention) -> tuple[int, int]:
    return sentence(seen.texts[number][first.paragraph], first.start, last.end)


CHECK = Check(
    id="person",
    name="The person changes within a scene",
    family="viewpoint",
    looks_at="‘I’, ‘me’ or ‘my’ in the telling of a scene that is told of ‘he’ and ‘she’.",
    method="In scenes whose pronouns outside speech are nearly all of the third person: paragraphs without speech in "
    "which somebody says ‘I’, and is not said to think or write it. Where a teller says ‘I’ in a tenth of "
    "such scenes, that is the book's manner, and nothing is asked. The rule is our own.",
    blind="‘We’. Paragraphs with speech in them. ‘He’ for the one who tells, in scenes told by an ‘I’. Thoughts "
    "that nothing marks are asked about.",
    reads=("words", "facts"),
    find=find,
)
