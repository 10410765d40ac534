"""What drafts that nobody had worked on were asked, and which checks wait because of it."""

from collections import Counter

from afterdraft.questions.at_first import AT_FIRST
from afterdraft.questions.catalogue import BY_ID
from bench.judged.judgements import Verdict
from bench.novellas.books import FOLDER
from bench.novellas.fresh import by_check, finished, fresh, in_vain, table

BY_DECISION = {"many at once"}  # 0 of 6, of finished novels and of drafts that were opened: decision 18


def test_the_checks_that_wait_are_those_that_mostly_asked_in_vain() -> None:
    assert set(AT_FIRST) == in_vain(by_check(fresh()), finished()) | BY_DECISION


def test_what_was_asked_first_is_of_drafts_and_checks_that_there_are() -> None:
    assert {one.draft for one in fresh()} <= {path.stem for path in FOLDER.glob("*.md")}
    assert {one.check for one in fresh()} <= set(BY_ID)


def counted(good: int = 0, answered: int = 0, mistaken: int = 0) -> Counter[Verdict]:
    found: Counter[Verdict] = Counter()
    found["good"], found["answered"], found["mistaken"] = good, answered, mistaken
    return found


def test_few_questions_say_nothing_and_finished_novels_count_where_they_are_many() -> None:
    drafts = {
        "two": counted(mistaken=2),
        "three": counted(good=1, answered=2),
        "half": counted(good=2, answered=2),
        "tense": counted(mistaken=1),
        "echo": counted(good=2, answered=1),
    }
    novels = {
        "tense": counted(answered=2),
        "half": counted(answered=9),
        "echo": counted(answered=9),
        "late": counted(2),
    }
    assert in_vain(drafts, novels) == {"three", "tense"}


def test_the_table_has_the_most_asked_first() -> None:
    lines = list(table(fresh()))
    assert lines[2].startswith("| weekday |")
    assert len(lines) == 2 + len(by_check(fresh()))
