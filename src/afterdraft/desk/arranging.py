"""Acts on an arrangement: pure, each takes one and gives another. Cards and rows are named by id.

Where an act would leave everything in its place it gives back the very same value.
"""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import fields, replace
from itertools import count, zip_longest
from typing import Literal

from afterdraft.desk.arrangement import Arrangement, Laid, Next, Row
from afterdraft.desk.intent import Intent
from afterdraft.desk.order import beside, between, several_between, spread
from afterdraft.errors import Missing, NotPossible
from afterdraft.manuscript.division import Division

NewId = Callable[[Literal["row", "laid"]], str]


def drafts_order(draft: str, division: Division) -> Arrangement:
    """The draft's own order. It is never stored: its id is "", its rows and cards have their chapters' and scenes'."""
    limits = [chapter.at for chapter in division.chapters[1:]] + [len(division.roles)]
    rows = []
    for chapter, limit, place in zip(division.chapters, limits, spread(len(limits)), strict=False):
        scenes = [scene for scene in division.scenes if chapter.at <= scene.at < limit]
        cards = tuple(
            Laid(scene.id, scene.code, (scene.id,), chapter.id, key)
            for scene, key in zip(scenes, spread(len(scenes)), strict=True)
        )
        rows.append(Row(chapter.id, place, "", chapter.id, chapter.part, cards))
    return Arrangement("", draft, "", rows=tuple(rows))


def copied(arrangement: Arrangement, *, id: str, name: str, place: str, new_id: NewId) -> Arrangement:
    """The same rows and cards, with their codes, intents and Next sides, under other ids."""
    rows = []
    for row in arrangement.rows:
        own = new_id("row")
        rows.append(replace(row, id=own, cards=tuple(_copied(card, own, new_id) for card in row.cards)))
    aside = tuple(_copied(card, None, new_id) for card in arrangement.aside)
    return Arrangement(id, arrangement.draft, name, place=place, rows=tuple(rows), aside=aside)


def everything(arrangement: Arrangement) -> tuple[Laid, ...]:
    """All cards in order, those set aside last."""
    return (*arrangement.cards(), *arrangement.aside)


def by_code(arrangement: Arrangement, code: str) -> Laid:
    """Raises `Missing`."""
    for card in everything(arrangement):
        if card.code == code.upper():
            return card
    raise Missing(f"The card {code}")


def row_called(arrangement: Arrangement, key: str) -> Row:
    """The row of this id, or the one that came from the draft's chapter of this id. Raises `Missing`."""
    for row in arrangement.rows:
        if key and key in (row.id, row.chapter):
            return row
    raise Missing("This chapter")


def line(arrangement: Arrangement, row: str | None) -> tuple[Laid, ...]:
    """The cards of a row; for None those set aside. Raises `Missing`."""
    if row is None:
        return arrangement.aside
    return row_called(arrangement, row).cards


def put(arrangement: Arrangement, cards: Sequence[str], *, row: str | None, before: str | None = None) -> Arrangement:
    """Lay `cards`, in the order given, in a row (None: aside) before a card of it, or at its end.

    Raises `Missing`.
    """
    home = None if row is None else row_called(arrangement, row).id
    moved = tuple(_card(arrangement, one) for one in cards)
    stood = line(arrangement, home)
    rest = tuple(card for card in stood if card not in moved)
    at = _index(stood, rest, before)
    keys = several_between(*beside([card.place for card in rest], at), len(moved))
    laid = tuple(replace(card, row=home, place=key) for card, key in zip(moved, keys, strict=True))
    now = (*rest[:at], *laid, *rest[at:])
    if [card.id for card in now] == [card.id for card in stood]:
        return arrangement
    return _with_line(_without(arrangement, cards), home, now)


def add(arrangement: Arrangement, card: Laid, *, before: str | None = None) -> Arrangement:
    """A new card in the row it names, before a card of it, or at its end. Raises `Missing`."""
    stood = line(arrangement, card.row)
    at = _index(stood, stood, before)
    placed = replace(card, place=between(*beside([one.place for one in stood], at)))
    return _with_line(arrangement, card.row, (*stood[:at], placed, *stood[at:]))


def change(arrangement: Arrangement, cards: Sequence[str], alter: Callable[[Laid], Laid]) -> Arrangement:
    """Each of `cards` altered where it lies; `alter` leaves id, row and place alone."""
    wanted = set(cards)

    def altered(line: tuple[Laid, ...]) -> tuple[Laid, ...]:
        return tuple(alter(card) if card.id in wanted else card for card in line)

    rows = tuple(replace(row, cards=altered(row.cards)) for row in arrangement.rows)
    return replace(arrangement, rows=rows, aside=altered(arrangement.aside))


