"""Height, hand, kin, trade, origin: what is said of somebody outright."""

from collections.abc import Iterator

from afterdraft.reading.grammar import VERBAL, Grammar
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.trait import TraitKind
from afterdraft.reading.trait_owners import BEING, Said, Scope, described, of_subject, possessor
from afterdraft.reading.trait_words import HANDS, HEIGHTS, KINSHIP, LAMED, PEOPLE, SCARRED, TRADES

_WORKING = words_of("worked works work served serves trained employed")
_SCAR = words_of("scar scars scarred")
_LAME = words_of("lame lamed limp limped limping limps crippled dragged dragging wooden")
_BESIDE = 9  # words between the scar and where it is
_PLACES = frozenset({"GPE", "LOC", "FAC"})
_SHORT_OF = words_of("of with on")


def heights(within: Scope) -> Iterator[Said]:
    """'A tall man', 'she was tall'; of people only."""
    grammar = within.grammar
    for token, word in enumerate(grammar.small):
        if word in HEIGHTS and grammar.of.pos[token] == "ADJ" and not _is_manner(grammar, token):
            head = grammar.of.heads[grammar.first(token)]
            relation = grammar.of.deps[grammar.first(token)]
            if (relation == "amod" and grammar.small[head] in PEOPLE) or (
                relation == "acomp" and grammar.small[head] in BEING
            ):
                yield "height", HEIGHTS[word], described(within, token), token, token


def _is_manner(grammar: Grammar, token: int) -> bool:
    """'Short of money', 'short and offhand with her'."""
    behind = grammar.small[token + 1 : token + 4]
    return grammar.followed(token, _SHORT_OF) or (behind[:1] == ("and",) and "with" in behind)


def hands(within: Scope) -> Iterator[Said]:
    grammar = within.grammar
    for token, word in enumerate(grammar.small):
        side = grammar.small[token - 2] if word == "handed" and token > 1 else word.removesuffix("-handed")
        if word.endswith("handed") and side in ("left", "right"):
            yield "hand", side, described(within, token), token if "-" in word else token - 2, token


def sides(within: Scope) -> Iterator[Said]:
    """'The scar on her left cheek', 'he was lame of the right leg'."""
    grammar = within.grammar
    for token, word in enumerate(grammar.small[1:], 1):
        side = HANDS.get(grammar.small[token - 1])
        if not side or word not in SCARRED | LAMED:
            continue
        kind: TraitKind = "scar" if word in SCARRED else "limp"
        near = range(max(0, token - _BESIDE), min(len(grammar.small), token + _BESIDE))
        telling = _SCAR if kind == "scar" else _LAME
        said = [
            one
            for one in near
            if grammar.small[one] in telling and grammar.of.sentences[one] == grammar.of.sentences[token]
        ]
        if said:
            owner = possessor(within, token)
            owner = _whose_scar(within, said[0], token) if owner is None else owner
            yield kind, f"{side} {word}", owner, min(said[0], token - 1), max(said[0], token)


def _whose_scar(within: Scope, said: int, part: int) -> int | None:
    """Who has it, or whom the word describes."""
    mine = possessor(within, said)
    if mine is not None:
        return mine
    if within.grammar.of.pos[said] in VERBAL:
        return of_subject(within, said)
    for token in (said, part):
        if (owner := described(within, token)) is not None:
            return owner
    return None


def kin(within: Scope) -> Iterator[Said]:
    """'His sister Ada', 'Ilse’s husband, Tom'."""
    grammar = within.grammar
    for token, word in enumerate(grammar.small):
        if word not in KINSHIP:
            continue
        name = token + 1 + (grammar.small[token + 1 : token + 2] == (",",))
        known = within.by_token.get(name)
        owner = next(
            (within.by_token.get(one) for one in grammar.children[token] if grammar.of.deps[one] == "poss"), None
        )
        owner = owner if owner is not None else _before_kin(within, token)
        if known is None or owner is None or known == owner or within.mentions[known].kind != "name":
            continue
        if name == token + 1 or _apposed(within, token, known):
            yield "kin", f"{word}: {within.mentions[known].form}", owner, token, max(_tokens(within, known))


def _apposed(within: Scope, kin: int, known: int) -> bool:
    """Whether the name behind the comma is that of the kin, and not of who acts next."""
    grammar = within.grammar
    tokens = _tokens(within, known)
    if grammar.of.deps[kin] == "appos" and grammar.of.heads[kin] in tokens:
        return True
    return any(grammar.of.deps[token] == "appos" and grammar.of.heads[token] == kin for token in tokens)


def _tokens(within: Scope, mention: int) -> list[int]:
    return [token for token, number in within.by_token.items() if number == mention]


def _before_kin(within: Scope, token: int) -> int | None:
    """'His' may hang on the name behind: 'his sister Ada'."""
    small = within.grammar.small
    place = token - 1 - (token > 1 and within.grammar.of.pos[token - 1] == "ADJ")
    if place < 0:
        return None
    return within.by_token.get(place - 1 if small[place] in ("'s", "'") else place)


def trades(within: Scope) -> Iterator[Said]:
    """'She was a doctor', 'Tom Pike, the doctor', 'he worked as a baker'."""
    grammar = within.grammar
    for token, word in enumerate(grammar.small):
        if word in TRADES and grammar.of.pos[token] in ("NOUN", "PROPN"):
            head, relation = grammar.of.heads[token], grammar.of.deps[token]
            owner = None
            if relation == "appos" or (
                relation == "attr" and grammar.small[head] in BEING and _indefinite(grammar, token)
            ):
                owner = described(within, token)
            elif relation == "pobj" and grammar.small[head] == "as":
                verb = grammar.of.heads[head]
                owner = of_subject(within, verb) if grammar.small[verb] in _WORKING else None
            if owner is not None and within.by_token.get(token) != owner:
                yield "trade", word, owner, token, token


def _indefinite(grammar: Grammar, token: int) -> bool:
    return any(grammar.small[child] in ("a", "an", "the") for child in grammar.children[token])


def origins(within: Scope) -> Iterator[Said]:
    """'Born in', 'hails from', 'is from', 'a native of'."""
    grammar = within.grammar
    for token, kind in enumerate(grammar.of.kinds):
        if kind in _PLACES and grammar.of.deps[token] == "pobj":
            preposition = grammar.of.heads[token]
            head = grammar.of.heads[preposition]
            said = f"{grammar.small[head]} {grammar.small[preposition]}"
            if said in (
                "born in",
                "born at",
                "hailed from",
                "hails from",
                "comes from",
                "native of",
                "was from",
                "is from",
            ):
                owner = described(within, preposition) if said == "native of" else of_subject(within, head)
                yield "origin", grammar.of.words[token], owner, head, token
