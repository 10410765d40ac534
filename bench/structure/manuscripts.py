"""Each novel in each habit and format, written once and kept by content."""

import hashlib
import pickle
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, replace
from pathlib import Path

from bench import corpus
from bench.structure.writers import docx_page, epub_page, html_page, md_page, odt_page, rtf_page, txt_page
from bench.structure.writers.habits import HABITS, Habit, plan
from bench.structure.writers.looks import Body
from bench.structure.writers.plan import Plan

CACHE = Path(__file__).parents[2] / ".cache" / "bench" / "structure"
LOOKED: Mapping[str, Callable[[Plan, str, Body, str], bytes]] = {  # formats in which a line has a look
    "docx": docx_page.written,
    "odt": odt_page.written,
    "rtf": rtf_page.written,
    "html": html_page.written,
    "epub": epub_page.written,
}
WRITTEN = (*LOOKED, "txt", "md")


@dataclass(frozen=True, slots=True)
class Manuscript:
    slug: str
    title: str
    habit: str
    name: str  # file name
    data: bytes
    plan: Plan
    rest: tuple[tuple[str, bytes], ...] = ()  # further files, names and bytes, in order

    @property
    def files(self) -> tuple[tuple[str, bytes], ...]:
        return ((self.name, self.data), *self.rest)


def manuscript(path: Path, habit: Habit, form: str = "") -> Manuscript:
    """The novel at `path` in a habit and a format, from the cache where nothing it is made of has changed."""
    kept = CACHE / f"{key(path, habit, form)}.pickle"
    if kept.exists():
        found: Manuscript = pickle.loads(kept.read_bytes())  # noqa: S301 - our own cache, named by content
        return found
    made = make(corpus.novel(path), habit, form)
    CACHE.mkdir(parents=True, exist_ok=True)
    kept.write_bytes(pickle.dumps(made))
    return made


def make(novel: corpus.Novel, habit: Habit, form: str = "") -> Manuscript:
    """The novel written in a habit; in the habit's first format unless `form` names another."""
    form = form or habit.formats[0]
    if unmarked(novel, habit, form):
        novel = replace(novel, front=())
    planned = plan(novel, habit)
    pieces = list(_chapters(planned)) if habit.apart else [planned]
    files = [_written(piece, habit, form, novel.title) for piece in pieces]
    names = [f"{number:02} {novel.slug}.{form}" for number in range(len(files))] if habit.apart else []
    name, *more = names or [f"{novel.slug}.{form}"]
    return Manuscript(
        novel.slug, novel.title, habit.name, name, files[0], planned, tuple(zip(more, files[1:], strict=True))
    )


def unmarked(novel: corpus.Novel, habit: Habit, form: str) -> bool:
    """Neither a heading nor a new page would show where the story begins after front matter."""
    return (form == "md" or habit.name == "markdown") and not habit.heading(novel, novel.chapters[0])


def habits(named: str = "") -> list[Habit]:
    """All habits, or those whose name contains `named`."""
    return [habit for habit in HABITS if named in habit.name]


def key(path: Path, habit: Habit, form: str) -> str:
    """Names a manuscript by all that it is made of."""
    digest = hashlib.sha256(f"{habit.name} {form}".encode() + path.read_bytes())
    for source in [Path(__file__), Path(corpus.__file__), *sorted((Path(__file__).parent / "writers").glob("*.py"))]:
        digest.update(source.read_bytes())
    return digest.hexdigest()[:32]


def _written(planned: Plan, habit: Habit, form: str, title: str) -> bytes:
    if form == "md" or habit.name == "markdown":
        return md_page.written(planned, habit.name, form, title)
    if form == "txt":
        return txt_page.written(planned, habit.name, title)
    return LOOKED[form](planned, habit.name, habit.body, title)


def _chapters(planned: Plan) -> Iterator[Plan]:
    """A plan for each file: what stands before the first chapter, then each chapter with its part's heading."""
    starts = [0]
    for at, line in enumerate(planned.lines):
        if line.opens is not None:
            while planned.lines[at - 1].kind in ("part", "head"):
                at -= 1
            starts.append(at)
    for start, end in zip(starts, [*starts[1:], len(planned.lines)], strict=True):
        if start < end:
            yield replace(planned, lines=planned.lines[start:end])
