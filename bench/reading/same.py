"""Characters that stand twice in the corpus, made one for scoring.

By hand, from the corpus's own lists of characters and what the novels are known to tell: each of these is a bare
surname, a role or a pet name, speaks nothing by the corpus, and is another character of the same list.
"""

from collections.abc import Mapping
from dataclasses import replace

from bench.reading.novels import Novel

SAME: Mapping[str, Mapping[str, str]] = {
    "AlicesAdventuresInWonderland": {"Bill, The Lizard": "Bill"},
    "ARoomWithAView": {"Ms. Teresa": "Miss Teresa"},
    "HardTimes": {
        "Bounderby": "Josiah Bounderby",
        "Childers": "Mr. E. W. B. Childers",
        "Harthouse": "Mr. James Harthouse",
        "Mapschoakumchild": "Mr. M'choakumchild",
        "Mr. Tom": "Young Thomas",
        "The Whelp": "Young Thomas",
    },
    "MansfieldPark": {"Miss Bertram": "Maria Bertram", "Mr. Crawford": "Henry Crawford", "Norris": "Mrs. Norris"},
    "TheGambler": {"Grandmamma": "Antonida Vassilievna Tarassevitcha"},
    "TheMysteriousAffairAtStyles": {"The Coroner": "Mr. Wells"},
}


def joined(book: Novel) -> Novel:
    """The novel with each such character gone and their names those of the other.

    Raises `KeyError` where a name of the map is not in the list, `ValueError` where one that goes speaks.
    """
    by_name = {one.name: one for one in book.characters}
    gone = {by_name[twin].id: by_name[name].id for twin, name in SAME.get(book.slug, {}).items()}
    if speaking := gone.keys() & {quotation.speaker for quotation in book.quotations}:
        raise ValueError(f"{book.slug}: characters {sorted(speaking)} speak, so they are not made one with others")
    more = {
        kept: tuple(alias for one in book.characters if gone.get(one.id) == kept for alias in one.aliases)
        for kept in gone.values()
    }
    characters = tuple(
        replace(one, aliases=tuple(dict.fromkeys((*one.aliases, *more.get(one.id, ()))))) if one.id in more else one
        for one in book.characters
        if one.id not in gone
    )
    return replace(book, characters=characters)
