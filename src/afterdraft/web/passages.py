"""Which words of a scene a form means: as the selection says, or else as they are found."""

import json

from starlette.datastructures import FormData

from afterdraft.desk.anchor import Passage
from afterdraft.web.body import text
from afterdraft.work.notes.find_passage import find_passage
from afterdraft.work.ports import Book

MOST = 10**9  # no draft has as many paragraphs, no paragraph as many signs


def passages(book: Book, scene: str, posted: FormData) -> tuple[Passage, ...]:
    """From the fields `words` and `passage`; none for no words. Raises `NotPossible` for words not there."""
    words = text(posted, "words").strip()
    if not words:
        return ()
    return selected(text(posted, "passage")) or find_passage(book, scene, words)


def selected(passage: str) -> tuple[Passage, ...]:
    """`[{"paragraph", "start", "end"}, …]`, as the selection module gives it; none where it is anything else."""
    try:
        return tuple(
            Passage(*(_place(one[name]) for name in ("paragraph", "start", "end"))) for one in json.loads(passage)
        )
    except (ValueError, TypeError, KeyError, RecursionError):
        return ()


def _place(sent: object) -> int:
    if type(sent) is int and 0 <= sent < MOST:  # a truth value is no place
        return sent
    raise ValueError
