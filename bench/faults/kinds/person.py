"""A paragraph or a few sentences told in another person: 'I' in a scene about 'he', or 'he' in one that an I tells."""

import re
from collections.abc import Callable, Iterator, Sequence
from functools import partial
from random import Random

from bench.faults.people import Person, holds, narrated, people, sentences
from bench.faults.planted import Edit, Fault, Scenes, Shown

CHANGED = 3  # pronouns that become others, at least
CLEAR = 2  # times as many words of one gender as of the other
TELLER, NO_TELLER = 15, 1  # of 1,000 words outside speech that are 'I': told by an I, and not
_FIRST = {"he": "I", "she": "I", "him": "me", "his": "my", "himself": "myself", "herself": "myself"}
_VERBS = {"was": "was", "is": "am", "has": "have", "does": "do"}
_HER_DOES = re.compile(r"\b(?:heard|saw|made|let|watched|felt|bade|helped|had) her \w|\b[Hh]er[.,;:!?—]|\bpoor s?he\b")
_HER = re.compile(r"\b[Hh]er(?= [a-z-]+)")  # 'her hand', and not 'told her'
_MY_DRESS = re.compile(r"\bmy (?:own |\w+ )?(?:dress|gown|frock|bonnet|apron|skirts?|petticoats?|veil|shawl|husband)\b")
_MY_COAT = re.compile(r"\bmy (?:own |\w+ )?(?:coat|trousers|waistcoat|beard|moustache|pipe|breeches|razor|wife)\b")
_SELF = re.compile(r"\b(?:I|me|my|myself)\b")
_WE = re.compile(r"\b(?:we|us|our|you|your)\b", re.IGNORECASE)


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    told = ["\n".join(map(narrated, scene)) for scene in scenes]
    often = [1000 * len(_SELF.findall(one)) / max(1, len(one.split())) for one in told]
    book = _gender("\n".join(told))
    places = [(number, at) for number, scene in enumerate(scenes) for at in range(len(scene))]
    for number, at in random.sample(places, len(places)):
        text = scenes[number][at]
        if text != narrated(text) or len(text.split()) < 25 or "\n" in text or "*" in text:
            continue
        if often[number] < NO_TELLER:
            yield from _changed(scenes, number, at, _to_first(scenes, random), random)
        elif often[number] > TELLER and (mine := book or _gender(told[number])):
            yield from _changed(scenes, number, at, partial(_to_third, gender=mine), random)


def _gender(told: str) -> str:
    """Of the I that tells, by its clothes; "" where they are of both."""
    dress, coat = len(_MY_DRESS.findall(told)), len(_MY_COAT.findall(told))
    return "" if min(dress, coat) * CLEAR > max(dress, coat) else "f" if dress > coat else "m"


def _changed(scenes: Scenes, number: int, at: int, change: Callable[[str], str], random: Random) -> Iterator[Fault]:
    """The paragraph, or two or three sentences of it, as `change` has them; "" where it cannot."""
    text = scenes[number][at]
    parts = sentences(text)
    if len(parts) > 4 and random.random() < 0.5:
        first = random.randrange(len(parts) - 2)
        start, end = parts[first][0], parts[first + random.choice((1, 2))][1]
    else:
        start, end = 0, len(text)
    if said := change(text[start:end]):
        edit = Edit(number, at, (text[:start] + said + text[end:],))
        fault = Fault("person", (edit,), (Shown(number, said),), enough=1)
        if holds(scenes, fault):
            yield fault


def _to_first(scenes: Scenes, random: Random) -> Callable[[str], str]:
    known = people(scenes)

    def change(said: str) -> str:
        """Where it is about one person alone: he, his, and his name become I, my, I."""
        he, she = (re.findall(rf"\b(?:{one})\b", said, re.I) for one in ("he|him|his|himself", "she|her|herself"))
        named = [one for one in known if one.pattern.search(said)]
        if bool(he) is bool(she) or len(he or she) < CHANGED or _SELF.search(said) or _WE.search(said):
            return ""
        if len(named) > 1 or any((one.gender == "m") is not bool(he) for one in named) or _HER_DOES.search(said):
            return ""
        if not said.startswith(("He ", "She ", *(f"{one.name} " for one in named))) or _others(said, named):
            return ""
        for one in named:
            said = re.sub(rf"{re.escape(one.name)}’s\b", "my", said)
            said = one.pattern.sub("I", said)
        said = _HER.sub("my", said)
        words = "himself|herself|he|she|him|his|her"
        said = re.sub(rf"\b({words})\b", lambda match: _cased(match.group(), {**_FIRST, "her": "me"}), said, flags=re.I)
        said = re.sub(r"\bI (is|has|does)\b", lambda match: f"I {_VERBS[match.group(1)]}", said)
        return _capitals(said)

    return change


def _others(said: str, named: Sequence[Person]) -> bool:
    """Whether somebody else may be meant: another name, or a man, a boy, the policeman."""
    for one in named:
        said = said.replace(one.name, "")
    return bool(
        re.search(r"(?<=[a-z,;] )[A-Z][a-z]|\b(?:man|boy|woman|girl|who|whom|[a-z]+er) (?:was|had|said|\w+ed)\b", said)
    )


def _to_third(said: str, gender: str) -> str:
    """Where nobody else of that gender is told of: I, me, my become he, him, his."""
    he, him, his = ("he", "him", "his") if gender == "m" else ("she", "her", "her")
    if len(_SELF.findall(said)) < CHANGED or _WE.search(said) or re.search(rf"\b(?:{he}|{him}|{his})\b", said, re.I):
        return ""
    said = re.sub(r"\bI am\b", f"{he} is", said)
    said = re.sub(r"\bI have\b", f"{he} has", said)
    third = {"i": he, "me": him, "my": his, "myself": f"{him}self", "mine": "his" if gender == "m" else "hers"}
    said = re.sub(r"\b(I|me|my|My|myself|mine)\b", lambda match: third[match.group().lower()], said)
    return _capitals(said)


def _cased(word: str, becomes: dict[str, str]) -> str:
    return becomes[word.lower()]


def _capitals(said: str) -> str:
    """With a capital at each sentence's beginning."""
    return re.sub(r"(^|[.!?]\s+)([a-z])", lambda match: match.group(1) + match.group(2).upper(), said)
