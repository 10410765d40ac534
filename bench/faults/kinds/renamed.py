"""A name left over from before a renaming, as `leftover`, of which the writer wrote down the earlier name."""

from collections.abc import Iterator
from dataclasses import replace
from random import Random

from bench.faults.kinds.leftover import left
from bench.faults.planted import Fault, Scenes


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    for fault, name, other in left(scenes, random):
        yield replace(fault, kind="renamed", renamed=(name, other))
