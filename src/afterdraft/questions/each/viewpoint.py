"""Thoughts of somebody else within a scene that keeps to one person's."""

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence

from afterdraft.questions.check import Check
from afterdraft.questions.minds import Thought, is_known, is_shown, thoughts, told
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.whole.book import genders
from afterdraft.whole.evidence import told_by_i

SURE = 0.8  # of who thinks; lower, the wrong 'he' is most of what is asked on the tuning half
OWN = 3  # thoughts and perceptions of the viewpoint's own that a scene has at least; chosen on the tuning half
STRAYS = 0.3  # share of scenes with one more mind in them from which that is the manner of the book, likewise
FEW = 2  # thoughts of others in a scene whose viewpoint she marked; chosen on the demonstration book
LEAD = 4  # times as many as all others', likewise
CLEAN = 0.5  # share of scenes with anybody's mind in them that keep to one, below which the telling knows all


def find(seen: Seen) -> Iterator[Finding]:
    read, hers = _viewpoints(seen)
    keeps: dict[int, list[Thought]] = {}
    whose: dict[int, str] = {}
    minded = 0  # scenes that tell of somebody's mind
    for number in seen.scenes:
        minds = list(thoughts(seen, number))
        viewpoint = hers.get(number) or read.get(number) or _most(minds)
        minded += len(minds) >= OWN
        own = sum(one.person == viewpoint for one in minds)
        by_i = told_by_i(seen.facts[number])
        others = [
            one
            for one in minds
            if one.person != viewpoint
            and one.inward
            and one.sure >= SURE
            and is_known(seen, number, one, told_by_i=by_i)
        ]
        whose[number] = viewpoint or ""
        if viewpoint and own >= max(OWN, LEAD * len(others)):
            keeps[number] = others
        elif number in hers:
            keeps[number] = [one for one in others if _is_another(seen, number, one, viewpoint)][:FEW]
    strays = sum(bool(others) for number, others in keeps.items() if number not in hers)
    mostly = len(keeps) >= CLEAN * minded and strays <= max(1, STRAYS * len(keeps))
    for number, others in keeps.items():
        first = {one.person: one for one in reversed(others)}
        for one in first.values() if mostly or number in hers else ():
            yield _finding(seen, number, whose[number], one)


def _viewpoints(seen: Seen) -> tuple[Mapping[int, str], Mapping[int, str]]:
    """By scene whose it is: as reading found, and as she says."""
    read = {one.scene: one.person for one in seen.book.appearances if one.presence == "point of view"}
    return read, {scene: person for (scene, person), how in seen.marks.present.items() if how == "viewpoint"}


def _most(minds: Sequence[Thought]) -> str | None:
    """Whose thoughts most of a scene's are, by far."""
    ranked = Counter(one.person for one in minds).most_common(1)
    person, times = ranked[0] if ranked else ("", 0)
    return person if times >= max(OWN, LEAD * (len(minds) - times)) else None


def _is_another(seen: Seen, number: int, one: Thought, viewpoint: str | None) -> bool:
    """Whether a word tells that it is not the viewpoint's own: a name, 'he' where that is a 'she', or the viewpoint's
    name behind it in the sentence."""
    gender = genders(seen.book.cast.people).get(viewpoint or "", "")
    if one.mention.kind == "name" or (gender and one.mention.gender and gender != one.mention.gender):
        return True
    told = seen.texts[number][one.mention.paragraph]
    behind = told[one.mention.end : sentence(told, one.mention.start, one.mention.end)[1]]
    return any(name in behind for name in seen.name(viewpoint or "").split())


def _finding(seen: Seen, number: int, viewpoint: str, one: Thought) -> Finding:
    span = told(seen, number, one.mention)
    shown = is_shown(span.quote)
    return Finding(
        evidence=(span,),
        strength=0.5 if shown else 0.65,
        subject="viewpoint",
        words={"viewpoint": seen.name(viewpoint), "other": seen.name(one.person)},
        people=(viewpoint, one.person),
    )


CHECK = Check(
    id="viewpoint",
    name="Thoughts of somebody else",
    family="viewpoint",
    looks_at="A sentence that tells what somebody thinks or feels, in a scene that keeps to another's thoughts.",
    method="Whose scene it is comes from your marks, else from who thinks and perceives most. Verbs of thought "
    "outside speech are given to whoever is named or most likely meant. Only in books that mostly keep one "
    "viewpoint a scene, and only where others' thoughts are few against its own. The rule is our own.",
    blind="Thoughts without a verb of thought. What one person can see that another thinks. Books whose telling "
    "knows everybody's mind are not asked about.",
    reads=("words", "cast", "marks"),
    find=find,
    recipe=3,
)
