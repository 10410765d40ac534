"""Each kind of fault, one file each: `plant(scenes, random)` gives places for it, in the order to be tried."""

from collections.abc import Mapping

from bench.faults.kinds import duplicate
from bench.faults.planted import Plant

KINDS: Mapping[str, Plant] = {
    "duplicate": duplicate.plant,
}
