"""`times`: the dates, weekdays, clock times, parts of day, seasons, intervals and ages that paragraphs name.

A grammar of our own over the text alone. What it reads is plain English prose; what it does not know it leaves.
"""

import re
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import replace

from afterdraft.reading.time import Time, TimeKind
from afterdraft.reading.time_patterns import (
    ARGUMENT,
    BESIDE_FEAST,
    DATELINE,
    HEADED,
    HEADED_SPEECH,
    HEADS,
    HINTS,
    IN_FIGURES,
    LOOKED_TO,
    OWN_FEAST,
    PART,
    PATTERNS,
    PLACED,
    SENTENCE_ENDS,
    SET_OFF,
    compiled,
)
from afterdraft.reading.time_words import DAYS, FEASTS, MOVABLE, PARTS, SEASONS, UNITS, VAGUE, month, number, year

Spans = Sequence[tuple[int, int]]
Read = tuple[TimeKind, str, dict[str, object]]  # kind, value, further fields of `Time`
UNSAID = "XXXX"


def times(text: str, paragraph: int, speech: Spans = ()) -> tuple[Time, ...]:
    """Of one paragraph, in order of their places; `speech` is where it is spoken."""
    return tuple(_with_months(_found(text, paragraph, speech), text))


def _found(text: str, paragraph: int, speech: Spans) -> Iterator[Time]:
    taken: list[tuple[int, int]] = []
    found: list[Time] = []
    small = text.lower()
    for name, pattern in PATTERNS:
        if name in HINTS and not any(hint in text or hint in small for hint in HINTS[name]):
            continue
        for match in compiled(pattern).finditer(text):
            start, end = match.span()
            if any(start < done and begun < end for begun, done in taken):
                continue
            if read := _READERS[name](match):
                kind, value, more = read
                start, end = _span(match, more)
                spoken = _within(start, speech)
                heads = _whole(value) and _heads(text, start, end, value, spoken=spoken)
                aside = kind == "date" and not heads and _aside(text, start, end, feast=name == "feast")
                found.append(Time(paragraph, start, end, kind, value, spoken, heads, aside=aside, **more))  # type: ignore[arg-type]
                taken.append((start, end))
                if (
                    name == "next" and kind == "interval" and (part := compiled(PART).search(text, start, end))
                ):  # 'the next morning': two facts
                    found.append(Time(paragraph, *part.span(), "part of day", PARTS[part.group().lower()], spoken))
    if (bare := compiled(DATELINE).match(text)) and (day := number(bare["day"])):
        start, end = bare.span("day")
        spoken, value = _within(start, speech), f"{UNSAID}-XX-{day:02}"
        free = not any(start < done and begun < end for begun, done in taken)
        if free and (not spoken or _written(text, start, end, value)):
            found.append(Time(paragraph, start, end, "date", value, spoken, dateline=True))
    yield from sorted(found, key=lambda one: (one.start, one.end))


def _with_months(found: Iterable[Time], text: str) -> Iterator[Time]:
    """Days by themselves have the month that their sentence names before them: 'in June, the second'."""
    before: Time | None = None
    for one in found:
        if one.kind != "date":
            yield one
            continue
        if before and one.value.startswith(f"{UNSAID}-XX") and _goes_on(before, one, text):
            one = replace(one, value=before.value[: len("XXXX-05")] + one.value[len("XXXX-05") :])
        before = one
        yield one


def _goes_on(before: Time, one: Time, text: str) -> bool:
    """Whether the day is one of the month before it: in the same sentence, by the same voice, and no earlier day."""
    month_said = before.value[len("XXXX-") : len("XXXX-05")].isdecimal()
    later = before.value[len("XXXX-05") :] < one.value[len("XXXX-05") :]
    same = before.spoken == one.spoken and not compiled(SENTENCE_ENDS).search(text, before.end, one.start)
    return month_said and later and same


def _within(start: int, speech: Spans) -> bool:
    return any(begun <= start < done for begun, done in speech)


