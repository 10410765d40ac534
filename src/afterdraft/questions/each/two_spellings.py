"""A word that the book spells in two ways."""

import re
from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.quotations import quotations

TIMES = 6  # that both stand together at least; chosen on the tuning half
AS_OFTEN = 5  # times the one as the other, from which the other has strayed in, likewise
STRAY, EITHER = 0.6, 0.5  # strength
SHOWN = 3  # sentences with the rarer one that are shown
MOST = 3  # words asked about in a book
TWO = 2  # spellings
_WORD = re.compile(r"(?<![\w’'-])[a-z]+(?:-[a-z]+)?(?![\w’'-])")
_HYPHENED = re.compile(r"(?!re-|co-)[a-z]{2,}-[a-z]{2,}")  # who re-covers does not recover

# Words of which both spellings are in use; from memory, as dictionaries of British and American English list them
_OUR = words_of(
    """
    ard arm behavi cand clam clang col demean endeav ferv fav flav harb hon hum lab neighb od parl ranc rig rum sav
    splend succ tum val vap vig
    """
)
_OUR_ENDS = "s ed ing ite ites able ably less ful fully y hood ly er ers ist"
_ISE = words_of(
    """
    agon apolog author bapt brutal capital central character civil critic crystall dramat econom emphas equal familiar
    fertil general harmon hospital human ideal immortal italic jeopard legal local memor modern monopol moral natural
    neutral organ patron penal popular public pulver rational real recogn rhapsod satir scrutin signal social special
    stabil steril subsid symbol sympath tantal terror theor tranquill tyrann util vandal visual vocal vulgar colon
    """
)
_ISE_ENDS = "e ed es ing ation er"
_ONE_L = words_of(
    "cancel counsel dial fuel jewel label level marvel model parcel pencil quarrel rival signal travel wool"
)
_L_ENDS = "ed ing er ers or ors ous en"
_PAIRS = """
    grey gray  greyish grayish  greyer grayer  greyness grayness  toward towards  afterward afterwards
    theatre theater  theatres theaters  centre center  centres centers  lustre luster  sombre somber  spectre specter
    spectres specters  sabre saber  sabres sabers  meagre meager  fibre fiber  fibres fibers  sepulchre sepulcher
    calibre caliber  manoeuvre maneuver  manoeuvres maneuvers  reconnoitre reconnoiter  defence defense  offence offense
    pretence pretense  judgement judgment  judgements judgments  acknowledgement acknowledgment
    connexion connection  connexions connections  reflexion reflection  plough plow  ploughed plowed  mould mold
    mouldy moldy  sceptic skeptic  sceptical skeptical  scepticism skepticism  gaol jail  gaoler jailer
    pyjamas pajamas  moustache mustache  moustaches mustaches  ageing aging  cosy cozy  cosily cozily  jewellery jewelry
    programme program  programmes programs  whisky whiskey  axe ax  gipsy gypsy  gipsies gypsies  waggon wagon
    waggons wagons  despatch dispatch  despatched dispatched  despatches dispatches  shew show  shewed showed
    lacquey lackey  surprize surprise  surprized surprised  encrease increase  encreased increased  ancle ankle
    ancles ankles  cloathes clothes  chuse choose  grimey grimy  fulfil fulfill  instal install
    enrol enroll  skilful skillful  wilful willful  omelette omelet  cigarette cigaret  okay ok  goodbye goodby
    drily dryly  gaily gayly
"""


def _forms() -> dict[str, str]:
    """What stands for one word, by each of its spellings."""
    found: dict[str, str] = {}
    listed = _PAIRS.split()
    pairs = list(zip(listed[::2], listed[1::2], strict=True))
    pairs += [(f"{stem}our{end}", f"{stem}or{end}") for stem in _OUR for end in ("", *_OUR_ENDS.split())]
    pairs += [(f"{stem}is{end}", f"{stem}iz{end}") for stem in _ISE for end in _ISE_ENDS.split()]
    pairs += [(f"{stem}l{end}", f"{stem}{end}") for stem in _ONE_L for end in _L_ENDS.split()]
    for one, other in pairs:
        found[one] = found[other] = other
    return found


