"""What is told of a mark and its side, and the words that several ways to tell it have in common."""

from dataclasses import dataclass, replace

OTHER = {"left": "right", "right": "left"}
ITS = "(?:his|her|my|the|its|an?)"
SIDE = rf"{ITS} (?=left|right)"
WHICH = rf"{ITS} (?=left|right|other)"
OWNER = r"(?:his|her|my|your|the|(?:(?:the|his|her|my) )?[\w-]+[’']s)"  # 'her', 'Tom’s', 'the boy’s'


@dataclass(frozen=True, slots=True)
class Sided:
    """Code points of a paragraph: `at` begins the words 'left' or 'right', `start` to `end` hold those that tell it."""

    kind: str  # 'deaf ear', 'mole on the cheek'
    side: str  # of the mark: where 'good' tells of the other, that one
    good: bool
    at: int
    start: int
    end: int
    fresh: bool = False  # how a hurt came: whose it is may be told within the words, and it is there from here on
    weak: bool = False  # it tells so only of somebody who is told elsewhere to have such a mark


def moved(one: Sided, by: int) -> Sided:
    """The same, of the paragraph that its passage stands in."""
    return replace(one, at=one.at + by, start=one.start + by, end=one.end + by)
