"""Cards of the draft before are carried over: one, all whose scenes are as they were, a chapter's or the book's."""

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.errors import Missing, NotPossible
from afterdraft.web.anew import Before, as_they_were, before
from afterdraft.web.anew_units import old_cards
from afterdraft.web.body import form
from afterdraft.web.pages.whole import unit_of
from afterdraft.web.render import back, book_of, go, many
from afterdraft.web.view import BookView, view
from afterdraft.work.cards.carry_card import carry_card, carry_cards
from afterdraft.work.cards.carry_unit import carry_unit


def scene(request: Request) -> Response:
    """`POST /books/{book}/anew/scene/{code}`: its card takes the words of those it came from."""
    seen, then = _before(request)
    meant = seen.by_code(request.path_params["code"]).scene
    carry_card(seen.book, meant.id, then.sources(meant.id))
    return go(back(form(request), f"/books/{seen.facts.id}/scenes/{meant.code}"), said="The card was carried over.")


def every(request: Request) -> Response:
    """`POST /books/{book}/anew/all`: of all scenes that are as they were, where nothing is written yet."""
    seen, then = _before(request)
    scenes = as_they_were(then, seen.cards)
    if not scenes:
        raise NotPossible("No card of a scene that is as it was is left to carry.")
    done = carry_cards(seen.book, scenes)
    return go(
        back(form(request), f"/books/{seen.facts.id}/drafts"),
        said=f"{many(done, 'card was', 'cards were')} carried over.",
    )


def unit(request: Request) -> Response:
    """`POST /books/{book}/anew/{kind}/{unit}`: of a chapter, a part, or (`-`) the book."""
    seen, then = _before(request)
    kind, meant = unit_of(request)
    source = old_cards(seen, then).get((kind, meant))
    if source is None:
        raise Missing("The card of the draft before")
    carry_unit(seen.book, kind, meant, source.card)
    return go(back(form(request), f"/books/{seen.facts.id}/whole"), said="The card was carried over.")


def _before(request: Request) -> tuple[BookView, Before]:
    seen = view(book_of(request))
    then = before(seen, request.app.state.comparing.beside_the_last(seen.book))
    if then is None:
        raise Missing("A draft before this one")
    return seen, then
