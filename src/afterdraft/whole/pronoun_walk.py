"""Through a scene: who was met before each pronoun of its narration."""

from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from itertools import takewhile

from afterdraft.reading.facts import Gender, Mention, SceneFacts
from afterdraft.whole.cast import Cast
from afterdraft.whole.pronoun_cautions import DOUBTED, Owner
from afterdraft.whole.pronoun_signs import FEW, Candidate, Met, Place
from afterdraft.whole.speakers import Spoken

BACK = 6  # paragraphs before its own in which whom it means was met
BEHIND = 100  # letters behind a pronoun: about a sentence
NEXT_TO = 1  # paragraphs in which others are near
Choose = Callable[[Place], Owner | None]  # whom a pronoun means; a stranger's id is no person's


def walk(
    scene: SceneFacts,
    people: Sequence[str | None],
    spoken: Sequence[Spoken],
    cast: Cast,
    choose: Choose,
) -> None:
    """Goes through a scene, and asks of each pronoun of its narration whom it means, so that it is known further on."""
    _Walk(scene, people, spoken, cast).go(choose)


class _Walk:
    def __init__(self, scene: SceneFacts, people: Sequence[str | None], spoken: Sequence[Spoken], cast: Cast) -> None:
        self._scene, self._people, self._spoken = scene, people, spoken
        self._genders = {person.id: person.gender for person in cast.people}
        tells = (person for one, person in zip(scene.mentions, people, strict=True) if one.kind == "self" and person)
        self._tellers = frozenset(tells)  # an I is never 'he'
        named = Counter(person for person in people if person and person not in self._tellers)
        self._elsewhere = {person.id: person.mentions - named[person.id] for person in cast.people}
        self._ranks = {person: rank for rank, (person, _) in enumerate(named.most_common())}
        self._met: dict[str, Candidate] = {}  # in the order of being met last
        self._sentence = 0

    def go(self, choose: Choose) -> None:
        last = -1
        for paragraph, _, which, number in _in_order(self._scene, self._spoken):
            begins = which == "quote" or self._scene.mentions[number].first
            self._sentence += paragraph != last or begins
            last = paragraph
            if which == "quote":
                self._speech(self._spoken[number])
            else:
                self._mention(number, self._scene.mentions[number], choose)

    def _speech(self, one: Spoken) -> None:
        if one.speaker and one.speaker not in self._tellers:
            quote = self._scene.quotes[one.quote]
            self._meet(one.speaker, self._genders.get(one.speaker, ""), quote.paragraph, quote.end, "speech", acts=True)

    def _mention(self, number: int, one: Mention, choose: Choose) -> None:
        person = self._people[number]
        if one.kind == "pronoun":
            if one.gender in ("f", "m"):
                owner = choose(self._place(number, one))
                who = owner[0] if owner else f"{one.gender} who is meant"
                self._meet(who, one.gender, one.paragraph, one.end, "pronoun", acts=one.subject)
                self._met[who].doubted = bool(owner and owner[1] <= DOUBTED)
        elif one.kind != "self" and person not in self._tellers:
            how: Met = "name" if one.kind == "name" else "role"
            if person:
                gender = self._genders.get(person, "") or one.gender
                self._meet(person, gender, one.paragraph, one.end, how, acts=one.subject)
            elif (how == "role" and (one.gender or one.subject)) or (how == "name" and one.entity == "person"):
                self._meet(f"{how} {one.form}", one.gender, one.paragraph, one.end, how, acts=one.subject)

    def _meet(self, who: str, gender: Gender, paragraph: int, end: int, how: Met, *, acts: bool) -> None:
        one = self._met.pop(who) if who in self._met else self._new(who)
        self._met[who] = one  # now the last
        one.gender, one.times, one.doubted = one.gender or gender, one.times + 1, False
        one.how, one.paragraph, one.sentence, one.end, one.acts = how, paragraph, self._sentence, end, acts
        one.lately = [*one.lately[-FEW:], paragraph]
        if acts:
            one.acted = self._sentence
        if how == "name":
            one.named = paragraph
        if how == "speech":
            one.spoke = paragraph

    def _new(self, who: str) -> Candidate:
        return Candidate(who, "", who in self._genders, times=max(0, self._elsewhere.get(who, 0)))

    def _place(self, number: int, one: Mention) -> Place:
        near = list(takewhile(lambda met: one.paragraph - met.paragraph <= BACK, reversed(self._met.values())))
        fitting = [met for met in near if met.gender in ("", one.gender)]
        others = sum(met.gender not in ("", one.gender) and one.paragraph - met.paragraph <= NEXT_TO for met in near)
        return Place(number, one, self._sentence, fitting[:FEW], self._behind(number, one), others, self._ranks)

    def _behind(self, number: int, pronoun: Mention) -> dict[str, str]:
        found: dict[str, str] = {}
        for place in range(number + 1, len(self._scene.mentions)):
            one, person = self._scene.mentions[place], self._people[place]
            if one.paragraph != pronoun.paragraph or one.start > pronoun.end + BEHIND:
                break
            if person and one.kind == "name" and not one.spoken:
                found.setdefault(person, "acts" if one.subject else "is")
        return found


def _in_order(scene: SceneFacts, spoken: Sequence[Spoken]) -> Iterator[tuple[int, int, str, int]]:
    """Mentions of the narration and speeches, as they stand in the text."""
    mentions = ((one.paragraph, one.start, "mention", n) for n, one in enumerate(scene.mentions) if not one.spoken)
    quotes = ((scene.quotes[one.quote], n) for n, one in enumerate(spoken))
    yield from sorted([*mentions, *((quote.paragraph, quote.start, "quote", n) for quote, n in quotes)])
