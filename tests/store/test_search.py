"""Search finds what the writer means, whatever she types, and stays right through undo."""

from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from afterdraft.store.book import BookFile
from afterdraft.store.search import AROUND
from afterdraft.work.cast.carry import carry
from afterdraft.work.cast.mark_presence import mark_presence
from afterdraft.work.cast.mark_setting import mark_setting
from afterdraft.work.drafts.bring_draft import bring_draft
from afterdraft.work.find import find
from afterdraft.work.lines.link_scenes import link_scenes
from afterdraft.work.lines.mark_point import mark_point
from afterdraft.work.lines.put_in_strand import put_in_strand
from afterdraft.work.notes.write_note import write_note
from afterdraft.work.plan.plan_change import plan_change
from afterdraft.work.ports import Hit
from afterdraft.work.split.join_scenes import join_scenes
from afterdraft.work.split.mark_matter import mark_matter
from afterdraft.work.write_field import write_field, write_once
from tests.store import sample
from tests.store.sample import redo, undo


@pytest.mark.parametrize(
    ("words", "paragraphs"),
    [
        ("ferry", [2, 3]),
        ("FERRY", [2, 3]),
        ("fer", [2, 3]),  # the last word may be unfinished
        ("fer late", []),  # but only the last
        ("late ferry", [3]),  # in any order
        ("wasn't", [3]),  # straight and curly apostrophes are one
        ("wasn’t", [3]),
        ("wasnʼt", [3]),
        ("well-known", [6]),
        ("well known pier", [6]),
        ("cote-vieille", [6]),  # without accents
        ("CÔTE", [6]),
        ('"door', [4]),  # a quotation mark that is not closed
        ("“Door,”", [4]),
        ('"well-known pier"', [6]),  # words in quotation marks stand together
        ('"pier well-known"', []),
        ("AND", [3, 4, 6, 10]),  # words of query languages are words
        ("once AND twice", [10]),
        ("NOT", []),
        ("NEAR(ferry, 2)", []),
        ("nobody minded.", [6]),
        ("ferry OR", []),
        ("text:ferry", []),
        ("ferry*", [2, 3]),
        ("^ferry", [2, 3]),
        ("🌊", [9]),  # what is no word is looked for as it stands
        ("* * *", [5]),
        ("“", [4]),
        ("%", []),
        ("ferry 🌊", [2, 3]),
        ("1", [2]),
        ("   ", []),
        ("", []),
        ("thanks", [11]),
    ],
)
def test_the_text_is_found(book: BookFile, words: str, paragraphs: list[int]) -> None:
    assert [hit.paragraph for hit in find(book, words)] == paragraphs


def test_a_hit_says_where_it_is_and_what_stands_around(book: BookFile, draft: str) -> None:
    scene = book.division(draft).scenes[0]
    assert find(book, "OTTLA BRENN") == (
        Hit(
            "text",
            "",
            scene.id,
            3,
            "The ferry wasn’t late; ",
            "Ottla",
            " Brenn was early, and she held that against it.",
        ),
    )
    assert [hit.scene for hit in find(book, "sluice keeper")] == [None]  # front matter
    assert [hit.scene for hit in find(book, "part one")] == [None]  # a part's own line
    assert [hit.scene for hit in find(book, "* * *")] == [book.division(draft).scenes[1].id]


def test_long_surroundings_are_cut_at_words(tmp_path: Path) -> None:
    long = " ".join(["before"] * 40) + " needle " + " ".join(["after"] * 40)
    book, _ = sample.begun(tmp_path)
    with book:
        bring_draft(book, sample.draft((*sample.TEXTS[:3], long, *sample.TEXTS[4:])), [sample.ORIGINAL])
        (hit,) = find(book, "needle")
    assert hit.match == "needle"
    assert hit.before.startswith("…before ") and hit.after.endswith(" after…")
    assert len(hit.before) <= AROUND + 1 and len(hit.after) <= AROUND + 1


def test_cards_come_first_then_notes_then_text(book: BookFile, draft: str) -> None:
    scenes = [scene.id for scene in book.division(draft).scenes]
    cards = book.cards(draft)
    write_note(book, "Is the ferry hers?")
    write_note(book, "The ferry again.", scene=scenes[2])
    for scene in (scenes[2], scenes[0]):
        write_field(book, "card", cards[scene].id, "leaves", "the ferry", revision=9, client="a", sequence=1, done=True)
    hits = find(book, "ferry")
    assert [(hit.kind, hit.scene) for hit in hits] == [
        ("card", scenes[0]),
        ("card", scenes[2]),
        ("note", None),
        ("note", scenes[2]),
        ("text", scenes[0]),
        ("text", scenes[0]),
    ]
    assert [hit.id for hit in hits[:2]] == [cards[scenes[0]].id, cards[scenes[2]].id]
    assert book.search("ferry", limit=3) == hits[:3]


