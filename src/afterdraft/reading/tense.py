"""Which tense a paragraph's narration is in, as counts of verbs."""

from afterdraft.reading.grammar import AUXILIARY, SUBJECTS, VERBAL, Grammar
from afterdraft.reading.lexicon import words_of

_PAST = words_of("was were had did would could might should 'd")
_PRESENT = words_of("is are am 's 're 'm has have do does 've will can may shall must 'll ca wo")
_COPULAS = words_of("is are am was were")


def tensed(grammar: Grammar) -> tuple[int, int]:
    """Verbs in the past and in the present tense, outside speech; each clause counts once."""
    past = present = 0
    for token, pos in enumerate(grammar.of.pos):
        if pos in VERBAL and not grammar.spoken[token]:
            tense = _tense(grammar, token)
            past += tense == "past"
            present += tense == "present"
    return past, present


def _tense(grammar: Grammar, token: int) -> str:
    """Of the clause that the verb leads; "" where it leads none, has none, or its form is that of several."""
    if grammar.of.deps[token] in AUXILIARY:
        return ""
    for helper in grammar.on(token, AUXILIARY):
        word = grammar.small[helper]
        if word in _PAST or word in _PRESENT:
            return "past" if word in _PAST else "present"
        return ""  # 'to go', 'having gone'
    word, form = grammar.small[token], grammar.forms[token]
    if word in _COPULAS or form == "past":
        return "present" if word in _PRESENT else "past"
    subject = grammar.on(token, SUBJECTS) or grammar.on(grammar.first(token), SUBJECTS)
    if not subject:
        return ""
    return (
        "past" if form == "both" else "present" if form in ("s", "base") and _shows(grammar, token, subject[0]) else ""
    )


def _shows(grammar: Grammar, token: int, subject: int) -> bool:
    """Whether a form without an ending is the present: 'he put', 'she read' are not told from the past by 's'."""
    return grammar.forms[token] == "s" or grammar.small[subject] in ("i", "you", "we", "they")
