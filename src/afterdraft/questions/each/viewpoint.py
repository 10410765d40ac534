"""Thoughts of somebody else within a scene that keeps to one person's."""

import re
from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import groupby
from operator import itemgetter

from afterdraft.questions.check import Check
from afterdraft.questions.minds import SURE, Thought, Whose, teller, thoughts, whose
from afterdraft.questions.minds_once import entered_once, of_no_i
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.reading.facts import Gender, Mention
from afterdraft.reading.lexicon import ROLES, TITLES
from afterdraft.whole.book import genders
from afterdraft.whole.turns import meant

OWN = 3  # thoughts and perceptions of the viewpoint's own that a scene has at least; chosen on the tuning half
LEAD = 4  # times as many as all others', likewise
ALIKE = 0.7  # share of all who think that are 'he' or 'she' as the viewpoint is, likewise
AHEAD = 2  # times as often as anybody else of that gender, likewise
AROUND, ALL_BUT = 3, 1  # thoughts before and behind another's; how many of them may be another's too, likewise
CLEAN = 0.5  # share of scenes with anybody's mind in them that keep to one, below which the telling knows all, likewise
STRAYED, STRAYS = 2, 0.1  # of those, how many, and what share, may have a stray before it is the manner, likewise
ONCE = 0.6  # strength where it is not known whose the scene is
SHOWN = 3  # sentences that are shown
BESIDE = 3  # paragraphs on either side of a stray in which the one is whose scene it is
SCENES = 3  # with anybody's mind, below which a book has no manner
_INNER = re.compile(r"\b(?:would|could|might|should|must|had)\b")
_OF: Mapping[Gender, re.Pattern[str]] = {
    "m": re.compile(r"\b(?:he|him|his)\b", re.IGNORECASE),
    "f": re.compile(r"\b(?:she|her|hers)\b", re.IGNORECASE),
    "": re.compile(r"\b(?:he|him|his|she|her|hers)\b", re.IGNORECASE),
}


@dataclass(frozen=True, slots=True)
class _Scene:
    """One in which somebody thinks, and whose it is."""

    number: int
    viewpoint: str
    gender: Gender
    marked: bool  # she says whose it is
    tells: bool  # the viewpoint is an I
    minds: tuple[Thought, ...]
    sides: tuple[Whose, ...]  # one each

    def pairs(self) -> Iterator[tuple[Thought, Whose]]:
        return zip(self.minds, self.sides, strict=True)


def find(seen: Seen) -> Iterator[Finding]:
    minds = {number: thoughts(seen, number) for number in seen.scenes}
    scenes = list(_scenes(seen, minds))
    keep = [one for one in scenes if _keeps(one)]
    strays = {one.number: _strays(one) for one in scenes if one.marked or one in keep}
    often = sum(bool(strays[one.number]) for one in keep if not one.marked)
    mostly = len(scenes) >= SCENES and len(keep) >= CLEAN * len(scenes) and often <= max(STRAYED, STRAYS * len(keep))
    asked: set[int] = set()
    for one in scenes:
        if one.number in strays and (one.marked or mostly):
            plain = [it for it in strays[one.number] if it.plain or one.marked]
            within = [it for it in plain if one.marked or _is_within(seen, one, it)]
            found = list(_findings(seen, one, [it for it in within if not _is_namesake(seen, one, it)]))
            asked |= {one.number} if found else set()
            yield from found
    for number, some in of_no_i(seen, minds).items():
        if number not in asked and (who := teller(seen, number)):
            yield from _findings(seen, _Scene(number, who, "", False, True, (), ()), some)
    for number, some in entered_once(seen, minds).items() if mostly else ():
        if number not in asked:
            yield from _findings(seen, None, some, number)


