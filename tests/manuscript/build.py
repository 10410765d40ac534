"""Small manuscripts for tests, made block by block, no file needed."""

from dataclasses import replace

from afterdraft.manuscript.blocks import Block, Blocks, Gap, Look
from afterdraft.manuscript.division import Division
from afterdraft.manuscript.draft import Draft
from afterdraft.manuscript.structure import structure

TOLD = (
    "The ferry had not come by the time the lamps were lit, and nobody on the quay would say why it was late or who "
    "had taken the rope from its ring. She waited with the basket on her knees until the tide turned under the piles."
)
HEADING = Look(align="center", bold=True)
CENTRED = Look(align="center")
PAGE = Gap(turn="page")
SPACE = Gap(blanks=1)


def told(number: int = 3) -> list[Block]:
    """So many paragraphs of text, some 40 words each."""
    return [Block(TOLD) for _ in range(number)]


def heading(text: str, look: Look = HEADING, gap: Gap = PAGE) -> Block:
    return Block(text, look=look, gap=gap)


def styled(text: str, level: int, label: str = "") -> Block:
    return Block(text, look=Look(style=f"Heading {level}", level=level, label=label))


def made(*pieces: Block | list[Block], name: str = "draft.docx", title: str = "", author: str = "") -> Blocks:
    """A file with these blocks in order."""
    blocks = [block for piece in pieces for block in (piece if isinstance(piece, list) else [piece])]
    return Blocks(name, "docx", "0" * 64, 1, tuple(blocks), title=title, author=author)


def draft(*pieces: Block | list[Block]) -> Draft:
    return structure(made(*pieces))


def bare(division: Division) -> Division:
    """Without ids and sureness, to compare what was recovered with what was meant."""
    names = {part.id: f"p{number}" for number, part in enumerate(division.parts)}
    return replace(
        division,
        parts=tuple(replace(part, id=names[part.id]) for part in division.parts),
        chapters=tuple(
            replace(chapter, id="", part=names[chapter.part] if chapter.part else None) for chapter in division.chapters
        ),
        scenes=tuple(replace(scene, id="", sure=1.0) for scene in division.scenes),
        matter=tuple(replace(matter, id="") for matter in division.matter),
    )


def line(text: str) -> Block:
    """A paragraph parted by space."""
    return Block(text, gap=SPACE)


def scenes(found: Draft) -> list[tuple[int, str]]:
    """Where each scene begins, and how that was recognised."""
    return [(scene.at, scene.began) for scene in found.division.scenes]
