"""The name of the I that tells a scene, as of somebody else who does something: 'Nell shut the door' in Nell's own."""

import re
from collections.abc import Iterator

from afterdraft.questions.own_words import is_set_in
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.reading.facts import Mention
from afterdraft.reading.tense_forms import form
from afterdraft.whole.cast import Person
from afterdraft.whole.evidence import signature, told_by_i
from afterdraft.whole.headed import names_over
from afterdraft.whole.turns import meant

OFTEN = 3  # scenes of one narrator with their name in them so, from which it is the manner, or not their name
SHARE = 0.2  # share of a narrator's scenes, likewise
OFTEN_I = 0.4  # share of the telling's paragraphs in which the I is that tells them
NEAR = 2  # paragraphs off which the I is, where its name stands
LONG = 8  # words of a paragraph that tells
_MINE = re.compile(r"\b(?:I|me|my|mine|myself)\b|^\W*[*_>]")
_UNREAL = re.compile(
    r"\b(?:if|though|dream(?:ed|t|s)?|imagin\w+|pictur\w+|called|named|headline|caption|read|wrote|written|says:|said:|that)\b"
    r"|[:“”\"?]",
    re.IGNORECASE,
)  # somebody else's words, or nobody's
_DOES = re.compile(r"\s(?:\w+ly\s|never\s|just\s|then\s|only\s)?([a-z]+)\b(?![’'])")
_MET = re.compile(
    r"\b(?:(?:look|star|glanc|smil|nodd?|grinn?|turn|point|walk|lean|wav|shout|call)(?:ed|e?s)|came|comes|went|goes|ran|runs)"
    r"\b[^.;]{0,25}\s(?:at|to|towards?|past|beside|behind|after)\s$|\b(?:(?:hand|pass|ask|follow|push|touch|kiss|hugg?"
    r"|watch|pull|reach)(?:ed|es|s)|gave|gives|told|tells|caught|catches|took|takes|saw|sees|let|left|leaves)\s$"
)  # what stands before it
_BODY = re.compile(
    r"[’']s\s(?:\w+\s)?(?:hands?|face|eyes?|arms?|shoulders?|head|hair|cheeks?|lips|mouth|fingers?|heart|knees?|feet"
    r"|foot|elbow|sleeve|coat|collar|lap|voice|mind|stomach|throat|back)\b"
)
_NO_DEED = frozenset(("is", "was", "has", "had", "does", "and", "or", "the", "a", "of", "who", "that"))
_READ_OUT = re.compile(
    r"\b(?:said|says|read|reads|ran|runs|wrote|went\son)(?:\sas\sfollows)?:|\b(?:memorandum|my\sWill)\b", re.I
)


def names_for_i(seen: Seen) -> Iterator[tuple[int, Mention]]:
    """By scene, those of the scenes that an I tells whose name the book knows, where it is rare."""
    told: dict[str, list[int]] = {}
    known = {one.id for one in seen.given.people if one.narrator}
    for number, over in enumerate(names_over(seen.heads, seen.book.cast.by_form) or [""] * len(seen.texts)):
        narrator = seen.book.told[number].narrator
        sure = bool(over) or (narrator is not None and (narrator.id in known or _is_alone(seen)))
        if narrator and sure and told_by_i(seen.facts[number]) and _is_hers(seen, number):
            told.setdefault(narrator.id, []).append(number)
    for numbers in told.values():
        found = {number: list(_in_scene(seen, number)) for number in numbers}
        some = {number: here for number, here in found.items() if here}
        if len(some) < OFTEN and len(some) <= max(1, SHARE * len(numbers)):
            yield from ((number, one) for number, here in some.items() for one in here)


def _is_alone(seen: Seen) -> bool:
    """Whether nearly every scene is told by an I and no document is signed: then there is one teller, surely."""
    return all(map(told_by_i, seen.facts)) and not any(map(signature, seen.facts))


def _is_hers(seen: Seen, number: int) -> bool:
    """Whether the I stands in the telling throughout, and not only in a letter that is set in or read out."""
    told = [place for place, text in enumerate(seen.texts[number]) if _is_told(seen, number, place, text)]
    mine = _mine(seen, number)
    return bool(mine) and len(mine) >= OFTEN_I * len(told)


def _mine(seen: Seen, number: int) -> set[int]:
    """Paragraphs of the telling in which the I is."""
    texts = seen.texts[number]
    return {
        one.paragraph
        for one in seen.facts[number].mentions
        if one.kind == "self" and not one.spoken and not _READ_OUT.search(texts[one.paragraph][: one.start])
        if (number, one.paragraph) not in seen.set_in and not is_set_in(seen, number, one.paragraph)
    }


def _is_told(seen: Seen, number: int, place: int, text: str) -> bool:
    """Whether a paragraph is of the telling, with no speech in it, and long enough for an I."""
    talks = any(one.paragraph == place for one in seen.facts[number].quotes)
    return not talks and len(text.split()) >= LONG and (number, place) not in seen.set_in


def _in_scene(seen: Seen, number: int) -> Iterator[Mention]:
    scene, cast = seen.facts[number], seen.book.told[number]
    narrator, mine = cast.narrator, _mine(seen, number)
    for one, person in zip(scene.mentions, meant(scene, cast), strict=True):
        near = any(abs(place - one.paragraph) <= NEAR for place in mine)
        if near and narrator and person == narrator.id and _is_by_name(one, narrator):
            text = seen.texts[number][one.paragraph]
            said = text[slice(*sentence(text, one.start, one.end))]
            if "\n" not in text and not _MINE.search(said) and _acts(text, one, said):
                yield one


def _is_by_name(one: Mention, narrator: Person) -> bool:
    """Under the name that is nobody else's: 'Mrs. Kell' may be her mother too."""
    return one.kind == "name" and one.form.split()[0] == narrator.name.split()[0] and not one.spoken and not one.called


def _acts(text: str, one: Mention, said: str) -> bool:
    """Whether the I does something under that name, says what stands beside it, or is met by others."""
    if one.speaks:
        return True
    match = _DOES.match(text, one.end) if one.subject else None
    done = match is not None and form(match[1]) in ("past", "both", "s") and match[1] not in _NO_DEED
    met = _MET.search(text[: one.start]) or _BODY.match(text, one.end)
    return bool(done or met) and not _UNREAL.search(said)
