"""Questions: their order, their fingerprints, and that nothing is looked for twice."""

from collections.abc import Iterator
from dataclasses import replace
from functools import partial

from afterdraft.questions.asking import ask
from afterdraft.questions.catalogue import BY_ID, CHECKS
from afterdraft.questions.check import Check
from afterdraft.questions.findings_form import findings_form, findings_of
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen
from afterdraft.questions.wording import WORDS
from tests.questions.asked import book

SCENES = [["It was Sunday.", "Tuesday 14th February 1965", "He said TK."], ["They saw TK there. [check] It rained."]]


def test_every_check_has_its_words_and_its_page() -> None:
    assert WORDS.keys() == {check.id for check in CHECKS}
    assert all(check.name and check.looks_at and check.method and check.blind and check.reads for check in CHECKS)
    assert len(BY_ID) == len(CHECKS)


def test_the_sharpest_come_first_and_always_in_the_same_order() -> None:
    asked = ask(book(SCENES))
    assert [one.strength for one in asked] == sorted((one.strength for one in asked), reverse=True)
    assert asked == ask(book(SCENES), checks=CHECKS[::-1])


def test_a_fingerprint_stays_when_the_book_is_edited_elsewhere() -> None:
    before = {one.fingerprint for one in ask(book(SCENES))}
    after = {one.fingerprint for one in ask(book([["A new scene of a hundred words."], *SCENES]))}
    assert len(before) == 4
    assert before == after


def test_a_fingerprint_changes_with_the_words_in_evidence() -> None:
    one, other = (ask(book([[text]]))[0] for text in ("He said TK.", "He said TK again."))
    assert one.fingerprint != other.fingerprint


def test_the_same_words_twice_are_two_questions() -> None:
    asked = ask(book([["He said TK."], ["He said TK."]]))
    assert len({one.fingerprint for one in asked}) == 2


def test_of_one_repetition_one_check_asks() -> None:
    def checks(start: int) -> list[Check]:
        places = {"twice": (0, 20), "echo": (start, start + 6), "said twice": (start, start + 6)}
        return [
            replace(BY_ID[name], find=partial(_two_places, *place), reads=("words",)) for name, place in places.items()
        ]

    scenes = book([["On the sill stood a jar of screws, and he wept."]] * 2)
    assert [one.check for one in ask(scenes, checks=checks(8))] == ["twice"]
    assert [one.check for one in ask(scenes, checks=checks(8)[::-1])] == ["twice"]
    assert {one.check for one in ask(scenes, checks=checks(24))} == {"twice", "echo"}
    assert {one.check for one in ask(scenes, checks=checks(8)[1:])} == {"echo"}


def test_a_name_that_drifts_is_not_left_over_besides() -> None:
    left = replace(BY_ID["left over"], find=partial(_two_places, 3, 6), reads=("words",))
    drift = replace(BY_ID["name drift"], find=partial(_two_places, 0, 20), reads=("words",))
    scenes = book([["On the sill stood a jar of screws, and he wept."]] * 2)
    assert [one.check for one in ask(scenes, checks=[left, drift])] == ["name drift"]
    assert [one.check for one in ask(scenes, checks=[left])] == ["left over"]


def _two_places(start: int, end: int, seen: Seen) -> Iterator[Finding]:
    words = {
        "begins": "On the sill",
        "words": "the sill",
        "first": "one",
        "again": "two",
        "name": "Orde",
        "other": "Orne",
        "usual": "Orde",
    }
    spans = tuple(seen.span(scene, 0, start, end) for scene in seen.scenes)
    yield Finding(spans, 0.5, words=words, numbers={"words": 8, "changed": 0})


def test_nothing_is_looked_for_again_where_what_is_read_is_the_same() -> None:
    ran: list[str] = []

    def find(seen: Seen) -> Iterator[Finding]:
        ran.append("again")
        yield Finding((seen.span(0, 0, 0, 2),), 0.5, words={"words": "It"})

    check = replace(BY_ID["placeholder"], find=find)
    kept: dict[str, tuple[Finding, ...]] = {}
    first = ask(book(SCENES), checks=[check], kept=kept)
    assert ask(replace(book(SCENES), titles=("One", "Two")), checks=[check], kept=kept)[0].evidence == first[0].evidence
    assert ran == ["again"]
    ask(book([*SCENES, ["More."]]), checks=[check], kept=kept)
    assert ran == ["again", "again"]


def test_findings_outlive_json() -> None:
    kept: dict[str, tuple[Finding, ...]] = {}
    ask(book(SCENES), kept=kept)
    assert findings_of(findings_form(kept)) == kept
