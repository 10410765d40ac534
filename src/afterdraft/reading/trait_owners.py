"""Whose a part of the body is, and whom a word describes: by what it hangs on."""

from bisect import bisect_left
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from afterdraft.reading.facts import Mention
from afterdraft.reading.grammar import SUBJECTS, VERBAL, Grammar
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.tense_forms import MODALS
from afterdraft.reading.trait import TraitKind
from afterdraft.reading.trait_words import COLOURS, PEOPLE

ONCE = words_of("once formerly")
_OTHERWISE = ONCE | words_of("not never n't if when to no pretended") | MODALS  # was, is not, were it
BEING = words_of("is are was were been am 's 're 'm seemed looked became become")
_HAVING = words_of("has have had having 've possessed wore wears")
_SHOWING = words_of("turned fixed kept raised lifted threw cast closed opened shut dropped lowered")
_POSSESSIVE = words_of("his her my")
_NOMINATIVE = words_of("he she")
_AWAY = words_of("back away")
_POINTING = words_of("the those these")
_DESCRIBING = frozenset({"ADJ", "ADV", "NOUN", "PROPN", "VERB", "NUM"})
_LONGEST = 8  # words of such a phrase
_OWNER = frozenset({"poss"})
_APPOSED = frozenset({"appos"})
_OBJECT = frozenset({"dobj"})
_OF = frozenset({"prep"})
_PREDICATE = frozenset({"acomp", "attr", "oprd"})
_NOUNS = frozenset({"NOUN", "PROPN", "PRON"})
_WHO = frozenset({"who", "that", "which"})
_SHARING = frozenset({"conj", "advcl", "xcomp", "acomp", "oprd"})  # verbs whose subject is another's
_FAR = 5  # heads above a word that are looked at


@dataclass(frozen=True, slots=True)
class Scope:
    """A paragraph with its mentions; `by_token` leads from a token to the number of the mention it lies in."""

    grammar: Grammar
    mentions: Sequence[Mention]
    by_token: Mapping[int, int]


Said = tuple[TraitKind, str, int | None, int, int]  # kind, value, mention, first token, last token


def scope(grammar: Grammar, mentions: Sequence[Mention]) -> Scope:
    starts = grammar.of.starts
    by_token = {
        token: number
        for number, one in enumerate(mentions)
        for token in range(bisect_left(starts, one.start), bisect_left(starts, one.end))
    }
    return Scope(grammar, mentions, by_token)


def phrase(grammar: Grammar, token: int) -> int:
    """Where the words that describe a noun begin, by their looks alone: lists of adjectives are often misread."""
    start = token
    while start > 0 and token - start < _LONGEST and _describes(grammar, start - 1):
        start -= 1
    return start


def _describes(grammar: Grammar, token: int) -> bool:
    """Whether the word can be part of such a list; 'his pale face, strange eyes' is two."""
    if grammar.small[token] in (",", "and"):
        return token > 0 and (grammar.of.pos[token - 1] not in _NOUNS or grammar.small[token - 1] in COLOURS)
    return grammar.of.pos[token] in _DESCRIBING or grammar.small[token] == "-"


def possessor(within: Scope, token: int) -> int | None:
    """The mention right before a noun's phrase that has it: 'her grey eyes', 'Ilse’s grey eyes'."""
    small = within.grammar.small
    start = phrase(within.grammar, token)
    for place in range(start, token + 1):  # a name is an adjective to some
        before = place - 1 - (place > 1 and small[place - 1] in ("'s", "'"))
        number = within.by_token.get(before) if before >= 0 else None
        if number is not None and (small[place - 1] in _POSSESSIVE or before < place - 1):
            return number
    return None


def of_part(within: Scope, token: int) -> int | None:
    """The mention whose eyes or hair these are, where nothing right before says so."""
    grammar = within.grammar
    for one in dict.fromkeys((token, grammar.first(token))):
        for preposition in grammar.on(one, _OF):
            whom = grammar.children[preposition][:1] if grammar.small[preposition] == "of" else ()
            if whom and not any(is_colour(grammar, other) for other in grammar.children[preposition]):
                return _of_noun(within, whom[0])
    for _ in range(_FAR):
        token = grammar.first(token)
        for owner in grammar.on(token, _OWNER):
            return _whose(within, token) if grammar.small[owner] == "whose" else within.by_token.get(owner)
        head, relation = grammar.of.heads[token], grammar.of.deps[token]
        if relation in _OBJECT and grammar.small[head] in _HAVING | _SHOWING:
            return of_subject(within, head)
        if relation in _OBJECT and (own := _from_own(within, head)) is not None:
            return own
        if relation != "pobj" or grammar.small[head] not in ("with", "of"):
            return None
        if grammar.small[head] == "with":
            return _with(within, head)
        token = grammar.of.heads[head]  # 'a pair of', 'a tangle of'
    return None


def is_colour(grammar: Grammar, token: int) -> bool:
    """Whether it is what 'of' leads to in 'eyes of a deep brown'."""
    return grammar.of.deps[token] == "pobj" and grammar.small[token].rsplit("-", 1)[-1] in COLOURS


