"""Signs that a pronoun of the narration means somebody met before it; `pronoun_weights` weighs them.

What they tell is common ground of reading: who was met last, who acted, who was named, who stands in the same
sentence (Lappin and Leass 1994 weigh the like by hand).
"""

from bisect import bisect_left
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Literal

from afterdraft.reading.facts import Gender, Mention

Met = Literal["name", "role", "pronoun", "speech"]
Form = Literal["he", "his", "him", "himself", "her"]  # 'her' is both whose and whom
FEW = 8  # of whom a pronoun is weighed against: those met last
_GAPS = (1, 8, 25, 60)  # letters
_NEAR = (0, 1, 2, 3, 5)
_OFTEN = (1, 2, 4, 8, 16)
_FORMS: dict[str, Form] = {
    "he": "he", "she": "he", "his": "his", "hers": "his", "him": "him", "himself": "himself", "herself": "himself",
}  # fmt: skip


@dataclass(slots=True)
class Candidate:
    """Somebody met: of the cast, or one who is nobody of it."""

    id: str
    gender: Gender
    of_cast: bool
    how: Met = "name"
    paragraph: int = 0
    sentence: int = 0  # counted through the scene, roughly: by mentions that begin one
    end: int = 0
    acts: bool = False
    acted: int = -99  # sentence in which they last did
    named: int = -99  # paragraph, likewise
    spoke: int = -99
    doubted: bool = False  # last met by a pronoun of which it is doubtful that it means them
    times: int = 0  # met, those in other scenes among them
    lately: list[int] = field(default_factory=list)  # paragraphs of the last times


@dataclass(frozen=True, slots=True)
class Place:
    """A pronoun, and what is around it."""

    number: int  # of the pronoun among the mentions of its scene
    pronoun: Mention
    sentence: int
    near: Sequence[Candidate]  # whom it may mean, those met last first
    behind: dict[str, str]  # people named right behind it: whether as who acts
    others: int  # of another gender, near
    ranks: Mapping[str, int]  # people of the scene by how often they are named, from 0


def form(pronoun: Mention) -> Form:
    """
    >>> form(Mention(0, 0, 3, "pronoun", "her", "f"))
    'her'
    """
    return _FORMS.get(pronoun.form, "he" if pronoun.subject else "her")


def signs(place: Place, rank: int) -> list[str]:
    """For the candidate of that rank in `place.near`."""
    one, pronoun, of = place.near[rank], place.pronoun, form(place.pronoun)
    sentences, paragraphs = place.sentence - one.sentence, pronoun.paragraph - one.paragraph
    how = f"{one.how} {'acts' if one.acts else 'is'}"
    back = min(rank, 3)
    here = sum(pronoun.paragraph - each.paragraph <= 1 for each in place.near)
    since = _up_to(place.sentence - one.acted, _NEAR)
    found = [
        f"{of} rank {back}",
        f"rank {back} of {min(len(place.near), 4)}",
        f"rank {back} near {min(here, 3)}",
        f"paragraphs {min(paragraphs, 4)} sentences {_up_to(sentences, _NEAR)}",
        f"{of} acted {since}",
        f"recent {_up_to(sum(pronoun.paragraph - each <= 2 for each in one.lately), (1, 2, 3, 5, 8))}",
        f"named {_up_to(pronoun.paragraph - one.named, (0, 1, 2, 4, 8))} {one.how}",
        f"times {_up_to(one.times, _OFTEN)}",
        f"gender {'known' if one.gender else 'unknown'}",
        f"cast {min(place.ranks.get(one.id, 9), 3)}" if one.of_cast else f"stranger {one.how}",
    ]
    found += _within(of, how, pronoun, one) if not sentences else _across(of, how, sentences)
    if one is max(place.near, key=lambda each: each.acted):
        found += [f"{of} last actor", f"last actor {since}"]
    if one.spoke == pronoun.paragraph:
        found.append(f"{of} speaks here")
    if one.id in place.behind:
        found.append(f"{of} behind {place.behind[one.id]}")
    if pronoun.first:
        found.append(f"first {how} rank {min(rank, 2)}")
    if place.near[0].paragraph < pronoun.paragraph:
        found.append(f"opens rank {min(rank, 2)} {how}")
    return found


def _within(of: Form, how: str, pronoun: Mention, one: Candidate) -> list[str]:
    gap = _up_to(pronoun.start - one.end, _GAPS)
    return [f"{of} within {how}", f"within {how} gap {gap}", f"{of} within gap {gap}"]


def _across(of: Form, how: str, sentences: int) -> list[str]:
    return [f"{of} across {how}", f"across {how} {_up_to(sentences, (1, 2, 3, 5))}"]


def nobody(place: Place) -> list[str]:
    """Signs that it means nobody of those near."""
    nearest = place.near[0] if place.near else None
    return [
        "nobody",
        f"nobody {form(place.pronoun)}",
        f"nobody of {min(len(place.near), 3)}",
        f"nobody paragraphs {min(place.pronoun.paragraph - nearest.paragraph, 4) if nearest else 'none'}",
        f"nobody sentences {_up_to(place.sentence - nearest.sentence, _NEAR) if nearest else 'none'}",
        f"nobody others {min(place.others, 2)}",
    ]


def _up_to(number: int, steps: Sequence[int]) -> str:
    """The first step that is not below the number; '+' beyond all."""
    at = bisect_left(steps, number)
    return str(steps[at]) if at < len(steps) else "+"
