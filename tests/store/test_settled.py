"""What was answered once is not asked again of the same words in the next draft."""

from dataclasses import replace
from pathlib import Path

from afterdraft.manuscript.blocks import Aside
from afterdraft.work.drafts.bring_draft import bring_draft
from afterdraft.work.notes.take_comments import leave_comments, take_comments
from afterdraft.work.split.settle_doubt import settle_doubt
from tests.store import sample

COMMENT = Aside("comment", 3, 4, 9, "Which ferry?", "V.", "2026-01-02T03:04:05Z")
OTHER = Aside("comment", 4, 0, 4, "Really?", "V.", "2026-01-03T03:04:05Z")


def test_a_doubt_that_was_settled_is_settled_in_the_next_draft(tmp_path: Path) -> None:
    book, first = sample.begun(tmp_path)
    with book:
        (doubt,) = book.doubts(first)
        settle_doubt(book, first, doubt.paragraph)
        texts = tuple("It rained no more." if "well-known" in text else text for text in sample.TEXTS)
        assert book.doubts(bring_draft(book, sample.draft(texts), [sample.ORIGINAL])) == ()


def test_a_doubt_about_other_words_is_asked(tmp_path: Path) -> None:
    book, first = sample.begun(tmp_path)
    with book:
        settle_doubt(book, first, 8)
        texts = (*sample.TEXTS[:8], "Two", *sample.TEXTS[9:])
        assert len(book.doubts(bring_draft(book, sample.draft(texts), [sample.ORIGINAL]))) == 1


def test_comments_left_in_the_file_are_not_offered_again(tmp_path: Path) -> None:
    book, first = sample.begun(tmp_path, asides=(COMMENT, OTHER))
    with book:
        offers = book.offers(first, 0, len(sample.LINES))
        take_comments(book, first, [offers[0].aside])
        third = Aside("comment", 4, 0, 4, "Why?", "V.", "2026-01-04T03:04:05Z")
        made = replace(sample.draft(), source=replace(sample.draft().source, asides=(COMMENT, OTHER, third)))
        second = bring_draft(book, made, [sample.ORIGINAL])
        assert [one.comment.text for one in book.offers(second, 0, len(sample.LINES))] == ["Really?", "Why?"]
        leave_comments(book, second, [book.offers(second, 0, len(sample.LINES))[0].aside])
        assert [one.comment.text for one in book.offers(second, 0, len(sample.LINES))] == ["Why?"]
