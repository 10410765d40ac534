"""`scene_facts`: the paragraphs of one scene, analysed, to what can be said of it."""

from collections.abc import Iterable, Sequence
from itertools import groupby

from afterdraft.manuscript.words import count
from afterdraft.reading import tag_subjects, tags
from afterdraft.reading.analysed import Analysed
from afterdraft.reading.events import events
from afterdraft.reading.facts import Mention, Quote, SceneFacts
from afterdraft.reading.grammar import Grammar, grammar
from afterdraft.reading.measures import counted
from afterdraft.reading.mentions import mentions
from afterdraft.reading.place import Place
from afterdraft.reading.places import places
from afterdraft.reading.quotations import Quote as Stretch
from afterdraft.reading.quotations import quotations
from afterdraft.reading.time import Time
from afterdraft.reading.times import times
from afterdraft.reading.trait import Trait
from afterdraft.reading.traits import traits

RECIPE = 11  # part of every cache key: a change of what is read off a scene counts it up


def scene_facts(analysed: Iterable[Analysed]) -> SceneFacts:
    """The facts of one scene, from its paragraphs in order."""
    paragraphs = list(analysed)
    stretches = _by_paragraph(quotations([paragraph.text for paragraph in paragraphs]))
    found: list[Mention] = []
    quotes: list[Quote] = []
    parsed: list[Grammar] = []
    described: list[Trait] = []
    when: list[Time] = []
    where: list[Place] = []
    leading: tags.Tag | None = None  # from the paragraph before, where that ends in a colon
    for number, paragraph in enumerate(paragraphs):
        spoken = stretches.get(number, [])
        spans = [(one.start, one.end) for one in spoken]
        here = mentions(paragraph, number, spans)
        parsed.append(grammar(paragraph, spans))
        dated = times(paragraph.text, number, spans)
        when.extend(dated)
        where.extend(places(paragraph, number, spans, dated))
        described.extend(traits(parsed[-1], number, here, len(found)))
        if spoken:
            quotes.extend(_quotes(tag_subjects.told(parsed[-1], here), spoken, len(found), leading))
        leading = _leading(parsed[-1], spoken, here, len(found))
        found.extend(here)
    return SceneFacts(
        len(paragraphs),
        tuple(found),
        tuple(quotes),
        counted=tuple(map(counted, parsed)),
        events=events(parsed),
        traits=tuple(described),
        times=tuple(when),
        places=tuple(where),
    )


def _by_paragraph(stretches: Iterable[Stretch]) -> dict[int, list[Stretch]]:
    return {number: list(group) for number, group in groupby(stretches, key=lambda one: one.paragraph)}


def _quotes(within: tag_subjects.Told, spoken: Sequence[Stretch], base: int, leading: tags.Tag | None) -> list[Quote]:
    """Each stretch with its tag: what follows it first, then what leads up to it."""
    made = []
    paragraph = within.grammar.of
    for place, one in enumerate(spoken):
        begin = spoken[place - 1].end if place else 0
        end = spoken[place + 1].start if place + 1 < len(spoken) else len(paragraph.text)
        behind = tags.after(within, one.end, end)
        ahead = tags.before(within, begin, one.start) if not (behind and behind.plain) else None
        tag = ahead if ahead and (ahead.plain or not behind) else behind
        if tag:
            tag = tags.Tag(base + tag.mention, tag.plain)
        elif leading and not place and not paragraph.text[: one.start - 1].strip():
            tag = leading
        words = count(paragraph.text[one.start : one.end])
        made.append(
            Quote(
                one.paragraph,
                one.start,
                one.end,
                one.goes_on,
                words,
                tag.mention if tag else None,
                bool(tag and tag.plain),
            )
        )
    return made


def _leading(parsed: Grammar, spoken: Sequence[Stretch], here: Sequence[Mention], base: int) -> tags.Tag | None:
    """A paragraph that ends in a colon, a comma or no stop at all leads up to the next."""
    told = parsed.of.text.rstrip()
    begin = spoken[-1].end if spoken else 0
    if not told or not (told.endswith((":", ",", ":—", ":--", ",—")) or told[-1].isalpha()):
        return None
    tag = tags.before(tag_subjects.told(parsed, here), begin, len(parsed.of.text))
    return tags.Tag(base + tag.mention, tag.plain) if tag else None
