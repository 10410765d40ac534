"""The page of keys, the switch for single-letter keys (WCAG 2.2, 2.1.4 asks for one), and first words put away."""

from dataclasses import dataclass

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.web.body import form, text
from afterdraft.web.render import AWAY, KEPT, LETTERS, back, frame, go, ours, render

GROUPS = (
    (
        "Anywhere in a book",
        (
            ("/", "Search"),
            ("n", "Write a loose note"),
            ("s", "Scenes"),
            ("c", "Cards"),
            ("p", "The split"),
            ("t", "Reverse outline: all summaries told in order"),
            ("r", "Plain reading"),
            ("g", "Plan"),
            ("d", "Drafts"),
            ("q", "Questions"),
            ("h", "Threads, setups, reveals"),
            ("w", "People and places"),
            ("b", "Books"),
            ("Ctrl Z", "Undo (in a text box: the typing itself)"),
            ("Ctrl Shift Z", "Redo"),
            ("?", "This page"),
            ("Esc", "Leave a text box, put away a message or a dialog"),
        ),
    ),
    (
        "In Scenes",
        (
            ("]", "Next scene"),
            ("[", "Previous scene"),
            ("e", "Write the summary"),
            ("a", "Add a note on this scene, or on the words chosen in the text"),
            ("1 … 9", "The same, in the ink with this number"),
            ("k", "Guard the words chosen in the text"),
            ("l", "Mark what runs through here; words chosen in the text are what it is fastened to"),
            ("f", "Say what this scene follows from"),
            ("i", "Say who is in it, and where"),
            ("o", "In a later round: carry the old card over"),
            ("v", "Show the old card before the new one is written; in the outline: the draft before beside it"),
            ("Ctrl Enter", "From the card: next scene, ready to write"),
        ),
    ),
    (
        "On the cards",
        (
            ("← → ↑ ↓", "From card to card; Home and End: the first and the last of a chapter"),
            ("Enter", "Open the card"),
            ("Space", "Pick the card up; then the arrows move it, Space or Enter puts it down, Esc leaves it there"),
            ("x", "Choose the card, to do something with several at once"),
            ("+ −", "Nearer, further"),
            ("f", "Filter: dim what does not match"),
            ("Esc", "Choose none; shut a menu"),
        ),
    ),
    (
        "On one card",
        (
            ("]", "Next card"),
            ("[", "Previous card"),
            ("e", "Write what is on the page"),
            ("w", "Write what shall happen"),
            ("o", "In a later round: carry the old card over (v: show it before the new one is written)"),
            ("c", "To all cards"),
        ),
    ),
    (
        "On Lay by codes",
        (("e", "Type the codes"),),
    ),
    (
        "In the split",
        (
            ("j", "Next line of the list (k: the one before)"),
            ("m", "Join this scene to the one before"),
            ("o", "Open this scene to split it, or shut it"),
            ("y", "Where perhaps a scene begins: it does (x: not a break)"),
            ("Enter", "On a button: do what it says"),
        ),
    ),
    (
        "In Drafts",
        (
            ("j", "Next line of the list (k: the one before)"),
            ("y", "What became of it is as it was found"),
            ("x", "It was cut"),
            ("u", "It is not reached yet, in a part-way draft"),
            ("l", "Say in which scene it lives on"),
            ("o", "Say otherwise of the scene on this line"),
            ("] [", "Side by side: what comes after, what comes before (j, k: the next change, the one before)"),
        ),
    ),
    (
        "In Questions",
        (
            ("j", "Next question (k: the one before)"),
            ("a", "Note it"),
            ("1 … 9", "The same, in the ink with this number"),
            ("v", "Make a change of it, in the plan"),
            ("y", "Let it stand"),
            ("e", "Say why it stands"),
            ("o", "Read round its passages, in place"),
            ("x", "How it is found; ask this kind less, or not at all"),
            ("]", "The next seven"),
        ),
    ),
    (
        "On the plan beside the draft",
        (
            ("j", "Next line (k: the one before)"),
            ("y", "Tick the place, or take the tick off"),
            ("o", "Both texts of the place; of a guarded passage: where it is"),
        ),
    ),
    (
        "On Offcuts",
        (
            ("e", "Look words up"),
            ("j", "Next passage (k: the one before)"),
            ("y", "Copy it"),
            ("o", "Put it on a card"),
            ("]", "The next page of them ([: the one before)"),
        ),
    ),
    (
        "On the fore-edge",
        (
            ("← →", "The scene before, the scene after"),
            ("Home End", "First scene, last scene"),
            ("Enter", "Open the scene"),
        ),
    ),
)


@dataclass(frozen=True, slots=True)
class KeysPage:
    groups: tuple[tuple[str, tuple[tuple[str, str], ...]], ...]
    back: str


def keys(request: Request) -> Response:
    """`/keys?from=path`"""
    came_from = request.query_params.get("from", "")
    return render(request, "keys.html", KeysPage(GROUPS, ours(came_from, "/keys")), frame(request, "Keys", "keys"))


def switch(request: Request) -> Response:
    """`POST /keys` with letters on or off."""
    posted = form(request)
    off = text(posted, "letters") == "off"
    answer = go(back(posted, "/keys"), said=f"Single-letter keys are {'off' if off else 'on'}.")
    answer.set_cookie(LETTERS, "off" if off else "on", max_age=KEPT, samesite="strict", httponly=True)
    return answer


def put_away(request: Request) -> Response:
    """`POST /put-away` with the name of a screen: its first words are not shown again; without one, all are."""
    posted = form(request)
    screen = text(posted, "screen")
    away = {*request.cookies.get(AWAY, "").split(), screen} if screen.isalpha() else set()
    answer = go(back(posted, "/"))
    answer.set_cookie(AWAY, " ".join(sorted(away)), max_age=KEPT, samesite="strict", httponly=True)
    return answer
