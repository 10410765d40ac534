"""What the whole book tells of each form of a name: how often, doing what, beside whom."""

from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from itertools import pairwise

from afterdraft.reading.facts import Mention, SceneFacts

SIGNED = 2  # closing paragraphs in which a signature may stand: a name, a postscript
LOVING = 4  # words of a signature besides the name: 'Your ever loving friend'


@dataclass(slots=True)
class Evidence:
    """Counts for one form."""

    named: int = 0  # with a capital, not after 'the'
    roles: int = 0  # after 'the'
    large: int = 0  # of these, written with a capital
    spoken: int = 0
    called: int = 0
    subject: int = 0
    speaks: int = 0  # subject of a verb of speech
    tags: int = 0  # named beside a quotation as its speaker
    people: int = 0  # taken for a person by the pipeline
    places: int = 0
    others: int = 0
    placed: int = 0
    first: int = 0  # where the capital says nothing
    signs: int = 0  # scenes told by an I that close with it
    scenes: set[int] = field(default_factory=set)
    pronouns: Counter[str] = field(default_factory=Counter)  # gender of the pronouns that follow

    @property
    def count(self) -> int:
        return self.named + self.roles


@dataclass(frozen=True, slots=True)
class Gathered:
    forms: Mapping[str, Evidence]
    apart: Mapping[frozenset[str], int]  # how much speaks for two forms being two people
    same: Mapping[str, Counter[str]]  # role: names it stands beside ('Mr. X, the vicar')
    answers: Mapping[str, Counter[str]]  # form that is called: forms that speak right before or after, "" for 'I'
    selves: tuple[int, ...]  # scenes that an I tells and nobody signs
    scenes: int


def gathered(scenes: Sequence[SceneFacts]) -> Gathered:
    """All evidence of the book, from the facts of its scenes in order."""
    forms: defaultdict[str, Evidence] = defaultdict(Evidence)
    apart: Counter[frozenset[str]] = Counter()
    answers: defaultdict[str, Counter[str]] = defaultdict(Counter)
    same: defaultdict[str, Counter[str]] = defaultdict(Counter)
    for number, scene in enumerate(scenes):
        _count(scene, number, forms)
        _part(scene, apart)
        _answer(scene, answers)
        for one, other in pairwise(scene.mentions):
            if other.apposed and one.kind == "name" and not other.owned:
                same[other.form][one.form] += 1
    signed = {number: signature(scene) for number, scene in enumerate(scenes) if told_by_i(scene)}
    for mention in filter(None, signed.values()):
        forms[mention.form].signs += 1
    selves = tuple(number for number, mention in signed.items() if mention is None)
    return Gathered(forms, apart, same, answers, selves, len(scenes))


def told_by_i(scene: SceneFacts) -> bool:
    """Whether an I tells the scene: outside speech, 'I' and 'my' are no rarity among those who are meant."""
    selves = sum(one.kind == "self" and not one.spoken for one in scene.mentions)
    others = sum(one.kind == "pronoun" and not one.spoken for one in scene.mentions)
    return selves > 4 and selves > 0.15 * (selves + others)  # chosen on the tuning half: others stay below 0.05


def signature(scene: SceneFacts) -> Mention | None:
    """The name with which a scene closes as letters do: it ends a short paragraph that says little else."""
    closing = range(scene.paragraphs - 1, max(0, scene.paragraphs - 1 - SIGNED), -1)
    for number in closing:
        here = [one for one in scene.mentions if one.paragraph == number and one.kind != "self"]
        if len(here) == 1 and _is_alone(here[0], scene.counted[number].words):
            return here[0]
    return None


def _is_alone(one: Mention, words: int) -> bool:
    """Whether a name stands for itself in a paragraph of so many words."""
    free = one.kind == "name" and not (one.spoken or one.subject or one.called)
    return free and words <= LOVING + len(one.form.split())


def _count(scene: SceneFacts, number: int, forms: defaultdict[str, Evidence]) -> None:
    for mention, after in pairwise((*scene.mentions, None)):
        if mention is None or mention.kind not in ("name", "role") or mention.owned:
            continue
        evidence = forms[mention.form]
        evidence.named += mention.kind == "name"
        evidence.roles += mention.kind == "role"
        evidence.large += mention.kind == "role" and mention.large
        evidence.scenes.add(number)
        for name in ("spoken", "called", "subject", "speaks", "placed", "first"):
            setattr(evidence, name, getattr(evidence, name) + getattr(mention, name))
        evidence.people += mention.entity == "person"
        evidence.places += mention.entity == "place"
        evidence.others += mention.entity == "other"
        if after and after.kind == "pronoun" and _follows(mention, after):
            evidence.pronouns[after.gender] += 1
    for tagged in _tagged(scene):
        if tagged.kind in ("name", "role") and not tagged.owned:
            forms[tagged.form].tags += 1


def _follows(mention: Mention, after: Mention) -> bool:
    return (
        mention.paragraph == after.paragraph
        and mention.spoken == after.spoken
        and not (mention.joined or mention.called)
    )


def _tagged(scene: SceneFacts) -> Iterator[Mention]:
    return (scene.mentions[quote.tag] for quote in scene.quotes if quote.tag is not None and quote.plain)


def _part(scene: SceneFacts, apart: Counter[frozenset[str]]) -> None:
    """Two joined by 'and'; two who speak by turns; one who speaks of the other or to the other."""
    named = [mention for mention in scene.mentions if mention.kind in ("name", "role") and not mention.owned]
    for one, other in pairwise(named):
        if other.joined and other.paragraph == one.paragraph and other.start - one.end < len(" and the "):
            apart[frozenset((one.form, other.form))] += 2
    before: Mention | None = None
    for tagged in _tagged(scene):
        if tagged.kind not in ("name", "role") or tagged.owned:
            before = None
            continue
        if before and before.form != tagged.form and tagged.paragraph - before.paragraph == 1:
            apart[frozenset((before.form, tagged.form))] += 1
        before = tagged
    speakers = {q.paragraph: scene.mentions[q.tag].form for q in scene.quotes if q.tag is not None and q.plain}
    for mention in named:
        if mention.spoken and mention.paragraph in speakers and speakers[mention.paragraph] != mention.form:
            apart[frozenset((speakers[mention.paragraph], mention.form))] += 1


def _answer(scene: SceneFacts, answers: defaultdict[str, Counter[str]]) -> None:
    """Who speaks in the paragraphs beside the one in which a form is called."""
    speakers: dict[int, str] = {}
    for quote in scene.quotes:
        if quote.tag is not None and quote.plain:
            tagged = scene.mentions[quote.tag]
            speakers[quote.paragraph] = "" if tagged.kind == "self" else tagged.form
    for mention in scene.mentions:
        if mention.called and mention.kind == "name":
            for step, weight in ((1, 2), (-1, 1)):
                if (speaker := speakers.get(mention.paragraph + step)) is not None:
                    answers[mention.form][speaker] += weight
