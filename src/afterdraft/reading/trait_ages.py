"""How old somebody is said to be."""

from collections.abc import Iterator

from afterdraft.reading.grammar import Grammar
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.trait_owners import BEING, Said, Scope, described, of_subject
from afterdraft.reading.trait_words import DECADES, PEOPLE, number

_OWNER = frozenset({"poss"})
_ABOUT = words_of("about nearly almost over under only just barely some past")
_WHEN = words_of("that this now last next")  # behind an age: 'she was ten that spring'
_HOURS = 12  # 'at ten' is an hour, and 'was one that' no age
_UNITS = frozenset({"years", "year"})


def ages(within: Scope) -> Iterator[Said]:
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
    grown = (number("".join(small[first:end])) or 0) > _HOURS
    if small[before] in BEING and after[0] in _WHEN and grown:
        return of_subject(within, before), end - 1
    if not _closes(grammar, end):
        return None
    if small[before] == "at" and grown:
        named = before > 1 and small[before - 1] == "," and small[end : end + 1] == (",",)
        return (within.by_token.get(before - 2) if named else described(within, before)), end - 1
    if small[before] in BEING:
        return of_subject(within, before), end - 1
    apposed = small[before] == "," and after[0] == "," and before - 1 in within.by_token
    named = apposed and within.mentions[within.by_token[before - 1]].kind == "name"
    return (within.by_token[before - 1], end - 1) if named else None


def _closes(grammar: Grammar, end: int) -> bool:
    """Whether nothing is counted by the number before."""
    return end >= len(grammar.small) or grammar.of.pos[end] in ("PUNCT", "CCONJ", "SCONJ")
