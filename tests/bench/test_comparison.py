"""The makers of synthetic revisions: their truth holds by itself, and they know nothing of the program."""

import ast
from pathlib import Path
from random import Random

import pytest

import bench.comparison
from bench.comparison.editing import Paragraph, Stock, edited, reparagraphed
from bench.comparison.revise import Revision, revision, unique
from bench.comparison.score import Tally, score

HERE = Path(bench.comparison.__file__).parent
WORDS = [f"{first}{last}" for first in "bdfglmnprstw" for last in ("anner", "ellow", "ister", "odge", "umble", "arrow")]


def by(seed: int) -> Random:
    return Random(seed)  # noqa: S311 the same choices each time, nothing secret


def novel(scenes: int, seed: int) -> list[list[str]]:
    """Scenes of eight paragraphs of two to forty words."""
    chance = by(seed)
    return [[" ".join(chance.choices(WORDS, k=chance.randint(2, 40))) for _ in range(8)] for _ in range(scenes)]


@pytest.fixture(scope="module", params=range(3))
def made(request: pytest.FixtureRequest) -> Revision:
    donor = [paragraph for scene in novel(30, 99) for paragraph in scene]
    return revision(novel(40, 1), donor, request.param)


@pytest.mark.parametrize("name", ["editing.py", "revise.py"])
def test_the_makers_import_nothing_of_the_program(name: str) -> None:
    tree = ast.parse((HERE / name).read_text("utf-8"))
    imported = {
        module
        for node in ast.walk(tree)
        for module in (
            [alias.name for alias in node.names]
            if isinstance(node, ast.Import)
            else [node.module or ""]
            if isinstance(node, ast.ImportFrom)
            else []
        )
    }
    assert not any(module.startswith("afterdraft") for module in imported)
    assert {module for module in imported if module.startswith("bench")} <= {"bench.comparison.editing"}


def test_every_word_that_was_kept_stands_where_it_says_it_stood(made: Revision) -> None:
    old = [paragraph.split() for scene in made.old for paragraph in scene]
    kept = [(word, place) for paragraph in made.words for word, place in paragraph if place]
    assert len(kept) > 1000
    assert all(old[number][at] == word for word, (number, at) in kept)
    assert len({place for _, place in kept}) == len(kept)  # each at most once


def test_the_truth_covers_every_scene_and_pair(made: Revision) -> None:
    assert set(made.became) == set(range(len(made.old)))
    assert {old for old, _ in made.links} == {old for old, fate in made.became.items() if fate != "cut"}
    new = [paragraph for scene in made.new for paragraph in scene]
    assert all(before in {place[0] for _, place in made.words[at] if place} for before, at in made.pairs)
    assert len(new) == len(made.words)
    assert made.moved <= made.links


def test_a_revision_by_the_same_seed_is_the_same_and_by_another_is_not(made: Revision) -> None:
    donor = [paragraph for scene in novel(30, 99) for paragraph in scene]
    assert revision(novel(40, 1), donor, 7) == revision(novel(40, 1), donor, 7)
    assert revision(novel(40, 1), donor, 7).new != revision(novel(40, 1), donor, 8).new


def test_about_the_share_asked_for_is_edited() -> None:
    paragraph: Paragraph = [(word, (0, at)) for at, word in enumerate(WORDS * 30)]
    for share in (0.05, 0.3, 0.6):
        done = edited(paragraph, share, Stock(WORDS), by(3))
        kept = sum(place is not None for _, place in done)
        assert 2 * kept / (len(done) + len(paragraph)) == pytest.approx(1 - share, abs=0.08)


def test_splitting_and_joining_loses_no_word() -> None:
    paragraphs: list[Paragraph] = [[(word, (n, at)) for at, word in enumerate(WORDS[:20])] for n in range(60)]
    done = reparagraphed(paragraphs, 0.2, by(1))
    assert [word for paragraph in done for word in paragraph] == [word for one in paragraphs for word in one]
    assert len(done) != len(paragraphs)


def test_runs_that_stand_once() -> None:
    assert unique([["a", "b", "c"], ["a", "b", "d"]], 2) == {("b", "c"), ("b", "d")}


def test_a_scene_linked_wrongly_would_be_counted(made: Revision) -> None:
    fair, unfair = Tally(), Tally()
    score(made, fair, seed=0)
    shifted = frozenset((old, new + 1) for old, new in made.links)
    broken = Revision(
        made.old, made.new, shifted, made.anew, made.moved, made.became, made.pairs, made.strays, made.words
    )
    score(broken, unfair, seed=0)
    assert unfair.share("links recall") < fair.share("links recall")
