"""Narration in the past put into the present, for paragraphs in which every verb is sure.

Imports nothing of the program. The verbs are those of any school grammar, written down by hand.
"""

import re
from collections.abc import Mapping, Sequence

from bench.faults.listed import listed

_STRONG = """
    came come, went go, took take, sat sit, stood stand, rose rise, fell fall, ran run, began begin, found find,
    saw see, felt feel, made make, gave give, got get, kept keep, left leave, told tell, heard hear, lay lie,
    drew draw, held hold, met meet, spoke speak, thought think, threw throw, knew know, said say, brought bring,
    caught catch, broke break, drove drive, ate eat, drank drink, flew fly, forgot forget, froze freeze, grew
    grow, hung hang, hid hide, knelt kneel, laid lay, led lead, leapt leap, lost lose, paid pay, rode ride, rang
    ring, sold sell, sent send, shook shake, shone shine, shot shoot, slept sleep, slid slide, spent spend,
    sprang spring, stole steal, stuck stick, strode stride, struck strike, swept sweep, swung swing, taught
    teach, tore tear, understood understand, woke wake, wore wear, wept weep, won win, wound wind, wrote write,
    bent bend, bit bite, blew blow, bought buy, built build, clung cling, crept creep, dealt deal, dug dig,
    fought fight, flung fling, ground grind, lit light, meant mean, sang sing, sank sink, smote smite, strove
    strive, shrank shrink, sped speed, arose arise, awoke awake, fled flee, overtook overtake, undertook
    undertake, forgave forgive, overheard overhear, beheld behold, wrung wring, stung sting, slung sling, spat
    spit, trod tread, wove weave, overcame overcome, foresaw foresee, mistook mistake, forsook forsake, sought
    seek, spun spin, strung string, sunk sink, wrought work, swam swim, became become, chose choose, swore swear,
    withdrew withdraw
"""
STRONG: Mapping[str, str] = dict(pair.split() for pair in _STRONG.split(","))
PARTS = frozenset(
    listed(
        "come become run found felt made got kept left told heard held met thought said brought caught hung laid "
        "led lost paid sold sent shot slept spent stuck struck swept swung taught understood wept won wound bent "
        "bought built clung crept dealt dug fled overheard beheld wrung stung slung spat overcome fought flung lit "
        "meant sought spun begun knelt"
    )
)  # strong forms that are participles too
AUXILIARY = {
    "could": "can", "might": "may", "did": "does", "had": "has", "was": "is", "were": "are",
}  # fmt: skip
PLURAL = frozenset(listed("they we you these those both people men women children"))
SUBJECTS = frozenset(listed("he she it this everything nothing everybody nobody"))
_BE_OR_HAVE = frozenset(listed("was were be been being is are am had have has having got became become seemed looked"))
_BETWEEN = frozenset(
    listed("not never also always just only still then now almost quite very so too even once again slowly")
)
_BEFORE_NOUNS = frozenset(listed("the his her its their my our a an this that these those"))
_WITHIN = frozenset(
    listed(
        "of in on at by to from with for into upon over under behind beside before after near down up through "
        "across along against round about like than and or but as towards toward until till between among without "
        "within"
    )
)  # before a noun they make it another's than the verb's
_WORD = re.compile(r"[A-Za-z]+(?:[’'][a-z]+)?")
_UNSURE = re.compile(
    r"\b(?:\w+n[’']t|\w+[’'](?:d|ll)|used|put|set|let|cut|read|hit|shut|cost|hurt|spread|burst|bore|born|bound|bade|says?"
    r"|beat|would|is|are|am|has|have|will|can|may|should|must|ought|dared?|needed|neither|nor)\b",
    re.IGNORECASE,
)


