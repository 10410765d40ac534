"""A date that the telling cannot have come to: it runs back or ahead of those round it, has another year than they, or
is that of the evening of a day that was told under another. The author's own dates over entries, or sentences of the
author's that are made to say the days."""

import re
from collections.abc import Iterator, Sequence
from datetime import date, timedelta
from random import Random

from bench.faults import days
from bench.faults.planted import Edit, Fault, Scenes, Shown
from bench.faults.prose import head, names, opened, runs

FAR = 30  # paragraphs between two days
STEP = range(1, 8)  # days from one to the next
OFF = range(3, 25)  # days by which one runs back or ahead
BACK = 0.6  # share of those that run back
_ENTRY = re.compile(rf"^(?:(\d{{1,2}}) ({'|'.join(days.MONTHS)})|({'|'.join(days.MONTHS)}) (\d{{1,2}}))(?=[.,—])")
FIRST = ("On {day},", "It was {day}.", "On the morning of {day},")
NEXT = ("On {day},", "It was {day}.", "It was now {day}.")
EVENING = ("That same evening, {day},", "It was the evening of the same day, {day}.", "That night, {day},")


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    found = list(runs(scenes, names(scenes, 20), FAR))
    entries = list(_entries(scenes))
    for scene, run in random.sample(found, len(found)):
        form = random.choice((_out_of_order, _other_year, _same_evening, _entry))
        if form is _entry and entries:
            yield _entry(scenes, random, *random.choice(entries))
        elif form is _same_evening and len(run) > 1:
            yield _same_evening(scenes, random, scene, run)
        elif len(run) > 2:
            yield (_other_year if form is _other_year else _out_of_order)(scenes, random, scene, run)


def _out_of_order(scenes: Scenes, random: Random, scene: int, run: Sequence[int]) -> Fault:
    told = _days(random)
    off = timedelta(random.choice(OFF))
    told[1] = told[0] - off if random.random() < BACK else told[2] + off
    return _fault(scenes, random, scene, run, told, years=False)


def _other_year(scenes: Scenes, random: Random, scene: int, run: Sequence[int]) -> Fault:
    told = _days(random)
    told[1] = told[1].replace(year=told[1].year + random.choice((-10, -1, 1, 10)), day=min(28, told[1].day))
    return _fault(scenes, random, scene, run, told, years=True)


def _days(random: Random) -> list[date]:
    first = days.some_day(random)
    second = first + timedelta(random.choice(STEP))
    return [first, second, second + timedelta(random.choice(STEP))]


def _fault(
    scenes: Scenes, random: Random, scene: int, run: Sequence[int], told: Sequence[date], *, years: bool
) -> Fault:
    """The middle one of three first."""
    style, begin = random.choice(days.STYLES), random.randrange(len(run) - 2)
    phrases = []
    for number, day in enumerate(told):
        said = days.said(day, style) + (f", {day.year}" if years else "")
        phrases.append(random.choice(NEXT if number else FIRST).format(day=said))
    return _planted(scenes, scene, run[begin : begin + 3], phrases, first=1)


def _same_evening(scenes: Scenes, random: Random, scene: int, run: Sequence[int]) -> Fault:
    style, begin = random.choice(days.STYLES), random.randrange(len(run) - 1)
    day = days.some_day(random)
    other = day + timedelta(random.choice((-2, -1, 1, 2, 3)))
    phrases = [
        random.choice(FIRST).format(day=days.said(day, style)),
        random.choice(EVENING).format(day=days.said(other, style)),
    ]
    return _planted(scenes, scene, run[begin : begin + 2], phrases, first=1)


def _planted(scenes: Scenes, scene: int, places: Sequence[int], phrases: Sequence[str], first: int) -> Fault:
    texts = [opened(phrase, scenes[scene][at]) for at, phrase in zip(places, phrases, strict=True)]
    shown = [Shown(scene, head(phrase, text)) for phrase, text in zip(phrases, texts, strict=True)]
    return Fault(
        "date",
        tuple(Edit(scene, at, (text,)) for at, text in zip(places, texts, strict=True)),
        (shown[first], *shown[:first], *shown[first + 1 :]),
    )


def _entries(scenes: Scenes) -> Iterator[tuple[int, list[int], list[date]]]:
    """Scenes with three of the author's entries in order of their dates, and near one another."""
    for number, scene in enumerate(scenes):
        dated = [(at, match) for at, text in enumerate(scene) if (match := _ENTRY.match(text))]
        for some in zip(dated, dated[1:], dated[2:], strict=False):
            told = [_day(match) for _, match in some]
            if told[0] < told[1] < told[2] <= told[0] + timedelta(40):
                yield number, [at for at, _ in some], told


def _day(match: re.Match[str]) -> date:
    day, month, month2, day2 = match.groups()
    return date(1900, days.MONTHS.index(month or month2) + 1, int(day or day2))


def _entry(scenes: Scenes, random: Random, scene: int, places: Sequence[int], told: Sequence[date]) -> Fault:
    """The middle entry under a date before the first, or behind the third."""
    off = timedelta(random.choice(OFF))
    wrong = told[0] - off if random.random() < BACK else told[2] + off
    texts = [scenes[scene][at] for at in places]
    matches = [match for text in texts if (match := _ENTRY.match(text))]
    style = "3 May" if matches[1][1] else "May 3"
    becomes = days.said(wrong, style) + texts[1][matches[1].end() :]
    shown = [Shown(scene, head("", text)) for text in (becomes, texts[0], texts[2])]
    return Fault("date", (Edit(scene, places[1], (becomes,)),), tuple(shown))
