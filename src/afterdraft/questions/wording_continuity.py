"""The sentences of questions about continuity."""

from collections.abc import Mapping, Sequence

from afterdraft.questions.question import Finding
from afterdraft.questions.wording_kit import Say, many, number, scene

_LENGTHS = ("year", "winter", "summer", "month", "week")


def _weekday(one: Finding, titles: Sequence[str]) -> str:
    words = one.words
    if "that" in words:
        return f"“{words['that']}”: of that month “{words['first']}” is told, and no such day. Is that the day meant?"
    if "first" not in words:
        return f"“{words['said']}”: by the calendar that day was a {words['was']}. Is {words['told']} meant?"
    return f"If “{words['first']}” is right, “{words['said']}” is a {words['was']}. Which of the two is meant?"


def _trait(one: Finding, titles: Sequence[str]) -> str:
    words, trait = one.words, one.words["trait"]
    first, other = (scene(titles, span.scene) for span in one.evidence[:2])
    name = words["name"]
    if trait in ("eyes", "hair"):
        return f"{name} has {words['first']} {trait} in {first} and {words['other']} in {other}. Are both meant?"
    if trait == "beard":
        return f"{name} has a {words['first']} beard in {first} and a {words['other']} one in {other}. Are both meant?"
    if trait in ("scar", "limp"):
        has = "a scar on the" if trait == "scar" else "a lame"
        return f"{name} has {has} {words['first']} in {first} and {has} {words['other']} in {other}. Are both meant?"
    if trait == "hand":
        return f"{name} uses the {words['first']} hand in {first} and the {words['other']} in {other}. Are both meant?"
    return f"{name} is {words['first']} in {first} and {words['other']} in {other}. Are both meant?"


def _side(one: Finding, titles: Sequence[str]) -> str:
    words = one.words
    first, other = scene(titles, one.evidence[0].scene), scene(titles, int(one.numbers["scene"]))
    mark = f"{words['mark']} of {words['name']}"
    if first == other:
        return f"In {first} the {mark} is on the {words['first']} and on the {words['other']}. Which is meant?"
    at = f"on the {words['first']} in {first} and on the {words['other']} in {other}"
    return f"The {mark} is {at}. Which is meant?"


def _ability(one: Finding, titles: Sequence[str]) -> str:
    words = one.words
    says, does = (scene(titles, int(one.numbers[name])) for name in ("claim", "deed"))
    return f"“{words['claim']}” is said of {words['name']} in {says}, and “{words['deed']}” in {does}. Are both meant?"


def _dead(one: Finding, titles: Sequence[str]) -> str:
    first, later = (scene(titles, span.scene) for span in one.evidence[:2])
    return f"{one.words['name']} is dead by {first} and speaks in {later}. Which of the two is meant?"


def _still_there(one: Finding, titles: Sequence[str]) -> str:
    name, where = one.words["name"], scene(titles, one.evidence[0].scene)
    if one.words.get("away"):
        return f"{name} is away in {where}, and speaks or acts there all the same. Which is meant?"
    return f"{name} leaves in {where} and goes on in it. Which is meant?"


def _compass(one: Finding, titles: Sequence[str]) -> str:
    words, place = one.words, one.words["place"]
    first, other = (scene(titles, span.scene) for span in one.evidence[:2])
    return f"{place} {words['first']} in {first} and {words['other']} in {other}. Are both meant?"


def _dead_for(one: Finding, titles: Sequence[str]) -> str:
    words, numbers = one.words, one.numbers
    name = words["name"]
    if "would" in words:
        died = f"{name} died at {numbers['age']:.0f}, {_ago(words['since'])}, which makes {numbers['sum']:.0f}"
        return f"{died}. Is “{words['would']}” meant?"
    if numbers:
        first, other = (f"at {numbers[key]:.0f}" for key in ("first", "other"))
    else:
        first, other = (_ago(words[key]) for key in ("first", "other"))
    if "gone" in words:
        told = (words[key][0].lower() + words[key][1:] for key in ("first", "other"))
        return "{} is gone “{}”, or, by a later passage, “{}”. Which is meant?".format(name, *told)
    what = f"{name} was" if name.startswith("the ") else f"{name} died"
    return f"{what} {first}, or, by a later passage, {other}. Which is meant?"


def _ago(said: str) -> str:
    """
    >>> _ago("six years"), _ago("Three years earlier"), _ago("this very year")
    ('“six years” ago', '“three years earlier”', '“this very year”')
    """
    said = said[0].lower() + said[1:]
    is_length = said.split()[-1].startswith(_LENGTHS) and not said.startswith(("this ", "last "))
    return f"“{said}” ago" if is_length else f"“{said}”"


def _order(one: Finding, titles: Sequence[str]) -> str:
    words = one.words
    return f"Between “{words['before']}” and “{words['after']}” comes “{words['one']}”. Is that the day meant?"


def _year(one: Finding, titles: Sequence[str]) -> str:
    numbers = one.numbers
    return f"“{one.words['said']}” stands among days of {numbers['others']:.0f}. Is {numbers['year']:.0f} meant?"


def _letter(one: Finding, titles: Sequence[str]) -> str:
    dated, told, before = one.words["dated"], one.words["told"], many(one.numbers["days"], "day")
    return f"The letter is dated “{dated}” and comes on “{told}”, {before} before. Which is meant?"


def _interval(one: Finding, titles: Sequence[str]) -> str:
    words = one.words
    apart = many(abs(one.numbers["apart"]), "day")
    return (
        f"“{words['said']}” stands between “{words['before']}” and “{words['after']}”, {apart} apart. Which is meant?"
    )


