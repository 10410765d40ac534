"""Whom each pronoun of the narration means, with how likely that is.

Those met before it are weighed by signs whose weights were learned on LitBank (`pronoun_weights`); how likely each is
comes of all that may be meant, nobody included. `turns.guessed` says who is near, which is enough for speech.
"""

from collections.abc import Sequence
from math import exp

from afterdraft.reading.facts import SceneFacts
from afterdraft.whole.cast import Cast
from afterdraft.whole.pronoun_cautions import Owner, how_sure, leans_on, told_beside
from afterdraft.whole.pronoun_signs import Place, nobody, signs
from afterdraft.whole.pronoun_walk import walk
from afterdraft.whole.pronoun_weights import weights
from afterdraft.whole.speakers import Spoken


def antecedents(
    scene: SceneFacts,
    people: Sequence[str | None],
    spoken: Sequence[Spoken],
    cast: Cast,
    *,
    paragraphs: bool = True,
) -> tuple[Owner | None, ...]:
    """Beside each pronoun outside speech, its person; None for other mentions, and where nobody of the cast is likely.
    `people` is what `turns.meant` gives, `spoken` the speakers of the scene; without `paragraphs` it is not known
    where they begin, so that speech and what stands behind it need not be of one person."""
    found: list[Owner | None] = [None] * len(scene.mentions)
    known = {person.id: person.gender for person in cast.people}

    def weighed(place: Place) -> Owner | None:
        owner = likeliest(place)
        if owner and owner[0] in known:
            return owner[0], how_sure(scene, people, known, place, owner, paragraphs=paragraphs)
        return owner

    def choose(place: Place) -> Owner | None:
        leans = leans_on(scene, place.number)
        owner = found[leans] if leans is not None else None
        if owner is None and paragraphs:
            owner = told_beside(scene, people, spoken, known, place.number)
        if owner is None or leans is not None:
            owner = surer(owner, weighed(place))
        if owner and owner[0] in known:
            found[place.number] = owner
        return owner

    walk(scene, people, spoken, cast, choose)
    return tuple(found)


def surer(leant: Owner | None, weighed: Owner | None) -> Owner | None:
    """Of whom a pronoun before means, and whom this one does by itself: the first, surer where both are the same."""
    if leant and weighed and leant[0] == weighed[0]:
        return max(leant, weighed)
    return leant or weighed


def likeliest(place: Place) -> Owner | None:
    """None for nobody of those near."""
    known = weights()
    scores = [sum(known.get(sign, 0.0) for sign in signs(place, rank)) for rank in range(len(place.near))]
    none = sum(known.get(sign, 0.0) for sign in nobody(place))
    best = max(scores, default=none)
    if best <= none:
        return None
    share = 1 / sum(exp(score - best) for score in (*scores, none))
    return place.near[scores.index(best)].id, round(share, 2)
