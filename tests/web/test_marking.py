"""Marking and the writer's lists as forms: where they lead, and what they refuse."""

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import pytest
from starlette.testclient import TestClient

from afterdraft.web.view import view
from afterdraft.work.ports import Book
from afterdraft.work.split.retitle import retitle_scene
from tests.store.sample import begun
from tests.web.opened import opened


@dataclass
class Screen:
    client: TestClient
    book: Book

    @property
    def draft(self) -> str:
        return self.book.drafts()[-1].id

    @property
    def codes(self) -> list[str]:
        return [scene.code for scene in self.book.division(self.draft).scenes]

    def post(self, path: str, **sent: str | list[str]) -> str:
        """Where it leads, in the book."""
        answer = self.client.post(f"/books/{self.book.id}/{path}", data=sent, follow_redirects=False)
        assert answer.status_code == 303, answer.text
        return str(answer.headers["location"]).removeprefix(f"/books/{self.book.id}")

    def refused(self, path: str, **sent: str | list[str]) -> tuple[int, str]:
        before = self.book.edits()
        answer = self.client.post(f"/books/{self.book.id}/{path}", data=sent, headers={"Accept": "application/json"})
        assert self.book.edits() == before
        return answer.status_code, str(answer.json()["error"])

    def marks(self) -> list[tuple[str, str, int]]:
        lines = self.book.lines(self.draft)
        return [(line.name, point.does, len(point.anchors)) for line in lines for point in line.points]


@pytest.fixture
def screen(tmp_path: Path, home: Path) -> Iterator[Screen]:
    made, _ = begun(tmp_path)
    made.close()
    with opened(Path(made.path)) as (client, shown):
        yield Screen(client, shown)


def test_a_name_alone_means_the_likely_act(screen: Screen) -> None:
    one, two, _ = screen.codes
    back = f"/books/{screen.book.id}/scenes/{one}"
    assert screen.post("mark", code=one, thread="The flood", does="", back=back) == f"/scenes/{one}#mark-thread"
    screen.post("mark", code=two, thread="the flood")
    screen.post("mark", code=one, setup="The step")
    screen.post("mark", code=two, setup="The step")
    screen.post("mark", code=two, reveal="The lock is empty")
    assert [mark[:2] for mark in screen.marks()] == [
        ("The flood", "opens"),
        ("The flood", "carries"),
        ("The step", "setup"),
        ("The step", "return"),
        ("The lock is empty", "learns"),
    ]
    screen.post("mark", code=one, person="Ottla")
    screen.post("mark", code=one, place="The lock")
    screen.post("mark", code=one, strand="Then")
    assert [one.how for one in screen.book.present(screen.draft)] == ["on page"]
    assert len(screen.book.settings(screen.draft)) == len(screen.book.strands(screen.draft)[0].scenes) == 1


def test_words_are_found_when_the_selection_is_not_sent_or_not_understood(screen: Screen) -> None:
    one = screen.codes[0]
    for passage in ("", "[{]", "[1]", '[{"paragraph": 3}]'):
        screen.post("mark", code=one, setup="The step", does="setup", words="ferry", passage=passage)
    assert screen.marks() == [("The step", "setup", 1)] * 4
    anchor = screen.book.lines(screen.draft)[0].points[0].anchors[0]
    assert (anchor.paragraph, anchor.start, anchor.end) == (3, 4, 9)


@pytest.mark.parametrize(
    ("sent", "status", "says"),
    [
        ({"thread": "", "does": "opens"}, 422, "A thread needs a name."),
        ({"thread": "A", "does": "payoff"}, 422, "A setup needs a name."),
        ({"thread": "A", "does": "hides"}, 404, "This act is not there."),
        ({"strand": " ", "does": "strand"}, 422, "A strand needs a name."),
        ({"person": "", "does": "viewpoint"}, 422, "A person needs a name."),
        ({"place": "", "does": "place"}, 422, "A place needs a name."),
        ({"thread": "A", "does": "opens", "code": "Z11"}, 404, "The scene Z11 is not there."),
        ({"thread": "A", "does": "opens", "words": "nobody wrote this"}, 422, "These words are not in the text"),
        ({"thread": "A", "does": "opens", "code": []}, 422, "No scene was chosen."),
        ({"person": "A", "does": "on page", "code": []}, 422, "No scene was chosen."),
    ],
)
def test_what_cannot_be_marked_is_told(
    screen: Screen, sent: dict[str, str | list[str]], status: int, says: str
) -> None:
    code, told = screen.refused("mark", **{"code": screen.codes[0], **sent})
    assert (code, told.startswith(says)) == (status, True), told


