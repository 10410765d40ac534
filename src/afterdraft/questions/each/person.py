"""'I' in the telling of a scene about 'he' and 'she', or 'he' for the one who tells."""

import re
from collections.abc import Iterator, Sequence

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentences
from afterdraft.reading.counted import Counted

PRONOUNS = 8  # outside speech, of a scene at least
MOSTLY = 0.97  # share of them that are 'he', 'she', 'they' in a scene told so; chosen on the tuning half
OWN = 0.1  # share of scenes told of others, outside speech an 'I' in them, from which a teller's asides are the manner
_I = re.compile(r"(?<!\b[A-Z]\s)(?<![\w’'*_])(?:I|me|my|myself)(?=[\s,.;!?—]|[’'](?:d|ll|ve|m)\b)(?!\.\w)")
_TELLER = re.compile(
    r"\bI\s(?:\w+ly\s)?(?:know|think|have|am|suppose|believe|say|confess|remember|shall|will|must|may|cannot|do|fear"
    r"|trust|hope|mean|can|dare|need|should|would)\b|\bme\ssay\b|\bmy\s(?:reader|readers|story|tale|hero|heroine)\b"
)
_THOUGHT = re.compile(r"[*_“”‘\"]|\b(?:thought|wondered|said|asked|wrote|read)\b|^[^\w]*[A-Z][\w ,.]*:|\?|!")
FEW = 2  # of them in a sentence or two


def find(seen: Seen) -> Iterator[Finding]:
    found = {number: list(_selves(seen, number)) for number in seen.scenes}
    told = sum(_is_told_of_others(seen.facts[number].counted) for number in seen.scenes)
    if sum(bool(some) for some in found.values()) > OWN * max(told, 1 / OWN):
        return
    for some in found.values():
        yield from some


def _is_told_of_others(paragraphs: Sequence[Counted]) -> bool:
    first, third = sum(one.first for one in paragraphs), sum(one.third for one in paragraphs)
    return first + third >= PRONOUNS and third >= MOSTLY * (first + third)


def _selves(seen: Seen, number: int) -> Iterator[Finding]:
    """Paragraphs with an 'I' that is neither spoken nor thought, in a scene that is told of others for the rest."""
    scene = seen.facts[number]
    for place, text in enumerate(seen.texts[number]):
        if scene.counted[place].first == 0 or any(one.paragraph == place for one in scene.quotes):
            continue
        if not _is_told_of_others([*scene.counted[:place], *scene.counted[place + 1 :]]):
            continue
        own = [(start, end) for start, end in sentences(text) if _I.search(text, start, end)]
        if "\n" in text or any(one.search(text[start:end]) for start, end in own for one in (_THOUGHT, _TELLER)):
            continue  # verse, a thought, or whoever tells it all
        if own:
            start, end = own[0][0], own[-1][1]
            count = len(_I.findall(text))
            yield Finding(
                evidence=(seen.span(number, place, start, end),),
                strength=0.8 if count >= FEW else 0.65,
                subject="person",
                numbers={"times": count},
            )


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
