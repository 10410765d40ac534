"""How old somebody is said to be."""

from collections.abc import Iterator, Sequence

from afterdraft.reading.grammar import Grammar
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.trait_owners import BEING, Said, Scope, described, of_subject
from afterdraft.reading.trait_words import DECADES, PEOPLE, number

_OWNER = frozenset({"poss"})
_ABOUT = words_of("about nearly almost over under only just barely some past now but already still")
_GROWING = BEING | {"turned"}
_SOMEBODY = PEOPLE | words_of("spinster bachelor widow widower")
_OWN = words_of("his her my")
_WHEN = words_of("that this now last next")  # behind an age: 'she was ten that spring'
_HOURS = 12  # 'at ten' is an hour, and 'was one that' no age
_UNITS = frozenset({"years", "year"})
_ORDINAL_WORDS = (
    "first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth "
    "sixteenth seventeenth eighteenth nineteenth"
)
_ORDINALS = {word: value for value, word in enumerate(_ORDINAL_WORDS.split(), 1)} | {
    f"{word.removesuffix('ies')}ieth": int(value.removesuffix("s")) for word, value in DECADES.items()
}


def ages(within: Scope) -> Iterator[Said]:
    """'In her forties', 'she was forty-five', 'ten years old', 'aged ten', 'a man of sixty', 'Ilse, thirty-two, …',
    'turned thirty'; and 'in her fortieth year', before she is forty."""
    grammar = within.grammar
    for token, word in enumerate(grammar.small):
        if word in DECADES and grammar.on(token, _OWNER):
            yield "age", DECADES[word], described(within, grammar.of.heads[token]), token, token
        if word == "year" and (year := _year_of_life(grammar.small, token)):
            yield "age", str(year[1] - 1), described(within, token), year[0], token
    token = 0
    while token < len(grammar.small):
        end, age = _number_at(grammar, token)
        if age is not None and (found := _aged(within, token, end)):
            owner, last = found
            yield "age", str(age), owner, token, last
        token = max(end, token + 1)


def _year_of_life(small: Sequence[str], token: int) -> tuple[int, int] | None:
    """'In her forty-first year': where the number begins, and the number. The first dozen are mostly of something
    else."""
    first, age = token - 1, _ORDINALS.get(small[token - 1], 0)
    if token > 3 and small[token - 2] == "-":
        first, age = token - 3, (number(small[token - 3]) or 0) + age
    in_own = first > 1 and small[first - 1] in _OWN and small[first - 2] == "in"
    return (first, age) if in_own and age > _HOURS else None


def _number_at(grammar: Grammar, token: int) -> tuple[int, int | None]:
    """The number that begins there, and the token after it: 'forty', '-', 'five' come apart, and 'forty-five-year-old'
    is as old."""
    end = token + 1
    while end + 1 < len(grammar.small) and grammar.small[end] == "-":
        end += 2
    for last in range(end, token, -2):
        if (whole := number("-".join(grammar.small[token:last:2]))) is not None:
            return last, whole
    return token + 1, None


def _aged(within: Scope, first: int, end: int) -> tuple[int | None, int] | None:
    grammar, small = within.grammar, within.grammar.small
    after = [*small[end : end + 3], "", "", ""][:3]
    if after[0] == "-" and after[1] == "year":
        old = end + 4 if small[end + 3 : end + 4] == ("-",) else end + 3
        return (described(within, old), old) if small[old : old + 1] == ("old",) else None
    before = first - 1
    while before > 0 and small[before] in _ABOUT:
        before -= 1
    if before < 0 or small[before] == "than":
        return None
    if after[0] in _UNITS and (after[1] == "old" or after[1:] == ["of", "age"]):
        return described(within, end + (after[1] == "old")), end + 2 - (after[1] == "old")
    if small[before] in _SOMEBODY and before < first - 1:
        return described(within, first - 1), end - 1
    if small[before] == "aged":
        return described(within, before), end - 1
    if small[before] == "of" and small[grammar.of.heads[before]] in _SOMEBODY and after[0] not in _UNITS:
        return described(within, before), end - 1
    grown = (number("".join(small[first:end])) or 0) > _HOURS
    if small[before] in _GROWING and after[0] in _WHEN and grown:
        return of_subject(within, before), end - 1
    if not _closes(grammar, end):
        return None
    if small[before] == "at" and grown:
        named = before > 1 and small[before - 1] == "," and small[end : end + 1] == (",",)
        return (within.by_token.get(before - 2) if named else described(within, before)), end - 1
    if small[before] in BEING or (small[before] == "turned" and grown):
        return of_subject(within, before), end - 1
    apposed = small[before] == "," and after[0] == "," and before - 1 in within.by_token
    named = apposed and within.mentions[within.by_token[before - 1]].kind == "name"
    return (within.by_token[before - 1], end - 1) if named else None


def _closes(grammar: Grammar, end: int) -> bool:
    """Whether nothing is counted by the number before."""
    return end >= len(grammar.small) or grammar.of.pos[end] in ("PUNCT", "CCONJ", "SCONJ")
