"""Who is said to be like what: patterns over words and what hangs on them. Guesses, each with its words."""

from collections.abc import Iterable, Iterator, Sequence
from itertools import chain

from afterdraft.reading.facts import Mention
from afterdraft.reading.grammar import SUBJECTS, VERBAL, Grammar
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.tense_forms import MODALS
from afterdraft.reading.trait import Trait, TraitKind
from afterdraft.reading.trait_owners import BEING, Scope, described, of_part, of_subject, scope
from afterdraft.reading.trait_words import DECADES, HEIGHTS, KINSHIP, LOOKS, PARTS, PEOPLE, SHADES, TRADES, number

Said = tuple[TraitKind, str, int | None, int, int]  # kind, value, mention, first token, last token
_DESCRIBING = words_of("amod compound nmod appos acl conj acomp attr oprd advmod")
_OWNER = frozenset({"poss"})
_PREDICATE = frozenset({"acomp", "attr", "oprd"})
_OTHERWISE = words_of("once formerly not never n't if when to no pretended") | MODALS  # was, is not, were it
_JOINING = frozenset({",", "-"})
_WORKING = words_of("worked works work served serves trained employed")
_ABOUT = words_of("about nearly almost over under only just barely some past")
_UNITS = frozenset({"years", "year"})
_PLACES = frozenset({"GPE", "LOC", "FAC"})
_SO = words_of("so very as quite almost")
_SHORT_OF = words_of("of with on")


def traits(grammar: Grammar, paragraph: int, mentions: Sequence[Mention], base: int) -> Iterator[Trait]:
    """Of one paragraph, in the order of their kinds; `mentions` are its own, the first of them number `base`."""
    within = scope(grammar, mentions)
    for kind, value, owner, first, last in chain.from_iterable(find(within) for find in _FINDERS):
        if owner is not None and mentions[owner].spoken is grammar.spoken[last] and not _otherwise(grammar, last):
            yield Trait(
                paragraph,
                grammar.of.starts[first],
                grammar.of.end(last),
                kind,
                value,
                base + owner,
                grammar.spoken[last],
            )


def _otherwise(grammar: Grammar, token: int) -> bool:
    """Whether the clause says that it was so once, is not so, or might be."""
    while grammar.of.heads[token] != token and grammar.of.pos[token] not in VERBAL:
        token = grammar.of.heads[token]
    return any(grammar.small[child] in _OTHERWISE for child in grammar.children[token])


def _looks(within: Scope) -> Iterator[Said]:
    """'Her grey eyes', 'Ilse’s eyes were grey', 'a man with a red beard', 'the grey-eyed woman', 'they were blue'."""
    grammar, before = within.grammar, None
    for token, word in enumerate(grammar.small):
        if word == "they" and before and grammar.of.sentences[token] - grammar.of.sentences[before[0]] <= 1:
            yield from _look(grammar, before[1], before[2], token, _after_being(grammar, token))
            continue
        kind = PARTS.get(word.rsplit("-", 1)[-1])
        if kind is None:
            continue
        if word.endswith("ed"):
            yield from _look(grammar, kind, described(within, token), token, _hyphened(grammar, token))
            continue
        owner = of_part(within, token)
        if owner is not None:
            before = (token, kind, owner)
        yield from _look(grammar, kind, owner, token, [*_beside(grammar, token), *_after_being(grammar, token)])


def _look(grammar: Grammar, kind: TraitKind, owner: int | None, part: int, tokens: Iterable[int]) -> Iterator[Said]:
    """A colour goes before a shade."""
    said = [(LOOKS[kind].get(_last_part(grammar.small[one])), one) for one in tokens]
    known = [(value, one) for value, one in said if value]
    known.sort(key=lambda pair: pair[0] in SHADES and kind == "eyes")
    for value, one in known[:1]:
        yield kind, value, owner, min(part, one), max(part, one)


def _last_part(word: str) -> str:
    """'Blue' of 'light-blue'; of 'grey-eyed' 'grey'."""
    parts = word.split("-")
    return parts[-2] if len(parts) > 1 and parts[-1] in PARTS else parts[-1]


def _hyphened(grammar: Grammar, token: int) -> list[int]:
    if "-" in grammar.small[token]:
        return [token]
    return [token - 2] if token > 1 and grammar.small[token - 1] == "-" else []


def _beside(grammar: Grammar, token: int) -> list[int]:
    """Words that describe a noun, and those that describe or join them."""
    found = [child for child in grammar.children[token] if grammar.of.deps[child] in _DESCRIBING]
    below = [one for child in found for one in grammar.children[child] if grammar.of.deps[one] in _DESCRIBING]
    after = token + 1 + _goes_on(grammar, token, _SO)  # 'eyes so dark that …' hangs on anything
    behind = [after] if after < len(grammar.small) and grammar.of.pos[after] == "ADJ" else []
    return [*found, *below, *behind]