def _heads(text: str, start: int, end: int, value: str, *, spoken: bool) -> bool:
    """Whether it is all that the paragraph begins with, or what a letter that is read out begins with."""
    letter = not spoken or _written(text, start, end, value)
    return bool(letter and compiled(HEADS).match(text[:start]) and compiled(HEADED).match(text, end))


def _written(text: str, start: int, end: int, value: str) -> bool:
    """Whether a date in marks of speech is read out and not said: in figures, behind nothing but its place, and with
    that or its year or set off from what follows."""
    front = compiled(PLACED).match(text[:start])
    figures = compiled(IN_FIGURES).search(text, start, end)
    if not front or not figures or not compiled(HEADED_SPEECH).match(text, end):
        return False
    return bool(front["place"] or not value.startswith(UNSAID) or compiled(SET_OFF).match(text, end))


def _aside(text: str, start: int, end: int, *, feast: bool) -> bool:
    """Whether a date is looked to from another time, or stands in a list of what a chapter tells."""
    kept = feast and (compiled(BESIDE_FEAST).match(text, end) or compiled(OWN_FEAST).search(text[:start]))
    return bool(kept or compiled(LOOKED_TO).search(text[:start]) or compiled(ARGUMENT).match(text))


def _span(match: re.Match[str], more: dict[str, object]) -> tuple[int, int]:
    """Of the group that `more` names, or from where another group begins: both are taken out of it."""
    whole, first = str(more.pop("group", "")), str(more.pop("first", ""))
    return match.start(first or whole or 0), match.end(whole or 0)


def _whole(value: str) -> bool:
    """Whether it is a date with its day."""
    return len(value.split("/")[0]) == len("XXXX-05-03") and "W" not in value


def _iso(match: re.Match[str]) -> Read:
    return "date", match.group(), {}


def _date(match: re.Match[str]) -> Read | None:
    parts = match.groupdict()
    first = parts["day"] or parts.get("last")
    front = f"{year(parts['year']) if parts.get('year') else UNSAID}-{month(parts['month']):02}"
    days = [number(day) for day in (first, parts.get("last")) if day]
    if not all(day and day <= 31 for day in days):
        return None
    dates = dict.fromkeys(f"{front}-{day:02}" for day in days)
    return "date", "/".join(dates), {}


def _feast(match: re.Match[str]) -> Read | None:
    if not match["feast"][0].isupper():
        return None
    named = match["feast"].lower().replace("'", "’")
    front = year(match["year"]) if match["year"] else UNSAID
    if named in MOVABLE:
        return "date", front, {"movable": f"{MOVABLE[named]:+}"}
    return "date", f"{front}-{FEASTS[named]}", {}


def _month_year(match: re.Match[str]) -> Read:
    return "date", f"{year(match['year'])}-{month(match['month']):02}", {}


def _month(match: re.Match[str]) -> Read:
    group = "month" if match["month"] else "month2"
    return "date", f"{UNSAID}-{month(match[group]):02}", {"group": group}


def _year(match: re.Match[str]) -> Read:
    group = _named(match, "year")
    return "date", year(match[group]), {"group": group}


def _day_only(match: re.Match[str]) -> Read | None:
    day = number(match["day"])
    said = match.group().lower()
    plain = said.startswith("on ") or "month" in said or "inst" in said or day is None or day > 10  # 'the first' is all
    return ("date", f"{UNSAID}-XX-{day:02}", {}) if day and day <= 31 and plain else None


