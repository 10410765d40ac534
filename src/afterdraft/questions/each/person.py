"""'I' in the telling of a scene about 'he' and 'she', or 'he' or a name for the one who tells."""

import re
from collections.abc import Iterator, Sequence
from itertools import groupby
from operator import itemgetter

from afterdraft.questions.check import Check
from afterdraft.questions.he_for_i import Run, he_for_i
from afterdraft.questions.name_for_i import names_for_i
from afterdraft.questions.own_words import acts, is_aside, is_set_in, is_thought
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentences
from afterdraft.questions.stray_i import is_slip, selves_in
from afterdraft.reading.counted import Counted
from afterdraft.reading.facts import Mention
from afterdraft.whole.evidence import told_by_i

PRONOUNS = 8  # outside speech, of a scene at least
MOSTLY = 0.92  # share of them that are 'he', 'she', 'they' in a scene told so; chosen on the tuning half
OWN = 0.1  # share of scenes told of others, outside speech an 'I' in them, from which a teller's asides are the manner
_WROTE = re.compile(
    r"\b(?:he|she|[A-Z]\w+)\s(?:had\s)?(?:wrote|written|writes|read\s(?:out|aloud))\b|\bit\s(?:said|read|ran):"
)
_SCRIPT = re.compile(r"\W*(?!I\b)[A-Z]\w+\s(?:\([^)]*\)\s*)?(?:I|No|Yes|Oh|Well|Why|What|But|And|You)\b")  # 'Ada No, I'
_YOU = re.compile(r"\b(?:you|your|yours|thou|thee|thy|thine|ye)\b", re.IGNORECASE)
BY_I = 0.3  # share of all scenes told by an I, from which an I among others is the teller's; chosen by hand
FEW = 2  # of them in a sentence or two
MANY = 3  # of them in a paragraph, from which a teller's asides elsewhere explain them less
SHOWN = 3  # sentences that are shown
SOME, MANNER = (
    4,
    0.2,
)  # scenes told of others with an I or we outside speech, and their share, above which a teller says so


def find(seen: Seen) -> Iterator[Finding]:
    found = [one for number in seen.scenes for one in _selves(seen, number)]
    told = sum(_is_told_of_others(seen.facts[number].counted) for number in seen.scenes)
    by_i = [number for number in seen.scenes if told_by_i(seen.facts[number])]
    rare = len({one.all_scenes for one in found}) <= OWN * max(told, 1 / OWN)
    if rare and len(by_i) <= BY_I * len(seen.facts) and not _is_manner(seen, told):
        yield from found
    stray = [_of_whom(seen, number, one) for number in by_i for one in he_for_i(seen, number)]
    if len(stray) <= max(1, OWN * len(by_i)):
        yield from stray
    for number, named in groupby(names_for_i(seen), key=itemgetter(0)):
        yield _by_name(seen, number, [one for _, one in named])


def _is_told_of_others(paragraphs: Sequence[Counted]) -> bool:
    first, third = sum(one.first for one in paragraphs), sum(one.third for one in paragraphs)
    return first + third >= PRONOUNS and third >= MOSTLY * (first + third)


def _is_manner(seen: Seen, told: int) -> bool:
    """Whether an I, or a we, stands outside speech in many scenes that are told of others."""
    some = [
        number
        for number in seen.scenes
        if _is_told_of_others(seen.facts[number].counted)
        and any(_has_i(seen, number, place) for place in range(len(seen.texts[number])))
    ]
    return len(some) > max(SOME, MANNER * told)


def _has_i(seen: Seen, number: int, place: int) -> bool:
    """Whether a paragraph of nobody's speech and no letter has one."""
    scene = seen.facts[number]
    talks = any(one.paragraph == place for one in scene.quotes)
    return scene.counted[place].first > 0 and not talks and (number, place) not in seen.set_in


def _selves(seen: Seen, number: int) -> Iterator[Finding]:
    """Paragraphs with an 'I' that is neither spoken nor thought, in a scene that is told of others for the rest."""
    scene = seen.facts[number]
    for place, text in enumerate(seen.texts[number]):
        if scene.counted[place].first == 0 or any(one.paragraph == place for one in scene.quotes):
            continue
        if (number, place) in seen.set_in or "\n" in text or _YOU.search(text) or _SCRIPT.match(text):
            continue  # verse, a letter, or a play
        if _WROTE.search(text):
            continue  # read out of a letter, without marks
        if not _is_told_of_others([*scene.counted[:place], *scene.counted[place + 1 :]]):
            continue  # a scene of its own
        own = [one for one in sentences(text) if selves_in(text[slice(*one)])]
        own = [one for one in own if not seen.is_in_italics(number, place, *one)]
        plain = [one for one in own if not is_aside(text[slice(*one)])]
        if not plain or is_thought(text, own) or is_set_in(seen, number, place):
            continue
        count = sum(selves_in(text[slice(*one)]) for one in plain)
        acting = count >= MANY or any(acts(text[slice(*one)]) for one in plain)
        if acting and is_slip(seen, number, place, plain):
            yield Finding(
                evidence=(seen.span(number, place, plain[0][0], plain[-1][1]),),
                strength=0.8 if count >= FEW else 0.65,
                subject="person",
                numbers={"times": count},
            )


def _of_whom(seen: Seen, number: int, run: Run) -> Finding:
    return Finding(
        evidence=(seen.span(number, run.paragraph, run.start, run.end),),
        strength=0.6,
        subject="person: he",
        words={"said": run.said},
        numbers={"times": run.times},
    )


def _by_name(seen: Seen, number: int, named: Sequence[Mention]) -> Finding:
    """The I of a scene, told of by name."""
    spans = [seen.span(number, one.paragraph, one.start, one.end) for one in named]
    narrator = seen.book.told[number].narrator
    return Finding(
        evidence=tuple(dict.fromkeys(map(seen.sentence, spans)))[:SHOWN],
        strength=0.75,
        subject="person: name",
        words={"name": spans[0].quote},
        people=(narrator.id,) if narrator else (),
        numbers={"times": len(spans)},
    )


CHECK = Check(
    id="person",
    name="The person changes within a scene",
    family="viewpoint",
    looks_at="‘I’, ‘me’ or ‘my’ in the telling of a scene that is told of ‘he’ and ‘she’; and, in a scene that an ‘I’ "
    "tells, ‘he’ again and again with nobody near who may be meant, or the teller’s own name.",
    method="In scenes whose pronouns outside speech are nearly all of the third person: paragraphs without speech in "
    "which somebody says ‘I’ and did something, by several such words or in a sentence that goes on from the one "
    "before; where nothing there or right before it is read, written, said, thought or remembered, the words stand "
    "nowhere else in the book, and no letter or report is set in between a date, a name or a colon and a name; not in "
    "a book of which an ‘I’ tells more than a few scenes, nor where an ‘I’ or a ‘we’ stands in many that are told of "
    "others. In scenes that an ‘I’ tells: sentences without an ‘I’ and with ‘he’ three times, told of what is past, "
    "where nobody of that gender stands near and the ‘I’ is there before and behind; and sentences without an ‘I’ in "
    "which the one whose chapter it is, or who is known to tell, does or says something by name, or is looked at, "
    "where that is rare, the ‘I’ is near, and tells throughout and not only in a letter. The rule is our own.",
    blind="Paragraphs with speech in them, but for the name. ‘He’ for the one who tells, where another man is near. "
    "A surname with a title for the one who tells. A single short sentence with an ‘I’, which may be a line that "
    "somebody remembers; paragraphs that tell of letters, and what is beside them.",
    reads=("words", "facts", "cast"),
    find=find,
    recipe=14,
)
