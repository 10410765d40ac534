"""Whether names held for people are people's, on passages of LitBank (CC BY 4.0), each read as a book of its own."""

from dataclasses import dataclass

from afterdraft.reading.scene import scene_facts
from afterdraft.whole.cast import find_cast
from afterdraft.whole.turns import meant
from bench.measures.litbank import Part, named, passages
from bench.reading.kept import analysed


@dataclass(frozen=True, slots=True)
class Named:
    """Names in the text, counted one by one."""

    held: int = 0  # by us for somebody's
    right: int = 0  # of these, somebody's by the corpus
    people: int = 0  # somebody's by the corpus
    met: int = 0  # of these, held by us for somebody's

    def __add__(self, other: "Named") -> "Named":
        return Named(self.held + other.held, self.right + other.right, self.people + other.people, self.met + other.met)


def people_named(part: Part) -> Named:
    """Over all passages of a part; a name is the same as the corpus's where both end on the same word."""
    total = Named()
    for passage in passages(part):
        facts = scene_facts(analysed(passage.paragraphs))
        who = meant(facts, find_cast([facts]))
        held = {
            (one.paragraph, one.end)
            for one, person in zip(facts.mentions, who, strict=True)
            if one.kind == "name" and person
        }
        people, names = named(passage)
        total += Named(len(held), len(held & people), len(names), len(held & names))
    return total
