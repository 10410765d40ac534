"""The cast: which forms of names mean people, and which mean the same one.

Names are taken in the order of how full and how frequent they are; each joins the person it fits best, unless the
book tells that the two are two ('A and B', both speaking by turns, one speaking of the other).
"""

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field

from afterdraft.reading import lexicon
from afterdraft.reading.facts import Gender, SceneFacts
from afterdraft.reading.lexicon import words_of
from afterdraft.whole.evidence import Evidence, Gathered, gathered
from afterdraft.whole.given import NOTHING, Given, GivenPerson
from afterdraft.whole.nicknames import same_given

NARRATOR = "the narrator"
READ = "read:"  # how the id of somebody begins whom only reading knows
APART_HELD = 4  # the same, where one form holds the other: 'Mary', 'Mary Lamb'
APART = 2  # evidence from which two forms are two people
GENERIC = words_of(
    """
    man woman girl boy lady gentleman person fellow voice child creature people one lad youth
    """
)
COMMON = words_of(
    """
    young old elder elderly little other poor same first second third tall new
    """
)
ROLE_TAGS = 2  # times that somebody without a name is named as speaker before they count among the cast
OF_SCENES = 0.34  # share of the scenes told by an I from which the narrator is a person of the cast
ACTING = 0.15  # of its mentions, in which a name must act or be called that is never named as speaker
ELSEWHERE = 2  # times that a word must be written large where nothing but a name is
SURELY = 0.8  # share of its mentions that the pipeline holds for a place or thing, from which a word is no person
IDLE = 0.5  # share of its mentions in which a word must be called that never does anything
SHOWN = 3  # mentions from which somebody who never speaks is shown
GENDER_VOTES = 2
NONE: Counter[str] = Counter()
FAMILIAR = lexicon.PLAIN_TITLES | {"miss", "master", "aunt", "uncle", "cousin", "brother", "sister"}
MARRIED = frozenset({"mrs", "lady", "madame", "mme", "frau", "signora"})
BY_ANSWERS = 3  # weight of answers by which a name only ever called is given to whoever answers


@dataclass(frozen=True, slots=True)
class Person:
    id: str  # the writer's own people keep theirs; of others it is made of their chief form
    name: str  # as compared, small letters; of the writer's own people as she writes it
    aliases: tuple[str, ...]  # all forms, the commonest first
    gender: Gender = ""
    narrator: bool = False
    mentions: int = 0  # by name or role


@dataclass(frozen=True, slots=True)
class Cast:
    """`by_form` leads from every form to its person's id; `unmet` are names given by the writer that stand nowhere."""

    people: tuple[Person, ...]
    by_form: Mapping[str, str]
    unmet: tuple[str, ...] = ()

    @property
    def narrator(self) -> Person | None:
        return next((person for person in self.people if person.narrator), None)


@dataclass(slots=True)
class _Group:
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
        return any(_is_full(form) for form in self.forms)


def find_cast(scenes: Sequence[SceneFacts], given: Given = NOTHING) -> Cast:
    """Everybody in the book, those named most first; whom the writer gave stand in it, and own the forms given."""
    seen = gathered(scenes)
    owned = {form for person in given.people for form in person.forms}
    free = {form: one for form, one in seen.forms.items() if form not in owned | given.nobody}
    kept = {form: one for form, one in free.items() if is_person(form, one)}
    bare = {name for form in {*kept, *owned} for name in _parse(form)[1]}
    kept |= {form: one for form, one in free.items() if _fills_out(form, one, bare)}
    groups = [_own(person, seen) for person in given.people]
    for form in sorted(kept, key=lambda form: (not _is_full(form), -kept[form].count, form)):
        home = _home(form, groups, seen)
        if home is None:
            home = _Group([])
            groups.append(home)
        _join(home, form, kept[form].count)
    _by_role(groups, seen)
    if seen.selves >= max(1, OF_SCENES * seen.scenes) and not any(group.narrator for group in groups):
        _tell(groups, seen)
    _by_answers(groups, seen)
    groups = [group for group in groups if _is_shown(group, seen)]
    groups.sort(key=lambda group: (-group.count, group.forms[:1]))
    people = [_person(group, seen) for group in groups]
    by_form = {form: person.id for person in people for form in person.aliases}
    by_form |= {form: person.id for person in given.people for form in person.forms}
    return Cast(tuple(people), by_form, tuple(sorted(owned - seen.forms.keys())))


