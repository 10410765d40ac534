"""Damaged files of every format: each is read or refused in words, within the time and memory that are allowed."""

import io
import random
import resource
import sys
import time
import zipfile
from collections.abc import Iterator, Mapping
from pathlib import Path

from afterdraft.errors import UnreadableManuscript
from afterdraft.formats.table import read
from bench.report import Figure, Section

SPECIMENS = Path(__file__).parents[1] / "tests" / "specimens"
SAMPLE, FULL = 300, 10_000  # mutations per format
SECONDS, MEGABYTES = 10.0, 1000.0  # most for one file
SEED = 20260301
_ENDINGS = ("docx", "odt", "rtf", "epub", "html", "md", "txt")
_STRETCHES = (1, 1, 2, 8, 40, 200)


def specimens() -> Mapping[str, list[bytes]]:
    """Sound files, by ending."""
    return {ending: [file.read_bytes() for file in sorted(SPECIMENS.glob(f"*.{ending}"))] for ending in _ENDINGS}


def mutants(sound: list[bytes], count: int, *, seed: int) -> Iterator[bytes]:
    """`count` damaged files, the same for the same seed; every other archive is damaged within one of its parts."""
    chance = random.Random(seed)
    for number in range(count):
        data = chance.choice(sound)
        inside = data.startswith(b"PK") and number % 2
        yield _damaged_part(data, chance) if inside else _damaged(data, chance)


def outcome(data: bytes, name: str) -> bool:
    """True if the file was read, False if it was refused in words; anything else is raised."""
    try:
        return bool(read(data, name).blocks)
    except UnreadableManuscript as refusal:
        if "Nothing was changed" not in str(refusal):
            raise
        return False


def measure(*, full: bool) -> Section:
    """All formats; `full` for the whole number of mutations."""
    count = FULL if full else SAMPLE
    figures: list[Figure] = []
    for ending, sound in specimens().items():
        was_read, slowest, faults = _all(sound, count, ending)
        figures += [
            Figure(f"{ending}: faults", faults, target=0),
            Figure(f"{ending}: slowest file", slowest, "s", target=SECONDS),
            Figure(f"{ending}: read in spite of the damage", was_read / count),
        ]
    most = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / (1024 if sys.platform != "darwin" else 1024**2)
    figures.append(Figure("most memory of the process", most, "MB", target=MEGABYTES))
    corpus = f"{count:,} seeded mutations per format of the specimens in tests/specimens; read, or refused in words."
    return Section("Damaged files", corpus, tuple(figures))


def _all(sound: list[bytes], count: int, ending: str) -> tuple[int, float, int]:
    was_read, slowest, faults = 0, 0.0, 0
    for data in mutants(sound, count, seed=SEED):
        start = time.monotonic()
        try:
            was_read += outcome(data, f"damaged.{ending}")
        except Exception as fault:  # noqa: BLE001 - whatever it is, it is what is counted
            print(f"  {ending}: {type(fault).__name__}: {fault}", flush=True)
            faults += 1
        slowest = max(slowest, time.monotonic() - start)
    return was_read, slowest, faults


def _damaged(text: bytes, chance: random.Random) -> bytes:
    """A few random changes: bytes replaced, stretches dropped, doubled or moved, the end cut off."""
    data = bytearray(text)
    for _ in range(chance.randint(1, 4)):
        at = chance.randrange(max(1, len(data)))
        stretch = data[at : at + chance.choice(_STRETCHES)]
        match chance.randrange(4):
            case 0:
                data[at : at + 1] = bytes([chance.randrange(256)])
            case 1:
                del data[at : at + len(stretch)]
            case 2:
                to = chance.randrange(max(1, len(data)))
                data[to:to] = stretch
            case _:
                if chance.random() < 0.2:
                    del data[at:]
                data[at:at] = stretch
    return bytes(data)


def _damaged_part(data: bytes, chance: random.Random) -> bytes:
    """A sound archive, one of its parts damaged."""
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        parts = {name: archive.read(name) for name in archive.namelist()}
    name = chance.choice(sorted(parts))
    parts[name] = _damaged(parts[name], chance)
    made = io.BytesIO()
    with zipfile.ZipFile(made, "w", zipfile.ZIP_DEFLATED) as archive:
        for part, content in parts.items():
            archive.writestr(part, content)
    return made.getvalue()
