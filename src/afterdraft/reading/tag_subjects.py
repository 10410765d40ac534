"""Whose a verb is: its subject by the parse, also where verbs share one, and where a voice speaks for its owner."""

from bisect import bisect_left
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from afterdraft.reading.facts import Mention
from afterdraft.reading.grammar import VERBAL, Grammar
from afterdraft.reading.lexicon import words_of

_SUBJECT = frozenset({"nsubj"})
_OWNER = frozenset({"poss"})
_OF = frozenset({"prep"})
_OBJECT = frozenset({"pobj"})
_SHARING = frozenset({"conj", "xcomp", "advcl"})  # verbs whose subject is that of the verb they hang on
_FAR = 4  # heads above a verb that are looked at
_WHO = words_of("who which that")
_OBJECTS = words_of("him her his me my them their us our")  # subjects only before a verb: 'she heard him say'
_VOICES = words_of("voice voices tone tones lips reply answer cry words inquiry question remark view comment response")
_TO = frozenset({"to"})
_BEGINNING = words_of("began begin begins continued continue proceeded went threatened promised")
NOT = words_of("not n't never nothing no didn't couldn't neither nor")


@dataclass(frozen=True, slots=True)
class Told:
    """A paragraph with its mentions; `by_token` leads from a token to the number of the mention it lies in."""

    grammar: Grammar
    mentions: Sequence[Mention]
    by_token: Mapping[int, int]


def told(grammar: Grammar, mentions: Sequence[Mention]) -> Told:
    starts = grammar.of.starts
    by_token = {
        token: number
        for number, one in enumerate(mentions)
        for token in range(bisect_left(starts, one.start), bisect_left(starts, one.end))
    }
    return Told(grammar, mentions, by_token)


def subject(within: Told, verb: int) -> int | None:
    """The mention outside speech that does what the verb at token `verb` says; None where the parse knows none."""
    of = within.grammar.of
    for _ in range(_FAR):
        for child in within.grammar.on(verb, _SUBJECT):
            if within.grammar.small[child] in _WHO and of.deps[verb] == "relcl":
                return _outside(within, _meant(within, of.heads[verb]))
            wrong = child > verb and within.grammar.small[child] in _OBJECTS
            return None if wrong else _outside(within, _meant(within, child))
        if of.deps[verb] not in _SHARING or of.heads[verb] == verb or of.pos[of.heads[verb]] not in VERBAL:
            return None
        verb = of.heads[verb]
    return None


def aside(within: Told, verb: int) -> bool:
    """Whether the verb stands in a clause that only accompanies another, with its own subject: 'as he finished'."""
    return within.grammar.of.deps[verb] == "advcl" and bool(within.grammar.on(verb, _SUBJECT))


def denied(within: Told, verb: int) -> bool:
    """Whether the verb says that nothing is said: 'made no answer', 'did not reply', 'began to think'."""
    parsed = within.grammar
    if parsed.small[verb] in _BEGINNING and parsed.followed(verb, _TO):
        return True
    return parsed.followed(verb, NOT) or any(parsed.small[child] in NOT for child in parsed.children[verb])


def _meant(within: Told, token: int) -> int | None:
    if within.grammar.small[token] not in _VOICES:
        return within.by_token.get(token)
    for owner in within.grammar.on(token, _OWNER):
        return within.by_token.get(owner)
    for of in within.grammar.on(token, _OF):
        for owner in within.grammar.on(of, _OBJECT) if within.grammar.small[of] == "of" else ():
            return within.by_token.get(owner)
    return within.by_token.get(token)


def _outside(within: Told, mention: int | None) -> int | None:
    return None if mention is None or within.mentions[mention].spoken else mention
