"""Makes the specimen book of the present form, once, before the next migration is begun:

python -m tests.specimens.books.make
"""

import shutil
import tempfile
from pathlib import Path

from afterdraft.desk.anchor import Passage
from afterdraft.store.migrations import MIGRATIONS
from afterdraft.work.notes.write_note import write_note, write_note_on_passage
from afterdraft.work.split.split_scene import split_scene
from afterdraft.work.write_field import write_field
from tests.store import sample


def main() -> None:
    target = Path(__file__).parent / f"form-{len(MIGRATIONS)}.afterdraft"
    if target.exists():
        raise SystemExit(f"{target} is there already; a specimen never changes.")
    with tempfile.TemporaryDirectory() as folder:
        book, draft = sample.begun_anew(Path(folder))
        with book:
            cards = list(book.cards(draft).values())
            for card, text in zip(cards, ("Ottla comes early.", "Rain."), strict=False):
                write_field(book, "card", card.id, "summary", text, revision=1, client="a", sequence=1, done=True)
            write_note(book, "Which step?")
            write_note_on_passage(book, "Late for what?", draft=draft, passages=[Passage(4, 1, 5)])
            split_scene(book, draft, 4)
        shutil.copy(book.path, target)


if __name__ == "__main__":
    main()
