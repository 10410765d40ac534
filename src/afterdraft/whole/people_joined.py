"""Who is joined by more than names: by a role, by answering, by telling."""

from afterdraft.reading import lexicon
from afterdraft.whole.evidence import Gathered
from afterdraft.whole.people import BY_ANSWERS, NONE, Group, are_two, genders_differ, join
from afterdraft.whole.people_names import MARRIED, is_full, parse

BESIDE = 5  # times that a title is borne, which a role right behind a name counts for
ENOUGH = 0.03  # of a role's mentions, for which something must speak: one list of names misread is not enough
TOLD = 0.25  # share of the mentions of the names that an I answers to, up to which they may stand in the telling
FAR_MORE = 3  # times as much that must speak for one person as for any other who may be meant by a role
GIVEN_TITLES = frozenset({"miss", "master", "mistress", "sir", "brother", "sister"})  # go with a given name too
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


def by_role(groups: list[Group], seen: Gathered) -> None:
    """'The vicar' goes to the one Mr. X whom the book calls 'Mr. X, the vicar', 'the professor' to Professor Y.

    Where several could be meant, to the one for whom far more speaks than for any other.
    """
    alone = [group for group in groups if len(group.forms) == 1 and not group.known]
    for group in [group for group in alone if _is_office(group.forms[0], seen)]:
        role = group.forms[0]
        homes = [other for other in groups if other is not group and not genders_differ(role, other, seen)]
        votes = sorted(((_role_votes(role, other, seen), -number) for number, other in enumerate(homes)), reverse=True)
        next_best = votes[1][0] if len(votes) > 1 else 0
        if not votes or votes[0][0] <= max(FAR_MORE * next_best, ENOUGH * group.count):
            continue
        home = homes[-votes[0][1]]
        if not are_two(role, home, seen):
            home.forms.append(role)
            home.count += group.count
            groups.remove(group)


def by_marriage(groups: list[Group], seen: Gathered) -> None:
    """Mina Wren and Mina Pike are one where there is a Mrs. Pike, and both are mostly called Mina."""
    for wife in [group for group in groups if "mrs" in group.titles and group.full and not group.known]:
        maids = [group for group in groups if group is not wife and _may_have_married(group, wife, seen)]
        if len(maids) == 1:
            for form in maids[0].forms:
                join(wife, form, seen.forms[form].count)
            groups.remove(maids[0])


def _may_have_married(maid: Group, wife: Group, seen: Gathered) -> bool:
    if maid.known or not maid.full or maid.titles & MARRIED or maid.surnames & wife.surnames:
        return False
    fuller = max(seen.forms[form].count for form in (*maid.forms, *wife.forms) if is_full(form))
    shared = (name for name in maid.given & wife.given if name in seen.forms)
    return any(seen.forms[name].count >= fuller for name in shared) and _can_be(maid, wife, seen)


def _is_office(form: str, seen: Gathered) -> bool:
    """Whether a form tells only what somebody is: 'the vicar', 'the Chief Inspector'."""
    return seen.forms[form].roles > 0 or (" " in form and lexicon.TITLES.issuperset(form.split()))


def _role_votes(role: str, other: Group, seen: Gathered) -> int:
    """How often a role stands behind somebody's name, and somebody bears it as a title."""
    titled = {role, *SAME_TITLE.get(role, ())} if " " not in role else set(role.split())
    beside = sum(seen.same.get(role, NONE)[form] for form in other.forms)
    borne = ((form, titled & set(parse(form)[0])) for form in other.forms)
    bears = sum(seen.forms[form].count for form, held in borne if held and (" " not in role or held == titled))
    return BESIDE * beside + bears


def by_answers(groups: list[Group], seen: Gathered) -> None:
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
                join(home, form, seen.forms[form].count)
            groups.remove(group)


def _answer_votes(form: str, other: Group, seen: Gathered) -> int:
    """How much somebody answers where a form is called; the narrator's answers are an I's."""
    answers = seen.answers.get(form, NONE)
    return sum(answers[theirs] for theirs in other.forms) + (answers[""] if other.narrator else 0)


def _can_be(group: Group, other: Group, seen: Gathered) -> bool:
    if _is_styled(group) and _is_styled(other) and not _names(group) & _names(other):
        return False
    return not any(are_two(form, other, seen) or genders_differ(form, other, seen) for form in group.forms)


def _is_styled(group: Group) -> bool:
    """Whether somebody has a title that goes with a surname; a wife's may be new."""
    return bool(group.titles - lexicon.KIN - GIVEN_TITLES) and not group.titles & MARRIED


def _names(group: Group) -> set[str]:
    return {name for form in group.forms for name in parse(form)[1]}


def _can_join(group: Group, best: Group, seen: Gathered) -> bool:
    """Whether a narrator can be somebody: nobody's wife where they are none."""
    wife = bool(group.titles & MARRIED) and not best.titles & MARRIED
    return not wife and not any(genders_differ(form, best, seen) for form in group.forms)


def tell(groups: list[Group], seen: Gathered) -> None:
    """The narrator: a name that is called where an I answers, and hardly used in the telling; else somebody unnamed."""
    best: Group | None = None
    most = BY_ANSWERS - 1
    for group in groups:
        answered = [form for form in group.forms if seen.answers.get(form, NONE)[""]]
        evidence = [seen.forms[form] for form in answered]
        told, count = sum(one.count - one.spoken for one in evidence), sum(one.count for one in evidence)
        votes = sum(seen.answers[form][""] for form in answered)
        if told <= TOLD * count and votes > most:
            best, most = group, votes
    if best is None:
        best = Group([])
        groups.append(best)
    best.narrator = True
    names = _names(best)
    for group in [group for group in groups if group is not best and not group.known]:
        same = names & _names(group)
        if (
            same
            and _can_join(group, best, seen)
            and all(seen.forms[form].spoken >= 0.75 * seen.forms[form].count for form in group.forms)
        ):
            for form in group.forms:
                join(best, form, seen.forms[form].count)
            groups.remove(group)
