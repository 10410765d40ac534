"""Why a scene may begin at a paragraph, and on which words of the text that rests."""

from collections import Counter
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence

from afterdraft.manuscript.unmarked.features import NEAR, Gap, people, places
from afterdraft.manuscript.unmarked.passages import Passage, content_words
from afterdraft.manuscript.unmarked.vocabulary import ENTRY, LEAP, SITE, WHEN
from afterdraft.manuscript.unmarked.weights import REASON, WEIGHTS, Why

SHOWN = 3  # names or words in the evidence of one reason
_WORDS_NEAR = 6  # paragraphs on either side whose words are told as evidence


def reasons(gap: Gap) -> tuple[Why, ...]:
    """The reasons that count, the weightiest first."""
    sums: Counter[Why] = Counter()
    for one in WEIGHTS:
        if one.why:
            sums[one.why] += one.weight * (getattr(gap, one.sign) - one.usual)
    return tuple(why for why, adds in sums.most_common() if adds >= REASON)


def evidence(why: Why, told: Sequence[Passage], at: int) -> str:
    """Words of the text for a reason at paragraph `at` of the scene; "" where it rests on what is missing."""
    return _EVIDENCE[why](told, at)


def _time(told: Sequence[Passage], at: int) -> str:
    opening = told[at].opening
    found = ENTRY.match(opening) or LEAP.match(opening) or WHEN.match(opening)
    return found.group().strip("“”\"' .—–:") if found else ""


def _place(told: Sequence[Passage], at: int) -> str:
    new = told[at].places - places(told[max(0, at - NEAR) : at])
    site = SITE.search(told[at].opening)
    return _listed(_in_order(new, [told[at]])) or (site.group() if site else "")


def _cast(told: Sequence[Passage], at: int) -> str:
    after = told[at : at + NEAR]
    new = people(after) - people(told[max(0, at - NEAR) : at])
    return _listed(_in_order(new, after)) or _listed(_in_order(told[at].people, [told[at]]))


def _words(told: Sequence[Passage], at: int) -> str:
    """The commonest words after the gap that are not before it, names left out."""
    before = {stem for stem, _ in _forms(told[max(0, at - _WORDS_NEAR) : at])}
    after = [(stem, form) for stem, form in _forms(told[at : at + _WORDS_NEAR]) if stem not in before]
    forms = dict(reversed(after))  # as each stands first
    often = Counter(stem for stem, _ in after)
    return _listed(forms[stem] for stem, times in often.most_common(SHOWN) if times > 1)


_EVIDENCE: Mapping[Why, Callable[[Sequence[Passage], int], str]] = {
    "time": _time,
    "place": _place,
    "cast": _cast,
    "words": _words,
}


def _forms(told: Iterable[Passage]) -> Iterator[tuple[str, str]]:
    return ((stem, form) for passage in told for stem, form in content_words(passage.text) if form.islower())


def _in_order(names: Iterable[str], told: Sequence[Passage]) -> list[str]:
    """Names as they come in the text."""
    text = "\n".join(passage.text for passage in told)
    return sorted(names, key=lambda name: (text.find(name), name))


def _listed(words: Iterable[str]) -> str:
    return ", ".join(list(words)[:SHOWN])