def _clock(match: re.Match[str]) -> Read | None:
    parts = {key.rstrip("234"): value for key, value in match.groupdict().items() if value}
    if "name" in parts:
        return "clock", "T00:00" if parts["name"].lower() == "midnight" else "T12:00", {"first": _named(match, "name")}
    hour = number(parts.get("hour") or parts.get("digits") or "")
    minutes = number(parts["minutes"]) if "minutes" in parts and parts["minutes"] != "00" else 0
    if past := parts.get("past"):
        minutes = {"half": 30, "quarter": 15}.get(past.split()[-1].lower()) or number(past.split()[0]) or 0
        if parts["way"] in ("to", "before"):
            hour, minutes = (hour or 0) - 1, 60 - minutes
    if hour is None or not 0 <= hour <= 24 or minutes is None or not 0 <= minutes < 60:
        return None
    half = parts.get("half", "").lower().replace(" ", "")
    late = half.startswith("p") or "afternoon" in half or "evening" in half or ("night" in half and hour > 6)
    if late or half:
        hour = hour % 12 + 12 * late
    return (
        "clock",
        f"T{hour % 24:02}:{minutes:02}",
        {
            "twelve": not half and hour <= 12,
            "first": "" if "past" in parts else _named(match, "hour", "digits"),
        },
    )


def _named(match: re.Match[str], *names: str) -> str:
    """The group of these that matched, whatever digit its name ends in."""
    return next((key for key, value in match.groupdict().items() if value and key.rstrip("234") in names), "")


def _age(match: re.Match[str]) -> Read | None:
    group = _named(match, "years")
    years = number(match[group])
    return ("age", f"P{years}Y", {"first": "" if group == "years" else group}) if years and years < 120 else None


def _interval(match: re.Match[str]) -> Read | None:
    if match["within"]:
        return "interval", _length(1, match["within"]), {"lasting": True}
    counted = match["count"].lower().replace("\n", " ")
    later = (match["later"] or ("after" if match["after"] else "")).lower()
    back = "-" if later in ("before", "ago", "earlier", "previously", "back") else ""
    if counted.startswith("half"):
        value = {"hour": "PT30M", "day": "PT12H", "year": "P6M"}.get(match["unit"].rstrip("s"))
        return ("interval", back + value, {"lasting": not later}) if value else None
    many = number(counted.split(" or ")[0])
    if not many or (counted in ("a", "an", "some", "many", "few") and not later):
        return None
    about = "~" if any(word in VAGUE for word in counted.split()) or " or " in counted else ""
    return "interval", back + _length(many, match["unit"]) + about, {"lasting": not later}


def _length(many: int, unit: str) -> str:
    times_, letter = UNITS["year" if unit == "twelvemonth" else unit.lower().rstrip("s")]
    return f"P{'T' if letter in 'HM' and len(letter) == 1 else ''}{many * times_}{letter[0]}"


def _next(match: re.Match[str]) -> Read | None:
    if same := match["same"]:
        of = match["of3"].lower()
        return ("part of day", PARTS[of], {}) if of in PARTS else ("interval", "P0D", {}) if same != "this" else None
    if day := match["day"]:
        said = day.lower().replace("-", "")
        days = {
            "yesterday": "-P1D",
            "tomorrow": "P1D",
            "the day before yesterday": "-P2D",
            "the day after tomorrow": "P2D",
        }
        return "interval", days.get(said, "P0D"), {}
    way, of = (match["way"] or match["way2"]).lower(), (match["of"] or match["of2"]).lower()
    back = "-" if way in ("previous", "preceding", "last", "before") else ""
    return "interval", back + _length(1, "day" if of in PARTS else of), {}


def _weekday(match: re.Match[str]) -> Read:
    return "weekday", f"{UNSAID}-WXX-{DAYS[match['weekday'].lower()]}", {}


def _season(match: re.Match[str]) -> Read:
    front = year(match["year"]) if match["year"] else UNSAID
    return "season", f"{front}-{SEASONS[match['season'].lower()]}", {"first": "season"}


def _part(match: re.Match[str]) -> Read:
    return "part of day", PARTS[match["part"].lower()], {}


_READERS: Mapping[str, Callable[[re.Match[str]], Read | None]] = {
    "iso": _iso,
    "day month": _date,
    "month day": _date,
    "year month day": _date,
    "feast": _feast,
    "month year": _month_year,
    "clock": _clock,
    "clock said": _clock,
    "age": _age,
    "interval": _interval,
    "next": _next,
    "day only": _day_only,
    "weekday": _weekday,
    "month": _month,
    "year": _year,
    "season": _season,
    "part": _part,
}
