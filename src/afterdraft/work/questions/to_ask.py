"""What checks look at of a book, as it stands now."""

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import get_args

from afterdraft.desk.anchor import Anchor
from afterdraft.desk.cast import KnownKind
from afterdraft.desk.lines import Line as MarkedLine
from afterdraft.manuscript.naming import scene_name
from afterdraft.manuscript.outline import SceneView, outline
from afterdraft.questions.marks import Carried, Line, Marks, Point, Renamed
from afterdraft.questions.of_draft import Read, italics, stands_in
from afterdraft.questions.question import Span
from afterdraft.questions.seen import Seen
from afterdraft.reading.facts import SceneFacts
from afterdraft.reading.keeping import unpacked
from afterdraft.whole.task import Task, is_read
from afterdraft.work.cards.arranging import chosen, draft_id
from afterdraft.work.cast.to_read import to_read
from afterdraft.work.ports import Book

_NAMED = re.compile(r"(?:^|(?<=[.;!?\n])\s*)([^\W\d_][^.:;!?\n]{0,40}):\s")
Places = Mapping[int, tuple[int, int]]  # by paragraph of the file: its scene, and its place among the story paragraphs


def ask_book(book: Book, read: Read, *, model: str) -> Seen:
    """The newest draft with her marks; facts of scenes that are not kept are read. Raises `Missing`."""
    draft = draft_id(book)
    task = to_read(book, draft, model=model)
    if not any(is_read(one.language) for one in book.drafts() if one.id == draft):
        return to_ask(book, draft, task)
    known = book.kept_facts(task.keys)
    new = [text for key, text in zip(task.keys, task.texts, strict=True) if key not in known]
    fresh = iter(read(new))
    facts = [unpacked(known[key]) if key in known else next(fresh) for key in task.keys]
    return to_ask(book, draft, task, facts)


def to_ask(book: Book, draft: str, task: Task, facts: Sequence[SceneFacts] = ()) -> Seen:
    """`task` as `to_read` made it of the same draft; `facts` of all its scenes, or none where they are not read."""
    blocks = book.blocks(draft)
    texts = [block.text for block in blocks]
    scenes = outline(book.division(draft), [0] * len(texts)).scenes
    return Seen(
        texts=task.texts,
        facts=tuple(facts),
        heads=task.heads,
        titles=tuple(scene_name(one.scene, texts[one.story[0]] if one.story else "") for one in scenes),
        given=task.given,
        marks=marks(book, draft, scenes),
        keys=task.keys,
        set_in=stands_in(scenes, blocks),
        italics=italics(scenes, blocks),
    )


def marks(book: Book, draft: str, scenes: Sequence[SceneView]) -> Marks:
    """What she marked in a draft that is laid out in these scenes."""
    order = {one.scene.id: one.index for one in scenes}
    places = {paragraph: (one.index, place) for one in scenes for place, paragraph in enumerate(one.story)}
    at_work = chosen(book.arrangements(draft), "")
    return Marks(
        lines=tuple(_line(one, order, places) for one in book.lines(draft)),
        follows=tuple(
            (order[one.scene], order[one.source])
            for one in book.follows(draft)
            if one.scene in order and one.source in order
        ),
        strands={
            order[scene]: strand.id for strand in book.strands(draft) for scene in strand.scenes if scene in order
        },
        carried=_carried(book, draft, order),
        ground=book.ground(),
        present={(order[one.scene], one.person): one.how for one in book.present(draft) if one.scene in order},
        renamed=tuple(
            Renamed(one.name, one.former, one.aliases)
            for kind in get_args(KnownKind)
            for one in book.known(kind)
            if one.former
        ),
        set_aside=frozenset(
            order[scene] for card in (at_work.aside if at_work else ()) for scene in card.scenes if scene in order
        ),
    )


def _carried(book: Book, draft: str, order: Mapping[str, int]) -> tuple[Carried, ...]:
    """What she wrote of each person by itself, and what her cards say of somebody by name: 'Ilse: the key. Jan: a lie.'

    Where both are written of one person, the former counts.
    """
    people = {alike: one.id for one in book.known("person") for name in one.names if (alike := name.casefold())}
    people |= {name.split()[0]: one for name, one in reversed(people.items()) if name.split()[0] not in people}
    found = {
        (order[card.scene], person): Carried(order[card.scene], person, comes.get(person, ""), leaves.get(person, ""))
        for card in book.cards(draft).values()
        if card.scene in order
        for comes, leaves in [(_of_people(card.comes_in, people), _of_people(card.leaves, people))]
        for person in {**comes, **leaves}
    }
    found |= {
        (order[one.scene], one.person): Carried(order[one.scene], one.person, one.comes_in, one.leaves)
        for one in book.carried(draft)
        if one.scene in order
    }
    return tuple(found[place] for place in sorted(found))


def _of_people(words: str, people: Mapping[str, str]) -> dict[str, str]:
    """By person what stands behind their name and a colon."""
    pieces = _NAMED.split(words)
    named = zip(pieces[1::2], pieces[2::2], strict=True)
    return {people[name.casefold()]: said.strip() for name, said in named if name.casefold() in people}


def _line(line: MarkedLine, order: Mapping[str, int], places: Places) -> Line:
    points = (
        Point(order[one.scene], one.does, one.person, next(_passages(one.anchors, places), None))
        for one in line.points
        if one.scene is not None and one.scene in order
    )
    return Line(line.kind, line.name, tuple(sorted(points, key=lambda one: one.scene)))


def _passages(anchors: Iterable[Anchor], places: Places) -> Iterator[Span]:
    for one in anchors:
        if one.paragraph in places:
            yield Span(*places[one.paragraph], one.start, one.end, one.quote)
