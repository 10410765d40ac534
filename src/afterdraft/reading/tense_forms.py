"""Forms of English verbs, told from the word alone: what a pipeline without a lemmatiser leaves open.

The irregular verbs are those of any school grammar, written down by hand (common practice).
"""

from collections.abc import Iterator
from typing import Literal

from afterdraft.reading.lexicon import words_of

Form = Literal["base", "s", "past", "part", "both", "ing", "modal", ""]
# part: 'gone' · both: past or participle, 'walked', 'made' · modal: 'would' · base: also 'put', whatever it is

_IRREGULAR = """
    be was been, be were been, become became become, begin began begun, bend bent bent, bind bound bound, bite bit
    bitten, bleed bled bled, blow blew blown, break broke broken, breed bred bred, bring brought brought, build
    built built, burn burnt burnt, buy bought bought, catch caught caught, choose chose chosen, cling clung clung,
    come came come, creep crept crept, deal dealt dealt, dig dug dug, do did done, draw drew drawn, dream dreamt
    dreamt, drink drank drunk, drive drove driven, eat ate eaten, fall fell fallen, feed fed fed, feel felt felt,
    fight fought fought, find found found, flee fled fled, fling flung flung, fly flew flown, forget forgot
    forgotten, forgive forgave forgiven, freeze froze frozen, get got got, get got gotten, give gave given, go went
    gone, grind ground ground, grow grew grown, hang hung hung, have had had, hear heard heard, hide hid hidden,
    hold held held, keep kept kept, kneel knelt knelt, know knew known, lay laid laid, lead led led, lean leant
    leant, leap leapt leapt, learn learnt learnt, leave left left, lend lent lent, lie lay lain, light lit lit, lose
    lost lost, make made made, mean meant meant, meet met met, overcome overcame overcome, overhear overheard
    overheard, pay paid paid, ride rode ridden, ring rang rung, rise rose risen, run ran run, say said said, see saw
    seen, seek sought sought, sell sold sold, send sent sent, shake shook shaken, shine shone shone, shoot shot
    shot, show showed shown, shrink shrank shrunk, sing sang sung, sink sank sunk, sit sat sat, sleep slept slept,
    slide slid slid, sling slung slung, smell smelt smelt, speak spoke spoken, speed sped sped, spend spent spent,
    spill spilt spilt, spin spun spun, spit spat spat, spoil spoilt spoilt, spring sprang sprung, stand stood stood,
    steal stole stolen, stick stuck stuck, sting stung stung, stride strode stridden, strike struck struck, strike
    struck stricken, strive strove striven, swear swore sworn, sweep swept swept, swell swelled swollen, swim swam
    swum, swing swung swung, take took taken, teach taught taught, tear tore torn, tell told told, think thought
    thought, throw threw thrown, tread trod trodden, understand understood understood, undertake undertook
    undertaken, wake woke woken, awake awoke awoken, wear wore worn, weave wove woven, weep wept wept, win won won,
    wind wound wound, withdraw withdrew withdrawn, wring wrung wrung, write wrote written, arise arose arisen, bear
    bore borne, beat beat beaten, bid bade bidden, forbid forbade forbidden, forsake forsook forsaken, mistake
    mistook mistaken, partake partook partaken, slay slew slain, smite smote smitten, behold beheld beheld, dwell
    dwelt dwelt, undergo underwent undergone, befall befell befallen
"""
MODALS = words_of("would could should might must may can will shall 'd 'll ca wo ought")
_DOUBLED = frozenset("bdgmnprt")  # letters that a short verb doubles before '-ed', '-ing'
_BASE = 3  # letters that a stem keeps at least


def _irregular() -> Iterator[tuple[str, str, str]]:
    for verb in _IRREGULAR.split(","):
        base, past, part = verb.split()
        yield base, past, part


_PAST = {past for _, past, _ in _irregular()}
_PARTS = {part for base, _, part in _irregular() if part != base}
_BASES = {written: base for base, past, part in _irregular() for written in (past, part)}


def form(word: str) -> Form:
    """Of a verb, in small letters."""
    if word in MODALS:
        return "modal"
    if word in _PAST:
        return "both" if word in _PARTS else "past"
    if word in _PARTS:
        return "part"
    if word in ("is", "has", "does", "'s"):
        return "s"
    if word.endswith("ing") and len(word) > len("bring"):
        return "ing"
    if word.endswith("ed") and len(word) > len("need"):
        return "both"
    return "s" if word.endswith("s") and not word.endswith("ss") else "base"


def stem(word: str) -> str:
    """What all regular forms of a word share, and irregular ones of a verb: 'walk', 'hop', 'mov', 'carri', 'mak'."""
    word = _BASES.get(word) or _uninflected(word)
    if word.endswith("e") and len(word) > _BASE:
        word = word[:-1]
    return f"{word[:-1]}i" if word.endswith("y") and len(word) > _BASE else word


def _uninflected(word: str) -> str:
    for ending in ("ing", "ed", "s"):
        if word.endswith(ending) and len(word) - len(ending) >= _BASE and not word.endswith("ss"):
            word = word.removesuffix(ending)
            return word[:-1] if ending != "s" and word[-1] == word[-2] and word[-1] in _DOUBLED else word
    return word
