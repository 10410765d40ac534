"""A scene's card in a later round: blank, the old one kept back until the new one is written, then beside it."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Literal

from afterdraft.comparison.comparison import Comparison
from afterdraft.desk.card import CARD_FIELDS, Card
from afterdraft.manuscript.outline import SceneView
from afterdraft.web.view import BookView
from afterdraft.work.drafts.compared import Compared
from afterdraft.work.ports import DraftFacts

State = Literal["new", "blank", "kept back", "shown"]
SHARES = (
    (0.05, "a twentieth"),
    (0.1, "a tenth"),
    (0.2, "a fifth"),
    (0.25, "a quarter"),
    (1 / 3, "a third"),
    (0.5, "half"),
    (2 / 3, "two thirds"),
    (0.75, "three quarters"),
    (0.9, "nine tenths"),
)
FEW, NEARLY_ALL = 0.03, 0.97  # shares below and above which no fraction is named


@dataclass(frozen=True, slots=True)
class OldCard:
    """Of a scene of the draft before, that the scene came from."""

    scene: str  # id
    code: str
    path: str  # where it is read
    card: Card
    elsewhere: tuple[str, ...]  # codes of other scenes that it lives on in

    @property
    def written(self) -> bool:
        return any(getattr(self.card, field).strip() for field in CARD_FIELDS)


@dataclass(frozen=True, slots=True)
class Anew:
    """What the card of a scene of the newest draft has from the draft before."""

    draft: int  # number of the draft before
    state: State  # "new": the scene has none; "blank": nothing was written; "shown": written, or wished for
    olds: tuple[OldCard, ...]  # in telling order; those with words on them
    carried: bool  # its words were carried over
    changed: (
        str  # "About a third of the words changed since you wrote this card."; "" where nothing was kept to compare
    )
    same: bool = False  # the old words and the new ones are the same

    @property
    def beside(self) -> tuple[OldCard, ...]:
        """What is shown beside the card."""
        return () if self.same or self.state != "shown" else self.olds


@dataclass(frozen=True, slots=True)
class Before:
    """The draft before the newest, read once for a page."""

    compared: Compared
    draft: DraftFacts
    cards: Mapping[str, Card]  # of the draft before, by scene id
    kept: Mapping[str, tuple[str, ...]]  # by id of a card that was carried: the scenes whose cards it was
    base: str  # address of the draft before

    def sources(self, scene: str) -> tuple[str, ...]:
        """Ids of the scenes that it came from, in telling order."""
        places = self.compared.old.scene_index
        return tuple(sorted(self.compared.sources.get(scene, ()), key=places.__getitem__))


def before(seen: BookView, compared: Compared | None) -> Before | None:
    """None in a book of one draft."""
    if compared is None:
        return None
    draft = seen.book.drafts()[-2]
    base = f"/books/{seen.facts.id}/drafts/{draft.number}"
    return Before(compared, draft, seen.book.cards(draft.id), seen.book.kept_cards(), base)


def anew(then: Before | None, scene: SceneView, card: Card, *, show: bool = False) -> Anew | None:
    """`show`: she wishes to see the old card before the new one is written. None in a book of one draft."""
    if then is None:
        return None
    sources = then.sources(scene.scene.id)
    olds = tuple(one for one in (_old(then, source, scene.scene.id) for source in sources) if one.written)
    carried = card.id in then.kept
    return Anew(
        draft=then.draft.number,
        state=_state(sources, olds, written=card.written or show),
        olds=olds,
        carried=carried,
        changed=_changed(then, scene.scene.id, sources) if olds else "",
        same=carried and card.summary == "\n".join(one.card.summary for one in olds if one.card.written),
    )


def as_they_were(then: Before, cards: Mapping[str, Card]) -> dict[str, tuple[str, ...]]:
    """Scenes whose text is as it was and whose card was written then and is not yet now, each with its source.

    `cards`: of the newest draft, by scene id.
    """
    olds, news = then.compared.old.scenes, then.compared.new.scenes
    same = [
        fate for fate in then.compared.found.scenes if fate.became == "same" and len(fate.old) == len(fate.new) == 1
    ]
    pairs = [(olds[fate.old[0]].id, news[fate.new[0]].id) for fate in same]
    return {new: (old,) for old, new in pairs if then.cards[old].written and not cards[new].written}


def share_changed(found: Comparison, new: int, sources: Sequence[int]) -> float:
    """Share of words, 0…1, that a scene and those it came from do not have in common (Dice); of a scene that is only a
    part of what it came from: share of its own words that were not there."""
    kept = sum(link.kept for link in found.links if link.new == new)
    words = found.new_words[new]
    if any(link.old in sources and link.new != new for link in found.links):
        return 1 - kept / words if words else 0.0
    both = words + sum(found.old_words[old] for old in sources)
    return max(0.0, 1 - 2 * kept / both) if both else 0.0


def of_the_words(share: float) -> str:
    """How a person says a share.

    >>> [of_the_words(share) for share in (0, 0.02, 0.31, 0.52, 0.99)]
    ['No word', 'A few words', 'About a third of the words', 'About half of the words', 'Nearly all of the words']
    """
    if share < FEW:
        return "A few words" if share > 0 else "No word"
    if share > NEARLY_ALL:
        return "Nearly all of the words"
    name = min(SHARES, key=lambda one: abs(one[0] - share))[1]
    return f"About {name} of the words"


def _state(sources: Sequence[str], olds: Sequence[OldCard], *, written: bool) -> State:
    if not sources:
        return "new"
    if not olds:
        return "blank"
    return "shown" if written else "kept back"


def _old(then: Before, scene: str, new: str) -> OldCard:
    compared = then.compared
    code = compared.old.scenes[compared.old.scene_index[scene]].code
    others = [piece for piece in compared.pieces.get(scene, ()) if piece != new]
    codes = tuple(
        compared.new.scenes[place].code for place in sorted(map(compared.new.scene_index.__getitem__, others))
    )
    return OldCard(scene, code, f"{then.base}/scenes/{code}", then.cards[scene], codes)


def _changed(then: Before, scene: str, sources: Sequence[str]) -> str:
    places = then.compared.old.scene_index
    share = share_changed(
        then.compared.found, then.compared.new.scene_index[scene], [places[source] for source in sources]
    )
    again = any(then.cards[source].id in then.kept for source in sources)  # then it was written earlier still
    since = f"draft {then.draft.number}" if again else "you wrote this card"
    return f"{of_the_words(share)} changed since {since}."
