"""Somebody in the making: the forms of names that are theirs, and which others may join."""

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

from afterdraft.reading import lexicon
from afterdraft.reading.facts import Gender
from afterdraft.whole.evidence import Gathered
from afterdraft.whole.given import GivenPerson
from afterdraft.whole.given_names import FEMALE, MALE
from afterdraft.whole.nicknames import same_given
from afterdraft.whole.people_names import MARRIED, is_full, parse

APART = 2  # evidence from which two forms are two people
APART_HELD = 4  # the same, where one form holds the other: 'Mary', 'Mary Lamb'
APART_WEIGHS = 50  # times being named, which each sign counts for that two forms are two people
AGAINST = 6  # pronouns from which a name may belong to the other gender than such names do
AGAINST_SHARE = 3  # the same: times as many as of its own
FEMALE_MARKS = ("mrs", "miss", "lady", "madame")
MALE_MARKS = ("mr", "sir", "lord", "monsieur")
GENDER_VOTES = 2  # by how many more pronouns of one gender a name is of that gender
NONE: Counter[str] = Counter()
FAMILIAR = lexicon.PLAIN_TITLES | lexicon.OTHER_TITLES | {"miss", "master", "aunt", "uncle", "brother", "sister"}
OLDER = MARRIED | {"aunt", "auntie"}  # before a surname: no daughter's
BY_ANSWERS = 3  # weight of answers by which a name only ever called is given to whoever answers


@dataclass(slots=True)
class Group:
    """One person in the making."""

    forms: list[str]
    given: set[str] = field(default_factory=set)
    surnames: set[str] = field(default_factory=set)
    titles: set[str] = field(default_factory=set)
    count: int = 0
    narrator: bool = False
    known: GivenPerson | None = None  # the writer's own

    @property
    def full(self) -> bool:
        """Whether given name and surname are known from one form."""
        return any(is_full(form) for form in self.forms)


def home_of(form: str, groups: Iterable[Group], seen: Gathered) -> Group | None:
    """The person a form belongs to, among those made so far; None for a new one.

    Of those it fits alike, whoever is named most and whom the book tells least apart from it.
    """
    fits = [
        (fit, group.count + _given(group, seen) - APART_WEIGHS * _told_apart(form, group, seen), -number, group)
        for number, group in enumerate(groups)
        if (fit := _fit(form, group, seen))
    ]
    return max(fits, key=lambda one: one[:3])[3] if fits else None


def _told_apart(form: str, group: Group, seen: Gathered) -> int:
    return sum(seen.apart.get(frozenset((form, other)), 0) for other in (*group.forms, *group.given))


def _given(group: Group, seen: Gathered) -> int:
    """How often the given names of a person stand alone."""
    return sum(seen.forms[name].count for name in group.given - set(group.forms) if name in seen.forms)


def _fit(form: str, group: Group, seen: Gathered) -> int:
    """How well a form fits a person; 0 where it does not."""
    fit = _by_words(form, group, seen)  # first: it is quickly told, and of most people nothing fits
    return 0 if fit and (are_two(form, group, seen) or genders_differ(form, group, seen)) else fit


def _by_words(form: str, group: Group, seen: Gathered) -> int:
    """The same by names and titles alone."""
    titles, names = parse(form)
    if len(names) > 1:
        if any(_runs_on(names, other) for other in group.forms):
            return 9
        short = _familiar(group) and set(titles) <= FAMILIAR
        given = names[0] in group.given or (short and same_given(names[0], group.given))
        return 9 if given and names[-1] in group.surnames else 0
    name = names[0]
    if {"mrs", "miss"} <= set(titles) | group.titles and not group.given:
        return 0
    if titles and titles[0] in OLDER and name not in group.given and not _may_be_married(form, name, group, seen):
        return 0
    if titles and titles[0] in lexicon.PLAIN_TITLES and group.full and not gender(group, seen):
        return 2 if name in group.surnames else 0
    if not titles:
        if name in group.given:
            return 8
        if _familiar(group) and same_given(name, group.given):
            return 4
        return 5 if name in group.surnames and _likely(form, group, seen) else 0
    if name in group.surnames:
        return 7 if set(titles) & group.titles or not group.titles else 6
    return 3 if name in group.given and (titles[0] not in lexicon.PLAIN_TITLES or group.full) else 0


def _may_be_married(form: str, name: str, group: Group, seen: Gathered) -> bool:
    """Whether somebody can be Mrs. Lamb, or Aunt Lamb: Ada Lamb is neither, where there is a Miss Lamb.

    Unless she answers to it; a Lady Lamb is her mother, if anything.
    """
    if not group.full or group.titles & OLDER or _answered(form, group, seen):
        return True
    maiden = "miss" in group.titles or _borne([name], ("miss", "misses"), seen)
    return form.startswith("mrs ") and gender(group, seen) == "f" and not maiden