def _after_being(grammar: Grammar, token: int) -> list[int]:
    """What the subject `token` is said to be."""
    verb = grammar.of.heads[token]
    if grammar.of.deps[token] not in SUBJECTS or grammar.small[verb] not in BEING:
        return []
    said = grammar.on(verb, _PREDICATE)
    return [*said, *(below for one in said for below in _beside(grammar, one))]


def _height(within: Scope) -> Iterator[Said]:
    """'A tall man', 'she was tall'; of people only."""
    grammar = within.grammar
    for token, word in enumerate(grammar.small):
        if word in HEIGHTS and grammar.of.pos[token] == "ADJ" and not _goes_on(grammar, token, _SHORT_OF):
            head = grammar.of.heads[grammar.first(token)]
            relation = grammar.of.deps[grammar.first(token)]
            if (relation == "amod" and grammar.small[head] in PEOPLE) or (
                relation == "acomp" and grammar.small[head] in BEING
            ):
                yield "height", HEIGHTS[word], described(within, token), token, token


def _goes_on(grammar: Grammar, token: int, words: frozenset[str]) -> bool:
    return token + 1 < len(grammar.small) and grammar.small[token + 1] in words


def _hand(within: Scope) -> Iterator[Said]:
    grammar = within.grammar
    for token, word in enumerate(grammar.small):
        side = grammar.small[token - 2] if word == "handed" and token > 1 else word.removesuffix("-handed")
        if word.endswith("handed") and side in ("left", "right"):
            yield "hand", side, described(within, token), token if "-" in word else token - 2, token


def _age(within: Scope) -> Iterator[Said]:
    """'In her forties', 'she was forty-five', 'ten years old', 'aged ten', 'a man of sixty', 'Ilse, thirty-two, …'."""
    grammar = within.grammar
    for token, word in enumerate(grammar.small):
        if word in DECADES and grammar.on(token, _OWNER):
            yield "age", DECADES[word], described(within, grammar.of.heads[token]), token, token
    token = 0
    while token < len(grammar.small):
        end, age = _number_at(grammar, token)
        if age is not None and (found := _aged(within, token, end)):
            owner, last = found
            yield "age", str(age), owner, token, last
        token = max(end, token + 1)


def _number_at(grammar: Grammar, token: int) -> tuple[int, int | None]:
    """The number that begins there, and the token after it: 'forty', '-', 'five' come apart."""
    end = token + 1
    while end + 1 < len(grammar.small) and grammar.small[end] == "-":
        end += 2
    whole = "-".join(grammar.small[token:end:2])
    return (end, number(whole)) if number(whole) is not None else (token + 1, number(grammar.small[token]))


def _aged(within: Scope, first: int, end: int) -> tuple[int | None, int] | None:
    grammar, small = within.grammar, within.grammar.small
    after = [*small[end : end + 3], "", "", ""][:3]
    if after[0] == "-" and after[1] == "year":
        old = end + 4 if small[end + 3 : end + 4] == ("-",) else end + 3
        return (described(within, old), old) if small[old : old + 1] == ("old",) else None
    before = first - 1 - (first > 1 and small[first - 1] in _ABOUT)
    if before < 0 or small[before] == "than":
        return None
    if after[0] in _UNITS and (after[1] == "old" or after[1:] == ["of", "age"]):
        return described(within, end + (after[1] == "old")), end + 2 - (after[1] == "old")
    if small[before] in PEOPLE and before < first - 1:
        return described(within, first - 1), end - 1
    if small[before] == "aged":
        return described(within, before), end - 1
    if small[before] == "of" and small[grammar.of.heads[before]] in PEOPLE and after[0] not in _UNITS:
        return described(within, before), end - 1
    if not _closes(grammar, end):
        return None
    if small[before] in BEING:
        return of_subject(within, before), end - 1
    apposed = small[before] == "," and after[0] == "," and before - 1 in within.by_token
    named = apposed and within.mentions[within.by_token[before - 1]].kind == "name"
    return (within.by_token[before - 1], end - 1) if named else None


def _closes(grammar: Grammar, end: int) -> bool:
    """Whether nothing is counted by the number before."""
    return end >= len(grammar.small) or grammar.of.pos[end] in ("PUNCT", "CCONJ", "SCONJ")


def _kin(within: Scope) -> Iterator[Said]:
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


def _trade(within: Scope) -> Iterator[Said]:
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


def _origin(within: Scope) -> Iterator[Said]:
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


_FINDERS = (_looks, _height, _hand, _age, _kin, _trade, _origin)
