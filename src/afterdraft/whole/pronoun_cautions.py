"""What goes before how likely a pronoun's person is by its signs, or lowers or raises how sure that is."""

from collections.abc import Mapping, Sequence

from afterdraft.reading.facts import Gender, Mention, SceneFacts
from afterdraft.whole.pronoun_signs import Place
from afterdraft.whole.speakers import Spoken

MOST = 0.9  # how sure of a pronoun at most: no surer than of a name
ALONE = 0.75  # how sure at least, of the one whom the paragraph names alone: 0.86 of these are right
DOUBTED = 0.5  # the same, where somebody else came or acted since; chosen by hand
NEXT = 3  # letters between speech and what begins right behind it
Owner = tuple[str, float]  # person, and how likely


def told_beside(
    scene: SceneFacts,
    people: Sequence[str | None],
    spoken: Sequence[Spoken],
    genders: Mapping[str, Gender],
    number: int,
) -> Owner | None:
    """Of 'he' right behind speech in its paragraph: who speaks it, or who was brought in to speak; None of others."""
    if not is_behind_speech(scene, number):
        return None
    speaks = _speaks(scene, spoken, genders, number)
    brought = _brought_in(scene, people, genders, number)
    if speaks and ((brought and speaks[0] == brought[0]) or _is_called(scene, people, number, speaks[0])):
        return speaks[0], max(speaks[1], ALONE)
    return speaks if speaks and speaks[1] >= ALONE else brought or speaks


def leans_on(scene: SceneFacts, number: int) -> int | None:
    """The 'he' or 'his' before another in its paragraph, with nobody met between: 0.96 of them mean the same."""
    pronoun = scene.mentions[number]
    for place in range(number - 1, -1, -1):
        one = scene.mentions[place]
        if one.kind != "self":
            alike = (one.kind, one.gender, one.paragraph) == ("pronoun", pronoun.gender, pronoun.paragraph)
            return place if alike and not one.spoken else None
    return None


def how_sure(
    scene: SceneFacts,
    people: Sequence[str | None],
    genders: Mapping[str, Gender],
    place: Place,
    owner: Owner,
    *,
    paragraphs: bool,
) -> float:
    """Of the likeliest, by who else is near."""
    person, likely = owner
    sure = min(likely, DOUBTED if _is_outdone(place, person) else MOST)
    alone = _named_alone(scene, people, place.number, genders)
    if alone and alone != person and paragraphs:
        return min(sure, DOUBTED)  # '“Now,” said Tom, and with his' is not another's who spoke before
    return max(sure, ALONE) if alone == person else sure


def is_behind_speech(scene: SceneFacts, number: int) -> bool:
    """Whether 'he' begins a sentence right behind speech in its paragraph."""
    pronoun = scene.mentions[number]
    return pronoun.first and any(
        one.paragraph == pronoun.paragraph and 0 <= pronoun.start - one.end <= NEXT for one in scene.quotes
    )


def _speaks(scene: SceneFacts, spoken: Sequence[Spoken], genders: Mapping[str, Gender], number: int) -> Owner | None:
    """'“No.” He sat.' A paragraph is its speaker's: common practice."""
    for one in spoken:
        quote, pronoun = scene.quotes[one.quote], scene.mentions[number]
        right = quote.paragraph == pronoun.paragraph and 0 <= pronoun.start - quote.end <= NEXT
        if right and one.speaker and genders.get(one.speaker, "") in ("", pronoun.gender):
            return one.speaker, round(min(one.sure, MOST), 2)
    return None


def _is_called(scene: SceneFacts, people: Sequence[str | None], number: int, person: str) -> bool:
    """Whether the paragraph before speaks to that person by name, who then answers."""
    paragraph = scene.mentions[number].paragraph - 1
    return any(
        one.called and one.paragraph == paragraph and who == person
        for one, who in zip(scene.mentions[:number], people, strict=False)
    )


def _brought_in(
    scene: SceneFacts, people: Sequence[str | None], genders: Mapping[str, Gender], number: int
) -> Owner | None:
    """'“This is Ada,” said Tom. — “I know.” She had'. Who is new there, and then speaks, where nobody is known to."""
    pronoun = scene.mentions[number]
    first: dict[str, Mention] = {}
    for one, person in zip(scene.mentions[:number], people, strict=False):
        if person and one.kind in ("name", "role"):
            first.setdefault(person, one)
    new = [
        person
        for person, one in first.items()
        if one.spoken and one.paragraph == pronoun.paragraph - 1 and genders.get(person, "") in ("", pronoun.gender)
    ]
    return (new[0], DOUBTED) if len(new) == 1 else None


def _named_alone(
    scene: SceneFacts, people: Sequence[str | None], number: int, genders: Mapping[str, Gender]
) -> str | None:
    """The only one of the gender whom the paragraph before the pronoun tells of, by name."""
    pronoun, found = scene.mentions[number], set()
    for place in range(number - 1, -1, -1):
        one, who = scene.mentions[place], people[place]
        if one.paragraph != pronoun.paragraph:
            break
        if one.spoken or one.kind not in ("name", "role"):
            continue
        if (genders.get(who, "") if who else one.gender) in ("", pronoun.gender) and (who or one.kind == "role"):
            found.add(who if who and (one.kind == "name" or one.large) else None)
    return next(iter(found)) if len(found) == 1 else None


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
