"""The bench of structure: its writers know nothing of the program, and its score sees what is wrong."""

import ast
from dataclasses import replace
from itertools import pairwise
from pathlib import Path

import pytest

import bench
from afterdraft.manuscript.blocks import Block, Blocks
from afterdraft.manuscript.division import Chapter, Division, Part, Role, Scene
from afterdraft.manuscript.draft import Draft
from bench import corpus
from bench.corpus import Break, Front, Novel
from bench.structure.manuscripts import make
from bench.structure.run import read_back, readable
from bench.structure.score import score
from bench.structure.writers.habits import BARE, HABITS, Habit
from bench.structure.writers.plan import Plan, cardinal, roman

HERE = Path(bench.__file__).parent

NOVEL = Novel(
    slug="nora-quill_the-ferry",
    title="The Ferry",
    author="Nora Quill",
    front=(Front("dedication", "", False, ("For the gulls.",)),),
    parts=(corpus.Part("Part I: Over", "", (), None),),
    chapters=(
        corpus.Chapter(
            1, "Morning", "", "", "chapter", ("In which it is late.",), 0,
            (("The ferry was late.", "She *knew* it."), ("Then it came.",)),
            (Break("start", ""), Break("hr", "")),
        ),
        corpus.Chapter(2, "", "", "", "chapter", (), 0, (("It left.\nIt went.",),), (Break("start", ""),)),
    ),
)  # fmt: skip


@pytest.mark.parametrize(
    "path", [HERE / "corpus.py", *(HERE / "structure" / "writers").glob("*.py")], ids=lambda p: p.name
)
def test_the_writers_import_nothing_of_the_program(path: Path) -> None:
    tree = ast.parse(path.read_text("utf-8"))
    names = [alias.name for node in ast.walk(tree) if isinstance(node, ast.Import) for alias in node.names]
    names += [node.module or "" for node in ast.walk(tree) if isinstance(node, ast.ImportFrom)]
    ours = [name for name in names if name.split(".")[0] == "afterdraft"]
    others = [name for name in names if name.startswith("bench") and name != "bench.corpus" and ".writers" not in name]
    assert (ours, others) == ([], [])


EVERY = [(habit, form) for habit in HABITS for form in readable(habit)]


@pytest.mark.parametrize(("habit", "form"), EVERY, ids=[f"{habit.name}, {form}" for habit, form in EVERY])
def test_a_manuscript_is_the_same_at_every_run_and_holds_the_text(habit: Habit, form: str) -> None:
    made = make(NOVEL, habit, form)
    assert made.files == make(NOVEL, habit, form).files
    text = "\n".join(block.text for block in read_back(made).source.blocks)
    for passage in (
        "The Ferry",
        "Nora Quill",
        "For the gulls." if habit.front else "",
        "In which it is late." if habit.levels else "",
        "She knew it.",
        "It left.\nIt went.",
    ):
        assert passage in text


def perfect(plan: Plan) -> Draft:
    """The draft that a program without a fault would give, built by hand from the plan."""
    starts = [i for i, line in enumerate(plan.lines) if line.opens is not None]
    parts = [i for i, line in enumerate(plan.lines) if line.kind == "part"]
    roles: dict[str, Role] = {"story": "story", "head": "head", "break": "mark", "section": "heading"}
    roles |= {"part": "heading", "chapter": "heading"}
    return Draft(
        source=Blocks("a", "txt", "", 0, tuple(Block(line.text.replace("*", "") or "*", ()) for line in plan.lines)),
        division=Division(
            parts=tuple(Part("p", part, "Part I: Over") for part in parts),
            chapters=tuple(
                Chapter(f"c{i}", at, "p", "chapter", c.number, min(c.titles), c.head)
                for i, (at, c) in enumerate(zip(starts, plan.chapters, strict=True))
            ),
            scenes=tuple(
                Scene(f"s{i}", i) for i, line in enumerate(plan.lines) if line.scene or line.opens is not None
            ),
            roles=tuple(roles.get(line.kind, "matter") for line in plan.lines),
        ),
    )


PLAN = make(NOVEL, HABITS[1]).plan


def test_a_perfect_draft_has_no_fault_but_the_italics_left_out_of_it() -> None:
    found = score(perfect(PLAN), PLAN)
    assert found.faults == ()
    counts = (found.chapters, found.titles, found.breaks, found.heads, found.front, found.story, found.paragraphs)
    assert {count.f1 for count in counts} == {1.0}
    assert (found.chapters.right, found.breaks.right, found.heads.right) == (2, 1, 1)
    assert found.texts.recall == 1
    assert found.italics.recall == 0  # the draft above has no runs


def chapters(draft: Draft, *found: Chapter) -> Draft:
    return replace(draft, division=replace(draft.division, chapters=found))


def scenes(draft: Draft, *found: Scene) -> Draft:
    return replace(draft, division=replace(draft.division, scenes=found))


def all_are(draft: Draft, role: Role) -> Draft:
    return replace(draft, division=replace(draft.division, roles=(role,) * len(draft.division.roles)))


def test_each_fault_lowers_its_own_figure() -> None:
    draft = perfect(PLAN)
    first, second = draft.division.chapters
    assert score(chapters(draft, first), PLAN).chapters.recall == 0.5
    assert score(chapters(draft, first, replace(second, at=second.at + 1)), PLAN).chapters.f1 == 0.5
    assert score(chapters(draft, replace(first, title="morning"), second), PLAN).titles.f1 == 0.5
    assert score(chapters(draft, replace(first, number=3), second), PLAN).titles.f1 == 0.5
    assert score(chapters(draft, replace(first, part=None), second), PLAN).titles.f1 == 0.5
    assert score(chapters(draft, replace(first, head=()), second), PLAN).heads.recall == 0
    openings = tuple(scene for scene in draft.division.scenes if scene.at in (first.at, second.at))
    assert score(scenes(draft, *openings), PLAN).breaks.recall == 0
    assert score(scenes(draft, *draft.division.scenes, Scene("x", first.at + 3)), PLAN).breaks.precision < 1
    assert score(all_are(draft, "story"), PLAN).front.recall == 0
    assert score(all_are(draft, "matter"), PLAN).story.recall == 0


def test_a_lost_letter_is_seen_and_places_after_it_still_count() -> None:
    draft = perfect(PLAN)
    at = next(i for i, line in enumerate(PLAN.lines) if line.text == "The ferry was late.")
    blocks = tuple(replace(b, text="The ferry was lat.") if i == at else b for i, b in enumerate(draft.source.blocks))
    found = score(replace(draft, source=replace(draft.source, blocks=blocks)), PLAN)
    assert found.texts.recall == 0
    assert found.chapters.f1 == 1
    assert found.faults == ("text differs near “The ferry was late.”",)


def test_titles_that_a_habit_does_not_write_are_not_expected() -> None:
    assert [chapter.titles for chapter in make(NOVEL, BARE).plan.chapters] == [frozenset([""]), frozenset([""])]


def test_numbers_in_words_and_in_roman() -> None:
    # Common knowledge; every numeral once, and the subtractive ones.
    assert [roman(n) for n in (1, 4, 9, 14, 40, 90, 99)] == ["I", "IV", "IX", "XIV", "XL", "XC", "XCIX"]
    assert [cardinal(n) for n in (1, 12, 20, 21, 99)] == ["one", "twelve", "twenty", "twenty-one", "ninety-nine"]
    assert all(a != b for a, b in pairwise(cardinal(n) for n in range(1, 100)))