def _scenes(seen: Seen, minds: Mapping[int, tuple[Thought, ...]]) -> Iterator[_Scene]:
    read, hers = _viewpoints(seen)
    known = genders(seen.book.cast.people)
    for number, here in minds.items():
        who = hers.get(number) or read.get(number) or _most(here)
        if who and (number in hers or len(here) >= OWN):
            gender, tells = known.get(who, ""), teller(seen, number) == who
            sides = tuple(whose(one, who, gender, tells=tells) for one in here)
            yield _Scene(number, who, gender, number in hers, tells, here, sides)


def _viewpoints(seen: Seen) -> tuple[Mapping[int, str], Mapping[int, str]]:
    """By scene whose it is: as reading found, and as she says."""
    read = {one.scene: one.person for one in seen.book.appearances if one.presence == "point of view"}
    return read, {scene: person for (scene, person), how in seen.marks.present.items() if how == "viewpoint"}


def _most(minds: Sequence[Thought]) -> str | None:
    """Whose thoughts most of a scene's are."""
    ranked = Counter(one.person for one in minds if one.person).most_common(1)
    return ranked[0][0] if ranked and ranked[0][1] >= OWN else None


def _keeps(scene: _Scene) -> bool:
    """Whether a scene tells of one mind, nearly, and it is beyond doubt of whose."""
    others = sum(its != "own" and one.known for one, its in scene.pairs())
    return scene.sides.count("own") >= max(OWN, LEAD * others) and (scene.tells or _is_plainly(scene))


def _is_plainly(scene: _Scene) -> bool:
    alike = [one for one in scene.minds if one.gender in ("", scene.gender)]
    sure = Counter(one.person for one in alike if one.sure >= SURE)
    own = sure.pop(scene.viewpoint, 0)
    return len(alike) >= ALIKE * len(scene.minds) and own >= max([1, *(AHEAD * times for times in sure.values())])


def _strays(scene: _Scene) -> list[Thought]:
    """Thoughts that surely are others', among thoughts of the one whose scene it is."""
    return [
        one
        for place, (one, its) in enumerate(scene.pairs())
        if its == "other"
        and one.known
        and one.mention.kind != "self"
        and not one.mention.form.endswith("self")
        and (one.plain or not scene.tells)  # an I that is guessed at may be 'he' in a tale within the tale
        and (scene.marked or (_is_alone(scene, place) and not _is_passage(scene, place)))
    ]


def _is_alone(scene: _Scene, place: int) -> bool:
    """Whether nearly all thoughts around it are of the one whose scene it is; what it goes on to say is not counted."""
    here = scene.minds[place]
    sides = [
        (at, its)
        for at, (one, its) in enumerate(scene.pairs())
        if (its == "own" or one.known) and (one.person, one.mention.paragraph) != (here.person, here.mention.paragraph)
    ]
    before, behind = ([its for at, its in sides if at < place], [its for at, its in sides if at > place])
    around = [*before[-AROUND:], *behind[:AROUND]]
    return around.count("own") >= max(OWN, len(around) - ALL_BUT)


def _is_passage(scene: _Scene, place: int) -> bool:
    """Whether it is one of several with which a scene opens or closes: then it is not the one's yet, or no longer."""
    inner = [(at, its == "own") for at, (one, its) in enumerate(scene.pairs()) if one.inward or its == "own"]
    runs = [(own, [at for at, _ in run]) for own, run in groupby(inner, key=itemgetter(1))]
    return any(not own and len(run) > 1 and place in run for own, run in (runs[0], runs[-1]))


def _is_within(seen: Seen, scene: _Scene, stray: Thought) -> bool:
    """Whether the one whose scene it is was there before it, is named or meant right beside it and is so afterwards,
    and nothing behind it goes on with the other: else the telling has turned."""
    if scene.tells:
        return True
    facts, at = seen.facts[scene.number], stray.mention.paragraph
    people = meant(facts, seen.book.cast)
    own = [one for one, who in zip(facts.mentions, people, strict=True) if who == scene.viewpoint]
    here = [*(one.paragraph for one in own), *(one.mention.paragraph for one, its in scene.pairs() if its == "own")]
    return (
        min(here) <= at <= max(here)
        and any(_is_beside(seen, scene.number, stray.mention, one) for one in own)
        and not _goes_on(seen, scene.number, stray)
    )