def test_a_passage_belongs_to_one_scene(screen: Screen) -> None:
    _, told = screen.refused("mark", code=screen.codes[:2], setup="A", does="setup", words="ferry")
    assert told.startswith("A passage belongs to one scene.")


def test_scenes_are_linked_by_code_or_by_title(screen: Screen) -> None:
    one, two, three = screen.codes
    ids = [scene.id for scene in screen.book.division(screen.draft).scenes]
    screen.post("follows", scene=two, source=f"{one} · The ferry wasn’t late", why="")
    screen.post("follows", scene=f"{two.lower()}", source="third STEP")  # the title of the last
    assert [one.source for one in screen.book.follows(screen.draft)] == [ids[0], ids[2]]
    assert screen.refused("follows", scene=two, source="nowhere")[1].startswith("Choose the scene by its code")
    retitle_scene(screen.book, ids[0], "Third step")
    assert screen.refused("follows", scene=two, source="Third step")[1].startswith("Two scenes are called so.")
    assert screen.refused("follows", scene=three, source=three)[1].startswith("A scene cannot follow from itself.")
    screen.post(f"follows/{screen.book.follows(screen.draft)[0].id}")
    assert len(screen.book.follows(screen.draft)) == 1


def test_a_mark_is_taken_off_once(screen: Screen) -> None:
    screen.post("mark", code=screen.codes[0], thread="The flood", does="opens")
    (line,) = screen.book.lines(screen.draft)
    assert screen.post(f"lines/{line.id}/unmark", point=line.points[0].id) == "/threads"
    assert screen.refused(f"lines/{line.id}/unmark", point=line.points[0].id)[0] == 404  # as another window would


def test_what_one_carries_is_kept_and_taken_off(screen: Screen) -> None:
    one = screen.codes[0]
    screen.post("carried", code=one, person="Ottla", comes_in="a cold", leaves="")
    (held,) = screen.book.carried(screen.draft)
    screen.post(f"carried/{held.id}", code=one)
    assert screen.book.carried(screen.draft) == ()
    assert screen.refused("carried", code=one, person="Ottla", comes_in="", leaves=" ")[0] == 422
    screen.post("undo", number=str(top.number) if (top := screen.book.edits().undo) else "")
    assert [one.comes_in for one in screen.book.carried(screen.draft)] == ["a cold"]


def test_lists_grow_and_ask_before_a_name_is_taken_twice(screen: Screen) -> None:
    for kind, name in (("thread", "A"), ("setup", "A"), ("reveal", "A"), ("strand", "A"), ("place", "A")):
        assert screen.post(f"lists/{kind}", name=name).partition("?")[0] in ("/threads", "/people")
    screen.post("lists/person", name="Ottla")
    assert screen.post("lists/person", name="ottla") == "/people?again=ottla&kind=person#add-person"
    screen.post("lists/person", name="ottla", all_the_same="1")
    assert [one.name for one in screen.book.known("person")] == ["Ottla", "ottla"]
    for path in ("lists/thread", "lists/strand"):
        assert screen.refused(path, name="a")[1].startswith("There is a")
    assert screen.refused("lists/cards", name="A")[0] == 404


def test_acts_on_a_row(screen: Screen) -> None:
    for name in ("Ottla", "The keeper"):
        screen.post("lists/person", name=name)
    ottla, keeper = (one.id for one in screen.book.known("person"))
    screen.post(f"lists/person/{keeper}/up")
    assert [one.id for one in screen.book.known("person")] == [keeper, ottla]
    screen.post(f"lists/person/{keeper}/join", into=ottla)
    assert [one.aliases for one in screen.book.known("person")] == [("The keeper",)]
    screen.post(f"lists/person/{ottla}/remove")
    assert screen.book.known("person") == ()
    screen.post("lists/strand", name="Then")
    strand = screen.book.strands(screen.draft)[0].id
    screen.post(f"lists/strand/{strand}/letter", letter="q")
    assert screen.book.strands(screen.draft)[0].letter == "Q"
    screen.post("lists/thread", name="The flood")
    line = screen.book.lines(screen.draft)[0].id
    for path in (f"lists/line/{line}/join", f"lists/strand/{strand}/join", f"lists/person/{ottla}/letter"):
        assert screen.refused(path, into=line, letter="Q")[0] == 404
    for path in (f"lists/line/{line}/burn", "lists/nobody/x/up", "lists/line/ln0/up"):
        assert screen.refused(path)[0] == 404
    screen.post(f"lists/strand/{strand}/remove")
    screen.post(f"lists/line/{line}/remove")
    assert view(screen.book).book.lines(screen.draft) == ()
