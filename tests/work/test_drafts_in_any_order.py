"""Any run of drafts brought in, marks made and fates said: the book is sound at each step, and all of it, taken back
and done again, leaves it as it was."""

import tempfile
from contextlib import suppress
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from afterdraft.errors import EditRefused
from afterdraft.store.book import BookFile
from afterdraft.work.cards.carry_card import carry_card
from afterdraft.work.cards.set_intent import set_intent
from afterdraft.work.cast.mark_presence import mark_presence
from afterdraft.work.drafts.bring_draft import How, bring_draft
from afterdraft.work.drafts.say_fate import say_apart, say_gone, say_lives_on
from afterdraft.work.lines.link_scenes import link_scenes
from afterdraft.work.lines.mark_point import mark_point
from afterdraft.work.notes.find_passage import find_passage
from afterdraft.work.notes.guard_passage import guard_passage
from afterdraft.work.notes.write_note import write_note, write_note_on_passage
from afterdraft.work.plan.change_places import add_places
from afterdraft.work.plan.plan_change import plan_change
from afterdraft.work.split.join_scenes import join_scenes
from afterdraft.work.write_field import write_once
from tests.store.sample import desk_dump, redo, undo
from tests.work.test_next_draft import FERRY, HOUSE, LOCK, NEW, PIER, ferry, manuscript

SCENES = (FERRY, PIER, LOCK, HOUSE, NEW, (*FERRY, *PIER), FERRY[1:], tuple(f"{line} So." for line in LOCK))
HOWS: tuple[How, ...] = ("next", "next", "part-way", "again", "older")
Dump = dict[str, list[tuple[object, ...]]]
number = st.integers(0, 7)
draft = st.tuples(
    st.just("draft"),
    st.sampled_from(HOWS),
    st.lists(st.lists(st.sampled_from(SCENES), min_size=1, max_size=3), min_size=1, max_size=2),
)
act = st.tuples(st.sampled_from(["mark", "say", "join"]), number, number)


@pytest.mark.slow
@settings(max_examples=25, deadline=None, suppress_health_check=list(HealthCheck))
@given(st.lists(draft | act, min_size=1, max_size=8))
def test_any_run_is_sound_and_can_be_taken_back(steps: list[tuple[str, object, object]]) -> None:
    with tempfile.TemporaryDirectory() as folder, ferry(Path(folder)) as book:
        begun = shown(book)
        for step in steps:
            with suppress(EditRefused):
                ACTS[step[0]](book, *step[1:])  # type: ignore[operator]
            assert book.check() == ()
        ended, taken = shown(book), 0
        while book.edits().undo:
            undo(book)
            taken += 1
        assert shown(book) == begun
        for _ in range(taken):
            redo(book)
        assert shown(book) == ended
        assert book.check() == ()


def bring(book: BookFile, how: How, chapters: list[list[tuple[str, ...]]]) -> None:
    bring_draft(book, manuscript(*chapters), [("draft.txt", b"2")], how)


def mark(book: BookFile, which: int, other: int) -> None:
    drafts = book.drafts()
    scenes = book.division(drafts[-1].id).scenes
    one, two = scenes[which % len(scenes)], scenes[other % len(scenes)]
    words = next(text for text in book.texts(drafts[-1].id)[one.at + 1 :] if len(text) > 20)[4:20]
    write_once(book, "card", book.cards(drafts[-1].id)[one.id].id, "summary", f"{which} and {other}")
    write_note(book, "Here.", scene=one.id)
    write_note_on_passage(book, "This?", draft=drafts[-1].id, passages=find_passage(book, one.id, words))
    guard_passage(book, drafts[-1].id, find_passage(book, one.id, words))
    mark_point(book, "thread", "Lamps", "carries", scenes=[one.id], passages=find_passage(book, one.id, words))
    mark_presence(book, [one.id], f"P{other}", "on page")
    add_places(book, plan_change(book, "Slow."), f"{one.code}, {two.code}")
    set_intent(book, "", [two.code], "rewrite")
    if one.id != two.id:
        link_scenes(book, max(one, two, key=lambda scene: scene.at).id, source=min(one, two, key=lambda s: s.at).id)


def say(book: BookFile, which: int, other: int) -> None:
    drafts = book.drafts()
    if len(drafts) < 2:
        return
    olds, news = (book.division(draft.id).scenes for draft in drafts[-2:])
    old, new = olds[which % len(olds)].id, news[other % len(news)].id
    if which % 3 == 0:
        say_lives_on(book, old, new)
        carry_card(book, new, [old])
    elif which % 3 == 1:
        say_apart(book, old, new)
    else:
        say_gone(book, old, "cut" if other % 2 else "not reached", new=drafts[-1].id)


def join(book: BookFile, which: int, other: int) -> None:
    drafts = book.drafts()
    scenes = book.division(drafts[other % len(drafts)].id).scenes
    join_scenes(book, scenes[which % len(scenes)].id)


ACTS = {"draft": bring, "mark": mark, "say": say, "join": join}


def shown(book: BookFile) -> Dump:
    """All that is hers, without what belongs to drafts whose bringing in was taken back."""
    dump = desk_dump(book)
    away = {row[0] for row in dump["desk_draft"] if row[1]}
    away |= {
        row[0]
        for table in ("desk_scene", "desk_chapter", "desk_part", "desk_matter")
        for row in dump[table]
        if away & set(row)
    }
    return {table: sorted(row for row in rows if not away & set(row)) for table, rows in dump.items()}
