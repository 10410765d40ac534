"""Scene breaks that nobody marked, as the screens show them: looked for in the background, once for each draft, in a
process of its own, so that no page waits for it.

What was found is held in memory alone: it is the program's, and found again after a start. It stays as it is while she
answers, so that no new place comes up for one that she has taken.
"""

from collections.abc import Sequence
from contextlib import suppress
from dataclasses import dataclass
from threading import Lock, Thread

from starlette.requests import Request

from afterdraft import wiring
from afterdraft.errors import AfterdraftError
from afterdraft.manuscript.draft import Suggestion
from afterdraft.web.view import BookView
from afterdraft.work.ports import Book
from afterdraft.work.split.suggest_breaks import unanswered

_WORDS = {"time": "time", "place": "place", "cast": "people", "words": "other words than before"}


@dataclass(frozen=True, slots=True)
class Perhaps:
    """A place where a scene may begin."""

    paragraph: int
    words: str  # its first words
    code: str  # of the scene it lies in
    rests_on: tuple[tuple[str, str], ...]  # what it rests on, each with the words of the text, "" for none


class Suggesting:
    """The places found in each draft. May be asked from any thread."""

    def __init__(self) -> None:
        self._found: dict[tuple[str, str], tuple[Suggestion, ...] | None] = {}  # None: being looked for
        self._lock = Lock()

    def found(self, book: Book, draft: str) -> tuple[Suggestion, ...] | None:
        """All places of the draft; None while they are being looked for. Asking begins it."""
        key = (book.id, draft)
        with self._lock:
            if key not in self._found:
                self._found[key] = None
                Thread(target=self._look, args=(book, draft), daemon=True).start()
            return self._found[key]

    def _look(self, book: Book, draft: str) -> None:
        key = (book.id, draft)
        found = None
        with suppress(AfterdraftError):  # the book was closed meanwhile, or is in trouble that its pages tell of
            found = wiring.suggest_breaks(book, draft)
        with self._lock:
            if found is None:
                del self._found[key]  # the next who asks begins anew
            else:
                self._found[key] = found


def perhaps(request: Request, seen: BookView) -> tuple[Perhaps, ...] | None:
    """The places of a draft that she has not answered, in order; None while they are being looked for."""
    suggesting: Suggesting = request.app.state.suggesting
    found = suggesting.found(seen.book, seen.draft.id)
    return None if found is None else _shown(seen, unanswered(seen.book, seen.draft.id, seen.division, found))


def _shown(seen: BookView, found: Sequence[Suggestion]) -> tuple[Perhaps, ...]:
    words = seen.book.first_words(seen.draft.id, [one.paragraph for one in found])
    return tuple(
        Perhaps(
            one.paragraph,
            words.get(one.paragraph, ""),
            scene.scene.code,
            tuple((_WORDS[why], evidence) for why, evidence in zip(one.why, one.evidence, strict=True)),
        )
        for one in found
        if (scene := seen.outline.scene_of(one.paragraph))
    )
