"""Where somebody is meant in a paragraph: by name, by what they are ('the old man'), by a pronoun, as 'I'."""

from collections.abc import Iterable, Sequence

from afterdraft.reading import lexicon, speech_words
from afterdraft.reading.analysed import Analysed
from afterdraft.reading.facts import Entity, Gender, Kind, Mention
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.names_besides import ALONE, GIVEN, SURNAMES, TITLES_TOO, is_meant, is_titled

SUBJECTS = frozenset({"nsubj", "nsubjpass"})
HIDDEN = SUBJECTS | {"poss"}
WITHIN = frozenset({"amod", "compound", "det", "nummod"})
TAKEN = frozenset({"aux", "npadvmod"})  # what the pipeline takes a subject for that is a verb or a time besides
PLACING = words_of(
    """
    in at near from through across towards toward into via around
    """
)
PARTICLES = words_of(
    """
    de del della di du la le van von der den o'
    """
)
PLACES = frozenset({"GPE", "LOC", "FAC"})
OTHERS = frozenset({"ORG", "NORP", "PRODUCT", "EVENT", "WORK_OF_ART", "LAW", "LANGUAGE", "DATE", "TIME"})
ROLE_WORDS = 3  # words of a role before its noun that are still looked at: 'the thin elderly gentleman'
Spans = Sequence[tuple[int, int]]


def mentions(
    analysed: Analysed, number: int, speech: Spans, known: frozenset[str] = frozenset()
) -> tuple[Mention, ...]:
    """All mentions of paragraph `number`, in order; `speech` is where it is spoken, in order.

    `known` are names that are words besides: the pipeline takes them for words where they begin a sentence, or as
    `names_besides` says."""
    spoken = _inside(analysed, speech)
    found: list[Mention] = []
    token = 0
    while token < len(analysed.words):
        last, kind, form = _at(analysed, token, spoken, known)
        if kind:
            found.append(_mention(analysed, number, token, last, kind, form, spoken, speech))
        token = last + 1
    return tuple(found)


def names_within(found: Iterable[Mention]) -> frozenset[str]:
    """Names of one word that stand within sentences, where a capital tells a name."""
    return frozenset(
        one.form
        for one in found
        if one.kind == "name" and one.large and not one.first and " " not in one.form and one.entity in ("person", "")
    )


def hides(analysed: Analysed, known: frozenset[str]) -> bool:
    """Whether such a name is taken for a word somewhere in the paragraph."""
    return any(_is_hidden(analysed, place, known) for place in range(len(analysed.words)))


def _is_hidden(analysed: Analysed, place: int, known: frozenset[str]) -> bool:
    noun = analysed.pos[place] == "NOUN" and analysed.deps[place] in HIDDEN
    return noun and analysed.words[place][0].isupper() and bare(analysed.words[place]) in known


def form(name: str) -> str:
    """How a name that somebody types is compared: 'Miss Bartlett' and 'the Miss Bartlett' as "miss bartlett"."""
    words = [bare(word) for word in name.split()]
    return " ".join(words[1:] if len(words) > 1 and words[0] == "the" else words)


def bare(word: str) -> str:
    """A word as compared: small letters, curly marks straight, no closing point, nothing after a dash."""
    return (_cut(word) if "—" in word else word).lower().replace("’", "'").rstrip(".")


def _cut(word: str) -> str:
    """A word without what a dash joins to it, which the pipeline leaves: 'Pike—“not' is Pike."""
    return word[: word.index("—")].rstrip(".*_”’\"'") or word


def _inside(analysed: Analysed, speech: Spans) -> list[bool]:
    inside, spans = [], iter(speech)
    span = next(spans, None)
    for start in analysed.starts:
        while span and start >= span[1]:
            span = next(spans, None)
        inside.append(bool(span) and span is not None and start >= span[0])
    return inside


def _at(analysed: Analysed, token: int, spoken: Sequence[bool], known: frozenset[str]) -> tuple[int, Kind | None, str]:
    """The mention that begins at `token`: its last token, kind and form; no kind where there is none."""
    word = analysed.words[token]
    small = bare(word)
    if small in lexicon.SELF:
        return token, "self", small
    if small in lexicon.HE or small in lexicon.SHE:
        return token, "pronoun", small
    if word[0].isupper() and (name := _name(analysed, token, spoken, known)):
        last, form = name
        article = token and bare(analysed.words[token - 1]) == "the"
        return last, "role" if article and last == token else "name", form
    if small in lexicon.ROLES and analysed.pos[token] in ("NOUN", "PROPN") and (form := _role(analysed, token)):
        return token, "role", form
    return token, None, ""


