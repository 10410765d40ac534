"""Whom a pronoun of the narration means, where a trait hangs on it: careful rather than bold.

`turns.guessed` says who is near, and is right often enough for that. Here who speaks in a paragraph acts in it too;
and a man whom nobody named, and who came since, is who is meant, and then nobody of the cast is.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from afterdraft.reading.facts import Gender, Mention, SceneFacts
from afterdraft.whole.speakers import Spoken

BEHIND = 100  # letters behind a pronoun: about a sentence
FEW = 40  # of whom it was met before, that are looked at
BACK = 2  # paragraphs before its own in which whom it means may stand
RIGHT_BEHIND = 8  # letters: ', with his'
FAR = 12  # paragraphs from where somebody was named, behind which 'he' after 'he' is less surely that one; by hand
ALONE = 0.85  # how sure, of the only one of the gender in a pronoun's own sentence; chosen by hand
PLAIN, DIVIDED = 0.8, 0.5  # the same, where who acted last is also who was named last, and where not; chosen by hand
_OWN = frozenset({"his", "her"})
_ACTED_ON = frozenset({"her", "him"})
Owner = tuple[str, float]  # person, how sure


@dataclass(frozen=True, slots=True)
class _Met:
    """Somebody in the narration: meant by a word, or speaking."""

    paragraph: int
    owner: Owner | None
    gender: Gender
    acts: bool
    start: int = 0
    begins: bool = True  # its sentence, or a speech: what stands before is another
    named: bool = True


def antecedents(
    scene: SceneFacts, people: Sequence[str | None], spoken: Sequence[Spoken], genders: Mapping[str, Gender]
) -> tuple[Owner | None, ...]:
    """Beside each pronoun outside speech, its person; None for other mentions, for nobody of the cast, and where nobody
    is near. `people` is what `turns.meant` gives, `spoken` the speakers of the scene."""
    met: list[_Met] = []
    found: list[Owner | None] = [None] * len(scene.mentions)
    named: dict[str, int] = {}  # the paragraph in which somebody was last named
    for _, _, which, number in _in_order(scene, spoken):
        if which == "quote":
            one = spoken[number]
            if one.speaker:
                speaker = (one.speaker, min(PLAIN, one.sure))
                met.append(_Met(scene.quotes[one.quote].paragraph, speaker, genders.get(one.speaker, ""), acts=True))
            continue
        mention, person = scene.mentions[number], people[number]
        if mention.kind == "pronoun":
            beside = _right_before(scene, people, number)
            others = (_named_behind(scene, people, number) | _whoever_hears(met, mention)) - {beside}
            near = [one for one in met[-FEW:] if not _is_of(one, others)]
            owner = _likely(near, mention)
            alone = owner and owner[0] == beside
            found[number] = owner if alone else _careful(scene, people, number, owner)
            if (likely := found[number]) and mention.paragraph - named.get(likely[0], 0) > FAR:
                found[number] = likely[0], min(likely[1], DIVIDED)
            if others and not found[number]:
                found[number] = _introduced(scene, people, number, others, genders)
        elif mention.kind == "self":
            continue
        elif person:
            named[person] = mention.paragraph
        known = (person, PLAIN) if person else found[number]
        gender = genders.get(known[0], "") if known else ""
        if known or mention.kind == "pronoun" or (mention.kind == "role" and (mention.gender or mention.subject)):
            gender = gender or mention.gender
            met.append(
                _Met(mention.paragraph, known, gender, mention.subject, mention.start, mention.first, bool(person))
            )
    return tuple(found)


def _in_order(scene: SceneFacts, spoken: Sequence[Spoken]) -> list[tuple[int, int, str, int]]:
    """Mentions of the narration and speeches, as they stand in the text."""
    mentions = ((m.paragraph, m.start, "mention", n) for n, m in enumerate(scene.mentions) if not m.spoken)
    quotes = ((scene.quotes[s.quote], n) for n, s in enumerate(spoken))
    return sorted([*mentions, *((quote.paragraph, quote.start, "quote", n) for quote, n in quotes)])


def _is_of(one: _Met, others: frozenset[str]) -> bool:
    return one.owner is not None and one.owner[0] in others


def _named_behind(scene: SceneFacts, people: Sequence[str | None], place: int) -> frozenset[str]:
    """Whom the words right behind name as who is acted on: 'she looked Joan over' is not Joan."""
    pronoun, found = scene.mentions[place], set()
    for number in range(place + 1, len(scene.mentions)):
        mention, person = scene.mentions[number], people[number]
        if mention.paragraph != pronoun.paragraph or mention.start > pronoun.end + BEHIND:
            break
        if person and mention.kind == "name" and not (mention.spoken or mention.subject):
            found.add(person)
    return frozenset(found)


def _right_before(scene: SceneFacts, people: Sequence[str | None], place: int) -> str | None:
    """Who acts, and is named right before what is theirs: 'Ada, with her coat on, stood by Ada’s chair'."""
    pronoun, before = scene.mentions[place], scene.mentions[place - 1] if place else None
    near = before and before.paragraph == pronoun.paragraph and pronoun.start - before.end <= RIGHT_BEHIND
    named = near and before and before.kind == "name" and before.subject and not before.spoken
    return people[place - 1] if named and not pronoun.subject and pronoun.form in _OWN else None


def _whoever_hears(met: Sequence[_Met], pronoun: Mention) -> frozenset[str]:
    """'Ada heard her greet him' is not Ada."""
    acting = [one for one in _of_sentence(met, pronoun) if one.acts and one.owner]
    return frozenset(one.owner[0] for one in acting[-1:] if one.owner and pronoun.subject and pronoun.form in _ACTED_ON)


def _of_sentence(met: Sequence[_Met], pronoun: Mention) -> list[_Met]:
    """Those of its gender who stand before it in its sentence."""
    found: list[_Met] = []
    for one in reversed(met if not pronoun.first else ()):
        if one.paragraph != pronoun.paragraph:
            break
        if one.gender == pronoun.gender:
            found.insert(0, one)
        if one.begins:
            break
    return found


def _introduced(
    scene: SceneFacts, people: Sequence[str | None], place: int, others: frozenset[str], genders: Mapping[str, Gender]
) -> Owner | None:
    """Whom the paragraph before names in speech: “This is Ada.” — “I know.” She looked Joan over."""
    pronoun = scene.mentions[place]
    for number in range(place - 1, -1, -1):
        mention, person = scene.mentions[number], people[number]
        if mention.paragraph < pronoun.paragraph - 1:
            return None
        named = mention.spoken and mention.kind == "name" and mention.paragraph < pronoun.paragraph
        if named and person and person not in others and genders.get(person, "") in ("", pronoun.gender):
            return person, DIVIDED
    return None


def _alone(met: Sequence[_Met], pronoun: Mention) -> Owner | None:
    """Who stands before it in its sentence, where nobody else of the gender does: 'Ada, with her coat on'."""
    found: set[Owner | None] = set()
    earliest = True  # whether the first of them is a name: behind 'his', a name may be another's
    for one in reversed(met if not pronoun.first else ()):
        if one.paragraph != pronoun.paragraph or one.start < pronoun.start - BEHIND:
            break
        if one.gender == pronoun.gender:
            found.add(one.owner)
            earliest = one.named
        elif not one.gender:
            return None
        if one.begins:
            break
    people = {one[0] if one else "" for one in found}
    known = next(iter(found)) if len(people) == 1 else None
    return (known[0], ALONE) if known and known[1] >= PLAIN and earliest else None


def _careful(scene: SceneFacts, people: Sequence[str | None], place: int, owner: Owner | None) -> Owner | None:
    """Less sure where the sentence goes on to name that person: who is 'he' is seldom named behind it."""
    pronoun = scene.mentions[place]
    for number in range(place + 1, len(scene.mentions) if owner else 0):
        mention = scene.mentions[number]
        if mention.paragraph != pronoun.paragraph or mention.start > pronoun.end + BEHIND or mention.first:
            break
        if owner and people[number] == owner[0] and mention.kind == "name" and not mention.spoken:
            return owner[0], min(owner[1], DIVIDED)
    return owner


def _likely(met: Sequence[_Met], pronoun: Mention) -> Owner | None:
    """Less sure where the sentence names somebody behind another 'he': 'His face was so thin that Tom thought of fever;
    but his eyes'."""
    owner, before = _alone(met, pronoun) or _meant(met, pronoun), _of_sentence(met, pronoun)
    behind = bool(before) and not before[0].named and any(one.named for one in before)
    return (owner[0], min(owner[1], DIVIDED)) if owner and behind else owner


def _meant(met: Sequence[_Met], pronoun: Mention) -> Owner | None:
    """Who acts last before it, if nobody without a name came since."""
    last: Owner | None = None
    for one in _near(met, pronoun.paragraph, pronoun.gender):
        if not one.owner:
            return (last[0], DIVIDED) if last else None
        last = last or one.owner
        if one.acts:
            person, sure = one.owner
            sure = sure if one.gender else min(sure, DIVIDED)  # one who may be no 'he'
            return person, round(sure if person == last[0] else min(sure, DIVIDED), 2)
    return (last[0], DIVIDED) if last else None


def _near(met: Sequence[_Met], paragraph: int, gender: Gender) -> Iterator[_Met]:
    """Those of the gender, the nearest first: of its paragraph, or of the next before it that has some."""
    found: int | None = None
    for one in reversed(met):
        if one.paragraph < paragraph - BACK or (found is not None and one.paragraph < found):
            return
        if one.gender in ("", gender):
            found = one.paragraph
            yield one
