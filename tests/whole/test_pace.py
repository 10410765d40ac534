import pytest

from afterdraft.reading.counted import Counted, Event
from afterdraft.reading.facts import SceneFacts
from afterdraft.whole.measures_form import measures_form
from afterdraft.whole.pace import Measures, Mode, Paced, Run, Tempo, measure, measured, paced, runs


def counted(**given: float) -> Counted:
    return Counted(**(dict.fromkeys(Counted.__slots__, 0) | given))  # type: ignore[arg-type]  # counts by name


def of(words: int = 1000, *, speech: float = 0.0, events: float = 2.0) -> Measures:
    return Measures(words, 50, speech, events, 20.0, 0.1, "third", "past")


def test_measures_of_a_scene_are_sums_of_its_paragraphs() -> None:
    scene = SceneFacts(
        2,
        counted=(
            counted(words=30, sentences=2, spoken=10, past=3, third=2, valence=0.5),
            counted(words=10, sentences=1, past=1, present=2, valence=-0.5),
        ),
        events=(Event(0, 0, 4), Event(1, 0, 3)),
    )
    assert measure(scene) == Measures(40, 3, 0.25, 5.0, 40 / 3, 0.25, "third", "past")


def test_a_scene_without_words_has_measures_too() -> None:
    assert measure(SceneFacts(0)) == Measures(0, 0, 0.0, 0.0, 0.0, 0.0, "third", "past")


@pytest.mark.parametrize(
    ("first", "second", "third", "expected"),
    [
        (20, 0, 80, "first"),
        (2, 0, 80, "third"),
        (2, 9, 3, "second"),
        (1, 0, 2, "third"),
        (2, 0, 1, "first"),
        (0, 0, 0, "third"),
    ],
)
def test_the_person_that_tells(first: int, second: int, third: int, expected: str) -> None:
    assert measure(SceneFacts(1, counted=(counted(first=first, second=second, third=third),))).person == expected


def test_reading_minutes_are_at_260_words_a_minute() -> None:
    # Brysbaert (2019), How many words do we read per minute?, Journal of Memory and Language 109: fiction, 260
    assert of(2600).reading_minutes == 10


@pytest.mark.parametrize(
    ("minutes", "expected", "rate"),
    [
        (None, None, None),
        (7.0, "scene", 1000 / 7),  # talked through
        (60.0, "scene", 1000 / 60),
        (600.0, "summary", 1000 / 600),
        (0.0, "pause", None),
        (0.5, "pause", 2000.0),
    ],
)
def test_tempo_is_words_beside_story_time(minutes: float | None, expected: Tempo | None, rate: float | None) -> None:
    (one,) = paced([of()], minutes=[minutes])
    assert (one.tempo, one.rate) == (expected, rate)


def test_time_left_out_is_an_ellipsis_from_a_day() -> None:
    found = paced([of(), of(), of()], gaps=[None, 60, 3 * 24 * 60])
    assert [one.left_out for one in found] == [None, None, 3 * 24 * 60]


def test_modes_are_by_speech_and_by_the_books_own_events() -> None:
    some = [of(speech=0.6), of(events=1.0), of(events=2.0), of(events=3.0)]
    assert [one.mode for one in paced(some)] == ["speech", "telling", "events", "events"]
    assert paced([]) == ()


def test_runs_of_one_mode() -> None:
    modes: list[Mode] = ["speech", "speech", "events", "telling", "telling", "telling"]
    paces = [Paced(mode) for mode in modes]
    assert runs(paces) == (Run(0, 2, "speech"), Run(3, 6, "telling"))
    assert runs(paces, least=3) == (Run(3, 6, "telling"),)


def test_the_published_keys() -> None:
    (entry,) = measures_form(
        measured([SceneFacts(1, counted=(counted(words=260, sentences=3, spoken=26, valence=0.123),))])
    )
    assert entry == {
        "scene": 0,
        "words": 260,
        "sentences": 3,
        "speech_share": 0.1,
        "events_per_100": 0.0,
        "words_per_sentence": 86.67,
        "valence": 0.123,
        "person": "third",
        "tense": "past",
        "reading_minutes": 1.0,
        "mode": "events",
    }
