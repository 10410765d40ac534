"""Offcuts of several earlier drafts, each passage once; and words looked up in them."""

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Generic, TypeVar
from unicodedata import normalize

from afterdraft.comparison.comparison import Comparison
from afterdraft.comparison.offcuts import offcuts
from afterdraft.comparison.standing import Standing

Key = TypeVar("Key")
TERM = re.compile(r'["“”„«»]([^"“”„«»]*)["“”„«»]?|([^\s"“”„«»]+)')  # words in double quotes belong together
WORD = re.compile(r"[^\W_]+")
ACCENT = re.compile("[\u0300-\u036f\u1ab0-\u1aff\u1dc0-\u1dff\u20d0-\u20ff\ufe20-\ufe2f]+")  # apart from its letter
ODD = re.compile("[^\x00-\x7f\u2010-\u2026]")  # what is no plain letter, quotation mark or dash


@dataclass(frozen=True, slots=True)
class Earlier(Generic[Key]):
    """A passage that an earlier draft had and the present one has not."""

    draft: Key
    scene: int  # of that draft
    paragraph: int  # story paragraph
    start: int  # half-open, characters
    end: int
    text: str


def offcuts_of_all(found: Sequence[tuple[Key, Comparison]]) -> tuple[Earlier[Key], ...]:
    """Offcuts of every draft in `found`, oldest first, each compared with the present one; in their drafts' order.

    A paragraph is told of the youngest draft that had it, and so is a passage that stands word for word in an offcut of
    a younger draft, or earlier in the same.
    """
    there = Standing(found[-1][1].new.paragraphs if found else ())
    passages, paragraphs = Standing(), set[str]()
    told: list[list[Earlier[Key]]] = []
    for key, comparison in reversed(found):
        own: list[Earlier[Key]] = []
        texts = comparison.old.paragraphs
        for one in offcuts(comparison, there=there, told=paragraphs):
            text = texts[one.paragraph][one.start : one.end]
            if not passages.has(text):
                passages.add(text)
                own.append(Earlier(key, one.scene, one.paragraph, one.start, one.end, text))
        paragraphs.update(texts)
        told.append(own)
    return tuple(one for own in reversed(told) for one in own)


def search(offcuts: Iterable[Earlier[Key]], words: str) -> tuple[Earlier[Key], ...]:
    """Those that have all the words, in any order; all of them where no word is asked for.

    The last word may be unfinished. Capitals, accents and punctuation do not count; words in double quotes stand
    together.
    """
    asked = [_words(quoted or single) for quoted, single in TERM.findall(words)]
    terms = [f" {term} " for term in asked if term]
    if not terms:
        return tuple(offcuts)
    terms[-1] = terms[-1].rstrip()
    return tuple(one for one in offcuts if _has(one.text, terms))


def _has(text: str, terms: Sequence[str]) -> bool:
    if not ODD.search(text):  # then most passages are told apart without taking them to pieces
        plain = text.lower()
        if not all(word in plain for term in terms for word in term.split()):
            return False
    folded = f" {_words(text)} "
    return all(term in folded for term in terms)


def _words(text: str) -> str:
    """Without capitals, accents and signs; one space between words."""
    return " ".join(WORD.findall(ACCENT.sub("", normalize("NFKD", text)).casefold()))