def _own(person: GivenPerson, seen: Gathered) -> _Group:
    """Somebody of the writer's; names that stand nowhere still say what other forms may be theirs."""
    group = _Group([], narrator=person.narrator, known=person)
    for form in person.forms:
        _join(group, form, seen.forms[form].count if form in seen.forms else 0)
    group.forms = [form for form in group.forms if form in seen.forms]
    return group


def is_person(form: str, one: Evidence) -> bool:
    """Whether a form means a person: by title, by speaking and acting, against standing where places stand."""
    words = form.split()
    if one.signs:
        return True
    if one.roles > one.named:
        return _is_role(words, one)
    if words[0] in lexicon.TITLES and len(words) > 1:
        return one.places + one.others <= one.count * 0.6 or one.tags > 0
    if words[0] in lexicon.TITLES:  # 'Mother', 'Captain': as names
        return one.tags + one.called > 1
    if one.named <= one.first and one.tags + one.called < 2 and len(words) == 1:
        return False
    if one.tags == 0 and len(words) == 1 and _is_doubtful(one):
        return False
    bad = one.places + one.others + 2 * one.placed
    good = one.people + 2 * one.tags + one.speaks + one.subject + one.called
    if one.count == 1:
        return one.tags > 0 or (len(words) > 1 and one.people > 0 and bad == 0 and one.subject > 0)
    if one.tags == 0 and one.subject + one.called < ACTING * one.count:
        return False
    return good > bad and (one.tags > 0 or one.speaks > 0 or one.subject > 1 or one.called > 1)


def _is_doubtful(one: Evidence) -> bool:
    """Of a word never named as speaker: hardly written large but at beginnings, nobody's by the pipeline, or idle."""
    elsewhere = one.named - one.first
    return (
        elsewhere < ELSEWHERE
        or one.places + one.others >= SURELY * one.count
        or (one.subject == 0 and one.called < IDLE * one.count)
    )


def _fills_out(form: str, one: Evidence, bare: set[str]) -> bool:
    """Whether a rare full name is that of somebody known by one of its parts."""
    names = _parse(form)[1]
    if lexicon.ROLES & set(names):
        return False
    return (
        len(names) == 2
        and one.named > one.roles
        and one.places + one.others + one.placed == 0
        and bool(bare & set(names))
    )


def _is_role(words: Sequence[str], one: Evidence) -> bool:
    if (words[-1] in lexicon.KIN or words[-1] in GENERIC) and 2 * one.large < one.roles:
        return len(words) > 1 and words[0] not in COMMON and one.tags >= ROLE_TAGS and len(one.scenes) <= 2
    if words[-1] in lexicon.ROLES:
        return one.tags >= ROLE_TAGS
    return one.tags >= ROLE_TAGS and one.placed == 0


def _is_full(form: str) -> bool:
    return len(_parse(form)[1]) > 1


