"""The sentences of questions about accidents of drafting."""

from collections.abc import Mapping, Sequence

from afterdraft.questions.question import Finding
from afterdraft.questions.wording_kit import Say, listed, many, scene


def _placeholder(one: Finding, titles: Sequence[str]) -> str:
    return f"“{one.words['words']}” stands in {scene(titles, one.evidence[0].scene)}. What is to stand there?"


def _twice(one: Finding, titles: Sequence[str]) -> str:
    here, *others = [scene(titles, number) for number in dict.fromkeys(span.scene for span in one.evidence)]
    again = "again, a little changed," if one.numbers["changed"] else "again"
    where = f"in {here} and {again} in {others[0]}" if others else f"twice in {here}"
    words = f"“{one.words['begins']}…” and what follows, {one.numbers['words']:.0f} words,"
    return f"{words} stand {where}. Are both meant?"


def _echo(one: Finding, titles: Sequence[str]) -> str:
    here, *others = [scene(titles, number) for number in dict.fromkeys(span.scene for span in one.evidence)]
    where = f"in {here} and again in {others[0]}" if others else f"twice in {here}"
    return f"“{one.words['words']}” stands {where}. Is the echo meant?"


def _said_twice(one: Finding, titles: Sequence[str]) -> str:
    words, first, again = one.words, one.evidence[0].scene, one.evidence[-1].scene
    there = "further on" if first == again else f"in {scene(titles, again)}"
    told = f"“{words['first']}…” in {scene(titles, first)} and “{words['again']}…” {there}"
    return f"{told} tell much the same in nearly the same words. Is it meant to be told twice?"


def _old_name(one: Finding, titles: Sequence[str]) -> str:
    words, times = one.words, one.numbers["times"]
    stands = "stands" if times == 1 else f"stands {many(times, 'time')}"
    return f"“{words['former']}” {stands} in {scene(titles, one.evidence[0].scene)}. Is {words['name']} meant?"


def _set_aside(one: Finding, titles: Sequence[str]) -> str:
    name = one.words["name"]
    named = listed([scene(titles, number) for number in dict.fromkeys(span.scene for span in one.evidence)])
    return f"{name} is met only in what is set aside, and is named in {named}. Does the reader need {name} there?"


def _two_spellings(one: Finding, titles: Sequence[str]) -> str:
    words, numbers = one.words, one.numbers
    ways = [words.get("one way", ""), words.get("other way", "")]
    spelled = [words.get("until", words.get("often", "")), words.get("from", words.get("seldom", ""))]
    first, second = (
        f"{way} ({quoted})" if way else quoted
        for way, quoted in zip(
            ways, (listed([f"“{word}”" for word in some.split(", ")]) for some in spelled), strict=True
        )
    )
    first += f" ({words['forms']})" if "forms" in words else ""
    if "until" in words:
        last, start = scene(titles, one.evidence[0].scene), scene(titles, one.evidence[-1].scene)
        return f"The book has {first} up to {last}, and {second} from {start} on. Which is meant?"
    where = many(numbers["seldom"], "time")
    if len(one.evidence) > numbers["told"]:
        where = f"in {listed([scene(titles, n) for n in dict.fromkeys(span.scene for span in one.evidence[:-1])])}"
    times = "once" if numbers.get("apart") == 1 else many(numbers.get("apart", 0), "time")
    besides = f", and “{words['apart']}” {times} besides" if "apart" in words else ""
    return f"The book has {first} {many(numbers['often'], 'time')}, and {second} {where}{besides}. Which is meant?"


def _doubled(one: Finding, titles: Sequence[str]) -> str:
    words = listed([f"“{two}”" for two in one.words["words"].split(", ")])
    if one.numbers["times"] == 1:
        return f"{words} stands in {scene(titles, one.evidence[0].scene)}. Is one of the two meant?"
    return f"A word stands twice in a row in {many(one.numbers['times'], 'place')}: {words}. Is one of the two meant?"


def _open_speech(one: Finding, titles: Sequence[str]) -> str:
    if one.numbers["times"] == 1:
        return f"Speech is opened in {scene(titles, one.evidence[0].scene)} and not closed. Where does it end?"
    return f"Speech is opened and not closed in {many(one.numbers['times'], 'place')}. Where does it end?"


ACCIDENTS: Mapping[str, Say] = {
    "placeholder": _placeholder,
    "twice": _twice,
    "doubled word": _doubled,
    "open speech": _open_speech,
    "two spellings": _two_spellings,
    "echo": _echo,
    "said twice": _said_twice,
    "old name": _old_name,
    "set aside": _set_aside,
}
