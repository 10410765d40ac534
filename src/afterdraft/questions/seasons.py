"""Months in which weather, fields and flowers may be seen, widely taken; common practice, northern and temperate."""

import re
from collections.abc import Mapping

WINTER, SUMMER = range(11, 16), range(5, 10)  # of months, those of the next year counted on
_SIGNS = (
    (
        r"snow (?:lay|fell|was falling|had fallen|covered|was (?:deep|thick)|hid)|(?:was|were|begun to|began to) "
        r"snow(?:ing)?"
        r"|(?:ankle|knee)-deep in snow|(?:snowflakes|snowdrifts|drifts of snow) (?:lay|fell|were)|in the snow\b",
        range(10, 17),
    ),
    (
        r"(?:ponds?|puddles?|ruts|ditch(?:es)?|lake) (?:was|were) (?:frozen|iced)|hoar-?frost|ice on the (?:pond"
        r"|puddles|ruts)"
        r"|(?:hard|black|white) frost|frost (?:lay|had|whitened|was)",
        range(9, 18),
    ),
    (
        r"haymak(?:ing|ers)|mow(?:ing|ed|n) (?:the )?hay|hay (?:was|lay|stood) (?:being )?(?:cut|down|drying|in)"
        r"|(?:carrying|cutting|turning) the hay|new-mown hay",
        range(5, 10),
    ),
    (
        r"(?:reapers|reaping) (?:was|were|in)|(?:corn|wheat|barley) (?:was|stood|lay) (?:being )?(?:cut|ripe"
        r"|yellow|golden)"
        r"|in the harvest fields?",
        range(7, 11),
    ),
    (
        r"(?:apple|cherry|pear|plum|orchards?|hawthorns?|lilacs?|laburnums?)(?:[ -]trees?)? (?:was|were|stood|all)"
        r"(?: \w+){0,2} (?:blossom|bloom|flower)",
        range(3, 7),
    ),
    (
        r"(?:bluebells|primroses|daffodils|snowdrops|crocuses|cowslips) (?:were|stood|grew|nodded|in the|lay|had come)",
        range(1, 7),
    ),
    (
        r"(?:roses|poppies|honeysuckle|foxgloves) (?:were|was|stood|grew|nodded)(?: all| still)? (?:in (?:full "
        r")?)?(?:flower|bloom|out)",
        range(5, 11),
    ),
    (
        r"(?:bare|leafless) (?:trees|boughs|branches|elms|oaks|hedges)|trees (?:were|stood) (?:bare"
        r"|leafless)",
        range(10, 17),
    ),
    (r"(?:dead|fallen|falling|yellow|withered) leaves (?:were|lay|fell|drifted|blew)", range(8, 17)),
    (r"(?:that|this|the|a) (?:\w+ )?summer(?:[’']s)? (?:day|night|evening|morning|afternoon)", SUMMER),
    (r"(?:that|this|the|a) (?:\w+ )?winter(?:[’']s)? (?:day|night|evening|morning|afternoon)", WINTER),
)
SIGNS: Mapping[re.Pattern[str], frozenset[int]] = {
    re.compile(rf"\b(?:{words})\b", re.IGNORECASE): frozenset((month - 1) % 12 + 1 for month in months)
    for words, months in _SIGNS
}
ELSEWHERE = re.compile(
    r"\b(?:Australia|Sydney|Zealand|Africa|Brazil|Argentin\w+|Chile|Peru|India|Alps|Alpine|Himalaya\w*|Arctic|Antarctic"
    r"|Andes|glaciers?|Siberia|Alaska|Klondike|Yukon|Greenland|tropics?|tropical)\b"
)  # where it may snow in July
