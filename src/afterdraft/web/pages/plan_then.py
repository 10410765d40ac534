"""The plan beside the draft: whether the text changed where something was planned, or guarded; she ticks."""

from dataclasses import dataclass

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.web.fates import FateRow
from afterdraft.web.plan_then import (
    ChangeThen,
    GuardedThen,
    IntentThen,
    changes_of,
    guarded_of,
    intents_of,
    unplanned_of,
)
from afterdraft.web.render import book_of, frame, go, many, render
from afterdraft.web.two_drafts import TwoDrafts, two_drafts
from afterdraft.web.view import BookView, view


@dataclass(frozen=True, slots=True)
class PlanThenPage:
    view: BookView
    two: TwoDrafts
    opened: str  # id of the place or card whose texts are shown
    changes: tuple[ChangeThen, ...]
    intents: tuple[IntentThen, ...]
    guarded: tuple[GuardedThen, ...]
    unplanned: tuple[FateRow, ...]

    @property
    def facts(self) -> str:
        """ "5 changes in 9 places, 4 ticked off · 12 cards with something meant · 3 guarded passages"."""
        places = [place.place for one in self.changes for place in one.places]
        ticked = sum(place.done for place in places)
        told = (
            f"{many(len(self.changes), 'change')} in {many(len(places), 'place')}, {ticked} ticked off",
            f"{many(len(self.intents), 'card')} with something meant",
            f"{many(len(self.guarded), 'guarded passage')}",
        )
        return " · ".join(told)


def plan(request: Request) -> Response:
    """`/books/{book}/drafts/plan`, with `?old=1&new=2` any two drafts and `&open=` a place whose texts are shown."""
    seen = view(book_of(request))
    two = two_drafts(request, seen)
    if two is None:
        return go(f"/books/{seen.facts.id}/drafts")
    opened = request.query_params.get("open", "")
    changes, intents = changes_of(two, seen.book, opened), intents_of(two, seen.book, opened)
    context = PlanThenPage(
        view=seen,
        two=two,
        opened=opened,
        changes=changes,
        intents=intents,
        guarded=guarded_of(two, seen.book),
        unplanned=unplanned_of(two, changes, intents),
    )
    name = "The plan beside the draft"
    return render(request, "plan_then.html", context, frame(request, name, "drafts-plan", book=seen))
