"""Names of places against LitBank's entities (CC BY 4.0): facilities, towns and countries, natural places."""

from dataclasses import dataclass

from afterdraft.reading.scene import scene_facts
from afterdraft.whole.book import read_book
from afterdraft.whole.places import find_places
from bench.measures.litbank import Part, passages, place_names
from bench.reading.kept import analysed


@dataclass(frozen=True, slots=True)
class Score:
    precision: float
    recall: float
    known: int


def place_score(part: Part) -> Score:
    """Of mentions by name: one is right where it shares a word with a marked one. A passage is read as one scene of a
    book of its own, so that little can be learnt from elsewhere in the book."""
    right = said = hit = known = 0
    for passage in passages(part):
        facts = scene_facts(analysed(passage.paragraphs))
        cast = read_book([facts]).cast
        found = find_places([facts], people=[form for one in cast.people for form in one.aliases])
        forms = {form for one in found.places for form in one.forms}
        ours = [(p.paragraph, p.start, p.end) for p in facts.places if p.name and p.form in forms]
        theirs = place_names(passage)
        right += sum(any(_share(one, other) for other in theirs) for one in ours)
        hit += sum(any(_share(one, other) for other in ours) for one in theirs)
        said, known = said + len(ours), known + len(theirs)
    return Score(right / max(1, said), hit / max(1, known), known)


def _share(one: tuple[int, int, int], other: tuple[int, int, int]) -> bool:
    return one[0] == other[0] and one[1] < other[2] and other[1] < one[2]
