"""Say when a scene happens."""

from afterdraft.work.called import scene_called
from afterdraft.work.plain import line
from afterdraft.work.ports import Book


def set_scene_time(book: Book, scene: str, words: str) -> None:
    """In her words: a date, a day and part of day, 'the morning after'; "" leaves it to reading. Raises `Missing`."""
    told = line(words)
    book.edit(f"Time of {scene_called(book, scene)}", lambda desk: desk.set_scene_time(scene, told))