def in_the_present(text: str, known: Sequence[str], written: Mapping[str, int]) -> str:
    """A paragraph of narration; "" where it holds a verb of which one cannot be sure without parsing it, or too few.
    `known` are names, which may be subjects; `written` says how often small words stand in the book."""
    if _UNSURE.search(text):
        return ""
    matches = list(_WORD.finditer(text))
    words = [match.group() for match in matches]
    made: list[tuple[int, int, str]] = []
    last, full = "", 0
    for at, match in enumerate(matches):
        word = words[at].lower()
        if not _is_past(word):
            continue
        how = _how(words, at, known, last)
        if how == "unsure":
            return ""
        if how != "participle":
            present = _present(word, how, written)
            if not present:
                return ""
            made.append((*match.span(), present))
            full += word not in AUXILIARY
        last = how
    return _with(text, made) if len(made) >= LEAST and full >= FULL else ""


LEAST, FULL = 4, 2  # verbs, and those of them that are no auxiliaries


def _is_past(word: str) -> bool:
    return word in STRONG or word in AUXILIARY or (word.endswith("ed") and len(word) > len("need") and word != "indeed")


def _how(words: Sequence[str], at: int, known: Sequence[str], last: str) -> str:
    """What the word is: "participle"; a verb of "I", of "many" or of "one"; or "unsure". `last` is what the verb before
    it was."""
    word, before = words[at].lower(), at - 1
    while before > 0 and (words[before].lower() in _BETWEEN or words[before].endswith("ly")):
        before -= 1
    if before < 0:
        return "unsure"
    written, small = words[before], words[before].lower()
    earlier = words[before - 1].lower() if before else ""
    may_be_part = word in PARTS or word.endswith("ed")
    if may_be_part and small in _BE_OR_HAVE:
        return "participle"
    if small == "i":
        return "I"
    if written in known or small in SUBJECTS:
        joined = written in known and ({earlier, words[before - 2].lower() if before > 1 else ""} & _WITHIN)
        return "unsure" if joined else "one"
    if small in ("that", "which") and _is_many(earlier):
        return "many"
    if small in ("that", "which", "there"):
        return "many" if word == "were" else "one"
    if small in PLURAL:
        return "many"
    if small == "and":
        return (
            last
            if last in ("I", "many", "one") and not _is_past(earlier) and _has_verb_close(words[:before])
            else "unsure"
        )
    if earlier in _BEFORE_NOUNS and not _is_past(small):
        if before > 1 and (words[before - 2].lower() in _WITHIN or _is_past(words[before - 2].lower())):
            return "unsure"
        return "many" if _is_many(small) else "one"
    return "unsure"


def _is_many(noun: str) -> bool:
    return noun.endswith("s") and noun[-2:] not in ("ss", "us", "is", "as")


def _has_verb_close(words: Sequence[str]) -> bool:
    return any(_is_past(word.lower()) for word in words[-8:])


def _present(word: str, how: str, written: Mapping[str, int]) -> str:
    if word in ("was", "were"):
        return {"I": "am", "many": "are"}.get(how, "is")
    if word in ("could", "might"):
        return AUXILIARY[word]
    base = {"had": "have", "did": "do"}.get(word) or STRONG.get(word) or _base(word, written)
    if how != "one":
        return base
    return AUXILIARY.get(word) or (base and _third(base))


def _base(word: str, written: Mapping[str, int]) -> str:
    """Of a regular verb, from its form in '-ed': of what may be, that which stands most often in the book; "" where
    none does."""
    stem = word.removesuffix("ed")
    if stem.endswith("i"):
        return f"{stem[:-1]}y"
    may_be = [stem, f"{stem}e", *([stem[:-1]] if stem[-1:] == stem[-2:-1] else [])]
    often = {one: written.get(one, 0) + written.get(_third(one), 0) for one in may_be}
    best = max(may_be, key=lambda one: often[one])
    return best if often[best] else ""


def _third(base: str) -> str:
    if re.search(r"(?:s|x|z|ch|sh|o)$", base):
        return f"{base}es"
    return f"{base[:-1]}ies" if re.search(r"[^aeiou]y$", base) else f"{base}s"


def _with(text: str, made: Sequence[tuple[int, int, str]]) -> str:
    pieces, done = [], 0
    for start, end, word in made:
        pieces += [text[done:start], word.capitalize() if text[start].isupper() else word]
        done = end
    return "".join([*pieces, text[done:]])
