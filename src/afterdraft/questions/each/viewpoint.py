"""Thoughts of somebody else within a scene that keeps to one person's."""

from collections.abc import Iterator, Sequence

from afterdraft.questions.check import Check
from afterdraft.questions.known_anyway import is_beast
from afterdraft.questions.minds import STRANGER, SURE, Thought, teller, thoughts
from afterdraft.questions.minds_book import knows_all
from afterdraft.questions.minds_once import entered_once, of_no_i
from afterdraft.questions.minds_scene import MindScene, keeps, mind_scenes
from afterdraft.questions.minds_within import BESIDE, is_namesake, is_within, strays_in
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen

CLEAN = 0.5  # share of scenes with anybody's mind in them that keep to one, below which the telling knows all
STRAYED, STRAYS = 3, 0.11  # of those, how many, and what share, may have a stray before it is the manner
SCENES = 3  # with anybody's mind, below which a book has no manner; all of these chosen on the tuning half
MANY = 0.35  # share of scenes with two minds, from which no scene is taken to keep to one
ONCE = 0.6  # strength where it is not known whose the scene is
SHOWN = 3  # sentences that are shown


def find(seen: Seen) -> Iterator[Finding]:
    minds = {number: thoughts(seen, number) for number in seen.scenes}
    scenes = list(mind_scenes(seen, minds))
    keep = [one for one in scenes if keeps(one)]
    strays = {one.number: strays_in(one) for one in scenes if one.marked or one in keep}
    often = sum(bool(strays[one.number]) for one in keep if not one.marked)
    mostly = len(scenes) >= SCENES and len(keep) >= CLEAN * len(scenes) and often <= max(STRAYED, STRAYS * len(keep))
    mostly = mostly and not knows_all(seen, minds, MANY)
    asked: set[int] = set()
    for one in scenes:
        if one.number in strays and (one.marked or mostly):
            plain = [it for it in strays[one.number] if it.plain or one.marked]
            within = [it for it in plain if one.marked or is_within(seen, one, it)]
            found = list(_findings(seen, one, [it for it in within if not is_namesake(seen, one, it)]))
            asked |= {one.number} if found else set()
            yield from found
    for number, some in of_no_i(seen, minds).items():
        if number not in asked and (who := teller(seen, number)):
            yield from _findings(seen, MindScene(number, who, "", False, True, (), ()), some)
    for number, some in entered_once(seen, minds).items():
        if number not in asked:  # and those that are not within their scene stay unasked
            yield from _findings(seen, None, [one for one in some if one not in strays.get(number, ())], number)


def _findings(seen: Seen, scene: MindScene | None, strays: Sequence[Thought], number: int = 0) -> Iterator[Finding]:
    """One for each whose mind it is; where that is not sure, for each 'he'. `scene` is None where it is not known whose
    the scene is: then it is the one of that number."""
    by: dict[str, list[Thought]] = {}
    for one in strays:
        by.setdefault(one.person if one.sure >= SURE else one.gender, []).append(one)
    at, own = (scene.number, scene.viewpoint) if scene else (number, "")
    for who, some in by.items():
        if is_beast(seen, who.removeprefix(STRANGER) if who.startswith(STRANGER) else seen.name(who)):
            continue
        said = [seen.span(at, one.mention.paragraph, one.mention.start, one.mention.end) for one in some]
        named = said[0].quote if who.startswith(STRANGER) else seen.name(who)
        yield Finding(
            evidence=tuple(dict.fromkeys(map(seen.sentence, said)))[:SHOWN],
            strength=ONCE if not scene else 0.65 if some[0].plain else 0.5,
            subject="viewpoint",
            words={"viewpoint": seen.name(own), "other": named or ("“she”" if who == "f" else "“he”")},
            people=tuple(one for one in (own, who) if seen.name(one)),
        )


CHECK = Check(
    id="viewpoint",
    name="Thoughts of somebody else",
    family="viewpoint",
    looks_at="A sentence that tells what somebody thinks or feels, in a scene that keeps to another's thoughts or that "
    "another tells as ‘I’; and the only thought of somebody in the whole book, where others are with whom it goes.",
    method="Whose scene it is comes from your marks, else from who plainly thinks and perceives most. Another's "
    "thought is asked about where the thoughts around it are the viewpoint's, the first of them before it; "
    "where a clause of its own tells it as known, and of those that stray alone in words for what nobody sees "
    "(wondered, was thinking of, it occurred to), or it is said that nobody was told; and where it can be nobody "
    "else's: a name thinks, or a ‘he’ or ‘she’ behind the one name; where the "
    f"viewpoint is no more than {BESIDE} paragraphs off, lines of speech not counted, and the sentence behind does not "
    "go on with the other (‘He would not have liked it’). What is told aloud without marks (‘he said’ in its sentence "
    "or in those before it), or seen by somebody (‘she saw’), is no such thought. In scenes of an I, who is near and "
    "does not say how it knows, and where somebody's mind is entered in no other scene while somebody is there whose "
    "mind is, no thoughts of the viewpoint's need stand round it, but those words are needed. Only in books "
    f"of {SCENES} scenes and more with somebody's mind, most of which keep to one, where strays are rare. In scenes "
    "whose viewpoint you marked, also any ‘he’ or ‘she’ that can only be another's. The rule is our own.",
    blind="Thoughts without a verb of thought. What somebody knows or decides, where what is done shows it. A ‘he’ "
    "who may be either of two. What others hope and believe, where an I tells. A thought of somebody with whom other "
    "scenes go, where the viewpoint's own are few. Passages that open or close a scene with another. Books whose "
    "telling knows everybody's mind are not asked about.",
    reads=("words", "cast", "marks"),
    find=find,
    recipe=18,
)
