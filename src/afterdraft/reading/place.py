"""A place that the text names, as a flat value."""

from dataclasses import dataclass
from typing import Literal

Sign = Literal["in", "to", "from", "heads", ""]
# in: in, at, inside the mill · to: to, into, reached, entered · from: from, out of, left · heads: in a dateline


@dataclass(frozen=True, slots=True)
class Place:
    paragraph: int
    start: int
    end: int
    form: str  # as compared: small letters, no article: "harrow quay", "kitchen"
    name: bool  # written as a name, and not as a kind of place: the kitchen
    taken: bool = False  # by the pipeline for a place
    spoken: bool = False
    sign: Sign = ""
