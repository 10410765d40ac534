"""A row of codes, typed from cards laid on the floor, read against an arrangement."""

import re
from collections import Counter
from dataclasses import dataclass

from afterdraft.desk.arrangement import Arrangement
from afterdraft.desk.arranging import everything

_CODE = re.compile(r"\w+")  # whatever is neither letter nor digit parts codes: spaces, commas, stops, dashes


@dataclass(frozen=True, slots=True)
class TypedCodes:
    """What was typed. It can be laid when nothing in it is unknown or twice."""

    lines: tuple[tuple[str, ...], ...]  # ids of cards, a line for each chapter
    unknown: tuple[str, ...]  # as typed: no card has such a code
    twice: tuple[str, ...]  # codes that stand there more than once
    left_out: tuple[str, ...]  # codes of cards that lie in chapters and are not among those typed

    @property
    def right(self) -> bool:
        return bool(self.lines) and not self.unknown and not self.twice


def typed_codes(arrangement: Arrangement, text: str) -> TypedCodes:
    """What the text says of this arrangement."""
    cards = {card.code: card.id for card in everything(arrangement)}
    lines = written_codes(text)
    typed = Counter(code for codes in lines for code in codes)
    return TypedCodes(
        lines=tuple(tuple(cards[code] for code in codes if code in cards) for codes in lines),
        unknown=tuple(code for code in typed if code not in cards),
        twice=tuple(code for code, times in typed.items() if times > 1 and code in cards),
        left_out=tuple(card.code for card in arrangement.cards() if card.code not in typed),
    )


def written_codes(text: str) -> tuple[tuple[str, ...], ...]:
    """The codes of each chapter as they are typed, in capitals; whether there are such cards is not asked.

    A new line or "|" begins the next chapter, lines without a code count for nothing; spaces, commas and other signs
    part codes. Two "|" with nothing between them stand for a chapter without cards; one at either end for nothing.
    """
    return tuple(tuple(_CODE.findall(piece.upper())) for piece in _pieces(text))


def _pieces(text: str) -> list[str]:
    written = [line.strip() for line in text.splitlines() if _CODE.search(line)]
    return [piece for line in written for piece in line.removeprefix("|").removesuffix("|").split("|")]
