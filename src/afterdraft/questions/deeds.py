"""Who does something in a paragraph, by verbs in the present right behind them; the pipeline takes some of those for
nouns.
"""

import re

from afterdraft.reading.facts import Mention, SceneFacts
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.tense_forms import form

_NEXT = re.compile(
    r"\s+(?:(?:\w+ly|then|now|still|just|only|also|even|at\s(?:once|last)|all\sat\sonce|soon|again)\s+)?([a-z]+)\b(?![’'])"
)
_NO_VERB = words_of(
    """
    always perhaps else besides sometimes afterwards towards upwards downwards backwards forwards outwards inwards
    ours yours his hers its theirs this thus us yes less across unless alas nevertheless nonetheless likewise
    was is has does 's
    """
)
_THINKS = words_of(
    """
    think know believe suppose confess remember write say hope wish fear doubt mean own understand find see want feel do
    have am need seem like love hate trust assure fancy imagine recollect add quote give tell repeat call admit allow
    grant guess are venture forget were dare
    """
) | {""}  # after an I, of the time of telling
_AND = re.compile(r"\band (?:then |now )?([a-z]+)\b")
_THEY = re.compile(r"\b[Tt]hey\s(?:(?:\w+ly|then|now|still|just|only|also|even|both|all)\s)?([a-z]+)\b(?![’'])")
_THING = re.compile(
    r"\b(?:(?:[Tt]he|[Aa]n?|[Hh]is|[Hh]er|[Tt]heir|[Ii]ts|[Mm]y|[Oo]ur)\s(?:[a-z]+\s){1,2}?|(?:[Ii]t|[Ss]omebody|[Nn]obody)\s)([a-z]+s)"
    r"(?=[.,;]|\s(?:up|down|out|off|in|on|at|away|back|over|under|through|into|to|from|by|across|along|round|past|behind"
    r"|against|between|with|an?|the|his|her|their|its|it|him|them|me|us|like|\w+ly|and)\b)"
)  # 'the foremast goes', 'a gull sits on': what follows a verb, and seldom a plural
HAPPENS, AT_LEAST = 3, 2  # deeds of an I and of who is not named; of who is not named alone


def somebody_acts(scene: SceneFacts, place: int, text: str) -> bool:
    """Whether somebody does something there: what only is so is an essay's, or a custom."""
    here = [one for one in scene.mentions if one.paragraph == place and not one.spoken]
    if sum(one.kind == "self" and acts_myself(text, one) for one in here) + nameless(text) >= HAPPENS:
        return True
    goes_on = any(form(word) == "s" and word not in _NO_VERB for word in _AND.findall(text))
    return any(goes_on or acts(text, one) or many_act(text, one) for one in here if tells(one))


def others_act(scene: SceneFacts, place: int, text: str) -> bool:
    """Whether somebody but an I does something there, or things do."""
    here = [one for one in scene.mentions if one.paragraph == place and not one.spoken]
    return nameless(text) >= AT_LEAST or any(tells(one) and (acts(text, one) or many_act(text, one)) for one in here)


def deeds(scene: SceneFacts, place: int, text: str) -> int:
    """Verbs of the present right behind somebody, or behind an 'and'; the pipeline takes some of them for nouns."""
    here = [one for one in scene.mentions if one.paragraph == place and not one.spoken and tells(one)]
    after_and = sum(form(word) == "s" and word not in _NO_VERB for word in _AND.findall(text))
    return after_and + nameless(text) + sum(acts(text, one) or many_act(text, one) for one in here)


def many_act(text: str, one: Mention) -> bool:
    """Whether several do something, whose verbs have no ending: 'the men run'."""
    several = one.kind == "role" and bool(re.search(r"(?:s|men|people)$", text[: one.end]))
    return several and acts_myself(text, one)


def nameless(text: str) -> int:
    """Deeds of those whom reading does not note: 'they take', 'the boat goes'."""
    they = sum(form(word) == "base" and word not in _NO_VERB | _THINKS for word in _THEY.findall(text))
    return they + sum(word not in _NO_VERB for word in _THING.findall(text))


def tells(one: Mention) -> bool:
    """Whether it is somebody who is the subject of a verb that is told."""
    somebody = one.kind in ("pronoun", "role") or (one.kind == "name" and one.entity in ("person", ""))
    return one.subject and not one.spoken and somebody


def acts(text: str, one: Mention) -> bool:
    """Whether a verb of the present stands right behind: 'he goes'."""
    word = _next(text, one)
    return word not in _NO_VERB and form(word) == "s"


def acts_myself(text: str, one: Mention) -> bool:
    """Of I and they, whose verbs have no ending: no thought, and nothing that is said."""
    word = _next(text, one)
    return one.subject and word not in _NO_VERB | _THINKS and form(word) == "base"


def _next(text: str, one: Mention) -> str:
    match = _NEXT.match(text, one.end)
    return match.group(1) if match else ""
