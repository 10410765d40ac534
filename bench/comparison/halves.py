"""The six novels to tune on and the six that only report; written down in `history.md` before the first tuning."""

import hashlib
from functools import cache

from bench import corpus
from bench.structure.halves import Half, half

MANY = 6  # novels of each half
SCENES = 20  # at least, or there is little to move


@cache
def novels(which: Half) -> tuple[corpus.Novel, ...]:
    known = [corpus.novel(path) for path in corpus.paths()]
    some = [novel for novel in known if half(novel.title) == which and len(scenes(novel)) >= SCENES]
    return tuple(sorted(some, key=lambda novel: hashlib.sha256(novel.title.encode()).hexdigest())[:MANY])


def scenes(novel: corpus.Novel) -> list[tuple[str, ...]]:
    return [scene for chapter in novel.chapters for scene in chapter.scenes if scene]
