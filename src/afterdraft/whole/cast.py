"""The cast: which forms of names mean people, and which mean the same one.

Names are taken in the order of how full and how frequent they are; each joins the person it fits best, unless the
book tells that the two are two ('A and B', both speaking by turns, one speaking of the other).
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from afterdraft.reading.facts import Gender, SceneFacts
from afterdraft.whole.evidence import Gathered, gathered
from afterdraft.whole.given import NOTHING, Given, GivenPerson
from afterdraft.whole.headed import names_over
from afterdraft.whole.people import Group, gender, home_of, join
from afterdraft.whole.people_joined import by_answers, by_marriage, by_role, tell
from afterdraft.whole.people_names import core, fills_out, is_part, is_person, is_rank, parse

NARRATOR = "the narrator"
READ = "read:"  # how the id of somebody begins whom only reading knows
OF_SCENES = 0.34  # share of the scenes told by an I from which the narrator is a person of the cast
SHOWN = 3  # mentions from which somebody who never speaks is shown


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


def find_cast(scenes: Sequence[SceneFacts], given: Given = NOTHING, heads: Sequence[Sequence[str]] = ()) -> Cast:
    """Everybody in the book, those named most first; whom the writer gave stand in it, and own the forms given. `heads`
    has for each scene the lines of the heading right over it."""
    seen = gathered(scenes)
    owned = {form for person in given.people for form in person.forms}
    cores = {form: core(form, seen.forms) for form in seen.forms if form not in owned | given.nobody}
    free = {form: seen.forms[form] for form, inner in cores.items() if form == inner}
    kept = {form: one for form, one in free.items() if is_person(form, one)}
    bare = {name for form in {*kept, *owned} for name in parse(form)[1]}
    kept |= {form: one for form, one in free.items() if fills_out(form, one, bare)}
    parts = {form: one for form, one in free.items() if form not in kept and is_part(form, one, bare)}
    groups = [_own(person, seen) for person in given.people]
    for form in sorted(kept, key=lambda form: (-_fullness(form, kept[form].count), -kept[form].count, form)):
        home = home_of(form, groups, seen)
        if home is None:
            home = Group([])
            groups.append(home)
        join(home, form, kept[form].count)
    for form in sorted(parts, key=lambda form: (-parts[form].count, form)):
        home = home_of(form, groups, seen)
        if home is not None:
            join(home, form, parts[form].count)
    by_marriage(groups, seen)
    _around(groups, cores, seen)
    _by_role(groups, [form for form, one in free.items() if form not in kept and is_rank(form, one)], seen)
    if _has_narrator(groups, seen, heads):
        tell(groups, seen)
    by_answers(groups, seen)
    groups = [group for group in groups if _is_shown(group, seen)]
    groups.sort(key=lambda group: (-group.count, group.forms[:1]))
    people = [_person(group, seen) for group in groups]
    by_form = {form: person.id for person in people for form in person.aliases}
    by_form |= {form: person.id for person in given.people for form in person.forms}
    return Cast(tuple(people), by_form, tuple(sorted(owned - seen.forms.keys())))


def _has_narrator(groups: Sequence[Group], seen: Gathered, heads: Sequence[Sequence[str]]) -> bool:
    """Whether scenes that an I tells, and under no name, are enough for a narrator whom the writer has not named."""
    over = names_over(heads, {form for group in groups for form in group.forms})
    selves = sum(not (over and over[number]) for number in seen.selves)
    return selves >= max(1, OF_SCENES * seen.scenes) and not any(group.narrator for group in groups)


def _fullness(form: str, count: int) -> int:
    """How many names a form tells together, up to three: the fullest first, since parts of it find their home by it."""
    names = len(parse(form)[1])
    return names if names < 3 or count > 1 else 2


def _by_role(groups: list[Group], ranks: Sequence[str], seen: Gathered) -> None:
    """Roles go to whom they mean; of `ranks` only those that mean somebody are of the cast."""
    waiting = [Group([]) for _ in ranks]
    for group, form in zip(waiting, ranks, strict=True):
        join(group, form, seen.forms[form].count)
    groups += waiting
    by_role(groups, seen)
    groups[:] = [group for group in groups if all(group is not one for one in waiting)]


def _around(groups: Sequence[Group], cores: Mapping[str, str], seen: Gathered) -> None:
    """Forms that hold a name and no more go to whose it is."""
    homes = {form: group for group in groups for form in group.forms}
    for form, inner in cores.items():
        if form != inner and inner in homes:
            homes[inner].forms.append(form)
            homes[inner].count += seen.forms[form].count


def _own(person: GivenPerson, seen: Gathered) -> Group:
    """Somebody of the writer's; names that stand nowhere still say what other forms may be theirs."""
    group = Group([], narrator=person.narrator, known=person)
    for form in person.forms:
        join(group, form, seen.forms[form].count if form in seen.forms else 0)
    group.forms = [form for form in group.forms if form in seen.forms]
    return group


def _is_shown(group: Group, seen: Gathered) -> bool:
    """Those hardly named who never speak or sign are left out: most are no people."""
    return (
        bool(group.known)
        or group.narrator
        or group.count >= SHOWN
        or any(seen.forms[form].tags or seen.forms[form].signs for form in group.forms)
    )


def _person(group: Group, seen: Gathered) -> Person:
    forms = sorted(group.forms, key=lambda form: (-seen.forms[form].count, form))
    name = _best_name(forms, seen) if forms else NARRATOR
    return Person(
        id=group.known.id if group.known else f"{READ}{name}",
        name=group.known.name if group.known else name,
        aliases=tuple(forms),
        gender=gender(group, seen),
        narrator=group.narrator,
        mentions=group.count,
    )


def _best_name(forms: Sequence[str], seen: Gathered) -> str:
    """The fullest form among those that are not rare."""
    most = seen.forms[forms[0]].count
    usual = [form for form in forms if seen.forms[form].count >= 0.15 * most]
    return max(usual, key=lambda form: (len(parse(form)[1]), seen.forms[form].count))
