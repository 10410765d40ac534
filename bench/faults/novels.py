"""The corpus folder's novels as scenes of paragraphs. Imports nothing of the program."""

import gzip
from collections.abc import Iterator, Sequence
from typing import Literal

from bench import corpus
from bench.faults.planted import Scenes
from bench.reading.novels import Paragraph, chapters, novel
from bench.slips.books import FOLDER
from bench.structure.halves import Half, half

Group = Half | Literal["others"]

DIALOGUE = (
    "AlicesAdventuresInWonderland",
    "DaisyMiller",
    "HardTimes",
    "NightAndDay",
    "TheGambler",
    "WhereAngelsFearToTread",
)
SLIPS = {
    "huckleberry-finn": "Adventures of Huckleberry Finn",
    "moby-dick": "Moby-Dick",
    "mysterious-island": "The Mysterious Island",
    "pickwick": "The Pickwick Papers",
    "tom-sawyer": "The Adventures of Tom Sawyer",
    "twenty-thousand-leagues": "Twenty Thousand Leagues Under the Sea",
}


def novels(which: Group) -> Iterator[tuple[str, Scenes]]:
    """Title and scenes, in the order of their files."""
    if which == "others":
        yield from _others()
        return
    for path in corpus.paths():
        found = corpus.novel(path)
        if half(found.title) == which:
            yield found.title, tuple(scene for chapter in found.chapters for scene in chapter.scenes if scene)


def _others() -> Iterator[tuple[str, Scenes]]:
    """Novels of the corpora of dialogue and of slips that the structure corpus has not, chapters for scenes: for
    tuning too, where what was chosen on its half is tried on other authors."""
    for slug in DIALOGUE:
        found = novel(slug)
        yield found.title, _scenes(found.chapters)
    for folder, title in SLIPS.items():
        text = gzip.decompress((FOLDER / folder / "text.txt.gz").read_bytes()).decode()
        yield title, _scenes(chapters(text))


def _scenes(found: Sequence[Sequence[Paragraph]]) -> Scenes:
    return tuple(tuple(one.text for one in chapter) for chapter in found)
