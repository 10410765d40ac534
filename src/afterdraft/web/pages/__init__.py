"""The screens, and their addresses in one table."""

from starlette.routing import BaseRoute, Route

from afterdraft.web.pages import (
    about,
    books,
    close,
    edits,
    fields,
    keys,
    mend,
    notes,
    outline,
    plan,
    scenes,
    search,
    split,
)

BOOK = "/books/{book}"
POST = ["POST"]

ROUTES: tuple[BaseRoute, ...] = (
    Route("/", books.books),
    Route("/books", books.bring, methods=POST),
    Route("/demo", books.demo, methods=POST),
    Route("/forget", books.forget, methods=POST),
    Route("/folder", books.folder),
    Route("/folder", books.choose_folder, methods=POST),
    Route("/keys", keys.keys),
    Route("/keys", keys.switch, methods=POST),
    Route("/put-away", keys.put_away, methods=POST),
    Route("/close", close.close, methods=POST),
    Route(f"{BOOK}/", books.open_book),
    Route(f"{BOOK}/split", split.split),
    Route(f"{BOOK}/split/{{act}}", mend.mend, methods=POST),
    Route(f"{BOOK}/scenes", scenes.first),
    Route(f"{BOOK}/scenes/{{code}}", scenes.scene),
    Route(f"{BOOK}/fields/{{kind}}/{{id}}", fields.save_form, methods=POST),
    Route(f"{BOOK}/fields/{{kind}}/{{id}}/{{field}}", fields.save_field, methods=POST),
    Route(f"{BOOK}/outline", outline.outline),
    Route(f"{BOOK}/reading", outline.reading),
    Route(f"{BOOK}/notes", notes.notes),
    Route(f"{BOOK}/notes", notes.add, methods=POST),
    Route(f"{BOOK}/notes/{{note}}", notes.change, methods=POST),
    Route(f"{BOOK}/notes/{{note}}/words", notes.reword, methods=POST),
    Route(f"{BOOK}/plan", plan.plan),
    Route(f"{BOOK}/plan", plan.add, methods=POST),
    Route(f"{BOOK}/plan/{{change}}/{{act}}", plan.change, methods=POST),
    Route(f"{BOOK}/search", search.search),
    Route(f"{BOOK}/undo", edits.undo, methods=POST),
    Route(f"{BOOK}/redo", edits.redo, methods=POST),
    Route(f"{BOOK}/edits.json", edits.stamp),
    Route(f"{BOOK}/about", about.about),
    Route(f"{BOOK}/title", about.title, methods=POST),
    Route(f"{BOOK}/check", about.check, methods=POST),
    Route(f"{BOOK}/back-up", about.back_up, methods=POST),
    Route(f"{BOOK}/restore", about.restore, methods=POST),
)
