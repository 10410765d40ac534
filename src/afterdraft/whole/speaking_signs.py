"""Signs that somebody speaks a turn, by themselves and after those who spoke before; `speaking_weights` weighs them.

A sign begins with the kind of turn it is seen in: what stands beside the words (a pronoun, a role, an act, nothing).
"""

from bisect import bisect_left
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from afterdraft.whole.speaking import Heard
from afterdraft.whole.turns import Turn

FAR_BACK = 7  # turns that are looked back for when somebody last spoke
OF_GENDER = 4  # turns that are looked back for whom a pronoun can mean
Asked = tuple[int, bool, int]  # for one person: in which of the last turns they spoke, and what else `Before` has
SILENT: Asked = (0, False, 0)  # for whoever has not spoken for long
OFTEN = 7  # beyond 2 to the power of this, how often somebody is named tells no more
DISTANCES = (0, 1, 2, 3, 4, 4, 6, 6, 6)  # paragraphs since last named or speaking, as signs tell them
FURTHER = 9


def kind(turn: Turn) -> str:
    """What stands beside the words of a turn."""
    if turn.tag in ("named", "self"):
        return "told" if turn.plain else "act"
    if turn.tag == "none":
        return "none"
    return ("pronoun" if turn.tag == "pronoun" else "role") if turn.plain else "act"


def alone(person: str, number: int, seen: Heard) -> list[str]:
    """Signs for a person whoever spoke before."""
    turn = seen.turns[number]
    of = kind(turn)
    found = [
        f"{of} often {min(OFTEN, (1 + seen.counts[person]).bit_length())}",
        f"{of} recent {_rank(person, seen.recent[number])}",
        f"{of} acted {_rank(person, seen.acted[number])}",
    ]
    if turn.gender and turn.named is None:
        found += _gendered(person, number, seen, of)
    if person == seen.narrator:
        found.append(f"{of} narrator")
    if turn.tag in ("named", "self") and person == (turn.named or seen.narrator):
        found.append("act own")
    if person == turn.guess_before:
        found.append(f"{of} meant before")
    if person == turn.before:
        found.append(f"{of} acts before")
    if person == turn.beside and turn.tag == "none":
        found.append("none acts beside")
    if person in turn.around:
        found.append(f"{of} around")
    if person in turn.called:
        found.append("calls itself")
    if person in turn.spoken_of:
        found.append(f"{of} speaks of itself")
    for step in (-2, -1, 1):
        if person == seen.answering.get(turn.paragraph + step):
            found.append(f"{of} answers in {step}")
        elif person == seen.acting.get(turn.paragraph + step):
            found.append(f"{of} acts in {step}")
    return found


def _gendered(person: str, number: int, seen: Heard, of: str) -> list[str]:
    """Signs by the gender of the pronoun or role beside the words."""
    turn = seen.turns[number]
    known = seen.genders.get(person, "")
    found = [f"{of} gender {'unknown' if not known else 'same' if known == turn.gender else 'other'}"]
    if person == turn.guess:
        found.append(f"{of} meant")
    if person == turn.whose:
        found.append("role owns itself")
    for name, people in (("recent", seen.recent[number]), ("acted", seen.acted[number])):
        fitting = [one for one in people if seen.genders.get(one, "") in (turn.gender, "")]
        found.append(f"{of} {name} fitting {_rank(person, fitting)}")
    return found


def _rank(person: str, people: Sequence[str]) -> str:
    return str(people.index(person)) if person in people else "no"


@dataclass(frozen=True, slots=True)
class Before:
    """What is asked of those who spoke before a turn; made once a chain, it serves everybody."""

    spoke: Mapping[str, int]  # in which of the last turns each did, as bits: 1 in the last one, 2 in the one before
    by_turns: bool  # whether the last one spoke two turns earlier too
    of_gender: tuple[str, int]  # who of those the pronoun here can mean spoke last, and how many turns ago; ("", 0)

    def of(self, person: str) -> Asked:
        """For one person: where it is alike, so are the signs."""
        if person not in self.spoke:
            return SILENT
        who, back = self.of_gender
        return self.spoke[person], self.by_turns, back if who == person else 0


def before(number: int, speakers: Sequence[str | None], seen: Heard) -> Before:
    """`speakers` has who speaks each turn up to this one, and may go on."""
    spoke: dict[str, int] = {}
    for back, one in enumerate(reversed(speakers[max(0, number - FAR_BACK) : number])):
        if one:
            spoke[one] = spoke.get(one, 0) | 1 << back
    by_turns = number > 2 and speakers[number - 1] == speakers[number - 3]
    return Before(spoke, by_turns, _last_of_gender(number, speakers, seen))


def _last_of_gender(number: int, speakers: Sequence[str | None], seen: Heard) -> tuple[str, int]:
    turn = seen.turns[number]
    if not turn.gender or turn.named is not None:
        return "", 0
    for back in range(1, min(number, OF_GENDER) + 1):
        one = speakers[number - back]
        if one and seen.genders.get(one, "") == turn.gender:
            return one, back
    return "", 0


def in_chain(person: str, number: int, after: Asked, seen: Heard) -> list[str]:
    """Signs for a person after those who spoke before, as `Before.of` has it."""
    turn = seen.turns[number]
    of = kind(turn)
    spoke, by_turns, of_gender = after
    found = [f"{of} near {_nearness(person, number, spoke, seen)}"]
    if not number:
        return found
    last = seen.turns[number - 1]
    gap = min(4, turn.paragraph - last.paragraph)
    if spoke & 1:
        if turn.goes_on and gap <= 1:
            return [*found, "goes on"]
        between = seen.acting.get(turn.paragraph - 1) if gap == 2 else None
        found.append(f"{of} again {gap}{'' if between is None else ' own' if between == person else ' other'}")
    elif turn.goes_on and gap <= 1:
        found.append("breaks off")
    if gap <= 3 and person in last.called:
        found.append(f"{of} was called {gap}")
    if gap <= 2 and person in last.spoken_of:
        found.append(f"{of} was spoken of")
    if not spoke & 1:
        found += _turned_back(number, spoke, by_turns, seen)
    if of_gender:
        found.append(f"{of} last of gender {min(3, of_gender)}")
    return found


def _turned_back(number: int, spoke: int, by_turns: bool, seen: Heard) -> list[str]:
    """Whether the person spoke before the last one, and whether the two speak by turns."""
    of = kind(seen.turns[number])
    if spoke & 2:
        far = seen.turns[number].paragraph - seen.turns[number - 2].paragraph
        found = [f"{of} back {2 if far <= 2 else 5 if far <= 5 else 6}"]
        return [*found, f"{of} by turns"] if by_turns and far == 2 else found
    return [f"{of} third back"] if spoke & 4 else []


def _nearness(person: str, number: int, spoke: int, seen: Heard) -> str:
    """Paragraphs since the person was named or spoke."""
    here = seen.turns[number].paragraph
    places = seen.named.get(person, ())
    before_here = bisect_left(places, here)
    last = places[before_here - 1] if before_here else None
    if spoke:
        back = (spoke & -spoke).bit_length()  # turns since the last one of theirs
        last = max(last or 0, seen.turns[number - back].paragraph)
    if last is None:
        return "no"
    return str(DISTANCES[here - last] if here - last < len(DISTANCES) else FURTHER)