def _is_beside(seen: Seen, number: int, stray: Mention, own: Mention) -> bool:
    """Whether the telling has the viewpoint a few paragraphs off, and not only in what the other thinks."""
    start, end = sentence(seen.texts[number][stray.paragraph], stray.start, stray.end)
    apart = own.paragraph != stray.paragraph or not start <= own.start < end
    return apart and not own.spoken and abs(own.paragraph - stray.paragraph) <= BESIDE


def _goes_on(seen: Seen, number: int, stray: Thought) -> bool:
    """Whether the sentence behind tells what the other would or had: 'He would not have liked it.'"""
    mind = stray.mention
    text = seen.texts[number][mind.paragraph]
    end = sentence(text, mind.start, mind.end)[1]
    behind = text[slice(*sentence(text, end + 1, end + 1))] if end + 1 < len(text) else ""
    return bool(_INNER.search(behind) and _OF[stray.gender].search(behind))


def _is_namesake(seen: Seen, scene: _Scene, stray: Thought) -> bool:
    """Whether both go by one surname, and may be one man who is known by two names."""
    one, other = (set(seen.name(who).split()) for who in (scene.viewpoint, stray.person))
    return bool({word for word in one & other if word.lower().rstrip(".") not in TITLES | ROLES})


def _findings(seen: Seen, scene: _Scene | None, strays: Sequence[Thought], number: int = 0) -> Iterator[Finding]:
    """One for each whose mind it is; where that is not sure, for each 'he'. `scene` is None where it is not known whose
    the scene is: then it is the one of that number."""
    by: dict[str, list[Thought]] = {}
    for one in strays:
        by.setdefault(one.person if one.sure >= SURE else one.gender, []).append(one)
    at, own = (scene.number, scene.viewpoint) if scene else (number, "")
    for who, some in by.items():
        said = [seen.span(at, one.mention.paragraph, one.mention.start, one.mention.end) for one in some]
        named = seen.name(who)
        yield Finding(
            evidence=tuple(dict.fromkeys(map(seen.sentence, said)))[:SHOWN],
            strength=ONCE if not scene else 0.65 if some[0].plain else 0.5,
            subject="viewpoint",
            words={"viewpoint": seen.name(own), "other": named or ("“she”" if who == "f" else "“he”")},
            people=tuple(one for one in (own, who if named else "") if one),
        )


CHECK = Check(
    id="viewpoint",
    name="Thoughts of somebody else",
    family="viewpoint",
    looks_at="A sentence that tells what somebody thinks or feels, in a scene that keeps to another's thoughts or that "
    "another tells as ‘I’; and the only thought of somebody in the whole book, where others are with whom it goes.",
    method="Whose scene it is comes from your marks, else from who plainly thinks and perceives most. Another's "
    "thought is asked about where the thoughts around it are the viewpoint's, where a clause of its own tells it as "
    "known, and where it can be nobody else's: a name thinks, or a ‘he’ or ‘she’ right behind the one name; where the "
    f"viewpoint is no more than {BESIDE} paragraphs off, and the sentence behind does not go on with the other (‘He "
    "would not have liked it’). In scenes of an I, and where somebody's mind is entered in no other scene while "
    "somebody is there whose mind is, no thoughts of the viewpoint's need stand round it. Only in books of "
    f"{SCENES} scenes and more with somebody's mind, most of which keep to one, and where strays are rare. In scenes "
    "whose viewpoint you marked, also any ‘he’ or ‘she’ that can only be another's. The rule is our own.",
    blind="Thoughts without a verb of thought. What somebody knows or decides, where what is done shows it. A ‘he’ "
    "who may be either of two. What others hope and believe, where an I tells. Passages that open or close a scene "
    "with another. Books whose telling knows everybody's mind are not asked about.",
    reads=("words", "cast", "marks"),
    find=find,
    recipe=11,
)
