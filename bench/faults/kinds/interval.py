"""'Three days later' between two days that lie otherwise. Sentences of the author's are made to say them."""

from collections.abc import Iterator, Sequence
from datetime import timedelta
from random import Random

from bench.faults import days
from bench.faults.planted import Edit, Fault, Scenes, Shown
from bench.faults.prose import head, names, opened, runs

FAR = 30  # paragraphs between two days
FIRST = ("On {day},", "It was {day}.", "On the morning of {day},")
SECOND = ("{Count} days later, on {day},", "{Count} days afterwards, on {day},", "It was {day}, {count} days later.")
NEXT = ("The next morning, {day},", "The next day was {day}.", "On the following day, {day},")
ALONE = ("{Count} days later", "{Count} days after that", "After {count} days")
THIRD = ("It was now {day}.", "On {day},")


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    found = list(runs(scenes, names(scenes, 20), FAR))
    for scene, run in random.sample(found, len(found)):
        form = random.choice((_dates, _weekdays, _next_day, _between))
        many = 3 if form is _between else 2
        if len(run) >= many:
            begin = random.randrange(len(run) - many + 1)
            phrases, first = form(random)
            yield _fault(scenes, scene, run[begin : begin + many], phrases, first)


def _dates(random: Random) -> tuple[list[str], int]:
    style, day, count = random.choice(days.STYLES), days.some_day(random), random.randrange(2, 13)
    wrong = count + random.choice([off for off in (-3, -2, -1, 1, 2, 3) if count + off > 0])
    later = day + timedelta(wrong)
    return [
        random.choice(FIRST).format(day=days.said(day, style)),
        _counted(random.choice(SECOND), count, days.said(later, style)),
    ], 1


def _weekdays(random: Random) -> tuple[list[str], int]:
    day, count = days.some_day(random), random.randrange(2, 7)
    wrong = count + random.choice([off for off in (-2, -1, 1, 2) if 0 < count + off < 7])
    first, later = days.weekday(day), days.weekday(day + timedelta(wrong))
    return [random.choice(FIRST[:2]).format(day=first), _counted(random.choice(SECOND), count, later)], 1


def _next_day(random: Random) -> tuple[list[str], int]:
    style, day = random.choice(("", *days.STYLES)), days.some_day(random)
    later = day + timedelta(random.choice((2, 3, 4, 5)))
    first, second = (days.said(one, style) if style else days.weekday(one) for one in (day, later))
    if style:
        return [random.choice(FIRST).format(day=first), random.choice(NEXT).format(day=second)], 1
    return [random.choice(FIRST[:2]).format(day=first), random.choice(NEXT).format(day=f"a {second}")], 1


def _between(random: Random) -> tuple[list[str], int]:
    """The interval stands alone, and the day behind it is too near."""
    style, day, count = random.choice(days.STYLES), days.some_day(random), random.randrange(3, 13)
    later = day + timedelta(random.randrange(1, count))
    return [
        random.choice(FIRST).format(day=days.said(day, style)),
        _counted(random.choice(ALONE), count, ""),
        random.choice(THIRD).format(day=days.said(later, style)),
    ], 1


def _counted(form: str, count: int, day: str) -> str:
    word = days.COUNTS[count - 1]
    return form.format(Count=word.capitalize(), count=word, day=day)


def _fault(scenes: Scenes, scene: int, places: Sequence[int], phrases: Sequence[str], first: int) -> Fault:
    """The planted interval first."""
    texts = [opened(phrase, scenes[scene][at]) for phrase, at in zip(phrases, places, strict=True)]
    shown = [Shown(scene, head(phrase, text)) for phrase, text in zip(phrases, texts, strict=True)]
    return Fault(
        "interval",
        tuple(Edit(scene, at, (text,)) for at, text in zip(places, texts, strict=True)),
        (shown[first], *shown[:first], *shown[first + 1 :]),
    )
