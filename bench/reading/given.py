"""Between the corpus's people and the program's: names as compared, the true cast as given, own people as theirs."""

from collections import Counter, defaultdict
from collections.abc import Mapping, Sequence

from afterdraft.reading import lexicon
from afterdraft.reading.facts import Gender, SceneFacts
from afterdraft.reading.mentions import bare
from afterdraft.whole.cast import Cast, Person, find_cast
from bench.reading.novels import Character, Novel

GENDERS: Mapping[str, Gender] = {"M": "m", "F": "f"}


def compared(alias: str) -> str:
    """An alias as the program compares names: small letters, no article, no points."""
    words = [bare(word) for word in alias.replace(",", "").replace("'S", "'s").split()]
    return " ".join(words[1:] if words and words[0] in ("the", "a", "an") else words)


def owners(characters: Sequence[Character]) -> Mapping[str, frozenset[int]]:
    """Whose each alias is; groups and the unknowable left out."""
    found: defaultdict[str, set[int]] = defaultdict(set)
    for one in characters:
        if not one.name.startswith("_"):
            for alias in one.aliases:
                found[compared(alias)].add(one.id)
    return {alias: frozenset(ids) for alias, ids in found.items()}


def true_cast(novel: Novel, scenes: Sequence[SceneFacts]) -> Cast:
    """The corpus's people as the cast, each alias that is one person's alone, and surnames that are.

    The corpus does not say who narrates: the narrator is whoever holds most names of the narrator found by ourselves.
    """
    by = owners(novel.characters)
    forms = {alias: str(min(ids)) for alias, ids in by.items() if len(ids) == 1}
    parts: defaultdict[str, set[int]] = defaultdict(set)
    for alias, ids in by.items():
        for word in alias.split():
            if word not in lexicon.TITLES | lexicon.ROLES:
                parts[word] |= ids
    forms |= {word: str(min(ids)) for word, ids in parts.items() if len(ids) == 1 and word not in by}
    teller = find_cast(scenes).narrator
    told = Counter(forms[form] for form in (teller.aliases if teller else ()) if form in forms).most_common(1)
    people = tuple(
        Person(str(c.id), c.name, c.aliases, GENDERS.get(c.gender, ""), bool(told) and told[0][0] == str(c.id))
        for c in novel.characters
        if not c.name.startswith("_")
    )
    return Cast(people, forms)


def theirs(cast: Cast, novel: Novel, selves: Counter[int]) -> Mapping[str, int]:
    """One character for each person of our own cast, by the names they share, the commonest first; one to one.

    A narrator whom nobody names is whoever speaks what stands beside 'I said' (`selves`).
    """
    by = owners(novel.characters)
    matched: dict[str, int] = {}
    for person in cast.people:
        votes: Counter[int] = Counter()
        for rank, form in enumerate(person.aliases, 1):
            for owner in by.get(form, ()):
                votes[owner] += 1000 // (rank * len(by[form]))
        for owner, _ in (votes or (selves if person.narrator else votes)).most_common():
            if owner not in matched.values():
                matched[person.id] = owner
                break
    return matched
