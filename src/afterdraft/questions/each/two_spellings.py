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


_ENDS = {"-our": ("-our", "-or"), "-ise": ("-ise", "-ize"), "-ll": ("a doubled l", "a single l")}
_ENDINGS = re.compile(r"(?:s|ed|er|ing|ish|ly|n|ness)$")


@dataclass(frozen=True, slots=True)
class _Form:
    """A spelling: of which word, or of which ending that words have in common, and which of the two it is."""

    of: str
    side: int
    other: str


def _forms() -> dict[str, _Form]:
    listed = _PAIRS.split()
    pairs = [(_ENDINGS.sub("", one), one, other) for one, other in zip(listed[::2], listed[1::2], strict=True)]
    pairs += [("-our", f"{stem}our{end}", f"{stem}or{end}") for stem in _OUR for end in ("", *_OUR_ENDS.split())]
    pairs += [("-ise", f"{stem}is{end}", f"{stem}iz{end}") for stem in _ISE for end in _ISE_ENDS.split()]
    pairs += [("-ll", f"{stem}l{end}", f"{stem}{end}") for stem in _ONE_L for end in _L_ENDS.split()]
    return {
        word: _Form(of, side, (other, one)[side]) for of, one, other in pairs for side, word in enumerate((one, other))
    }


_FORMS = _forms()


@dataclass(frozen=True, slots=True, order=True)
class _Stands:
    scene: int
    paragraph: int
    start: int
    end: int
    told: bool  # outside speech and verse


def find(seen: Seen) -> Iterator[Finding]:
    stands = _stands(seen)
    ways: defaultdict[str, tuple[list[str], list[str]]] = defaultdict(lambda: ([], []))
    for word in stands:
        form = _form(word)
        ways[form.of][form.side].append(word)
    found = [one for of, sides in ways.items() for one in _asked(seen, of, sides, stands)]
    yield from sorted(found, key=lambda one: (-one.strength, -one.numbers["often"], one.subject))[:MOST]


def _form(word: str) -> _Form:
    plain = word.replace("-", "")
    return _FORMS.get(word) or _Form(plain, int(word == plain), plain)


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


def _asked(
    seen: Seen, of: str, sides: Sequence[Sequence[str]], stands: Mapping[str, Sequence[_Stands]]
) -> Iterator[Finding]:
    """Where both spellings stand, and the rarer one in the telling: speech has its own ways."""
    often, seldom = sorted(sides, key=lambda words: -sum(len(stands[word]) for word in words))
    counts = [sum(len(stands[word]) for word in words) for words in (often, seldom)]
    told = sorted((one, word) for word in seldom for one in stands[word] if one.told)
    if not told or sum(counts) < TIMES:
        return
    strays = list(dict.fromkeys(word for _, word in told[:SHOWN]))
    usual = _like(strays[0], often, stands)
    yield Finding(
        evidence=tuple(
            dict.fromkeys(
                _sentence(seen, one) for one in (*(one for one, _ in told[:SHOWN]), _near(told[0][0], usual, stands))
            )
        ),
        strength=STRAY if counts[0] >= AS_OFTEN * counts[1] else EITHER,
        subject=f"two spellings: {of}",
        words={"seldom": ", ".join(strays), "often": usual, **_as(of, _form(usual).side)},
        numbers={"seldom": counts[1], "often": counts[0], "told": len(told)},
    )


def _as(of: str, side: int) -> dict[str, str]:
    """How words of one ending are spelled, by names for the two ways."""
    ways = _ENDS.get(of)
    return {"often as": ways[side], "seldom as": ways[1 - side]} if ways else {}


def _like(stray: str, often: Sequence[str], stands: Mapping[str, Sequence[_Stands]]) -> str:
    """The same word as a stray, spelled as the others are; where that does not stand in the book, the commonest."""
    same = _form(stray).other
    return same if same in often else max(often, key=lambda word: (len(stands[word]), word))


def _near(one: _Stands, word: str, stands: Mapping[str, Sequence[_Stands]]) -> _Stands:
    usual = [it for it in stands[word] if it.told] or stands[word]
    return min(usual, key=lambda it: (abs(it.scene - one.scene), abs(it.paragraph - one.paragraph)))


def _sentence(seen: Seen, one: _Stands) -> Span:
    return seen.span(one.scene, one.paragraph, *sentence(seen.texts[one.scene][one.paragraph], one.start, one.end))


CHECK = Check(
    id="two spellings",
    name="A word spelled in two ways",
    family="accidents",
    looks_at="A word that the book spells in one way (‘recognise’, ‘armchair’) and, outside speech, in the other as "
    "well (‘recognize’, ‘arm-chair’).",
    method="Counts words of which dictionaries of British and American English list two spellings, those in -our, -ise "
    "and a doubled l each together, and words that stand with a hyphen and as one. Both stand "
    f"{TIMES} times together. The sharper where one has strayed in: the other stands {AS_OFTEN} times as often. At "
    f"most {MOST} in a book. Which is right is not said. Common practice of copy editors; the list is our own, "
    "from memory.",
    blind="A letter or a document within the story that is meant to spell otherwise is asked about. Words with "
    "capitals, and two words against one (‘for ever’).",
    reads=("words",),
    find=find,
)
