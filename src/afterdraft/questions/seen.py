"""What checks look at: the book's words, what reading found in them, and the writer's marks."""

import json
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from functools import cached_property
from hashlib import sha256
from typing import Literal, get_args

from afterdraft.questions.marks import NO_MARKS, Marks
from afterdraft.questions.question import Span
from afterdraft.questions.sentences import sentence
from afterdraft.reading.facts import SceneFacts
from afterdraft.reading.keeping import packed
from afterdraft.whole.book import BookRead, read_book, speak_anew
from afterdraft.whole.facts_form import spellings
from afterdraft.whole.given import NOTHING, Given
from afterdraft.whole.owners import Owners, owners_in
from afterdraft.whole.pace import Measures, measured
from afterdraft.whole.places import Places, find_places
from afterdraft.whole.speakers_kept import KeptSpeakers
from afterdraft.whole.story_time import StoryTime, story_time
from afterdraft.whole.task import given_form
from afterdraft.whole.told import RECIPE
from afterdraft.whole.traits import PersonTrait, find_traits

Part = Literal["words", "facts", "cast", "time", "marks"]
PARTS: tuple[Part, ...] = get_args(Part)
READ: frozenset[Part] = frozenset({"facts", "cast", "time"})  # parts that there are only where the text was read
# words: the text and its headings · facts: what was read of each scene alone · cast: people, who speaks, who is where,
# traits, with what she says of them · time: story time, with her words for it · marks: what she marked


Italics = Mapping[tuple[int, int], tuple[tuple[int, int], ...]]  # by scene and paragraph, where it stands in them


@dataclass(frozen=True)
class Seen:
    """Everything is by scene, in telling order. What takes work is worked out when first asked for."""

    texts: tuple[tuple[str, ...], ...]  # story paragraphs
    facts: tuple[SceneFacts, ...] = ()  # none where the text was not read
    heads: tuple[tuple[str, ...], ...] = ()  # lines of the heading right over each scene
    titles: tuple[str, ...] = ()  # what each scene is called on screen
    set_in: frozenset[tuple[int, int]] = frozenset()  # scene and paragraph of letters and reports that stand in
    italics: Italics = field(default_factory=dict)
    given: Given = NOTHING
    marks: Marks = NO_MARKS
    keys: tuple[str, ...] = ()  # of each scene's facts, where they are known
    speakers: str = ""  # what `KeptSpeakers` remembered of these facts, where it did: nothing else is told, but sooner
    _digests: dict[Part, str] = field(default_factory=dict, repr=False, compare=False)
    _owners: dict[int, Owners] = field(default_factory=dict, repr=False, compare=False)

    @property
    def is_read(self) -> bool:
        return bool(self.facts)

    @property
    def scenes(self) -> range:
        return range(len(self.texts))

    @cached_property
    def book(self) -> BookRead:
        speak = KeptSpeakers(self.keys, self.speakers, recipe=RECIPE) if self.keys and self.speakers else speak_anew
        return read_book(self.facts, self.given, speak, self.heads)

    @cached_property
    def story(self) -> StoryTime:
        return story_time(self.facts, self.heads, self.given.times)

    @cached_property
    def traits(self) -> tuple[PersonTrait, ...]:
        return find_traits(self.book, self.facts, self.owners)

    def owners(self, scene: int) -> Owners:
        """Beside each mention of a scene, whom it means, and how sure that is."""
        if scene not in self._owners:
            self._owners[scene] = owners_in(self.book, scene, self.facts[scene])
        return self._owners[scene]

    @cached_property
    def places(self) -> Places:
        people = [form for one in self.book.cast.people for form in one.aliases]
        return find_places(self.facts, self.given, people=people)

    @cached_property
    def measures(self) -> tuple[Measures, ...]:
        return measured(self.facts)

    @cached_property
    def spelled(self) -> Mapping[str, str]:
        """How each form of a name is mostly written."""
        return spellings(self.facts, self.texts)

    def name(self, person: str) -> str:
        """As the book writes it, or as she does; "" for nobody of the cast."""
        for one in self.book.cast.people:
            if one.id == person:
                return self.spelled.get(one.name, one.name)
        return ""

    def span(self, scene: int, paragraph: int, start: int, end: int) -> Span:
        return Span(scene, paragraph, start, end, self.texts[scene][paragraph][start:end])

    def sentence(self, span: Span) -> Span:
        """The whole sentence that holds it."""
        text = self.texts[span.scene][span.paragraph]
        return self.span(span.scene, span.paragraph, *sentence(text, span.start, span.end))

    def is_in_italics(self, scene: int, paragraph: int, start: int, end: int) -> bool:
        """Whether most of it is: then it is quoted, read or thought, and no words of the telling."""
        inside = (min(end, done) - max(start, begun) for begun, done in self.italics.get((scene, paragraph), ()))
        return 2 * sum(max(0, one) for one in inside) > end - start

    def digest(self, part: Part) -> str:
        """Of what a check that reads this part depends on."""
        if part not in self._digests:
            self._digests[part] = sha256(json.dumps(_OF[part](self)).encode()).hexdigest()
        return self._digests[part]


def _facts(seen: Seen) -> object:
    return list(seen.keys or map(packed, seen.facts))


def _cast(seen: Seen) -> object:
    form = given_form(seen.given)
    return [
        RECIPE,
        _facts(seen),
        seen.heads,
        {key: value for key, value in form.items() if key not in ("times", "settings")},
    ]


def _time(seen: Seen) -> object:
    return [RECIPE, _facts(seen), seen.heads, given_form(seen.given)["times"]]


_OF: Mapping[Part, Callable[[Seen], object]] = {
    "words": lambda seen: [seen.texts, seen.heads, sorted(seen.set_in), sorted(seen.italics.items())],
    "facts": _facts,
    "cast": _cast,
    "time": _time,
    "marks": lambda seen: repr(seen.marks),
}