def alone_before(within: Scope, token: int) -> int | None:
    """'The grey eyes' of a sentence that means nobody: whoever the sentence before alone is about."""
    grammar = within.grammar
    start = phrase(grammar, token)
    sentence = grammar.of.sentences[token]
    met = {
        number: grammar.of.sentences[at] - sentence
        for at, number in within.by_token.items()
        if within.mentions[number].kind != "self"
    }
    if start == 0 or grammar.small[start - 1] not in _POINTING or 0 in met.values():
        return None
    before = [number for number, distance in met.items() if distance == -1]
    first, *others = before or [-1]
    hers = all(within.mentions[one].kind == "pronoun" and _is_own(within, one) for one in others)
    alone = hers and len({within.mentions[one].gender for one in others}) <= 1
    return first if first >= 0 and within.mentions[first].subject and alone else None


def _is_own(within: Scope, mention: int) -> bool:
    """Whether a pronoun can be who stands before it: 'him' of 'Ilse saw him' is another."""
    tokens = [token for token, number in within.by_token.items() if number == mention]
    relations = {within.grammar.of.deps[token] for token in tokens}
    nominative = within.mentions[mention].form in _NOMINATIVE
    return bool(relations & _OWNER) or (nominative and bool(relations & SUBJECTS))


def _from_own(within: Scope, verb: int) -> int | None:
    """'Pushed the fair hair back from her forehead': whose forehead it is."""
    grammar = within.grammar
    behind = [verb, *(child for child in grammar.children[verb] if grammar.small[child] in _AWAY)]
    for preposition in (one for head in behind for one in grammar.on(head, _OF)):
        for noun in grammar.children[preposition] if grammar.small[preposition] in ("from", "off") else ():
            for owner in grammar.on(noun, _OWNER):
                return within.by_token.get(owner)
    return None


def _whose(within: Scope, token: int) -> int | None:
    """'Ilse, whose eyes were grey': the noun that the clause hangs on."""
    grammar = within.grammar
    for _ in range(_FAR):
        if grammar.of.deps[token] == "relcl":
            return _of_noun(within, grammar.of.heads[token])
        token = grammar.of.heads[token]
    return None


def _with(within: Scope, preposition: int) -> int | None:
    """'A young man, with' means the man, whatever the sentence is about."""
    small = within.grammar.small
    before = preposition - 1 - (preposition > 1 and small[preposition - 1] == ",")
    if before >= 0 and small[before] in PEOPLE:
        return _of_noun(within, before)
    return described(within, preposition)


def described(within: Scope, token: int) -> int | None:
    """The mention that a word tells something of: up to the noun it stands by, or the subject of its 'is'."""
    grammar = within.grammar
    for _ in range(_FAR):
        token = grammar.of.heads[grammar.first(token)]
        if grammar.of.pos[token] in VERBAL:
            return of_subject(within, token)
        if grammar.of.pos[token] in _NOUNS:
            return _of_noun(within, token)
    return None


def of_subject(within: Scope, verb: int) -> int | None:
    """The mention that does what the verb says."""
    grammar = within.grammar
    for _ in range(_FAR):
        for subject in grammar.on(verb, SUBJECTS):
            if grammar.small[subject] in _WHO and grammar.of.deps[verb] == "relcl":
                return _of_noun(within, grammar.of.heads[verb])
            return _of_noun(within, subject)
        if grammar.of.deps[verb] not in _SHARING or grammar.of.heads[verb] == verb:
            return None
        verb = grammar.of.heads[verb]
    return None


def _of_noun(within: Scope, token: int) -> int | None:
    """A name or pronoun is itself; 'a man' is whom he stands beside, or who 'is' he."""
    grammar = within.grammar
    own = within.by_token.get(token)
    if own is not None and within.mentions[own].kind != "role":
        return own
    for other in grammar.on(token, _APPOSED):
        if other in within.by_token:
            return within.by_token[other]
    head, relation = grammar.of.heads[token], grammar.of.deps[token]
    if relation == "appos" and head in within.by_token:
        return within.by_token[head]
    if (relation in _PREDICATE and grammar.small[head] in BEING) or _stands_apart(grammar, token):
        return of_subject(within, head)
    return own


def _stands_apart(grammar: Grammar, token: int) -> bool:
    """'She stood there, a freckled woman with hazel eyes': behind a comma, beside what somebody does."""
    first = min((token, *grammar.children[token]))
    return (
        first > 0
        and grammar.small[first - 1] == ","
        and grammar.small[first] in ("a", "an")
        and grammar.of.pos[grammar.of.heads[token]] in VERBAL
        and grammar.of.deps[token] not in SUBJECTS
    )


def otherwise(grammar: Grammar, token: int) -> bool:
    """Whether the clause says that it was so once, is not so, or might be."""
    while grammar.of.heads[token] != token and grammar.of.pos[token] not in VERBAL:
        token = grammar.of.heads[token]
    return any(grammar.small[child] in _OTHERWISE for child in grammar.children[token])
