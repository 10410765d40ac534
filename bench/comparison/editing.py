"""Paragraphs whose words know where they came from, and what a reviser does to them. Imports nothing of the program."""

from collections.abc import Sequence
from dataclasses import dataclass
from random import Random

Place = tuple[int, int]  # old paragraph, word in it
Word = tuple[str, Place | None]  # as typed, and where it stood; None for a new one
Paragraph = list[Word]

RUN = 4  # words that one edit touches, at most: revisers change phrases
SHORTEST = 12  # words of a paragraph that is split


@dataclass(frozen=True, slots=True)
class Stock:
    """Words that edits put in: those of the same book, as often as it uses them."""

    words: Sequence[str]

    def some(self, chance: Random, many: int) -> Paragraph:
        return [(chance.choice(self.words), None) for _ in range(many)]


def edited(paragraph: Paragraph, share: float, stock: Stock, chance: Random) -> Paragraph:
    """About that share of the words replaced, struck or preceded by new ones, a phrase at a time."""
    done: Paragraph = []
    at = 0
    mean = (1 + RUN) / 2
    while at < len(paragraph):
        if chance.random() >= share / (mean * (1 - share) + share):
            done.append(paragraph[at])
            at += 1
            continue
        many = chance.randint(1, RUN)
        act = chance.random()
        if act < 0.7:
            done += stock.some(chance, min(many, len(paragraph) - at))
        elif act >= 0.85:
            done += stock.some(chance, many)
            continue
        at += many
    return done or paragraph[:1]


def reparagraphed(paragraphs: list[Paragraph], share: float, chance: Random) -> list[Paragraph]:
    """Some paragraphs split in two, some joined to the one before."""
    done: list[Paragraph] = []
    for paragraph in paragraphs:
        act = chance.random()
        if act < share and len(paragraph) >= SHORTEST:
            at = chance.randint(len(paragraph) // 3, 2 * len(paragraph) // 3)
            done += [paragraph[:at], paragraph[at:]]
        elif act < 2 * share and done:
            done[-1] = done[-1] + paragraph
        else:
            done.append(paragraph)
    return done


def text(paragraph: Paragraph) -> str:
    return " ".join(word for word, _ in paragraph)