def with_intent(arrangement: Arrangement, cards: Sequence[str], intent: Intent | None) -> Arrangement:
    return change(arrangement, cards, lambda card: replace(card, intent=intent))


def joined(arrangement: Arrangement, cards: Sequence[str]) -> Arrangement:
    """The first of `cards` (in order of lying) stands for the scenes of all, their texts one under the other.

    Raises `Missing`, `NotPossible` for fewer than two.
    """
    several = [card for card in everything(arrangement) if card.id in set(cards)]
    if len(several) < 2:
        raise NotPossible("It takes two cards or more to join.")
    whole = several[0]
    for card in several[1:]:
        whole = taken_in(whole, card)
    if len(whole.scenes) > 1:
        whole = replace(whole, intent=whole.intent or "join")
    rest = _without(arrangement, [card.id for card in several[1:]])
    return change(rest, [whole.id], lambda _: whole)


def taken_in(card: Laid, other: Laid) -> Laid:
    """`card` with the scenes and the words of `other` under its own."""
    return replace(
        card,
        code=card.code if card.scenes or not other.scenes else other.code,
        scenes=tuple(dict.fromkeys((*card.scenes, *other.scenes))),
        intent=card.intent or other.intent,
        title=card.title or other.title,
        next=_under(card.next, other.next),
    )


def split(arrangement: Arrangement, card: str, *, id: str, code: str) -> Arrangement:
    """A second card, `id`, for the same scenes, right after; both are to be split from one."""
    whole = _card(arrangement, card)
    if len(whole.scenes) != 1:
        raise NotPossible("Only a card that stands for one scene can be split.")
    piece = Laid(id, code, whole.scenes, whole.row, "", "split")
    parted = add(arrangement, piece, before=_after(line(arrangement, whole.row), card))
    return change(parted, [card], lambda one: replace(one, intent=one.intent or "split"))


def apart(arrangement: Arrangement, card: str, *, codes: Mapping[str, str], new_id: NewId) -> Arrangement:
    """A card of several scenes becomes one card a scene again. `codes`: of the scenes. The first keeps all texts."""
    whole = _card(arrangement, card)
    if len(whole.scenes) < 2:
        raise NotPossible("This card stands for one scene only.")
    first = replace(whole, scenes=whole.scenes[:1], intent=None if whole.intent == "join" else whole.intent)
    lying = {scene for one in everything(arrangement) if one.id != card for scene in one.scenes}
    parted = change(arrangement, [card], lambda _: first)
    before = _after(line(arrangement, whole.row), card)
    for scene in whole.scenes[1:]:
        if scene not in lying:
            parted = add(parted, Laid(new_id("laid"), codes[scene], (scene,), whole.row, ""), before=before)
    return parted


def add_row(arrangement: Arrangement, row: Row, *, before: str | None = None) -> Arrangement:
    """A new row before another, or at the end; it belongs to the part of the row that it follows."""
    at = _row_index(arrangement.rows, before)
    part = arrangement.rows[at - 1].part if at else (arrangement.rows[0].part if arrangement.rows else None)
    place = between(*beside([one.place for one in arrangement.rows], at))
    rows = (*arrangement.rows[:at], replace(row, place=place, part=part), *arrangement.rows[at:])
    return replace(arrangement, rows=rows)


def move_row(arrangement: Arrangement, row: str, *, before: str | None = None) -> Arrangement:
    """A row with its cards before another, or to the end; it comes into the part of the row that it now follows."""
    moved = row_called(arrangement, row)
    rest = tuple(one for one in arrangement.rows if one is not moved)
    if before in (moved.id, moved.chapter) and before:
        return arrangement
    at = _row_index(rest, before)
    if (*rest[:at], moved, *rest[at:]) == arrangement.rows:
        return arrangement
    return add_row(replace(arrangement, rows=rest), moved, before=before)


def remove_row(arrangement: Arrangement, row: str) -> Arrangement:
    """Take an empty row out. Raises `Missing`, `NotPossible` while cards lie in it."""
    gone = row_called(arrangement, row)
    if gone.cards:
        raise NotPossible("There are cards in this chapter. Move them or set them aside first.")
    return replace(arrangement, rows=tuple(one for one in arrangement.rows if one is not gone))


def in_order(arrangement: Arrangement, cards: Sequence[str]) -> tuple[str, ...]:
    """These cards as they lie, each once."""
    wanted = set(cards)
    return tuple(card.id for card in everything(arrangement) if card.id in wanted)


