"""Each novel in each habit, written once and kept by content."""

import hashlib
import pickle
from dataclasses import dataclass
from pathlib import Path

from bench import corpus
from bench.structure.writers import docx_page, txt_page
from bench.structure.writers.habits import HABITS, Habit, plan
from bench.structure.writers.plan import Plan

CACHE = Path(__file__).parents[2] / ".cache" / "bench" / "structure"


@dataclass(frozen=True, slots=True)
class Manuscript:
    slug: str
    title: str
    habit: str
    name: str  # file name
    data: bytes
    plan: Plan


def manuscript(path: Path, habit: Habit) -> Manuscript:
    """The novel at `path` in a habit, from the cache where nothing it is made of has changed."""
    kept = CACHE / f"{_key(path, habit)}.pickle"
    if kept.exists():
        found: Manuscript = pickle.loads(kept.read_bytes())  # noqa: S301 - our own cache, named by content
        return found
    made = make(corpus.novel(path), habit)
    CACHE.mkdir(parents=True, exist_ok=True)
    kept.write_bytes(pickle.dumps(made))
    return made


def make(novel: corpus.Novel, habit: Habit) -> Manuscript:
    planned = plan(novel, habit)
    if habit.ending == "txt":
        data = txt_page.written(planned, novel.title)
    else:
        data = docx_page.written(planned, habit.name, novel.title)
    return Manuscript(novel.slug, novel.title, habit.name, f"{novel.slug}.{habit.ending}", data, planned)


def habits(named: str = "") -> list[Habit]:
    """All habits, or those whose name contains `named`."""
    return [habit for habit in HABITS if named in habit.name]


def _key(path: Path, habit: Habit) -> str:
    digest = hashlib.sha256(habit.name.encode() + path.read_bytes())
    for source in [Path(corpus.__file__), *sorted((Path(__file__).parent / "writers").glob("*.py"))]:
        digest.update(source.read_bytes())
    return digest.hexdigest()[:32]
