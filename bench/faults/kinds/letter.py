"""A letter that is dated some days after the day on which it comes."""

from collections.abc import Iterator
from datetime import timedelta
from random import Random

from bench.faults import days
from bench.faults.people import holds
from bench.faults.planted import Edit, Fault, Scenes, Shown
from bench.faults.prose import head, is_told, names, opened, runs

FAR = 12  # paragraphs from the day to the letter at most
DAY = ("On {day},", "It was {day}.", "On the morning of {day},")
COMES = (
    "There was a letter on the table, and it was opened at once.",
    "The post brought a letter from the house on the quay.",
    "Then the letter came, and was read aloud.",
    "A note was handed in at the door. It ran as follows:",
)
HEADS = ("Thornby, {day}.", "{day}.", "12 Quay Street, {day}", "The Lock House, {day}.")
TEXT = (
    "“Dear friend,—I have your note, and shall come as soon as the road is open. Believe me yours, E. Lum.”",
    "“My dear Sir,—What you ask is not in my power. I am, Sir, yours faithfully, Edgar Lum.”",
)


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    found = list(runs(scenes, names(scenes, 20), FAR))
    for scene, run in random.sample(found, len(found)):
        at = random.choice(run)
        later = [n for n in range(at + 1, min(at + FAR, len(scenes[scene]))) if is_told(scenes[scene][n])]
        if not later:
            continue
        style, day = random.choice(days.STYLES), days.some_day(random)
        dated = day + timedelta(random.randrange(2, 25))
        phrase = random.choice(DAY).format(day=days.said(day, style))
        text = opened(phrase, scenes[scene][at])
        letter = random.choice(HEADS).format(day=days.said(dated, random.choice(days.STYLES[2:])))
        place = random.choice(later)
        comes = (scenes[scene][place], random.choice(COMES), letter, random.choice(TEXT))
        fault = Fault(
            "letter",
            (Edit(scene, at, (text,)), Edit(scene, place, comes)),
            (Shown(scene, letter), Shown(scene, head(phrase, text))),
        )
        if holds(scenes, fault):
            yield fault
