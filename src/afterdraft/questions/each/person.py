"""'I' in the telling of a scene about 'he' and 'she', or 'he' for the one who tells."""

import re
from collections.abc import Iterator, Sequence

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence, sentences
from afterdraft.reading.counted import Counted
from afterdraft.reading.facts import Mention
from afterdraft.reading.trait_words import KINSHIP, PEOPLE, TRADES
from afterdraft.whole.book import genders
from afterdraft.whole.evidence import told_by_i
from afterdraft.whole.turns import meant

PRONOUNS = 8  # outside speech, of a scene at least
MOSTLY = 0.97  # share of them that are 'he', 'she', 'they' in a scene told so; chosen on the tuning half
OWN = 0.1  # share of scenes told of others, outside speech an 'I' in them, from which a teller's asides are the manner
_I = re.compile(r"(?<!\b[A-Z]\s)(?<![\w’'*_-])(?:I|me|my|myself)(?=[\s,.;!?—]|[’'](?:d|ll|ve|m)\b)(?!\.\w)")
_TELLER = re.compile(
    r"\bI\s(?:\w+ly\s)?(?:know|think|have|am|suppose|believe|say|confess|remember|shall|will|must|may|cannot|do|fear"
    r"|trust|hope|mean|can|dare|need|should|would)\b|\bme\ssay\b|\bmy\s(?:reader|readers|story|tale|hero|heroine)\b"
)
_THOUGHT = re.compile(r"[*_“”‘\"]|\b(?:thought|wondered|said|asked|wrote|read)\b|^[^\w]*[A-Z][\w ,.]*:|\?|!")
_SOMEBODY = PEOPLE | TRADES | KINSHIP  # who may be meant, though no name and no mention
_YOU = re.compile(r"\b(?:you|your|yours)\b", re.IGNORECASE)
FEW = 2  # of them in a sentence or two


MANY = 3  # of them in a paragraph, from which a teller's asides elsewhere explain them less
OWN_MANY = 0.2  # share of scenes with such a paragraph, from which they too are the manner; chosen on the tuning half
NEAR, NEARER = 3, 1  # paragraphs before 'he' in which somebody stands who may be meant; where 'he' heard or felt it
_INSIDE = re.compile(
    r"\b(?:heard|saw|felt|knew|thought|wondered|remembered|wished|hoped|found (?:him|her)self|(?:his|her) heart"
    r"|perceived|noticed|reali[sz]ed|resolved|could (?:see|hear|feel)|was (?:conscious|aware|glad|sorry|afraid))\b"
)


def find(seen: Seen) -> Iterator[Finding]:
    found = [one for number in seen.scenes for one in _selves(seen, number)]
    told = sum(_is_told_of_others(seen.facts[number].counted) for number in seen.scenes)
    many = [one for one in found if one.numbers["times"] >= MANY]
    for some, share in ((found, OWN), (many, OWN_MANY)):
        if len({one.all_scenes for one in some}) <= share * max(told, 1 / OWN):
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
        if "\n" in text or _YOU.search(text):
            continue  # verse, or a letter
        if not _is_told_of_others([*scene.counted[:place], *scene.counted[place + 1 :]]):
            continue  # a scene of its own
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
    talked = {quote.paragraph for quote in scene.quotes}
    met: dict[str, int] = {}  # paragraph in which one of that gender stood last
    for one, person in zip(scene.mentions, meant(scene, cast), strict=True):
        gender = one.gender or known.get(person or "", "")
        orphan = one.kind == "pronoun" and one.subject and one.paragraph > NEAR and one.paragraph not in talked
        if orphan and met.get(gender, 0) < one.paragraph - NEARER:
            again = [
                other
                for other in scene.mentions
                if (other.paragraph, other.kind, other.gender) == (one.paragraph, "pronoun", gender)
            ]
            text = seen.texts[number][one.paragraph]
            start, end = sentence(text, one.start, again[-1].end)
            far = _INSIDE.search(text, start, end) or met.get(gender, 0) < one.paragraph - NEAR
            alone = not _I.search(text, start, end) and _SOMEBODY.isdisjoint(_before(seen, number, one))
            if far and alone and len(again) >= MANY:
                yield Finding(
                    evidence=(seen.span(number, one.paragraph, start, end),),
                    strength=0.6,
                    subject="person: he",
                    words={"said": one.form},
                    numbers={"times": len(again)},
                )
        if one.kind != "self":
            met |= dict.fromkeys((gender,) if gender else ("m", "f"), one.paragraph)


def _before(seen: Seen, number: int, one: Mention) -> set[str]:
    """Words that stand right before, in its own paragraph and the one before."""
    texts = seen.texts[number]
    return set(re.findall(r"\w+", f"{texts[one.paragraph - 1]} {texts[one.paragraph][: one.start]}".lower()))


CHECK = Check(
    id="person",
    name="The person changes within a scene",
    family="viewpoint",
    looks_at="‘I’, ‘me’ or ‘my’ in the telling of a scene that is told of ‘he’ and ‘she’; and ‘he’ again and again, "
    "with nobody near who may be meant, in a scene that an ‘I’ tells.",
    method="In scenes whose pronouns outside speech are nearly all of the third person: paragraphs without speech in "
    "which somebody says ‘I’, and is not said to think or write it. Where a teller says ‘I’ in a tenth of "
    "such scenes, that is the book's manner, and only paragraphs full of it are asked about. The rule is our own.",
    blind="‘We’. Paragraphs with speech in them. ‘He’ for the one who tells, where another man is near. Thoughts "
    "that nothing marks are asked about.",
    reads=("words", "facts", "cast"),
    find=find,
    recipe=2,
)
