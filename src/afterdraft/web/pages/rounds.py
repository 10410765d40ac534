"""Rounds: what each round of revision did, in counts."""

import json
from dataclasses import dataclass

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.comparison.round import RoundCounts
from afterdraft.comparison.standings import Asked, Went, asked, went
from afterdraft.web.render import book_of, frame, go, render
from afterdraft.web.view import BookView, view
from afterdraft.work.drafts.rounds import asked_then, standing
from afterdraft.work.ports import Book, DraftFacts


@dataclass(frozen=True, slots=True)
class RoundRow:
    """From one draft to the next; the last row is the round that goes on, which has no next draft yet."""

    old: DraftFacts
    new: DraftFacts | None
    counts: RoundCounts | None
    notes: Went | None  # None where it was not written down how they stood
    changes: Went | None
    questions: Asked | None  # None where one of the drafts was never looked over


@dataclass(frozen=True, slots=True)
class RoundsPage:
    view: BookView
    rows: tuple[RoundRow, ...]
    gathering: bool  # scenes and words are not all counted yet

    @property
    def part_way(self) -> bool:
        return any(row.counts and row.counts.not_reached for row in self.rows)


def rounds(request: Request) -> Response:
    """`/books/{book}/drafts/rounds`"""
    seen = view(book_of(request))
    book, known = seen.book, seen.book.drafts()
    if len(known) < 2:
        return go(f"/books/{seen.facts.id}/drafts")
    forms = {draft: json.loads(form) for draft, form in book.rounds().items()}
    now = json.loads(standing(book, seen.draft.id))
    counted = request.app.state.gathering.rounds(seen, request.app.state.comparing)
    rows = []
    for place, (old, new) in enumerate(zip(known, [*known[1:], None], strict=True)):
        before = forms.get(old.id) if place else {"notes": {}, "changes": {}}
        after = forms.get(new.id) if new else now
        notes, changes = (went(before[one], after[one]) if before and after else None for one in ("notes", "changes"))
        questions = _questions(book, old, new) if new else None
        rows.append(RoundRow(old, new, counted[place] if counted and new else None, notes, changes, questions))
    context = RoundsPage(seen, tuple(rows), gathering=counted is None)
    return render(request, "rounds.html", context, frame(request, "Rounds", "rounds", book=seen))


def _questions(book: Book, old: DraftFacts, new: DraftFacts) -> Asked | None:
    before, after = asked_then(book, old.id), asked_then(book, new.id)
    return None if before is None or after is None else asked(before, after)
