"""Who is said to be like what: patterns over words and what hangs on them. Guesses, each with its words."""

from collections.abc import Iterator, Sequence
from itertools import chain

from afterdraft.reading.facts import Mention
from afterdraft.reading.grammar import Grammar
from afterdraft.reading.trait import Trait
from afterdraft.reading.trait_ages import ages
from afterdraft.reading.trait_claims import hands, heights, kin, origins, sides, trades
from afterdraft.reading.trait_looks import looks
from afterdraft.reading.trait_owners import otherwise, scope

_CLAIMS = (heights, hands, sides, ages, kin, trades, origins)


def traits(grammar: Grammar, paragraph: int, mentions: Sequence[Mention], base: int) -> Iterator[Trait]:
    """Of one paragraph, in the order of their kinds; `mentions` are its own, the first of them number `base`."""
    within = scope(grammar, mentions)
    said = (one for find in _CLAIMS for one in find(within) if not otherwise(grammar, one[4]))
    for kind, value, owner, first, last in chain(looks(within), said):
        if owner is not None and mentions[owner].spoken is grammar.spoken[last]:
            yield Trait(
                paragraph,
                grammar.of.starts[first],
                grammar.of.end(last),
                kind,
                value,
                base + owner,
                grammar.spoken[last],
            )
