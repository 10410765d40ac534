"""How notes and changes went in a round, in counts: from how they stood when a draft came in to how they stood next."""

from collections.abc import Mapping
from collections.abc import Set as AbstractSet
from dataclasses import dataclass

States = Mapping[str, str]  # by id: "open", "done", "dropped"


@dataclass(frozen=True, slots=True)
class Went:
    opened: int  # made in the round
    done: int  # in the round
    dropped: int  # in the round, or taken away
    carried: int  # still open at its end


def went(before: States, after: States) -> Went:
    """What was done or dropped and opened again within the round counts by how it ended."""

    def came(state: str) -> int:
        return sum(now == state and before.get(one) != state for one, now in after.items())

    away = sum(one not in after and state == "open" for one, state in before.items())
    return Went(
        opened=sum(one not in before for one in after),
        done=came("done"),
        dropped=came("dropped") + away,
        carried=sum(state == "open" for state in after.values()),
    )


@dataclass(frozen=True, slots=True)
class Asked:
    """Questions of two drafts one behind the other, whether they were answered or not."""

    new: int
    standing: int  # of both
    gone: int


def asked(before: AbstractSet[str], after: AbstractSet[str]) -> Asked:
    """By fingerprint: a question is the same where its evidence reads the same."""
    return Asked(len(after - before), len(before & after), len(before - after))
