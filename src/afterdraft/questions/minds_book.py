"""With whom a book goes: whose thoughts its scenes tell, and whether it keeps to one mind a scene."""

from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping, Sequence

from afterdraft.questions.minds import SURE, Thought, teller
from afterdraft.questions.seen import Seen

ONE, SEVERAL = 1, 0.05  # scenes that have two minds, and their share, above which the telling knows everybody's
TWICE, GOES = (
    2,
    0.1,
)  # scenes with somebody's thoughts, and their share of all with any, from which the book goes with it
LIKELY = 0.6  # of whose a thought is that only counts for or against; chosen by hand, as the others
LEADS = 1.5  # thoughts, each as much as it is sure, from which somebody leads a scene

Minds = Mapping[int, Sequence[Thought]]  # by scene


def knows_all(seen: Seen, minds: Minds, share: float = SEVERAL) -> bool:
    """Whether the telling goes from mind to mind within more than this share of scenes."""
    known = [
        {one.person for one in here if one.known and one.person and (one.plain or one.sure >= SURE)}
        for number, here in minds.items()
        if not teller(seen, number)
    ]
    return sum(len(one) > 1 for one in known) > max(ONE, share * sum(bool(one) for one in known))


def goes_with(minds: Minds) -> set[str]:
    """Those who think or perceive in several scenes."""
    times = Counter(who for here in minds.values() for who in {one.person for one in _likely(here)})
    least = max(TWICE, GOES * sum(bool(here) for here in minds.values()))
    return {who for who, some in times.items() if some >= least}


def known_in(minds: Minds) -> Mapping[str, set[int]]:
    """By person the scenes that tell a thought of theirs as known."""
    found: defaultdict[str, set[int]] = defaultdict(set)
    for number, here in minds.items():
        for one in _likely(here):
            if one.known:
                found[one.person].add(number)
    return found


def leads(minds: Minds) -> dict[int, str]:
    """By scene who thinks and perceives most in it."""
    found = {}
    for number, here in minds.items():
        weights: defaultdict[str, float] = defaultdict(float)
        for one in _likely(here):
            weights[one.person] += one.sure
        if weights and max(weights.values()) >= LEADS:
            found[number] = max(weights, key=lambda who: weights[who])
    return found


def _likely(here: Sequence[Thought]) -> Iterator[Thought]:
    return (one for one in here if one.person and one.sure >= LIKELY and one.mention.kind != "self")
