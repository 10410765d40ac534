"""A row of codes, typed from cards laid on the floor, read against an arrangement."""

import re
from dataclasses import dataclass

from afterdraft.desk.arrangement import Arrangement
from afterdraft.desk.arranging import everything

_BETWEEN = re.compile(r"[\s,;]+")


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
    """A new line or "|" begins the next chapter, empty lines count for nothing; spaces, commas, semicolons part codes.

    Two "|" with nothing between them stand for a chapter without cards.
    """
    cards = {card.code: card.id for card in everything(arrangement)}
    lines = [_BETWEEN.sub(" ", piece).strip().upper().split() for piece in _pieces(text)]
    typed = [code for codes in lines for code in codes]
    return TypedCodes(
        lines=tuple(tuple(cards[code] for code in codes if code in cards) for codes in lines),
        unknown=tuple(dict.fromkeys(code for code in typed if code not in cards)),
        twice=tuple(dict.fromkeys(code for code in typed if typed.count(code) > 1 and code in cards)),
        left_out=tuple(card.code for card in arrangement.cards() if card.code not in typed),
    )


def _pieces(text: str) -> list[str]:
    written = [line.strip().strip("|") for line in text.splitlines() if line.strip(" \t|")]
    return [piece for line in written for piece in line.split("|")]
