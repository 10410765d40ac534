"""Many people named for the first time at once, in the opening."""

from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.whole.turns import meant

FIRST = 0.1  # share of the book's words in which readers still learn who is who; chosen by hand
WINDOW = 600  # words: two pages
MANY = 10  # people named for the first time within a window; eight were in vain four times of four


def find(seen: Seen) -> Iterator[Finding]:
    entered = list(_first_named(seen))
    best: list[tuple[int, str, Span]] = []
    for at, (word, _, span) in enumerate(entered):
        within = [one for one in entered[at:] if one[0] - word <= WINDOW and one[2].scene == span.scene]
        best = max(best, within, key=len)
    if len(best) >= MANY:
        yield Finding(
            evidence=tuple(span for _, _, span in best),
            strength=min(0.7, 0.35 + 0.03 * len(best)),
            subject="many at once",
            words={"names": ", ".join(seen.name(person) for _, person, _ in best)},
            numbers={"people": len(best), "words": best[-1][0] - best[0][0]},
            people=tuple(person for _, person, _ in best),
        )


def _first_named(seen: Seen) -> Iterator[tuple[int, str, Span]]:
    """Words told before, person, and where they are named first, in the opening."""
    whole = sum(len(text.split()) for scene in seen.texts for text in scene)
    narrator = seen.book.cast.narrator
    met = {narrator.id} if narrator else set()
    words = 0
    for number, scene in enumerate(seen.facts):
        people = meant(scene, seen.book.cast)
        for place, text in enumerate(seen.texts[number]):
            if words > FIRST * whole:
                return
            for one, person in zip(scene.mentions, people, strict=True):
                if one.paragraph == place and one.kind == "name" and person and person not in met:
                    met.add(person)
                    at = words + len(text[: one.start].split())
                    yield at, person, seen.span(number, place, one.start, one.end)
            words += len(text.split())


CHECK = Check(
    id="many at once",
    name="Many people named at once",
    family="opening",
    looks_at="Two pages of the first tenth of the book in which ten people or more are named for the first time.",
    method="Where each of the cast is first named, counted over a window of 600 words. Common practice of editors.",
    blind="People of history and of other books may be counted among the cast.",
    reads=("words", "cast"),
    find=find,
    recipe=3,
)
