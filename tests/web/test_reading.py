"""Reading in the background: only what is new is read, it can be stopped and goes on, and trouble is told."""

import json
from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace
from pathlib import Path
from time import monotonic, sleep

import pytest

from afterdraft.engine.reader import paragraph_key
from afterdraft.store.book import BookFile
from afterdraft.store.opening import begin_book
from afterdraft.web.reading import Progress, Reading, State
from afterdraft.web.reading_words import told
from afterdraft.whole.speakers_kept import SPEAKERS
from afterdraft.whole.task import Task
from afterdraft.whole.told import RECIPE
from afterdraft.work.cast.add_known import add_known
from afterdraft.work.drafts.bring_draft import bring_draft
from afterdraft.work.split.join_scenes import join_scenes
from afterdraft.work.split.split_scene import split_scene
from tests.store import sample
from tests.store.sample import begun

WHEN = {"earliest": None, "latest": None, "part_of_day": None, "flashback": False}
WAIT = 5.0  # seconds until a thread has surely done what it does in hundredths


class Child:
    """Stands in for the child: reads each scene as soon as it may, and remembers what it was given."""

    def __init__(self) -> None:
        self.read: list[list[str]] = []
        self.given: list[tuple[str, ...]] = []
        self.helped: list[set[str]] = []  # keys of what it knew beyond facts of scenes
        self.fails = 0
        self.most = 99  # scenes that it may read until it is let go on

    def __call__(self) -> "Run":
        return Run(self)


class Run:
    def __init__(self, child: Child) -> None:
        self._child = child
        self.stopped = False

    def run(
        self,
        task: Task,
        known: Mapping[str, str],
        *,
        on_scene: Callable[[str, str], None],
        keep: Callable[[dict[str, str]], None],
    ) -> str | None:
        mine: list[str] = []
        self._child.read.append(mine)
        self._child.given.append(tuple(person.name for person in task.given.people))
        self._child.helped.append(known.keys() - set(task.keys))
        for key, paragraphs in zip(task.keys, task.texts, strict=True):
            if key in known:
                continue
            while sum(map(len, self._child.read)) >= self._child.most and not self.stopped:
                sleep(0.005)
            if self.stopped:
                return None
            if self._child.fails:
                self._child.fails -= 1
                return None
            keep({paragraph_key(text): "its words" for text in paragraphs})
            on_scene(key, json.dumps(list(paragraphs)))
            mine.append(paragraphs[0][:3])
        keep({SPEAKERS: "{}"})
        nothing: dict[str, list[object]] = {"named": [], "said": [], "times": []}
        return json.dumps(
            {
                "people": [],
                "appearances": [],
                "measures": [{"words": len(text)} for text in task.texts],
                "in_place": [nothing] * len(task.ids),
                "scene_times": [WHEN] * len(task.ids),
                "places": [],
                "unmet": [],
                "scenes": list(task.ids),
                "recipe": RECIPE,
            }
        )

    def stop(self) -> None:
        self.stopped = True


@pytest.fixture
def book(tmp_path: Path) -> Iterator[BookFile]:
    book, _ = begun(tmp_path)
    yield book
    book.close()


@pytest.fixture
def child() -> Child:
    return Child()


@pytest.fixture
def reading(child: Child) -> Reading:
    return Reading(on=True, reader=child, rest=0.0)  # type: ignore[arg-type]  # as far as it is asked, it is one


def look(reading: Reading, book: BookFile) -> str:
    """As a page does; the draft's id."""
    facts = book.facts()
    assert facts.draft is not None
    reading.want(book, facts.draft, (book.edits(), facts.changed))
    return facts.draft.id


def until(reading: Reading, book: BookFile, state: State) -> Progress:
    draft = look(reading, book)
    end = monotonic() + WAIT
    while (now := reading.progress(book, draft)).state != state:
        assert monotonic() < end, now
        sleep(0.005)
    return now


def test_every_scene_is_read_once_and_what_it_tells_is_kept(book: BookFile, reading: Reading, child: Child) -> None:
    assert until(reading, book, "done").scenes_done == 3
    assert child.read == [["The", "It ", "By "]]
    draft = look(reading, book)
    assert [one.measures["words"] for one in reading.told(book, draft).scenes.values()] == [2, 2, 2]
    again = Reading(on=True, reader=child, rest=0.0)  # type: ignore[arg-type]  # a program started anew
    assert len(again.told(book, draft).scenes) == 3
    until(again, book, "done")
    assert child.read == [["The", "It ", "By "]]


def test_only_what_changed_is_read_again(book: BookFile, reading: Reading, child: Child) -> None:
    until(reading, book, "done")
    draft = look(reading, book)
    scenes = [scene.id for scene in book.division(draft).scenes]
    join_scenes(book, scenes[1])
    settled(reading, book, draft, scenes=2)
    assert child.read[1:] == [["The"]]
    split_scene(book, draft, 5)
    settled(reading, book, draft, scenes=3)
    assert child.read[2:] == [[]]  # both halves were read before


def test_of_what_is_read_again_the_words_are_known(book: BookFile, reading: Reading, child: Child) -> None:
    until(reading, book, "done")
    draft = look(reading, book)
    texts = [block.text for block in book.blocks(draft)]
    join_scenes(book, [scene.id for scene in book.division(draft).scenes][1])
    settled(reading, book, draft, scenes=2)
    known = {paragraph_key(text) for text in texts}
    assert child.helped[0] == set()
    assert {SPEAKERS} < child.helped[1] <= {SPEAKERS} | known


