"""Judgements of questions are kept without the novels' words, and held against what is asked."""

import json
from dataclasses import replace
from hashlib import sha256
from pathlib import Path

import pytest

from afterdraft.questions.question import Question, Span
from bench import corpus
from bench.judged.judgements import FOLDER, Judgement, judgements, keep
from bench.judged.novels import EACH, GROUPS, chosen, named, taken
from bench.judged.score import Result, beside, share_good
from bench.judged.section import figures, lines
from bench.judged.shown import shown
from bench.slips.section import SEEN
from tests.questions.asked import book
from tests.support import need

TITLES = ["The Ferry", "Frost", "A Tin Box", "The Toll", "Low Water", "Nightwork", "The Net"]


def question(subject: str) -> Question:
    span = Span(1, 1, 3, 7, "rope")
    return Question("echo", "Is the echo meant?", (1,), (), 0.6, {}, (span,), subject)


def judged(one: Question, verdict: str = "good", why: str = "the rope is cut, and whole again") -> Judgement:
    return Judgement(one.fingerprint, one.check, one.scenes, verdict, why)  # type: ignore[arg-type]


def result(*verdicts: str) -> Result:
    asked = tuple(question(str(number)) for number in range(len(verdicts)))
    known = tuple(judged(one, verdict) if verdict else None for one, verdict in zip(asked, verdicts, strict=True))
    return Result("The Ferry", "tune", words=40_000, asked=len(asked) + 4, first=asked, judged=known)


def test_the_first_five_that_are_neither_short_nor_long_by_their_titles_hashes() -> None:
    words = dict.fromkeys(TITLES, 70_000) | {"Frost": 49_999, "The Toll": 130_001}
    fit = [title for title in TITLES if title not in ("Frost", "The Toll")]
    by_hash = sorted(fit, key=lambda title: sha256(title.encode()).hexdigest())
    assert taken(words, 0) == by_hash[:EACH]
    assert (
        taken(words | dict.fromkeys("abc", 70_000), 1)
        == sorted([*fit, *"abc"], key=lambda title: sha256(title.encode()).hexdigest())[EACH : 2 * EACH]
    )
    assert not SEEN & set(taken(dict.fromkeys(SEEN, 70_000), 0))


def test_the_novels_are_those_of_the_readme() -> None:
    need(bool(corpus.paths()), "the corpus folder beside the checkout")
    readme = (FOLDER.parent / "README.md").read_text("utf-8")
    for group in GROUPS:
        assert f"**{group}**: {'; '.join(novel.title for novel in chosen(group))}." in readme


def test_judgements_come_back_as_they_were_kept(tmp_path: Path) -> None:
    kept = (judged(question("a")), judged(question("b"), "mistaken", "it is another’s rope"))
    keep("the-ferry", kept, tmp_path)
    assert judgements("the-ferry", tmp_path) == kept
    assert judgements("frost", tmp_path) == ()


@pytest.mark.parametrize(
    ("wrong", "says"),
    [
        ((judged(question("a"), "fair"),), "no such verdict"),
        ((judged(question("a"), why=" "),), "no reason"),
        ((judged(question("a")), judged(question("a"), "mistaken")), "twice"),
    ],
)
def test_what_is_no_judgement_is_refused(wrong: tuple[Judgement, ...], says: str, tmp_path: Path) -> None:
    keep("the-ferry", wrong, tmp_path)
    with pytest.raises(ValueError, match=says):
        judgements("the-ferry", tmp_path)


def test_a_question_without_a_judgement_is_not_counted_as_good() -> None:
    asked = [question("a"), question("b")]
    known = [judged(asked[0]), judged(question("asked no more"))]
    assert beside(asked, known) == (known[0], None)
    assert share_good([result("good", "", "answered", "good", "mistaken")]) == 0.5
    assert share_good([result("")]) == 0.0


def test_figures_say_how_many_are_good_and_how_often_anything_is_asked() -> None:
    found = [result("good", "good", "answered"), replace(result("mistaken"), group="report")]
    good, often = figures("tune", found)
    assert (good.value, good.met, good.note) == (0.667, False, "3 judged, 0 not yet")
    assert (often.value, often.met) == (1.75, False)
    assert "| The Ferry | tune | 40,000 | 7 | 2 | 1 | 0 | 0 |" in list(lines(found))
    assert "| echo | 2 | 1 | 1 | 0 |" in list(lines(found))


def test_a_question_is_shown_with_its_words_marked_among_their_neighbours() -> None:
    seen = book([["One."], ["Before.", "The rope was wet.", "After.", "Far off."]])
    one = question("a")
    told = "\n".join(shown(seen, replace(one, evidence=(Span(1, 1, 4, 8, "rope"),))))
    assert "    The ⟦rope⟧ was wet." in told
    assert "Before." in told
    assert "After." in told
    assert "Far off." not in told


def test_what_is_kept_holds_no_sentence_of_the_novels() -> None:
    need(bool(corpus.paths()), "the corpus folder beside the checkout")
    for path in FOLDER.glob("*.json"):
        novel = named(path.stem)
        assert novel is not None, path.name
        text = " ".join(text for chapter in novel.chapters for scene in chapter.scenes for text in scene).lower()
        for why in (one["why"].lower().split() for one in json.loads(path.read_text("utf-8"))):
            runs = (" ".join(why[at : at + 6]) for at in range(len(why) - 5))
            assert not [run for run in runs if run in text], path.name