def _name(analysed: Analysed, token: int, spoken: Sequence[bool], known: frozenset[str]) -> tuple[int, str] | None:
    """Capitalised words that run on: the last token and the form. A title alone is a name when it begins none."""
    words: list[str] = []
    last = token
    place = token
    while place < len(analysed.words) and spoken[place] == spoken[token]:
        word = analysed.words[place]
        small = bare(word)
        if word[0].isupper() and _is_name(analysed, place, words, known):
            words.append(small)
            last = place
            while _is_hyphened(analysed, last):
                words[-1] += f"-{bare(analysed.words[last + 2])}"
                last = place = last + 2
            if "—" in analysed.words[last]:
                break
        elif not (words and ((small in PARTICLES and _capital(analysed, place + 1)) or _title_point(analysed, place))):
            break
        place += 1
    return (last, " ".join(words)) if words and not (words[0] in lexicon.NO_NAME_ALONE and len(words) == 1) else None


def _is_hyphened(analysed: Analysed, place: int) -> bool:
    """Whether a hyphen joins another name to this one, with no space: the pipeline parts them.

    The Frog-Footman is a footman.
    """
    tied = place + 2 < len(analysed.words) and analysed.words[place + 1] == "-"
    close = tied and analysed.end(place) == analysed.starts[place + 1] == analysed.starts[place + 2] - 1
    return close and _capital(analysed, place + 2) and bare(analysed.words[place + 2]) not in lexicon.ROLES


def _capital(analysed: Analysed, place: int) -> bool:
    return place < len(analysed.words) and analysed.words[place][0].isupper()


def _title_point(analysed: Analysed, place: int) -> bool:
    """'Mlle .' comes in two tokens."""
    return (
        analysed.words[place] == "."
        and bare(analysed.words[place - 1]) in lexicon.TITLES
        and _capital(analysed, place + 1)
    )


def _is_name(analysed: Analysed, place: int, before: Sequence[str], known: frozenset[str]) -> bool:
    word = analysed.words[place]
    small = bare(word)
    full = bool(before) and analysed.kinds[place] == analysed.kinds[place - 1] == "PERSON"  # 'Ada King'
    if small in lexicon.TITLES:
        return not before or before[-1] in lexicon.TITLES or (full and small in TITLES_TOO)
    if small in lexicon.NO_NAMES and small in SURNAMES:
        titled = bool(before) and is_titled(before[-1], small)
        return titled or full or (small in known and _is_besides(analysed, place, small))
    if small in lexicon.NO_NAMES or not any(map(str.isalpha, word)) or (word.isupper() and _roman(small)):
        return False
    if word.isupper() and len(word) > 3:
        return False  # shouted, or a notice
    if word.endswith("."):
        return len(word) == 2 and bool(before)  # an initial inside a name
    if before or not _first(analysed, place):
        return analysed.pos[place] in ("PROPN", "NOUN", "ADJ", "X", "INTJ", "VERB", "ADV")
    plain = analysed.pos[place] == "PROPN" or analysed.kinds[place] == "PERSON"
    return plain or _is_hidden(analysed, place, known)


def _is_besides(analysed: Analysed, place: int, small: str) -> bool:
    before = [bare(word) for word in analysed.words[max(0, place - 2) : place]]
    after = bare(analysed.words[place + 1]) if place + 1 < len(analysed.words) else ""
    if small in ALONE and (analysed.deps[place] in WITHIN or "the" in before[-1:]):
        return False  # 'French wine', 'the Church'
    return is_meant(small, before, after, first=_first(analysed, place))


def _roman(small: str) -> bool:
    return all(letter in "ivxlc" for letter in small)


def _first(analysed: Analysed, place: int) -> bool:
    if place == 0 or analysed.sentences[place] != analysed.sentences[place - 1]:
        return True
    return not analysed.words[place - 1][-1].isalnum() and analysed.words[place - 1] not in (",", "-", "'s", "’s", "(")


def _role(analysed: Analysed, token: int) -> str:
    """'old man' of 'the old man', 'her mother' with whose; nothing without an article or an owner before it."""
    words = [bare(analysed.words[token])]
    for place in range(token - 1, max(-1, token - 2 - ROLE_WORDS), -1):
        word = bare(analysed.words[place])
        if word in ("the", "a", "an", "this", "that"):
            return " ".join(words)
        if word in lexicon.OWNERS:
            return f"{word} {words[-1]}"
        if word == "'s" and place and analysed.pos[place - 1] == "PROPN":
            return f"{bare(analysed.words[place - 1])}'s {words[-1]}"
        if analysed.pos[place] not in ("ADJ", "NOUN", "PROPN", "NUM"):
            return ""
        words.insert(0, word)
    return ""