def _age(one: Finding, titles: Sequence[str]) -> str:
    words = one.words
    first, other = (scene(titles, span.scene) for span in one.evidence[:2])
    return f"{words['name']} is {words['first']} in {first} and {words['other']} in {other}. Are both meant?"


def _age_and_year(one: Finding, titles: Sequence[str]) -> str:
    words, apart = one.words, many(one.numbers["years"], "year")
    both = f"{words['name']} is {words['first']} in one passage and {words['other']} in another"
    return f"{both}: the two put the birth {apart} apart. Which is meant?"


def _no_kin(one: Finding, titles: Sequence[str]) -> str:
    words = one.words
    none, other = (scene(titles, int(one.numbers[name])) for name in ("claim", "other"))
    has = {"spouse": "never to have married"}.get(words["none"], f"to have no {words['none']}")
    return f"{words['name']} is said {has} in {none}, and has “{words['one']}” in {other}. Which is meant?"


def _kinship(one: Finding, titles: Sequence[str]) -> str:
    words = one.words
    first, other = (scene(titles, int(one.numbers[name])) for name in ("first", "other"))
    return f"{words['first']} in {first}, and {words['other']} in {other}. Which is meant?"


def _relation(one: Finding, titles: Sequence[str]) -> str:
    words = one.words
    first, other = (scene(titles, span.scene) for span in one.evidence[:2])
    who = f"The {words['relation']} of {words['name']}"
    return f"{who} is {words['first']} in {first} and {words['other']} in {other}. Which name is meant?"


def _two_places(one: Finding, titles: Sequence[str]) -> str:
    first, other = (scene(titles, number) for number in dict.fromkeys(span.scene for span in one.evidence))
    return f"{one.words['name']} is in {first} and, at the same hour of the same day, in {other}. Where is it meant?"


def _season(one: Finding, titles: Sequence[str]) -> str:
    words, here = one.words, scene(titles, one.evidence[0].scene)
    return f"In {here} it is “{words['month']}”, and there is “{words['sign']}”. Do the two go together?"


def _origin(one: Finding, titles: Sequence[str]) -> str:
    words = one.words
    first, other = (scene(titles, span.scene) for span in one.evidence[:2])
    from_two = f"{words['name']} comes from {words['first']} in {first} and from {words['other']} in {other}"
    return f"{from_two}. Which is meant?"


def _rank(one: Finding, titles: Sequence[str]) -> str:
    words, here = one.words, scene(titles, one.evidence[0].scene)
    return f"{words['rare']} {words['surname']} in {here} is {words['usual']} before and after. Which is meant?"


def _trade(one: Finding, titles: Sequence[str]) -> str:
    words = one.words
    first, other = (scene(titles, span.scene) for span in one.evidence[:2])
    return f"{words['name']} is called {words['first']} in {first} and {words['other']} in {other}. Is it both?"


def _dress(one: Finding, titles: Sequence[str]) -> str:
    words, here = one.words, scene(titles, one.evidence[0].scene)
    thing = f"the {words['thing']} of {words['name']}"
    return f"In {here} {thing} is {words['first']} and {words['other']}. Which is meant?"


def _journey(one: Finding, titles: Sequence[str]) -> str:
    words, numbers = one.words, one.numbers
    if "name" in words:
        first, second = (scene(titles, int(numbers[name])) for name in ("first", "second"))
        takes, apart = many(numbers["days"], "day"), many(numbers["apart"], "day")
        way = f"from {words['one']} to {words['other']} takes {takes}"
        return f"{words['name']} is in {first} and, {apart} after, in {second}; the way {way}. Is there time for it?"
    return f"These passages tell the way from {words['one']} to {words['other']} differently. Which is meant?"


def _moon(one: Finding, titles: Sequence[str]) -> str:
    words, numbers = one.words, one.numbers
    days = many(numbers["days"], "day")
    if "least" in numbers:
        days = f"{number(numbers['least'])} to {days}" if numbers["least"] else f"at most {days}"
    return f"From “{words['first']}” to “{words['other']}” it is {days}, by the days told. Can the moon be so?"


def _sky(one: Finding, titles: Sequence[str]) -> str:
    words, here = one.words, scene(titles, one.evidence[0].scene)
    return f"On {words['day']} in {words['place']} {words['sky']}. Does the sky of {here} go with that?"


def _count(one: Finding, titles: Sequence[str]) -> str:
    words = one.words
    first, other = (scene(titles, span.scene) for span in one.evidence[:2])
    it = "The vote" if "vote" in words else "It"
    return f"{it} is {words['first']} in {first} and {words['other']} in {other}. Which is meant?"


CONTINUITY: Mapping[str, Say] = {
    "weekday": _weekday,
    "trait": _trait,
    "side": _side,
    "ability": _ability,
    "age": _age,
    "age and year": _age_and_year,
    "relation": _relation,
    "no kin": _no_kin,
    "kinship": _kinship,
    "two places": _two_places,
    "interval": _interval,
    "year": _year,
    "letter": _letter,
    "order of dates": _order,
    "dead": _dead,
    "time since death": _dead_for,
    "still there": _still_there,
    "compass": _compass,
    "count": _count,
    "season": _season,
    "origin": _origin,
    "rank": _rank,
    "trade": _trade,
    "dress": _dress,
    "journey": _journey,
    "moon": _moon,
    "sky": _sky,
}
