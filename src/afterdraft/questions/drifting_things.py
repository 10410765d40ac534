"""Two given names that hardly stand, of which one person is meant: a thing is told of beside both, and nowhere else.
'Alfred drove a dray', and 'you never went short on that dray, Wilf'."""

import re
from collections.abc import Iterator, Sequence, Set
from itertools import combinations

from afterdraft.questions.drifting import Drift, is_brought_in, is_kin_or_hers
from afterdraft.questions.genders_of_names import genders
from afterdraft.questions.names_written import TITLES, Names
from afterdraft.questions.question import Span
from afterdraft.questions.sentences import sentence
from afterdraft.questions.shared_words import SharedWords
from afterdraft.whole.nicknames import same_given

HARDLY = 3  # times that either name stands at most; chosen by hand
_SURNAME_BEFORE, _SURNAME_BEHIND = re.compile(r"[A-Z]\w*\.? $"), re.compile(r"(?:[’']s)? [A-Z]")


def by_things(names: Names) -> Iterator[Drift]:
    """Of given names of one gender, in two scenes, that have no title and no surname beside them."""
    words = SharedWords(names)
    beside = {name: _beside(names, words, name) for name in names.stands if _is_hardly_there(names, name)}
    for one, two in combinations(beside, 2):
        if beside[one] & beside[two] and _may_be_one(names, one, two):
            usual, other = sorted((one, two), key=lambda name: (-len(names.stands[name]), names.stands[name]))
            known, places = names.stands[usual], names.stands[other]
            if not _is_explained(names, other):
                yield Drift(known[0], tuple(places), (len(known), len(places)), tied=True)


def _is_hardly_there(names: Names, name: str) -> bool:
    spans = names.stands[name]
    if len(spans) > HARDLY or not genders(name) or not names.is_name(name):
        return False
    return TITLES.isdisjoint(names.frames(name)) and not any(_has_surname(names, one) for one in spans)


def _has_surname(names: Names, one: Span) -> bool:
    text = names.seen.texts[one.scene][one.paragraph]
    return bool(_SURNAME_BEFORE.search(text[: one.start]) or _SURNAME_BEHIND.match(text, one.end))


def _beside(names: Names, words: SharedWords, name: str) -> Set[str]:
    """What is told of in the sentence of the name and the one behind it, and in one paragraph more of the book."""
    return {word for one in names.stands[name] for text in _sentences(names, one) for word in words.twice(text)}


def _sentences(names: Names, one: Span) -> Sequence[str]:
    text = names.seen.texts[one.scene][one.paragraph]
    start, end = sentence(text, one.start, one.end)
    behind = end + len(text[end:]) - len(text[end:].lstrip(" ”’\"'"))
    after = slice(*sentence(text, behind, behind + 1)) if behind < len(text) else slice(0)
    return text[start:end], text[after]


def _may_be_one(names: Names, one: str, other: str) -> bool:
    apart = not set(names.scenes(one)) & set(names.scenes(other))
    return apart and bool(genders(one) & genders(other)) and not same_given(one.lower(), [other.lower()])


def _is_explained(names: Names, other: str) -> bool:
    first = names.stands[other][0]
    return is_kin_or_hers(names, first, other) or is_brought_in(names, first, nearly=True)
