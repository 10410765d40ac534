"""Whom each pronoun of the narration means, with how likely that is.

Those met before it are weighed by signs whose weights were learned on LitBank (`pronoun_weights`); how likely each is
comes of all that may be meant, nobody included. `turns.guessed` says who is near, which is enough for speech.
"""

from collections import Counter
from collections.abc import Callable, Iterator, Mapping, Sequence
from itertools import takewhile
from math import exp

from afterdraft.reading.facts import Gender, Mention, SceneFacts
from afterdraft.whole.cast import Cast
from afterdraft.whole.pronoun_signs import FEW, Candidate, Met, Place, nobody, signs
from afterdraft.whole.pronoun_weights import weights
from afterdraft.whole.speakers import Spoken

BACK = 6  # paragraphs before its own in which whom it means was met
BEHIND = 100  # letters behind a pronoun: about a sentence
MOST = 0.9  # how sure of a pronoun at most: no surer than of a name
ALONE = 0.75  # how sure at least, of the one whom the paragraph names alone: 0.86 of these are right
DOUBTED = 0.5  # the same, where somebody else came or acted since; chosen by hand
NEXT_TO = 1  # paragraphs in which others are near
Owner = tuple[str, float]  # person, and how likely
Choose = Callable[[int, Place], Owner | None]  # of the mention of that number; a stranger's id is no person's


def antecedents(
    scene: SceneFacts, people: Sequence[str | None], spoken: Sequence[Spoken], cast: Cast
) -> tuple[Owner | None, ...]:
    """Beside each pronoun outside speech, its person; None for other mentions, and where nobody of the cast is likely.
    `people` is what `turns.meant` gives, `spoken` the speakers of the scene."""
    found: list[Owner | None] = [None] * len(scene.mentions)
    known = {person.id: person.gender for person in cast.people}

    def choose(number: int, place: Place) -> Owner | None:
        owner = likeliest(place)
        if owner and owner[0] in known:
            sure = min(owner[1], DOUBTED if _is_outdone(place, owner[0]) else MOST)
            alone = sure < ALONE and _is_alone(scene, people, number, owner[0], known)
            owner = found[number] = owner[0], ALONE if alone else sure
        return owner

    walk(scene, people, spoken, cast, choose)
    return tuple(found)


def _is_alone(
    scene: SceneFacts, people: Sequence[str | None], number: int, person: str, genders: Mapping[str, Gender]
) -> bool:
    """Whether the paragraph before it names that person, and tells of nobody else of the gender."""
    pronoun, named = scene.mentions[number], False
    for place in range(number - 1, -1, -1):
        one, who = scene.mentions[place], people[place]
        if one.paragraph != pronoun.paragraph:
            break
        if one.spoken or one.kind not in ("name", "role"):
            continue
        if who == person:
            named = named or one.kind == "name"
        elif (genders.get(who, "") if who else one.gender) in ("", pronoun.gender) and (who or one.kind == "role"):
            return False
    return named


def _is_outdone(place: Place, person: str) -> bool:
    """Whether somebody else came or acted since: 'Ada nodded to a girl. She was twenty.' What is told of looks and ages
    is told of those who are new."""
    one = next(each for each in place.near if each.id == person)
    others = [other for other in place.near if other is not one]
    if one.doubted:
        return True
    came = any(
        other.sentence >= one.sentence and other.how in ("role", "name") and not other.of_cast for other in others
    )
    return came or (not one.acts and any(other.acted >= one.sentence for other in others))


def likeliest(place: Place) -> Owner | None:
    """None for nobody of those near."""
    known = weights()
    scores = [sum(known.get(sign, 0.0) for sign in signs(place, rank)) for rank in range(len(place.near))]
    none = sum(known.get(sign, 0.0) for sign in nobody(place))
    best = max(scores, default=none)
    if best <= none:
        return None
    share = 1 / sum(exp(score - best) for score in (*scores, none))
    return place.near[scores.index(best)].id, round(share, 2)


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
                owner = choose(number, self._place(number, one))
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
        return Place(one, self._sentence, fitting[:FEW], self._behind(number, one), others, self._ranks)

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
