"""Whether a written name may be a slip of the hand or the memory for another, by their letters alone.

Most wrong words have one letter more, less, other, or changed about with its neighbour (Damerau, Communications of the
ACM 7, 1964), and first letters are seldom wrong (Pollock and Zamora, Communications of the ACM 27, 1984; both from
memory). Which letters are taken for one another is common practice: vowels, what sounds alike, keys side by side.
"""

from unicodedata import normalize

from rapidfuzz.distance import OSA

from afterdraft.whole.given_names import FEMALE, MALE

OFTEN = 16  # times that a short one stands at least, where letters are changed; chosen on the tuning half
_VOWELS = frozenset("aeiouy")
_ALIKE = tuple(map(frozenset, ("bp", "dt", "cgkq", "fvw", "csxz", "mn", "lr", "gj")))  # consonants that sound alike
_ROWS = "qwertyuiop", "asdfghjkl", "zxcvbnm"  # of a keyboard, each half a key further right than the one above
_KEYS = {letter: (row, at) for row, keys in enumerate(_ROWS) for at, letter in enumerate(keys)}
_ENDINGS = frozenset("saonye")  # of families, feminines, pet names
_LAST = frozenset("aeiys")  # letters that change at the end of such


def is_slip(word: str, other: str) -> bool:
    """Whether one may be a slip of the pen, or of the memory, for the other, and is no form of it."""
    one, two = word.lower(), other.lower()
    if one == two or abs(len(one) - len(two)) > 1:
        return False
    if OSA.distance(one, two, score_cutoff=1) > 1 or (one[0] != two[0] and one[:2] != two[1::-1]):
        return False  # first letters are seldom wrong
    changed = [pair for pair in zip(one, two, strict=False) if pair[0] != pair[1]]
    if len(one) == len(two) and len(changed) == 1 and not _are_alike(*changed[0]):
        return False
    if one[:-1] == two[:-1] and {one[-1], two[-1]} <= _LAST and _is_form(one, two):
        return False
    if one[:-1] == two and one[-1] == two[-1]:
        return True  # doubled, in 'Boriss' too
    return two != one + "s" and not (one.startswith(two) and one[len(two) :] in _ENDINGS)


def _are_alike(one: str, two: str) -> bool:
    """Whether a hand or an ear takes one letter for the other, or an accent is left out."""
    one, two = (normalize("NFD", letter)[0] for letter in (one, two))
    return one == two or any({one, two} <= group for group in (_VOWELS, *_ALIKE)) or _are_neighbours(one, two)


def _are_neighbours(one: str, two: str) -> bool:
    """On a keyboard."""
    if not {one, two} <= _KEYS.keys():
        return False
    (above, at), (below, place) = sorted((_KEYS[one], _KEYS[two]))
    return abs(at - place) == 1 if above == below else below - above == 1 and at - place in (0, 1)


def _is_form(one: str, two: str) -> bool:
    """Of names that end otherwise: Louise, Louisa; George, Georgy; Georges."""
    return one in FEMALE | MALE or "s" in (one[-1], two[-1]) or (two in FEMALE | MALE and one[-1] == "y")


def is_slip_of_the_pen(word: str, other: str, often: int) -> bool:
    """Of short names: a letter left out or written twice within it, or one of two alike at its end; of those that stand
    often also two letters changed about, and one vowel for another."""
    if word[0] != other[0]:
        return False
    if len(word) != len(other):
        return not other.startswith(word) or other[-1] == word[-1]
    changed = [(one, two) for one, two in zip(word, other, strict=True) if one != two]
    return often >= OFTEN and (len(changed) == 2 or set(changed[0]) <= _VOWELS)
