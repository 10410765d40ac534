"""Speech as turns: what one person says in one paragraph, with what is known of who it is."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from afterdraft.reading.facts import Gender, Mention, Quote, SceneFacts
from afterdraft.whole.cast import Cast

TagKind = Literal["named", "self", "pronoun", "role", "none"]
GENDERS: tuple[Gender, ...] = ("f", "m")
STALE = 2  # paragraphs after which a name need not act to be the one a pronoun means


@dataclass(frozen=True, slots=True)
class Turn:
    """People are ids; `quotes` count in the scene's facts."""

    paragraph: int
    quotes: tuple[int, ...]
    tag: TagKind
    plain: bool  # the tag has a verb of speech
    named: str | None  # whom the tag names
    by_role: bool  # by what they are: 'the captain'
    gender: Gender  # of a pronoun or a role that is nobody in particular
    whose: str | None  # of a role by whose it is, the owner: 'her mother'
    guess: str | None  # whom that pronoun most likely means
    guess_before: str | None  # whom the last acting pronoun before the words does
    called: frozenset[str]  # to whom it is spoken by name
    spoken_of: frozenset[str]
    before: str | None  # who acts last in the paragraph's own narration before the words
    beside: str | None  # who acts first in it after the words
    around: frozenset[str]  # everybody named in the paragraph outside speech
    goes_on: bool
    said: str | None = None  # who speaks it, as the writer has it; "" for nobody


def resolve(form: str, by_form: Mapping[str, str]) -> str | None:
    """The person of a form, or of the longest run of its words that is one."""
    if form in by_form:
        return by_form[form]
    words = form.split()
    for length in range(len(words) - 1, 0, -1):
        for start in range(len(words) - length, -1, -1):
            part = " ".join(words[start : start + length])
            if part in by_form and (length > 1 or start == len(words) - 1 or len(words[start]) > 3):
                return by_form[part]
    return None


def meant(scene: SceneFacts, cast: Cast) -> tuple[str | None, ...]:
    """Beside each mention of the scene, whom it names; None for pronouns and for nobody of the cast."""
    narrator = cast.narrator
    genders = {person.id: person.gender for person in cast.people}
    known: dict[str, str | None] = {}
    found: list[str | None] = []
    for one in scene.mentions:
        if one.kind in ("name", "role"):
            if one.form not in known:
                known[one.form] = _named(one, cast.by_form, genders)
            found.append(known[one.form])
        else:
            found.append(narrator.id if narrator and one.kind == "self" and not one.spoken else None)
    return tuple(found)


def _named(one: Mention, by_form: Mapping[str, str], genders: Mapping[str, Gender]) -> str | None:
    """Whom a name or role means; 'Mrs. John Lamb' is not John, though that part of it is."""
    if one.kind == "role" or one.form in by_form:
        return by_form.get(one.form)
    person = resolve(one.form, by_form)
    other = person is not None and one.gender and genders.get(person) not in (one.gender, "", None)
    return None if other else person


def guessed(scene: SceneFacts, people: Sequence[str | None], genders: Mapping[str, Gender]) -> tuple[str | None, ...]:
    """Beside each pronoun of the narration, whom it most likely means: whoever of that gender acted last.

    Published resolvers do better on news than on novels; this one is right often enough to say who is near.
    """
    last: dict[Gender, str] = {}
    acted: dict[Gender, int] = {}  # paragraph in which that person acted
    found: list[str | None] = []
    for mention, person in zip(scene.mentions, people, strict=True):
        guess = None
        if not mention.spoken and person and mention.kind != "self":
            gender = genders.get(person, "")
            for each in (gender,) if gender else GENDERS:
                if mention.subject or acted.get(each, -STALE) < mention.paragraph - STALE:
                    last[each] = person
                    acted[each] = mention.paragraph
        elif not mention.spoken and mention.kind == "pronoun":
            guess = last.get(mention.gender)
            if guess and mention.subject:
                acted[mention.gender] = mention.paragraph
        found.append(guess)
    return tuple(found)


def turns(
    scene: SceneFacts,
    people: Sequence[str | None],
    guesses: Sequence[str | None] | None = None,
    said: Mapping[tuple[int, int], str] | None = None,
    genders: Mapping[str, Gender] | None = None,
) -> tuple[Turn, ...]:
    """The turns of a scene in order; `people` is what `meant` gives, `guesses` what `guessed` does.

    `said` has by paragraph and start of a quotation what the writer said of it.
    """
    told = [(said or {}).get((quote.paragraph, quote.start)) for quote in scene.quotes]
    guesses = guesses or (None,) * len(people)
    by_paragraph: dict[int, list[int]] = {}
    for place, mention in enumerate(scene.mentions):
        by_paragraph.setdefault(mention.paragraph, []).append(place)
    return tuple(
        replace(
            _turn(scene, people, guesses, group, by_paragraph.get(scene.quotes[group[0]].paragraph, [])),
            said=next((told[place] for place in group if told[place] is not None), None),
        )
        for group in _groups(scene, people, told, genders or {})
    )


