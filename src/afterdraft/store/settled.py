"""What was answered once is not asked again of the same words in the next draft."""

import sqlite3

from afterdraft.store.forms import aside_of


def settle_again(db: sqlite3.Connection, draft: str) -> None:
    """As `work.ports.drafts.DraftsDesk.settle_again` says."""
    _doubts(db, draft)
    _comments(db, draft)


def _doubts(db: sqlite3.Connection, draft: str) -> None:
    """The same sentence of the same words, in a paragraph that follows the same words."""
    db.execute(
        "INSERT INTO desk_settled SELECT DISTINCT d.draft, d.paragraph FROM text_doubt d "
        "JOIN text_paragraph p ON p.draft = d.draft AND p.n = d.paragraph "
        "JOIN text_paragraph q ON q.text = p.text AND q.draft <> p.draft "
        "JOIN text_doubt e ON e.draft = q.draft AND e.paragraph = q.n AND e.what = d.what AND e.chosen = d.chosen "
        "JOIN desk_settled s ON s.draft = q.draft AND s.paragraph = q.n "
        "WHERE d.draft = ? AND p.text <> '' AND coalesce((SELECT text FROM text_paragraph b WHERE b.draft = p.draft "
        "AND b.n = p.n - 1), '') = coalesce((SELECT text FROM text_paragraph b WHERE b.draft = q.draft "
        "AND b.n = q.n - 1), '') ON CONFLICT DO NOTHING",
        (draft,),
    )


def _comments(db: sqlite3.Connection, draft: str) -> None:
    """A comment with the same words by the same hand: it was left in the file."""
    answered = {
        _said(form): note
        for form, note in db.execute(
            "SELECT t.form, o.note FROM desk_offered o JOIN text_aside t ON t.draft = o.draft AND t.n = o.aside "
            "WHERE o.draft <> ?",
            (draft,),
        )
    }
    for n, form in db.execute("SELECT n, form FROM text_aside WHERE draft = ?", (draft,)).fetchall():
        if answered and _said(form) in answered:
            db.execute(
                "INSERT INTO desk_offered VALUES (?, ?, ?) ON CONFLICT DO NOTHING", (draft, n, answered[_said(form)])
            )


def _said(form: str) -> tuple[str, str, str]:
    aside = aside_of(form)
    return aside.kind, aside.author or "", aside.text
