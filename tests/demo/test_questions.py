"""The demonstration book read with the real model, and what its writer marked: listed faults are asked about, no trap
is, and the planted differences of eyes are read off it with whose they are."""

import json
from collections.abc import Sequence
from functools import cache
from pathlib import Path
from typing import Any

import pytest

from afterdraft import wiring
from afterdraft.home import BooksFolder
from afterdraft.platform import folders
from afterdraft.questions.asking import ask
from afterdraft.questions.question import Question
from afterdraft.questions.seen import Seen
from afterdraft.whole.book import read_book
from afterdraft.whole.traits import can_both_be, find_traits
from demo.build import DEMODATA
from demo.revise import consistent
from demo.source import parts, plain
from tests.demo.reading import FORGOTTEN, paragraphs_of
from tests.facts import Read

LISTS: dict[str, list[dict[str, Any]]] = json.loads(Path("demo/faults.json").read_text(encoding="utf-8"))
ASKED_BY: dict[str, set[str]] = {
    "trait": {"trait"},
    "weekday": {"weekday", "order of dates", "year"},
    "interval": {"interval"},
    "two places": {"two places"},
    "gone": {"promised"},
    "dead who acts": {"dead"},
    "late": {"late"},
    "names": {"names alike", "spelling"},
    "left over": {"old name", "left over"},
    "setup without payoff": {"setup open", "thing open"},
    "payoff without setup": {"payoff alone", "thing late"},
    "not yet learned": {"known early"},
    "silent": {"thread silent", "setup silent"},
    "nothing follows": {"loose scene"},
    "viewpoint": {"viewpoint"},
    "tense": {"tense", "person"},
    "twice": {"twice"},
    "TK": {"placeholder"},
    "feeling": {"carried"},
    "figures": set(),
}  # by kind of fault the checks that ask about it
FOUND = {
    "eyes-tam",
    "weekday-letter",
    "weekday-twentieth",
    "late-averay",
    "names-jean-joan",
    "names-garrett",
    "old-name-colin",
    "old-name-orde",
    "setup-envelope",
    "silent-maud",
    "silent-tin",
    "nothing-birds",
    "nothing-photograph",
    "viewpoint-joan",
    "viewpoint-tam",
    "tense-steps",
    "tense-brown",
    "twice-works",
    "twice-photograph",
    "tk-inspector",
    "tk-jossie",
    "feeling-kit",
}


@pytest.fixture(scope="module")
def asked(tmp_path_factory: pytest.TempPathFactory, read_scenes: Read) -> Sequence[Question]:
    path = wiring.demonstration(BooksFolder(folders()), path=tmp_path_factory.mktemp("demo") / "book.afterdraft")
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("afterdraft.engine.reader.read_scenes", read_scenes)
        return ask(wiring.seen_by_checks(str(path)))


@pytest.mark.slow
def test_listed_faults_are_asked_about(asked: Sequence[Question]) -> None:
    found = {fault["id"] for fault in LISTS["faults"] if _is_asked(fault, fault["kind"], asked)}
    assert found >= FOUND


@pytest.mark.slow
def test_no_trap_is_asked_about(asked: Sequence[Question]) -> None:
    assert not [trap["id"] for trap in LISTS["traps"] if _is_asked(trap, trap["looks_like"], asked, whole=True)]


@pytest.mark.slow
def test_the_first_seven_are_all_listed(asked: Sequence[Question]) -> None:
    for one in asked[:7]:
        assert any(_is_asked(fault, fault["kind"], [one]) for fault in LISTS["faults"]), one.asks


@pytest.mark.slow
def test_of_the_consistent_book_next_to_nothing_is_asked(read_scenes: Read) -> None:
    """Without its planted faults; three of them needed no edit and are in it too (`demo/README.md`): the two names and
    Kit's letter are rightly asked about."""
    scenes = tuple(tuple(plain(part) for part in parts(scene)) for scene in consistent())
    asked = ask(Seen(texts=scenes, facts=tuple(read_scenes(scenes))))
    others = [one for one in asked if one.check != "names alike" and one.subject != "thing: envelope"]
    assert len(others) <= 1, [one.asks for one in asked]


@pytest.mark.slow
def test_both_differences_of_eyes_are_found_and_no_other(read_scenes: Read) -> None:
    scenes = list(read_scenes(paragraphs_of(DEMODATA / "manuscript.docx")))
    book = read_book(scenes)
    names = {person.id: person.name for person in book.cast.people}
    eyes: dict[str, list[str]] = {}
    for one in find_traits(book, scenes):
        if one.trait == "eyes":
            eyes.setdefault(names[one.person], []).append(one.value)
    differing = {
        name: values
        for name, values in eyes.items()
        if not all(can_both_be("eyes", first, other) for first in values for other in values)
    }
    assert differing == {"jossie wragg": ["green", "brown"], "tam ockley": ["dark", "blue"]}


def _is_asked(listed: dict[str, Any], kind: str, asked: Sequence[Question], *, whole: bool = False) -> bool:
    return any(one.check in ASKED_BY[kind] and _meets(listed, one, whole=whole) for one in asked)


def _meets(listed: dict[str, Any], one: Question, *, whole: bool) -> bool:
    """Whether the question shows one of the passages, or each where it is about the `whole` of several; where only
    marks tell, whether it is about one of the scenes; of names, whether it is about these."""
    if one.check == "names alike" and "question" in listed:
        return all(name.split()[-1] in listed["question"].lower() for name in _names(one))
    if not one.evidence:
        numbers = [_scene(each["scene"]) for each in listed["passages"]]
        return bool({*numbers, *(_scene(each["index"]) for each in listed["scenes"])} & set(one.scenes))
    shown = [_shows(one, _scene(each["scene"]), _plain(each["words"])) for each in listed["passages"]]
    return all(shown) if whole and len(one.evidence) > 1 else any(shown)


def _names(one: Question) -> list[str]:
    """What the two go by, small: 'joan lusk' is Joan."""
    return [name if name.startswith(("mr ", "mrs ")) else name.split()[0] for name in one.subject.split(" and ")]


def _shows(one: Question, scene: int, words: str) -> bool:
    quotes = [_plain(span.quote) for span in one.evidence if span.scene == scene]
    return any(words in quote or quote in words for quote in quotes)


@cache
def _scene(number: int) -> int:
    """Of the program: from 0, and the scene whose break was forgotten is the end of the one before."""
    return number - 1 - (number >= FORGOTTEN)


def _plain(words: str) -> str:
    return " ".join(words.split())
