"""Pages and marks of a book in which everything is marked.

90 scenes of some 1,300 words; 40 threads, setups and reveals with 300 points; 60 people in eight scenes each, 25
places; 60 links; 400 notes in four inks, half of them on words, and 60 guarded passages; all made by the forms that the
screens hold. Times are from outside: from a client's request to the whole answer.
"""

import random
import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from statistics import median
from typing import Any

import httpx2
from lxml import html

from bench.report import Figure, Section
from bench.speed.serving import bring_in, serving
from bench.speed.walk import links

CHAPTERS, SCENES_A_CHAPTER, PARAGRAPHS = 30, 3, 18
NOTES, GUARDED = 400, 60
LINES, POINTS, PEOPLE, SCENES_EACH, PLACES, LINKS = 40, 300, 60, 8, 25, 60
TIMES = 15
PAGE, EDIT = 100.0, 30.0  # milliseconds, the budgets of quality
WORDS = (
    "the",
    "river",
    "rose",
    "by",
    "an",
    "inch",
    "and",
    "she",
    "counted",
    "steps",
    "before",
    "light",
    "went",
    "over",
)
KINDS = (("thread", "carries"), ("setup", "return"), ("reveal", "learns"))
SCREENS = ("threads", "people", "scenes", "outline", "cards", "notes", "notes?state=all", "search?q=matter")


@dataclass(frozen=True, slots=True)
class Took:
    what: str
    times: tuple[float, ...]  # milliseconds
    budget: float


def measure(*, full: bool) -> Section:
    """Times of the laden book; the same for a sample and in full."""
    del full
    found = _took()
    return Section(
        title="A laden desk",
        corpus=f"{CHAPTERS * SCENES_A_CHAPTER} scenes, {LINES} lines with {POINTS} points, {PEOPLE} people, "
        f"{NOTES} notes, "
        f"{GUARDED} guarded passages, all made by the forms that the screens hold; from a request to the whole answer.",
        figures=tuple(
            figure
            for one in found
            for figure in (
                Figure(f"{one.what}: median", median(one.times), "ms", one.budget),
                Figure(f"{one.what}: worst of {TIMES}", max(one.times), "ms"),
            )
        ),
    )


def _took() -> list[Took]:
    chance = random.Random(7)  # the same book each time
    with serving() as server:
        book, _ = bring_in(server.client, "weir.txt", _text(chance).encode())
        codes = _codes(server.client, book)
        found = [Took("a mark, until durable", _timed(_marks(server.client, book, codes, chance)), EDIT)]
        found.append(Took("a note, until durable", _timed(_notes(server.client, book, codes)), EDIT))
        for screen in SCREENS:
            found.append(Took(screen, _timed(_gets(server.client, f"{book}/{screen}")), PAGE))
    return found


def _text(chance: random.Random) -> str:
    pieces = ["The Drowned Weir", ""]
    for chapter in range(CHAPTERS):
        scenes = ("\n\n".join(_paragraph(chance) for _ in range(PARAGRAPHS)) for _ in range(SCENES_A_CHAPTER))
        pieces += [f"Chapter {chapter + 1}", "\n\n* * *\n\n".join(scenes)]
    return "\n\n".join(pieces)


def _paragraph(chance: random.Random) -> str:
    return " ".join(chance.choices(WORDS, k=72)).capitalize() + "."


def _codes(client: httpx2.Client, book: str) -> list[str]:
    """The code of each scene."""
    outline = client.get(f"{book}/outline")
    codes = dict.fromkeys(link.rpartition("/")[2] for link in links(outline) if f"{book}/scenes/" in link)
    assert len(codes) == CHAPTERS * SCENES_A_CHAPTER, f"{len(codes)} scenes"
    return list(codes)


def _marks(
    client: httpx2.Client, book: str, codes: list[str], chance: random.Random
) -> Iterator[Callable[[], httpx2.Response]]:
    """Everything that is marked, one act each."""

    def act(path: str, **form: str) -> Callable[[], httpx2.Response]:
        return lambda: client.post(f"{book}/{path}", data={**form, "back": f"{book}/threads#here"})

    for n in range(POINTS):
        kind, does = KINDS[n % LINES % len(KINDS)]
        name = {kind: f"Matter {n % LINES}", "who": f"Person {n % 5}" if n % 2 else ""}
        yield act("mark", code=codes[(n * 7) % len(codes)], does=does, **name)
    for n in range(PEOPLE * SCENES_EACH):
        how = chance.choice(("also viewpoint", "on page", "mentioned"))
        yield act("mark", code=chance.choice(codes), does=how, person=f"Person {n % PEOPLE}")
    for n in range(PLACES * SCENES_EACH):
        yield act("mark", code=chance.choice(codes), does="place", place=f"Place {n % PLACES}")
    for n in range(LINKS):
        scene, source = chance.sample(codes, 2)
        yield act("follows", scene=scene, source=source, why=f"Because of matter {n}.")


def _notes(client: httpx2.Client, book: str, codes: list[str]) -> Iterator[Callable[[], httpx2.Response]]:
    """Notes in turn on a scene and on words of it, in one ink after the other; then guarded passages."""
    client.post(f"{book}/inks", data={"start": "1"})
    choice: Any = html.fromstring(client.get(f"{book}/notes").text)
    inks = choice.xpath("//form[@id='new']//input[@name='ink']/@value")
    words = {code: _words(client.get(f"{book}/scenes/{code}")) for code in codes}

    def act(path: str, **form: str) -> Callable[[], httpx2.Response]:
        return lambda: client.post(f"{book}/{path}", data={**form, "back": f"{book}/about"})

    for n in range(NOTES):
        code = codes[n % len(codes)]
        on = {"words": words[code]} if n % 2 else {}
        yield act("notes", scene=code, text=f"Is this matter {n}, or another?", ink=str(inks[n % len(inks)]), **on)
    for code in codes[:GUARDED]:
        yield act("guarded", scene=code, words=words[code])


def _words(scene: httpx2.Response) -> str:
    return str(html.fromstring(scene.text).xpath("string(//article//p[1])"))[:40]


def _gets(client: httpx2.Client, address: str) -> Iterator[Callable[[], httpx2.Response]]:
    return ((lambda: client.get(address, follow_redirects=True)) for _ in range(TIMES))


def _timed(acts: Iterator[Callable[[], httpx2.Response]]) -> tuple[float, ...]:
    times = []
    for act in acts:
        began = time.perf_counter()
        answer = act()
        times.append(1000 * (time.perf_counter() - began))
        assert answer.status_code < 400, answer.text[:500]
    return tuple(times)
