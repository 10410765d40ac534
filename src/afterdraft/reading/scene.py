"""`scene_facts`: the paragraphs of one scene, analysed, to what can be said of it."""

from collections.abc import Iterable, Mapping, Sequence
from itertools import chain, groupby

from afterdraft.manuscript.words import count
from afterdraft.reading import tag_subjects, tags
from afterdraft.reading.analysed import Analysed
from afterdraft.reading.events import events
from afterdraft.reading.facts import Mention, Quote, SceneFacts
from afterdraft.reading.grammar import Grammar, grammar
from afterdraft.reading.measures import counted
from afterdraft.reading.mentions import hides, mentions, names_within
from afterdraft.reading.names_besides import names_besides
from afterdraft.reading.place import Place
from afterdraft.reading.places import places
from afterdraft.reading.quotations import Quote as Stretch
from afterdraft.reading.quotations import quotations
from afterdraft.reading.time import Time
from afterdraft.reading.times import times
from afterdraft.reading.trait import Trait
from afterdraft.reading.traits import traits

RECIPE = 29  # part of every cache key: a change of what is read off a scene counts it up


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
    leading: tuple[tags.Tag, Mention] | None = None  # from the paragraph before, where that leads up to this one
    for number, (paragraph, here) in enumerate(zip(paragraphs, _mentions(paragraphs, stretches), strict=True)):
        spoken = stretches.get(number, [])
        spans = _spans(spoken)
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


def _mentions(paragraphs: Sequence[Analysed], stretches: Mapping[int, Sequence[Stretch]]) -> list[tuple[Mention, ...]]:
    """Of each paragraph; read again where a name of the scene is hidden in it."""
    speech = [_spans(stretches.get(number, ())) for number in range(len(paragraphs))]
    besides = names_besides(one.text for one in paragraphs)
    found = [mentions(one, number, speech[number], besides) for number, one in enumerate(paragraphs)]
    known = names_within(chain.from_iterable(found)) | besides
    return [
        mentions(one, number, speech[number], known) if hides(one, known) else here
        for number, (one, here) in enumerate(zip(paragraphs, found, strict=True))
    ]


def _spans(spoken: Iterable[Stretch]) -> list[tuple[int, int]]:
    return [(one.start, one.end) for one in spoken]


def _by_paragraph(stretches: Iterable[Stretch]) -> dict[int, list[Stretch]]:
    return {number: list(group) for number, group in groupby(stretches, key=lambda one: one.paragraph)}


def _quotes(
    within: tag_subjects.Told, spoken: Sequence[Stretch], base: int, leading: tuple[tags.Tag, Mention] | None
) -> list[Quote]:
    """Each stretch with its tag."""
    text = within.grammar.of.text
    made: list[Quote] = []
    last: tags.Tag | None = None  # behind the stretch before, where the sentence goes on to this one
    for place, one in enumerate(spoken):
        begin = spoken[place - 1].end if place else 0
        end = spoken[place + 1].start if place + 1 < len(spoken) else len(text)
        behind = tags.after(within, one.end, end)
        tag = _tag(within, begin, one.start, behind, last)
        last = behind if behind and behind.plain and tags.run_on(text, one.end, end) else None
        number = base + tag.mention if tag else None
        plain = bool(tag and tag.plain)
        if leading and not place and not text[: one.start - 1].strip() and _leads(leading, tag, within.mentions):
            number, plain = leading[0].mention, leading[0].plain
        words = count(text[one.start : one.end])
        made.append(Quote(one.paragraph, one.start, one.end, one.goes_on, words, number, plain))
    return made


def _tag(
    within: tag_subjects.Told, begin: int, start: int, behind: tags.Tag | None, last: tags.Tag | None
) -> tags.Tag | None:
    """What follows a stretch first, then what leads up to it; where a sentence goes on to it, what stands there."""
    if behind and behind.plain and not last:
        return behind
    ahead = tags.before(within, begin, start)
    if last:
        return ahead if ahead and ahead.plain else last
    return ahead if ahead and (ahead.plain or not behind) else behind


def _leads(leading: tuple[tags.Tag, Mention], tag: tags.Tag | None, here: Sequence[Mention]) -> bool:
    """Whether the paragraph before tells who speaks: where nothing else does, or by name where it is a pronoun."""
    told, mention = leading
    if not tag or (told.plain and not tag.plain):
        return True
    return told.plain and mention.kind == "name" and here[tag.mention].kind == "pronoun"


def _leading(
    parsed: Grammar, spoken: Sequence[Stretch], here: Sequence[Mention], base: int
) -> tuple[tags.Tag, Mention] | None:
    """A paragraph that ends in a colon, a comma or no stop at all, or says that somebody speaks, leads to the next."""
    text = parsed.of.text.rstrip()
    begin = spoken[-1].end if spoken else 0
    if not text:
        return None
    within = tag_subjects.told(parsed, here)
    if text.endswith((":", ",", ":—", ":--", ",—")) or text[-1].isalpha():
        tag = tags.before(within, begin, len(parsed.of.text))
    else:
        tag = None if spoken else tags.leading(within, begin)
    return (tags.Tag(base + tag.mention, tag.plain), here[tag.mention]) if tag else None
