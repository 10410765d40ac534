"""Eyes, hair, height, and the side of a hand or a scar, that differ from one place to another."""

import re
from collections import defaultdict
from collections.abc import Iterator, Sequence
from itertools import combinations

from afterdraft.questions.check import Check
from afterdraft.questions.looks_changed import is_accounted_for
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.reading.lexicon import ROLES
from afterdraft.reading.trait_words import SHADES
from afterdraft.whole.traits import PersonTrait, can_both_be
from afterdraft.whole.turns import meant

SURE = 0.75  # of whose it is, from which it is asked about: below, an owner is more often mistaken than the writer
SPEAKS = 0.8  # of 'she' in the paragraph of her own words; chosen on the demonstration book
BESIDE = 20  # characters behind the words
_SEEMS = re.compile(
    r"\b(?:seem\w*|appear\w*|in (?:this|that|the) (?:light|dark\w*)|dyed|wig|bruised|blackened|swollen"
    r"|shadow\w*|darkened|(?:dark|black|red|bright) with|more than usual\w*|put on|all in a piece"
    r"|had on(?!\s(?:the|his|her)\s(?:left|right)\b))\b"
)
_COLOUR = "(?:dark|black|light|grey|gray|green|blue|red|brown|white|fair|pale|tall|short)"
_TURNS = re.compile(rf"\b(?:look(?:ed|s)?|grew|grown|turned|gone|went) (?:\w+ )?{_COLOUR}\b")
_YOUNG = re.compile(r"\b(?:baby|babies|newborn|cradle|christened)\b")  # whose hair is another later
_MOOD = re.compile(r"eyes?,?\s(?:too,?\s)?(?:was|were|are|is|dark\b)")  # 'her eyes were dark', 'her eyes dark and wild'
_WHOSE = re.compile(r"\b(?:whose|who\shad)\s(?:\w+\s)?$")  # of somebody, as a rule, and not of an hour
_LIKE = re.compile(r"\b(?:as if|as though|like|almost)\b")
_CLAUSE = re.compile(r"[,;:—]")
_SOMEBODY = re.compile(rf"\W*(?:The|An?|One|Another)\s(?:[\w-]+\s){{0,3}}(?:{'|'.join(sorted(ROLES))})\b")
_HE = re.compile(r"\b(?:he|she|his|her|him)\b", re.IGNORECASE)
_HEARD = re.compile(r"\b(?:heard?|hears|saw|sees?|watch(?:ed|es)?|felt|let|made|helped|noticed) (?:him|her) \w+")
_LOOKED_AT = re.compile(
    r"\b(?:considered|studied|regarded|surveyed|examined|inspected|watched|scanned|took\sin|(?:looked|gazed|peered|glanced|stared"
    r"|smiled|blinked)\s(?:\w+\s)?(?:at|into|over|upon|down\sat|up\sat))\s(?:her|him|[A-Z]\w+|the\s\w+)\b[^.!?:;—]*[:;—]"
)  # what comes behind is what is seen of the other
_NAMED = re.compile(r"\b(?:he|she|[A-Z]\w+)\b")
KINDS = ("eyes", "hair", "beard", "height", "hand", "scar", "limp")


def find(seen: Seen) -> Iterator[Finding]:
    by: defaultdict[tuple[str, str], list[PersonTrait]] = defaultdict(list)
    for one in seen.traits:
        told = one.trait in KINDS and _sure(seen, one) >= SURE and not _seems(seen, one)
        if told and not any(of(seen, one) for of in OTHERS):
            by[one.person, one.trait].append(one)
    for (person, trait), said in by.items():
        pairs = [pair for pair in combinations(said, 2) if not can_both_be(trait, pair[0].value, pair[1].value)]
        differing = [pair for pair in pairs if not is_accounted_for(seen, *pair)]
        if differing:
            yield _finding(seen, person, trait, max(differing, key=lambda pair: _strength(seen, pair)))


def _seems(seen: Seen, one: PersonTrait) -> bool:
    """Whether it is said as a likeness or a passing light, before the words or right behind them."""
    text = seen.texts[one.scene][one.paragraph]
    start, end = sentence(text, one.start, one.end)
    behind = one.end + len(_CLAUSE.split(text[one.end : min(end, one.end + BESIDE)])[0])
    clause = start + max((found.end() for found in _CLAUSE.finditer(text[start : one.start])), default=0)
    lasting = _WHOSE.search(text[: one.start])
    mood = one.trait == "eyes" and one.value in SHADES and _MOOD.match(text, one.start) and not lasting
    young = one.trait == "hair" and _YOUNG.search(text)
    turns = bool(mood or young) or any(found.end() > one.start for found in _TURNS.finditer(text, start, one.end))
    return turns or bool(_SEEMS.search(text[start:behind]) or _LIKE.search(text[clause:behind]))


