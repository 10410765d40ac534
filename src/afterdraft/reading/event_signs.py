"""What speaks for and against a word being an event, as names of signs: the input of the model in `events`."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from afterdraft.reading.grammar import AUXILIARY, SUBJECTS, VERBAL, Grammar
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.tense_forms import MODALS, stem

CANDIDATES = frozenset({"VERB", "NOUN", "ADJ"})  # 99 in 100 events of the training half are one of these
_HABIT = words_of(
    "always often sometimes usually never ever every generally frequently whenever seldom rarely would used"
)
_ADVERBS = frozenset({"advmod", "neg", "mark", "prt"})
_DETERMINERS = frozenset({"det", "poss"})
_PREPOSITIONS = frozenset({"prep"})
_TAKEN = words_of("dobj attr acomp oprd xcomp ccomp agent dative advcl")  # what a verb takes
_OBJECT = frozenset({"dobj"})
NONE = "-"
_LONG = 8  # words a step of a sentence's length
_FAR = 4  # heads above a word that are looked at


@dataclass(frozen=True, slots=True)
class Clue:
    """A word that may be an event; `sentence` and `spoken` are those of its place."""

    token: int
    sentence: int
    spoken: bool
    signs: tuple[str, ...]


def clues(grammar: Grammar) -> Iterator[Clue]:
    """Of a paragraph, in order."""
    of = grammar.of
    stems = [stem(word) for word in grammar.small]
    around = _sentences(grammar)
    for token, pos in enumerate(of.pos):
        if pos in CANDIDATES and grammar.small[token][:1].isalpha():
            own = _verb(grammar, token, stems) if pos == "VERB" else _noun(grammar, token, stems)
            signs = (*_near(grammar, token, stems), *around[of.sentences[token]], *own, *_above(grammar, token))
            once = tuple(f"{pos[0]} {sign}" for sign in dict.fromkeys(signs))
            yield Clue(token, of.sentences[token], grammar.spoken[token], once)


def _sentences(grammar: Grammar) -> Sequence[tuple[str, ...]]:
    """For each sentence of the paragraph, what holds for all its words."""
    members: list[list[int]] = [[] for _ in range(1 + max(grammar.of.sentences, default=-1))]
    for token, number in enumerate(grammar.of.sentences):
        members[number].append(token)
    return [_sentence(grammar, tokens) for tokens in members]


def _sentence(grammar: Grammar, tokens: Sequence[int]) -> tuple[str, ...]:
    words = {grammar.small[token] for token in tokens}
    forms = {grammar.forms[token] for token in tokens}
    ends = next((grammar.of.words[token] for token in tokens[:-3:-1] if grammar.of.words[token] in ".?!"), NONE)
    tenses = f"{bool(forms & {'past', 'both'})} {bool(forms & {'s', 'base'})}"
    return (
        f"ends {ends}",
        f"tenses {tenses}",
        f"habit {bool(words & _HABIT)}",
        f"length {min(5, len(tokens) // _LONG)}",
    )


def _near(grammar: Grammar, token: int, stems: Sequence[str]) -> Iterator[str]:
    """The word itself, and those beside it."""
    of, head = grammar.of, grammar.of.heads[token]
    yield f"is {stems[token]}"
    yield f"on {of.pos[head]}"
    yield f"on {stems[head]} as {of.deps[token]}"
    before, after = token - 1, token + 1
    yield f"before {grammar.small[before] if token else NONE}"
    yield f"after {grammar.small[after] if after < len(of.words) else NONE}"
    yield f"before a {of.pos[before] if token else NONE}"
    yield f"after a {of.pos[after] if after < len(of.words) else NONE}"


def _verb(grammar: Grammar, token: int, stems: Sequence[str]) -> Iterator[str]:
    of, first = grammar.of, grammar.first(token)
    form, relation = grammar.forms[token], of.deps[token]
    shared = grammar.forms[first] == form  # 'she had come and gone'
    helpers = grammar.on(token, AUXILIARY) or (grammar.on(first, AUXILIARY) if shared else [])
    yield f"form {form} as {relation}"
    yield f"form {form} spoken {grammar.spoken[token]}"
    yield f"form {form} helped {bool(helpers)} as {relation}"
    for helper in helpers:
        yield f"helper {grammar.small[helper]} form {form}"
    if not helpers and form in ("past", "both"):
        yield f"simply {stems[token]}"
    subject = grammar.on(token, SUBJECTS) or grammar.on(first, SUBJECTS)
    yield from _subject(grammar, subject[0], form) if subject else (f"no subject form {form} as {relation}",)
    for child in grammar.on(token, _TAKEN):
        yield f"takes {of.deps[child]}"
    for child in grammar.on(token, _PREPOSITIONS):
        yield f"takes {grammar.small[child]}"
    for child in grammar.on(token, _OBJECT):
        yield f"object {stems[child] if of.pos[child] == 'NOUN' else of.pos[child]}"
    for child in (*grammar.on(token, _ADVERBS), *(grammar.on(first, _ADVERBS) if first != token else ())):
        yield f"{of.deps[child]} {grammar.small[child]}"


def _subject(grammar: Grammar, subject: int, form: str) -> Iterator[str]:
    """Who does it: 'people', 'a man', 'one' are nobody in particular."""
    pos = grammar.of.pos[subject]
    plural = pos == "NOUN" and grammar.small[subject].endswith("s")
    who = grammar.small[subject] if pos == "PRON" else f"{pos} {plural}"
    yield f"subject {who}"
    yield f"subject {who} form {form}"
    yield f"subject with {_determiner(grammar, subject)}"


def _noun(grammar: Grammar, token: int, stems: Sequence[str]) -> Iterator[str]:
    yield f"with {_determiner(grammar, token)}"
    yield f"on {stems[grammar.of.heads[token]]}"


def _determiner(grammar: Grammar, token: int) -> str:
    return next((grammar.small[child] for child in grammar.on(token, _DETERMINERS)), NONE)


def _above(grammar: Grammar, token: int) -> Iterator[str]:
    """The verbs in whose clauses it lies: what hangs on 'if he should' is not asserted."""
    of = grammar.of
    for step in range(_FAR):
        head = of.heads[token]
        if head == token:
            return
        token = head
        if of.pos[token] in VERBAL:
            words = {grammar.small[child] for child in grammar.children[token]}
            denied = any(of.deps[child] == "neg" for child in grammar.children[token])
            yield f"{min(step, 1)} above {grammar.forms[token]} {bool(words & MODALS)} {denied} {'if' in words}"
