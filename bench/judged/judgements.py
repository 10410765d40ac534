"""Judgements of questions, as they are kept: no words of the novels, only fingerprints and the judge's reasons."""

import json
from collections.abc import Sequence
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import Literal, get_args

FOLDER = Path(__file__).parent / "judgements"
Verdict = Literal["good", "answered", "mistaken"]
VERDICTS: tuple[Verdict, ...] = get_args(Verdict)


@dataclass(frozen=True, slots=True)
class Judgement:
    fingerprint: str  # of the question
    check: str  # by id
    scenes: tuple[int, ...]  # from 0
    verdict: Verdict
    why: str  # one line


def judgements(slug: str, folder: Path = FOLDER) -> tuple[Judgement, ...]:
    """Of one novel; none where nothing was judged.

    Raises:
        ValueError: a verdict is none of the three, a reason is missing, or a question is judged twice.
    """
    path = folder / f"{slug}.json"
    found = json.loads(path.read_text("utf-8")) if path.exists() else []
    known = tuple(Judgement(**{**one, "scenes": tuple(one["scenes"])}) for one in found)
    for one in known:
        if one.verdict not in VERDICTS or not one.why.strip():
            raise ValueError(f"{path.name}: {one.fingerprint[:12]} has no such verdict, or no reason")
    if len({one.fingerprint for one in known}) < len(known):
        raise ValueError(f"{path.name}: a question is judged twice")
    return known


def keep(slug: str, known: Sequence[Judgement], folder: Path = FOLDER) -> None:
    """All of one novel's, in the order given."""
    made = json.dumps([asdict(one) for one in known], ensure_ascii=False, indent=1)
    (folder / f"{slug}.json").write_text(made + "\n", encoding="utf-8")
