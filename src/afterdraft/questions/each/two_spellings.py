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

OFTEN = 5  # times that the one form stands at least; chosen on the tuning half
AS_OFTEN = 5  # as often as the other, likewise
FEW = 3  # times that the other stands at most, likewise
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
    found = [pair for pair in pairs if _is_stray(stands[pair[0]], stands[pair[1]])]
    for often, seldom in sorted(found, key=lambda pair: (-len(stands[pair[0]]), pair))[:MOST]:
        yield _finding(seen, often, seldom, stands)


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


def _is_stray(often: Sequence[_Stands], seldom: Sequence[_Stands]) -> bool:
    """Whether the one is what the book mostly has, and the other stands a few times, told: speech has its own ways."""
    few = len(seldom) <= FEW and len(often) >= max(OFTEN, AS_OFTEN * len(seldom))
    return few and all(one.told for one in seldom)


def _finding(seen: Seen, often: str, seldom: str, stands: Mapping[str, Sequence[_Stands]]) -> Finding:
    stray = stands[seldom]
    here = (stray[0].scene, stray[0].paragraph)
    usual = [one for one in stands[often] if one.told] or stands[often]
    near = min(usual, key=lambda one: (abs(one.scene - here[0]), abs(one.paragraph - here[1])))
    return Finding(
        evidence=tuple(dict.fromkeys(_sentence(seen, one) for one in (*stray, near))),
        strength=0.6,
        subject=f"two spellings: {seldom}",
        words={"seldom": seldom, "often": often},
        numbers={"seldom": len(stray), "often": len(stands[often])},
    )


def _sentence(seen: Seen, one: _Stands) -> Span:
    return seen.span(one.scene, one.paragraph, *sentence(seen.texts[one.scene][one.paragraph], one.start, one.end))


CHECK = Check(
    id="two spellings",
    name="A word spelled in two ways",
    family="accidents",
    looks_at="A word that the book mostly spells in one way (‘recognise’, ‘armchair’) and now and then, outside "
    "speech, in the other (‘recognize’, ‘arm-chair’).",
    method=f"Counts words of which dictionaries of British and American English list two spellings, and words that "
    f"stand with a hyphen and as one. It is asked where one way stands {AS_OFTEN} times as often as the other, and the "
    f"other {FEW} times at most. Which is right is not said. Common practice of copy editors; the list is our own, "
    "from memory.",
    blind="A letter or a document within the story that is meant to spell otherwise is asked about. Words with "
    "capitals, and two words against one (‘for ever’).",
    reads=("words",),
    find=find,
)
