"""Whose eyes or hair these are where no word hangs them on anybody: by what stands before them."""

from afterdraft.reading.lexicon import words_of
from afterdraft.reading.trait_owners import BEING, Scope, phrase
from afterdraft.reading.trait_words import PEOPLE

_LOOKING = words_of(
    "face gaze head hair lashes brow brows eyebrows forehead cheek cheeks lips mouth chin nose skin look"
)
_OWN = words_of("his her")
_THOSE = words_of("the those these both")
_HAS = words_of("has have had having 's with")
_KIN = words_of("mother father grandmother grandfather mam dad mum mom sister brother aunt uncle")


def bearer(within: Scope, token: int) -> int | None:
    """'She kept her gaze on him, those grey eyes': who has the look that is told of before. 'She had a long face, a
    scar, and grey eyes': who does what the sentence begins with."""
    small = within.grammar.small
    start = phrase(within.grammar, token)
    if start > 0 and small[start - 1] in _THOSE:
        looking = _looking(within, start)
        return looking if looking is not None else _having(within, token)
    return _having(within, token)


def heir(within: Scope, token: int, owner: int) -> int | None:
    """'He had his mother’s eyes, which were brown': not hers, but of whoever has them."""
    mention, grammar = within.mentions[owner], within.grammar
    if mention.kind != "role" or mention.form.rsplit(" ", 1)[-1] not in _KIN:
        return owner
    if grammar.of.deps[token] not in ("dobj", "pobj") or grammar.small[grammar.of.heads[token]] not in _HAS:
        return owner
    first = min(place for place, number in within.by_token.items() if number == owner)
    return _having(within, first)


def _looking(within: Scope, before: int) -> int | None:
    """Who has the nearest face or gaze before, in this sentence or the one before it."""
    grammar = within.grammar
    for token in range(before - 1, 0, -1):
        if grammar.of.sentences[before] - grammar.of.sentences[token] > 1:
            return None
        if grammar.small[token] in _LOOKING:
            owner = phrase(grammar, token) - 1
            if owner >= 0 and grammar.small[owner] in _OWN:
                return within.by_token.get(owner)
    return None


def _having(within: Scope, token: int) -> int | None:
    """The last in the sentence who does something, where they have something or are with something, and no other person
    stands between."""
    grammar = within.grammar
    has = False
    for place in range(token - 1, -1, -1):
        if grammar.of.sentences[place] != grammar.of.sentences[token]:
            return None
        number = within.by_token.get(place)
        mention = within.mentions[number] if number is not None else None
        if mention and mention.kind in ("name", "pronoun") and (mention.subject or _is_shown(within, place)):
            return number if has else None
        someone = (mention and mention.kind in ("name", "role", "self")) or grammar.small[place] in PEOPLE
        if someone and not (_is_compared(within, place) or _is_shown(within, place)):
            return None
        has = has or grammar.small[place] in _HAS
    return None


def _is_shown(within: Scope, token: int) -> bool:
    """'In front of them was Ada Lamb, very upright, with'."""
    grammar = within.grammar
    return grammar.of.deps[token] in ("attr", "nsubj") and grammar.small[grammar.of.heads[token]] in BEING


def _is_compared(within: Scope, token: int) -> bool:
    """'Cropped like a boy’s'."""
    return "like" in within.grammar.small[max(0, token - 3) : token]
