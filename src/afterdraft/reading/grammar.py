"""What several readers of a paragraph ask of its analysed words: the forms of its verbs and what hangs on each word."""

from collections.abc import Sequence
from dataclasses import dataclass

from afterdraft.reading.analysed import Analysed
from afterdraft.reading.mentions import bare
from afterdraft.reading.tense_forms import Form, form

VERBAL = frozenset({"VERB", "AUX"})
AUXILIARY = frozenset({"aux", "auxpass"})
SUBJECTS = frozenset({"nsubj", "nsubjpass", "expl"})
Spans = Sequence[tuple[int, int]]


@dataclass(frozen=True, slots=True)
class Grammar:
    """Beside a paragraph's words, one entry a token."""

    of: Analysed
    small: tuple[str, ...]  # words as compared
    children: tuple[tuple[int, ...], ...]  # tokens that hang on each
    forms: tuple[Form, ...]  # of verbs; "" of other words
    spoken: tuple[bool, ...]
    speech: Spans

    def on(self, token: int, kinds: frozenset[str]) -> list[int]:
        """The tokens of these relations that hang on `token`."""
        return [child for child in self.children[token] if self.of.deps[child] in kinds]

    def followed(self, token: int, words: frozenset[str]) -> bool:
        """Whether one of the words stands right behind."""
        return token + 1 < len(self.small) and self.small[token + 1] in words

    def first(self, token: int) -> int:
        """The first of the words that `token` is joined to by 'and': what they share hangs on it."""
        while self.of.deps[token] == "conj" and self.of.heads[token] != token:
            token = self.of.heads[token]
        return token


def grammar(analysed: Analysed, speech: Spans) -> Grammar:
    """`speech` is where it is spoken, in order."""
    small = tuple(map(bare, analysed.words))
    children: list[list[int]] = [[] for _ in small]
    for token, head in enumerate(analysed.heads):
        if head != token:
            children[head].append(token)
    return Grammar(
        analysed,
        small,
        tuple(map(tuple, children)),
        tuple(form(word) if pos in VERBAL else "" for word, pos in zip(small, analysed.pos, strict=True)),
        tuple(inside(analysed.starts, speech)),
        tuple(speech),
    )


def inside(places: Sequence[int], spans: Spans) -> list[bool]:
    """Whether each of the rising `places` lies in one of the spans, which are in order."""
    found, rest = [], iter(spans)
    span = next(rest, None)
    for place in places:
        while span and place >= span[1]:
            span = next(rest, None)
        found.append(span is not None and place >= span[0])
    return found
