"""Made-up manuscripts in one habit each: what was written is what is recovered, and nothing is ever lost."""

from dataclasses import dataclass

from hypothesis import given, settings
from hypothesis import strategies as st

from afterdraft.manuscript.blocks import Block, Gap, Look
from afterdraft.manuscript.division import Began, Chapter, Division, Part, Role, Scene
from afterdraft.manuscript.structure import structure
from afterdraft.manuscript.validity import problems
from tests.manuscript.build import TOLD, bare, made

ROMAN = ("I", "II", "III", "IV", "V", "VI", "VII", "VIII")
WORDS = ("One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight")
TITLES = ("The Ferry", "Low Water", "A Rope", "The Weir", "Old Ropes", "Salt", "The Long Quay", "Home")


@dataclass(frozen=True)
class Habit:
    """How the chapters are headed, and how scenes are parted."""

    heading: str
    look: Look
    turn: bool
    mark: str  # "" for extra space

    def headed(self, number: int) -> Block:
        text = self.heading.format(n=number, roman=ROMAN[number - 1], word=WORDS[number - 1], title=TITLES[number - 1])
        return Block(text, look=self.look, gap=Gap(turn="page") if self.turn else Gap(blanks=2))


HABITS = st.builds(
    Habit,
    heading=st.sampled_from(
        [
            "Chapter {n}",
            "CHAPTER {roman}",
            "Chapter {word}: {title}",
            "{n}",
            "{roman}.",
            "{word}",
            "{n}. {title}",
            "Chapter {n}\n{title}",
        ]
    ),
    look=st.sampled_from(
        [
            Look(align="center"),
            Look(bold=True),
            Look(align="center", caps=True),
            Look(style="Heading 1", level=1),
            Look(size=16),
        ]
    ),
    turn=st.booleans(),
    mark=st.sampled_from(["* * *", "#", "~", "⁂", "———", ""]),
)
# each chapter is a list of scenes, each scene a number of paragraphs; chapters lie in parts
BOOKS = st.lists(
    st.lists(st.lists(st.integers(8, 14), min_size=1, max_size=3), min_size=2, max_size=4), min_size=1, max_size=2
)


def written(habit: Habit, parts: list[list[list[int]]]) -> tuple[list[Block], Division]:
    """A manuscript, and its division as it was meant."""
    blocks: list[Block] = []
    roles: list[Role] = []
    units: tuple[list[Part], list[Chapter], list[Scene]] = ([], [], [])

    def add(block: Block, role: Role) -> None:
        blocks.append(block)
        roles.append(role)

    for index, chapters in enumerate(parts):
        if len(parts) > 1:
            units[0].append(Part(f"p{index}", len(blocks), f"PART {WORDS[index].upper()}"))
            add(Block(units[0][-1].title, look=Look(align="center", size=20), gap=Gap(turn="page")), "heading")
        for number, scenes in enumerate(chapters, start=1):
            title = TITLES[number - 1] if "title" in habit.heading else ""
            part = units[0][-1].id if units[0] else None
            units[1].append(Chapter("", len(blocks), part, "chapter", number, title))
            for place, paragraphs in enumerate(scenes):
                began: Began = "heading" if not place else ("mark" if habit.mark else "space")
                units[2].append(Scene("", len(blocks), began=began))
                if not place:
                    add(habit.headed(number), "heading")
                elif habit.mark:
                    add(Block(habit.mark, look=Look(align="center")), "mark")
                for told in range(paragraphs):
                    space = bool(place and not told and not habit.mark)
                    add(Block(TOLD, gap=Gap(blanks=int(space))), "story")
    return blocks, Division(tuple(units[0]), tuple(units[1]), tuple(units[2]), (), tuple(roles))


@given(HABITS, BOOKS)
@settings(deadline=None)
def test_what_was_written_is_what_is_recovered(habit: Habit, parts: list[list[list[int]]]) -> None:
    blocks, meant = written(habit, parts)
    assert bare(structure(made(blocks)).division) == bare(meant)


LINES = st.one_of(
    st.sampled_from(
        [
            *("Chapter 1", "Chapter Two", "PART ONE", "Prologue", "I", "2", "***", "#", "THE END", "Contents", "“No.”"),
            *("Notes", "by Mara Tovik", "For J.", "Preface", "3. The Weir\t12", "The Ferry", "4 May", "", TOLD),
        ]
    ),
    st.text(max_size=30),
)
BLOCKS = st.builds(
    Block,
    text=LINES,
    look=st.builds(
        Look,
        style=st.sampled_from(["", "Normal", "Heading 1", "TOC 1", "Title"]),
        level=st.sampled_from([None, None, 1, 2, 3]),
        align=st.sampled_from(["left", "center", "right"]),
        bold=st.booleans(),
        italic=st.booleans(),
        size=st.sampled_from([None, 12.0, 20.0]),
        label=st.sampled_from(["", "", "1.", "Chapter 2"]),
    ),
    gap=st.builds(
        Gap, blanks=st.integers(0, 3), turn=st.sampled_from(["none", "page"]), rule=st.booleans(), file=st.booleans()
    ),
)


@given(st.lists(BLOCKS, max_size=40))
@settings(deadline=None)
def test_every_paragraph_of_any_file_is_in_exactly_one_place(blocks: list[Block]) -> None:
    found = structure(made(blocks))
    assert problems(found.division, len(blocks)) == ()
    assert found.source.blocks == tuple(blocks)
    assert all(0 <= doubt.paragraph < len(blocks) for doubt in found.doubts)


@given(st.lists(BLOCKS, max_size=30))
@settings(deadline=None)
def test_the_same_file_gives_the_same_draft(blocks: list[Block]) -> None:
    assert structure(made(blocks)) == structure(made(blocks))
