"""How long somebody is dead, told in two ways that cannot both be; and ages of the dead that make no sum."""

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from itertools import combinations

from afterdraft.questions.check import Check
from afterdraft.questions.dead_for import Said, What, said_of_the_dead
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.years_between import years_between

UNSAID = 0.5  # years that may pass between two scenes of which nothing tells; chosen by hand
BIRTHDAY = 1.0  # years by which a sum of whole years may be out
STEP = 0.01

_Dead = Mapping[str, Mapping[What, Sequence[Said]]]


def find(seen: Seen) -> Iterator[Finding]:
    said = list(said_of_the_dead(seen))
    dead: defaultdict[str, defaultdict[What, list[Said]]] = defaultdict(lambda: defaultdict(list))
    for one in said:
        if one.who and one.what != "would be":
            dead[one.who][one.what].append(one)
    for told in dead.values():
        yield from _apart(seen, sorted([*told["since"], *told["gone"]], key=lambda one: (one.scene, one.paragraph)))
        yield from _two_ages(seen, told["died at"])
    for one in said:
        if one.what == "would be":
            yield from _no_sum(seen, one, dead)


def _apart(seen: Seen, since: Sequence[Said]) -> Iterator[Finding]:
    """The first two that cannot both be."""
    for one, other in combinations(since, 2):
        first, second = (seen.story.scenes[each.scene] for each in (one, other))
        if (one.scene, one.paragraph) == (other.scene, other.paragraph) or first.flashback != second.flashback:
            continue
        least, most = years_between(seen, one.scene, other.scene, unsaid=UNSAID)
        if one.years[1] + most < other.years[0] - STEP or other.years[1] < one.years[0] + least - STEP:
            words = {"name": one.name, "first": one.words, "other": other.words}
            words |= {"gone": "gone"} if "gone" in (one.what, other.what) else {}
            yield Finding((_span(seen, one), _span(seen, other)), 0.75, f"time since {one.who} died", words)
            return


def _two_ages(seen: Seen, died: Sequence[Said]) -> Iterator[Finding]:
    for one, other in combinations(died, 2):
        if one.years != other.years:
            ages = {"first": one.years[0], "other": other.years[0]}
            words = {"name": one.name}
            yield Finding((_span(seen, one), _span(seen, other)), 0.75, f"age of {one.who} at death", words, ages)
            return


def _no_sum(seen: Seen, would: Said, dead: _Dead) -> Iterator[Finding]:
    """'He would have been forty-seven' against how old he died and how long ago; where the sentence does not tell who
    that is, of the only one of whom both are told."""
    counted = {who: told for who, told in dead.items() if told["died at"] and told["since"]}
    fitting = [who for who, told in counted.items() if _gender(told) in ("", would.gender)]
    who = would.who if would.who in counted else fitting[0] if len(fitting) == 1 and would.who not in dead else ""
    if not who:
        return
    age, since = counted[who]["died at"][0], counted[who]["since"][0]
    least, most = years_between(seen, *sorted((since.scene, would.scene)), unsaid=UNSAID)
    low, high = age.years[0] + since.years[0] + least, age.years[0] + since.years[1] + most
    if not low - BIRTHDAY <= would.years[0] <= high + BIRTHDAY:
        years = round(sum(since.years) / 2 - 0.2 + least)  # 'three years' is from two and a half to nearly four
        spans = dict.fromkeys((*sorted({_span(seen, age), _span(seen, since)}), _span(seen, would)))
        words = {"name": age.name, "would": would.words, "since": since.words}
        yield Finding(
            tuple(spans), 0.75, f"age {who} would be", words, {"age": age.years[0], "sum": age.years[0] + years}
        )


def _gender(told: Mapping[What, Sequence[Said]]) -> str:
    return next((one.gender for each in told.values() for one in each if one.gender), "")


def _span(seen: Seen, one: Said) -> Span:
    return seen.sentence(seen.span(one.scene, one.paragraph, one.start, one.end))


CHECK = Check(
    id="time since death",
    name="How long somebody is dead",
    family="continuity",
    looks_at="Two passages that tell how long ago somebody died, or how old they died, and cannot both be so; an age "
    "that somebody dead would have, which is not the sum of the two; and how long ago the fire was, or the accident.",
    method="‘Died three years ago’, ‘dead these five years’, ‘this very spring’, ‘lain two winters’, ‘gone nine "
    "years’, ‘a widow for ten’, in telling, talk and letters, of a name, of ‘her husband’ and the like, or of the ‘he’ "
    "or ‘she’ behind; half a year is granted where nothing tells how much time passes between, more of tens and fives "
    "and where it is said to be about so. The rules are our own.",
    blind="Brothers, aunts and other kin without a name, times counted from a death that is not in the same sentence, "
    "and years of birth and death.",
    reads=("words", "cast", "time"),
    find=find,
    recipe=6,
)