def _runs_on(names: Sequence[str], form: str) -> bool:
    """Whether one name is the other with more words at an end: 'Long John', 'John Silver', 'Long John Silver'."""
    other = parse(form)[1]
    short, long = sorted((tuple(names), other), key=len)
    return 1 < len(short) < len(long) and short in (long[: len(short)], long[-len(short) :])


def _answered(form: str, group: Group, seen: Gathered) -> bool:
    """Whether the person answers where the form is called."""
    return sum(seen.answers.get(form, NONE)[other] for other in group.forms) >= BY_ANSWERS


def _familiar(group: Group) -> bool:
    """Whether a short name can be the person's: Tom Lamb is not Sir Thomas, but his son."""
    return group.titles <= FAMILIAR


def _likely(form: str, group: Group, seen: Gathered) -> bool:
    """A bare surname is a man's, or of a woman who is called so."""
    return gender(group, seen) != "f" or seen.forms[form].pronouns["f"] > seen.forms[form].pronouns["m"]


def are_two(form: str, group: Group, seen: Gathered) -> bool:
    """Whether the book tells a form and a person apart; where one name holds the other, plainly so."""
    words = set(parse(form)[1])
    held = free = 0
    for other in group.forms:
        theirs = set(parse(other)[1])
        told = seen.apart.get(frozenset((form, other)), 0)
        if words <= theirs or words >= theirs:
            held += told
        else:
            free += told
    fewer = min(group.count, seen.forms[form].count)
    return free >= max(APART, 0.02 * fewer) or held >= max(APART_HELD, 0.1 * fewer)


def genders_differ(form: str, group: Group, seen: Gathered) -> bool:
    one, other = gender_of([form], seen), gender(group, seen)
    return bool(one and other and one != other)


def gender(group: Group, seen: Gathered) -> Gender:
    return (group.known.gender if group.known else "") or gender_of(group.forms, seen)


def gender_of(forms: Sequence[str], seen: Gathered) -> Gender:
    """By titles and roles, then by the pronouns that follow."""
    given = {parse(form)[1][0] for form in forms if is_full(form)}
    forms = [*forms, *(name for name in given if name in seen.forms and name not in forms)]
    for form in forms:
        words = form.split()
        if words[0] in lexicon.FEMALE_TITLES or (len(words) == 1 and words[0] in lexicon.FEMALE_ROLES):
            return "f"
        if words[0] in lexicon.MALE_TITLES or (len(words) == 1 and words[0] in lexicon.MALE_ROLES):
            return "m"
        if seen.forms[form].roles and words[-1] in lexicon.FEMALE_ROLES | lexicon.MALE_ROLES:
            return "f" if words[-1] in lexicon.FEMALE_ROLES else "m"
    female, male = (sum(seen.forms[form].pronouns[which] for form in forms) for which in ("f", "m"))
    told = _by_names(forms, seen)
    if told:
        theirs, others = (female, male) if told == "f" else (male, female)
        return "" if others >= AGAINST and others > AGAINST_SHARE * theirs else told
    if abs(female - male) < GENDER_VOTES or max(female, male) < 1.5 * min(female, male):
        return ""
    return "f" if female > male else "m"


def _by_names(forms: Sequence[str], seen: Gathered) -> Gender:
    """What names tell: given names; a bare surname that stands with a man's titles and with no woman's."""
    names = {parse(form)[1][0] for form in forms}
    if bool(names & FEMALE) != bool(names & MALE):
        return "f" if names & FEMALE else "m"
    bare = [form for form in forms if " " not in form]
    return "m" if _borne(bare, MALE_MARKS, seen) and not _borne(bare, FEMALE_MARKS, seen) else ""


def _borne(names: Sequence[str], titles: Sequence[str], seen: Gathered) -> bool:
    return any(f"{title} {name}" in seen.forms for title in titles for name in names)


def join(group: Group, form: str, count: int) -> None:
    titles, names = parse(form)
    group.forms.append(form)
    group.count += count
    group.titles |= set(titles)
    if len(names) > 1:
        group.given.add(names[0])
        group.surnames.add(names[-1])
    elif titles and names[0] not in group.given:
        group.surnames.add(names[0])
    elif not titles and names[0] not in group.surnames:
        group.given.add(names[0])
        if len(group.forms) == 1:
            group.surnames.add(names[0])  # which of the two a bare name is, shows later
