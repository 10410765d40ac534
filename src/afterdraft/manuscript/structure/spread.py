"""From a division of some of a file's paragraphs to one of them all."""

from collections.abc import Sequence
from dataclasses import replace

from afterdraft.manuscript.division import Role
from afterdraft.manuscript.draft import Draft


def spread(draft: Draft, kept: Sequence[int], total: int) -> Draft:
    """The draft of the paragraphs `kept` (indices, in order) of `total`, as one of all of them.

    A paragraph left out lies in the unit of the paragraph before it, and is matter within matter, else story.
    The first paragraph is kept.
    """
    division = draft.division
    return replace(
        draft,
        division=replace(
            division,
            parts=tuple(replace(one, at=kept[one.at]) for one in division.parts),
            chapters=tuple(replace(one, at=kept[one.at]) for one in division.chapters),
            scenes=tuple(replace(one, at=kept[one.at]) for one in division.scenes),
            matter=tuple(replace(one, at=kept[one.at]) for one in division.matter),
            roles=_roles(division.roles, kept, total),
        ),
        doubts=tuple(replace(one, paragraph=kept[one.paragraph]) for one in draft.doubts),
    )


def _roles(roles: Sequence[Role], kept: Sequence[int], total: int) -> tuple[Role, ...]:
    known = dict(zip(kept, roles, strict=True))
    spread: list[Role] = []
    for index in range(total):
        before = spread[-1] if spread else roles[0]
        spread.append(known.get(index, "matter" if before == "matter" else "story"))
    return tuple(spread)
