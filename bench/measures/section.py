"""The bench of measures, events, valence and traits as a section of the results."""

import time
from collections.abc import Callable, Iterator, Sequence

from vaderSentiment.vaderSentiment import SentimentIntensityAnalyzer

from afterdraft.engine.pipeline import analyse
from afterdraft.manuscript.words import count
from afterdraft.reading.analysed import Analysed
from afterdraft.reading.events import events
from afterdraft.reading.grammar import grammar
from afterdraft.reading.measures import counted
from afterdraft.reading.mentions import mentions
from afterdraft.reading.scene import scene_facts
from afterdraft.reading.traits import traits
from afterdraft.reading.valence import valence
from afterdraft.whole.pace import measured
from bench import corpus
from bench.measures.litbank import Part, passages
from bench.measures.owners import Answer, answers
from bench.measures.read import Read, read
from bench.reading.kept import analysed
from bench.reading.novels import novel, titles
from bench.report import Figure, Section

REFERENCE = "rules 0.53; a large model 0.739 (Sims, Park & Bamman 2019)"
TOLD_BY_I = frozenset({"TheGambler", "TheMysteriousAffairAtStyles"})  # common knowledge; all 13 are in the past tense
LONG = 200  # words from which a chapter's person and tense are counted
SURE = 0.75
TIMED = "f-scott-fitzgerald_the-great-gatsby"


def measure(*, full: bool) -> Section:
    scores: dict[Part, tuple[float, float, float]] = {part: _events(read(part)) for part in ("test", "dev")}
    owners = list(answers())
    found = [one for one in owners if one.sure is not None]
    person, tense, chapters = _voices()
    share, seconds = _time()
    return Section(
        title="Measures, events, valence, traits",
        corpus=(
            "Events: LitBank (CC BY 4.0), weights from its train passages, tuned with dev, the test passages for "
            "reporting alone. Valence: its sentences, against the reference implementation. Traits: places labelled by "
            "hand in seven novels, all looked into after a first blind measuring ([how](measures/README.md))."
        ),
        figures=(
            Figure("events F1, test passages", scores["test"][2], target=0.63, at_most=False, reference=REFERENCE),
            Figure("events precision, test passages", scores["test"][0]),
            Figure("events recall, test passages", scores["test"][1]),
            Figure("events F1, dev passages", scores["dev"][2]),
            Figure("valence, sentences that differ from the reference", _differing(), unit="sentences", target=0),
            Figure("looks found with an owner: owner right", _share(found, lambda one: one.right)),
            Figure(
                f"the same, surer than {SURE}", _share([o for o in found if (o.sure or 0) > SURE], lambda o: o.right)
            ),
            Figure(
                "looks of somebody named: found and right", _share([o for o in owners if o.named], lambda o: o.right)
            ),
            Figure("chapters told in the person of their novel", person, note=f"{chapters} chapters of 13 novels"),
            Figure("chapters in the tense of their novel", tense),
            Figure("time beside the pipeline's pass over the same words", share, target=0.15),
            Figure("the same, for 120,000 words", seconds, unit="s"),
        ),
        lines=tuple(_table(owners)),
    )


def _events(some: Sequence[Read]) -> tuple[float, float, float]:
    """Precision, recall, F1."""
    right = said = there = 0
    for one in some:
        known = {(paragraph, one.paragraphs[paragraph].of.starts[token]) for paragraph, token in one.events}
        told = {(event.paragraph, event.start) for event in events(one.paragraphs)}
        right, said, there = right + len(known & told), said + len(told), there + len(known)
    return right / said, right / there, 2 * right / (said + there)


def _differing() -> float:
    reference = SentimentIntensityAnalyzer()
    parts: tuple[Part, ...] = ("train", "dev", "test")
    texts = [text for part in parts for one in passages(part) for text in one.paragraphs]
    return sum(abs(valence(text) - float(reference.polarity_scores(text)["compound"])) > 1e-6 for text in texts)


def _voices() -> tuple[float, float, int]:
    """Shares of chapters whose person and tense are those of their novel, and how many there are."""
    pairs = []
    for slug in titles():
        chapters = [scene_facts(analysed([p.text for p in chapter])) for chapter in novel(slug).chapters]
        person = "first" if slug in TOLD_BY_I else "third"
        pairs += [(one.person == person, one.tense == "past") for one in measured(chapters) if one.words >= LONG]
    return sum(p for p, _ in pairs) / len(pairs), sum(t for _, t in pairs) / len(pairs), len(pairs)


def _time() -> tuple[float, float]:
    """Of all that is measured: beside a bare pass of the pipeline over the same words, and for 120,000 words."""
    path = next(path for path in corpus.paths() if corpus.slug(path) == TIMED)
    scenes = [list(scene) for chapter in corpus.novel(path).chapters for scene in chapter.scenes]
    list(analyse(["A first one, so that nothing is cold."]))
    began = time.process_time()
    read_scenes = [list(analyse(scene)) for scene in scenes]
    passed = time.process_time()
    for scene in read_scenes:
        _measure(scene)
    took = time.process_time() - passed
    words = sum(count(text) for scene in scenes for text in scene)
    return took / (passed - began), took / words * 120_000


def _measure(scene: Sequence[Analysed]) -> None:
    """What reading does for measures, but for mentions and speech, which it needs anyway."""
    parsed = [grammar(one, ()) for one in scene]
    list(map(counted, parsed))
    events(parsed)
    for number, one in enumerate(parsed):
        list(traits(one, number, mentions(one.of, number, ()), 0))


def _share(some: Sequence[Answer], of: Callable[[Answer], bool]) -> float:
    return sum(map(of, some)) / max(1, len(some))


def _table(owners: Sequence[Answer]) -> Iterator[str]:
    yield "| novel | colours near eyes, hair, beard | of somebody named | found with an owner | owner right |"
    yield "|---|---:|---:|---:|---:|"
    for slug in dict.fromkeys(one.slug for one in owners):
        some = [one for one in owners if one.slug == slug]
        named, found = sum(one.named for one in some), sum(one.sure is not None for one in some)
        yield f"| {slug} | {len(some)} | {named} | {found} | {sum(one.right for one in some)} |"
