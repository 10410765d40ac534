"""The matching of two drafts' units while it is being found."""

from collections.abc import Iterable

from afterdraft.comparison.units import Units

NONE = -1


class Matching:
    """Which old unit became which new one, one to one; `NONE` for what has no partner yet."""

    def __init__(self, old: Units, new: Units) -> None:
        self.old = old
        self.new = new
        self.to_new = [NONE] * len(old)
        self.to_old = [NONE] * len(new)

    def join(self, old: int, new: int) -> None:
        self.to_new[old] = new
        self.to_old[new] = old

    def pairs(self) -> list[tuple[int, int]]:
        """In old order."""
        return [(old, new) for old, new in enumerate(self.to_new) if new != NONE]

    def free_old(self, units: Iterable[int]) -> list[int]:
        return [unit for unit in units if self.to_new[unit] == NONE]

    def free_new(self, units: Iterable[int]) -> list[int]:
        return [unit for unit in units if self.to_old[unit] == NONE]

    def weight(self, old: int, new: int) -> float:
        """Of a pair in a run: its words, the shorter side's, and a little, so that pairs without words count too."""
        return min(self.old.counts[old], self.new.counts[new]) + 0.01
