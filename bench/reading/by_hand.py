"""People of novels outside the dialogue corpus, listed by hand (`people/`, see README.md), against the cast found.

`python -m bench --only cast` is the section of the results; `python -m bench.reading.by_hand [--half tune|report]
[--look]` prints one half, and `--look` says, for the tuning half, who is missing,
whose names lie with somebody else and who is shown that nobody listed.
"""

import argparse
from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path

from afterdraft.reading.facts import SceneFacts
from afterdraft.whole.cast import Cast, find_cast
from bench import corpus
from bench.reading.given import GENDERS, owners, theirs
from bench.reading.halves import Half
from bench.reading.novels import Character, Novel
from bench.reading.score import b_cubed, f1
from bench.report import Figure, Section, shown
from bench.slips.seen import facts

FOLDER = Path(__file__).parent / "people"
CATEGORIES = {"1": "major", "2": "intermediate", "3": "minor"}


@dataclass(frozen=True, slots=True)
class Listed:
    title: str
    people: tuple[Character, ...]
    narrator: int | None  # id
    nobody: frozenset[str]  # forms that are no people's

    @property
    def mattering(self) -> list[Character]:
        return [person for person in self.people if person.category != CATEGORIES["3"]]


@dataclass(frozen=True, slots=True)
class Result:
    title: str
    met: tuple[int, int]  # major and intermediate people found, and all
    aliases: tuple[float, float]  # B³, precision and recall
    genders: tuple[int, int]  # right, and all, of those found who have one
    narrator: bool  # whether somebody tells just where somebody does, and the right one
    nobodies: int  # shown that are known to be no people
    faults: tuple[str, ...]


def listed(half: Half) -> Iterator[Listed]:
    """The novels of one half, as they are written down."""
    for block in (FOLDER / f"{half}.txt").read_text("utf-8").split("# ")[1:]:
        title, *lines = block.strip().splitlines()
        people: list[Character] = []
        nobody: set[str] = set()
        narrator = None
        for line in lines:
            sign, rest = line.split(" ", 1)
            if sign == "-":
                nobody |= set(rest.split(", "))
                continue
            narrator = len(people) if sign[0] == "*" else narrator
            names = tuple(rest[2:].split(", "))
            people.append(Character(len(people), names[0], names, sign[-1].upper(), CATEGORIES[rest[0]]))
        yield Listed(title, tuple(people), narrator, frozenset(nobody))


def measured(half: Half) -> list[Result]:
    """One result a novel; empty where the corpus folder is missing."""
    texts = {novel.title: novel for novel in map(corpus.novel, corpus.paths())}
    return [_measured(one, texts[one.title]) for one in listed(half) if one.title in texts]


def _measured(one: Listed, text: corpus.Novel) -> Result:
    scenes = list(facts([scene for chapter in text.chapters for scene in chapter.scenes if scene]))
    cast = find_cast(scenes)
    book = Novel(slug="", title=one.title, chapters=(), characters=one.people, quotations=())
    matched = theirs(cast, book, Counter(() if one.narrator is None else (one.narrator,)))
    graded = [
        (person.gender, GENDERS[true.gender])
        for person in cast.people
        if person.id in matched and (true := one.people[matched[person.id]]).gender in GENDERS
    ]
    known, ours = _clusters(one, cast, scenes)
    teller = cast.narrator
    return Result(
        title=one.title,
        met=(sum(person.id in matched.values() for person in one.mattering), len(one.mattering)),
        aliases=b_cubed(known, ours),
        genders=(sum(ours == true for ours, true in graded), len(graded)),
        narrator=(matched.get(teller.id) if teller else None) == one.narrator,
        nobodies=sum(_is_nobody(person.aliases, one) for person in cast.people),
        faults=tuple(_faults(one, cast, known, matched)),
    )


def _is_nobody(aliases: Sequence[str], one: Listed) -> bool:
    """Whether every name is known to be no person's, or is two words caught across a dash."""
    return bool(aliases) and all(form in one.nobody or "—" in form for form in aliases)


def _clusters(one: Listed, cast: Cast, scenes: Sequence[SceneFacts]) -> tuple[dict[str, int], dict[str, str]]:
    """Whose each form is, by the list and by the cast: forms of one person alone that the text was seen to hold."""
    seen = {mention.form for scene in scenes for mention in scene.mentions if mention.kind in ("name", "role")}
    known = {form: min(ids) for form, ids in owners(one.people).items() if len(ids) == 1 and form in seen}
    return known, {form: cast.by_form.get(form, f"alone {form}") for form in known}