def relaid(arrangement: Arrangement, lines: Sequence[Sequence[str]], *, stay: bool, new_id: NewId) -> Arrangement:
    """Cards laid anew: each line of ids is a row, in order; rows are added where there are more lines.

    Cards in no line are set aside; or, with `stay`, they stay in their rows behind the card they lay behind, at the
    beginning where that one is gone.
    """
    named = {card for cards in lines for card in cards}
    rows = (*arrangement.rows, *_more_rows(arrangement, len(lines) - len(arrangement.rows), new_id))
    filled = tuple(
        replace(row, cards=_relined(arrangement, row, ids, named, stay=stay))
        for row, ids in zip_longest(rows, lines, fillvalue=())
        if isinstance(row, Row)
    )
    left = [] if stay else [card for card in arrangement.cards() if card.id not in named]
    kept = tuple(card for card in arrangement.aside if card.id not in named)
    keys = several_between(kept[-1].place if kept else "", "", len(left))
    aside = tuple(replace(card, row=None, place=key) for card, key in zip(left, keys, strict=True))
    return replace(arrangement, rows=filled, aside=(*kept, *aside))


def free_name(names: Sequence[str], wanted: str) -> str:
    """`wanted`, or with the first number that no other has."""
    if wanted not in names:
        return wanted
    return next(name for n in count(2) if (name := f"{wanted} {n}") not in names)


def _more_rows(arrangement: Arrangement, number: int, new_id: NewId) -> Iterator[Row]:
    last = arrangement.rows[-1] if arrangement.rows else None
    for place in several_between(last.place if last else "", "", number):
        yield Row(new_id("row"), place, "", None, last.part if last else None)


def _relined(
    arrangement: Arrangement, row: Row, ids: Sequence[str], named: set[str], *, stay: bool
) -> tuple[Laid, ...]:
    cards = [_card(arrangement, one) for one in ids]
    if stay:
        before: Laid | None = None
        for card in row.cards:
            if card.id not in named:
                at = cards.index(before) + 1 if before in cards else 0
                cards.insert(at, card)
            before = card
    if tuple(cards) == row.cards:
        return row.cards
    return tuple(replace(card, row=row.id, place=key) for card, key in zip(cards, spread(len(cards)), strict=True))


def _copied(card: Laid, row: str | None, new_id: NewId) -> Laid:
    return replace(card, id=new_id("laid"), row=row, revision=0)


def _card(arrangement: Arrangement, id: str) -> Laid:
    for card in everything(arrangement):
        if card.id == id:
            return card
    raise Missing("This card")


def _index(stood: Sequence[Laid], rest: Sequence[Laid], before: str | None) -> int:
    """Where in `rest` the card `before` lies; where it is itself on the move, the next that is not."""
    if before is None:
        return len(rest)
    ids = [card.id for card in stood]
    if before not in ids:
        raise Missing("The card to lay it beside")
    follows = ids[ids.index(before) :]
    return next((n for n, card in enumerate(rest) if card.id in follows), len(rest))


def _after(line: Sequence[Laid], card: str) -> str | None:
    """Id of the card behind `card`; None at the end."""
    ids = [one.id for one in line]
    at = ids.index(card) + 1
    return ids[at] if at < len(ids) else None


def _row_index(rows: Sequence[Row], before: str | None) -> int:
    if before is None:
        return len(rows)
    for n, row in enumerate(rows):
        if before in (row.id, row.chapter):
            return n
    raise Missing("This chapter")


def _without(arrangement: Arrangement, cards: Sequence[str]) -> Arrangement:
    gone = set(cards)
    rows = tuple(
        replace(row, cards=tuple(card for card in row.cards if card.id not in gone)) for row in arrangement.rows
    )
    return replace(arrangement, rows=rows, aside=tuple(card for card in arrangement.aside if card.id not in gone))


def _with_line(arrangement: Arrangement, row: str | None, cards: tuple[Laid, ...]) -> Arrangement:
    if row is None:
        return replace(arrangement, aside=cards)
    rows = tuple(replace(one, cards=cards) if row in (one.id, one.chapter) else one for one in arrangement.rows)
    return replace(arrangement, rows=rows)


def _under(one: Next, other: Next) -> Next:
    """Each text of `other` under that of `one`."""
    both = {field.name: (getattr(one, field.name), getattr(other, field.name)) for field in fields(Next)}
    return Next(**{name: "\n".join(text for text in texts if text.strip()) for name, texts in both.items()})