def _of_another(seen: Seen, one: PersonTrait) -> bool:
    """Whether its sentence begins with somebody else's name that is a word besides, and was read as such."""
    start, end = sentence(seen.texts[one.scene][one.paragraph], one.start, one.end)
    head = re.match(r"[A-Z]\w+", seen.texts[one.scene][one.paragraph][start:end])
    mentions = seen.facts[one.scene].mentions
    if not head or any((each.paragraph, each.start) == (one.paragraph, start) for each in mentions):
        return False
    return seen.book.cast.by_form.get(head.group().lower(), one.person) != one.person


def _of_one_looked_at(seen: Seen, one: PersonTrait) -> bool:
    """Whether the words stand in what that person sees of somebody: 'He considered her: the sensible brown eyes'."""
    text = seen.texts[one.scene][one.paragraph]
    return bool(_LOOKED_AT.search(text[sentence(text, one.start, one.end)[0] : one.start]))


def _of_somebody_there(seen: Seen, one: PersonTrait) -> bool:
    """Whether its sentence is about somebody by what they are, who is not known to be that person: 'The man on the
    straw rolled his black eyes'."""
    text = seen.texts[one.scene][one.paragraph]
    start = sentence(text, one.start, one.end)[0]
    begins = _SOMEBODY.match(text[start : one.start])
    if not begins or _NAMED.search(text, start + begins.end(), one.start):
        return False
    scene = seen.facts[one.scene]
    people = zip(scene.mentions, meant(scene, seen.book.told[one.scene]), strict=True)
    here = (
        who for each, who in people if each.paragraph == one.paragraph and start <= each.start < start + begins.end()
    )
    return one.person not in here


def _of_one_behind(seen: Seen, one: PersonTrait) -> bool:
    """Whether a pronoun of its sentence stands before that person's name, or one whom that person hears or sees: 'His
    face was so thin that Tom thought of fever; but his eyes'."""
    text = seen.texts[one.scene][one.paragraph]
    start = sentence(text, one.start, one.end)[0]
    scene = seen.facts[one.scene]
    named = [
        each.start
        for each, owner in zip(scene.mentions, seen.owners(one.scene), strict=True)
        if each.kind == "name" and owner and owner[0] == one.person
        if each.paragraph == one.paragraph and start <= each.start < one.start
    ]
    if not named:
        return False
    return bool(_HE.search(text, start, min(named)) or _HEARD.search(text, min(named), one.start))


def _sure(seen: Seen, one: PersonTrait) -> float:
    """Of whose it is; more where that person speaks in the same paragraph."""
    spoken = seen.book.spoken[one.scene]
    quotes = seen.facts[one.scene].quotes
    speaks = any(
        said.speaker == one.person and said.sure >= SURE and quotes[said.quote].paragraph == one.paragraph
        for said in spoken
    )
    return max(one.sure, SPEAKS) if speaks else one.sure


def _strength(seen: Seen, pair: Sequence[PersonTrait]) -> float:
    return min(_sure(seen, one) for one in pair)


def _finding(seen: Seen, person: str, trait: str, pair: Sequence[PersonTrait]) -> Finding:
    name = seen.name(person)
    return Finding(
        evidence=tuple(_span(seen, one) for one in pair),
        strength=round(0.4 + 0.6 * _strength(seen, pair), 3),
        subject=f"{trait} of {name.lower()}",
        words={"name": name, "trait": trait, "first": pair[0].value, "other": pair[1].value},
        numbers={"sure": _strength(seen, pair)},
        people=(person,),
    )


def _span(seen: Seen, one: PersonTrait) -> Span:
    start, end = sentence(seen.texts[one.scene][one.paragraph], one.start, one.end)
    return seen.span(one.scene, one.paragraph, start, end)


OTHERS = (_of_another, _of_one_looked_at, _of_somebody_there, _of_one_behind)

CHECK = Check(
    id="trait",
    name="Looks that differ",
    family="continuity",
    looks_at="Colour of eyes, hair and beard, tall or short, left or right hand, the side of a scar or a lame leg, of "
    "one person in two places.",
    method="What is said of looks is given to whoever is named or most likely meant by ‘his’ or ‘her’, with how sure "
    "that is; only owners that are surer than three in four are held against each other. Colours that shade "
    "into one another (grey, pale blue), hair gone grey, and light that changes are let be; and "
    "hair of two colours where the text from the one place to the other tells that it is dyed or growing out, or "
    "somebody is astonished at it beside either. The rules are our own.",
    blind="Most looks are told of ‘he’ or ‘she’ at a distance from the name, and are passed over as unsure. Dyed "
    "hair and disguise of which nothing is said are asked about. ‘The red-haired man’ behind a sentence about "
    "somebody is nobody’s.",
    reads=("words", "cast"),
    find=find,
    recipe=11,
)