def _parse(form: str) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Titles and names of a form. A title alone is a name."""
    words = form.split()
    titles = [word for word in words[:-1] if word in lexicon.TITLES]
    return tuple(titles), tuple(words[len(titles) :])


def _home(form: str, groups: Iterable[_Group], seen: Gathered) -> _Group | None:
    """The person a form belongs to, among those made so far; None for a new one."""
    fits = [
        (fit, group.count, -number, group) for number, group in enumerate(groups) if (fit := _fit(form, group, seen))
    ]
    return max(fits, key=lambda one: one[:3])[3] if fits else None


def _fit(form: str, group: _Group, seen: Gathered) -> int:
    """How well a form fits a person; 0 where it does not."""
    titles, names = _parse(form)
    if _two(form, group, seen) or _genders_differ(form, group, seen):
        return 0
    if len(names) > 1:
        given = names[0] in group.given or (_familiar(group) and same_given(names[0], group.given))
        return 9 if given and names[-1] in group.surnames else 0
    name = names[0]
    if {"mrs", "miss"} <= set(titles) | group.titles and not group.given:
        return 0
    if (
        titles
        and titles[0] in MARRIED
        and group.full
        and not group.titles & MARRIED
        and not _answered(form, group, seen)
    ):
        return 0
    if titles and titles[0] in lexicon.PLAIN_TITLES and group.full and not _gender(group, seen):
        return 2 if name in group.surnames else 0
    if not titles:
        if name in group.given:
            return 8
        if _familiar(group) and same_given(name, group.given):
            return 4
        return 5 if name in group.surnames and _likely(form, group, seen) else 0
    if name in group.surnames:
        return 7 if set(titles) & group.titles or not group.titles else 6
    return 3 if name in group.given and titles[0] not in lexicon.PLAIN_TITLES else 0


def _answered(form: str, group: _Group, seen: Gathered) -> bool:
    """Whether the person answers where the form is called."""
    return sum(seen.answers.get(form, NONE)[other] for other in group.forms) >= BY_ANSWERS


def _familiar(group: _Group) -> bool:
    """Whether a short name can be the person's: Tom Lamb is not Sir Thomas, but his son."""
    return group.titles <= FAMILIAR


def _likely(form: str, group: _Group, seen: Gathered) -> bool:
    """A bare surname is a man's, or of a woman who is called so."""
    return _gender(group, seen) != "f" or seen.forms[form].pronouns["f"] > seen.forms[form].pronouns["m"]


def _two(form: str, group: _Group, seen: Gathered) -> bool:
    """Whether the book tells a form and a person apart; where one name holds the other, plainly so."""
    words = set(_parse(form)[1])
    held = free = 0
    for other in group.forms:
        theirs = set(_parse(other)[1])
        told = seen.apart.get(frozenset((form, other)), 0)
        if words < theirs or words > theirs:
            held += told
        else:
            free += told
    fewer = min(group.count, seen.forms[form].count)
    return free >= max(APART, 0.02 * fewer) or held >= max(APART_HELD, 0.1 * fewer)


def _genders_differ(form: str, group: _Group, seen: Gathered) -> bool:
    one, other = gender_of([form], seen), _gender(group, seen)
    return bool(one and other and one != other)


def _gender(group: _Group, seen: Gathered) -> Gender:
    return (group.known.gender if group.known else "") or gender_of(group.forms, seen)


def gender_of(forms: Sequence[str], seen: Gathered) -> Gender:
    """By titles and roles, then by the pronouns that follow."""
    given = {_parse(form)[1][0] for form in forms if _is_full(form)}
    forms = [*forms, *(name for name in given if name in seen.forms and name not in forms)]
    for form in forms:
        words = form.split()
        if words[0] in lexicon.FEMALE_TITLES or (len(words) == 1 and words[0] in lexicon.FEMALE_ROLES):
            return "f"
        if words[0] in lexicon.MALE_TITLES or (len(words) == 1 and words[0] in lexicon.MALE_ROLES):
            return "m"
        if seen.forms[form].roles and words[-1] in lexicon.FEMALE_ROLES | lexicon.MALE_ROLES:
            return "f" if words[-1] in lexicon.FEMALE_ROLES else "m"
    female = sum(seen.forms[form].pronouns["f"] for form in forms)
    male = sum(seen.forms[form].pronouns["m"] for form in forms)
    if abs(female - male) < GENDER_VOTES or max(female, male) < 1.5 * min(female, male):
        return ""
    return "f" if female > male else "m"


def _join(group: _Group, form: str, count: int) -> None:
    titles, names = _parse(form)
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


def _by_role(groups: list[_Group], seen: Gathered) -> None:
    """'The vicar' goes to the one Mr. X whom the book calls 'Mr. X, the vicar', 'the professor' to Professor Y."""
    alone = [group for group in groups if len(group.forms) == 1 and not group.known]
    for group in [group for group in alone if seen.forms[group.forms[0]].roles]:
        role = group.forms[0]
        titled = {role, *SAME_TITLE.get(role, ())}
        homes = {
            number: sum(seen.same.get(role, NONE)[form] for form in other.forms) + bool(titled & other.titles)
            for number, other in enumerate(groups)
            if other is not group and not _genders_differ(role, other, seen)
        }
        best = [number for number, votes in homes.items() if votes]
        if len(best) == 1 and not _two(role, groups[best[0]], seen):
            home = groups[best[0]]
            home.forms.append(role)
            home.count += group.count
            groups.remove(group)


