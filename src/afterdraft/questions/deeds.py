"""Who does something in a paragraph, by verbs in the present right behind them; the pipeline takes some of those for
nouns.
"""

import re

from afterdraft.reading.facts import Mention, SceneFacts
from afterdraft.reading.lexicon import ROLES, words_of
from afterdraft.reading.tense_forms import form
from afterdraft.whole.evidence import told_by_i

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
_TO_HIM = re.compile(r"\s+(?:tell|give|ask|say\sto|call\sto)\s(?:him|her|them|it)\b")  # who is there: 'I tell him'
_AND = re.compile(r"\band (?:then |now )?([a-z]+)\b")
_HOW = r"(?:(?:\w+ly|then|now|still|just|only|also|even|both|all)\s)?"
_BEHIND = (
    r"(?=[.,;]|\s(?:up|down|out|off|in|on|at|away|back|over|under|through|into|to|from|by|across|along|round|past|behind"
    r"|against|between|with|an?|the|his|her|their|its|it|him|them|me|us|like|\w+ly|and)\b)"
)  # what follows a verb, and seldom a noun
_THEY = re.compile(rf"\b[Tt]hey\s{_HOW}([a-z]+)\b(?![’'])")
_WE = re.compile(rf"\b[Ww]e\s{_HOW}([a-z]+)\b(?![’'])")
_PEOPLE = "|".join(
    [*(f"{role}s" for role in sorted(ROLES)), r"\w+(?:[eo]r|ist|ant|ian)s", r"\w*m[ae]n", "women", "children", "people"]
)  # 'the colonists'
_MANY = re.compile(
    rf"\b(?:[Tt]he|[Tt]wo|[Tt]hree|[Hh]is|[Hh]er|[Tt]heir|[Mm]y|[Oo]ur)\s(?:[a-z]+\s)?(?:{_PEOPLE})"
    rf"\s{_HOW}([a-z]+){_BEHIND}"
)  # 'the riders drag the boat'
_THING = re.compile(
    r"\b(?:(?:[Tt]he|[Aa]n?|[Hh]is|[Hh]er|[Tt]heir|[Ii]ts|[Mm]y|[Oo]ur)\s(?:[a-z]+\s)?(?:[A-Za-z]+\s)|(?:[Ii]t|[Ss]omebody|[Nn]obody)\s)([a-z]+s)"
    rf"{_BEHIND}"
)  # 'the foremast goes', 'a gull sits on'
DOING = re.compile(
    r"\b(?:(?:is|are|am)|(?:has|have)\sbeen)\s(?:(?:\w+ly|still|now|just|already|all|both)\s)?(?!going\sto\b)"
    r"(?!(?:be|noth|someth|anyth|even|morn|interest|charm|surpris|will|want|lack|miss|amus|strik|touch|mean|liv|deal|exist)ing\b)"
    r"([a-z]{2,}ing)\b"
)  # 'is sitting', 'have been advancing'; what is always so is seldom told like this
_NO_DEED = words_of(
    """
    of in on at by to from with for into upon over under behind beside before after near down up through across along
    against round about like than or but as toward until till between among without within who whom whose which that
    where when while if because so such too very now then here there alone alike together out off away back only
    themselves all both each one more most less least once twice ago apart aboard ashore ahead above below beyond
    beneath around inside outside
    """
)  # behind several
HAPPENS, AT_LEAST = 3, 2  # deeds of an I and of who is not named; of who is not named alone


def somebody_acts(scene: SceneFacts, place: int, text: str) -> bool:
    """Whether somebody does something there: what only is so is an essay's, or a custom."""
    if mine(scene, place, text) + len(_nameless(scene, text)) >= HAPPENS:
        return True
    return bool(_named(scene, place, text)) or bool(_goes_on(text) and any(map(tells, _there(scene, place))))


def others_act(scene: SceneFacts, place: int, text: str) -> bool:
    """Whether somebody but an I does something there, or things do."""
    return len(_nameless(scene, text)) + _goes_on(text) >= AT_LEAST or bool(_named(scene, place, text))


def deeds(scene: SceneFacts, place: int, text: str) -> int:
    """Verbs of the present right behind somebody, or behind an 'and'; the pipeline takes some of them for nouns."""
    return _goes_on(text) + of_others(scene, place, text)


def mine(scene: SceneFacts, place: int, text: str) -> int:
    """Deeds of an I."""
    return sum(one.kind == "self" and acts_myself(text, one) for one in _there(scene, place))


def of_others(scene: SceneFacts, place: int, text: str) -> int:
    """Deeds of whoever else."""
    return len(_named(scene, place, text) | _nameless(scene, text))


def _goes_on(text: str) -> int:
    """Deeds behind an 'and': 'and throws'."""
    return sum(form(word) == "s" and word not in _NO_VERB for word in _AND.findall(text))


def _there(scene: SceneFacts, place: int) -> list[Mention]:
    return [one for one in scene.mentions if one.paragraph == place and not one.spoken]


def _named(scene: SceneFacts, place: int, text: str) -> frozenset[int]:
    """Where verbs of somebody stand whom reading notes."""
    acting = (one for one in _there(scene, place) if tells(one) and (acts(text, one) or _many_act(text, one)))
    return frozenset(match.start(1) for one in acting if (match := _NEXT.match(text, one.end)))


def _nameless(scene: SceneFacts, text: str) -> frozenset[int]:
    """Where verbs of those stand whom reading does not note: 'they take', 'the boat goes', 'the riders drag'; and 'we
    take' where an I tells, which is elsewhere the author's with the reader."""
    several = (_THEY, _MANY, *([_WE] if _WE.search(text) and told_by_i(scene) else []))
    matches = (match for pattern in several for match in pattern.finditer(text))
    they = {it.start(1) for it in matches if form(it[1]) == "base" and it[1] not in _NO_VERB | _THINKS | _NO_DEED}
    things = {it.start(1) for it in _THING.finditer(text) if it[1] not in _NO_VERB}
    return frozenset(they | things | {it.start(1) for it in DOING.finditer(text)})


def _many_act(text: str, one: Mention) -> bool:
    """Whether several do something, whose verbs have no ending: 'the men run'."""
    several = one.kind == "role" and bool(re.search(r"(?:s|men|people)$", text[: one.end]))
    return several and acts_myself(text, one)


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
    return (
        one.subject and form(word) == "base" and (word not in _NO_VERB | _THINKS or bool(_TO_HIM.match(text, one.end)))
    )


def _next(text: str, one: Mention) -> str:
    match = _NEXT.match(text, one.end)
    return match.group(1) if match else ""
