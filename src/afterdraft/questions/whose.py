"""Whom the words of a passage are said of, as far as that is known."""

from afterdraft.questions.seen import Seen
from afterdraft.whole.book import genders
from afterdraft.whole.evidence import told_by_i
from afterdraft.whole.owners import BY_NAME, Owners
from afterdraft.whole.pronoun_cautions import Owner

NAMED = BY_NAME
SETTLED = 0.75  # the same, of 'she' in a paragraph that names one woman alone; chosen by hand


class Whose:
    """Of a book that was read."""

    def __init__(self, seen: Seen) -> None:
        self._seen = seen

    def subject(self, scene: int, paragraph: int, start: int, end: int) -> Owner | None:
        """Who is the last to do or be something in these words; None where that is nobody of the cast."""
        return self._last(scene, paragraph, start, end, subjects=True)

    def last(self, scene: int, paragraph: int, start: int, end: int) -> Owner | None:
        """Who is meant last in these words, likewise."""
        return self._last(scene, paragraph, start, end, subjects=False)

    def ending(self, scene: int, paragraph: int, end: int) -> Owner | None:
        """Who is meant by the words that end there, likewise."""
        mentions = self._seen.facts[scene].mentions
        found = [place for place, one in enumerate(mentions) if (one.paragraph, one.end) == (paragraph, end)]
        return self.owners(scene)[found[-1]] if found else None

    def settled(self, scene: int, mention: int) -> Owner | None:
        """Who is meant by it, surer where the paragraph before it names that person and nobody else of the gender:
        'It was Ada. She came in, and she had'."""
        owner, one = self.owners(scene)[mention], self._seen.facts[scene].mentions[mention]
        if owner is None or owner[1] >= SETTLED or one.kind != "pronoun":
            return owner
        known = genders(self._seen.book.cast.people)
        named = {
            other[0]
            for other, met in zip(self.owners(scene)[:mention], self._seen.facts[scene].mentions, strict=False)
            if other and met.kind == "name" and met.paragraph == one.paragraph and not met.spoken
        }
        alike = {person for person in named if known.get(person, "") in ("", one.gender)}
        return (owner[0], SETTLED) if alike == {owner[0]} else owner

    def teller(self, scene: int, paragraph: int, start: int) -> Owner | None:
        """Who tells the scene, where an I or a 'my' outside speech begins there."""
        facts, narrator = self._seen.facts[scene], self._seen.book.told[scene].narrator
        at = any(
            (one.paragraph, one.start, one.kind, one.spoken) == (paragraph, start, "self", False)
            for one in facts.mentions
        )
        return (narrator.id, NAMED) if at and narrator and told_by_i(facts) else None

    def _last(self, scene: int, paragraph: int, start: int, end: int, *, subjects: bool) -> Owner | None:
        found: int | None = None
        for place, one in enumerate(self._seen.facts[scene].mentions):
            within = one.paragraph == paragraph and start <= one.start and one.end <= end
            if within and (one.subject or not subjects):
                found = place
        return None if found is None else self.owners(scene)[found]

    def owners(self, scene: int) -> Owners:
        """Beside each mention of a scene."""
        return self._seen.owners(scene)
