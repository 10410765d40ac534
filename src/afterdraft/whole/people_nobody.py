"""Forms written large that mean nobody: places by their last word, forces, exclamations, peoples, voices.

Words by hand, from common knowledge of English fiction and from the tuning half of novels listed by hand.
"""

from collections.abc import Sequence

from afterdraft.reading import lexicon
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.place_words import KINDS
from afterdraft.whole.evidence import Evidence
from afterdraft.whole.given_names import FEMALE, MALE

PLACE_ENDS = KINDS | words_of(
    """
    hill hills mount mountain mountains moor heath bay sea lake point gate square mansions buildings chambers college
    university museum institute institution office hotel society company association committee government club common
    day night week junction avenue crescent gardens fields woods wells bank stores
    """
)
PLACE_STARTS = words_of(
    """
    mont mount lake cape port fort rue place isle hotel château villa
    """
)
POWERS = words_of(
    """
    providence nature fate fates fortune destiny eternity humanity society parliament revolution democracy socialism
    liberty christianity civilisation civilization science religion labour
    """
)  # that act in sentences as people do
CRIES = words_of(
    """
    farewell adieu bravo hurrah hooray yo ahoy amen halloa humph pooh pshaw tut bah dieu gott diable mademoiselles
    """
)
IN_IT = 0.2  # share of its mentions in which something is in a word or near it, from which it is a place
THINGS = 0.3  # the same, of mentions held for a place or thing too, for a title and name that never acts


def is_nobody(words: Sequence[str], one: Evidence) -> bool:
    """Whether a form that is nobody's title and speaks nothing means no person by its words and where they stand."""
    if words[-1] in ("voice", "voices"):
        return True
    if words[-1] in POWERS | CRIES and one.tags < 2:
        return True
    if one.tags or one.signs or one.roles > one.named:
        return False
    if words[0] in lexicon.TITLES and len(words) > 1:
        idle = one.subject + one.called + one.speaks == 0 and words[0] not in lexicon.PLAIN_TITLES
        return idle and one.places + one.others + one.placed >= THINGS * one.count
    if len(words) > 1:
        return words[0] in PLACE_STARTS or (words[-1] in PLACE_ENDS and words[0] not in FEMALE | MALE)
    return one.placed >= IN_IT * one.count or words[0].removesuffix("s") in lexicon.NO_NAMES
