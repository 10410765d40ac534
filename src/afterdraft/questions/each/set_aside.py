"""Somebody who is met only in scenes that are set aside, and is spoken of where the book goes on."""

from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.whole.turns import meant

SHOWN = 3  # places where they are spoken of
STRENGTH = 0.7


def find(seen: Seen) -> Iterator[Finding]:
    aside = seen.marks.set_aside
    met = _met(seen) if aside else {}
    for person, scenes in met.items():
        named = _named(seen, person) if scenes <= aside else []
        if named:
            yield Finding(
                evidence=tuple(named[:SHOWN]),
                strength=STRENGTH,
                subject=f"set aside: {seen.name(person).lower()}",
                words={"name": seen.name(person)},
                numbers={"times": len(named)},
                people=(person,),
                scenes=tuple(sorted(scenes)),
            )


def _met(seen: Seen) -> dict[str, set[int]]:
    """By person the scenes in which they are on the page, as read or as she marked."""
    met: dict[str, set[int]] = {}
    for one in seen.book.appearances:
        if one.presence != "mentioned":
            met.setdefault(one.person, set()).add(one.scene)
    for (scene, person), how in seen.marks.present.items():
        if how != "mentioned":
            met.setdefault(person, set()).add(scene)
    return met


def _named(seen: Seen, person: str) -> list[Span]:
    """Sentences that name them in scenes which stay, in telling order, each once."""
    found: dict[Span, None] = {}
    for number, scene in enumerate(seen.facts):
        if number not in seen.marks.set_aside:
            for one, who in zip(scene.mentions, meant(scene, seen.book.cast), strict=True):
                if who == person and one.kind == "name":
                    found.setdefault(seen.sentence(seen.span(number, one.paragraph, one.start, one.end)))
    return list(found)


CHECK = Check(
    id="set aside",
    name="Somebody met only in what is set aside",
    family="accidents",
    looks_at="Somebody who acts or speaks only in scenes that lie aside in the arrangement you work on, and whom a "
    "scene that stays still names.",
    method="Reads who is on the page and who is named, and which cards lie aside. What you marked counts too. "
    "Common practice of copy editors after a cut.",
    blind="Things, places and events of a scene that is set aside. Somebody who is named only as a role (the doctor). "
    "Somebody whom it is enough to hear of.",
    reads=("words", "cast", "marks"),
    find=find,
)
