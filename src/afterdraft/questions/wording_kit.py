"""What the sentences of questions share."""

from collections.abc import Callable, Sequence

from afterdraft.questions.question import Finding

_INNER = str.maketrans("“”", "‘’")
Say = Callable[[Finding, Sequence[str]], str]  # a finding and what scenes are called → what is asked


def scene(titles: Sequence[str], number: int) -> str:
    """A scene by what it is called: “The ferry”; where nothing is known, by its number from 1.

    >>> scene(["“Come,” said Ilse."], 0), scene([], 4)
    ('“‘Come,’ said Ilse”', 'scene 5')
    """
    title = titles[number].rstrip(".,;:").translate(_INNER) if number < len(titles) else ""
    return f"“{title}”" if title else f"scene {number + 1}"


def scenes(finding: Finding) -> list[int]:
    """Of its evidence, in the order in which that is read, each once."""
    return list(dict.fromkeys([*(one.scene for one in finding.evidence), *finding.scenes]))


def listed(things: Sequence[str]) -> str:
    """
    >>> listed(["a", "b", "c"])
    'a, b and c'
    """
    return " and ".join([", ".join(things[:-1]), things[-1]] if len(things) > 1 else things)


def number(value: float) -> str:
    """
    >>> number(3.0), number(12)
    ('three', '12')
    """
    small = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"]
    return small[int(value)] if value == int(value) and 0 <= value < len(small) else f"{value:,.0f}"


def many(value: float, one: str, more: str = "") -> str:
    """
    >>> many(1, "day"), many(4, "day")
    ('one day', 'four days')
    """
    return f"{number(value)} {one if value == 1 else more or one + 's'}"
