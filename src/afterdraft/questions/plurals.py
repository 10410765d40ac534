"""The noun that a plural is of, told from its letters."""

from collections.abc import Mapping

from afterdraft.reading.lexicon import words_of

_ONE_OF = """
men:man women:woman children:child oxen:ox feet:foot geese:goose teeth:tooth mice:mouse wives:wife knives:knife
shelves:shelf calves:calf leaves:leaf halves:half thieves:thief sheep:sheep deer:deer
trout:trout salmon:salmon swine:swine aircraft:aircraft fish:fish brethren:brother loaves:loaf hooves:hoof
"""
_IRREGULAR: Mapping[str, str] = dict(pair.split(":") for pair in _ONE_OF.split())
_NONE = words_of(
    """
    was is his this us its less always perhaps hers yours theirs ours towards across besides yes plus minus thus as
    whereas sometimes afterwards upwards nevertheless clothes o'clock o’clock others ones has does
    """
)


def singular(word: str) -> str:
    """Of a plural, in small letters; "" for a word that is none.

    >>> singular("heifers"), singular("oxen"), singular("berries"), singular("benches"), singular("glass")
    ('heifer', 'ox', 'berry', 'bench', '')
    """
    if word in _IRREGULAR:
        return _IRREGULAR[word]
    no_plural = word.endswith(("ss", "us", "is", "'s", "’s")) or not word.endswith("s")
    if len(word) < 4 or word in _NONE or no_plural:
        return ""
    if word.endswith("ies"):
        return word[:-3] + "y"
    return word[:-2] if word.endswith(("sses", "xes", "ches", "shes")) else word[:-1]