def test_threads_people_places_and_links_are_found(book: BookFile, draft: str) -> None:
    scenes = [scene.id for scene in book.division(draft).scenes]
    mark_point(book, "setup", "The brass lantern", "setup", scenes=scenes[:1])
    put_in_strand(book, scenes, "Lantern years")
    mark_presence(book, scenes[:1], "Lantern-bearer", "on page")
    mark_setting(book, scenes[:1], "Lantern Row")
    carry(book, scenes[1], "Lantern-bearer", comes_in="", leaves="the lantern")
    link_scenes(book, scenes[2], source=scenes[0], why="The lantern is out.")
    hits = find(book, "lantern")
    assert [(hit.kind, hit.scene) for hit in hits] == [
        ("carried", scenes[1]),
        ("follows", scenes[2]),
        ("line", None),
        ("strand", None),
        ("person", None),
        ("place", None),
    ]
    assert hits[2].id == book.lines(draft)[0].id
    undo(book)
    assert "follows" not in [hit.kind for hit in find(book, "lantern")]
    assert book.check() == ()


def test_planned_changes_are_found_by_what_is_wrong_what_is_decided_and_the_work(book: BookFile) -> None:
    made = plan_change(book, "The gasometer knows too soon.", decide="She learns it at the sundial.")
    write_once(book, "change", made, "work", "a fortnight")
    for words, match in (("gasometer", "gasometer"), ("sundial", "sundial"), ("fortni", "fortnight")):
        (hit,) = book.search(words)
        assert (hit.kind, hit.id, hit.scene, hit.match) == ("change", made, None, match)


def test_only_the_newest_draft_is_searched(book: BookFile, draft: str) -> None:
    card = next(iter(book.cards(draft).values()))
    write_field(book, "card", card.id, "summary", "ferry", revision=9, client="a", sequence=1, done=True)
    other = tuple(text.replace("ferry", "barge") for text in sample.TEXTS)
    bring_draft(book, sample.draft(other), [sample.ORIGINAL])
    assert find(book, "ferry") == ()
    assert [hit.paragraph for hit in find(book, "barge")] == [2, 3]
    undo(book)
    assert find(book, "barge") == ()
    assert [hit.kind for hit in find(book, "ferry")] == ["card", "text", "text"]


def test_the_indexes_follow_every_edit_undo_and_redo(book: BookFile, draft: str) -> None:
    scenes = [scene.id for scene in book.division(draft).scenes]
    card = book.cards(draft)[scenes[1]].id
    write_field(book, "card", card, "summary", "A heron lands", revision=9, client="a", sequence=1, done=True)
    write_field(book, "card", card, "summary", "A stork lands", revision=9, client="a", sequence=2, done=True)
    assert (len(find(book, "heron")), len(find(book, "stork"))) == (0, 1)
    undo(book)
    assert (len(find(book, "heron")), len(find(book, "stork"))) == (1, 0)
    redo(book)
    join_scenes(book, scenes[1])
    assert [hit.scene for hit in find(book, "stork")] == [scenes[0]]
    undo(book)
    assert [hit.scene for hit in find(book, "stork")] == [scenes[1]]
    mark_matter(book, draft, 5, 8, where="front")
    assert [(hit.kind, hit.scene) for hit in find(book, "stork")] == [("note", None)]
    undo(book)
    assert [(hit.kind, hit.scene) for hit in find(book, "stork")] == [("card", scenes[1])]
    assert book.check() == ()


@given(st.text(max_size=40))
@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], deadline=None)
def test_nothing_that_can_be_typed_is_refused(book: BookFile, words: str) -> None:
    for hit in find(book, words):
        assert hit.match


@given(st.data())
@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], deadline=None, max_examples=50)
def test_every_paragraph_is_found_by_any_of_its_words(book: BookFile, data: st.DataObject) -> None:
    paragraph = data.draw(st.sampled_from([n for n in range(len(sample.TEXTS)) if n != 5]))  # 5 is a break mark
    words = [word for word in sample.TEXTS[paragraph].split() if any(map(str.isalnum, word))]
    asked = data.draw(st.lists(st.sampled_from(words), min_size=1, max_size=4))
    assert paragraph in [hit.paragraph for hit in find(book, " ".join(asked))]