def _mention(
    analysed: Analysed,
    number: int,
    token: int,
    last: int,
    kind: Kind,
    form: str,
    spoken: Sequence[bool],
    speech: Spans,
) -> Mention:
    head = _head(analysed, token, last)
    subject = _is_subject(analysed, head)
    before = bare(analysed.words[token - 1]) if token else ""
    verb = bare(analysed.words[analysed.heads[head]]) if subject else ""
    return Mention(
        paragraph=number,
        start=analysed.starts[token],
        end=analysed.starts[last] + len(_cut(word) if "—" in (word := analysed.words[last]) else word),
        kind=kind,
        form=form,
        gender=gender(form, kind),
        entity=_entity(analysed.kinds[last], form) if kind == "name" else "",
        subject=subject,
        speaks=verb in lexicon.SPEECH,
        answers=verb in speech_words.ANSWERING,
        feels=verb in lexicon.FEELING,
        spoken=spoken[token],
        called=kind != "pronoun" and spoken[token] and _is_called(analysed, token, last, speech),
        large=analysed.words[last][0].isupper(),
        first=_first(analysed, token),
        apposed=kind == "role" and token > 1 and before == "the" and _is_apposed(analysed, token - 2, last + 1),
        placed=before in PLACING,
        joined=before in ("and", "&") and token > 1,
    )


def _is_apposed(analysed: Analysed, before: int, after: int) -> bool:
    """Whether a role stands between commas as the other name of somebody, and is no part of a list."""
    follows = [bare(word) for word in analysed.words[after : after + 2]]
    listed = follows[:1] in (["and"], ["or"]) or (follows[:1] == [","] and follows[1:] in (["and"], ["or"], ["the"]))
    return analysed.words[before] == "," and not listed


def gender(form: str, kind: Kind) -> Gender:
    """What the words themselves tell: a title, a role, a pronoun."""
    words = form.split()
    if kind == "pronoun":
        return "m" if form in lexicon.HE else "f"
    word = words[0] if kind == "name" else words[-1]
    if word in lexicon.FEMALE_TITLES or (kind == "role" and word in lexicon.FEMALE_ROLES):
        return "f"
    if word in lexicon.MALE_TITLES or (kind == "role" and word in lexicon.MALE_ROLES):
        return "m"
    return ""


def _head(analysed: Analysed, token: int, last: int) -> int:
    """The token of a mention on which the others depend."""
    return next((place for place in range(last, token - 1, -1) if not token <= analysed.heads[place] <= last), last)


def _is_subject(analysed: Analysed, token: int) -> bool:
    while analysed.deps[token] == "conj" and analysed.heads[token] != token:
        token = analysed.heads[token]
    taken = analysed.deps[token] in TAKEN and bare(analysed.words[token]) in GIVEN
    return analysed.deps[token] in SUBJECTS or taken


def _entity(kind: str, form: str) -> Entity:
    if kind == "PERSON":
        return "person"
    if form in GIVEN | ALONE:
        return ""  # who is called June is no date
    return "place" if kind in PLACES else "other" if kind in OTHERS else ""


def _is_called(analysed: Analysed, token: int, last: int, speech: Spans) -> bool:
    """A vocative: between commas or the ends of the speech, and in no sentence's frame."""
    text = analysed.text
    start, end = analysed.starts[token], analysed.end(last)
    span = next((span for span in speech if span[0] <= start < span[1]), (0, len(text)))
    before = text[span[0] : start].rstrip()
    while before.lower().endswith((" dear", " my", " poor", " old", "my dear")) or before.lower() in (
        "dear",
        "my",
        "oh",
    ):
        before = before[: before.rstrip().rfind(" ") + 1].rstrip() if " " in before else ""
    after = text[end : span[1]].lstrip()
    opens = (
        not before or before[-1] in ",;.!?—–-…" or before.lower().rsplit(None, 1)[-1] in ("oh", "o", "ah", "yes", "no")
    )
    closes = not after or after[0] in ",;.!?—–-…"
    return opens and closes and (not before or not after or before[-1:] == "," or after[0] in ",!?.")
