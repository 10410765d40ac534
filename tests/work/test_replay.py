"""What was corrected in one draft is corrected in the next, wherever the same words stand there."""

from collections.abc import Callable
from dataclasses import replace

import pytest

from afterdraft.errors import NotPossible
from afterdraft.manuscript.division import Division
from afterdraft.manuscript.draft import Draft
from afterdraft.store.book import BookFile
from afterdraft.work.drafts.bring_draft import bring_draft
from afterdraft.work.split.join_scenes import join_scenes
from afterdraft.work.split.make_chapter import make_chapter, make_part_chapter, unmake_chapter, unmake_part
from afterdraft.work.split.mark_break import mark_break, unmark_break
from afterdraft.work.split.mark_matter import mark_matter, unmark_matter
from afterdraft.work.split.retitle import retitle_chapter, retitle_part, retitle_scene
from afterdraft.work.split.split_scene import split_scene
from tests.manuscript.build import bare
from tests.store import sample

Act = Callable[[BookFile, str], object]
ACTS: dict[str, Act] = {
    "split": lambda book, draft: split_scene(book, draft, 4),
    "join": lambda book, draft: join_scenes(book, book.division(draft).scenes[1].id),
    "chapter": lambda book, draft: make_chapter(book, draft, 4),
    "no chapter": lambda book, draft: unmake_chapter(book, draft, book.division(draft).chapters[1].id),
    "no part": lambda book, draft: unmake_part(book, draft, book.division(draft).parts[0].id),
    "a part's chapter": lambda book, draft: make_part_chapter(book, draft, book.division(draft).parts[0].id),
    "mark": lambda book, draft: mark_break(book, draft, 4),
    "no mark": lambda book, draft: unmark_break(book, draft, 5),
    "matter": lambda book, draft: mark_matter(book, draft, 9, 11, where="back"),
    "no matter": lambda book, draft: unmark_matter(book, draft, book.division(draft).matter[1].id),
    "title of a scene": lambda book, draft: retitle_scene(book, book.division(draft).scenes[1].id, "Rain"),
    "title of a chapter": lambda book, draft: retitle_chapter(book, draft, book.division(draft).chapters[1].id, "Noon"),
    "title of a part": lambda book, draft: retitle_part(book, draft, book.division(draft).parts[0].id, "The lock"),
}
ORDERS = (("split", "title of a scene", "no mark"), ("chapter", "no chapter"), ("no part", "matter", "join"))


def next_draft(book: BookFile, texts: tuple[str, ...] = sample.TEXTS, made: Draft | None = None) -> str:
    return bring_draft(book, made or sample.draft(texts), [sample.ORIGINAL])


def revised(**lines: str) -> tuple[str, ...]:
    """The texts with some lines written anew: `l4="…"`."""
    return tuple(lines.get(f"l{n}", text) for n, text in enumerate(sample.TEXTS))


def plain(division: Division) -> Division:
    """Without what is another one's in each draft: ids and codes."""
    found = bare(division)
    return replace(found, scenes=tuple(replace(scene, code="") for scene in found.scenes))


@pytest.mark.parametrize("name", ACTS)
def test_the_same_text_is_divided_as_it_was_corrected(book: BookFile, draft: str, name: str) -> None:
    as_read = plain(book.division(draft))
    ACTS[name](book, draft)
    assert plain(book.division(draft)) != as_read
    assert plain(book.division(next_draft(book))) == plain(book.division(draft))


@pytest.mark.parametrize("names", ORDERS, ids=", ".join)
def test_several_corrections_come_in_the_order_they_were_made(
    book: BookFile, draft: str, names: tuple[str, ...]
) -> None:
    for name in names:
        ACTS[name](book, draft)
    assert plain(book.division(next_draft(book))) == plain(book.division(draft))


def test_a_place_is_known_by_its_words_and_one_neighbour(book: BookFile, draft: str) -> None:
    split_scene(book, draft, 4)
    beside = next_draft(book, revised(l3="The ferry wasn’t late at all."))
    assert 4 in [scene.at for scene in book.division(beside).scenes]
    rewritten = next_draft(book, revised(l4="“Gate,” said the keeper."))
    assert 4 not in [scene.at for scene in book.division(rewritten).scenes]


def test_where_the_words_stand_twice_both_neighbours_tell_which(book: BookFile, draft: str) -> None:
    split_scene(book, draft, 4)
    twice = next_draft(book, revised(l10=sample.TEXTS[4]))
    assert [scene.at for scene in book.division(twice).scenes] == [2, 4, 5, 8]


def test_a_doubt_that_was_answered_is_not_asked_again(book: BookFile, draft: str) -> None:
    unmake_chapter(book, draft, book.division(draft).chapters[1].id)
    assert book.doubts(next_draft(book)) == ()


def test_what_cannot_be_done_any_more_is_passed_over(book: BookFile, draft: str) -> None:
    join_scenes(book, book.division(draft).scenes[1].id)
    split_scene(book, draft, 10)
    division = sample.draft().division
    already = replace(division, scenes=tuple(scene for scene in division.scenes if scene.at != 5))
    later = next_draft(book, made=replace(sample.draft(), division=already))
    assert [scene.at for scene in book.division(later).scenes] == [2, 8, 10]


def test_it_is_one_edit_with_the_draft_and_a_correction_taken_back_is_none(book: BookFile, draft: str) -> None:
    split_scene(book, draft, 4)
    edit = book.edits().undo
    assert edit
    book.undo(edit.number)
    later = next_draft(book)
    assert len(book.division(later).scenes) == 3
    with pytest.raises(NotPossible):
        join_scenes(book, book.division(later).scenes[0].id)
    edit = book.edits().undo
    assert edit
    assert edit.name == "Bring in draft 2"
    book.undo(edit.number)
    assert [one.id for one in book.drafts()] == [draft]