SAME_TITLE = {
    "doctor": ("dr",),
    "professor": ("prof",),
    "captain": ("capt",),
    "colonel": ("col",),
    "sergeant": ("sgt",),
    "lieutenant": ("lieut",),
    "general": ("gen",),
    "reverend": ("rev",),
    "inspector": (),
    "judge": (),
}


def _by_answers(groups: list[_Group], seen: Gathered) -> None:
    """A name by which somebody is only ever called goes to whoever answers to it."""
    for group in sorted(groups, key=lambda group: group.count):
        evidence = [seen.forms[form] for form in group.forms]
        spoken, tags = sum(one.spoken for one in evidence), sum(one.tags for one in evidence)
        if group.known or group.narrator or tags or spoken < 0.8 * group.count:
            continue
        votes = {
            id(other): sum(_answer_votes(form, other, seen) for form in group.forms)
            for other in groups
            if other is not group and (other.narrator or other.count > group.count) and _can_be(group, other, seen)
        }
        best = max(votes, key=lambda key: votes[key], default=None)
        if best is not None and votes[best] >= BY_ANSWERS and 2 * votes[best] > sum(votes.values()):
            home = next(other for other in groups if id(other) == best)
            for form in group.forms:
                _join(home, form, seen.forms[form].count)
            groups.remove(group)


def _answer_votes(form: str, other: _Group, seen: Gathered) -> int:
    """How much somebody answers where a form is called; the narrator's answers are an I's."""
    answers = seen.answers.get(form, NONE)
    return sum(answers[theirs] for theirs in other.forms) + (answers[""] if other.narrator else 0)


def _can_be(group: _Group, other: _Group, seen: Gathered) -> bool:
    return not any(_two(form, other, seen) or _genders_differ(form, other, seen) for form in group.forms)


def _tell(groups: list[_Group], seen: Gathered) -> None:
    """The narrator: a name that is called where an I answers, and hardly used in the telling; else somebody unnamed."""
    best: _Group | None = None
    most = BY_ANSWERS - 1
    for group in groups:
        evidence = [seen.forms[form] for form in group.forms]
        told = sum(one.count - one.spoken for one in evidence)
        votes = sum(seen.answers.get(form, NONE)[""] for form in group.forms)
        if told <= 0.25 * group.count and votes > most:
            best, most = group, votes
    if best is None:
        best = _Group([])
        groups.append(best)
    best.narrator = True
    names = {name for form in best.forms for name in _parse(form)[1]}
    for group in [group for group in groups if group is not best and not group.known]:
        same = names & {name for form in group.forms for name in _parse(form)[1]}
        if same and all(seen.forms[form].spoken >= 0.75 * seen.forms[form].count for form in group.forms):
            for form in group.forms:
                _join(best, form, seen.forms[form].count)
            groups.remove(group)


def _is_shown(group: _Group, seen: Gathered) -> bool:
    """Those hardly named who never speak or sign are left out: most are no people."""
    return (
        bool(group.known)
        or group.narrator
        or group.count >= SHOWN
        or any(seen.forms[form].tags or seen.forms[form].signs for form in group.forms)
    )


def _person(group: _Group, seen: Gathered) -> Person:
    forms = sorted(group.forms, key=lambda form: (-seen.forms[form].count, form))
    name = _best_name(forms, seen) if forms else NARRATOR
    return Person(
        id=group.known.id if group.known else f"{READ}{name}",
        name=group.known.name if group.known else name,
        aliases=tuple(forms),
        gender=_gender(group, seen),
        narrator=group.narrator,
        mentions=group.count,
    )


def _best_name(forms: Sequence[str], seen: Gathered) -> str:
    """The fullest form among those that are not rare."""
    most = seen.forms[forms[0]].count
    usual = [form for form in forms if seen.forms[form].count >= 0.15 * most]
    return max(usual, key=lambda form: (len(_parse(form)[1]), seen.forms[form].count))
