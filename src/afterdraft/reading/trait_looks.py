"""Eyes, hair and beards: their colours, and whose they are."""

from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise

from afterdraft.reading.grammar import SUBJECTS, Grammar
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.trait import TraitKind
from afterdraft.reading.trait_bearers import bearer, heir
from afterdraft.reading.trait_owners import (
    BEING,
    ONCE,
    Said,
    Scope,
    alone_before,
    described,
    is_colour,
    of_part,
    otherwise,
    phrase,
    possessor,
)
from afterdraft.reading.trait_words import LOOKS, PARTS, SHADES

_DESCRIBING = words_of("amod compound nmod appos acl conj acomp attr oprd advmod")
_PREPOSITION = frozenset({"prep"})
_PREDICATE = frozenset({"acomp", "attr", "oprd"})
_COLOURED = words_of("coloured colored")
_CLAUSE = frozenset({"relcl"})
_WHICH = words_of("which that")
_SO = words_of("so very as quite almost")
_COMMA = frozenset((",",))
_GOING_ON = frozenset((",", "and", "as", "but", ";", "."))


def looks(within: Scope) -> Iterator[Said]:
    """'Her grey eyes', 'Ilse’s eyes were grey', 'a man with a red beard', 'the grey-eyed woman', 'they were blue'."""
    grammar = within.grammar
    before: tuple[int, TraitKind, int] | None = None  # eyes that somebody has, for 'they'
    for token, word in enumerate(grammar.small):
        kind = PARTS.get(word.rsplit("-", 1)[-1])
        if word == "they" and before and grammar.of.sentences[token] - grammar.of.sentences[before[0]] <= 1:
            yield from _look(grammar, before[1], before[2], token, _after_being(grammar, token), claimed=True)
        elif kind and word.endswith("ed"):
            yield from _look(grammar, kind, described(within, token), token, _hyphened(grammar, token), claimed=True)
        elif kind:
            mine = possessor(within, token)
            mine = heir(within, token, mine) if mine is not None else None
            owner = mine if mine is not None else of_part(within, token)
            owner = alone_before(within, token) if owner is None else owner
            owner = bearer(within, token) if owner is None else owner
            beside = [*range(token - 1, phrase(grammar, token) - 1, -1), *_colour_of(grammar, token)]
            if kind == "eyes" and _two(grammar, beside):
                continue
            found = list(_look(grammar, kind, owner, token, beside, claimed=mine is None))
            said = [*_beside(grammar, token), *_after_being(grammar, token), *_behind(grammar, token)]
            found = found or list(_look(grammar, kind, owner, token, said, claimed=True))
            yield from found or _look(grammar, kind, owner, token, _behind_comma(grammar, token), claimed=False)
            before = (token, kind, owner) if owner is not None else before


def _look(
    grammar: Grammar, kind: TraitKind, owner: int | None, part: int, tokens: Iterable[int], *, claimed: bool
) -> Iterator[Said]:
    """A colour goes before a shade. What is `claimed` counts only where it is asserted; 'her grey eyes' are grey."""
    said = [(LOOKS[kind].get(_colour(grammar, one)), one) for one in tokens if not _of_others(grammar, one)]
    known = [(value, one) for value, one in said if value]
    known.sort(key=lambda pair: pair[0] in SHADES and kind == "eyes")
    for value, one in known[:1]:
        first, last = min(part, one), max(part, one)
        once = set(grammar.small[phrase(grammar, part) : last]) & ONCE
        if not once and not (claimed and otherwise(grammar, last)):
            yield kind, value, owner, first, last


def _two(grammar: Grammar, tokens: Sequence[int]) -> bool:
    """'The grey and black eyes': of two people, or of every colour."""
    colours = sorted(one for one in tokens if LOOKS["eyes"].get(_colour(grammar, one), "dark") not in SHADES)
    return any(other - one == 2 and grammar.small[one + 1] == "and" for one, other in pairwise(colours))


def _of_others(grammar: Grammar, token: int) -> bool:
    """'Black-lashed eyes' are not black."""
    behind = grammar.small[token + 1 : token + 3]
    return len(behind) == 2 and behind[0] == "-" and behind[1] not in PARTS and behind[1] not in LOOKS["eyes"]


def _colour_of(grammar: Grammar, token: int) -> list[int]:
    """'The yellow of her hair', 'his yellow bush of hair'."""
    before = phrase(grammar, token) - 1
    of = before if before >= 0 and grammar.small[before] == "of" else before - 1
    return list(range(of - 1, phrase(grammar, of - 1) - 1, -1)) if of > 0 and grammar.small[of] == "of" else []


def _colour(grammar: Grammar, token: int) -> str:
    """The word that tells it; 'straw-coloured' comes apart."""
    small = grammar.small
    if small[token] in _COLOURED and token > 1 and small[token - 1] == "-":
        return f"{small[token - 2]}-coloured"
    return _last_part(small[token])


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
    after = token + 1 + grammar.followed(token, _SO)  # 'eyes so dark that …' hangs on anything
    behind = [after] if after < len(grammar.small) and grammar.of.pos[after] == "ADJ" else []
    return [*found, *below, *behind]


def _behind(grammar: Grammar, token: int) -> list[int]:
    """'Eyes, which were brown', 'eyes of a deep brown'."""
    colours = [
        colour
        for preposition in grammar.on(token, _PREPOSITION)
        for colour in grammar.children[preposition]
        if grammar.small[preposition] == "of" and is_colour(grammar, colour)
    ]
    subjects = [one for verb in grammar.on(token, _CLAUSE) for one in grammar.on(verb, SUBJECTS)]
    said = [said for one in subjects if grammar.small[one] in _WHICH for said in _after_being(grammar, one)]
    return [*said, *colours, *(below for one in colours for below in _beside(grammar, one))]


def _behind_comma(grammar: Grammar, token: int) -> list[int]:
    """'His eyes, brown and quite steady, went to the boy'."""
    small = grammar.small
    if not grammar.followed(token, _COMMA):
        return []
    place = token + 2 + grammar.followed(token + 1, _SO)
    ends = small[place + 1 : place + 2]
    return [place] if ends and ends[0] in _GOING_ON else []


def _after_being(grammar: Grammar, token: int) -> list[int]:
    """What the subject `token` is said to be."""
    verb = grammar.of.heads[token]
    if grammar.of.deps[token] not in SUBJECTS or grammar.small[verb] not in BEING:
        return []
    said = grammar.on(verb, _PREDICATE)
    for preposition in grammar.on(verb, _PREPOSITION):  # 'were of a rich hazel'
        said += grammar.children[preposition] if grammar.small[preposition] == "of" else ()
    return [*said, *(below for one in said for below in _beside(grammar, one))]
