"""What kind of fault a wrongly attributed quotation is: where on the way from the words to the speaker it went wrong.

Kinds are about the program's steps, never about a novel: counted, they say which step to mend next.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from afterdraft.reading.facts import Mention, SceneFacts
from afterdraft.whole.speaking import Heard
from afterdraft.whole.turns import Turn

FAR = 2  # paragraphs between turns from which a turn begins a run


@dataclass(frozen=True, slots=True)
class Case:
    """A wrong quotation as the program saw it; people are ids of the program's cast."""

    kind: str  # by the corpus: Explicit, Anaphoric, Implicit, ""
    nobody: bool  # a group or somebody unknowable speaks
    known: bool  # somebody of the program's cast bears a name of the speaker's
    shared: bool  # the stretch holds words of two speakers
    speaker: str | None  # the right person
    said: str | None  # whom the program took
    scene: SceneFacts
    seen: Heard
    number: int  # of the turn
    chain: Sequence[str | None]  # speakers by the program
    right: Sequence[bool]  # which turns of the chain are right

    @property
    def turn(self) -> Turn:
        return self.seen.turns[self.number]


def fault(case: Case | None) -> str:
    """The kind of fault; None stands for a quotation that was not found."""
    if case is None:
        return "words not found as speech"
    if case.nobody:
        return "a group or nobody knowable speaks, a person is named"
    if case.shared:
        return "one stretch found where two speak"
    if case.speaker is None:
        return "speaker's name is held for another's" if case.known else "speaker not in the cast"
    if case.speaker not in case.seen.named and case.speaker != case.seen.narrator:
        return "speaker not named in the scene"
    if case.kind == "Explicit":
        return _explicit(case)
    return _anaphoric(case) if case.kind == "Anaphoric" else _implicit(case)


def _tagged(case: Case) -> Mention | None:
    """The mention that the turn's tag holds on to."""
    quotes = [case.scene.quotes[place] for place in case.turn.quotes]
    places = [(quote.plain, quote.tag) for quote in quotes if quote.tag is not None]
    best = max(places, key=lambda one: one[0], default=None)
    return case.scene.mentions[best[1]] if best and best[1] is not None else None


def _explicit(case: Case) -> str:
    turn, tag = case.turn, _tagged(case)
    if tag is None:
        return "name beside the words: no tag seen"
    if tag.kind == "self":
        return "name beside the words: 'I' taken"
    if tag.kind == "pronoun":
        return "name beside the words: a pronoun taken"
    if turn.named is None:
        return "name beside the words: tag's name or role not in the cast"
    if not turn.plain:
        return "name beside the words: no verb of speech seen"
    return "name beside the words: another name taken, or it is another's"


def _anaphoric(case: Case) -> str:
    turn, tag = case.turn, _tagged(case)
    if tag is None:
        return "pronoun or role beside the words: no tag seen"
    if tag.kind == "self":
        return "pronoun or role beside the words: 'I' taken, or the narrator is another"
    if turn.named is not None:
        return "pronoun or role beside the words: a name taken"
    if tag.kind != "pronoun":
        return "role beside the words not tied to a person"
    if not turn.plain:
        return "pronoun beside the words: no verb of speech seen"
    known = case.seen.genders.get(case.speaker or "", "")
    if known != tag.gender:
        return "pronoun of a tag: the speaker's gender " + ("unknown" if not known else "taken for the other")
    if case.speaker == turn.guess:
        return "pronoun of a tag: guessed right, outweighed by the turns"
    return "pronoun of a tag: somebody else of that gender" + (" guessed" if case.said == turn.guess else " by turns")


def _implicit(case: Case) -> str:
    turn = case.turn
    if turn.tag != "none" and turn.plain:
        return "nothing beside the words: a tag seen"
    if case.said in (turn.beside, turn.before, turn.named):
        return "nothing beside the words: who acts in the paragraph taken"
    if case.speaker in (turn.beside, turn.before, turn.named):
        return "nothing beside the words: who acts in the paragraph not taken"
    if not case.number or turn.paragraph - case.seen.turns[case.number - 1].paragraph > FAR:
        return "nothing beside the words: first of a run"
    if not all(case.right[max(0, case.number - 2) : case.number]):
        return "nothing beside the words: a fault carried on"
    if case.said == case.chain[case.number - 1]:
        return "nothing beside the words: the same speaker again"
    if case.number > 1 and case.said == case.chain[case.number - 2]:
        return "nothing beside the words: turn given back where another speaks"
    return "nothing beside the words: a third taken"