def test_what_she_says_is_told_anew_without_reading_a_word(book: BookFile, reading: Reading, child: Child) -> None:
    until(reading, book, "done")
    add_known(book, "person", "Ottla")
    look(reading, book)
    end = monotonic() + WAIT
    while len(child.given) < 2:
        assert monotonic() < end
        sleep(0.005)
    assert child.given == [(), ("Ottla",)]
    assert child.read[1:] == [[]]


def test_it_is_stopped_and_goes_on_where_it_was(book: BookFile, reading: Reading, child: Child) -> None:
    child.most = 1
    draft = look(reading, book)
    end = monotonic() + WAIT
    while reading.progress(book, draft).scenes_done < 1:
        assert monotonic() < end
        sleep(0.005)
    reading.stop(book, draft)
    stopped = until(reading, book, "stopped")
    assert (stopped.scenes_done, stopped.scenes) == (1, 3)
    assert told(stopped) == "Reading is stopped at 1 of 3 scenes. What was read stays."
    add_known(book, "person", "Ottla")
    until(reading, book, "stopped")  # nothing begins it but she
    child.most = 99
    facts = book.facts().draft
    assert facts is not None
    reading.go_on(book, facts)
    until(reading, book, "done")
    assert child.read == [["The"], ["It ", "By "]]


@pytest.mark.parametrize(("fails", "state"), [(1, "done"), (2, "trouble")])
def test_a_child_that_ends_early_is_tried_once_more(
    book: BookFile, reading: Reading, child: Child, fails: int, state: State
) -> None:
    child.fails = fails
    assert until(reading, book, state)
    assert told(Progress("trouble")).startswith("The draft could not be read to its end. Nothing of yours is lost")


def test_an_edit_is_kept_while_a_draft_is_read(book: BookFile, reading: Reading, child: Child) -> None:
    child.most = 0
    until(reading, book, "reading")
    add_known(book, "person", "Ottla")
    look(reading, book)
    child.most = 99
    end = monotonic() + WAIT
    while child.given != [(), ("Ottla",)]:
        assert monotonic() < end, child.given
        sleep(0.005)
    assert [one.name for one in book.known("person")] == ["Ottla"]


def test_a_book_that_is_closed_is_not_read_on(book: BookFile, reading: Reading, child: Child) -> None:
    child.most = 0
    until(reading, book, "reading")
    reading.end(book.id)
    book.close()
    child.most = 99
    sleep(0.05)
    assert child.read == [[]]


def test_stopped_holds_until_the_book_is_closed(book: BookFile, reading: Reading, child: Child) -> None:
    reading.stop(book, look(reading, book))
    until(reading, book, "stopped")
    reading.end(book.id)
    assert until(reading, book, "done").scenes_done == 3


def test_what_is_not_english_is_not_read_and_says_so(tmp_path: Path, reading: Reading, child: Child) -> None:
    german = replace(sample.draft(), language="de-DE")
    place = tmp_path / "Schleuse.afterdraft"
    with begin_book(
        place,
        backups=tmp_path / "backups",
        title="Schleuse",
        first=lambda book: bring_draft(book, german, [sample.ORIGINAL]),
    )[0] as book:
        assert "not in English" in told(until(reading, book, "other language"))
        assert child.read == []


def test_switched_off_it_reads_nothing_until_she_asks(book: BookFile, child: Child) -> None:
    reading = Reading(on=False, reader=child, rest=0.0)  # type: ignore[arg-type]
    draft = look(reading, book)
    assert reading.progress(book, draft).state == "off"
    facts = book.facts().draft
    assert facts is not None
    reading.go_on(book, facts)
    until(reading, book, "done")
    assert len(child.read) == 1


@pytest.mark.parametrize(
    ("progress", "sentence"),
    [
        (
            Progress("reading", 34, 90, 45210, 120000, 21.0),
            "Reading the draft: 34 of 90 scenes, 45,210 of 120,000 words; about 20 seconds left.",
        ),
        (Progress("reading", 0, 1, 0, 900), "Reading the draft: 0 of 1 scene, 0 of 900 words."),
        (
            Progress("reading", 1, 400, 9, 1000000, 240.0),
            "Reading the draft: 1 of 400 scenes, 9 of 1,000,000 words; about 4 minutes left.",
        ),
        (Progress("done", 3, 3, 9, 9), ""),
    ],
)
def test_what_is_said_of_it(progress: Progress, sentence: str) -> None:
    assert told(progress) == sentence


def test_what_an_earlier_program_told_is_not_shown(book: BookFile, reading: Reading) -> None:
    (draft,) = book.drafts()
    book.keep_whole(draft.id, "a key", json.dumps({"recipe": RECIPE - 1, "people": [{"id": "x"}]}))
    assert reading.told(book, draft.id).people == {}
    assert until(reading, book, "done").scenes_done == 3


def settled(reading: Reading, book: BookFile, draft: str, *, scenes: int) -> None:
    """Until what is told is of so many scenes."""
    look(reading, book)
    end = monotonic() + WAIT
    while len(reading.told(book, draft).scenes) != scenes:
        assert monotonic() < end
        sleep(0.005)