def _faults(one: Listed, cast: Cast, known: Mapping[str, int], matched: Mapping[str, int]) -> Iterator[str]:
    """In words, what is not as it is listed."""
    by = owners(one.people)
    homes: defaultdict[int, set[str]] = defaultdict(set)
    for form, owner in known.items():
        homes[owner].add(cast.by_form.get(form, "nobody"))
    for person in one.mattering:
        if person.id not in matched.values():
            yield f"missing: {person.name}"
    for owner, found in homes.items():
        if len(found) > 1:
            yield f"apart: {one.people[owner].name}: {', '.join(sorted(found))}"
    for ours in cast.people:
        owned = {known[form] for form in ours.aliases if form in known}
        if len(owned) > 1:
            yield f"joined: {ours.name}: {', '.join(sorted(one.people[owner].name for owner in owned))}"
        if ours.aliases and by.keys().isdisjoint(ours.aliases):
            yield f"unlisted: {ours.mentions} {', '.join(ours.aliases)}"
        true = GENDERS.get(one.people[matched[ours.id]].gender) if ours.id in matched else None
        if true and true != ours.gender:
            yield f"gender: {ours.name}: {ours.gender or 'none'}"


def measure(*, full: bool) -> Section:
    tuned, report = measured("tune"), measured("report")
    return Section(
        title="The cast: people listed by hand",
        corpus=(
            f"{len(tuned) + len(report)} novels of the structure corpus outside the dialogue corpus, {len(report)} of "
            "them the half that only reports ([who is listed, and by whom](reading/README.md#people-listed-by-hand)). "
            "Figures in the table are of that half. What is shown and is no person is listed for the other half alone."
        ),
        figures=tuple(figures(report, "report")),
        lines=(*_halves(("tune", tuned), ("report", report)), "", *rows(tuned, "tune"), *rows(report, "report")[2:]),
    )


def figures(results: Sequence[Result], half: Half) -> list[Figure]:
    met, genders = ([sum(getattr(r, name)[place] for r in results) for place in (0, 1)] for name in ("met", "genders"))
    number = max(1, len(results))
    found = [
        Figure("major and intermediate people found", met[0] / max(1, met[1]), target=0.97, at_most=False),
        Figure(
            "aliases, B³ F1, mean of novels", sum(f1(*r.aliases) for r in results) / number, target=0.88, at_most=False
        ),
        Figure("genders right, of those found", genders[0] / max(1, genders[1])),
        Figure("novels whose narrator is right", sum(r.narrator for r in results) / number),
    ]
    nobodies = sum(one.nobodies for one in results) / number
    shown_too = Figure("shown, known to be no people, mean of novels", nobodies, "a book")
    return [*found, shown_too] if half == "tune" else found


def _halves(*halves: tuple[Half, Sequence[Result]]) -> Iterator[str]:
    """The figures side by side that both have."""
    yield "| figure | " + " | ".join(half for half, _ in halves) + " |"
    yield "|---" + "|---:" * len(halves) + "|"
    for same in zip(*(figures(results, half) for half, results in halves), strict=False):
        yield f"| {same[0].name} | " + " | ".join(map(shown, same)) + " |"


def rows(results: Sequence[Result], half: Half) -> list[str]:
    return [
        "| novel | people | B³ precision | recall | F1 | genders | narrator | known to be no people |",
        "|---|---:|---:|---:|---:|---:|---|---:|",
        *(_row(one, half) for one in results),
    ]


def _row(one: Result, half: Half) -> str:
    precision, recall = one.aliases
    aliases = f"{precision:.3f} | {recall:.3f} | {f1(precision, recall):.3f}"
    people, genders = (f"{right} of {all_}" for right, all_ in (one.met, one.genders))
    narrator = "right" if one.narrator else "wrong"
    nobodies = one.nobodies if half == "tune" else "–"
    return f"| {one.title} ({half}) | {people} | {aliases} | {genders} | {narrator} | {nobodies} |"


def main() -> None:
    parser = argparse.ArgumentParser(prog="python -m bench.reading.by_hand", description=__doc__)
    parser.add_argument("--half", choices=("tune", "report"), default="tune")
    parser.add_argument("--look", action="store_true", help="the tuning half's faults in words")
    asked = parser.parse_args()
    half: Half = "tune" if asked.look else asked.half
    results = measured(half)
    for figure in figures(results, half):
        print(f"{figure.name:60} {shown(figure):>10}")
    print("\n".join(rows(results, half)))
    for result in results if asked.look else ():
        print("", f"# {result.title}", *result.faults, sep="\n")


if __name__ == "__main__":
    main()
