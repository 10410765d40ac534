"""Books that are open, and those that were."""

from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from datetime import date
from functools import partial
from pathlib import Path

import pytest

from afterdraft import wiring
from afterdraft.errors import Missing, NotABook, NotPossible
from afterdraft.home import BooksFolder, Recents
from afterdraft.platform import folders
from afterdraft.web.registry import Registry
from afterdraft.work.split.retitle import retitle_book
from tests.cli.manuscripts import harbour


@pytest.fixture
def registry() -> Iterator[Registry]:
    made = new_registry()
    yield made
    made.close_all()


def new_registry() -> Registry:
    place = folders()
    folder = BooksFolder(place)
    return Registry(
        opener=wiring.open_book,
        adopter=partial(wiring.adopt, folder),
        restorer=wiring.restore,
        recents=Recents(place),
        folder=folder,
    )


@pytest.fixture
def path(home: Path, registry: Registry) -> Path:
    return wiring.begin(wiring.load([harbour(home)]), folder=registry.folder)


def test_one_file_is_one_book_by_whatever_name(registry: Registry, path: Path, home: Path) -> None:
    book = registry.open(path)
    link = home / "link.afterdraft"
    link.symlink_to(path)
    assert registry.open(link) is book
    assert registry.book(book.id) is book


def test_many_windows_open_it_once(registry: Registry, path: Path) -> None:
    with ThreadPoolExecutor(8) as threads:
        books = list(threads.map(registry.open, [path] * 32))
    assert len({id(book) for book in books}) == 1


def test_a_book_is_found_again_by_its_id_after_a_restart(registry: Registry, path: Path) -> None:
    known = registry.open(path).id
    registry.close_all()
    later = new_registry()
    assert later.book(known).path == str(path)
    later.close_all()


def test_an_id_that_nobody_knows_is_missing(registry: Registry) -> None:
    with pytest.raises(Missing):
        registry.book("bk0")


def test_a_book_that_moved_away_stays_on_the_list_as_missing(registry: Registry, path: Path, home: Path) -> None:
    book = registry.open(path)
    registry.close(book.id)
    path.rename(home / "elsewhere.afterdraft")
    (recent,) = registry.recents()
    assert recent.missing
    assert (recent.title, recent.words, recent.scenes, recent.written) == ("The Low Harbour", 51, 3, 0)
    with pytest.raises(NotABook):
        registry.book(book.id)
    registry.open(home / "elsewhere.afterdraft")
    (recent,) = registry.recents()
    assert not recent.missing


def test_recent_books_are_latest_first_and_as_they_stand(registry: Registry, path: Path, home: Path) -> None:
    other = wiring.begin(wiring.load([harbour(home)]), folder=registry.folder)
    one, two = registry.open(path), registry.open(other)
    retitle_book(one, "Ashore")
    assert [recent.title for recent in registry.recents()] == ["The Low Harbour", "Ashore"]
    registry.open(path)
    assert [recent.title for recent in registry.recents()] == ["Ashore", "The Low Harbour"]
    registry.forget(two.id)
    assert [recent.title for recent in registry.recents()] == ["Ashore"]
    assert other.is_file()


def test_a_dropped_book_is_copied_and_nothing_overwritten(registry: Registry, path: Path) -> None:
    registry.open(path)
    registry.close_all()
    content = path.read_bytes()
    later = new_registry()
    book = later.adopt(path.name, content)
    assert Path(book.path) == path.with_name("The Low Harbour 2.afterdraft")
    assert path.read_bytes() == content
    later.close_all()


def test_a_dropped_file_that_is_no_book_leaves_nothing(registry: Registry) -> None:
    with pytest.raises(NotABook):
        registry.adopt("letter.afterdraft", b"Dear Sir")
    assert list(registry.folder.path().iterdir()) == []


def test_a_copy_beside_the_open_book_is_told_apart(registry: Registry, path: Path) -> None:
    book = registry.open(path)
    with pytest.raises(NotPossible, match="is a copy of “The Low Harbour”"):
        registry.adopt("copy.afterdraft", path.read_bytes())
    assert registry.book(book.id) is book


def test_restoring_brings_back_what_was(registry: Registry, path: Path) -> None:
    book = registry.open(path)
    book.back_up(why="asked for")
    retitle_book(book, "Ashore")
    (backup,) = wiring.backups(book.id)
    now = registry.restore(book.id, backup.name)
    assert now.facts().title == "The Low Harbour"
    assert [kept.why for kept in wiring.backups(book.id)] == ["before restoring", "asked for"]


@pytest.mark.parametrize("name", ["", "../../recents.json", "000009 2026-01-01 no.afterdraft"])
def test_a_backup_that_is_not_there_changes_nothing(registry: Registry, path: Path, name: str) -> None:
    book = registry.open(path)
    with pytest.raises(Missing):
        registry.restore(book.id, name)
    assert registry.book(book.id).facts().title == "The Low Harbour"


def test_closing_for_good_backs_up_and_opens_nothing_more(registry: Registry, path: Path) -> None:
    book = registry.open(path)
    assert registry.close_all() == ()
    assert [kept.why for kept in wiring.backups(book.id)] == ["close"]
    with pytest.raises(NotPossible):
        registry.open(path)


def test_closing_tells_what_could_not_be_backed_up(registry: Registry, path: Path) -> None:
    registry.open(path)
    data = folders().data
    data.mkdir(parents=True, exist_ok=True)
    (data / "backups").write_text("a file where a folder should be", encoding="utf-8")
    (trouble,) = registry.close_all()
    assert "cannot be written" in trouble
    assert path.is_file()


def test_a_program_that_runs_for_days_backs_a_changed_book_up_once_a_day(registry: Registry, path: Path) -> None:
    book = registry.open(path)
    monday, tuesday = date(2026, 3, 2), date(2026, 3, 3)
    before = len(wiring.backups(book.id))
    assert registry.back_up_daily(monday) == ()
    retitle_book(book, "Changed on Monday")
    assert registry.back_up_daily(monday) == ()
    assert len(wiring.backups(book.id)) == before
    assert registry.back_up_daily(tuesday) == ()
    assert next(backup.why for backup in wiring.backups(book.id)) == "daily"
    assert registry.back_up_daily(tuesday) == ()
    assert len(wiring.backups(book.id)) == before + 1