_FORMS = _forms()


@dataclass(frozen=True, slots=True)
class _Stands:
    scene: int
    paragraph: int
    start: int
    end: int
    told: bool  # outside speech and verse


def find(seen: Seen) -> Iterator[Finding]:
    stands = _stands(seen)
    ways: defaultdict[str, list[str]] = defaultdict(list)
    for word in stands:
        ways[_FORMS.get(word, word.replace("-", ""))].append(word)
    pairs = [sorted(words, key=lambda word: -len(stands[word])) for words in ways.values() if len(words) == TWO]
    asked = [(often, seldom) for often, seldom in pairs if _are_asked(stands[often], stands[seldom])]
    found = [_finding(seen, often, seldom, stands) for often, seldom in asked]
    yield from sorted(found, key=lambda one: (-one.strength, -one.numbers["often"], one.subject))[:MOST]


def _stands(seen: Seen) -> dict[str, list[_Stands]]:
    """Where each word stands that has two spellings, or has or may have a hyphen, in order."""
    found: defaultdict[str, list[_Stands]] = defaultdict(list)
    for number, scene in enumerate(seen.texts):
        speech: defaultdict[int, list[tuple[int, int]]] = defaultdict(list)
        for quote in quotations(scene):
            speech[quote.paragraph].append((quote.start, quote.end))
        for place, text in enumerate(scene):
            for match in _WORD.finditer(text):
                start, end = match.span()
                told = "\n" not in text and not any(begins <= start < ends for begins, ends in speech[place])
                found[match.group()].append(_Stands(number, place, start, end, told))
    hyphened = {
        word.replace("-", "")
        for word in found
        if _HYPHENED.fullmatch(word) and all(part in found for part in word.split("-"))  # no syllables: 'wait-ing'
    }
    return {word: where for word, where in found.items() if word in _FORMS or word.replace("-", "") in hyphened}


def _are_asked(often: Sequence[_Stands], seldom: Sequence[_Stands]) -> bool:
    """Whether the rarer one stands in the telling: speech has its own ways."""
    return len(often) + len(seldom) >= TIMES and any(one.told for one in seldom)


def _finding(seen: Seen, often: str, seldom: str, stands: Mapping[str, Sequence[_Stands]]) -> Finding:
    told = [one for one in stands[seldom] if one.told]
    here = told[0]
    usual = [one for one in stands[often] if one.told] or stands[often]
    near = min(usual, key=lambda one: (abs(one.scene - here.scene), abs(one.paragraph - here.paragraph)))
    return Finding(
        evidence=tuple(dict.fromkeys(_sentence(seen, one) for one in (*told[:SHOWN], near))),
        strength=STRAY if len(stands[often]) >= AS_OFTEN * len(stands[seldom]) else EITHER,
        subject=f"two spellings: {seldom}",
        words={"seldom": seldom, "often": often},
        numbers={"seldom": len(stands[seldom]), "often": len(stands[often]), "told": len(told)},
    )


def _sentence(seen: Seen, one: _Stands) -> Span:
    return seen.span(one.scene, one.paragraph, *sentence(seen.texts[one.scene][one.paragraph], one.start, one.end))


CHECK = Check(
    id="two spellings",
    name="A word spelled in two ways",
    family="accidents",
    looks_at="A word that the book spells in one way (‘recognise’, ‘armchair’) and, outside speech, in the other as "
    "well (‘recognize’, ‘arm-chair’).",
    method="Counts words of which dictionaries of British and American English list two spellings, and words that "
    f"stand with a hyphen and as one; both stand {TIMES} times together. The sharper where one has strayed in: the "
    f"other stands {AS_OFTEN} times as often. At most {MOST} words of a book. Which is right is not said. Common "
    "practice of copy editors; the list is our own, from memory.",
    blind="A letter or a document within the story that is meant to spell otherwise is asked about. Words with "
    "capitals, and two words against one (‘for ever’).",
    reads=("words",),
    find=find,
)
