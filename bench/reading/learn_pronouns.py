"""`python -m bench.reading.learn_pronouns`: writes `whole/pronoun_weights.py` anew from LitBank, the same each time.

Whom a pronoun means is one of those met before it, or nobody of them: a softmax over the sums of their signs, with a
ridge, on the train passages. First each history is the right one; then, twice, the one that the weights before give,
as it will be when a manuscript is read.
"""

from collections import Counter
from collections.abc import Mapping, Sequence
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from afterdraft.whole import pronouns
from afterdraft.whole.pronoun_cautions import Owner
from afterdraft.whole.pronoun_signs import Place, nobody, signs
from afterdraft.whole.pronoun_walk import walk
from bench.measures.learn import MEMORY
from bench.reading.pronouns import Known, known
from bench.weights_module import module

RIDGE = 2.0
SEEN = 4  # times that a sign must occur
ROUNDS = 2  # after the first
STEPS, STEP = 300, 0.05
TARGET = Path(pronouns.__file__).with_name("pronoun_weights.py")
Instance = tuple[list[list[str]], int]  # signs of each who may be meant, nobody the last; which is right
Weights = dict[str, float]


def main() -> None:
    train = known("train")
    found = learned(train)
    TARGET.write_text(module(_TOLD, found), encoding="utf-8")
    print(f"{len(found)} signs")


def learned(train: Sequence[Known]) -> Weights:
    found = fitted([one for each in train for one in instances(each, None)])
    for _ in range(ROUNDS):
        found = fitted([one for each in train for one in instances(each, found)])
    return {sign: rounded for sign, weight in found.items() if (rounded := round(weight, 2))}


def instances(one: Known, weights: Mapping[str, float] | None) -> list[Instance]:
    """Each pronoun of which it is known whom it means; the history is right where there are no weights."""
    found: list[Instance] = []
    told = {number for number, _ in one.pronouns()}

    def choose(place: Place) -> Owner | None:
        number = place.number
        at = _right(one, number, place)
        rows = [*(signs(place, rank) for rank in range(len(place.near))), nobody(place)]
        if number in told:
            found.append((rows, at))
        if weights is not None:
            at = max(range(len(rows)), key=lambda row: sum(weights.get(sign, 0.0) for sign in rows[row]))
        return (place.near[at].id, 1.0) if at < len(place.near) else None

    walk(one.scene, one.people, one.spoken, one.cast, choose)
    return found


def _right(one: Known, number: int, place: Place) -> int:
    """Which of those near it means; beyond them for nobody."""
    for rank, each in enumerate(place.near):
        who = one.same.get(each.id) if each.of_cast else _stranger(one, number, each.id)
        if who and who == one.right[number]:
            return rank
    return len(place.near)


def _stranger(one: Known, number: int, id: str) -> str | None:
    """Whom of the corpus the last one means whom a role or pronoun told of."""
    for place in range(number - 1, -1, -1):
        each = one.scene.mentions[place]
        if (
            not each.spoken
            and not one.people[place]
            and id in (f"{each.kind} {each.form}", f"{each.gender} who is meant")
        ):
            return one.right[place]
    return None


def fitted(some: Sequence[Instance]) -> Weights:
    often = Counter(sign for rows, _ in some for row in rows for sign in row)
    names = sorted(sign for sign, times in often.items() if times >= SEEN)
    numbers = {sign: number for number, sign in enumerate(names)}
    flat = [row for rows, _ in some for row in rows]
    at = np.array([place for place, row in enumerate(flat) for sign in row if sign in numbers])
    sign = np.array([numbers[sign] for row in flat for sign in row if sign in numbers])
    of = np.array([number for number, (rows, _) in enumerate(some) for _ in rows])
    right = np.array([row == which for rows, which in some for row in range(len(rows))], dtype=np.float64)
    return dict(zip(names, _descended(at, sign, of, right, len(names)).tolist(), strict=True))


def _descended(
    at: NDArray[np.int64], sign: NDArray[np.int64], of: NDArray[np.int64], right: NDArray[np.float64], signs: int
) -> NDArray[np.float64]:
    """Adam (Kingma & Ba 2015), by which it has settled."""
    starts = np.flatnonzero(np.diff(of, prepend=-1))
    found, mean, square = np.zeros((3, signs))
    for step in range(1, STEPS + 1):
        scores = np.bincount(at, found[sign], len(of))
        likely = np.exp(scores - np.maximum.reduceat(scores, starts)[of])
        likely /= np.add.reduceat(likely, starts)[of]
        slope = np.bincount(sign, (likely - right)[at], signs) + RIDGE * found
        mean = MEMORY[0] * mean + (1 - MEMORY[0]) * slope
        square = MEMORY[1] * square + (1 - MEMORY[1]) * slope**2
        size = STEP * 0.5 * (1 + np.cos(np.pi * step / STEPS))
        found = found - size * (mean / (1 - MEMORY[0] ** step)) / (np.sqrt(square / (1 - MEMORY[1] ** step)) + 1e-8)
    return found


_TOLD = """How much each sign of whom a pronoun means weighs: by `python -m bench.reading.learn_pronouns`.

Learned from the train passages of LitBank (David Bamman and others, CC BY 4.0; `NOTICES.md`). A weight is what the
sign adds to the natural logarithm of how likely that one is, beside the others.
"""

if __name__ == "__main__":
    main()
