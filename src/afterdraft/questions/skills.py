"""What somebody is said to be unable to do, or never to do; and where it is done."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from afterdraft.questions.skill_words import SKILLS, Skill

ROUND = 80  # characters round a claim that belong to it
BESIDE = 30  # characters round 'taught' and 'lesson', within which it is told of what
_N = "[’']"
_CANNOT = (
    rf"could not|couldn{_N}t|cannot|can{_N}t|can not|could never|can never|(?:did|does|do)(?: not|n{_N}t) know how to"
    rf"|(?:was|is|were|am|being)(?: quite)? unable to|(?:have|has|had) no idea how to|could neither|can neither"
)
_LEARNED = (
    rf"(?:never|not|n{_N}t)(?: (?!only)[\w’']+){{0,5}}? (?:learn(?:ed|t)?|taught)(?: (?:him|her|me|[A-Z]\w+))?"
    "(?: how)? to"
)
_NOBODY = r"(?:nobody|no one|no-one)(?: had| has| ever)* taught (?:him|her|me|[A-Z]\w+)"
_DOES_NOT = rf"(?:do|does|did)(?: not|n{_N}t)(?: even)?"
_NEVER = rf"never(?: [\w’']+ly| once| in (?:his|her|my) life)?|(?:have|has|had)(?: not|n{_N}t) ever"
_ENDS = (
    rf"(?= at all| to save (?:his|her|my) life| in (?:his|her|my) life| either| and | or | but | because | since"
    rf"| though | you (?:see|know)|\W*[.,;:!—–)”\"]|{_N}?$|[.,;!]?{_N}(?:\W|$))"
)
_FOR_NOW = re.compile(
    r"\b(?:again|any ?more|any longer|no longer|now|tonight|to-?day|just yet|yet|until|till|at (?:the|that) time|then"
    r"|if|unless|suppos\w+|wish\w*|pretend\w*|joke\w*|joking|lied|lying|lie|as (?:if|though)|in those days|used to"
    r"|as an? (?:child|boy|girl)|once|when (?:I|he|she) was|for (?:a while|weeks|months|the moment)|why|on duty|before "
    r"(?:noon|six|lunch|dinner)|thought|believed|supposed|in (?:the|this) (?:dark|rain|snow|state|weather|house))\b|\?",
    re.IGNORECASE,
)
_OF_SOMETHING = re.compile(  # 'a look that I couldn't read': that one thing
    r"\b(?:that|which|what|whom)\s(?:[\w’']+\s){1,2}$|\b(?:look|face|eyes|expression|smile|something)\b[^.;:!?]{0,30}$"
)
_UNREAL = re.compile(
    rf"\b(?:not|never|n{_N}t|would|might|if|as though|could|dream\w*|dreamt|imagin\w*|pretend\w*|almost|nearly|wish\w*"
    rf"|should|were|been|being|get|got|let|hardly|scarcely|badly)\b[^,;]{{0,25}}$|n{_N}t [^,;]{{0,25}}$"
)
_TEACHING = (
    r"\b(?:teach\w*|taught|lessons?|learn\w*|show(?:ed|n|ing)? (?:him|her|me|[A-Z]\w+) how|practi[sc]\w*|instruct\w*"
    r"|tuition|licen[cs]e|test|took it up|taken it up|taken up|never knew (?:he|she|you) could|first time)\b"
)


@dataclass(frozen=True, slots=True)
class Told:
    """Code points of a sentence: `start` begins the words that stand behind who can or does it."""

    skill: str
    start: int
    end: int


def claims(said: str) -> Iterator[Told]:
    """Of one sentence, what somebody is said to be unable to do, or never to do.

    >>> [one.skill for one in claims("He could not swim a stroke, and he had never learned to drive.")]
    ['swim', 'drive']
    """
    likely = [name for name in SKILLS if _is_spoken_of(name, said)] if _LIKELY.search(said) else []
    for name in likely:
        match = _CLAIMED[name].search(said)
        if not match or _OF_SOMETHING.search(said[: match.start()]):
            continue
        if not _FOR_NOW.search(_clause(said, match.start(), match.end())):
            yield Told(name, match.start(), match.end())


def _is_spoken_of(name: str, said: str) -> bool:
    """Whether the words of the skill stand there at all; a language by its name."""
    spoken = name.removeprefix("speak ")
    return spoken in said if spoken != name else bool(_WORDS[name].search(said))


def _clause(said: str, start: int, end: int) -> str:
    """The words round it, up to a stop."""
    before = re.split(r"[;:—]", said[max(0, start - ROUND) : start])[-1]
    return before + said[start:end] + re.split(r"[,;:—]", said[end : end + ROUND])[0]


def deeds(said: str, skill: str) -> Iterator[Told]:
    """Of one sentence of narration, where it is done.

    >>> [one.start for one in deeds("She drove the van home, which drove him mad.", "drive")]
    [4]
    """
    for match in _DONE[skill].finditer(said):
        if not _UNREAL.search(said[: match.start()]):
            yield Told(skill, match.start(), match.end())


def teaches(text: str, skill: str) -> bool:
    """Whether words tell that it is taught or learned, or that it was not known."""
    return any(
        re.search(rf"\b(?:{SKILLS[skill].taught})", text[max(0, match.start() - BESIDE) : match.end() + BESIDE])
        for match in _TAUGHT.finditer(text)
        if not re.search(rf"(?:never|not|n{_N}t)(?: [\w’']+){{0,6}} $", text[: match.start()])
    )


def _claim(skill: Skill) -> re.Pattern[str]:
    ways = [skill.other]
    if skill.able:
        ways.append(rf"(?:{_NOBODY})(?: how)? to (?:{skill.verb}){_ENDS}")
        ways.append(rf"(?:{_CANNOT}|{_LEARNED})(?: even| really)? (?:{skill.verb}){_ENDS}")
    if skill.habit:
        ways += [rf"(?:{_DOES_NOT}) (?:{skill.verb}){_ENDS}", rf"(?:{_NEVER}) (?:{skill.past}){_ENDS}"]
    return re.compile(rf"(?:\b|(?<=\w))(?:{'|'.join(ways)})(?!\w)", re.IGNORECASE)


_CLAIMED = {name: _claim(skill) for name, skill in SKILLS.items()}
_WORDS = {
    name: re.compile(rf"{skill.verb}|{skill.past}|{skill.other}", re.IGNORECASE) for name, skill in SKILLS.items()
}  # one of them is in every claim, and is far sooner looked for
_LIKELY = re.compile(
    rf"n{_N}t\b|\b(?:not\b|no\b|non-|never|cannot|unable|how\b|neither|nobody|pledge|teetotal|vegetarian|illiterate|hate"
    "|loathe|detest|without)",
    re.IGNORECASE,
)
_DONE = {name: re.compile(rf"\b(?:{skill.done})") for name, skill in SKILLS.items()}
_TAUGHT = re.compile(_TEACHING)