def _groups(
    scene: SceneFacts, people: Sequence[str | None], told: Sequence[str | None], genders: Mapping[str, Gender]
) -> Iterator[list[int]]:
    """Quotations of one paragraph, parted where their tags or the writer name two people."""
    group: list[int] = []
    names: list[_Name] = []
    for place, quote in enumerate(scene.quotes):
        own = _name(scene, place, people, told, genders)
        other = own is not None and any(_differ(own, name) for name in names)
        if group and (quote.paragraph != scene.quotes[group[-1]].paragraph or other):
            yield group
            group, names = [], []
        group.append(place)
        if own:
            names.append(own)
    if group:
        yield group


_Name = tuple[str | None, Gender, bool]  # who, where it tells; their gender; whether an I


def _name(
    scene: SceneFacts,
    place: int,
    people: Sequence[str | None],
    told: Sequence[str | None],
    genders: Mapping[str, Gender],
) -> _Name | None:
    """What a quotation's own tag tells of who speaks."""
    if (said := told[place]) is not None:
        return said, genders.get(said, ""), False
    quote = scene.quotes[place]
    if quote.tag is None or not quote.plain:
        return None
    mention, person = scene.mentions[quote.tag], people[quote.tag]
    return person, mention.gender or genders.get(person or "", ""), mention.kind == "self"


def _differ(one: _Name, other: _Name) -> bool:
    """Whether two tags tell of two people: two names, an I and another, he and she."""
    if one[0] is not None and other[0] is not None:
        return one[0] != other[0]
    return one[2] != other[2] or bool(one[1] and other[1] and one[1] != other[1])


def _turn(
    scene: SceneFacts,
    people: Sequence[str | None],
    guesses: Sequence[str | None],
    group: list[int],
    inside: Sequence[int],
) -> Turn:
    quotes = [scene.quotes[place] for place in group]
    start, end = quotes[0].start, quotes[-1].end
    tag = _best_tag(scene, quotes)
    mention = scene.mentions[tag.tag] if tag and tag.tag is not None else None
    told = [place for place in inside if not scene.mentions[place].spoken and people[place]]
    said = [place for place in inside if _within(scene.mentions[place], quotes) and people[place]]
    acting = [place for place in told if scene.mentions[place].subject]
    return Turn(
        paragraph=quotes[0].paragraph,
        quotes=tuple(group),
        tag=_kind(mention, people[tag.tag] if tag and tag.tag is not None else None),
        plain=tag is not None and tag.plain,
        named=people[tag.tag] if tag and tag.tag is not None else None,
        by_role=mention is not None and mention.kind == "role",
        gender=mention.gender if mention else "",
        whose=_whose(mention, guesses, inside, scene) if mention and mention.owned else None,
        guess=guesses[tag.tag] if tag and tag.tag is not None else None,
        guess_before=next(
            (guesses[p] for p in reversed(inside) if scene.mentions[p].start < start and guesses[p]), None
        ),
        called=frozenset(filter(None, (people[place] for place in said if scene.mentions[place].called))),
        spoken_of=frozenset(filter(None, (people[place] for place in said if not scene.mentions[place].called))),
        before=next((people[place] for place in reversed(acting) if scene.mentions[place].start < start), None),
        beside=next((people[place] for place in acting if scene.mentions[place].start >= end), None),
        around=frozenset(filter(None, (people[place] for place in told))),
        goes_on=quotes[0].goes_on,
    )


def _best_tag(scene: SceneFacts, quotes: Sequence[Quote]) -> Quote | None:
    """A tag with a verb of speech goes before an act beside the words, a name before a pronoun."""
    tagged = [quote for quote in quotes if quote.tag is not None]
    return max(
        tagged,
        key=lambda quote: (quote.plain, quote.tag is not None and scene.mentions[quote.tag].kind != "pronoun"),
        default=None,
    )


def _within(mention: Mention, quotes: Sequence[Quote]) -> bool:
    return any(quote.start <= mention.start < quote.end for quote in quotes)


def _kind(mention: Mention | None, person: str | None) -> TagKind:
    if mention is None:
        return "none"
    if mention.kind == "self":
        return "self"
    return "named" if person else "pronoun" if mention.kind == "pronoun" else "role"


def _whose(tag: Mention, guesses: Sequence[str | None], inside: Sequence[int], scene: SceneFacts) -> str | None:
    """Whom the 'her' of 'her mother' most likely means."""
    owner = (place for place in inside if scene.mentions[place].end + 1 == tag.start)
    return next((guesses[place] for place in owner), None)
