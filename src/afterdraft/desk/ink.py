"""An ink: a kind of note, named and coloured by the writer."""

from dataclasses import dataclass
from typing import Literal, get_args

# The palette that colour-blind readers can tell apart: Okabe & Ito, "Color Universal Design", 2008; names are theirs.
Colour = Literal["orange", "sky blue", "bluish green", "yellow", "blue", "vermillion", "reddish purple", "black"]
COLOURS: tuple[Colour, ...] = get_args(Colour)


@dataclass(frozen=True, slots=True)
class Ink:
    id: str
    name: str
    colour: Colour
    letter: str  # one capital, its own within the book: hue is never the only sign
    place: str = ""  # text key of its place in the order; the first nine have the keys 1 to 9
    revision: int = 0
